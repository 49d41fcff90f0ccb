/* How long the full solve takes.  Run by `meson test --benchmark`; with an argument it solves that many times and
 * prints nothing, for counting instructions:
 *
 *   valgrind --tool=callgrind --toggle-collect=rw_solve build/tests/bench/bench-solve 10
 */
#include <stdlib.h>

#include "model/solve.h"

#define ROUNDS 11
#define SOLVES 500

static int
compare (const void *a, const void *b)
{
  double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
}

static double
microseconds_per_solve (const RwDesign *design, RwResult *result)
{
  gint64 start = g_get_monotonic_time ();

  for (int i = 0; i < SOLVES; i++)
    rw_solve (design, NULL, result);
  return (double) (g_get_monotonic_time () - start) / SOLVES;
}

/* Least and median over several rounds: the least is what the machine can do, the median what it does. */
static void
report (const char *what, const RwDesign *design, RwResult *result)
{
  double took[ROUNDS];

  for (int i = 0; i < ROUNDS; i++)
    took[i] = microseconds_per_solve (design, result);
  qsort (took, ROUNDS, sizeof took[0], compare);
  g_print ("%-32s least %6.1f us, median %6.1f us\n", what, took[0], took[ROUNDS / 2]);
}

int
main (int argc, char **argv)
{
  static RwResult result;
  RwDesign design;

  rw_design_init (&design);
  if (argc > 1)
    {
      for (int left = atoi (argv[1]); left > 0; left--)
        rw_solve (&design, NULL, &result);
      return 0;
    }
  report ("default build", &design, &result);
  design.setup_neck_flex = RW_NO;
  report ("default build, rigid neck", &design, &result);
  return 0;
}
