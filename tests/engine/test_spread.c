/* The spread of a shop's builds, against the law of propagation and against itself. */
#include "making/spread.h"

#include <math.h>
#include <string.h>

#include "expected.h"

typedef struct
{
  RwBench       *bench;
  RwSensitivity *sensitivity;
  RwSpread      *spread;
} Run;

static Run
run_on (const char *changes, RwSpreadJob job)
{
  g_autoptr (Built) built = built_new (changes);
  Run run = { .bench = rw_bench_new (&built->design, &built->measured) };

  g_assert_nonnull (run.bench);
  run.sensitivity = rw_sensitivity_new (run.bench);
  run.spread = rw_spread_new (run.bench, run.sensitivity, &job);
  return run;
}

static Run
run (const char *changes, guint builds)
{
  return run_on (changes, (RwSpreadJob){ .builds = builds, .seed = 11, .threads = 2 });
}

static void
clear (Run *done)
{
  rw_bench_free (done->bench);
  rw_sensitivity_free (done->sensitivity);
  g_clear_pointer (&done->spread, rw_spread_free);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Run, clear)

/* To the last bit, whatever the number of threads; and again. */
static void
test_threads (void)
{
  static const guint threads[] = { 1, 2, 4, 1 };
  g_auto (Run) first = run_on ("", (RwSpreadJob){ .builds = 500, .seed = 3, .threads = 3 });

  for (gsize i = 0; i < G_N_ELEMENTS (threads); i++)
    {
      g_auto (Run) again = run_on ("", (RwSpreadJob){ .builds = 500, .seed = 3, .threads = threads[i] });

      g_assert_cmpint (memcmp (first.spread, again.spread, sizeof *first.spread), ==, 0);
    }
}

static void
test_seed (void)
{
  g_auto (Run) one = run_on ("", (RwSpreadJob){ .builds = 500, .seed = 3, .threads = 1 });
  g_auto (Run) other = run_on ("", (RwSpreadJob){ .builds = 500, .seed = 4, .threads = 1 });
  RwEstimate a = one.spread->outcome[RW_OUTCOME_ACTION].summary.mean;
  RwEstimate b = other.spread->outcome[RW_OUTCOME_ACTION].summary.mean;

  g_assert_cmpfloat (a.value, !=, b.value);
  expected_near ("means", a.value, b.value, 4 * hypot (a.error, b.error));
}

/* A shop twenty times as careful: outcomes follow their cuts in straight lines, and the law of propagation holds (JCGM
 * 100:2008, 5.1.2). */
static Run
run_careful (void)
{
  GString *changes = g_string_new (NULL);

  for (int k = 0; k < RW_OPERATIONS; k++)
    {
      const RwParam *operation = rw_param (RW_OPERATION (k));

      g_string_append_printf (changes, "%s%s=%.6f", k > 0 ? "|" : "", operation->id,
                              g_ascii_strtod (operation->initial, NULL) / 20);
    }
  Run done = run (changes->str, 4000);
  g_string_free (changes, TRUE);
  return done;
}

static void
test_straight (void)
{
  g_auto (Run) done = run_careful ();

  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    {
      const RwScattered *scattered = &done.spread->outcome[outcome];
      double bend = 0.002 * scattered->straight; /* left of the curvature */

      if (scattered->summary.count == 0)
        continue;

      expected_near (rw_outcome (outcome)->id, scattered->summary.mean.value, scattered->planned,
                     4 * scattered->summary.mean.error + bend);
      expected_near (rw_outcome (outcome)->id, scattered->summary.deviation.value, scattered->straight,
                     4 * scattered->summary.deviation.error + bend);
    }
}

/* Shares against (rate scatter)^2 over their sum, and their sum against all. */
static void
test_shares (void)
{
  g_auto (Run) done = run_careful ();

  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    {
      double wanted[RW_OPERATIONS] = { 0 }, all = 0, sum = 0, error = 0;
      int place = done.spread->member[outcome];

      if (place < 0)
        continue;
      for (guint i = 0; i < done.bench->cuts->len; i++)
        {
          const RwCut *cut = rw_bench_cut (done.bench, i);
          double part = rw_sensitivity_rate (done.sensitivity, i, place) * cut->scatter;

          wanted[cut->operation - RW_OPERATION (0)] += part * part;
          all += part * part;
        }
      for (int k = 0; k < RW_OPERATIONS; k++)
        {
          RwEstimate share = done.spread->outcome[outcome].share[k];

          expected_near (rw_param (RW_OPERATION (k))->id, share.value, wanted[k] / all, 4 * share.error + 1e-3);
          sum += share.value;
          error = hypot (error, share.error);
        }
      expected_near ("all", sum, 1, 4 * error + 0.01);
    }
}

