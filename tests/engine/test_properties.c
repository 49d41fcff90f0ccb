/* What holds for every build, tried on builds drawn at random from the table's ranges. */
#include <math.h>
#include <string.h>

#include "built.h"
#include "random_design.h"

#define ROUNDS 2500

static RwResult *
solve (const RwDesign *design, const RwMeasured *measured)
{
  RwResult *result = g_new0 (RwResult, 1);

  rw_solve (design, measured, result);
  return result;
}

/* One wild build, then one near the built-in one, and so on. */
static void
draw (RwDesign *design, int round)
{
  if (round % 2 == 0)
    random_design (design);
  else
    random_design_near (design, 1 + round % 15);
}

static void
assert_same (const RwResult *one, const RwResult *other, double tolerance, const char *what)
{
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    {
      double a = one->value[slot], b = other->value[slot];

      if ((isnan (a) && isnan (b)) || fabs (a - b) <= tolerance * fmax (1, fabs (a)))
        continue;
      g_autofree char *id = rw_slot_id ((RwSlot) slot);
      g_error ("%s: %s is %.17g and %.17g", what, id, a, b);
    }
}

/* A number is there and finite, or it is left out; some are always there. */
static void
test_finite (void)
{
  static const RwSlot always[] = {
    RW_RIM_CIRCUMFERENCE, RW_RIM_MASS,  RW_HEAD_RADIUS,         RW_HEAD_TENSION,
    RW_HOOP_BORE,         RW_HOOKS_LEG, RW_STRINGS_TENSION + 1,
  };

  for (int round = 0; round < ROUNDS; round++)
    {
      RwDesign design;

      draw (&design, round);
      g_autofree RwResult *result = solve (&design, NULL);
      for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
        g_assert_false (isinf (result->value[slot]));
      for (gsize i = 0; i < G_N_ELEMENTS (always); i++)
        g_assert_true (isfinite (result->value[always[i]]));
      g_assert_true (isnan (result->value[RW_FRETS_POSITION + 1]) == (design.frets_slots == RW_SLOTS_OWN));
      if (result->side.outcome == RW_SIDE_SOLVED)
        g_assert_true (isfinite (result->value[RW_NECK_ANGLE]) && isfinite (result->value[RW_BRIDGE_SAG]));
      else
        g_assert_true (isnan (result->side.nut_to_rim) && isnan (result->side.heel_start)
                       && isnan (result->side.bridge_top) && isnan (result->side.lift[12]));
    }
}

static void
test_hooks_on_rim (void)
{
  for (int round = 0; round < ROUNDS; round++)
    {
      RwDesign design;

      draw (&design, round);
      g_autofree RwResult *result = solve (&design, NULL);
      for (int k = 1; k <= (int) design.hooks_count; k++)
        {
          double from_centre = hypot (result->value[RW_HOOKS_X + k], result->value[RW_HOOKS_Y + k]);

          if (isfinite (result->value[RW_HOOKS_ANGLE + k]))
            g_assert_cmpfloat_with_epsilon (from_centre, design.rim_outer_diameter / 2, 1e-9);
        }
    }
}

/* The axis is the third string of five; in equal steps the 12th fret halves the scale. */
static void
test_axis_and_octave (void)
{
  for (int round = 0; round < ROUNDS; round++)
    {
      RwDesign design;
      RwStringSet five;

      draw (&design, round);
      five = design.strings_set;
      five.count = 5;
      for (int i = 0; i < 5; i++)
        five.at[i] = (RwString){ .note = "G3", .outer_mm = 0.3, .is_short = i == 4 };
      design.strings_set = five;
      design.frets_temperament = (RwCentsList){ .count = 1 };
      g_autofree RwResult *result = solve (&design, NULL);
      for (double x = 0; x <= design.scale_length + 400; x += 50)
        g_assert_cmpfloat_with_epsilon (rw_plan_string_y (&result->plan, 3, x), 0, 1e-9);
      if (result->plan.last >= 12)
        g_assert_cmpfloat_with_epsilon (result->plan.fret_x[12], design.scale_length / 2, 1e-9);
    }
}

