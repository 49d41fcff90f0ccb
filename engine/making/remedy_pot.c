/* Hooks, shoes and the heel joint. */
#include "remedy_cures.h"

#define USE_HOOKS N_("Use {1} hooks instead of {3}")
#define SHOES N_("Bolt the shoes {1 mm} under the head's plane instead of {3 mm}")
#define SHOES_HIGH N_("Shoes {1 mm} high instead of {3 mm}")
#define SHOES_WIDE N_("Shoes {1 mm} wide instead of {3 mm}")
#define CLAW N_("Claw {1 mm} long instead of {3 mm}")
#define NUTS N_("Nuts {1 mm} high instead of {3 mm}")
#define RESERVE N_("Allow {1 mm} of further travel instead of {3 mm}")
#define RODS N_("Upper rod {1 mm} under the head's plane instead of {3 mm}")
#define SPACING N_("Rods {1 mm} apart instead of {3 mm}")
#define STICK N_("Stick {1 mm} under the head's plane instead of {3 mm}")
#define HEEL N_("Heel {1 mm} deep instead of {3 mm}")
#define CAP N_("Heel {1 mm} wide at its cap instead of {3 mm}")
#define RIM_HIGH N_("Rim {1 mm} high instead of {3 mm}")

const RwCure rw_cures_pot[] = {
  { "hooks.clear_heel", RW_P_hooks_heel_gap, RW_RAISE, 0.5,
    N_("Start the hooks {2 mm} farther from the heel"), NULL },
  { "hooks.clear_heel", RW_P_hooks_count, RW_EITHER, 0, USE_HOOKS, USE_HOOKS },
  { "hooks.clear_heel", RW_P_joint_heel_cap_width, RW_LOWER, 0.5, NULL, CAP },
  { "hooks.clear_heel", RW_P_shoes_width, RW_LOWER, 0.5, NULL, SHOES_WIDE },
  { "hooks.far_from_heel", RW_P_hooks_heel_gap, RW_LOWER, 0.5,
    NULL, N_("Start the hooks {2 mm} nearer to the heel") },
  { "hooks.far_from_heel", RW_P_hooks_count, RW_EITHER, 0, USE_HOOKS, USE_HOOKS },
  { "hooks.clear_tail", RW_P_hooks_tail_gap, RW_RAISE, 0.5,
    N_("End the hooks {2 mm} farther from the tail"), NULL },
  { "hooks.clear_tail", RW_P_hooks_count, RW_EITHER, 0, USE_HOOKS, USE_HOOKS },
  { "hooks.clear_tail", RW_P_tailpiece_width, RW_LOWER, 0.5,
    NULL, N_("Tailpiece {1 mm} wide instead of {3 mm}") },
  { "hooks.clear_rods", RW_P_shoes_below_edge, RW_EITHER, 0.5, SHOES, SHOES },
  { "hooks.clear_rods", RW_P_joint_rod_upper, RW_EITHER, 0.5, RODS, RODS },
  { "hooks.clear_rods", RW_P_joint_stick_below, RW_EITHER, 0.5, STICK, STICK },
  { "hooks.clear_rods", RW_P_hooks_count, RW_EITHER, 0, USE_HOOKS, USE_HOOKS },
  { "hooks.pitch_wide", RW_P_hooks_count, RW_RAISE, 0, USE_HOOKS, NULL },
  { "hooks.pitch_close", RW_P_hooks_count, RW_LOWER, 0, NULL, USE_HOOKS },
  { "hooks.shoes_overlap", RW_P_hooks_count, RW_LOWER, 0, NULL, USE_HOOKS },
  { "hooks.shoes_overlap", RW_P_shoes_width, RW_LOWER, 0.5, NULL, SHOES_WIDE },
  { "hooks.shoes_overlap", RW_P_hooks_tail_gap, RW_LOWER, 0.5,
    NULL, N_("End the hooks {2 mm} nearer to the tail") },
  { "hooks.nut_short", RW_P_hooks_nut_height, RW_RAISE, 0.5, NUTS, NULL },
  { "hooks.leg_short", RW_P_shoes_below_edge, RW_LOWER, 0.5, NULL, SHOES },
  { "hooks.leg_short", RW_P_shoes_height, RW_LOWER, 0.5, NULL, SHOES_HIGH },
  { "hooks.leg_short", RW_P_hoop_notch_depth, RW_RAISE, 0.5,
    N_("File the notches {1 mm} deep instead of {3 mm}"), NULL },
  { "hooks.leg_short", RW_P_hoop_height, RW_LOWER, 0.5, NULL, N_("Hoop {1 mm} high instead of {3 mm}") },
  { "hooks.thread_runs_out", RW_P_hooks_reserve, RW_LOWER, 0.5, NULL, RESERVE },
  { "hooks.thread_runs_out", RW_P_shoes_height, RW_RAISE, 0.5, SHOES_HIGH, NULL },
  { "hooks.thread_runs_out", RW_P_shoes_below_edge, RW_RAISE, 0.5, SHOES, NULL },
  { "hooks.thread_in_bend", RW_P_hooks_reserve, RW_LOWER, 0.5, NULL, RESERVE },
  { "hooks.thread_in_bend", RW_P_shoes_below_edge, RW_RAISE, 0.5, SHOES, NULL },
  { "hooks.stress", RW_P_hooks_count, RW_RAISE, 0, USE_HOOKS, NULL },
  { "hooks.claw_in_bend", RW_P_hooks_claw, RW_RAISE, 0.5, CLAW, NULL },
  { "hooks.claw_in_bend", RW_P_hooks_bend_radius, RW_LOWER, 0.5,
    NULL, N_("Bend the hooks to {1 mm} inside") },
  { "hooks.claw_short", RW_P_hooks_claw, RW_RAISE, 0.5, CLAW, NULL },
  { "hooks.tip_on_head", RW_P_hooks_claw, RW_LOWER, 0.1, NULL, CLAW },
  { "hooks.tip_on_head", RW_P_hoop_thickness, RW_RAISE, 0.1,
    N_("Hoop {1 mm} thick instead of {3 mm}"), NULL },
  { "hooks.lean", RW_P_shoes_stand_off, RW_EITHER | RW_AIM, 0.1,
    N_("Shoes that stand off {1 mm} instead of {3 mm}"),
    N_("Shoes that stand off {1 mm} instead of {3 mm}") },
  { "hooks.past_back", RW_P_shoes_below_edge, RW_LOWER, 0.5, NULL, SHOES },
  { "hooks.past_back", RW_P_hooks_nut_height, RW_LOWER, 0.5, NULL, NUTS },
  { "hooks.past_back", RW_P_hooks_spare, RW_LOWER, 0.5, NULL, N_("Leave {1 mm} of thread beyond the nut") },
  { "hooks.past_back", RW_P_rim_height, RW_RAISE, 0.5, RIM_HIGH, NULL },
  { "shoes.bolt_hole", RW_P_shoes_bolt_hole, RW_RAISE, 0.1, N_("Drill the bolt holes {1 mm}"), NULL },
  { "shoes.hole_near_edge", RW_P_shoes_below_edge, RW_EITHER, 0.5, SHOES, SHOES },
  { "shoes.hole_near_edge", RW_P_rim_height, RW_RAISE, 0.5, RIM_HIGH, NULL },
  { "shoes.bolt_long", RW_P_shoes_bolt_length, RW_LOWER, 0.5, NULL, N_("Grind the shoe bolts to {1 mm}") },
  { "shoes.bolt_long", RW_P_shoes_washer, RW_RAISE, 0.5, N_("Washers {1 mm} thick instead of {3 mm}"), NULL },
  { "shoes.bolt_short", RW_P_shoes_bolt_length, RW_RAISE, 1,
    N_("Shoe bolts of {1 mm} instead of {3 mm}"), NULL },

  { "joint.rim_wood", RW_P_joint_rod_upper, RW_EITHER, 0.5, RODS, RODS },
  { "joint.rim_wood", RW_P_joint_stick_below, RW_EITHER, 0.5, STICK, STICK },
  { "joint.rim_wood", RW_P_joint_rod_spacing, RW_LOWER, 0.5, NULL, SPACING },
  { "joint.rim_wood", RW_P_rim_height, RW_RAISE, 0.5, RIM_HIGH, NULL },
  { "joint.heel_wood", RW_P_joint_heel_depth, RW_RAISE, 0.5, HEEL, NULL },
  { "joint.heel_wood", RW_P_joint_rod_spacing, RW_LOWER, 0.5, NULL, SPACING },
  { "joint.heel_wood", RW_P_joint_rod_upper, RW_LOWER, 0.5, NULL, RODS },
  { "joint.heel_wood", RW_P_joint_stick_below, RW_LOWER, 0.5, NULL, STICK },
  { "joint.heel_wood", RW_P_joint_heel_cap_width, RW_RAISE, 0.5, CAP, NULL },
  { "joint.hole_in_relief", RW_P_joint_rod_upper, RW_RAISE, 0.5, RODS, NULL },
  { "joint.hole_in_relief", RW_P_joint_stick_below, RW_RAISE, 0.5, STICK, NULL },
  { "joint.heel_deep", RW_P_joint_heel_depth, RW_LOWER, 0.5, NULL, HEEL },
  { "joint.heel_deep", RW_P_rim_height, RW_RAISE, 0.5, RIM_HIGH, NULL },
  { "joint.end_gap", RW_P_fretboard_end_gap, RW_RAISE, 0.1, N_("End the board {1 mm} from the hoop"), NULL },
};

const int rw_cures_pot_count = G_N_ELEMENTS (rw_cures_pot);
