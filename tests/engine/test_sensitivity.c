/* Sensitivities against formulas worked out by hand, and the tolerances that follow from them. */
#include "making/care.h"
#include "making/other_way.h"

#include <math.h>
#include <string.h>

#include "expected.h"
#include "random_design.h"

static RwCare *
care_of (const char *changes)
{
  g_autoptr (Built) built = built_new (changes);
  RwCare *care = rw_care_new (&built->design, &built->measured);

  g_assert_nonnull (care);
  return care;
}

/* -1 where it is no cut. */
static int
find (const RwCare *care, const char *id)
{
  for (guint i = 0; i < care->bench->cuts->len; i++)
    {
      g_autofree char *other = rw_cut_id (rw_bench_cut (care->bench, i));

      if (strcmp (other, id) == 0)
        return (int) i;
    }
  return -1;
}

static double
rate (const RwCare *care, const char *id, int outcome)
{
  int cut = find (care, id);

  g_assert_cmpint (cut, >=, 0);
  return rw_sensitivity_rate (care->sensitivity, (guint) cut, outcome);
}

static const RwTolerance *
tolerance (const RwCare *care, const char *id)
{
  int cut = find (care, id);

  g_assert_cmpint (cut, >=, 0);
  return &care->tolerances[cut];
}

/* Differentiated by hand from the definitions of the rows; steps leave 1e-6 of curvature. */
static void
test_by_hand (void)
{
  g_autoptr (RwCare) care = care_of ("");
  const RwResult *plan = &care->bench->planned;
  double angle = plan->side.angle;

  expected_near ("leg", rate (care, "hooks.leg", RW_OUTCOME_HOOK_THREAD), 1, 1e-6);
  expected_near ("notch", rate (care, "hoop.notch_depth", RW_OUTCOME_HOOK_THREAD), 1, 1e-6);
  expected_near ("shoe", rate (care, "shoes.height", RW_OUTCOME_HOOK_THREAD), -0.5, 1e-6);
  expected_near ("hole", rate (care, "shoes.hole_below_edge", RW_OUTCOME_HOOK_THREAD), -1, 1e-6);
  expected_near ("tip", rate (care, "rim.height", RW_OUTCOME_HOOK_TIP), 1, 1e-6);
  expected_near ("bore", rate (care, "hoop.bore", RW_OUTCOME_HOOP_CLEARANCE), 0.5, 1e-6);
  expected_near ("room", rate (care, "rim.outer_diameter", RW_OUTCOME_HEAD_ROOM), -1, 1e-6);
  expected_near ("nut to rim", rate (care, "neck.nut_to_rim", RW_OUTCOME_BRIDGE_PLACE), -1 / cos (angle), 1e-6);
  expected_near ("diameter", rate (care, "rim.outer_diameter", RW_OUTCOME_BRIDGE_PLACE), -0.5, 1e-6);
  expected_near ("width", rate (care, "neck.width[19]", RW_OUTCOME_TREBLE_MARGIN), 0.5, 1e-6);
  expected_near ("sideways", rate (care, "neck.side_angle", RW_OUTCOME_STRING_LINE), 279 * G_PI / 180, 1e-5);
  /* 2 (Ro + a) N, the mitre being off by a small angle. */
  expected_near ("mitre", rate (care, "rim.segment.mitre", RW_OUTCOME_RING_GAP), 2 * 142.5 * 10 * G_PI / 180, 0.01);
  /* An outer string moved at the nut and at the bridge, seen at the last fret. */
  double t = 1 - exp2 (-19 / 12.0);
  expected_near ("at the nut", rate (care, "strings.nut_y[1]", RW_OUTCOME_TREBLE_MARGIN), t - 1, 1e-6);
  expected_near ("at the bridge", rate (care, "strings.bridge_y[1]", RW_OUTCOME_TREBLE_MARGIN), -t, 1e-6);
}

/* With a rigid neck on a board-hard head the side view is plain geometry: Hb = C cos A - B sin A - crown, action
 * hn (1 - t) + Hb t, the nut staying L - N off.  The head gives a little even at 15000 N/m: 2 % of a rate. */
