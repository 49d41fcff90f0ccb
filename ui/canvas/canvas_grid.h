/* Which tiles of a grid something touches: how little of a picture has to be painted anew.
 *
 * Coordinates are pixels, y down.  What lies outside of the grid is left out.
 */
#pragma once

#include "io/scan.h"

typedef struct
{
  RwPoint corner;     /* the upper left one */
  double  wide, high; /* of a tile */
  int     columns, rows;
  guint8 *touched;    /* by rows */
} RwGrid;

/* Tiles of a size, as many as cover the area from its upper left corner on; none of them touched. */
RwGrid *rw_grid_new  (RwBox area, double wide, double high);
void    rw_grid_free (RwGrid *grid);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwGrid, rw_grid_free)

/* How many tiles a box touches. */
int rw_grid_count (const RwGrid *grid, RwBox box);

void rw_grid_touch_box (RwGrid *grid, RwBox box);

/* Tiles that come within reach of a straight line: all of them, and few others. */
void rw_grid_touch_line (RwGrid *grid, RwPiece line, double reach);

/* Tiles whose middle one of two outlines winds round and the other does not (non-zero rule).  With the tiles of both
 * outlines themselves these are all on which two filled shapes differ.  Outlines are closed. */
void rw_grid_touch_difference (RwGrid *grid, const RwPiece *a, int a_count, const RwPiece *b, int b_count);
