/* Grips as pure mappings.  The expectations are the mapping's own inverse (a place made from a value must give
 * the value back), the ranges of the parameter table, and steps by hand. */
#include "draw/grip.h"

#include <math.h>

#define RANDOM_BUILDS 40

typedef struct
{
  RwDesign design;
  RwResult result;
} Build;

/* Each id is there once. */
static const RwGrip *
grip_called (const char *id)
{
  const RwGrip *found = NULL;

  for (int i = 0; i < rw_grips_count; i++)
    if (g_str_equal (rw_grips[i].id, id))
      {
        g_assert_null (found);
        found = &rw_grips[i];
      }
  g_assert_nonnull (found);
  return found;
}

static RwGripScene
scene_of (const Build *build, RwView view)
{
  return (RwGripScene){ &build->design, NULL, &build->result, view };
}

static void
build_default (Build *build)
{
  rw_design_init (&build->design);
  rw_solve (&build->design, NULL, &build->result);
}

/* The default with every length and angle a little larger or smaller, as long as it still can be solved. */
static void
build_random (Build *build, GRand *rand)
{
  do
    {
      rw_design_init (&build->design);
      for (int id = 0; id < RW_PARAM_COUNT; id++)
        {
          const RwParam *param = rw_param (id);
          double value;

          if (param->kind != RW_KIND_LENGTH && param->kind != RW_KIND_ANGLE)
            continue;
          value = rw_design_get (&build->design, id) * g_rand_double_range (rand, 0.95, 1.05);
          rw_design_set (&build->design, id, value, NULL);
        }
      build->design.neck_solve_for = g_rand_int_range (rand, 0, 3);
      build->design.hooks_layout = g_rand_int_range (rand, 0, 2);
      rw_solve (&build->design, NULL, &build->result);
    }
  while (build->result.side.outcome != RW_SIDE_SOLVED);
}

static gboolean
is_count (const RwGrip *grip, const RwResult *result)
{
  return rw_param (rw_grip_drags (grip, result))->kind == RW_KIND_COUNT;
}

/* The place that the grip has with another value; FALSE where that build has none. */
static gboolean
place_with (const RwGrip *grip, const RwGripScene *scene, double value, RwPoint *place)
{
  RwDesign design = *scene->design;
  RwResult result;

  rw_grip_put (grip, scene->result, &design, value);
  rw_solve (&design, NULL, &result);
  return rw_grip_place (grip, scene->view, &result, place);
}

/* A value not far from the present one, in its range. */
static double
value_near (const RwGrip *grip, const RwGripScene *scene, GRand *rand)
{
  double now = rw_grip_get (grip, scene->result, scene->design);
  double reach = is_count (grip, scene->result) ? 6 : 0.2 * fabs (now) + 0.5;
  double value = now + g_rand_double_range (rand, -reach, reach);

  value = CLAMP (value, rw_grip_min (grip, scene->result), rw_grip_max (grip, scene->result));
  return is_count (grip, scene->result) ? round (value) : value;
}

static void
check_round_trip (const RwGrip *grip, const RwGripScene *scene, GRand *rand)
{
  double range = rw_grip_max (grip, scene->result) - rw_grip_min (grip, scene->result);
  double value = value_near (grip, scene, rand), back;
  RwPoint place, again;

  if (!place_with (grip, scene, value, &place))
    return;
  back = rw_grip_value_at (grip, scene, place);
  if (is_count (grip, scene->result))
    {
      /* An even number of hooks and the odd one after it share their places. */
      g_assert_true (place_with (grip, scene, back, &again));
      g_assert_cmpfloat (hypot (again.x - place.x, again.y - place.y), <, 1e-6);
    }
  else if (fabs (back - value) > 1e-6 * range)
    g_error ("%s in %s: put to %.9g, came back as %.9g", grip->id, rw_view_id (scene->view), value, back);
}

static void
round_trips (const Build *build, GRand *rand, int *found)
{
  for (int i = 0; i < rw_grips_count; i++)
    for (int view = 0; view < RW_VIEW_COUNT; view++)
      {
        RwGripScene scene = scene_of (build, view);
        RwPoint place;

        if (!rw_grip_place (&rw_grips[i], view, &build->result, &place))
          continue;
        found[i]++;
        check_round_trip (&rw_grips[i], &scene, rand);
      }
}

