/* Where a drawing on several pages is parted: each seam stands by itself, within what the pages have to spare, where
 * the least is lost under it. */
#pragma once

#include "sheet/layout.h"

/* More pages than this no paper has in a row. */
#define RW_SEAMS_MAX 63

/* Pages side by side along x, or one under the other along y downwards. */
typedef struct
{
  gboolean downwards;
  double   low, high; /* of the drawing along the run, paper mm; -y where downwards */
  double   room;      /* of each page */
  double   overlap;   /* of neighbours; less than half the room */
  int      pages;     /* enough of them */
} RwRun;

/* rw_seams_find: the run's pages - 1 places at which a page ends and the next begins, ascending.  The next lies over
 * the band from there to the overlap further on, up to which the page before goes. */
void rw_seams_find (const RwLayout *layout, const RwRun *run, double *seams);
