/* Findings: every rule has a build on which it fires, with its severity and the place to look at first, and
 * one near by on which it is silent.  Limits are the defaults of the parameters limits.* and those of
 * engine/check/check.h; the builds are made so that the number in question is plainly on one side of the limit
 * or the other. */
#include "check/finding.h"

#include <string.h>

#include "built.h"
#include "random_design.h"

#define SEGMENTS_12 "rim.segments=12|"
#define MEASURED_12 "rim.segments=12|@rim.segment."
#define TUNNEL "fifth.route=tunnel|"
#define PLIES "rim.construction=plies|"
#define GIVEN "neck.solve_for=action|"

typedef struct
{
  const char *rule;
  RwSeverity  severity;
  const char *first; /* of the ids */
  const char *fires, *silent;
} Case;

static const Case cases[] = {
  /* Does it come together at all. */
  { "side.foot_off_head", RW_STOP, "bridge.offset", "bridge.offset=140", "bridge.offset=100" },
  { "side.no_angle", RW_STOP, "setup.action",
    "setup.action=8|setup.action_fret=1|scale.length=900|bridge.offset=-60", "setup.action=4" },
  { "side.no_balance", RW_STOP, "strings.set",
    "neck.solve_for=bridge|neck.rod_present=no|strings.set=G5 1.5 p; G5 1.5 p; G5 1.5 p",
    "head.tension=2000" },
  { "side.no_force", RW_STOP, "tailpiece.height", "tailpiece.height=30", "tailpiece.height=10" },
  { "side.bridge_under_nut", RW_STOP, "bridge.height", GIVEN "bridge.height=8", GIVEN "bridge.height=16" },
  { "neck.angle_misses", RW_STOP, "neck.angle", GIVEN "neck.angle=0.5", GIVEN "neck.angle=1.9" },
  { "neck.angle_misses", RW_CAUTION, "neck.angle", GIVEN "neck.angle=2.6", GIVEN "neck.angle=2" },
  { "neck.string_line", RW_CAUTION, "neck.side_angle", "@neck.side_angle=0.95", "@neck.side_angle=0.6" },
  { "neck.string_line", RW_STOP, "neck.side_angle", "@neck.side_angle=-0.5", "@neck.side_angle=0.5" },
  { "neck.string_line", RW_CAUTION, "neck.side_angle",
    "@neck.side_angle=0.95", "@neck.side_angle=0.95|tailpiece.offset=-2" },

  /* Rim. */
  { "rim.hollow", RW_STOP, "rim.wall", "@rim.inner_diameter=0", "" },
  { "rim.wall_thin", RW_CAUTION, "rim.wall", "rim.wall=9", "rim.wall=10" },
  { "rim.crest_on_wall", RW_STOP, "rim.crest_inset", "rim.crest_inset=15", "rim.crest_inset=13" },
  { "rim.crest_on_wall", RW_CAUTION, "rim.crest_inset", "rim.crest_inset=15|rim.tone_ring_height=5", "" },
  { "rim.out_of_round", RW_CAUTION, "rim.outer_diameter", "~1.2", "~0.7" },
  { "rim.out_of_round", RW_STOP, "rim.outer_diameter", "~1.8", "~0.2" },
  { "rim.strip_width", RW_STOP, "rim.strip_width", "rim.strip_width=25", "rim.strip_width=27" },
  { "rim.short_edge", RW_STOP, "rim.strip_width",
    "rim.segments=4|rim.strip_width=120|rim.outer_diameter=200", "rim.segments=4|rim.strip_width=70" },
  { "rim.closing_halves", RW_NOTE, "rim.mitre_error", "", "rim.mitre_error=0" },
  { "rim.closing_odd", RW_NOTE, "rim.segments", "rim.segments=11", "rim.segments=12" },
  { "rim.closing_oval", RW_CAUTION, "rim.turning_allowance", "rim.mitre_error=0.4", "rim.mitre_error=0.2" },
  { "rim.mitre_sum", RW_CAUTION, "rim.segment.mitre", MEASURED_12 "mitre=15.1", MEASURED_12 "mitre=15.01" },
  { "rim.segment_length", RW_CAUTION, "rim.segment.outer_edge",
    MEASURED_12 "outer_edge=74", MEASURED_12 "outer_edge=76" },
  { "rim.turning_allowance", RW_CAUTION, "rim.turning_allowance",
    "rim.turning_allowance=1", "rim.turning_allowance=2" },
  { "rim.speed", RW_NOTE, "shop.rim_speed", "shop.rim_speed=10", "shop.rim_speed=8" },
  { "rim.speed", RW_CAUTION, "shop.rim_speed", "shop.rim_speed=15", "shop.rim_speed=7" },
  { "rim.ply_thick", RW_NOTE, "rim.ply_thickness",
    PLIES "rim.ply_thickness=6", PLIES "rim.ply_thickness=4" },
  { "rim.ply_scarf", RW_CAUTION, "rim.ply_scarf", PLIES "rim.ply_scarf=20", PLIES "rim.ply_scarf=30" },
  { "rim.ply_seams", RW_NOTE, "rim.ply.count", PLIES, "" },
  { "rim.ring_rod_short", RW_NOTE, "rim.tone_ring_rod",
    "rim.tone_ring_rod=6|rim.outer_diameter=304", "rim.tone_ring_rod=6" },
  { "rim.course_lists", RW_CAUTION, "rim.course_wood", "rim.course_wood=beech; cherry_black", "" },
  { "rim.stack_low", RW_STOP, "rim.course_thickness",
    "rim.course_thickness=20; 20; 20", "rim.course_thickness=20; 24; 22" },
  { "rim.stack_facing", RW_NOTE, "rim.course_thickness",
    "rim.course_thickness=20; 22; 22.5", "rim.course_thickness=20; 22; 24" },
  { "rim.course_unused", RW_CAUTION, "rim.course_thickness", "rim.height=40", "rim.height=50" },
  { "rim.joints_in_line", RW_CAUTION, "rim.course_turn", "rim.course_turn=0.1", "rim.course_turn=0.5" },
  { "rim.hole_to_glue_line", RW_CAUTION, "rim.course_thickness",
    "shoes.below_edge=21", "rim.course_thickness=20; 26; 24" },
  { "rim.hole_to_glue_line", RW_NOTE, "rim.course_thickness",
    "shoes.below_edge=23.5|joint.rod_upper=33|joint.rod_spacing=20", "" },
  { "rim.hole_to_joint", RW_CAUTION, "rim.course_turn", "rim.course_turn=0.5", "" },

  /* Head. */
  { "head.tight", RW_STOP, "rim.outer_diameter", "rim.outer_diameter=279.6", "rim.outer_diameter=279" },
  { "head.tight", RW_CAUTION, "rim.outer_diameter", "rim.outer_diameter=279.2", "rim.outer_diameter=278.5" },
  { "head.loose", RW_CAUTION, "rim.outer_diameter", "rim.outer_diameter=276", "rim.outer_diameter=278" },
  { "head.loose", RW_NOTE, "rim.outer_diameter", "@rim.outer_diameter=277.5", "@rim.outer_diameter=278.4" },
  { "head.odd_size", RW_NOTE, "head.nominal", "head.nominal=292", "head.nominal=304.8" },
  { "head.tension_unusual", RW_NOTE, "head.tension", "head.tension=12000", "head.tension=9000" },
  { "head.film_stress", RW_CAUTION, "head.tension",
    "head.tension=15000|head.thickness=0.15", "head.thickness=0.15" },
  { "head.tap_band", RW_NOTE, "head.tap_mode", "head.tension_from=tap_frequency", "" },
  { "head.skin_room", RW_CAUTION, "hoop.clearance",
    "head.material=skin|head.thickness=0.4", "head.material=skin|head.thickness=0.4|hoop.clearance=1.5" },
  { "head.skin_room", RW_STOP, "hoop.clearance", "head.material=skin|head.thickness=0.6", "" },

  /* Tension hoop. */
  { "hoop.on_band", RW_STOP, "hoop.clearance",
    "head.band=1|hoop.clearance=2", "head.band=4|hoop.clearance=2" },
  { "hoop.on_band", RW_CAUTION, "hoop.clearance", "head.band=2", "head.band=3" },
  { "hoop.bottomed", RW_STOP, "hoop.height", "hoop.height=11", "hoop.height=15" },
  { "hoop.bottomed", RW_CAUTION, "hoop.height", "hoop.height=12.5", "hoop.height=13.5" },
  { "hoop.bar_short", RW_NOTE, "head.nominal", "head.nominal=304.8", "" },
  { "hoop.notch_deep", RW_CAUTION, "hoop.notch_depth", "hoop.notch_depth=12", "hoop.notch_depth=10" },
  { "hoop.notch_deep", RW_STOP, "hoop.notch_depth", "hoop.notch_depth=15", "" },
  { "hoop.untested", RW_NOTE, "hoop.springback_test", "", "hoop.springback_test=14" },
  { "hoop.untested", RW_CAUTION, "hoop.springback_test",
    "hoop.material=aluminium_6061_t6|hoop.thickness=2",
    "hoop.material=aluminium_6061_t6|hoop.springback_test=30" },
  { "hoop.cracks", RW_CAUTION, "hoop.material",
    "hoop.material=brass_cutting_half_hard", "hoop.material=steel_mild" },
  { "hoop.on_shoes", RW_CAUTION, "shoes.below_edge", "shoes.below_edge=22", "shoes.below_edge=26" },
  { "hoop.on_shoes", RW_STOP, "shoes.below_edge", "shoes.below_edge=18", "" },
  { "hoop.edge_round", RW_CAUTION, "hoop.edge_round", "hoop.edge_round=5", "hoop.edge_round=4" },

  /* Hooks and shoes. */
  { "hooks.rod_thin", RW_CAUTION, "hooks.rod", "hooks.rod=3.8", "hooks.rod=4.1" },
  { "hooks.rod_thin", RW_STOP, "hooks.rod", "hooks.rod=3", "" },
  { "hooks.rod_thick", RW_CAUTION, "hooks.rod", "hooks.thread=M3.5", "hooks.thread=M4|hooks.rod=4" },
  { "hooks.nut_short", RW_NOTE, "hooks.nut_height", "hooks.nut_height=5", "hooks.nut_height=7" },
  { "hooks.nut_short", RW_CAUTION, "hooks.nut_height", "hooks.nut_height=4", "" },
  { "hooks.nut_short", RW_STOP, "hooks.nut_height",
    "hooks.nut_height=3|hooks.thread=1/4-20|hooks.rod=6.35", "" },
  { "hooks.leg_short", RW_STOP, "hooks.leg", "@hooks.leg=44", "@hooks.leg=56" },
  { "hooks.leg_short", RW_CAUTION, "hooks.leg", "@hooks.leg=50", "@hooks.leg=54" },
  { "hooks.thread_runs_out", RW_STOP, "hooks.thread_length",
    "@hooks.thread_length=14", "@hooks.thread_length=21" },
  { "hooks.thread_runs_out", RW_CAUTION, "hooks.thread_length", "@hooks.thread_length=17", "" },
  { "hooks.thread_in_bend", RW_STOP, "hooks.reserve",
    "hooks.reserve=30|hooks.nut_height=30|shoes.below_edge=20", "hooks.reserve=15" },
  { "hooks.stress", RW_NOTE, "hooks.count", "hooks.count=4|head.tension=8000", "hooks.count=12" },
  { "hooks.stress", RW_CAUTION, "hooks.count", "hooks.count=4|hooks.thread=M2.5|hooks.rod=2.5", "" },
  { "hooks.claw_in_bend", RW_STOP, "hooks.claw", "hooks.claw=5", "hooks.claw=6" },
  { "hooks.claw_short", RW_CAUTION, "hooks.claw", "hooks.claw=4", "hooks.claw=5" },
  { "hooks.claw_short", RW_STOP, "hooks.claw", "hooks.claw=3|hooks.rod=7", "" },
  { "hooks.tip_on_head", RW_NOTE, "hooks.claw", "", "hooks.claw=7" },
  { "hooks.tip_on_head", RW_CAUTION, "hooks.claw", "hooks.claw=10", "hooks.claw=10|hoop.notch_depth=2" },
  { "hooks.lean", RW_CAUTION, "shoes.stand_off", "shoes.stand_off=10", "shoes.stand_off=8.5" },
  { "hooks.past_back", RW_CAUTION, "shoes.below_edge", "rim.height=55", "rim.height=58" },
  { "hooks.shoes_overlap", RW_STOP, "hooks.count", "hooks.count=48|shoes.width=20", "hooks.count=24" },
  { "hooks.pitch_close", RW_CAUTION, "hooks.count", "hooks.count=40", "hooks.count=26" },
  { "hooks.pitch_wide", RW_NOTE, "hooks.count", "hooks.count=14", "hooks.count=16" },
  { "hooks.pitch_wide", RW_CAUTION, "hooks.count", "hooks.count=10", "" },
  { "hooks.clear_heel", RW_STOP, "hooks.heel_gap", "hooks.heel_gap=5", "hooks.heel_gap=13" },
  { "hooks.clear_heel", RW_CAUTION, "hooks.heel_gap", "hooks.heel_gap=10", "hooks.heel_gap=17" },
  { "hooks.clear_heel", RW_STOP, "hooks.count",
    "hooks.layout=even|hooks.count=24", "hooks.layout=even|hooks.count=14" },
  { "hooks.far_from_heel", RW_NOTE, "hooks.heel_gap", "hooks.heel_gap=30", "hooks.heel_gap=24" },
  { "hooks.clear_tail", RW_STOP, "hooks.tail_gap", "hooks.tail_gap=22", "hooks.tail_gap=30" },
  { "hooks.clear_tail", RW_CAUTION, "hooks.tail_gap", "hooks.tail_gap=26", "hooks.tail_gap=28" },
  { "hooks.clear_rods", RW_STOP, "shoes.below_edge",
    "hooks.count=17|joint.rod_upper=33", "joint.rod_upper=33" },
  { "hooks.clear_rods", RW_CAUTION, "shoes.below_edge",
    "hooks.count=17|joint.rod_upper=22|joint.rod_spacing=30", "" },
  { "hooks.notch_miss", RW_CAUTION, "hoop.notch_arc[3]",
    "@hoop.notch_arc[3]=134", "@hoop.notch_arc[3]=132" },
  { "shoes.bolt_hole", RW_STOP, "shoes.bolt_hole", "shoes.bolt_hole=4.5", "shoes.bolt_hole=5" },
  { "shoes.hole_near_edge", RW_CAUTION, "shoes.below_edge", "shoes.below_edge=58", "shoes.below_edge=50" },
  { "shoes.hole_near_edge", RW_STOP, "shoes.below_edge", "shoes.below_edge=63", "" },
  { "shoes.bolt_long", RW_CAUTION, "shoes.bolt_length", "shoes.bolt_length=26", "shoes.bolt_length=25" },
  { "shoes.bolt_short", RW_CAUTION, "shoes.bolt_length", "shoes.bolt_length=19", "shoes.bolt_length=20" },
  { "shoes.bolt_short", RW_STOP, "shoes.bolt_length", "shoes.bolt_length=14", "" },

  /* Neck. */
  { "neck.under_rod", RW_STOP, "neck.rod_depth", "neck.rod_depth=14", "neck.rod_depth=10" },
  { "neck.under_rod", RW_CAUTION, "neck.rod_depth", "neck.rod_depth=12", "" },
  { "neck.beside_rod", RW_CAUTION, "neck.rod_width", "nut.width=20|neck.rod_width=15", "nut.width=28" },
  { "neck.relief_not_reached", RW_CAUTION, "setup.relief",
    "scale.length=400|neck.rod_end=300|setup.relief=0", "setup.relief=0.1" },
  { "neck.rod_missing", RW_NOTE, "neck.rod_present",
    "neck.rod_present=no|setup.relief=0.15", "neck.rod_present=no" },
  { "neck.rod_missing", RW_CAUTION, "neck.rod_present",
    "neck.rod_present=no|neck.thickness_first=12|neck.thickness_last=14", "" },
  { "neck.no_wood", RW_STOP, "neck.thickness_first", "neck.thickness_first=10|fretboard.thickness=11", "" },
  { "neck.thin", RW_CAUTION, "neck.thickness_first", "neck.thickness_first=13", "neck.thickness_first=15" },
  { "neck.thick", RW_NOTE, "neck.thickness_first", "neck.thickness_first=28", "neck.thickness_first=25" },
  { "neck.taper_reversed", RW_NOTE, "neck.thickness_last",
    "neck.thickness_last=20", "neck.thickness_last=22" },
  { "neck.angle_unusual", RW_CAUTION, "bridge.height", "bridge.height=32", "bridge.height=18" },
  { "board.thin", RW_CAUTION, "fretboard.thickness", "fretboard.thickness=2.5", "fretboard.thickness=4" },
  { "board.thick", RW_NOTE, "fretboard.thickness", "fretboard.thickness=7", "fretboard.thickness=6" },
  { "board.edge_margin", RW_CAUTION, "nut.edge_margin", "nut.edge_margin=1.5", "nut.edge_margin=2.5" },
  { "nut.pitch", RW_CAUTION, "nut.width", "nut.width=28", "nut.width=30" },
  { "nut.pitch", RW_STOP, "nut.width", "@strings.nut_pitch=-0.1", "" },
  { "frets.floor", RW_CAUTION, "frets.tang_depth", "frets.tang_depth=3.5", "frets.tang_depth=2" },
  { "frets.floor", RW_STOP, "frets.tang_depth", "fretboard.thickness=3|frets.tang_depth=3", "" },
  { "frets.slot_room", RW_CAUTION, "frets.slot_depth", "@frets.slot_depth=1.7", "@frets.slot_depth=2.1" },
  { "frets.slot_room", RW_CAUTION, "frets.slot_depth", "@frets.slot_depth=2.5", "" },
  { "frets.slot_width", RW_CAUTION, "frets.slot_width", "@frets.slot_width=0.65", "@frets.slot_width=0.6" },
  { "frets.slot_width", RW_CAUTION, "frets.slot_width", "frets.tang_width=0.7", "frets.tang_width=0.6" },
  { "frets.last_on_board", RW_STOP, "frets.count", "frets.count=22", "frets.count=19" },
  { "frets.last_on_board", RW_CAUTION, "frets.count", "@neck.board_length=437", "@neck.board_length=445" },
  { "frets.misplaced", RW_CAUTION, "frets.position[7]",
    "@frets.position[7]=216.9", "@frets.position[7]=216.2" },

  /* Short string. */
  { "fifth.spacing", RW_CAUTION, "fifth.spacing", "fifth.spacing=8", "fifth.spacing=8.8" },
  { "fifth.start_height", RW_CAUTION, "fifth.start_height",
    "fifth.start_height=0.8", "fifth.start_height=0.4" },
  { "fifth.start_fret", RW_CAUTION, "fifth.start_fret",
    "fifth.start_fret=12|frets.count=12", "fifth.start_fret=8" },
  { "fifth.shoulder", RW_CAUTION, "fifth.shoulder_length",
    "fifth.start_fret=2|fifth.shoulder_length=80", "" },
  { "fifth.peg_at_string", RW_CAUTION, "fifth.peg_distance", "fifth.peg_distance=40", "" },
  { "fifth.peg_at_rod", RW_NOTE, "fifth.peg_distance", "", "neck.rod_present=no" },
  { "fifth.peg_at_rod", RW_CAUTION, "fifth.peg_distance", "neck.rod_width=12", "neck.rod_present=no" },
  { "fifth.peg_place", RW_NOTE, "fifth.peg_distance", "fifth.peg_distance=32", "fifth.peg_distance=25" },
  { "fifth.tube_bore", RW_CAUTION, "fifth.tube_outer",
    TUNNEL "fifth.tube_outer=2", TUNNEL "fifth.tube_outer=3" },
  { "fifth.tube_flat", RW_CAUTION, "fifth.tube_flatten",
    TUNNEL "fifth.tube_flatten=1.3", TUNNEL "fifth.tube_flatten=1.6" },
  { "fifth.tube_flat", RW_STOP, "fifth.tube_flatten", TUNNEL "fifth.tube_flatten=1", "" },
  { "fifth.tube_at_tang", RW_CAUTION, "fifth.tube_flatten", TUNNEL, TUNNEL "fretboard.thickness=6.4" },
  { "fifth.tube_at_rod", RW_CAUTION, "neck.rod_start",
    TUNNEL "neck.rod_width=15|nut.width=20|headstock.post_across_first=10|headstock.post_across_last=10",
    TUNNEL },

  /* Headstock. */
  { "headstock.posts_collide", RW_STOP, "headstock.post_pitch",
    "headstock.post_across_last=12|headstock.post_pitch=20", "" },
  { "headstock.posts_collide", RW_CAUTION, "headstock.post_pitch",
    "headstock.post_across_last=17", "headstock.post_across_last=19" },
  { "headstock.post_at_edge", RW_CAUTION, "headstock.width", "headstock.width=60", "headstock.width=64" },
  { "headstock.post_at_edge", RW_STOP, "headstock.width", "headstock.width=44", "" },
  { "headstock.thin", RW_CAUTION, "headstock.thickness", "headstock.thickness=9", "headstock.thickness=10" },
  { "headstock.thick", RW_CAUTION, "headstock.thickness",
    "headstock.thickness=20", "headstock.thickness=20|limits.headstock_thick=22" },
  { "headstock.bend", RW_CAUTION, "headstock.post_first",
    "headstock.post_first=20", "headstock.post_first=38" },
  { "headstock.ears", RW_NOTE, "headstock.width", "headstock.width=90", "headstock.width=70" },
  { "headstock.ears", RW_NOTE, "headstock.width",
    "headstock.width=80", "headstock.width=80|headstock.ears=yes" },
  { "headstock.angle", RW_CAUTION, "headstock.angle", "headstock.angle=3", "headstock.angle=7" },

  /* Heel. */
  { "joint.rim_wood", RW_NOTE, "joint.rod_upper", "", "joint.rod_upper=20" },
  { "joint.rim_wood", RW_CAUTION, "joint.rod_upper", "joint.rod_spacing=30", "joint.rod_upper=20" },
  { "joint.rim_wood", RW_STOP, "joint.rod_upper", "joint.rod_spacing=40", "joint.rod_upper=20" },
  { "joint.rim_wood", RW_STOP, "joint.stick_below",
    "joint.kind=stick|joint.stick_below=60", "joint.kind=stick" },
  { "joint.heel_wood", RW_CAUTION, "joint.heel_depth", "joint.heel_depth=59", "joint.heel_depth=63" },
  { "joint.heel_wood", RW_STOP, "joint.heel_depth", "joint.heel_depth=50", "" },
  { "joint.hole_in_relief", RW_CAUTION, "joint.rod_upper", "joint.rod_upper=19", "joint.rod_upper=24" },
  { "joint.hole_in_relief", RW_STOP, "joint.rod_upper", "joint.rod_upper=14", "" },
  { "joint.heel_deep", RW_NOTE, "joint.heel_depth", "joint.heel_depth=70", "joint.heel_depth=66" },
  { "joint.heel_wide", RW_STOP, "rim.outer_diameter", "@joint.heel_width=290", "" },
  { "joint.end_gap", RW_CAUTION, "fretboard.end_gap", "fretboard.end_gap=1", "fretboard.end_gap=2" },

  /* Set-up. */
  { "setup.string_on_fret", RW_STOP, "setup.action",
    "setup.relief=0|nut.string_height=0|setup.action=0.5|setup.neck_flex=no|" "@setup.action[7]=-0.1", "" },
  { "setup.action_unusual", RW_NOTE, "setup.action", "setup.action=3.5", "setup.action=3" },
  { "setup.action_unusual", RW_NOTE, "setup.action", "setup.action=1.4", "setup.action=1.4|frets.count=0" },
  { "setup.action_fret", RW_NOTE, "setup.action_fret", "setup.action_fret=22", "setup.action_fret=17" },
  { "bridge.landing", RW_CAUTION, "bridge.offset", "bridge.offset=90", "bridge.offset=60" },
  { "bridge.landing", RW_NOTE, "bridge.offset", "bridge.offset=8", "bridge.offset=20" },
  { "bridge.foot_at_edge", RW_CAUTION, "bridge.offset", "bridge.offset=125", "bridge.offset=110" },
  { "bridge.feet_narrow", RW_NOTE, "bridge.foot_spread", "bridge.foot_spread=40", "bridge.foot_spread=44" },
  { "bridge.sag", RW_NOTE, "head.tension", "", "head.tension=12000" },
  { "bridge.sag", RW_CAUTION, "head.tension", "head.tension=4000", "head.tension=12000" },
  { "bridge.break_angle", RW_CAUTION, "tailpiece.height", "tailpiece.height=14", "tailpiece.height=8" },
  { "bridge.break_angle", RW_CAUTION, "tailpiece.height", "tailpiece.height=-10|tailpiece.anchor=40", "" },
  { "tailpiece.near", RW_CAUTION, "tailpiece.anchor", "tailpiece.anchor=25", "tailpiece.anchor=40" },
  { "tailpiece.off_rim", RW_CAUTION, "tailpiece.anchor", "tailpiece.anchor=90", "tailpiece.anchor=80" },
  { "strings.over_hoop", RW_CAUTION, "neck.set_height", "neck.set_height=0", "neck.set_height=1.5" },
  { "strings.over_hoop", RW_STOP, "neck.set_height", "neck.set_height=-3", "" },
  { "strings.breaks", RW_CAUTION, "strings.set", "scale.length=890", "scale.length=850" },
  { "strings.breaks", RW_STOP, "strings.set",
    "strings.set=A4 0.254 p; B3 0.305 p; G3 0.33 p|scale.length=700", "" },
  { "rim.loads", RW_NOTE, "rim.wall", "", "@rim.inner_diameter=0" },
  { "rim.loads", RW_CAUTION, "rim.wall", "rim.wall=4|rim.height=40", "@rim.inner_diameter=0" },
  { "rim.oval", RW_NOTE, "rim.wall", "rim.wall=11", "rim.wall=13" },

  /* Air and wood; what has no use. */
  { "move.swapped", RW_CAUTION, "setup.humidity_low", "setup.humidity_low=70", "setup.humidity_low=40" },
  { "move.shop_outside", RW_NOTE, "setup.humidity_shop",
    "setup.humidity_shop=80", "setup.humidity_shop=45" },
  { "move.fret_ends", RW_CAUTION, "frets.end_inset", "frets.end_inset=0|setup.humidity_low=10", "" },
  { "move.fret_ends", RW_NOTE, "frets.end_inset", "frets.end_inset=0.1", "frets.end_inset=0.5" },
  { "move.unknown_wood", RW_NOTE, "neck.board_wood",
    "neck.board_wood=ebony_african", "neck.board_wood=walnut_black" },
  { "measured.unused", RW_NOTE, "rim.stave.length",
    "@rim.stave.length=70", "rim.construction=staves|@rim.stave.length=70" },
  { "measured.unused", RW_NOTE, "joint.stick_section",
    "@joint.stick_section=19", "joint.kind=stick|@joint.stick_section=19" },
  { "measured.unused", RW_NOTE, "rim.course_thickness[4]",
    "@rim.course_thickness[4]=20", "@rim.course_thickness[3]=24" },
};