/* A left-handed build is the mirror image: its numbers are the same. */
static void
test_mirror (void)
{
  for (int round = 0; round < ROUNDS; round++)
    {
      RwDesign right, left;

      draw (&right, round);
      right.build_handed = RW_HANDED_RIGHT;
      left = right;
      left.build_handed = RW_HANDED_LEFT;
      g_autofree RwResult *one = solve (&right, NULL), *other = solve (&left, NULL);
      assert_same (one, other, 0, "left-handed");
    }
}

/* The angle that gives the action gives the bridge, and both give the action again.  Builds that make some
 * sense have one solution; wild ones may have two. */
static void
test_round_trip (void)
{
  int tried = 0;

  for (int round = 0; round < ROUNDS; round++)
    {
      RwDesign design;

      random_design_near (&design, 1 + round % 15);
      design.neck_solve_for = RW_SOLVE_ANGLE;
      g_autofree RwResult *start = solve (&design, NULL);
      if (start->side.outcome != RW_SIDE_SOLVED)
        continue;
      design.neck_angle = start->value[RW_NECK_ANGLE];
      design.neck_solve_for = RW_SOLVE_BRIDGE;
      g_autofree RwResult *bridge = solve (&design, NULL);
      g_assert_cmpfloat_with_epsilon (bridge->value[RW_BRIDGE_HEIGHT], design.bridge_height, 1e-7);
      design.neck_solve_for = RW_SOLVE_ACTION;
      g_autofree RwResult *action = solve (&design, NULL);
      g_assert_cmpfloat_with_epsilon (action->side.action, design.setup_action, 1e-7);
      tried++;
    }
  g_assert_cmpint (tried, >, ROUNDS / 2);
}

/* Measuring what was planned changes nothing. */
static void
test_measured_as_planned (void)
{
  for (int round = 0; round < ROUNDS; round++)
    {
      RwDesign design;
      RwMeasured measured;
      int slot;

      random_design_near (&design, 1 + round % 15);
      rw_measured_init (&measured);
      g_autofree RwResult *plan = solve (&design, NULL);
      do
        slot = g_test_rand_int_range (0, RW_SLOT_COUNT);
      while (!isfinite (plan->value[slot]));
      g_autofree char *id = rw_slot_id ((RwSlot) slot);
      if (!rw_measured_set (&measured, id, plan->value[slot], NULL))
        continue; /* outside what the parameter of that name may be */
      g_autofree RwResult *again = solve (&design, &measured);
      assert_same (plan, again, 1e-7, id);
    }
}

/* What comes before in the making, by the start of its id. */
#define STREAM_MAX 8

typedef struct
{
  const char *measured;
  double      off;
  const char *upstream[STREAM_MAX];
} Stream;

static const Stream streams[] = {
  { "hooks.leg", 1.5,
    { "rim.", "head.", "hoop.", "neck.", "frets.", "strings.", "bridge.", "joint." } },
  { "headstock.post_x[1]", 2,
    { "rim.", "head.", "hoop.", "hooks.", "neck.angle", "frets.", "strings.", "joint." } },
  { "neck.width_at_rim", 1,
    { "rim.segment", "head.", "hoop.bore", "neck.angle", "frets.position", "strings.", "bridge.sag" } },
  { "bridge.sag", 0.4,
    { "rim.segment", "head.", "hoop.bore", "frets.position", "strings.tension", "strings.nut" } },
  { "hoop.bore", 0.6,
    { "rim.segment", "head.", "frets.position", "strings.tension", "neck.angle", "bridge.sag" } },
  { "head.tension", 500,
    { "rim.segment", "rim.mass", "hoop.bore", "frets.position", "strings.tension", "shoes." } },
  { "rim.outer_diameter", -0.6,
    { "frets.position", "strings.tension", "strings.nut", "hoop.bore", "finish." } },
  { "neck.angle", 0.3,
    { "rim.segment", "head.", "hoop.bore", "frets.position", "strings.tension", "strings.nut" } },
};

