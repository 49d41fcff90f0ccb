/* How far the head sinks under the bridge, against the membrane's Green's function by images worked apart. */
#include <math.h>

#include "expected.h"

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
  return g_test_run ();
}
