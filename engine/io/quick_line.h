/* An outline turned into the straight lines that a pen paints of it: dashes, corners and whole pixels are settled
 * once, however often parts of it are painted. */
#pragma once

#include "paint_cairo.h"
#include "scan.h"

typedef struct
{
  const RwPenStyle *style;
  double            width; /* pixels */
  guint32           colour;
  double            opacity;
  double            dash[6]; /* pixels */
} RwQuickLine;

/* The same widths as rw_paint() gives lines on a screen.  scale: pixels per paper mm, > 0. */
RwQuickLine rw_quick_line (RwPen pen, const RwPalette *palette, double scale);

/* Adds to lines (of RwPiece) what is painted of an outline (of RwPiece, pixels).  is_single: it is a straight line
 * from one point to another, which lies on whole pixels where it runs along an axis. */
void rw_quick_line_cut (const RwQuickLine *line, const GArray *outline, gboolean is_single, GArray *lines);

/* 0xffRRGGBB. */
guint32 rw_quick_pixel (const RwColour *colour);