static void
test_side_by_hand (void)
{
  g_autoptr (RwCare) care = care_of ("setup.neck_flex=no|head.tension=15000");
  const RwResult *plan = &care->bench->planned;
  double angle = plan->side.angle, reach = 279 / 2.0 + 54, t = 0.5;
  double rise = plan->side.bridge_top - 2.4;

  expected_near ("crown", rate (care, "frets.crown_height", RW_OUTCOME_ACTION), -t, 0.02 * t);
  expected_near ("nut", rate (care, "nut.string_height", RW_OUTCOME_ACTION), 1 - t, 0.02 * t);
  expected_near ("set height", rate (care, "neck.set_height", RW_OUTCOME_ACTION), -t / cos (angle), 0.1 * t);
  expected_near ("bridge", rate (care, "bridge.height", RW_OUTCOME_ACTION), t / cos (angle), 0.2 * t);
  /* dHb/dA = -C sin A - B cos A - sin A dB/dA; dB/dA from B cos A + C sin A = const. */
  double along = (reach * sin (angle) - rise * cos (angle)) / cos (angle);
  double turn = -rise * sin (angle) - reach * cos (angle) - along * sin (angle);
  expected_near ("angle", rate (care, "neck.angle", RW_OUTCOME_ACTION), t * turn * G_PI / 180, 0.2 * t * 3);
}

/* Sizes that no height or string hangs on: their rates are geometry. */
static void
test_places_by_hand (void)
{
  g_autoptr (RwCare) care = care_of ("");
  double half = G_PI / 10, inward = 279 / (279.4 + 2 * 0.75 + 2 * 4.8);

  expected_near ("long edge", rate (care, "rim.segment.outer_edge", RW_OUTCOME_TURN_OUTSIDE), 0.5 / tan (half), 1e-6);
  expected_near ("diameter", rate (care, "rim.outer_diameter", RW_OUTCOME_TURN_OUTSIDE), -0.5, 1e-6);
  expected_near ("strip", rate (care, "rim.strip_width", RW_OUTCOME_TURN_INSIDE), 1 / cos (half), 1e-6);
  expected_near ("long edge inside", rate (care, "rim.segment.outer_edge", RW_OUTCOME_TURN_INSIDE),
                 -0.5 / tan (half) / cos (half), 1e-6);
  expected_near ("course", rate (care, "rim.course.rough[2]", RW_OUTCOME_COURSES + 2), 1, 1e-6);
  expected_near ("other course", rate (care, "rim.course.rough[2]", RW_OUTCOME_COURSES + 1), 0, 0);
  expected_near ("wall", rate (care, "rim.wall", RW_OUTCOME_BOLT_REACH), -1, 1e-6);
  expected_near ("shoe", rate (care, "hooks.arc[5]", RW_OUTCOME_NOTCHES + 5), 1, 1e-6);
  expected_near ("notch", rate (care, "hoop.notch_arc[5]", RW_OUTCOME_NOTCHES + 5), -inward, 1e-6);
  expected_near ("end", rate (care, "neck.board_length", RW_OUTCOME_END_GAP), -1, 1e-6);
  expected_near ("width", rate (care, "neck.width[1]", RW_OUTCOME_BASS_EDGE + 1), 0.5, 1e-6);
  expected_near ("start", rate (care, "strings.start_y[5]", RW_OUTCOME_BASS_EDGE + 5), 1, 1e-6);
  expected_near ("slot", rate (care, "frets.slot_depth", RW_OUTCOME_TANG_ROOM), 1, 1e-6);
  expected_near ("headstock", rate (care, "headstock.angle", RW_OUTCOME_HEAD_DROP),
                 152 * cos (13 * G_PI / 180) * G_PI / 180, 1e-6);
}

/* Across the string's run, at its far end, a post moved by d turns it by d over the run; and brings it as much
 * nearer to another post as that stands along the run.  String 2 goes to the farther pair, past the post of string
 * 1, which stands outside it. */
static void
test_posts_by_hand (void)
{
  g_autoptr (RwCare) care = care_of ("");
  const double *x = &care->bench->planned.value[RW_HEADSTOCK_POST_X];
  double turn = 180 / G_PI / x[2];

  expected_near ("turn", fabs (rate (care, "headstock.post_y[2]", RW_OUTCOME_BENDS + 2)), turn, 0.03 * turn);
  expected_near ("past", fabs (rate (care, "headstock.post_y[2]", RW_OUTCOME_GAPS + 2)), x[1] / x[2], 0.03);
  expected_near ("passed", fabs (rate (care, "headstock.post_y[1]", RW_OUTCOME_GAPS + 2)), 1, 0.03);
}

/* A hook in a groove goes anywhere, but for those that stand next to heel and tailpiece. */
static void
test_groove (void)
{
  g_autoptr (RwCare) care = care_of ("hoop.seat=groove");

  expected_near ("first", rate (care, "hooks.arc[1]", RW_OUTCOME_ROOMS + 1), 1, 1e-6);
  expected_near ("at the tail", rate (care, "hooks.arc[9]", RW_OUTCOME_ROOMS + 9), 1, 1e-6);
  g_assert_true (isnan (tolerance (care, "hooks.arc[4]")->asked));
  g_assert_nonnull (rw_why_not_asked ((RwSlot) (RW_HOOKS_ARC + 4), &care->bench->planned));
}