static void
test_round_trip_default (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (1);
  g_autofree int *found = g_new0 (int, rw_grips_count);
  Build build;

  build_default (&build);
  for (int i = 0; i < 10; i++)
    round_trips (&build, rand, found);
}

static void
test_round_trip_random (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (2);
  g_autofree int *found = g_new0 (int, rw_grips_count);
  Build build;

  for (int i = 0; i < RANDOM_BUILDS; i++)
    {
      build_random (&build, rand);
      round_trips (&build, rand, found);
    }
}

/* Every row of the table is to be had somewhere: in the default, or in a build of the kind that needs it. */
static void
test_all_are_there (void)
{
  Build rods, stick;

  build_default (&rods);
  stick = rods;
  stick.design.joint_kind = RW_JOINT_STICK;
  rw_design_read (&stick.design, RW_P_rim_course_thickness, "5;5;5;5;5;5;5;5;5;5;5;5", RW_STYLE_FILE, NULL);
  rw_solve (&stick.design, NULL, &stick.result);

  for (int i = 0; i < rw_grips_count; i++)
    {
      gboolean there = FALSE;
      RwPoint place;

      for (int view = 0; view < RW_VIEW_COUNT; view++)
        there |= rw_grip_place (&rw_grips[i], view, &rods.result, &place)
                 || rw_grip_place (&rw_grips[i], view, &stick.result, &place);
      if (!there)
        g_error ("%s is to be seen in no view", rw_grips[i].id);
      g_assert_true (grip_called (rw_grips[i].id) == &rw_grips[i]);
    }
}

static void
test_no_two_in_one_place (void)
{
  Build build;

  build_default (&build);
  for (int view = 0; view < RW_VIEW_COUNT; view++)
    for (int i = 0; i < rw_grips_count; i++)
      for (int j = 0; j < i; j++)
        {
          RwPoint a, b;

          if (rw_grip_place (&rw_grips[i], view, &build.result, &a)
              && rw_grip_place (&rw_grips[j], view, &build.result, &b) && hypot (a.x - b.x, a.y - b.y) < 1.5)
            g_error ("%s and %s lie on each other in %s", rw_grips[i].id, rw_grips[j].id, rw_view_id (view));
        }
}

static void
test_range_holds (void)
{
  const RwGrip *bridge = grip_called ("bridge.offset");
  Build build;
  RwGripScene scene;
  RwPoint place;

  build_default (&build);
  scene = scene_of (&build, RW_VIEW_PLAN);
  g_assert_true (rw_grip_place (bridge, RW_VIEW_PLAN, &build.result, &place));

  /* bridge.offset runs from -60 to 150; further than about 120 the feet leave the head and nothing can be
   * solved, but the bridge's place can still be told. */
  place.x -= 1000;
  g_assert_cmpfloat_with_epsilon (rw_grip_value_at (bridge, &scene, place), -60, 1e-9);
  g_assert_cmpfloat (rw_grip_snap (bridge, &build.result, RW_UNITS_MM, FALSE, 1000), ==, 150);
  g_assert_cmpfloat (rw_grip_nudge (bridge, &build.result, RW_UNITS_MM, FALSE, 150, 1), ==, 150);
}

/* A place beside the bridge's way gives the bridge that is abreast of it. */
static void
test_beside_its_way (void)
{
  const RwGrip *bridge = grip_called ("bridge.offset");
  Build build;
  RwGripScene scene;
  RwPoint place;

  build_default (&build);
  scene = scene_of (&build, RW_VIEW_PLAN);
  g_assert_true (rw_grip_place (bridge, RW_VIEW_PLAN, &build.result, &place));
  place.x += 7.25;
  place.y -= 30;
  g_assert_cmpfloat_with_epsilon (rw_grip_value_at (bridge, &scene, place), 54 + 7.25, 1e-6);
}

