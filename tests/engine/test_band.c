/* Low and high of what rests on guesses. */
#include "model/band.h"

#include <math.h>

#include "expected.h"

typedef struct
{
  Built *built;
  RwBands *bands;
} Banded;

static Banded *
banded_new (const char *changes)
{
  Banded *banded = g_new0 (Banded, 1);

  banded->built = built_new (changes);
  banded->bands = rw_bands_new (&banded->built->result, &banded->built->measured);
  return banded;
}

static void
banded_free (Banded *banded)
{
  built_free (banded->built);
  g_free (banded->bands);
  g_free (banded);
}

G_DEFINE_AUTOPTR_CLEANUP_FUNC (Banded, banded_free)

/* A factor of two in the tension is a factor of root two in the note, and two in what the hooks carry;
 * nothing else moves those. */
static void
test_head (void)
{
  g_autoptr (Banded) banded = banded_new ("");
  double load = built_value (banded->built, "head.load_per_hook");
  double note = built_value (banded->built, "head.tap_frequency");

  expected_near ("least load", banded->bands->low[RW_HEAD_LOAD_PER_HOOK], load / sqrt (2), 1e-6 * load);
  expected_near ("most load", banded->bands->high[RW_HEAD_LOAD_PER_HOOK], load * sqrt (2), 1e-6 * load);
  expected_near ("lowest note", banded->bands->low[RW_HEAD_TAP_FREQUENCY], note / sqrt (sqrt (2)), 1e-6 * note);
}

/* A tap leaves the band that the head's rows tell; a measured tension none. */
static void
test_tap (void)
{
  g_autoptr (Banded) tapped = banded_new ("head.tension_from=tap_frequency|head.tap_frequency=480");
  g_autoptr (Banded) known = banded_new ("@head.tension=6000");

  expected_near ("low", tapped->bands->low[RW_HEAD_TENSION],
                 built_value (tapped->built, "head.tension_low"), 1e-6);
  expected_near ("high", tapped->bands->high[RW_HEAD_TENSION],
                 built_value (tapped->built, "head.tension_high"), 1e-6);
  g_assert_true (isnan (known->bands->low[RW_HEAD_TENSION]));
  g_assert_true (isnan (known->bands->low[RW_HEAD_LOAD]));
}

/* What comes from lengths alone has no band; the value lies in each band there is. */
static void
test_inside (void)
{
  g_autoptr (Banded) banded = banded_new ("");
  static const RwSlot sure[] = { RW_FRETS_POSITION + 12, RW_RIM_SEGMENT_MITRE, RW_HOOKS_LEG,
                                 RW_STRINGS_TENSION + 1 };
  static const RwSlot guessed[] = { RW_BRIDGE_SAG, RW_NECK_ANGLE, RW_SETUP_ACTION + 12, RW_NECK_RELIEF_UNRODDED,
                                    RW_BRIDGE_COMPENSATION + 1 };

  for (gsize i = 0; i < G_N_ELEMENTS (sure); i++)
    g_assert_true (isnan (banded->bands->low[sure[i]]));
  for (gsize i = 0; i < G_N_ELEMENTS (guessed); i++)
    {
      double value = banded->built->result.value[guessed[i]];

      g_assert_cmpfloat (banded->bands->low[guessed[i]], <, value);
      g_assert_cmpfloat (banded->bands->high[guessed[i]], >, value);
    }
}

/* With head and strings known the wood is left: relief goes inversely with the stiffness. */
static void
test_wood (void)
{
  g_autoptr (Banded) banded = banded_new ("neck.rod_present=no|setup.neck_flex=no|@head.tension=6000|"
                                            "@strings.modulus=200|strings.set=D4 0.254 p; B3 0.305 p; G3 0.4 p; G4 0.254 p short");
  double relief = built_value (banded->built, "neck.relief_unrodded");

  expected_near ("low", banded->bands->low[RW_NECK_RELIEF_UNRODDED], relief / 1.22, 1e-3 * relief);
  expected_near ("high", banded->bands->high[RW_NECK_RELIEF_UNRODDED], relief / 0.78, 1e-3 * relief);
}

