#include "summary.h"

#include <math.h>
#include <stdlib.h>

static int
compare (const void *a, const void *b)
{
  double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
}

/* Moves the finite numbers to the front; returns how many there are. */
static guint
keep_finite (double *values, guint count)
{
  guint kept = 0;

  for (guint i = 0; i < count; i++)
    if (isfinite (values[i]))
      values[kept++] = values[i];
  return kept;
}

/* Between the two numbers next to a rank that need not be whole. */
static double
at_rank (const double *sorted, guint count, double rank)
{
  double held = CLAMP (rank, 0, count - 1.0);
  guint below = (guint) held, above = MIN (below + 1, count - 1);

  return sorted[below] + (held - below) * (sorted[above] - sorted[below]);
}

/* A percentile, 0 < share < 1, of numbers in rising order. */
static RwEstimate
percentile (const double *sorted, guint count, double share)
{
  double rank = share * count - 0.5, wobble = sqrt (count * share * (1 - share));

  return (RwEstimate){ at_rank (sorted, count, rank),
                       (at_rank (sorted, count, rank + wobble) - at_rank (sorted, count, rank - wobble)) / 2 };
}

RwSummary
rw_summary (double *values, guint count)
{
  guint n = keep_finite (values, count);
  RwSummary summary = { .count = n };
  double sum = 0, square = 0, fourth = 0;

  if (n < 2)
    {
      summary.mean = summary.deviation = summary.low = summary.middle = summary.high = (RwEstimate){ NAN, NAN };
      return summary;
    }
  qsort (values, n, sizeof values[0], compare);
  for (guint i = 0; i < n; i++)
    sum += values[i];
  for (guint i = 0; i < n; i++)
    {
      double off = (values[i] - sum / n) * (values[i] - sum / n);

      square += off;
      fourth += off * off;
    }

  double deviation = sqrt (square / (n - 1)), kurtosis = square > 0 ? n * fourth / (square * square) : 1;
  summary.mean = (RwEstimate){ sum / n, deviation / sqrt (n) };
  summary.deviation = (RwEstimate){ deviation, deviation / 2 * sqrt (fmax (0, kurtosis - 1) / n) };
  summary.low = percentile (values, n, 0.025);
  summary.middle = percentile (values, n, 0.5);
  summary.high = percentile (values, n, 0.975);
  return summary;
}

RwEstimate
rw_chance_of (guint times, guint count)
{
  double share = (times + 1.0) / (count + 2.0);

  return (RwEstimate){ (double) times / MAX (count, 1), sqrt (share * (1 - share) / (count + 3.0)) };
}
