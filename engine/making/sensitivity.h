/* Sensitivities: how far each outcome moves when a cut is off by one.
 *
 * Found through the whole model: each cut is put in as measured a small step over and under its planned size, and the
 * outcomes are read again.  Where a size can't go one way (the end of its range) two steps the other way take the
 * place: (-3 f0 + 4 f1 - f2) / 2 step.  Steps are 0.01 mm, 0.005 degrees, 5 N/m: far over the 1e-9 mm to which the
 * side view is solved, and small enough for what is left out, which goes with their square.
 *
 * Source    central differences: M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions (1964), 25.3.21;
 *           sensitivity coefficients: JCGM 100:2008, 5.1.3 and 5.1.4.
 */
#pragma once

#include "bench.h"

typedef struct
{
  guint   cuts;
  double *rates; /* RW_OUTCOME_ALL for each cut; NaN for outcomes that the build does not have */
} RwSensitivity;

RwSensitivity *rw_sensitivity_new  (const RwBench *bench);
void           rw_sensitivity_free (RwSensitivity *sensitivity);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwSensitivity, rw_sensitivity_free)

/* Unit of the outcome for one unit of the cut.  Of a family: of the member that moves most, unsigned. */
double rw_sensitivity_rate (const RwSensitivity *sensitivity, guint cut, int outcome);

/* rw_sensitivity_spread: the half-width of an outcome's spread when every cut is within its scatter, at the same level
 * of confidence, cuts being independent of each other: sqrt (sum (rate scatter)^2), JCGM 100:2008, 5.1.2, eq. (10).
 * Of a family: the largest of its members'. */
double rw_sensitivity_spread (const RwSensitivity *sensitivity, const RwBench *bench, int outcome);

/* The member of a family that scatters most, as a place in the row of outcomes: the outcome itself where it is none; -1
 * where the build has nothing of it. */
int rw_sensitivity_member (const RwSensitivity *sensitivity, const RwBench *bench, int outcome);