/* The chance of a shim against the normal law with the deviation of the law of propagation; a bent model leaves a
 * little. */
static void
test_shim (void)
{
  g_auto (Run) done = run ("", 4000);
  const RwScattered *height = &done.spread->outcome[RW_OUTCOME_BRIDGE_HEIGHT];

  expected_near ("shim", done.spread->shim.value, erfc (1.6 / height->straight / sqrt (2)),
                 4 * done.spread->shim.error + 0.005);
  expected_near ("outside", height->outside.value, done.spread->shim.value, 0);
}

/* A neck whose angle is known to be off wants a shim for sure; one that is known to be right hardly ever. */
static void
test_shim_known (void)
{
  g_auto (Run) off = run ("@neck.angle=3.4", 400), right = run ("@neck.angle=1.92", 400);

  g_assert_cmpfloat (off.spread->shim.value, >, 0.99);
  g_assert_cmpfloat (right.spread->shim.value, <, 0.01);
  g_assert_cmpfloat (right.spread->shim.error, >, 0);
}

/* Shop habits set to nothing: everything comes out as planned. */
static void
test_perfect (void)
{
  GString *changes = g_string_new (NULL);

  for (int k = 0; k < RW_OPERATIONS; k++)
    g_string_append_printf (changes, "%s%s=0", k > 0 ? "|" : "", rw_param (RW_OPERATION (k))->id);
  g_auto (Run) done = run (changes->str, 200);
  g_string_free (changes, TRUE);

  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    {
      const RwScattered *scattered = &done.spread->outcome[outcome];

      if (scattered->summary.count > 0)
        expected_near (rw_outcome (outcome)->id, scattered->summary.high.value, scattered->planned, 1e-6);
    }
}

/* An outcome's builds are all in its bins but for the one in some ten thousand beyond four deviations. */
static void
test_bins (void)
{
  g_auto (Run) done = run ("", 2000);
  const RwScattered *scattered = &done.spread->outcome[RW_OUTCOME_ACTION];
  guint sum = 0;

  for (int i = 0; i < RW_SPREAD_BINS; i++)
    sum += scattered->bins[i];
  g_assert_cmpuint (sum, >=, 1995);
  g_assert_cmpuint (sum, <=, 2000);
  g_assert_cmpuint (scattered->bins[RW_SPREAD_BINS / 2], >, scattered->bins[2]);
}

/* Asked to stop, it gives nothing. */
static void
test_stop (void)
{
  gint stop = 1, count = 0;
  g_auto (Run) done = run_on ("", (RwSpreadJob){ .builds = 5000, .seed = 1, .threads = 2, .stop = &stop,
                                                 .done = &count });

  g_assert_null (done.spread);
  g_assert_cmpint (count, ==, 0);
}

static void
test_progress (void)
{
  gint stop = 0, count = 0;
  g_auto (Run) done = run_on ("", (RwSpreadJob){ .builds = 300, .seed = 1, .threads = 2, .stop = &stop,
                                                 .done = &count });

  g_assert_nonnull (done.spread);
  g_assert_cmpint (count, ==, 300);
  g_assert_cmpuint (done.spread->solved, ==, 300);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/spread/threads", test_threads);
  g_test_add_func ("/spread/seed", test_seed);
  g_test_add_func ("/spread/straight", test_straight);
  g_test_add_func ("/spread/shares", test_shares);
  g_test_add_func ("/spread/shim", test_shim);
  g_test_add_func ("/spread/shim-known", test_shim_known);
  g_test_add_func ("/spread/perfect", test_perfect);
  g_test_add_func ("/spread/bins", test_bins);
  g_test_add_func ("/spread/stop", test_stop);
  g_test_add_func ("/spread/progress", test_progress);
  return g_test_run ();
}