/* The slots that measured must leave alone. */
static void
mark_upstream (const Stream *stream, gboolean marks[RW_SLOT_COUNT])
{
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    {
      g_autofree char *id = rw_slot_id ((RwSlot) slot);

      marks[slot] = FALSE;
      for (int i = 0; i < STREAM_MAX && stream->upstream[i] != NULL; i++)
        marks[slot] |= g_str_has_prefix (id, stream->upstream[i]) && strcmp (id, stream->measured) != 0;
    }
}

static void
assert_unmoved (const RwResult *plan, const RwResult *now, const gboolean marks[RW_SLOT_COUNT])
{
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    {
      double before = plan->value[slot], after = now->value[slot];

      if (!marks[slot] || isnan (before) || (after >= before && after <= before))
        continue;
      g_autofree char *id = rw_slot_id ((RwSlot) slot);
      g_error ("%s moved from %.17g to %.17g", id, before, after);
    }
}

static void
test_upstream (gconstpointer data)
{
  const Stream *stream = data;
  int param = rw_param_find (stream->measured), slot = rw_slot_find (stream->measured);
  g_autofree gboolean *marks = g_new (gboolean, RW_SLOT_COUNT);

  mark_upstream (stream, marks);
  for (int round = 0; round < 300; round++)
    {
      RwDesign design;
      RwMeasured measured;

      random_design_near (&design, 1 + round % 10);
      rw_measured_init (&measured);
      g_autofree RwResult *plan = solve (&design, NULL);
      double planned = slot >= 0 ? plan->value[slot] : rw_design_get (&design, (RwParamId) param);
      if (!isfinite (planned) || !rw_measured_set (&measured, stream->measured, planned + stream->off, NULL))
        continue;
      g_autofree RwResult *now = solve (&design, &measured);
      assert_unmoved (plan, now, marks);
    }
}

/* Measured values may come in any order. */
static void
test_order (void)
{
  static const struct
  {
    const char *id;
    double      value;
  } readings[] = {
    { "rim.outer_diameter", 278.6 }, { "hoop.bore", 281.4 },         { "neck.angle", 2.1 },
    { "hooks.leg", 56.2 },           { "frets.position[7]", 216.3 }, { "bridge.height", 15.7 },
  };
  RwDesign design;
  RwMeasured forward, backward;
  const int count = G_N_ELEMENTS (readings);

  rw_design_init (&design);
  rw_measured_init (&forward);
  rw_measured_init (&backward);
  for (int i = 0; i < count; i++)
    {
      int j = count - 1 - i;

      g_assert_true (rw_measured_set (&forward, readings[i].id, readings[i].value, NULL));
      g_assert_true (rw_measured_set (&backward, readings[j].id, readings[j].value, NULL));
    }
  g_autofree RwResult *one = solve (&design, &forward), *other = solve (&design, &backward);
  assert_same (one, other, 0, "order");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/properties/finite", test_finite);
  g_test_add_func ("/properties/hooks-on-rim", test_hooks_on_rim);
  g_test_add_func ("/properties/axis-and-octave", test_axis_and_octave);
  g_test_add_func ("/properties/mirror", test_mirror);
  g_test_add_func ("/properties/round-trip", test_round_trip);
  g_test_add_func ("/properties/measured-as-planned", test_measured_as_planned);
  for (gsize i = 0; i < G_N_ELEMENTS (streams); i++)
    {
      g_autofree char *path = g_strconcat ("/properties/upstream/", streams[i].measured, NULL);

      g_test_add_data_func (path, &streams[i], test_upstream);
    }
  g_test_add_func ("/properties/order", test_order);
  return g_test_run ();
}
