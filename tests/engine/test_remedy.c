/* Remedies: each kind is offered on a build made for it, and does what it says; and no remedy that is offered
 * for any build leaves its finding as severe as it was, adds a stop or a caution, or touches what is measured
 * or made.  The proof is carried out here once more, on its own. */
#include "making/remedy_cures.h"

#include <math.h>
#include <string.h>

#include "built.h"
#include "random_design.h"

#define GIVEN "neck.solve_for=action|"
#define TUNNEL "fifth.route=tunnel|"
#define PLIES "rim.construction=plies|"

/* On this build this rule fires, and among the remedies is one that begins with these words. */
typedef struct
{
  const char *rule, *build, *words;
} Case;

static const Case cases[] = {
  { "side.foot_off_head", "bridge.offset=140", "Bridge " },
  { "side.no_angle", "setup.action=8|setup.action_fret=1|scale.length=900|bridge.offset=-60",
    "Work the bridge out " },
  { "side.no_balance",
    "neck.solve_for=bridge|neck.rod_present=no|strings.set=G5 1.5 p; G5 1.5 p; G5 1.5 p", "Fit a rod" },
  { "side.no_balance",
    "neck.solve_for=bridge|neck.rod_present=no|strings.set=G5 1.5 p; G5 1.5 p; G5 1.5 p; G5 1.5 p; G5 1.5 p short",
    "Take another set of strings: five_light" },
  { "side.no_force", "tailpiece.height=30", "Tailpiece " },
  { "side.no_force", "setup.action=8|setup.action_fret=1", "Measure the action at fret " },
  { "side.no_force", "neck.set_height=20|bridge.height=8", "Bridge " },
  { "side.no_force", "neck.solve_for=bridge|neck.angle=-3", "Work the neck angle out " },
  { "side.bridge_under_nut", GIVEN "bridge.height=8", "Bridge " },
  { "side.bridge_under_nut", GIVEN "bridge.height=8", "Cut the neck at " },
  { "neck.angle_misses", GIVEN "neck.angle=0.5", "Bridge " },
  { "neck.angle_misses", GIVEN "neck.angle=0.5", "Cut the neck at " },
  { "neck.angle_misses", "@neck.angle=0.5|@bridge.height=16", "Shim the heel by 1.5 mm at its head end" },
  { "neck.angle_misses", "@neck.angle=2.6|@bridge.height=16", "Shim the heel by 0.70 mm at its cap end" },
  { "neck.string_line", "@neck.side_angle=0.95", "Set the tail over by 1.9 mm to the bass side" },
  { "neck.string_line", "@neck.side_angle=-0.5", "Set the tail over by 5.0 mm to the treble side" },
  { "neck.angle_unusual", "bridge.height=32", "Bridge " },

  { "rim.wall_thin", "rim.wall=9", "Wall 9.5 mm thick instead of 9.0 mm" },
  { "rim.loads", "rim.wall=6", "Wall " },
  { "rim.crest_on_wall", "rim.crest_inset=15", "Bring the bearing crest out to 14.0 mm" },
  { "rim.crest_on_wall", "rim.crest_inset=15", "Wall 15.0 mm thick" },
  { "rim.strip_width", "rim.strip_width=25", "Strip 1.0 mm wider: 26.0 mm" },
  { "rim.strip_width", "rim.strip_width=25", "12 segments to a course" },
  { "rim.short_edge", "rim.segments=4|rim.strip_width=120|rim.outer_diameter=200", "Strip " },
  { "rim.closing_odd", "rim.segments=11", "12 segments to a course instead of 11" },
  { "rim.closing_oval", "rim.mitre_error=0.4", "Set the saw closer" },
  { "rim.closing_oval", "rim.mitre_error=0.4", "Leave " },
  { "rim.turning_allowance", "rim.turning_allowance=1", "Leave 1.6 mm for turning" },
  { "rim.speed", "shop.rim_speed=15", "Turn at 8 m/s" },
  { "rim.ply_thick", PLIES "rim.ply_thickness=6", "Plies of 4.8 mm" },
  { "rim.ply_scarf", PLIES "rim.ply_scarf=20", "Scarf 28.0 mm long" },
  { "rim.course_lists", "rim.course_wood=beech; cherry_black", "Name a wood for each of the 3 courses" },
  { "rim.stack_low", "rim.course_thickness=20; 20; 20", "One more course, 5.0 mm thick" },
  { "rim.stack_low", "rim.course_thickness=20; 20; 20", "Last course 24.0 mm thick" },
  { "rim.stack_facing", "rim.course_thickness=20; 22; 22.5", "Last course 23.0 mm thick" },
  { "rim.stack_facing", "rim.course_thickness=20; 22; 22.5", "Rim 63.5 mm high" },
  { "rim.course_unused", "rim.height=40", "Leave the last course out: 2 courses" },
  { "rim.joints_in_line", "rim.course_turn=0.1", "Turn each course by 0.50 of a segment" },
  { "rim.hole_to_glue_line", "shoes.below_edge=21", "First course " },
  { "rim.hole_to_glue_line", "shoes.below_edge=21", "Bolt the shoes " },
  { "rim.hole_to_joint", "rim.course_turn=0.5", "Turn each course by " },

  { "head.tight", "rim.outer_diameter=279.6", "Turn the rim to 279.0 mm" },
  { "head.loose", "rim.outer_diameter=276", "Turn the rim to 277.8 mm" },
  { "head.tension_unusual", "head.tension=12000", "Slacken the head to 10000 N/m" },
  { "head.film_stress", "head.tension=15000|head.thickness=0.15", "Slacken the head to 14700 N/m" },
  { "head.film_stress", "head.tension=15000|head.thickness=0.15", "Head 0.16 mm thick" },
  { "head.skin_room", "head.material=skin|head.thickness=0.6", "Hoop clearance " },
  { "hoop.on_band", "head.band=2", "Hoop clearance 0.50 mm" },
  { "hoop.on_band", "head.band=2", "Band or flesh hoop 2.3 mm" },
  { "hoop.bottomed", "hoop.height=11", "Hoop 13.0 mm high" },
  { "hoop.bottomed", "hoop.height=11", "Head with a collar of 7.5 mm" },
  { "hoop.notch_deep", "hoop.notch_depth=12", "File the notches 11.0 mm deep" },
  { "hoop.notch_deep", "hoop.notch_depth=12", "Hoop 15.0 mm high" },
  { "hoop.untested", "hoop.material=aluminium_6061_t6|hoop.thickness=2", "Hoop " },
  { "hoop.cracks", "hoop.material=brass_cutting_half_hard", "Take cartridge brass, annealed" },
  { "hoop.on_shoes", "shoes.below_edge=22", "Bolt the shoes 24.5 mm" },
  { "hoop.on_shoes", "shoes.below_edge=22", "Shoes 11.0 mm high" },
  { "hoop.edge_round", "hoop.edge_round=5", "Round the hoop's edge to 4.5 mm" },

  { "hooks.rod_thin", "hooks.rod=3", "Rod of 4.2 mm, which fits the thread" },
  { "hooks.rod_thin", "hooks.rod=3", "Thread M3, which fits the rod" },
  { "hooks.rod_thick", "hooks.thread=M3.5", "Thread 8-32, which fits the rod" },
  { "hooks.nut_short", "hooks.nut_height=4", "Nuts 6.5 mm high" },
  { "hooks.leg_short", "@hooks.leg=50", "Bolt the shoes " },
  { "hooks.thread_runs_out", "@hooks.thread_length=17", "Allow 2.0 mm of further travel" },
  { "hooks.thread_in_bend", "hooks.reserve=30|hooks.nut_height=30|shoes.below_edge=20", "Allow " },
  { "hooks.stress", "hooks.count=4|hooks.thread=M2.5|hooks.rod=2.5", "Next rod size: " },
  { "hooks.stress", "hooks.count=4|head.tension=8000", "Use " },
  { "hooks.claw_in_bend", "hooks.claw=5", "Claw 5.5 mm long" },
  { "hooks.claw_in_bend", "hooks.claw=5", "Bend the hooks to 2.5 mm inside" },
  { "hooks.claw_short", "hooks.claw=4", "Claw 4.5 mm long" },
  { "hooks.tip_on_head", "", "Claw " },
  { "hooks.lean", "shoes.stand_off=10", "Shoes that stand off " },
  { "hooks.past_back", "rim.height=55", "Bolt the shoes " },
  { "hooks.past_back", "rim.height=55", "Nuts " },
  { "hooks.shoes_overlap", "hooks.count=48|shoes.width=20", "Use " },
  { "hooks.pitch_close", "hooks.count=40", "Use " },
  { "hooks.pitch_wide", "hooks.count=10", "Use " },
  { "hooks.clear_heel", "hooks.heel_gap=10", "Start the hooks 2.5 mm farther from the heel" },
  { "hooks.clear_heel", "hooks.layout=even|hooks.count=24", "Let the neck take the place of one hook" },
  { "hooks.clear_heel", "hooks.layout=even|hooks.count=24", "Use 14 hooks instead of 24" },
  { "hooks.far_from_heel", "hooks.heel_gap=30", "Start the hooks 5.0 mm nearer to the heel" },
  { "hooks.clear_tail", "hooks.tail_gap=26", "End the hooks 1.0 mm farther from the tail" },
  { "hooks.clear_tail", "hooks.tail_gap=22", "Tailpiece " },
  { "hooks.clear_rods", "hooks.count=17|joint.rod_upper=33", "Use 18 hooks" },
  { "hooks.clear_rods", "hooks.count=17|joint.rod_upper=33", "Upper rod " },
  { "shoes.bolt_hole", "shoes.bolt_hole=4.5", "Drill the bolt holes 4.9 mm" },
  { "shoes.hole_near_edge", "shoes.below_edge=58", "Bolt the shoes 55.0 mm" },
  { "shoes.bolt_long", "shoes.bolt_length=26", "Grind the shoe bolts to 25.0 mm" },
  { "shoes.bolt_long", "shoes.bolt_length=26", "Washers 2.0 mm thick" },
  { "shoes.bolt_short", "shoes.bolt_length=14", "Shoe bolts of 20.0 mm" },
  { "joint.rim_wood", "joint.rod_spacing=30", "Upper rod " },
  { "joint.rim_wood", "joint.kind=stick|joint.stick_below=60", "Stick " },
  { "joint.heel_wood", "joint.heel_depth=59", "Heel " },
  { "joint.hole_in_relief", "joint.rod_upper=19", "Upper rod " },
  { "joint.heel_deep", "joint.heel_depth=70", "Heel " },
  { "joint.end_gap", "fretboard.end_gap=1", "End the board 1.6 mm from the hoop" },

  { "neck.under_rod", "neck.rod_depth=12", "Rod channel " },
  { "neck.beside_rod", "nut.width=20|neck.rod_width=15", "Nut 23.0 mm wide" },
  { "neck.relief_not_reached", "scale.length=400|neck.rod_end=300|setup.relief=0", "End the rod's channel " },
  { "neck.rod_missing", "neck.rod_present=no|setup.relief=0.15", "Fit a rod" },
  { "neck.no_wood", "neck.thickness_first=10|fretboard.thickness=11", "Fretboard 10.0 mm thick" },
  { "neck.thin", "neck.thickness_first=13", "Neck 14.0 mm thick" },
  { "neck.thick", "neck.thickness_first=28", "Neck 26.0 mm thick" },
  { "neck.taper_reversed", "neck.thickness_last=20", "Neck 21.0 mm thick near the heel" },
  { "board.thin", "fretboard.thickness=2.5", "Fretboard 3.0 mm thick" },
  { "board.thick", "fretboard.thickness=7", "Fretboard 6.4 mm thick" },
  { "board.edge_margin", "nut.edge_margin=1.5", "Outer strings 2.0 mm inside the edges" },
  { "nut.pitch", "nut.width=28", "Nut 29.0 mm wide" },
  { "frets.floor", "frets.tang_depth=3.5", "Fretboard 5.3 mm thick" },
  { "frets.floor", "frets.tang_depth=3.5", "Fret wire with a tang of 3.2 mm" },
  { "frets.slot_room", "@frets.slot_depth=2.5", "Fret wire with a tang of 2.0 mm" },
  { "frets.slot_width", "frets.tang_width=0.7", "Saw the slots 0.70 mm wide" },
  { "frets.slot_width", "@frets.slot_width=0.65", "Fret wire with a tang 0.65 mm wide" },
  { "frets.last_on_board", "frets.count=22", "19 frets instead of 22" },
  { "fifth.spacing", "fifth.spacing=8", "Start the short string " },
  { "fifth.start_height", "fifth.start_height=0.8", "Rest of the short string 0.50 mm over the frets" },
  { "fifth.start_fret", "fifth.start_fret=12|frets.count=12", "Start the short string at fret 11" },
  { "fifth.shoulder", "fifth.start_fret=2|fifth.shoulder_length=80", "Shoulder " },
  { "fifth.peg_at_string", "fifth.peg_distance=40", "Side peg " },
  { "fifth.peg_at_rod", "neck.rod_width=12", "Rod channel " },
  { "fifth.peg_place", "fifth.peg_distance=32", "Side peg " },
  { "fifth.tube_bore", TUNNEL "fifth.tube_outer=2", "Tube of 2.4 mm" },
  { "fifth.tube_flat", TUNNEL "fifth.tube_flatten=1", "Flatten the tube to 1.5 mm" },
  { "fifth.tube_at_tang", TUNNEL, "Fretboard 5.9 mm thick" },
  { "fifth.tube_at_rod",
    TUNNEL "neck.rod_width=15|nut.width=20|headstock.post_across_first=10|headstock.post_across_last=10",
    "Start the rod's channel " },
  { "headstock.posts_collide", "headstock.post_across_last=17", "Farthest posts 18.0 mm apart" },
  { "headstock.post_at_edge", "headstock.width=60", "Headstock " },
  { "headstock.bend", "headstock.post_first=20", "First posts " },
  { "headstock.ears", "headstock.width=80", "Ears for the headstock, 4.9 mm on each side" },
  { "headstock.ears", "headstock.width=80", "Headstock 76.0 mm wide" },
  { "headstock.angle", "headstock.angle=3", "Lean the headstock back by 5.0° instead of 3.0°" },
  { "headstock.thin", "headstock.thickness=9", "Headstock 9.5 mm thick" },
  { "headstock.thick", "headstock.thickness=20", "Headstock 16.0 mm thick" },

  { "setup.string_on_fret", GIVEN "neck.angle=2.9|bridge.height=12|nut.string_height=0", "Bridge " },
  { "setup.action_unusual", "setup.action=3.5", "Ask for 3.2 mm of action" },
  { "setup.action_fret", "setup.action_fret=22", "Measure the action at fret 19" },
  { "bridge.landing", "bridge.offset=90", "Bridge 72.0 mm beyond the middle" },
  { "bridge.foot_at_edge", "bridge.offset=125", "Bridge 122.0 mm beyond the middle" },
  { "bridge.feet_narrow", "bridge.foot_spread=40", "Outer feet 42.0 mm apart" },
  { "bridge.sag", "head.tension=4000", "Tighten the head to 4600 N/m" },
  { "bridge.break_angle", "tailpiece.height=14", "Tailpiece " },
  { "tailpiece.near", "tailpiece.anchor=25", "Tailpiece 30.0 mm behind the bridge" },
  { "tailpiece.off_rim", "tailpiece.anchor=90", "Tailpiece 85.0 mm behind the bridge" },
  { "strings.over_hoop", "neck.set_height=0", "Board " },
  { "strings.over_hoop", "neck.set_height=0", "Hoop 13.5 mm high" },
  { "strings.breaks", "scale.length=890", "Scale of " },
  { "move.swapped", "setup.humidity_low=70", "Swap the two" },
  { "move.shop_outside", "setup.humidity_shop=80", "Keep the shop's air at 65 %" },
  { "move.fret_ends", "frets.end_inset=0.1", "Inset the fret ends by 0.20 mm" },
};

