/* How far the head sinks under the bridge, against the membrane's Green's function by images worked apart. */
#include <math.h>

#include "model/feet.h"

#include "expected.h"
#include "random_design.h"

/* Head of 139.7 mm radius at 6000 N/m, bridge 47.5 mm off its centre with feet 60 mm apart, each 9 by 6 mm: a
 * capacity radius of (9 + 6)/4 = 3.75 mm. */
#define BRIDGE \
  "rim.outer_diameter=279.4|rim.crest_inset=0|head.nominal=280|bridge.offset=47.5|bridge.foot_spread=60|" \
  "bridge.foot_length=9|bridge.foot_width=6|"

/* A straight, level neck whose strings leave the nut 10 mm over the head, five of them of one kind and
 * length; so that both slopes are told by heights and lengths alone. */
#define LEVEL \
  BRIDGE "neck.solve_for=action|neck.angle=0|neck.set_height=10|frets.crown_height=0|nut.string_height=0|" \
  "setup.neck_flex=no|scale.length=666.75|bridge.height=15.875|tailpiece.height=5|tailpiece.anchor=90|"

#define FORCE 50

static double
sag_at_force (const Built *built)
{
  return built_value (built, "bridge.sag") / built_value (built, "bridge.down_force") * FORCE;
}

static void
test_three_feet (void)
{
  g_autoptr (Built) built = built_new (BRIDGE);
  const RwSide *side = &built->result.side;

  expected_near ("the sag under 50 N", sag_at_force (built), 2.572, 0.0006);
  expected_near ("the middle foot's load", side->foot_share[0] / side->force * FORCE, 12.53, 0.006);
  expected_near ("the first foot's load", side->foot_share[1] / side->force * FORCE, 18.73, 0.006);
  expected_near ("the last foot's load", side->foot_share[2] / side->force * FORCE, 18.73, 0.006);
}

static void
test_two_feet (void)
{
  g_autoptr (Built) built = built_new (BRIDGE "bridge.feet=2");

  expected_near ("the sag under 50 N", sag_at_force (built), 2.803, 0.0006);
}

/* Twice the tension, half the sag for the same force. */
static void
test_tension (void)
{
  g_autoptr (Built) slack = built_new (BRIDGE "head.tension=5000");
  g_autoptr (Built) tight = built_new (BRIDGE "head.tension=10000");

  expected_near ("the ratio", sag_at_force (slack) / sag_at_force (tight), 2, 1e-9);
}

/* A foot with another's share of the sag added by the Fourier series of the Green's function, a second way
 * to the image: two feet at (b, +-c) press each other down as the series says.  What is cut off the series
 * is under 5e-6 mm. */
static double
series (double r, double b, double turn)
{
  double low = fmin (r, b), high = fmax (r, b), sum = -log (high);

  for (int n = 1; n < 400000; n++)
    sum += (pow (low / high, n) - pow (r * b, n)) * cos (n * turn) / n;
  return sum / (2 * G_PI);
}

static void
test_series (void)
{
  g_autoptr (Built) built = built_new (BRIDGE "bridge.feet=2");
  double radius = 139.7, capacity = 3.75, tension = 6; /* N/mm */
  double r = hypot (47.5, 30) / radius, turn = 2 * atan2 (30, 47.5);
  double own = log ((1 - r * r) * radius / capacity) / (2 * G_PI);
  double sag = FORCE / 2 * (own + series (r, r, turn)) / tension;

  expected_near ("the sag under 50 N", sag_at_force (built), sag, 5e-6);
}

/* Five strings of 63.2 N together pull 316 N; the head's tension is chosen so that it gives by 0.0518431
 * mm for each newton.  By hand, repeating w = C F and F = sum of T (sin a1 + sin a2): w 1.753 mm, F 33.82
 * N. */
static void
test_balance (void)
{
  double mass = 63.2 / pow (2 * 0.66675 * 250, 2);
  g_autoptr (GString) strings = g_string_new (LEVEL "strings.set=");

  for (int i = 0; i < 5; i++)
    g_string_append_printf (strings, "%s250 0.3 p mass=%.17g", i == 0 ? "" : "; ", mass);
  g_autoptr (Built) trial = built_new (strings->str);
  double compliance = sag_at_force (trial) / FORCE;
  g_string_append_printf (strings, "|head.tension=%.17g", 6000 * compliance / 0.0518431);
  g_autoptr (Built) built = built_new (strings->str);

  expected_near ("strings.tension_total", built_value (built, "strings.tension_total"), 316, 1e-9);
  expected_near ("bridge.sag", built_value (built, "bridge.sag"), 1.753, 0.002);
  expected_near ("bridge.down_force", built_value (built, "bridge.down_force"), 33.82, 0.01);
}

