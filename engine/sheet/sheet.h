/* A drawing, described once: screen, print, PDF, SVG and PNG are all painted from the same RwSheet.
 *
 * Geometry is in millimetres of the thing drawn, x to the right, y up.  Everything that must keep its size
 * on paper whatever the scale (line weights, lettering, arrows, the distance of a dimension line from its
 * object) is in millimetres of paper, and is settled when the sheet is laid out at a scale (layout.h).
 * Line types and weights follow ISO 128-2, dimensions ISO 129-1, lettering ISO 3098.
 */
#pragma once

#include "table/dim.h"

/* Line types.  Wide lines are 0.5 mm, narrow ones 0.25 mm (2 : 1). */
typedef enum
{
  RW_PEN_NONE,
  RW_PEN_OUTLINE,  /* continuous wide: visible edges */
  RW_PEN_EDGE,     /* continuous narrow: minor visible edges, strings, frets */
  RW_PEN_HIDDEN,   /* dashed narrow */
  RW_PEN_CENTRE,   /* long-dashed dotted narrow: axes */
  RW_PEN_PHANTOM,  /* long-dashed double-dotted narrow: neighbouring parts */
  RW_PEN_CUT,      /* long-dashed dotted wide: cutting planes */
  RW_PEN_CONSTRUCTION, /* continuous narrow: dimension, extension, leader lines, facet lines */
  RW_PEN_GRAIN,    /* continuous narrow, pale: grain strokes */
  RW_PEN_COUNT,
} RwPen;

/* Fills, told apart in lightness first so that they hold in grey. */
typedef enum
{
  RW_TINT_NONE,
  RW_TINT_PAPER, /* covers what lies behind */
  RW_TINT_LIGHT_WOOD,
  RW_TINT_DARK_WOOD,
  RW_TINT_METAL,
  RW_TINT_HEAD,
  RW_TINT_BONE, /* nut, bridge */
  RW_TINT_COUNT,
} RwTint;

typedef enum
{
  RW_LAYER_RIM,
  RW_LAYER_HEAD,
  RW_LAYER_HOOP,
  RW_LAYER_HOOKS,
  RW_LAYER_JOINT,
  RW_LAYER_NECK,
  RW_LAYER_FRETBOARD,
  RW_LAYER_HEADSTOCK,
  RW_LAYER_BRIDGE,
  RW_LAYER_STRINGS,
  RW_LAYER_AXES,
  RW_LAYER_DIMENSIONS,
  RW_LAYER_TEXT,
  RW_LAYER_FRAME, /* border, title block, register marks, check bars */
  RW_LAYER_COUNT,
} RwLayer;

const char *rw_layer_id    (RwLayer layer); /* "rim", "head" ...: ids of SVG groups */
const char *rw_layer_title (RwLayer layer);

/* How a figure came about, told by its lettering. */
typedef enum
{
  RW_FIGURE_PLANNED,    /* plain */
  RW_FIGURE_WORKED_OUT, /* slanted */
  RW_FIGURE_MEASURED,   /* underlined */
} RwFigure;

typedef enum { RW_LETTERS_SMALL, RW_LETTERS_LARGE, RW_LETTERS_TITLE } RwLetters; /* 2.5, 3.5, 5 mm */
double rw_letters_size (RwLetters letters);

typedef enum { RW_ALIGN_START, RW_ALIGN_MIDDLE, RW_ALIGN_END } RwAlign;

typedef struct
{
  double x, y;
} RwPoint;

typedef struct
{
  double x0, y0, x1, y1;
} RwBox;

/* What an item shows: a parameter or a dimension, or -1 for neither. */
typedef struct
{
  int param; /* RwParamId or -1 */
  int slot;  /* RwSlot or -1 */
} RwSubject;

#define RW_SUBJECT_NONE     ((RwSubject){ -1, -1 })
#define RW_SUBJECT_PARAM(p) ((RwSubject){ RW_P_##p, -1 })
#define RW_SUBJECT_SLOT(s)  ((RwSubject){ -1, (s) })

/* Whether two are one thing: a dimension and the parameter of the same id are. */
gboolean rw_subject_same (RwSubject a, RwSubject b);

typedef enum { RW_VERB_MOVE, RW_VERB_LINE, RW_VERB_CURVE, RW_VERB_ARC, RW_VERB_CLOSE } RwVerb;

typedef struct
{
  RwVerb  verb;
  RwPoint p[3];           /* MOVE, LINE: p[0]; CURVE: two controls and the end; ARC: p[0] the centre */
  double  radius, a0, a1; /* ARC: radians anticlockwise from x; drawn from a0 to a1 either way round, and
                             joined to what was drawn before by a straight line */
} RwPathOp;

typedef enum { RW_ITEM_PATH, RW_ITEM_TEXT, RW_ITEM_DIMENSION, RW_ITEM_LEADER } RwItemKind;

