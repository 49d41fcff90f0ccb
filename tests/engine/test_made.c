/* What is made stays as it is: marking changes nothing, later changes of the design change nothing that is made, what
 * comes before never moves, and the order of entering makes no difference. */
#include "making/making.h"

#include <math.h>
#include <string.h>

#include "built.h"
#include "random_design.h"

#define ROUNDS 120

/* The solver brackets to 1e-9 mm; what is worked out from it loses a digit or two. */
#define SAME 1e-6

static gboolean
same (double a, double b)
{
  return (isnan (a) && isnan (b)) || fabs (a - b) <= SAME * fmax (1, fabs (a));
}

static void
assert_same_slot (const RwResult *one, const RwResult *other, RwSlot slot, const char *what)
{
  g_autofree char *id = NULL;

  if (same (one->value[slot], other->value[slot]))
    return;
  id = rw_slot_id (slot);
  g_error ("%s: %s is %.17g and %.17g", what, id, one->value[slot], other->value[slot]);
}

static void
assert_same (const RwResult *one, const RwResult *other, const char *what)
{
  for (RwSlot slot = 0; slot < RW_SLOT_COUNT; slot++)
    assert_same_slot (one, other, slot, what);
}

static void
mark (RwProject *project, RwStep step)
{
  g_autoptr (GError) error = NULL;

  rw_making_mark (project, step, "2026-05-04", &error);
  g_assert_no_error (error);
}

/* A build near the built-in one that has a side view: without one there is nothing to cut. */
static RwProject *
random_project (void)
{
  for (;;)
    {
      g_autoptr (RwProject) project = rw_project_new ();
      g_autofree RwResult *result = NULL;

      random_design_near (&project->design, 12);
      result = built_result (project);
      if (result->side.outcome == RW_SIDE_SOLVED && fabs (result->value[RW_NECK_ANGLE] - 3) < 5)
        return g_steal_pointer (&project);
    }
}

static RwStep
random_step (const RwProject *project)
{
  const RwStepInfo *steps[RW_STEP_COUNT];
  int count = rw_steps_of (&project->design, steps);

  return steps[g_test_rand_int_range (0, count)]->step;
}

static void
mark_some (RwProject *project)
{
  int count = g_test_rand_int_range (1, RW_STEP_COUNT);

  for (int i = 0; i < count; i++)
    mark (project, random_step (project));
}

/* ---- marking changes nothing ---- */

static void
test_marking_changes_nothing (void)
{
  for (int round = 0; round < ROUNDS; round++)
    {
      g_autoptr (RwProject) project = random_project ();
      g_autofree RwResult *before = built_result (project), *after = NULL;

      mark_some (project);
      after = built_result (project);
      assert_same (before, after, "marked");
    }
}

static void
test_unmarking_releases (void)
{
  for (int round = 0; round < ROUNDS; round++)
    {
      g_autoptr (RwProject) project = random_project (), start = rw_project_copy (project);
      RwStep step = random_step (project);

      mark (project, step);
      g_assert_false (rw_project_equal (project, start));
      g_assert_true (rw_making_unmark (project, step));
      g_assert_true (rw_project_equal (project, start));
      g_assert_false (rw_making_unmark (project, step));
    }
}

/* ---- what is made stays ---- */

static void
assert_held (const RwProject *project, const RwResult *start, const RwResult *now)
{
  for (RwSlot slot = 0; slot < RW_SLOT_COUNT; slot++)
    if (rw_made_holder_of_slot (project->made, slot) != NULL)
      assert_same_slot (start, now, slot, "made");
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    {
      const RwMadeStep *made = rw_made_holder_of_param (project->made, id);

      if (made != NULL)
        g_assert_true (rw_design_same (&made->held->design, &now->used, id));
    }
}

/* Any parameter to any value, choices and lists too, the side view solved or not. */
static void
test_made_never_changes (void)
{
  for (int round = 0; round < ROUNDS; round++)
    {
      g_autoptr (RwProject) project = random_project ();
      g_autofree RwResult *start = built_result (project);

      mark_some (project);
      for (int change = 0; change < 10; change++)
        {
          g_autofree RwResult *now = NULL;

          random_design (&project->design);
          now = built_result (project);
          assert_held (project, start, now);
        }
    }
}