/* The usual mistakes, 1 to 27, as makers tell them, and the rules that see them coming. */
static const char *const mistakes[27] = {
  "rim.closing_halves rim.closing_odd rim.closing_oval rim.mitre_sum", /* the ring will not close */
  "rim.segment_length",                                   /* all segments a hair long or short */
  "rim.strip_width rim.short_edge",                       /* flat spots left inside or outside */
  "rim.turning_allowance",                                /* layers that slipped in gluing */
  "head.tight head.loose",                                /* a rim turned to the label and not to the head */
  "rim.out_of_round",                                     /* oval or waisted after gluing, or with age */
  "head.odd_size",                                        /* no head of that size to be had */
  "hoop.bar_short rim.ring_rod_short",                    /* rod or bar too short for the ring */
  "head.skin_room hoop.on_band",                          /* the hoop does not go on, or slips over */
  "hooks.clear_heel hooks.clear_tail hooks.clear_rods",   /* a hook on the heel, the tail or a hole */
  "hooks.notch_miss",                                     /* notches that miss the shoes */
  "hooks.past_back hooks.leg_short hooks.thread_runs_out", /* hooks too long or too short */
  "hooks.lean hooks.stress",                              /* hooks that lean or open */
  "shoes.bolt_long shoes.bolt_short",                     /* bolts that strike, or do not hold */
  "neck.angle_misses neck.angle_unusual",                 /* neck angle wrong for the bridge */
  "bridge.landing",                                       /* the bridge lands badly */
  "frets.last_on_board",                                  /* no room for the last frets */
  "neck.string_line",                                     /* the middle string misses the tail */
  "frets.misplaced",                                      /* steps from fret to fret that add up */
  "frets.slot_room frets.slot_width frets.floor",         /* slots too shallow, wide or deep */
  "headstock.ears headstock.posts_collide headstock.post_at_edge headstock.thin headstock.thick", /* headstock */
  "neck.under_rod neck.beside_rod",                       /* the channel weakens the neck */
  "fifth.peg_at_rod fifth.peg_at_string",                 /* the side peg hits rod or string */
  "fifth.start_height fifth.spacing",                     /* the short string buzzes or is sharp */
  "move.fret_ends",                                       /* sharp fret ends after a dry winter */
  "neck.thin nut.pitch board.thick",                      /* too thin, too narrow, one pass too many */
  "rim.stack_low rim.stack_facing",                       /* wood too small; papers are marked by side */
};