static GPtrArray *
check (const Built *built)
{
  return rw_check (&built->design, &built->measured, &built->result);
}

static const RwFinding *
find (const GPtrArray *findings, const char *rule)
{
  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);

      if (strcmp (finding->rule, rule) == 0)
        return finding;
    }
  return NULL;
}

/* ---- the proof ---- */

/* How many findings of a rule are as severe, or more. */
static int
count (const GPtrArray *findings, const char *rule, RwSeverity severity)
{
  int sum = 0;

  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);

      sum += strcmp (finding->rule, rule) == 0 && finding->severity <= severity;
    }
  return sum;
}

static void
assert_proven (const RwDesign   *design,
               const RwMeasured *measured,
               const RwFinding  *finding,
               const RwRemedy   *remedy)
{
  g_autofree RwResult *before = g_new (RwResult, 1), *after = g_new (RwResult, 1);

  rw_solve (design, measured, before);
  rw_solve (&remedy->design, measured, after);
  /* A side view without solution has had no cautions, and to solve it may bring some. */
  gboolean unheard = before->side.outcome != RW_SIDE_SOLVED && g_str_has_prefix (finding->rule, "side.");
  RwSeverity worst = unheard ? RW_STOP : RW_CAUTION;
  g_autoptr (GPtrArray) was = rw_check (design, measured, before);
  g_autoptr (GPtrArray) is = rw_check (&remedy->design, measured, after);
  if (count (is, finding->rule, finding->severity) >= count (was, finding->rule, finding->severity))
    g_error ("%s: \"%s\" leaves it as it is", finding->rule, remedy->text);
  for (guint i = 0; i < is->len; i++)
    {
      const RwFinding *other = g_ptr_array_index (is, i);

      if (other->severity <= worst
          && count (is, other->rule, other->severity) > count (was, other->rule, other->severity))
        g_error ("%s: \"%s\" adds: %s", finding->rule, remedy->text, other->text);
    }
}