/* The bridge that sets the action right makes up for what a cut does to the action, and for nothing of its own. */
static void
test_bridge_makes_up (void)
{
  g_autoptr (RwCare) care = care_of ("");
  double bridge = rate (care, "bridge.height", RW_OUTCOME_ACTION);

  expected_near ("angle", rate (care, "neck.angle", RW_OUTCOME_BRIDGE_HEIGHT),
                 -rate (care, "neck.angle", RW_OUTCOME_ACTION) / bridge, 1e-3);
  expected_near ("bridge", rate (care, "bridge.height", RW_OUTCOME_BRIDGE_HEIGHT), 0, 1e-4);
}

/* At an end of its range a size is tried one way only; the rate is that of a size a little inside. */
static void
test_one_sided (void)
{
  g_autoptr (RwCare) end = care_of ("nut.string_height=0"), inside = care_of ("nut.string_height=0.02");
  double there = rate (inside, "nut.string_height", RW_OUTCOME_ACTION);

  expected_near ("least", rate (end, "nut.string_height", RW_OUTCOME_ACTION), there, 1e-3 * fabs (there));

  g_autoptr (RwCare) most = care_of ("nut.string_height=3"), below = care_of ("nut.string_height=2.98");
  there = rate (below, "nut.string_height", RW_OUTCOME_ACTION);
  expected_near ("most", rate (most, "nut.string_height", RW_OUTCOME_ACTION), there, 1e-3 * fabs (there));
}

/* What has been measured is known: it is no cut any more. */
static void
test_known (void)
{
  g_autoptr (RwCare) care = care_of ("@neck.angle=2|@frets.position[7]=216.2");

  g_assert_cmpint (find (care, "neck.angle"), ==, -1);
  g_assert_cmpint (find (care, "frets.position[7]"), ==, -1);
  g_assert_cmpint (find (care, "frets.position[8]"), >=, 0);
  expected_near ("angle", care->bench->planned.value[RW_NECK_ANGLE], 2, 1e-12);
}

/* A build without cuts off is the plan. */
static void
test_plan_kept (void)
{
  static const char *const builds[] = { "", "neck.solve_for=bridge", "neck.solve_for=action", "frets.count=0",
                                        "hoop.seat=groove", "rim.construction=plies", "@neck.nut_to_rim=455" };

  for (gsize i = 0; i < G_N_ELEMENTS (builds); i++)
    {
      g_autoptr (Built) built = built_new (builds[i]);
      g_autoptr (RwBench) bench = rw_bench_new (&built->design, &built->measured);
      g_autofree double *off = NULL, *row = g_new (double, RW_OUTCOME_ALL);

      g_assert_nonnull (bench);
      off = g_new0 (double, bench->cuts->len);
      rw_bench_try (bench, off, row);
      expected_near ("action", row[RW_OUTCOME_ACTION], built->result.side.action, 1e-7);
      expected_near ("place", row[RW_OUTCOME_BRIDGE_PLACE], built->result.used.bridge_offset, 1e-9);
      expected_near ("over hoop", row[RW_OUTCOME_OVER_HOOP], built->result.value[RW_STRINGS_OVER_HOOP], 1e-6);
    }
}

/* ---- tolerances ---- */

/* Kept to, tolerances keep every outcome inside its limit: sum (rate tolerance)^2 <= limit^2. */
static void
test_inside_limits (void)
{
  g_autoptr (RwCare) care = care_of ("");

  for (int outcome = 0; outcome < RW_OUTCOME_ALL; outcome++)
    {
      double limit = rw_design_get (&care->bench->design, rw_outcome (outcome)->limit), sum = 0;

      for (guint i = 0; i < care->bench->cuts->len; i++)
        {
          const RwTolerance *asked = &care->tolerances[i];
          double part = rw_sensitivity_rate (care->sensitivity, i, outcome) * asked->asked;

          /* What is fitted is asked for no finer than it can be measured. */
          sum += isfinite (part) && !asked->by_fitting ? part * part : 0;
        }
      /* A family has limits for its members, and none for itself. */
      if (isfinite (care->bench->outcomes[outcome]))
        g_assert_cmpfloat (sum, <=, limit * limit * (1 + 1e-6));
    }
}

