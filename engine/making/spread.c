#include "spread.h"

#include <math.h>
#include <string.h>

#include "chance.h"

/* Builds that a thread takes at a time. */
#define BATCH 64

/* Outcomes of all builds, by outcome and then by build. */
typedef struct
{
  const RwBench     *bench;
  const RwSpreadJob *job;
  int                member[RW_OUTCOME_COUNT]; /* of each family the one that scatters most */
  gint               next;   /* atomic: the first build that nobody has taken */
  double            *values; /* RW_OUTCOME_COUNT rows of builds */
  guint8            *notes_outside; /* of each build: any note is off by more than its limit */
} Study;

/* ---- trying builds ---- */

/* Each cut draws from a stream of its own, known by what it is: a cut more or less leaves the others' luck alone. */
static guint32
stream_of (const RwCut *cut)
{
  return (guint32) (cut->param + 1) << 16 | (guint32) (cut->slot + 1);
}

/* What cut is off by in a build, in standard deviations. */
static double
luck (const Study *study, const RwCut *cut, guint build)
{
  return rw_chance_normal (study->job->seed, stream_of (cut), build);
}

static gboolean
any_note_outside (const RwBench *bench, const double *outcomes)
{
  int first, past;

  rw_outcome_members (RW_OUTCOME_PITCH, &first, &past);
  for (int place = first; place < past; place++)
    if (fabs (outcomes[place] - bench->outcomes[place]) > bench->design.tolerance_pitch)
      return TRUE;
  return FALSE;
}

static void
try_build (Study *study, guint build, double *off)
{
  const RwBench *bench = study->bench;
  double outcomes[RW_OUTCOME_ALL];

  for (guint i = 0; i < bench->cuts->len; i++)
    {
      const RwCut *cut = rw_bench_cut (bench, i);

      off[i] = luck (study, cut, build) * cut->scatter / RW_NINETEEN_IN_TWENTY;
    }
  rw_bench_try (bench, off, outcomes);
  for (int i = 0; i < RW_OUTCOME_COUNT; i++)
    {
      int member = study->member[i];
      double value = member >= 0 ? outcomes[member] : NAN;

      /* Notes are told as what they are off the plan. */
      study->values[(gsize) i * study->job->builds + build]
          = i == RW_OUTCOME_PITCH && member >= 0 ? value - bench->outcomes[member] : value;
    }
  study->notes_outside[build] = any_note_outside (bench, outcomes);
}

static gboolean
stopped (const RwSpreadJob *job)
{
  return job->stop != NULL && g_atomic_int_get (job->stop) != 0;
}

static gpointer
work (gpointer data)
{
  Study *study = data;
  guint builds = study->job->builds;
  g_autofree double *off = g_new (double, study->bench->cuts->len + 1);

  while (!stopped (study->job))
    {
      guint from = (guint) g_atomic_int_add (&study->next, BATCH), to = MIN (from + BATCH, builds);

      if (from >= builds)
        break;
      for (guint build = from; build < to; build++)
        try_build (study, build, off);
      if (study->job->done != NULL)
        g_atomic_int_add (study->job->done, (gint) (to - from));
    }
  return NULL;
}

static void
try_all (Study *study)
{
  g_autoptr (GPtrArray) helpers = g_ptr_array_new ();

  for (guint i = 1; i < study->job->threads; i++)
    g_ptr_array_add (helpers, g_thread_new ("spread", work, study));
  work (study);
  for (guint i = 0; i < helpers->len; i++)
    g_thread_join (g_ptr_array_index (helpers, i));
}

/* ---- reading the results ---- */

static double *
values_of (const Study *study, int outcome)
{
  return study->values + (gsize) outcome * study->job->builds;
}

static double
nominal (const Study *study, int outcome)
{
  int member = study->member[outcome];

  if (outcome == RW_OUTCOME_PITCH)
    return 0;
  return member >= 0 ? study->bench->outcomes[member] : NAN;
}

/* The square of the correlation, less what chance gives it. */
static RwEstimate
part_of (const Study *study, const RwCut *cut, const double *values, const RwSummary *summary)
{
  double xy = 0, xx = 0, x_sum = 0, n = summary->count;

  for (guint build = 0; build < study->job->builds; build++)
    if (isfinite (values[build]))
      {
        double x = luck (study, cut, build);

        x_sum += x;
        xx += x * x;
        xy += x * (values[build] - summary->mean.value);
      }

  double square = xy * xy / ((xx - x_sum * x_sum / n) * summary->deviation.value * summary->deviation.value * (n - 1));
  return (RwEstimate){ square - (1 - square) / (n - 2), 2 * sqrt (square / n) * (1 - square) + 1 / n };
}