static void
test_counts_are_whole (void)
{
  const RwGrip *frets = grip_called ("frets.count");
  Build build;
  RwGripScene scene;
  RwPoint place, wanted;

  build_default (&build);
  scene = scene_of (&build, RW_VIEW_PLAN);
  g_assert_true (place_with (frets, &scene, 22, &wanted));
  wanted.x += 1; /* frets stand about 10 mm apart there */
  g_assert_cmpfloat (rw_grip_value_at (frets, &scene, wanted), ==, 22);

  g_assert_true (rw_grip_place (frets, RW_VIEW_PLAN, &build.result, &place));
  g_assert_cmpfloat (rw_grip_value_at (frets, &scene, place), ==, 19);
}

static void
test_steps (void)
{
  const RwGrip *bridge = grip_called ("bridge.offset"), *angle = grip_called ("headstock.angle");
  const RwGrip *action = grip_called ("setup.action"), *frets = grip_called ("frets.count");
  Build build;
  const RwResult *r = &build.result;

  build_default (&build);
  g_assert_cmpfloat (rw_grip_snap (bridge, r, RW_UNITS_MM, FALSE, 54.3), ==, 54.5);
  g_assert_cmpfloat (rw_grip_snap (bridge, r, RW_UNITS_MM, TRUE, 54.33), ==, 54.3);
  /* 54 mm is 2.126 in; the next 1/32 is 2.125 in */
  g_assert_cmpfloat_with_epsilon (rw_grip_snap (bridge, r, RW_UNITS_FRACTION, FALSE, 54), 2.125 * 25.4, 1e-9);
  g_assert_cmpfloat (rw_grip_snap (angle, r, RW_UNITS_INCH, FALSE, 13.04), ==, 13.0);
  g_assert_cmpfloat (rw_grip_snap (action, r, RW_UNITS_MM, FALSE, 2.44), ==, 2.4);
  g_assert_cmpfloat (rw_grip_snap (frets, r, RW_UNITS_MM, TRUE, 20.4), ==, 20);

  g_assert_cmpfloat (rw_grip_nudge (bridge, r, RW_UNITS_MM, FALSE, 54, 1), ==, 54.5);
  g_assert_cmpfloat (rw_grip_nudge (bridge, r, RW_UNITS_MM, FALSE, 54.2, 1), ==, 54.5);
  g_assert_cmpfloat (rw_grip_nudge (bridge, r, RW_UNITS_MM, FALSE, 54.2, -1), ==, 54);
  g_assert_cmpfloat (rw_grip_nudge (bridge, r, RW_UNITS_MM, FALSE, 54, 10), ==, 59);
}

/* What is worked out is dragged by what it is worked out from, and comes to where it was dragged. */
static void
check_derived (const char *id, int solve_for, RwParamId expected, RwView view)
{
  const RwGrip *grip = grip_called (id);
  Build build, after;
  RwGripScene scene;
  RwPoint place, reached;
  double value;

  build_default (&build);
  build.design.neck_solve_for = solve_for;
  rw_solve (&build.design, NULL, &build.result);
  g_assert_cmpint (build.result.side.outcome, ==, RW_SIDE_SOLVED);
  scene = scene_of (&build, view);
  g_assert_cmpint (rw_grip_drags (grip, &build.result), ==, expected);

  /* A fifth more of what it drags moves it; from there the value must come back. */
  after = build;
  value = 1.05 * rw_grip_get (grip, &build.result, &build.design);
  rw_grip_put (grip, &build.result, &after.design, value);
  rw_solve (&after.design, NULL, &after.result);
  g_assert_true (rw_grip_place (grip, view, &build.result, &place));
  g_assert_true (rw_grip_place (grip, view, &after.result, &reached));
  g_assert_cmpfloat (hypot (reached.x - place.x, reached.y - place.y), >, 0.01);
  g_assert_cmpfloat_with_epsilon (rw_grip_value_at (grip, &scene, reached), value, 1e-5);
  g_assert_cmpfloat (fabs (rw_grip_shown (grip, &after.result) - rw_grip_shown (grip, &build.result)), >, 1e-3);
}