/* One cut alone answers for the room in the head's band: it gets the whole limit, or its cap. */
static void
test_alone (void)
{
  g_autoptr (RwCare) tight = care_of ("tolerance.head_room=0.1|tolerance.action=3|tolerance.over_hoop=5"),
                     wide = care_of ("tolerance.head_room=3|tolerance.hook_lean=10");

  expected_near ("the limit", tolerance (tight, "rim.outer_diameter")->asked, 0.1, 1e-6);
  g_assert_true (tolerance (tight, "rim.outer_diameter")->takes_care);
  expected_near ("the cap", tolerance (wide, "rim.outer_diameter")->asked, 2 * 0.2, 1e-6);
  g_assert_false (tolerance (wide, "rim.outer_diameter")->takes_care);
}

/* Mitres that close a ring of ten to 0.15 mm would have to be 0.003 degrees true: rings are fitted. */
static void
test_fitting (void)
{
  g_autoptr (RwCare) care = care_of ("");

  g_assert_true (tolerance (care, "rim.segment.mitre")->by_fitting);
  expected_near ("asked", tolerance (care, "rim.segment.mitre")->asked, 0.05, 0);
  expected_near ("used", tolerance (care, "rim.segment.mitre")->used, 0.1 * 2 * 142.5 * 10 * G_PI / 180 / 0.15, 0.01);
  g_assert_cmpint (tolerance (care, "rim.segment.mitre")->used_of, ==, RW_OUTCOME_RING_GAP);
}

/* Narrower limits never ask for wider tolerances. */
static void
test_narrower (void)
{
  g_autoptr (RwCare) care = care_of (""), narrow = care_of ("tolerance.action=0.1");

  for (guint i = 0; i < care->bench->cuts->len; i++)
    if (isfinite (care->tolerances[i].asked))
      g_assert_cmpfloat (narrow->tolerances[i].asked, <=, care->tolerances[i].asked + 1e-9);
}

/* ---- every row of the list ---- */

/* Whatever is cut, drilled or set has a tolerance that is asked of it, or a reason why none is. */
static void
test_every_row (void)
{
  static const char *const builds[] = { "", "hoop.seat=groove", "rim.construction=staves|joint.kind=stick",
                                        "rim.construction=plies", "frets.count=0", "fretboard.binding=2",
                                        "joint.rod_count=1", "neck.solve_for=bridge", "rim.strip_width=30" };

  for (gsize i = 0; i < G_N_ELEMENTS (builds); i++)
    {
      g_autoptr (RwCare) care = care_of (builds[i]);
      const RwResult *plan = &care->bench->planned;

      for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
        {
          const RwTolerance *asked = rw_care_of_slot (care, (RwSlot) slot);
          g_autofree char *id = rw_slot_id ((RwSlot) slot);

          if (!isfinite (plan->value[slot]) || rw_slot_dim ((RwSlot) slot)->tolerance == 0)
            continue;
          if (asked == NULL && rw_why_not_asked ((RwSlot) slot, plan) == NULL)
            g_test_fail_printf ("%s: nothing is asked of %s, and nobody says why", builds[i], id);
          g_assert_true (asked == NULL || asked->asked > 0);
        }
    }
}

static double
asked_of (const RwCare *care, RwSlot slot)
{
  const RwTolerance *asked = rw_care_of_slot (care, slot);

  g_assert_nonnull (asked);
  return asked->asked;
}

/* Rows that say a cut in another way, by the geometry between the two; two holes that carry a neck add up by their
 * squares. */
static void
test_other_ways (void)
{
  g_autoptr (RwCare) care = care_of (""), one_rod = care_of ("joint.rod_count=1");
  double set = tolerance (care, "neck.set_height")->asked, arc = tolerance (care, "hooks.arc[3]")->asked;

  expected_near ("tape", asked_of (care, RW_RIM_CIRCUMFERENCE), G_PI * tolerance (care, "rim.outer_diameter")->asked,
                 1e-9);
  expected_near ("strip", asked_of (care, RW_HOOP_STRIP), G_PI * tolerance (care, "hoop.bore")->asked, 1e-9);
  expected_near ("blank", asked_of (care, RW_HOOKS_BLANK), tolerance (care, "hooks.leg")->asked, 1e-9);
  expected_near ("short edge", asked_of (care, RW_RIM_SEGMENT_INNER_EDGE),
                 2 * tan (G_PI / 10) * tolerance (care, "rim.strip_width")->asked, 1e-9);
  expected_near ("heel", asked_of (care, RW_JOINT_HEEL_ANGLE), tolerance (care, "neck.angle")->asked, 1e-9);
  /* Two rods, four holes, each a half: 4 (t/2)^2 = set^2.  One rod, two holes: 2 t^2 = set^2. */
  expected_near ("two rods", asked_of (care, RW_JOINT_HOLE_ON_HEEL + 1), set, 1e-9);
  expected_near ("one rod", asked_of (one_rod, RW_JOINT_HOLE_ON_RIM + 1), set / sqrt (2), 1e-6);
  expected_near ("across", asked_of (care, RW_HOOKS_X + 3), arc / sqrt (2), 1e-9);
  expected_near ("dividers", asked_of (care, RW_HOOKS_CHORD + 3), arc / sqrt (17), 1e-9);
  g_assert_cmpfloat (asked_of (care, RW_NECK_THICKNESS + 1), ==, tolerance (care, "neck.thickness_first")->asked);
}

