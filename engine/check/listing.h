/* The dimension list: the rows of a solved build as people and programs read them. */
#pragma once

#include "finding.h"

typedef struct
{
  RwSlot slot;
  double value;    /* now: measured where measured */
  double planned;  /* of the plan without anything measured; NaN where the plan has no such row */
  double measured; /* NaN: not measured */
} RwRow;

/* All rows that have a value now, in the order of dims.def. */
GArray *rw_listing_rows (const RwResult *now, const RwResult *planned, const RwMeasured *measured);