/* The first finding of a rule, of one severity or (-1) of any. */
static const RwFinding *
find (const GPtrArray *findings, const char *rule, int severity)
{
  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);

      if (strcmp (finding->rule, rule) == 0 && (severity < 0 || (int) finding->severity == severity))
        return finding;
    }
  return NULL;
}

static GPtrArray *
check (const Built *built)
{
  return rw_check (&built->design, &built->measured, &built->result);
}

static void
test_case (gconstpointer data)
{
  const Case *want = data;
  g_autoptr (Built) bad = built_new (want->fires), good = built_new (want->silent);
  g_autoptr (GPtrArray) findings = check (bad), others = check (good);
  const RwFinding *finding = find (findings, want->rule, (int) want->severity);
  const RwFinding *other = find (others, want->rule, -1);

  if (finding == NULL)
    g_test_fail_printf ("silent on \"%s\"", want->fires);
  else
    g_assert_cmpstr (finding->ids[0], ==, want->first);
  if (other != NULL)
    g_test_fail_printf ("fires on \"%s\": %s", want->silent, other->text);
}

/* Builds that makers make: nothing to stop for, and what is to be regretted is named here. */
typedef struct
{
  const char *name, *changes, *caution;
} Sound;

static const Sound sound[] = {
  { "built-in", "", "" },
  { "left-handed", "build.handed=left", "" },
  { "stick", "joint.kind=stick|joint.stick_below=32|rim.course_thickness=20; 25; 21", "" },
  { "staves", "rim.construction=staves|rim.segments=16", "" },
  { "plies", "rim.construction=plies", "" },
  { "fretless", "frets.count=0|fretboard.end_gap=3", "" },
  { "tap", "head.tension_from=tap_frequency", "" },
  { "twelve-inch",
    "rim.outer_diameter=304|head.nominal=304.8|hooks.count=22|bridge.offset=58|frets.count=17", "" },
  { "four-string", "strings.set=D4 0.28 p; B3 0.33 p; G3 0.41 p; D3 0.56 w 0.33|bridge.spread=36", "" },
  { "tunnel", "fifth.route=tunnel|fretboard.thickness=6.4", "" },
  { "rigid", "setup.neck_flex=no", "" },
  { "wrong-angle", "neck.solve_for=action", "neck.angle_misses" },
};

