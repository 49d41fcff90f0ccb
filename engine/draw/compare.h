/* What differs between two builds: parameters that are set otherwise, then dimensions that came out otherwise. */
#pragma once

#include "model/solve.h"
#include "sheet/sheet.h"

typedef struct
{
  RwSubject subject;
  double    before, now; /* NaN: not a number (a choice, a wood ...), or left out in that build */
  int       more;        /* other rows of the same family, such as frets, that differ too, by less */
} RwDifference;

/* rw_compare: Given two solved builds; returns a new array of RwDifference.
 *
 * What an eye at the bench can't tell is no difference: under half a thousandth of a millimetre or degree,
 * or of the number itself where it is larger than 1.  Of a family with an index the row that differs most
 * stands for all.  A parameter that is a dimension too is compared as the dimension. */
GArray *rw_compare (const RwResult *before, const RwResult *now);
