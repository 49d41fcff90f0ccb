/* The rod for a hook against published bend allowances.
 *
 * A hook has one bend of 90 degrees.  Its rod is leg + claw, both to the axis beyond the bend, less twice the
 * way from the axis to the tangent, plus the neutral line round the bend: so the allowance is got back from
 * the blank.  Bends by other angles are in proportion to the angle.
 */
#include <math.h>

#include "expected.h"

#define IN 25.4

typedef struct
{
  const char *name;
  double      rod, radius, k; /* mm, inside radius mm, neutral line over the rod's diameter */
  double      degrees;
  double      allowance, tolerance; /* mm along the neutral line */
} Bend;

static const Bend bends[] = {
  /* Machinery's Handbook, 31st ed. (2020), p. 1421: 0.64 T + 1.57 R for half-hard brass and soft steel,
   * which is K = 0.64/1.57 = 0.407.  The worked example: soft steel, T 1/8 in, 180 degrees at R 3/8 in
   * (1.338 in) and 60 degrees at R 5/8 in (0.707 in).  pi/2 for 1.57 makes 0.001 in; the second bend
   * scaled by 0.8 to come within the range of hooks. */
  { "mh31/180", 0.125 * IN, 0.375 * IN, 0.407437, 180, 1.338 * IN, 0.001 * IN },
  { "mh31/60", 0.8 * 0.125 * IN, 0.8 * 0.625 * IN, 0.407437, 60, 0.8 * 0.707 * IN, 0.001 * IN },
  /* The three materials of the same page at 5 mm and R 6 mm, 180 degrees. */
  { "mh31/half-hard", 5, 6, 0.407437, 180, 25.24, 0.02 },
  { "mh31/soft", 5, 6, 0.350141, 180, 24.34, 0.02 },
  { "centre-line", 5, 6, 0.5, 180, 26.70, 0.006 },
};

/* DIN 6935: developed length = a + b - v with a and b to the outer tangents, neutral line at k s/2 from the
 * inside.  The example of the Tabellenbuch Metall: 120 degrees of bend, r 6, s 5, k 0.7 gives v 5.77 mm; the
 * others worked from the standard's k = 0.65 + 0.5 log (r/s). */
typedef struct
{
  const char *name;
  double      rod, radius, k, degrees, shortening;
} Din;

static const Din din[] = {
  { "din/tabellenbuch", 5, 6, 0.7, 120, 5.77 }, { "din/formula", 5, 6, 0.68959, 120, 5.823 },
  { "din/3-3", 3, 3, 0.650, 90, 5.756 },        { "din/4-2", 2, 4, 0.8005, 90, 4.459 },
  { "din/10-5", 5, 10, 0.8005, 90, 11.148 },    { "din/5-1-doubled", 2, 10, 0.9995, 90, 2 * 3.361 },
};

/* Length of the neutral line round the bend of a hook, mm. */
static double
quarter_bend (double rod, double radius, double k)
{
  g_autofree char *changes = g_strdup_printf ("hooks.claw=25|hooks.rod=%.17g|hooks.bend_radius=%.17g|"
                                              "hooks.k_factor=%.17g",
                                              rod, radius, k);
  g_autoptr (Built) built = built_new (changes);

  return built_value (built, "hooks.blank") - built_value (built, "hooks.leg") - 25 + 2 * (radius + rod / 2);
}

static void
test_bend (gconstpointer data)
{
  const Bend *bend = data;

  expected_near ("the allowance", quarter_bend (bend->rod, bend->radius, bend->k) * bend->degrees / 90,
                 bend->allowance, bend->tolerance);
}

static void
test_din (gconstpointer data)
{
  const Din *row = data;
  double arc = quarter_bend (row->rod, row->radius, row->k / 2) * row->degrees / 90;

  expected_near ("the shortening", 2 * (row->radius + row->rod) - arc, row->shortening, 0.006);
}

/* What the saw needs: the trimmed ends, and a kerf for each hook. */
static void
test_rod (void)
{
  g_autoptr (Built) built = built_new ("hooks.count=20|hooks.trim=1.5|shop.rod_kerf=1.2");
  double cut = built_value (built, "hooks.cut");

  expected_near ("hooks.cut", cut, built_value (built, "hooks.blank") + 3, 1e-12);
  expected_near ("hooks.rod_total", built_value (built, "hooks.rod_total"), 20 * (cut + 1.2), 1e-9);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (gsize i = 0; i < G_N_ELEMENTS (bends); i++)
    {
      g_autofree char *path = g_strconcat ("/bend/", bends[i].name, NULL);

      g_test_add_data_func (path, &bends[i], test_bend);
    }
  for (gsize i = 0; i < G_N_ELEMENTS (din); i++)
    {
      g_autofree char *path = g_strconcat ("/bend/", din[i].name, NULL);

      g_test_add_data_func (path, &din[i], test_din);
    }
  g_test_add_func ("/bend/rod", test_rod);
  return g_test_run ();
}
