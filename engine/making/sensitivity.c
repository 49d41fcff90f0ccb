#include "sensitivity.h"

#include <math.h>
#include <string.h>

static double
step_for (const RwCut *cut)
{
  const char *unit = rw_cut_unit (cut);

  if (strcmp (unit, "deg") == 0)
    return 0.005;
  return strcmp (unit, "N/m") == 0 ? 5 : 0.01;
}

typedef struct
{
  const RwBench *bench;
  guint          cut;
  double        *off;  /* all zero but while a cut is tried */
  double        *rates; /* of the cut */
} Probe;

static void
try_off (const Probe *probe, double off, double *outcomes)
{
  probe->off[probe->cut] = off;
  rw_bench_try (probe->bench, probe->off, outcomes);
  probe->off[probe->cut] = 0;
}

static void
both_ways (const Probe *probe, double step)
{
  double below[RW_OUTCOME_ALL], above[RW_OUTCOME_ALL];

  try_off (probe, -step, below);
  try_off (probe, step, above);
  for (int i = 0; i < RW_OUTCOME_ALL; i++)
    probe->rates[i] = (above[i] - below[i]) / (2 * step);
}

static void
one_way (const Probe *probe, double step)
{
  double once[RW_OUTCOME_ALL], twice[RW_OUTCOME_ALL];

  try_off (probe, step, once);
  try_off (probe, 2 * step, twice);
  for (int i = 0; i < RW_OUTCOME_ALL; i++)
    probe->rates[i] = (4 * once[i] - twice[i] - 3 * probe->bench->outcomes[i]) / (2 * step);
}

/* What stands for a family moves as the member that moves most. */
static void
sum_up_families (double *rates)
{
  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    {
      double largest = NAN;
      int first, past;

      rw_outcome_members (outcome, &first, &past);
      for (int i = first; i < past && first != outcome; i++)
        largest = fmax (largest, fabs (rates[i]));
      if (first != outcome)
        rates[outcome] = largest;
    }
}

static void
probe_cut (const Probe *probe)
{
  const RwCut *cut = rw_bench_cut (probe->bench, probe->cut);
  double step = step_for (cut);

  if (cut->planned - step < cut->least)
    one_way (probe, step);
  else if (cut->planned + step > cut->most)
    one_way (probe, -step);
  else
    both_ways (probe, step);
  sum_up_families (probe->rates);
}

RwSensitivity *
rw_sensitivity_new (const RwBench *bench)
{
  RwSensitivity *sensitivity = g_new0 (RwSensitivity, 1);
  g_autofree double *off = g_new0 (double, bench->cuts->len + 1);

  sensitivity->cuts = bench->cuts->len;
  sensitivity->rates = g_new (double, (gsize) RW_OUTCOME_ALL * (sensitivity->cuts + 1));
  for (guint i = 0; i < sensitivity->cuts; i++)
    probe_cut (&(Probe){ bench, i, off, sensitivity->rates + (gsize) i * RW_OUTCOME_ALL });
  return sensitivity;
}

void
rw_sensitivity_free (RwSensitivity *sensitivity)
{
  g_free (sensitivity->rates);
  g_free (sensitivity);
}

double
rw_sensitivity_rate (const RwSensitivity *sensitivity, guint cut, int outcome)
{
  return sensitivity->rates[(gsize) cut * RW_OUTCOME_ALL + outcome];
}

static double
spread_of (const RwSensitivity *sensitivity, const RwBench *bench, int outcome)
{
  double sum = 0;

  if (!isfinite (bench->outcomes[outcome]))
    return NAN;
  for (guint i = 0; i < sensitivity->cuts; i++)
    {
      double part = rw_sensitivity_rate (sensitivity, i, outcome) * rw_bench_cut (bench, i)->scatter;

      sum += isfinite (part) ? part * part : 0;
    }
  return sqrt (sum);
}

int
rw_sensitivity_member (const RwSensitivity *sensitivity, const RwBench *bench, int outcome)
{
  double largest = -1;
  int member = -1, first, past;

  rw_outcome_members (outcome, &first, &past);
  for (int i = first; i < past; i++)
    if (spread_of (sensitivity, bench, i) > largest)
      {
        largest = spread_of (sensitivity, bench, i);
        member = i;
      }
  return member;
}

double
rw_sensitivity_spread (const RwSensitivity *sensitivity, const RwBench *bench, int outcome)
{
  int place = rw_sensitivity_member (sensitivity, bench, outcome);

  return place >= 0 ? spread_of (sensitivity, bench, place) : NAN;
}
