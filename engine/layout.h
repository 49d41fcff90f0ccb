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
  double    size;   /* height of capitals... the lettering size h of ISO 3098, mm */
  RwBox     box;    /* upright box round the lettering as placed */
  RwFigure  figure;
  const char *text; /* the sheet's */
} RwPlacedText;

/* A line or filled head that belongs to a dimension or leader. */
typedef struct
{
  int      item;
  gboolean filled; /* an arrow head: p[0] the tip, p[1], p[2] the corners */
  RwPoint  p[3];   /* line: p[0] to p[1] */
} RwPlacedMark;

typedef struct
{
  const RwSheet *sheet; /* not owned; must outlive the layout */
  double         scale; /* paper mm per sheet mm */
  GArray        *texts; /* of RwPlacedText */
  GArray        *marks; /* of RwPlacedMark */
  RwBox          extent; /* of everything, paper mm */
} RwLayout;

/* letters: size of RW_LETTERS_SMALL in paper mm; 0 means 2.5. */
RwLayout *rw_layout_new  (const RwSheet *sheet, double scale, double letters);
void      rw_layout_free (RwLayout *layout);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwLayout, rw_layout_free)

/* Width of a text in the lettering used for layout, per mm of size, from a table of advance widths. */
double    rw_lettering_width (const char *text);

/* The topmost item at a point of the sheet (mm), within reach (sheet mm); -1 where there is none.  Filled
 * shapes count inside too. */
int       rw_sheet_pick (const RwSheet *sheet, double x, double y, double reach);