/* The words hold together, and the change is one that the file can hold. */
static void
assert_sound (const RwDesign *design, const RwMeasured *measured, const RwRemedy *remedy)
{
  int changes = 0;

  g_assert_null (strpbrk (remedy->text, "{}!"));
  g_assert_null (strstr (remedy->text, "nan"));
  g_assert_false (g_str_has_suffix (remedy->text, "."));
  for (int id = 0; id < RW_PARAM_COUNT; id++)
    if (!rw_design_same (design, &remedy->design, (RwParamId) id))
      {
        g_autofree char *text = rw_design_write (&remedy->design, (RwParamId) id, RW_STYLE_FILE);
        RwDesign again = *design;

        changes++;
        g_assert_true (rw_design_read (&again, (RwParamId) id, text, RW_STYLE_FILE, NULL));
        g_assert_true (rw_design_same (&again, &remedy->design, (RwParamId) id));
        g_assert_false (isfinite (measured->param[id]) || measured->holds_param[id]);
      }
  g_assert_cmpint (changes, >, 0);
  g_assert_false (rw_design_same (design, &remedy->design, remedy->param));
}

static void
test_case (gconstpointer data)
{
  const Case *row = data;
  g_autoptr (Built) built = built_new (row->build);
  g_autoptr (GPtrArray) findings = check (built);
  const RwFinding *finding = find (findings, row->rule);
  gboolean offered = FALSE;

  g_assert_nonnull (finding);
  g_autoptr (GPtrArray) remedies = rw_remedies (&built->design, &built->measured, finding);
  for (guint i = 0; i < remedies->len; i++)
    {
      const RwRemedy *remedy = g_ptr_array_index (remedies, i);

      g_test_message ("%s", remedy->text);
      assert_proven (&built->design, &built->measured, finding, remedy);
      assert_sound (&built->design, &built->measured, remedy);
      offered |= g_str_has_prefix (remedy->text, row->words);
    }
  if (!offered)
    g_test_fail_printf ("\"%s\" is not offered", row->words);
}

