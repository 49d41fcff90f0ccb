/* Solving a parameter for a wanted result, and the curve of one against the other. */
#include "study/what_if.h"

#include <math.h>

#include "built.h"
#include "expected.h"

static const char *
in_english (const char *english)
{
  return english;
}

static int
param_of (const char *id)
{
  int param = rw_param_find (id);

  g_assert_cmpint (param, >=, 0);
  return param;
}

static RwSlot
slot_of (const char *id)
{
  int slot = rw_slot_find (id);

  g_assert_cmpint (slot, >=, 0);
  return (RwSlot) slot;
}

static RwWhatIf
ask (const Built *built, const char *slot, const char *param)
{
  return rw_what_if_new (&built->design, NULL, &built->result, slot_of (slot), (RwParamId) param_of (param));
}

static RwWhatIfAnswer
solve (const RwWhatIf *what, double wanted)
{
  RwWhatIfCurve curve;

  rw_what_if_curve (what, &curve);
  return rw_what_if_solve (what, &curve, wanted);
}

/* Results by parameters that are known to move them, and how far from the present one is asked for. */
static const struct
{
  const char *slot, *param;
  double      more;
} questions[] = {
  { "setup.action[12]", "bridge.height", 0.4 },
  { "setup.action[12]", "neck.angle", -0.3 },
  { "bridge.height", "neck.angle", 1.5 },
  { "bridge.break_angle", "tailpiece.height", 2 },
  { "bridge.down_force", "tailpiece.anchor", 5 },
  { "bridge.sag", "head.tension", -0.5 },
  { "head.tap_frequency", "head.tension", 60 },
  { "bridge.compensation[3]", "setup.action", 0.2 },
};

/* The build with the value in it, solved afresh, has what was wanted. */
static void
test_gives_it (void)
{
  g_autoptr (Built) built = built_new ("");

  for (gsize i = 0; i < G_N_ELEMENTS (questions); i++)
    {
      RwWhatIf what = ask (built, questions[i].slot, questions[i].param);
      double wanted = built->result.value[what.slot] + questions[i].more;
      RwWhatIfAnswer answer = solve (&what, wanted);
      g_autofree RwResult *result = g_new0 (RwResult, 1);
      RwDesign design;

      g_assert_cmpint (answer.reach, ==, RW_WHAT_IF_REACHED);
      g_assert_true (rw_what_if_apply (&what, answer.value, &design));
      rw_solve (&design, NULL, result);
      expected_near (questions[i].slot, result->value[what.slot], wanted, 1e-8 * (1 + fabs (wanted)));
      expected_near ("as told", answer.result, wanted, 1e-8 * (1 + fabs (wanted)));
    }
}

/* What is held comes out as it was: the present value of the parameter gives the present result. */
static void
test_through_the_present (void)
{
  g_autoptr (Built) built = built_new ("");

  for (gsize i = 0; i < G_N_ELEMENTS (questions); i++)
    {
      RwWhatIf what = ask (built, questions[i].slot, questions[i].param);
      double present = built->result.value[what.slot];
      RwWhatIfCurve curve;
      int hits = 0;

      rw_what_if_curve (&what, &curve);
      for (guint k = 0; k < curve.count; k++)
        {
          g_assert_true (k == 0 || curve.at[k] > curve.at[k - 1]);
          if (curve.at[k] != what.now)
            continue;
          expected_near (questions[i].slot, curve.values[k], present, 1e-7 * (1 + fabs (present)));
          hits++;
        }
      g_assert_cmpint (hits, ==, 1);
    }
}

/* T = mu (2 f L)^2: the whole pull goes by the square of the scale.  f goes by the root of the tension: a fifth up,
 * 3/2, is 9/4 of it. */
static void
test_closed_forms (void)
{
  g_autoptr (Built) built = built_new ("head.tension=4000");
  RwWhatIf pull = ask (built, "strings.tension_total", "scale.length");
  RwWhatIf pitch = ask (built, "head.tap_frequency", "head.tension");
  double square = 700.0 / 650.0 * (700.0 / 650.0);

  expected_near ("scale", solve (&pull, square * built->result.value[RW_STRINGS_TENSION_TOTAL]).value, 700, 1e-6);
  expected_near ("tension", solve (&pitch, 1.5 * built->result.value[RW_HEAD_TAP_FREQUENCY]).value, 9000, 1e-4);
}