typedef enum
{
  RW_MEASURE_HORIZONTAL,
  RW_MEASURE_VERTICAL,
  RW_MEASURE_ALIGNED,
  RW_MEASURE_ANGLE,
} RwMeasure;

typedef struct
{
  RwItemKind kind;
  RwLayer    layer;
  RwSubject  subject;
  char      *name; /* plain words for people and screen readers, untranslated; may be NULL */

  /* PATH */
  RwPen pen;
  RwTint tint;
  int   op_first, op_count;

  /* TEXT: one line, at p[0]; DIMENSION: from p[0] to p[1] (ANGLE: apex p[0], radius in mm, from a0 to a1);
   * LEADER: from the text at p[1] to the arrow at p[0] */
  RwPoint   p[2];
  RwMeasure measure;
  double    offset_mm; /* paper: of the dimension line from the farther of its points; sign says which side:
                          positive above or to the right, ALIGNED to the left of p[0] -> p[1].
                          TEXT: of the base line over p[0] */
  double    radius, a0, a1;
  char     *text;
  RwFigure  figure;
  RwLetters letters;
  RwAlign   align;
  double    turn;      /* radians anticlockwise: of a text, and of what a DIMENSION calls horizontal */
  int       rank;      /* 0 is never hidden; higher numbers go first where room is short.  New texts are 0,
                          dimensions and leaders 1 */
} RwItem;

typedef struct
{
  GArray *items; /* of RwItem, in order of painting */
  GArray *ops;   /* of RwPathOp */
  char   *title;
  RwStyle style; /* units and decimal mark of the figures */

  /* Set by rw_sheet_set(): what new items get. */
  RwLayer   layer;
  RwSubject subject;
} RwSheet;

RwSheet *rw_sheet_new  (const char *title, RwStyle style);
void     rw_sheet_free (RwSheet *sheet);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwSheet, rw_sheet_free)

/* The layer and subject of all items that follow. */
void rw_sheet_set (RwSheet *sheet, RwLayer layer, RwSubject subject);

/* A path: begin, then verbs, then end, which returns the item for its name to be set by rw_item_name(). */
void    rw_path_begin (RwSheet *sheet, RwPen pen, RwTint tint);
void    rw_path_move  (RwSheet *sheet, double x, double y);
void    rw_path_line  (RwSheet *sheet, double x, double y);
void    rw_path_curve (RwSheet *sheet, RwPoint c1, RwPoint c2, RwPoint end);
void    rw_path_arc   (RwSheet *sheet, RwPoint centre, double radius, double a0, double a1);
void    rw_path_close (RwSheet *sheet);
RwItem *rw_path_end   (RwSheet *sheet);

/* Shorthands.  The returned item is good until the next one is added. */
RwItem *rw_sheet_line    (RwSheet *sheet, RwPen pen, double x0, double y0, double x1, double y1);
RwItem *rw_sheet_polygon (RwSheet *sheet, RwPen pen, RwTint tint, const RwPoint *points, int count);
RwItem *rw_sheet_polyline(RwSheet *sheet, RwPen pen, const RwPoint *points, int count);
RwItem *rw_sheet_box     (RwSheet *sheet, RwPen pen, RwTint tint, double x0, double y0, double x1, double y1);
RwItem *rw_sheet_circle  (RwSheet *sheet, RwPen pen, RwTint tint, double x, double y, double radius);
RwItem *rw_sheet_text    (RwSheet *sheet, double x, double y, RwAlign align, RwLetters letters,
                          const char *text);
/* A dimension between two points; text is made from value in the sheet's units where text is NULL, with
 * the figure that suits the subject. */
RwItem *rw_sheet_dimension (RwSheet *sheet, RwMeasure measure, RwPoint from, RwPoint to, double offset_mm,
                            RwFigure figure, double value, const char *text);
RwItem *rw_sheet_angle   (RwSheet *sheet, RwPoint apex, double radius, double a0, double a1,
                          RwFigure figure, double degrees);
RwItem *rw_sheet_leader  (RwSheet *sheet, RwPoint arrow, RwPoint text_at, RwFigure figure, const char *text);
void    rw_item_name     (RwItem *item, const char *name);

/* Moves, turns (radians anticlockwise about the origin, before the move) or mirrors all items from the
 * first-th on; text stays upright and readable. */
void rw_sheet_move   (RwSheet *sheet, guint first, double dx, double dy);
void rw_sheet_turn   (RwSheet *sheet, guint first, double angle);
void rw_sheet_mirror (RwSheet *sheet, guint first); /* in y: a left-handed build */

/* The box round all paths (not lettering or dimensions), in mm; a sheet without any gives zeros. */
RwBox rw_sheet_extent (const RwSheet *sheet);

/* The box round one item: a path, or the points that a dimension, leader or text is tied to. */
RwBox rw_item_extent (const RwSheet *sheet, const RwItem *item);
