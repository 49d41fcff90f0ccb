/* How long ten thousand builds take on one thread and on two, and the tolerances of one build.  Run by `meson test
 * --benchmark`. */
#include "making/care.h"
#include "making/spread.h"

#define BUILDS 10000
#define ROUNDS 3

static double
milliseconds (const RwCare *care, guint threads)
{
  double least = G_MAXDOUBLE;

  for (int i = 0; i < ROUNDS; i++)
    {
      gint64 start = g_get_monotonic_time ();

      rw_spread_free (rw_spread_new (care->bench, care->sensitivity,
                                     &(RwSpreadJob){ .builds = BUILDS, .seed = 1, .threads = threads }));
      least = MIN (least, (double) (g_get_monotonic_time () - start) / 1000);
    }
  return least;
}

int
main (void)
{
  RwDesign design;

  rw_design_init (&design);
  gint64 start = g_get_monotonic_time ();
  g_autoptr (RwCare) care = rw_care_new (&design, NULL);
  g_print ("%-40s %7.1f ms\n", "sensitivities and tolerances", (double) (g_get_monotonic_time () - start) / 1000);
  for (guint threads = 1; threads <= 2; threads++)
    g_print ("%d builds, threads: %-19u %7.1f ms\n", BUILDS, threads, milliseconds (care, threads));
  return 0;
}