static void
test_sound (gconstpointer data)
{
  const Sound *row = data;
  g_autoptr (Built) built = built_new (row->changes);
  g_autoptr (GPtrArray) findings = check (built);

  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);

      gboolean expected = finding->severity == RW_NOTE
                          || (finding->severity == RW_CAUTION && strcmp (finding->rule, row->caution) == 0);

      if (!expected)
        g_test_fail_printf ("%s: %s", finding->rule, finding->text);
    }
}

/* What is found with a limit moved, as one number to compare. */
static guint
signature (const Built *built, RwParamId limit, double value)
{
  g_autofree RwResult *result = g_memdup2 (&built->result, sizeof built->result);
  guint sum = 0;

  if (!rw_design_set (&result->used, limit, value, NULL))
    return 0;
  g_autoptr (GPtrArray) findings = rw_check (&built->design, &built->measured, result);
  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);

      sum += g_str_hash (finding->rule) * (guint) (1 + finding->severity);
    }
  return sum;
}

static gboolean
limit_counts (const Built *built, RwParamId limit)
{
  const RwParam *param = rw_param (limit);
  guint now = signature (built, limit, rw_design_get (&built->design, limit));

  return signature (built, limit, param->min) != now || signature (built, limit, param->max) != now;
}

/* Each limit, moved to one end of its range, changes what is found on one of the builds above. */
static void
test_limits (void)
{
  g_autoptr (GPtrArray) builds = g_ptr_array_new_with_free_func ((GDestroyNotify) built_free);

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    g_ptr_array_add (builds, built_new (cases[i].fires));
  for (int id = RW_P_limits_rim_wall; id < RW_PARAM_COUNT; id++)
    {
      gboolean counts = FALSE;

      for (guint i = 0; i < builds->len && !counts; i++)
        counts = limit_counts (g_ptr_array_index (builds, i), (RwParamId) id);
      if (!counts)
        g_test_fail_printf ("%s changes nothing", rw_param ((RwParamId) id)->id);
    }
}