/* Parts are sorted out by operation before summary turns the values round. */
static void
find_shares (const Study *study, const RwSensitivity *sensitivity, int outcome, RwScattered *scattered)
{
  const double *values = values_of (study, outcome);
  int place = study->member[outcome];

  for (guint i = 0; i < study->bench->cuts->len; i++)
    {
      const RwCut *cut = rw_bench_cut (study->bench, i);
      RwEstimate *share = &scattered->share[cut->operation - RW_OPERATION (0)], part;

      if (!(fabs (rw_sensitivity_rate (sensitivity, i, place)) * cut->scatter > 0))
        continue;
      part = part_of (study, cut, values, &scattered->summary);
      share->value += part.value;
      share->error = hypot (share->error, part.error);
    }
  for (int k = 0; k < RW_OPERATIONS; k++)
    scattered->share[k].value = CLAMP (scattered->share[k].value, 0, 1);
}

static void
count_bins (RwScattered *scattered, const double *values, guint count)
{
  double half = 4 * scattered->summary.deviation.value;

  scattered->from = scattered->summary.mean.value - half;
  scattered->to = scattered->summary.mean.value + half;
  for (guint i = 0; i < count; i++)
    {
      double place = (values[i] - scattered->from) / (2 * half) * RW_SPREAD_BINS;

      if (place >= 0 && place < RW_SPREAD_BINS)
        scattered->bins[(int) place]++;
    }
}

static guint
count_outside (const double *values, guint count, double planned, double limit)
{
  guint outside = 0;

  for (guint i = 0; i < count; i++)
    if (fabs (values[i] - planned) > limit)
      outside++;
  return outside;
}

static void
read_outcome (const Study *study, const RwSensitivity *sensitivity, int outcome, RwScattered *scattered)
{
  const RwBench *bench = study->bench;
  guint builds = study->job->builds;
  g_autofree double *sorted = g_memdup2 (values_of (study, outcome), builds * sizeof (double));

  *scattered = (RwScattered){ .planned = nominal (study, outcome),
                              .limit = rw_design_get (&bench->design, rw_outcome (outcome)->limit) };
  scattered->summary = rw_summary (sorted, builds);
  if (scattered->summary.count < 3)
    return;
  scattered->straight = rw_sensitivity_spread (sensitivity, bench, outcome) / RW_NINETEEN_IN_TWENTY;
  scattered->outside = rw_chance_of (count_outside (sorted, scattered->summary.count, scattered->planned,
                                                    scattered->limit),
                                     scattered->summary.count);
  /* What never moves but by rounding has no shares. */
  if (scattered->summary.deviation.value > 1e-9)
    {
      count_bins (scattered, sorted, scattered->summary.count);
      find_shares (study, sensitivity, outcome, scattered);
    }
}

static guint
count_notes (const Study *study)
{
  guint outside = 0;

  for (guint build = 0; build < study->job->builds; build++)
    outside += study->notes_outside[build];
  return outside;
}

static RwSpread *
read_all (const Study *study, const RwSensitivity *sensitivity)
{
  RwSpread *spread = g_new0 (RwSpread, 1);
  const RwScattered *height = &spread->outcome[RW_OUTCOME_BRIDGE_HEIGHT];

  spread->builds = study->job->builds;
  spread->seed = study->job->seed;
  memcpy (spread->member, study->member, sizeof spread->member);
  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    read_outcome (study, sensitivity, outcome, &spread->outcome[outcome]);
  spread->solved = spread->outcome[RW_OUTCOME_ACTION].summary.count;
  spread->shim = rw_chance_of (count_outside (values_of (study, RW_OUTCOME_BRIDGE_HEIGHT), spread->builds,
                                              study->bench->bridge_height, height->limit),
                               spread->solved);
  spread->any_note = rw_chance_of (count_notes (study), spread->solved);
  return spread;
}

RwSpread *
rw_spread_new (const RwBench *bench, const RwSensitivity *sensitivity, const RwSpreadJob *job)
{
  g_autofree double *values = g_new (double, (gsize) RW_OUTCOME_COUNT * job->builds);
  g_autofree guint8 *notes = g_new0 (guint8, job->builds);
  Study study = { bench, job, { 0 }, 0, values, notes };

  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    study.member[outcome] = rw_sensitivity_member (sensitivity, bench, outcome);
  try_all (&study);
  return stopped (job) ? NULL : read_all (&study, sensitivity);
}

void
rw_spread_free (RwSpread *spread)
{
  g_free (spread);
}