static void
test_derived (void)
{
  check_derived ("neck.angle", RW_SOLVE_ANGLE, RW_P_bridge_height, RW_VIEW_SIDE);
  check_derived ("bridge.height", RW_SOLVE_BRIDGE, RW_P_neck_angle, RW_VIEW_SIDE);
  check_derived ("setup.action", RW_SOLVE_ACTION, RW_P_bridge_height, RW_VIEW_SIDE);
  check_derived ("neck.angle", RW_SOLVE_ACTION, RW_P_neck_angle, RW_VIEW_SIDE);
  check_derived ("bridge.height", RW_SOLVE_ANGLE, RW_P_bridge_height, RW_VIEW_WHOLE);
}

static void
test_course_of_a_list (void)
{
  const RwGrip *course = grip_called ("rim.course_thickness[2]");
  Build build;

  build_default (&build);
  g_assert_cmpfloat (rw_grip_get (course, &build.result, &build.design), ==, 24);
  rw_grip_put (course, &build.result, &build.design, 22.5);
  g_assert_cmpfloat (build.design.rim_course_thickness.at[0], ==, 20);
  g_assert_cmpfloat (build.design.rim_course_thickness.at[1], ==, 22.5);
  g_assert_cmpfloat (build.design.rim_course_thickness.at[2], ==, 24);
}

static void
test_measured_is_a_fact (void)
{
  const RwGrip *rim = grip_called ("rim.outer_diameter");
  RwMeasured measured;
  RwGripScene scene;
  RwPoint place;
  Build build;

  build_default (&build);
  rw_measured_init (&measured);
  g_assert_true (rw_measured_set (&measured, "rim.outer_diameter", 281, NULL));
  rw_solve (&build.design, &measured, &build.result);
  scene = (RwGripScene){ &build.design, &measured, &build.result, RW_VIEW_PLAN };

  g_assert_true (rw_grip_is_fact (rim, &scene));
  g_assert_false (rw_grip_is_fact (grip_called ("scale.length"), &scene));
  g_assert_cmpfloat (rw_grip_shown (rim, &build.result), ==, 281);
  g_assert_true (rw_grip_place (rim, RW_VIEW_PLAN, &build.result, &place));
  place.x += 20;
  g_assert_cmpfloat (rw_grip_value_at (rim, &scene, place), ==, 279); /* dragging the plan moves nothing */
}

/* Mirrored builds are dragged as they are drawn. */
static void
test_left_handed (void)
{
  const RwGrip *nut = grip_called ("nut.width");
  RwPoint right, left;
  Build build;
  RwGripScene scene;

  build_default (&build);
  g_assert_true (rw_grip_place (nut, RW_VIEW_PLAN, &build.result, &right));
  build.design.build_handed = RW_HANDED_LEFT;
  rw_solve (&build.design, NULL, &build.result);
  g_assert_true (rw_grip_place (nut, RW_VIEW_PLAN, &build.result, &left));
  g_assert_cmpfloat_with_epsilon (left.x, right.x, 1e-9);
  g_assert_cmpfloat_with_epsilon (left.y, -right.y, 1e-9);

  scene = scene_of (&build, RW_VIEW_PLAN);
  g_assert_true (place_with (nut, &scene, 36, &left));
  g_assert_cmpfloat_with_epsilon (rw_grip_value_at (nut, &scene, left), 36, 1e-5);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/grip/all-are-there", test_all_are_there);
  g_test_add_func ("/grip/no-two-in-one-place", test_no_two_in_one_place);
  g_test_add_func ("/grip/round-trip/default", test_round_trip_default);
  g_test_add_func ("/grip/round-trip/random", test_round_trip_random);
  g_test_add_func ("/grip/range", test_range_holds);
  g_test_add_func ("/grip/beside-its-way", test_beside_its_way);
  g_test_add_func ("/grip/counts", test_counts_are_whole);
  g_test_add_func ("/grip/steps", test_steps);
  g_test_add_func ("/grip/derived", test_derived);
  g_test_add_func ("/grip/course", test_course_of_a_list);
  g_test_add_func ("/grip/measured", test_measured_is_a_fact);
  g_test_add_func ("/grip/left-handed", test_left_handed);
  return g_test_run ();
}