/* A limit is no size: it is moved, and not measured. */
static void
test_limit_moved (void)
{
  g_autoptr (Built) built = built_new ("limits.rim_wall=20");
  g_autoptr (GPtrArray) findings = check (built);
  const RwFinding *finding = find (findings, "rim.wall_thin", RW_CAUTION);

  g_assert_nonnull (finding);
  g_assert_nonnull (strstr (finding->text, "14.0 mm"));
  g_assert_nonnull (strstr (finding->text, "20.0 mm"));
  g_assert_null (rw_measurable_unit ("limits.rim_wall"));
}

static gboolean
known_id (const char *id)
{
  return rw_param_find (id) >= 0 || rw_slot_find (id) >= 0 || g_str_has_prefix (id, "rim.course_thickness[");
}

static gboolean
known_rule (const char *rule)
{
  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    if (strcmp (cases[i].rule, rule) == 0)
      return TRUE;
  return FALSE;
}

/* Each of the usual mistakes has its rules, and each rule its builds above. */
static void
test_mistakes (void)
{
  for (gsize i = 0; i < G_N_ELEMENTS (mistakes); i++)
    {
      g_auto (GStrv) rules = g_strsplit (mistakes[i], " ", -1);

      for (int k = 0; rules[k] != NULL; k++)
        if (!known_rule (rules[k]))
          g_test_fail_printf ("mistake %d: there is no rule %s", (int) i + 1, rules[k]);
    }
}

