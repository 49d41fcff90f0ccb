/* A sheet laid out at a scale: what a painter paints, in millimetres of paper.
 *
 * Dimension lines, arrows and leaders have become plain lines and filled heads; texts have their places,
 * and those that would run over other text or over lines of the drawing are moved to another of their
 * places or, by rank, left out.  Origin and axes as in the sheet: paper = scale x sheet.
 */
#pragma once

#include "sheet.h"

#define RW_WIDE_MM 0.5
#define RW_NARROW_MM 0.25

typedef struct
{
  int       item;   /* of the sheet */
  RwPoint   at;     /* left end of the base line, paper mm */
  double    turn;   /* radians anticlockwise */
  double    size;   /* height of capitals: the lettering size h of ISO 3098, mm */
  double    width;  /* along the base line, mm */
  RwBox     box;    /* upright box round the lettering as placed */
  RwFigure  figure;
  const char *text; /* the sheet's */
} RwPlacedText;

typedef enum
{
  RW_MARK_LINE,      /* dimension line or leader: p[0] to p[1] */
  RW_MARK_EXTENSION, /* extension line: p[0] to p[1] */
  RW_MARK_ARC,       /* dimension line of an angle: centre p[0], radius, from a0 to a1 */
  RW_MARK_HEAD,      /* filled arrow head: p[0] the tip, p[1], p[2] the corners */
} RwMarkKind;

/* What belongs to a dimension or leader besides its text. */
typedef struct
{
  int        item;
  RwMarkKind kind;
  RwPoint    p[3];
  double     radius, a0, a1;
} RwPlacedMark;

typedef struct
{
  const RwSheet *sheet; /* not owned; must outlive the layout */
  double         scale; /* paper mm per sheet mm */
  GArray        *texts; /* of RwPlacedText */
  GArray        *marks; /* of RwPlacedMark */
  RwBox          extent; /* of everything, paper mm */
} RwLayout;

/* rw_layout_new: lays a sheet out.
 *
 * Given     scale    paper mm per sheet mm, > 0
 *           letters  size of RW_LETTERS_SMALL in paper mm; 0 means 2.5.  All other sizes on paper go with it:
 *                    larger lettering, arrow heads, gaps and distances of dimension lines
 * Returned  a new layout; the same for the same input, to the last bit.
 *
 * Proportions at 2.5 mm (ISO 129-1 and its drawing practice): extension lines start 1 mm from the object and
 * run 2 mm past the dimension line; arrow heads are 3 mm long and 1 mm wide; figures stand 1 mm over
 * the line, to be read from below or from the right.  Where a dimension is shorter than 7 mm its arrows stand
 * outside, and a figure that is wider than its dimension stands beside it.
 *
 * Texts of the sheet keep their places.  A dimension tries the middle of its line, either end, outside, and
 * the same in rows further out; a leader tries all four sides, near and far.  In the order of ranks, and of
 * items within a rank, each takes the place that crosses least.  A text that would still touch other
 * text, a wide line or a dimension line is left out, with all its lines, unless its rank is 0.
 */
RwLayout *rw_layout_new  (const RwSheet *sheet, double scale, double letters);
void      rw_layout_free (RwLayout *layout);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwLayout, rw_layout_free)

/* Width of a text in the lettering used for layout, per mm of size, from a table of advance widths. */
double    rw_lettering_width (const char *text);

/* The topmost path at a point of the sheet (mm), within reach (sheet mm, > 0); -1 where there is none.
 * Filled shapes count inside too; grain strokes don't count. */
int       rw_sheet_pick (const RwSheet *sheet, double x, double y, double reach);

/* The topmost of the layout's texts at a point of the paper, or within reach of it (mm); -1 where there is none. */
int       rw_layout_text_at (const RwLayout *layout, double x, double y, double reach);