/* A deviation is held against what the build asks, and against habit only where it asks nothing; what is measured, and
 * so no cut any more, against what the plan asked. */
static void
test_allowance (void)
{
  g_autoptr (RwCare) care = care_of (""), measured = care_of ("@neck.angle=2|@rim.wall=13.8|@frets.length[3]=40");
  RwAllowance angle = rw_care_allowance (measured, "neck.angle");
  RwAllowance fret = rw_care_allowance (measured, "frets.length[3]");

  expected_near ("asked", angle.within, tolerance (care, "neck.angle")->asked, 1e-9);
  g_assert_true (angle.asked);
  expected_near ("parameter", rw_care_allowance (measured, "rim.wall").within,
                 tolerance (care, "rim.wall")->asked, 1e-9);
  expected_near ("habit", fret.within, 0.3, 0);
  g_assert_false (fret.asked);
  expected_near ("none", rw_care_allowance (measured, "rim.mass").within, 0, 0);
  expected_near ("without care", rw_care_allowance (NULL, "neck.angle").within, 0.2, 0);
  g_assert_true (rw_allowance_passed (angle, -0.15));
  g_assert_false (rw_allowance_passed (fret, 0.3));
}

/* By use of a limit, falling; each family once. */
static void
test_ranked (void)
{
  g_autoptr (RwCare) care = care_of ("");
  g_autoptr (GArray) ranked = rw_tolerances_ranked (care->bench, care->tolerances);
  int frets = 0;

  for (guint i = 0; i < ranked->len; i++)
    {
      guint cut = g_array_index (ranked, guint, i);
      g_autofree char *id = rw_cut_id (rw_bench_cut (care->bench, cut));

      frets += g_str_has_prefix (id, "frets.position[") ? 1 : 0;
      if (i > 0)
        g_assert_cmpfloat (care->tolerances[cut].used, <=,
                           care->tolerances[g_array_index (ranked, guint, i - 1)].used);
    }
  g_assert_cmpint (frets, ==, 1);
}

/* Any build either has no bench or has tolerances that are positive and within what they may be. */
static void
test_anything (void)
{
  for (int i = 0; i < 60; i++)
    {
      RwDesign design;
      g_autoptr (RwCare) care = NULL;

      if (i % 2 == 0)
        random_design (&design);
      else
        random_design_near (&design, 8);
      care = rw_care_new (&design, NULL);
      for (guint k = 0; care != NULL && k < care->bench->cuts->len; k++)
        if (isfinite (care->tolerances[k].used))
          {
            g_assert_cmpfloat (care->tolerances[k].asked, >, 0);
            g_assert_cmpfloat (care->tolerances[k].used, >, 0);
          }
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/sensitivity/by-hand", test_by_hand);
  g_test_add_func ("/sensitivity/side-by-hand", test_side_by_hand);
  g_test_add_func ("/sensitivity/places-by-hand", test_places_by_hand);
  g_test_add_func ("/sensitivity/posts-by-hand", test_posts_by_hand);
  g_test_add_func ("/sensitivity/groove", test_groove);
  g_test_add_func ("/sensitivity/bridge-makes-up", test_bridge_makes_up);
  g_test_add_func ("/sensitivity/one-sided", test_one_sided);
  g_test_add_func ("/sensitivity/known", test_known);
  g_test_add_func ("/sensitivity/plan-kept", test_plan_kept);
  g_test_add_func ("/tolerance/inside-limits", test_inside_limits);
  g_test_add_func ("/tolerance/alone", test_alone);
  g_test_add_func ("/tolerance/fitting", test_fitting);
  g_test_add_func ("/tolerance/narrower", test_narrower);
  g_test_add_func ("/tolerance/every-row", test_every_row);
  g_test_add_func ("/tolerance/other-ways", test_other_ways);
  g_test_add_func ("/tolerance/allowance", test_allowance);
  g_test_add_func ("/tolerance/ranked", test_ranked);
  g_test_add_func ("/tolerance/anything", test_anything);
  return g_test_run ();
}
