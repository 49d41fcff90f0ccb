/* Other notes on the same strings. */
#include "model/retune.h"

#include <math.h>

#include "expected.h"

#define STANDS "strings.set=D4 0.254 p; B3 0.305 p; G3 0.33 p; D3 0.559 w 0.305; G4 0.254 p short|"

/* The fourth string from D to C: 2^(-2/12) of the frequency, so 2^(-4/12) of the pull; the others keep
 * theirs.  Less pull presses the head down less, so the strings come up. */
static void
test_drop_c (void)
{
  static const char *const notes[RW_STRINGS_MAX] = { [3] = "C3" };
  g_autoptr (Built) built = built_new (STANDS);
  g_autofree RwResult *then = g_new (RwResult, 1);
  const double *was = built->result.value, *is = then->value;

  g_assert_true (rw_retune (&built->result, &built->measured, notes, then, NULL));
  expected_near ("pull", is[RW_STRINGS_TENSION + 4], was[RW_STRINGS_TENSION + 4] * exp2 (-4.0 / 12), 1e-9);
  expected_near ("the first's", is[RW_STRINGS_TENSION + 1], was[RW_STRINGS_TENSION + 1], 1e-12);
  expected_near ("neck angle", is[RW_NECK_ANGLE], was[RW_NECK_ANGLE], 1e-9);
  expected_near ("bridge", is[RW_BRIDGE_HEIGHT], was[RW_BRIDGE_HEIGHT], 1e-9);
  expected_near ("rod", then->side.rod_moment, built->result.side.rod_moment, 1e-9);
  g_assert_cmpfloat (is[RW_BRIDGE_SAG], <, was[RW_BRIDGE_SAG]);
  g_assert_cmpfloat (is[RW_NECK_PULL_UP], <, was[RW_NECK_PULL_UP]);
}

/* Back to the notes it had, nothing has changed. */
static void
test_there_and_back (void)
{
  static const char *const same[RW_STRINGS_MAX] = { "D4", "B3", "G3", "D3", "G4" };
  g_autoptr (Built) built = built_new (STANDS "@bridge.height=15.8");
  g_autofree RwResult *then = g_new (RwResult, 1);

  g_assert_true (rw_retune (&built->result, &built->measured, same, then, NULL));
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    if (isfinite (built->result.value[slot]))
      {
        g_autofree char *id = rw_slot_id ((RwSlot) slot);
        double was = built->result.value[slot];

        expected_near (id, then->value[slot], was, 1e-7 * fmax (1, fabs (was)));
      }
}

/* Frets, rim, hoop and hooks know nothing of the notes. */
static void
test_rest_stays (void)
{
  static const char *const notes[RW_STRINGS_MAX] = { "A3", "F#3", "D3", "A2", "F#4" };
  static const char *const parts[] = { "frets.", "hoop.", "hooks.a", "neck.angle", "bridge.height", "rim.seg" };
  g_autoptr (Built) built = built_new (STANDS "neck.solve_for=action");
  g_autofree RwResult *then = g_new (RwResult, 1);
  int same = 0;

  g_assert_true (rw_retune (&built->result, NULL, notes, then, NULL));
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    {
      g_autofree char *id = rw_slot_id ((RwSlot) slot);

      for (gsize i = 0; i < G_N_ELEMENTS (parts); i++)
        if (g_str_has_prefix (id, parts[i]) && isfinite (built->result.value[slot]))
          {
            g_assert_false (rw_retune_moves ((RwSlot) slot));
            expected_near (id, then->value[slot], built->result.value[slot], 0.02);
            same++;
          }
    }
  g_assert_cmpint (same, >, 50);
}

static void
test_bad_note (void)
{
  static const char *const notes[RW_STRINGS_MAX] = { [1] = "H4" };
  g_autoptr (Built) built = built_new (STANDS);
  g_autofree RwResult *then = g_new (RwResult, 1);
  g_autoptr (GError) error = NULL;

  g_assert_false (rw_retune (&built->result, NULL, notes, then, &error));
  g_assert_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE);
  g_assert_cmpstr (error->message, ==, "String 2: “H4” is no note like D4, F#3 or Bb3, and no frequency");
}

/* Capo on 2 in open G gives open A: the short string goes behind fret 7 to sound A4, or its peg pulls
 * 2^(4/12) times as much; spikes at 7, 9 and 10 are usual: common practice, no source. */
static void
test_capo (void)
{
  g_autoptr (Built) built = built_new (STANDS "scale.length=666.75");
  double pull = built_value (built, "strings.tension[5]");
  RwCapo capo;

  rw_capo (&built->result, 2, &capo);
  g_assert_cmpint (capo.spike, ==, 7);
  expected_near ("place", capo.spike_x, 221.748, 0.0006);
  expected_near ("first", capo.hertz[1], 329.6276, 0.0001);
  expected_near ("short", capo.hertz[5], 440, 1e-9);
  expected_near ("at the peg", capo.peg_pull, pull * exp2 (4.0 / 12), 1e-9);
  rw_capo (&built->result, 0, &capo);
  g_assert_cmpint (capo.spike, ==, 0);
  rw_capo (&built->result, 18, &capo);
  g_assert_true (isnan (capo.spike_x));
}

/* A shim turns the neck that is cut, once: back to the notes it had, the strings stand as they did. */
static void
test_shim (void)
{
  static const char *const same[RW_STRINGS_MAX] = { "D4", "B3", "G3", "D3", "G4" };
  g_autoptr (Built) built = built_new (STANDS "joint.shim=0.5");
  g_autofree RwResult *then = g_new (RwResult, 1);

  g_assert_true (rw_retune (&built->result, NULL, same, then, NULL));
  expected_near ("angle", then->side.angle, built->result.side.angle, 1e-9);
  expected_near ("action", then->side.action, built->result.side.action, 1e-7);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/retune/drop-c", test_drop_c);
  g_test_add_func ("/retune/there-and-back", test_there_and_back);
  g_test_add_func ("/retune/rest-stays", test_rest_stays);
  g_test_add_func ("/retune/shim", test_shim);
  g_test_add_func ("/retune/bad-note", test_bad_note);
  g_test_add_func ("/capo/open-a", test_capo);
  return g_test_run ();
}