/* Every rule that the tables know a cure for has a case above. */
static gboolean
has_case (const char *rule)
{
  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    if (strcmp (cases[i].rule, rule) == 0)
      return TRUE;
  return FALSE;
}

static void
test_tables (void)
{
  const struct
  {
    const RwCure *cures;
    int           number;
  } tables[] = {
    { rw_cures_rim, rw_cures_rim_count },
    { rw_cures_pot, rw_cures_pot_count },
    { rw_cures_neck, rw_cures_neck_count },
    { rw_cures_setup, rw_cures_setup_count },
  };

  for (gsize k = 0; k < G_N_ELEMENTS (tables); k++)
    for (int i = 0; i < tables[k].number; i++)
      {
        const RwCure *cure = &tables[k].cures[i];

        if (!has_case (cure->rule))
          g_test_fail_printf ("%s has no case in this test", cure->rule);
        g_assert_true ((cure->way & RW_RAISE) == 0 || cure->more != NULL);
        g_assert_true ((cure->way & RW_LOWER) == 0 || cure->less != NULL);
      }
  for (int i = 0; i < rw_special_cures_count; i++)
    g_assert_true (has_case (rw_special_cures[i].rule));
}

/* What is measured or made is a fact: with every parameter a fact there is no remedy, and with the likeliest
 * one a fact another is found. */
