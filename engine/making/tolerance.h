/* Tolerances that are asked for: within what each cut must stay so that every outcome stays inside its limit.
 *
 * How they come about.  Tolerances and limits are half-widths at one level of confidence, cuts are independent, so the
 * parts that cuts have in an outcome add by their squares (JCGM 100:2008, 5.1.2, eq. (10)):
 *
 *   sum over cuts (rate x tolerance)^2 <= limit^2
 *
 * No tolerance is wider than CAP = twice what the shop holds anyway: nobody works worse than that.  What a cut takes of
 * a limit with its cap is all it ever takes; the rest of the limit is shared out equally among the others, so that
 * tolerance = min (cap, level/|rate|) with the level at which the sum just is the limit.  Of the tolerances that the
 * outcomes ask for, the narrowest counts; notes are outcomes one by one.
 *
 * A tolerance finer than hand tools can measure (0.05 mm, 0.05 degrees: vernier caliper, bevel against a rule), or
 * under a quarter of what the shop holds, is not met by measuring and cutting: such a cut is fitted to its neighbour,
 * by trial, until the outcome is right.  Both figures are common practice, no source.
 */
#pragma once

#include "sensitivity.h"

typedef struct
{
  double   asked;       /* +-, in the unit of the cut; NaN where no outcome depends on it */
  double   held;        /* what the shop holds: the scatter of its operation */
  int      asked_for;   /* place of the outcome that asks for it; -1: none does, asked is the cap */
  gboolean by_fitting;  /* finer than can be measured or held; asked is never finer than can be measured */
  gboolean takes_care;  /* narrower than held */
  double   used;        /* share of a limit that the usual scatter of this cut alone uses up; NaN as asked */
  int      used_of;     /* place of the outcome whose limit it is; -1 */
} RwTolerance;

/* One for each cut of the bench, in its order; free with g_free(). */
RwTolerance *rw_tolerances_new (const RwBench *bench, const RwSensitivity *sensitivity);

/* In a word or two, English, marked for translation: "fit, don't measure", "take care", "as usual". */
const char *rw_tolerance_advice (const RwTolerance *tolerance);

/* The places of the cuts, those that use up most of a limit first; of cuts that are members of one row of dimensions
 * (frets, strings) only the first.  Cuts that nothing depends on are left out.  An array of guint. */
GArray *rw_tolerances_ranked (const RwBench *bench, const RwTolerance *tolerances);
