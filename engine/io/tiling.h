/* A drawing in full size on as many pages as it takes.
 *
 * Pages lie side by side with an overlap.  Each page is cut along its left and upper edge where it has a
 * neighbour there, and glued over the band that its neighbour leaves for it, so that the crosses of both lie
 * on each other.
 */
#pragma once

#include "sheet/layout.h"
#include "page_frame.h"

typedef struct
{
  RwPageShape shape;   /* of every page */
  double      overlap; /* mm */
  int         columns, rows;
  RwPoint     start;   /* of the layout, paper mm: what stands in the upper left corner of the first room */
} RwTiling;

/* rw_tiling_fit: the way that takes the fewest pages; of those, the fewest rows.
 *
 * Given     layout   its extent, with 2 mm round it, has to be on the pages
 *           width    of the paper, upright, mm; height likewise.  Pages lie upright or across
 *           margin   round every page, mm
 *           overlap  of neighbours, mm; less than the room of a page
 * Returned  the tiling.  Where the pages have room to spare, the seams are put where the least lettering is
 * cut, and then where they touch the least.
 */
RwTiling rw_tiling_fit (const RwLayout *layout, double width, double height, double margin, double overlap);

/* Where the drawing's origin comes to stand on a page: mm from the page's lower left corner, y up.  Columns
 * are counted from 0 at the left, rows from 0 at the top. */
RwPoint rw_tiling_origin (const RwTiling *tiling, int column, int row);

/* The layout as it goes on a page: without the lettering that is not whole there and is whole on another. The
 * same sheet; new. */
RwLayout *rw_tiling_page (const RwTiling *tiling, const RwLayout *layout, int column, int row);

/* Adds a page's cut lines, bands to glue, register marks and the map of pages to its furniture.  Words on
 * them keep clear of the lettering of the page's layout, which may be NULL. */
void rw_tiling_draw (const RwTiling *tiling, const RwLayout *page, int column, int row, RwSheet *frame);