/* Unit circle, unit tension, load at (0.3, 0): image formula and Fourier series agree to 1e-15. */
static void
test_influence (void)
{
  static const struct
  {
    RwPoint2 at;
    double   value;
  } points[] = {
    { { -0.5, 0.2 }, 0.0531501740 },
    { { 0, 0 }, 0.1916182232 },
    { { 0.5, 0 }, 0.2302843084 },
    { { 0.3, 0.4 }, 0.1321940836 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (points); i++)
    expected_near ("influence", rw_feet_influence (points[i].at, (RwPoint2){ 0.3, 0 }, 1, 1000),
                   points[i].value, 1e-9);
}

/* What a load here does there, the same load there does here (Maxwell and Betti); at the edge nothing moves. */
static void
test_reciprocity (void)
{
  for (int i = 0; i < 200; i++)
    {
      double r = g_test_rand_double_range (50, 200), a = g_test_rand_double_range (0, 2 * G_PI);
      double b = g_test_rand_double_range (0, 2 * G_PI);
      RwPoint2 p = { 0.9 * r * cos (a), 0.9 * r * sin (a) }, q = { 0.4 * r * cos (b), 0.4 * r * sin (b) };
      RwPoint2 edge = { r * cos (a), r * sin (a) };
      double there = rw_feet_influence (p, q, r, 6000), here = rw_feet_influence (q, p, r, 6000);

      expected_near ("there and here", there, here, 1e-12);
      expected_near ("at the edge", rw_feet_influence (edge, q, r, 6000), 0, 1e-12);
      g_assert_cmpfloat (there, >, 0);
    }
}

/* A tighter head sinks less, and so do the feet of a bridge nearer to the edge. */
static void
test_falls (void)
{
  RwDesign design;

  for (int i = 0; i < 100; i++)
    {
      random_design_near (&design, 1 + i % 10);
      design.bridge_offset = 45;
      double rh = 140, sag = rw_feet_sag (&design, rh, 6000, NULL);

      g_assert_cmpfloat (rw_feet_sag (&design, rh, 6600, NULL), <, sag);
      design.bridge_offset = 60;
      g_assert_cmpfloat (rw_feet_sag (&design, rh, 6000, NULL), <, sag);
    }
}

/* Set-up guides see an open back sink by 1.6 to 3.2 mm at pitch, which is 40 N at 3.9 to 7.8 kN/m; factor 2. */
static void
test_observed (void)
{
  g_autoptr (Built) built = built_new (BRIDGE);
  double sag = sag_at_force (built) / FORCE * 40;

  g_assert_cmpfloat (sag, >, 1.6 / 2);
  g_assert_cmpfloat (sag, <, 3.2 * 2);
}

/* At a real bridge a spring of 20 kN/m stood for the head, 10 and 30 as variants: J. Woodhouse, D. Politzer and H.
 * Mansour, Acta Acustica 5 (2021) 16, Fig. 11; factor 2. */
static void
test_spring (void)
{
  g_autoptr (Built) built = built_new (BRIDGE);
  double spring = FORCE / sag_at_force (built); /* N/mm, kN/m */

  g_assert_cmpfloat (spring, >, 20 / 2);
  g_assert_cmpfloat (spring, <, 20 * 2);
}

/* The head under the bridge is a spring about three times as stiff as what steel strings add: D. Politzer,
 * "Arithmetic of spring forces on the banjo bridge", arXiv 2104.06616; factor 2.  Strings: sum of E A (sin
 * a1 + sin a2)^2/lt and of T (1/L + 1/d). */
static void
test_spring_share (void)
{
  g_autoptr (Built) built = built_new ("");
  const RwSide *side = &built->result.side;
  const RwDesign *d = &built->design;
  double bend = sin (side->slope_front) + sin (side->slope_tail), strings = 0;

  for (int i = 1; i <= 5; i++)
    {
      const RwString *s = &d->strings_set.at[i - 1];
      double wire = s->core_mm > 0 ? s->core_mm : s->outer_mm, pull = built->result.value[RW_STRINGS_TENSION + i];

      strings += 200000 * G_PI * wire * wire / 4 * bend * bend / 800 + pull * (1 / 650.0 + 1 / d->tailpiece_anchor);
    }
  double share = side->force / side->sag / strings;
  g_assert_cmpfloat (share, >, 3.0 / 2);
  g_assert_cmpfloat (share, <, 3.0 * 2);
}

/* Down force is the sum of the pulls' steep parts. */
static void
test_down_force (void)
{
  int tried = 0;

  for (int i = 0; i < 200; i++)
    {
      g_autofree RwResult *result = g_new (RwResult, 1);
      RwDesign design;
      double force = 0;

      random_design_near (&design, 1 + i % 10);
      rw_solve (&design, NULL, result);
      if (result->side.outcome != RW_SIDE_SOLVED)
        continue;
      for (int k = 1; k <= result->plan.strings; k++)
        force += result->value[RW_STRINGS_TENSION + k]
                 * (sin (k <= result->plan.full ? result->side.slope_front : result->side.slope_short)
                    + sin (result->side.slope_tail));
      expected_near ("down force", result->value[RW_BRIDGE_DOWN_FORCE], force, 1e-6);
      tried++;
    }
  g_assert_cmpint (tried, >, 100);
}

/* Where the neck meets the rim at the 22nd fret, the bridge stands 47.40 mm beyond the centre of an 11 in
 * head. */
static void
test_rim_fret (void)
{
  g_autoptr (Built) built = built_new (LEVEL "bridge.offset=47.4");

  expected_near ("neck.rim_fret", built_value (built, "neck.rim_fret"), 22, 0.001);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/sag/three-feet", test_three_feet);
  g_test_add_func ("/sag/two-feet", test_two_feet);
  g_test_add_func ("/sag/tension", test_tension);
  g_test_add_func ("/sag/series", test_series);
  g_test_add_func ("/sag/balance", test_balance);
  g_test_add_func ("/sag/rim-fret", test_rim_fret);
  g_test_add_func ("/sag/influence", test_influence);
  g_test_add_func ("/sag/reciprocity", test_reciprocity);
  g_test_add_func ("/sag/falls", test_falls);
  g_test_add_func ("/sag/observed", test_observed);
  g_test_add_func ("/sag/spring", test_spring);
  g_test_add_func ("/sag/spring-share", test_spring_share);
  g_test_add_func ("/sag/down-force", test_down_force);
  return g_test_run ();
}