/* A slacker head sinks further: the sag on a neck that is cut takes half of it out of the action at the
 * 12th fret. */
static void
test_action (void)
{
  g_autoptr (Banded) banded = banded_new ("setup.neck_flex=no|@strings.modulus=200");
  double sag = banded->bands->high[RW_BRIDGE_SAG] - built_value (banded->built, "bridge.sag");
  double action = built_value (banded->built, "setup.action[12]") - banded->bands->low[RW_SETUP_ACTION + 12];

  expected_near ("half of it", action, sag / 2, 0.01 * sag);
}

/* A wound string weighs 2 % more or less than its wires seem to, and pulls as much more or less; weighed it pulls
 * what it pulls. */
static void
test_wound (void)
{
  g_autoptr (Banded) guessed = banded_new ("strings.set=D4 0.254 p; B3 0.305 p; D3 0.559 w 0.305");
  g_autoptr (Banded) weighed = banded_new ("strings.set=D4 0.254 p; B3 0.305 p; D3 0.559 w 0.305 mass=0.0016");
  double pull = built_value (guessed->built, "strings.tension[3]");

  expected_near ("least", guessed->bands->low[RW_STRINGS_TENSION + 3], 0.98 * pull, 1e-9 * pull);
  expected_near ("most", guessed->bands->high[RW_STRINGS_TENSION + 3], 1.02 * pull, 1e-9 * pull);
  g_assert_true (isnan (weighed->bands->low[RW_STRINGS_TENSION + 3]));
}

/* Hinged ends are the least: clamped ones set the bridge of a true fret 12 back by 2 d L (1/(L/2) - 1/L) = 2 d in first
 * order, d = sqrt (E I/T) = 1.962 mm for a G3 of .016 in on 666.75 mm. */
static void
test_ends (void)
{
  g_autoptr (Banded) banded = banded_new ("scale.length=666.75|setup.neck_flex=no|@head.tension=6000|@strings.modulus=200|"
                                          "strings.set=G3 0.4064 p; G3 0.4064 p; G3 0.4064 p");
  double set_back = built_value (banded->built, "bridge.compensation[1]");

  expected_near ("most", banded->bands->high[RW_BRIDGE_COMPENSATION + 1] - set_back, 2 * 1.962, 0.15);
  g_assert_true (banded->bands->low[RW_BRIDGE_COMPENSATION + 1] == set_back);
}

/* Quarter-sawn sugar maple moves 0.00165 where flat-sawn moves 0.00353, per size and per cent of moisture: Wood
 * Handbook, table 13-5.  The model goes by the more. */
static void
test_grain (void)
{
  g_autoptr (Banded) banded = banded_new ("rim.construction=plies|rim.course_wood=maple_hard");
  double shrinks = built_value (banded->built, "move.rim_height_low");

  expected_near ("most", banded->bands->low[RW_MOVE_RIM_HEIGHT_LOW], shrinks, 1e-9);
  expected_near ("least", banded->bands->high[RW_MOVE_RIM_HEIGHT_LOW], shrinks * 0.00165 / 0.00353, 1e-9);
}

/* A stiffer temper springs back more, so it wants a smaller former; a test bend ends the guessing. */
static void
test_temper (void)
{
  g_autoptr (Banded) guessed = banded_new ("");
  g_autoptr (Banded) tested = banded_new ("hoop.springback_test=6");
  double former = built_value (guessed->built, "hoop.former");

  g_assert_cmpfloat (guessed->bands->low[RW_HOOP_FORMER], <, former);
  g_assert_cmpfloat (guessed->bands->high[RW_HOOP_FORMER], >, former);
  g_assert_true (isnan (tested->bands->low[RW_HOOP_FORMER]));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/band/head", test_head);
  g_test_add_func ("/band/tap", test_tap);
  g_test_add_func ("/band/inside", test_inside);
  g_test_add_func ("/band/wood", test_wood);
  g_test_add_func ("/band/action", test_action);
  g_test_add_func ("/band/wound", test_wound);
  g_test_add_func ("/band/ends", test_ends);
  g_test_add_func ("/band/grain", test_grain);
  g_test_add_func ("/band/temper", test_temper);
  return g_test_run ();
}