static void
test_facts (void)
{
  g_autoptr (Built) free = built_new ("hooks.heel_gap=10");
  g_autoptr (Built) measured = built_new ("hooks.heel_gap=10|@hooks.heel_gap=10");
  g_autoptr (Built) held = built_new (GIVEN "neck.angle=0.5");
  g_autoptr (GPtrArray) findings = check (free), others = check (held);
  const RwFinding *heel = find (findings, "hooks.clear_heel"), *angle = find (others, "neck.angle_misses");

  for (int id = 0; id < RW_PARAM_COUNT; id++)
    rw_measured_hold_param (&free->measured, (RwParamId) id, &free->design);
  g_autoptr (GPtrArray) none = rw_remedies (&free->design, &free->measured, heel);
  g_assert_cmpuint (none->len, ==, 0);
  g_autoptr (GPtrArray) few = rw_remedies (&measured->design, &measured->measured, heel);
  for (guint i = 0; i < few->len; i++)
    g_assert_cmpint (((RwRemedy *) g_ptr_array_index (few, i))->param, !=, RW_P_hooks_heel_gap);

  rw_measured_hold_param (&held->measured, RW_P_bridge_height, &held->design);
  rw_measured_hold_param (&held->measured, RW_P_neck_angle, &held->design);
  g_autoptr (GPtrArray) shim = rw_remedies (&held->design, &held->measured, angle);
  g_assert_cmpuint (shim->len, ==, 1);
  g_assert_cmpint (((RwRemedy *) g_ptr_array_index (shim, 0))->param, ==, RW_P_joint_shim);
}

