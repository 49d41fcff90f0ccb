/* A drawing in full size on as many pages as it takes.
 *
 * Pages lie side by side with an overlap.  Each page is cut along its left and upper edge where it has a
 * neighbour there, and glued over the band that its neighbour leaves for it, so that the crosses of both lie
 * on each other.  Not every page is used to its edge: the bands lie where the drawing can best spare them.
 */
#pragma once

#include "page_frame.h"
#include "seams.h"

typedef struct
{
  RwPageShape shape;   /* of every page */
  double      overlap; /* mm */
  int         columns, rows;
  double      left[RW_SEAMS_MAX + 1]; /* of the layout, paper mm: what stands at the left of each column's room */
  double      top[RW_SEAMS_MAX + 1];  /* at the top of each row's */
} RwTiling;

/* rw_tiling_fit: the way in which no lettering lies in a band and that takes the fewest pages; of those, the fewest
 * rows.  One more column or row than it takes at least is tried; where lettering lies in a band then too, the fewest
 * pages.
 *
 * Given     layout   its extent, with 2 mm round it, has to be on the pages
 *           width    of the paper, upright, mm; height likewise.  Pages lie upright or across
 *           margin   round every page, mm
 *           overlap  of neighbours, mm; less than the room of a page
 * Returned  the tiling
 */
RwTiling rw_tiling_fit (const RwLayout *layout, double width, double height, double margin, double overlap);

/* Where the drawing's origin comes to stand on a page: mm from the page's lower left corner, y up.  Columns
 * are counted from 0 at the left, rows from 0 at the top. */
RwPoint rw_tiling_origin (const RwTiling *tiling, int column, int row);

/* What a page shows of the layout, paper mm: its room, or up to the end of the bands that it leaves for its
 * neighbours. */
RwBox rw_tiling_window (const RwTiling *tiling, int column, int row);

/* The layout with short lettering that lies in a band moved out of it, where there is room beside: figures along their
 * dimension lines.  lost: how many texts lie in a band still.  The same sheet; new. */
RwLayout *rw_tiling_settle (const RwTiling *tiling, const RwLayout *layout, int *lost);

/* The layout as it goes on a page: without the lettering that lies under a neighbour, or on one.  The same sheet;
 * new. */
RwLayout *rw_tiling_page (const RwTiling *tiling, const RwLayout *layout, int column, int row);

/* Adds a page's cut lines, bands to glue, register marks and the map of pages to its furniture.  Words on
 * them keep clear of what the page's layout, which may be NULL, has there. */
void rw_tiling_draw (const RwTiling *tiling, const RwLayout *page, int column, int row, RwSheet *frame);