/* Marks one after the other while the design goes on changing: each holds what it had when it was marked. */
static void
test_marks_and_changes_mixed (void)
{
  for (int round = 0; round < ROUNDS / 4; round++)
    {
      g_autoptr (RwProject) project = random_project ();

      for (RwStep step = 0; step < RW_STEP_COUNT; step++)
        {
          g_autofree RwResult *before = built_result (project), *after = NULL;
          RwDesign kept = project->design;

          rw_making_mark (project, step, NULL, NULL);
          random_design_near (&project->design, 3);
          after = built_result (project);
          assert_held (project, before, after);
          if (after->side.outcome != RW_SIDE_SOLVED)
            project->design = kept;
        }
    }
}

/* ---- what comes before does not move ---- */

/* A step that is marked moves nothing that is not its own, whatever is then measured of it. */
static void
test_upstream_stays (void)
{
  /* Measured late, and what was known before it. */
  static const struct
  {
    const char *measured;
    double      by; /* so much more than it is */
    RwSlot      first, last;
  } cases[] = {
    { "rim.outer_diameter", 0.7, RW_RIM_COURSE_ROUGH, RW_RIM_COURSE_ROUGH_LAST },
    { "rim.outer_diameter", 0.7, RW_FRETS_POSITION, RW_FRETS_POSITION_LAST },
    { "hoop.thickness", 0.4, RW_RIM_INNER_DIAMETER, RW_RIM_BLANK_HEIGHT },
    { "fretboard.thickness", -0.3, RW_HOOP_BORE, RW_HOOP_STRIP },
    { "frets.crown_height", 0.2, RW_HOOP_BORE, RW_HOOP_STRIP },
    { "neck.angle", 0.6, RW_RIM_INNER_DIAMETER, RW_RIM_BLANK_HEIGHT },
    { "bridge.height", 0.5, RW_HOOP_BORE, RW_HOOP_STRIP },
    { "setup.action[12]", 0.5, RW_NECK_ANGLE, RW_NECK_ANGLE },
    { "setup.action[12]", 0.5, RW_BRIDGE_HEIGHT, RW_BRIDGE_HEIGHT },
    { "hooks.leg", 2, RW_SHOES_HOLE_BELOW_EDGE, RW_SHOES_HOLE_BELOW_EDGE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (RwProject) project = rw_project_new ();
      g_autofree RwResult *before = built_result (project), *after = NULL;
      int param = rw_param_find (cases[i].measured), slot = rw_slot_find (cases[i].measured);
      double value = cases[i].by
                     + (slot >= 0 ? before->value[slot] : rw_design_get (&before->used, (RwParamId) param));

      g_assert_true (rw_making_measure (project, cases[i].measured, &value, 1, NULL, NULL, NULL));
      after = built_result (project);
      for (RwSlot s = cases[i].first; s <= cases[i].last; s++)
        assert_same_slot (before, after, s, cases[i].measured);
    }
}

/* ---- readings of what is made ---- */

/* The rim is turned and marked, then measured again: its own circumference goes with the reading, the holes that are
 * drilled stay, and taking the reading away puts all back. */
static void
test_reading_of_made_part (void)
{
  const double reading = 279.6;
  g_autoptr (RwProject) project = rw_project_new (), before = NULL;
  g_autofree RwResult *now = NULL, *start = built_result (project);

  mark (project, RW_STEP_TURN);
  mark (project, RW_STEP_SHOES);
  before = rw_project_copy (project);
  g_assert_true (rw_making_measure (project, "rim.outer_diameter", &reading, 1, NULL, NULL, NULL));
  now = built_result (project);
  g_assert_cmpfloat (now->used.rim_outer_diameter, ==, reading);
  g_assert_cmpfloat_with_epsilon (now->value[RW_RIM_CIRCUMFERENCE], G_PI * reading, 1e-9);
  assert_same_slot (start, now, RW_HOOKS_ARC + 3, "drilled");

  g_assert_true (rw_making_forget (project, "rim.outer_diameter"));
  g_assert_true (rw_project_equal (project, before));
}

/* A reading of one part, entered before or after it or others are marked. */
static void
test_order_of_entry (void)
{
  static const char *const ids[] = {
    "rim.outer_diameter", "rim.wall", "hoop.thickness", "neck.angle", "fretboard.thickness", "rim.course_thickness[2]",
    "frets.position[7]",  "neck.nut_to_rim", "shoes.stand_off", "neck.set_height",
  };

  for (int round = 0; round < ROUNDS; round++)
    {
      const char *id = ids[round % (int) G_N_ELEMENTS (ids)];
      g_autoptr (RwProject) first = random_project (), last = rw_project_copy (first);
      g_autofree RwResult *before = built_result (first), *one = NULL, *other = NULL;
      int param = rw_param_find (id), slot = rw_slot_find (id);
      double is = slot >= 0    ? before->value[slot]
                  : param >= 0 ? rw_design_get (&before->used, (RwParamId) param)
                               : before->used.rim_course_thickness.at[1];
      double reading = is + 0.2;
      RwStep step = slot >= 0 ? rw_slot_dim ((RwSlot) slot)->step : random_step (first);

      if (!rw_making_measure (first, id, &reading, 1, NULL, NULL, NULL))
        continue; /* past the end of its range */
      mark (first, step);
      mark (last, step);
      g_assert_true (rw_making_measure (last, id, &reading, 1, NULL, NULL, NULL));
      one = built_result (first);
      other = built_result (last);
      /* Made before the reading, another part stays as it was; so only what belongs to no other is compared. */
      if (slot >= 0)
        assert_same_slot (one, other, (RwSlot) slot, id);
      else if (param >= 0)
        g_assert_true (rw_design_same (&one->used, &other->used, (RwParamId) param));
    }
}

/* Readings alone: all orders give the same. */
static void
test_order_of_readings (void)
{
  static const struct
  {
    const char *id;
    double      value;
  } all[] = {
    { "rim.outer_diameter", 279.4 }, { "neck.angle", 2.1 },        { "hoop.thickness", 4.9 },
    { "frets.position[5]", 163.1 },  { "bridge.height", 16.4 },    { "rim.course_thickness[1]", 19.7 },
    { "hooks.angle[3]", 40.5 },      { "neck.nut_to_rim", 447.2 }, { "setup.action[12]", 2.9 },
  };
  g_autofree RwResult *first = NULL;

  for (int round = 0; round < 40; round++)
    {
      g_autoptr (RwProject) project = rw_project_new ();
      g_autofree RwResult *now = NULL;
      guint from = (guint) g_test_rand_int_range (0, G_N_ELEMENTS (all));
      guint stride = round % 2 == 0 ? 1 : G_N_ELEMENTS (all) - 1;

      for (guint i = 0; i < G_N_ELEMENTS (all); i++)
        {
          guint at = (from + i * stride) % G_N_ELEMENTS (all);

          g_assert_true (rw_making_measure (project, all[at].id, &all[at].value, 1, NULL, NULL, NULL));
        }
      now = built_result (project);
      if (first == NULL)
        first = g_steal_pointer (&now);
      else
        assert_same (first, now, "order");
    }
}

/* ---- what can't be ---- */

static void
test_refused (void)
{
  g_autoptr (RwProject) project = rw_project_new (), before = NULL;
  g_autoptr (GError) error = NULL;

  g_assert_true (rw_design_read (&project->design, RW_P_rim_construction, "plies", RW_STYLE_FILE, NULL));
  before = rw_project_copy (project);
  g_assert_false (rw_making_mark (project, RW_STEP_STACK, NULL, &error));
  g_assert_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_UNKNOWN);
  g_assert_true (rw_project_equal (project, before));
}

/* An angle that can't be worked out can't have been cut. */
static void
test_refused_without_side (void)
{
  g_autoptr (RwProject) project = rw_project_new (), before = NULL;
  g_autoptr (GError) error = NULL;

  project->design.bridge_offset = 150; /* off the head */
  before = rw_project_copy (project);
  g_assert_false (rw_making_mark (project, RW_STEP_HEEL, NULL, &error));
  g_assert_nonnull (error);
  g_assert_true (rw_project_equal (project, before));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/made/marking-changes-nothing", test_marking_changes_nothing);
  g_test_add_func ("/made/unmarking-releases", test_unmarking_releases);
  g_test_add_func ("/made/never-changes", test_made_never_changes);
  g_test_add_func ("/made/marks-and-changes-mixed", test_marks_and_changes_mixed);
  g_test_add_func ("/made/upstream-stays", test_upstream_stays);
  g_test_add_func ("/made/reading-of-made-part", test_reading_of_made_part);
  g_test_add_func ("/made/order-of-entry", test_order_of_entry);
  g_test_add_func ("/made/order-of-readings", test_order_of_readings);
  g_test_add_func ("/made/refused", test_refused);
  g_test_add_func ("/made/refused-without-side", test_refused_without_side);
  return g_test_run ();
}