/* What changes less comes first; another instrument is not offered where something nearer helps. */
static void
test_order (void)
{
  g_autoptr (Built) heel = built_new (GIVEN "neck.angle=0.5"), feet = built_new ("bridge.offset=125"),
                    glue = built_new ("rim.height=55");
  g_autoptr (GPtrArray) heels = check (heel), edges = check (feet), backs = check (glue);
  g_autoptr (GPtrArray) angle = rw_remedies (&heel->design, &heel->measured, find (heels, "neck.angle_misses"));
  g_autoptr (GPtrArray) edge = rw_remedies (&feet->design, &feet->measured, find (edges, "bridge.foot_at_edge"));
  g_autoptr (GPtrArray) back = rw_remedies (&glue->design, &glue->measured, find (backs, "hooks.past_back"));

  g_assert_cmpuint (angle->len, ==, 3);
  for (guint i = 1; i < back->len; i++)
    g_assert_cmpfloat (((RwRemedy *) g_ptr_array_index (back, i - 1))->effort, <=,
                       ((RwRemedy *) g_ptr_array_index (back, i))->effort);
  /* Feet brought from 58 to 28 mm would make another bridge. */
  g_assert_cmpuint (edge->len, ==, 1);
  g_assert_cmpint (((RwRemedy *) g_ptr_array_index (edge, 0))->param, ==, RW_P_bridge_offset);
}