/* A tap note that was heard gives way to the tension, which then has its place in the design. */
static void
test_held_tension (void)
{
  g_autoptr (Built) built = built_new ("head.tension_from=tap_frequency|head.tap_frequency=400");
  RwWhatIf what = ask (built, "head.tap_frequency", "head.tension");
  RwWhatIfAnswer answer = solve (&what, 500);
  RwDesign design;

  expected_near ("tension", answer.value, built->result.value[RW_HEAD_TENSION] * 500 * 500 / (400 * 400), 1e-4);
  g_assert_true (rw_what_if_apply (&what, answer.value, &design));
  g_assert_cmpint (design.head_tension_from, ==, RW_TENSION_GIVEN);
}

static void
test_beyond (void)
{
  g_autoptr (Built) built = built_new ("");
  RwWhatIf what = ask (built, "bridge.down_force", "bridge.height");
  RwWhatIfAnswer answer = solve (&what, 5000);
  double now = built->result.value[RW_BRIDGE_DOWN_FORCE];

  g_assert_cmpint (answer.reach, ==, RW_WHAT_IF_BEYOND);
  g_assert_true (isnan (answer.value));
  g_assert_cmpfloat (answer.low, <, now);
  g_assert_cmpfloat (answer.high, >, now);
  g_assert_cmpfloat (answer.high, <, 5000);
}

/* No bridge stands on a head that is smaller than its feet. */
static void
test_never (void)
{
  g_autoptr (Built) built = built_new ("rim.outer_diameter=120|bridge.foot_spread=100|bridge.offset=54");
  RwWhatIf what = ask (built, "bridge.down_force", "bridge.height");

  g_assert_cmpint (solve (&what, 40).reach, ==, RW_WHAT_IF_NEVER);
}

/* 2 pi R T/n: 5222 N or so on 18 hooks; the count that comes nearest to what 24 give is 24. */
static void
test_counts (void)
{
  g_autoptr (Built) built = built_new ("");
  RwWhatIf what = ask (built, "head.load_per_hook", "hooks.count");
  double load = 2 * G_PI * 0.1385 * 6000;
  RwWhatIfAnswer answer = solve (&what, load / 24.3);

  g_assert_cmpint (answer.reach, ==, RW_WHAT_IF_NEAREST);
  g_assert_cmpfloat (answer.value, ==, 24);
  expected_near ("load", answer.result, load / 24, 1e-9 * load);
}

static void
test_moves (void)
{
  g_autoptr (Built) built = built_new ("");
  RwWhatIf by_height = ask (built, "bridge.break_angle", "bridge.height");
  RwWhatIf by_kerf = ask (built, "bridge.break_angle", "shop.kerf");

  g_assert_true (rw_what_if_moves (&by_height));
  g_assert_false (rw_what_if_moves (&by_kerf));
}

static void
test_study (void)
{
  g_autoptr (Built) built = built_new ("");
  RwWhatIf what = ask (built, "strings.tension_total", "scale.length");
  double now = built->result.value[RW_STRINGS_TENSION_TOTAL];
  RwWhatIfAnswer answer;
  g_autoptr (RwStudy) study = rw_study_what_if (&what, 1.1 * now, &answer, in_english);
  int present = 0, solved = 0;

  g_assert_cmpuint (study->columns->len, ==, 4);
  for (guint row = 0; row < study->rows->len; row++)
    {
      double at = g_array_index (study->rows, RwStudyRow, row).at;

      expected_near ("curve", rw_study_column_at (study, 0)->values[row], now * at * at / (650 * 650), 1e-9 * now);
      present += isfinite (rw_study_column_at (study, 1)->values[row]) && at == 650;
      solved += isfinite (rw_study_column_at (study, 3)->values[row]) && fabs (at - 650 * sqrt (1.1)) < 1e-6;
    }
  g_assert_cmpint (present, ==, 1);
  g_assert_cmpint (solved, ==, 1);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/what-if/gives-it", test_gives_it);
  g_test_add_func ("/what-if/through-the-present", test_through_the_present);
  g_test_add_func ("/what-if/closed-forms", test_closed_forms);
  g_test_add_func ("/what-if/held-tension", test_held_tension);
  g_test_add_func ("/what-if/beyond", test_beyond);
  g_test_add_func ("/what-if/never", test_never);
  g_test_add_func ("/what-if/counts", test_counts);
  g_test_add_func ("/what-if/moves", test_moves);
  g_test_add_func ("/what-if/study", test_study);
  return g_test_run ();
}
