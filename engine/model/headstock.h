/* The headstock unfolded into the board's plane.
 *
 * Frame: origin where the neck's centre line meets the nut's back face, x along the centre line away from the
 * nut, y to the treble side.  Lengths mm. */
#pragma once

#include "model.h"

typedef struct
{
  RwPoint2 nut;  /* where the string leaves the nut's back face */
  RwPoint2 post; /* NaN where the string has none */
  double   bend; /* radians, unsigned: between its run on the board and its run to the post */
} RwHeadstockRun;

RwHeadstockRun rw_headstock_run (const RwModel *m, int string);