/* What holds for any finding of any build. */
static void
inspect (const RwFinding *finding)
{
  const RwStyle inches = { RW_UNITS_FRACTION, ',' };
  g_autofree char *other = rw_finding_words (finding, finding->pattern, inches);
  const char *texts[] = { finding->text, other };

  for (gsize i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_assert_null (strstr (texts[i], "nan"));
      g_assert_null (strstr (texts[i], "inf"));
      g_assert_null (strpbrk (texts[i], "{}!"));
      g_assert_true (g_str_has_suffix (texts[i], "."));
    }
  g_assert_cmpuint (g_strv_length (finding->ids), >=, 1);
  for (int i = 0; finding->ids[i] != NULL; i++)
    if (!known_id (finding->ids[i]))
      g_error ("%s names %s, which there is not", finding->rule, finding->ids[i]);
  if (!known_rule (finding->rule))
    g_error ("%s has no case in this test", finding->rule);
}

static void
inspect_build (const RwDesign *design)
{
  g_autofree RwResult *result = g_new0 (RwResult, 1);
  RwSeverity last = RW_STOP;

  rw_solve (design, NULL, result);
  g_autoptr (GPtrArray) findings = rw_check (design, NULL, result);
  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);

      inspect (finding);
      g_assert_cmpint (finding->severity, >=, last);
      last = finding->severity;
    }
}

