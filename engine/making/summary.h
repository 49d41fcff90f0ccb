/* What a set of numbers drawn by chance tells, each figure with its own standard error: how far it would move, as
 * a rule, if the study were run again with another seed.
 *
 * Source    mean and standard deviation: any text on statistics, from memory, s.e.(s) = s/2 sqrt((b2 - 1)/n) with b2
 *           the kurtosis; percentiles by order statistics: JCGM 101:2008, 7.7, their error from the binomial law of the
 *           rank; chances by the rule of succession (Laplace), so that none is said to be without error.
 */
#pragma once

#include <glib.h>

typedef struct
{
  double value, error;
} RwEstimate;

typedef struct
{
  guint      count;     /* numbers that are finite; the others are left out */
  RwEstimate mean;
  RwEstimate deviation; /* standard deviation */
  RwEstimate low, middle, high; /* at 2.5, 50 and 97.5 % */
} RwSummary;

/* Sorts values in place.  With fewer than two numbers all figures are NaN. */
RwSummary  rw_summary (double *values, guint count);

/* The chance of what has come up so many times in count trials. */
RwEstimate rw_chance_of (guint times, guint count);
