/* The spread study: many builds through the whole model, each cut off by chance as the shop's operations are.
 *
 * Assumed.  What a cut is off by is normal, its operation's scatter being what nineteen pieces of twenty keep: the
 * standard deviation is scatter/1.96.  It is not cut off, but no size leaves the range of its parameter.  Cuts are
 * independent of each other, those of one operation too; nothing is off on purpose.
 * The same seed gives the same numbers, to the last bit, on any number of threads.
 *
 * Shares.  The part that a cut has in an outcome is the square of their correlation over all builds, less what chance
 * alone would give it, (1 - r^2)/(n - 2); the parts of an operation's cuts are added.  That is the first-order share of
 * the variance where an outcome follows its cuts in a straight line; what is missing from 100 % is bends and
 * joint effects.
 *
 * Source    propagation of distributions: JCGM 101:2008, clauses 5.9 and 7.
 */
#pragma once

#include "sensitivity.h"
#include "summary.h"

#define RW_SPREAD_BINS 31 /* odd: one stands over the middle */

typedef struct
{
  guint   builds;  /* at least 2 */
  guint64 seed;
  guint   threads; /* at least 1 */
  gint   *stop;    /* may be NULL; atomic: not 0 ends the study early, which then returns NULL */
  gint   *done;    /* may be NULL; atomic: builds so far */
} RwSpreadJob;

typedef struct
{
  RwSummary  summary;
  double     planned;
  double     limit;
  RwEstimate outside;                /* chance to be off the plan by more than the limit */
  double     straight;               /* standard deviation by the law of propagation, from the sensitivities */
  RwEstimate share[RW_OPERATIONS];
  guint      bins[RW_SPREAD_BINS];   /* builds by the outcome, over from..to */
  double     from, to;
} RwScattered;

typedef struct
{
  guint       builds, solved; /* solved: those that can be strung up at all */
  guint64     seed;
  RwScattered outcome[RW_OUTCOME_COUNT]; /* summary.count is 0 for what the build does not have */
  int         member[RW_OUTCOME_COUNT];  /* that a family stands for here, as a place in the row; -1 */
  RwEstimate  shim;    /* chance that no bridge within the limit of the one intended sets the action right */
  RwEstimate  any_note; /* chance that any note is off by more than the limit */
} RwSpread;

RwSpread *rw_spread_new  (const RwBench *bench, const RwSensitivity *sensitivity, const RwSpreadJob *job);
void      rw_spread_free (RwSpread *spread);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwSpread, rw_spread_free)

/* Half-widths at nineteen in twenty are so many standard deviations of a normal law. */
#define RW_NINETEEN_IN_TWENTY 1.959963984540054