static void
test_random (void)
{
  for (int i = 0; i < 3000; i++)
    {
      RwDesign design;

      if (i % 2 == 0)
        random_design (&design);
      else
        random_design_near (&design, 1 + i % 12);
      inspect_build (&design);
    }
}

/* Numbers go where the marks are, in any order, in the units and with the decimal mark that are asked for. */
static void
test_words (void)
{
  double values[] = { 25.4, 1.5, 3.0, 0.25 };
  char *ids[] = { (char *) "rim.wall", NULL };
  RwFinding finding = { .values = values, .value_count = 4, .ids = ids };
  g_autofree char *mm = rw_finding_words (&finding, "{id}: {1 mm}, {2 deg} at {3}, {4 mm}.", RW_STYLE_FILE);
  g_autofree char *inch = rw_finding_words (&finding, "{3} {1 mm}", (RwStyle){ RW_UNITS_FRACTION, ',' });
  g_autofree char *comma = rw_finding_words (&finding, "{4 mm} {9 mm}|", (RwStyle){ RW_UNITS_MM, ',' });

  g_assert_cmpstr (mm, ==, "rim.wall: 25.4 mm, 1.5° at 3, 0.25 mm.");
  g_assert_cmpstr (inch, ==, "3 1 in");
  g_assert_cmpstr (comma, ==, "0,25 mm |");
}

static void
test_names (void)
{
  g_assert_cmpstr (rw_severity_name (RW_STOP), ==, "stop");
  g_assert_cmpstr (rw_severity_name (RW_CAUTION), ==, "caution");
  g_assert_cmpstr (rw_severity_name (RW_NOTE), ==, "note");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *path = g_strdup_printf ("/check/%s/%s-%d", cases[i].rule,
                                               rw_severity_name (cases[i].severity), (int) i + 1);

      g_test_add_data_func (path, &cases[i], test_case);
    }
  for (gsize i = 0; i < G_N_ELEMENTS (sound); i++)
    {
      g_autofree char *path = g_strdup_printf ("/check/sound/%s", sound[i].name);

      g_test_add_data_func (path, &sound[i], test_sound);
    }
  g_test_add_func ("/check/limits/each", test_limits);
  g_test_add_func ("/check/limits/moved", test_limit_moved);
  g_test_add_func ("/check/mistakes", test_mistakes);
  g_test_add_func ("/check/random", test_random);
  g_test_add_func ("/finding/words", test_words);
  g_test_add_func ("/finding/names", test_names);
  return g_test_run ();
}