/* Any build at all, some with things measured. */
static void
inspect_build (const RwDesign *design, const RwMeasured *measured)
{
  g_autofree RwResult *result = g_new (RwResult, 1);

  rw_solve (design, measured, result);
  g_autoptr (GPtrArray) findings = rw_check (design, measured, result);
  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);
      g_autoptr (GPtrArray) remedies = rw_remedies (design, measured, finding);

      for (guint k = 0; k < remedies->len; k++)
        {
          assert_proven (design, measured, finding, g_ptr_array_index (remedies, k));
          assert_sound (design, measured, g_ptr_array_index (remedies, k));
        }
    }
}

static void
test_random (void)
{
  g_autofree RwMeasured *measured = g_new (RwMeasured, 1);

  for (int i = 0; i < 60; i++)
    {
      RwDesign design;

      random_design_near (&design, 1 + i % 8);
      rw_measured_init (measured);
      for (int k = i % 3; k > 0; k--)
        {
          RwParamId id = (RwParamId) g_test_rand_int_range (0, RW_P_limits_rim_wall);

          rw_measured_hold_param (measured, id, &design);
        }
      inspect_build (&design, measured);
    }
  for (int i = 0; i < 6; i++)
    {
      RwDesign design;

      random_design (&design);
      rw_measured_init (measured);
      inspect_build (&design, measured);
    }
}

static void
test_words (void)
{
  RwRemedy remedy = { .values = { 25.4, 1.5, 3 }, .value_count = 3, .word = (char *) "M4" };
  g_autofree char *mm = rw_remedy_words (&remedy, "{id}: {1 mm}, {2 deg}, {3}", RW_STYLE_FILE);
  g_autofree char *inch = rw_remedy_words (&remedy, "{1 mm}", (RwStyle){ RW_UNITS_FRACTION, ',' });

  g_assert_cmpstr (mm, ==, "M4: 25.4 mm, 1.5°, 3");
  g_assert_cmpstr (inch, ==, "1 in");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *path = g_strdup_printf ("/remedy/%s/%d", cases[i].rule, (int) i + 1);

      g_test_add_data_func (path, &cases[i], test_case);
    }
  g_test_add_func ("/remedy/tables", test_tables);
  g_test_add_func ("/remedy/facts", test_facts);
  g_test_add_func ("/remedy/order", test_order);
  g_test_add_func ("/remedy/random", test_random);
  g_test_add_func ("/remedy/words", test_words);
  return g_test_run ();
}
