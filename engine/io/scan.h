/* Straight pieces turned into pixels, quickly: areas without smooth edges, lines with.
 *
 * For pictures that stay for a moment only, as while something is dragged: many times quicker than a painter
 * that is right everywhere.  What is left out: areas have hard edges, for lines to run along; the ends of lines
 * lie on whole pixels along the line; where a line meets itself it is painted twice.
 *
 * Coordinates are pixels, y down, the middle of the first pixel at 0.5, 0.5.
 */
#pragma once

#include "sheet/sheet.h"

typedef struct
{
  guint32 *first;          /* the pixel at 0, 0: 0xffRRGGBB, all opaque */
  gsize    stride;         /* pixels */
  int      x0, y0, x1, y1; /* what may be painted: x0 <= x < x1 */
} RwPixels;

typedef struct
{
  RwPoint a, b;
} RwPiece;

/* Sets all that may be painted. */
void rw_scan_clear (const RwPixels *pixels, guint32 colour);

/* Fills what the pieces wind round (non-zero rule), pixels with their middle inside; a run of pieces that is left
 * open is closed. */
void rw_scan_fill (const RwPixels *pixels, const RwPiece *pieces, int count, guint32 colour);

/* A line of a width, with a share 0..1 of its colour.  Painted in parts, next to each other, it comes out as
 * painted at once. */
void rw_scan_line (const RwPixels *pixels, RwPiece piece, double width, guint32 colour, double opacity);
