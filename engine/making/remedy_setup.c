/* How it comes together: neck angle, bridge, action, tail, air. */
#include "remedy_cures.h"

#define BRIDGE N_("Bridge {1 mm} high instead of {3 mm}")
#define BRIDGE_AT N_("Bridge {1 mm} beyond the middle instead of {3 mm}")
#define FEET N_("Outer feet {1 mm} apart instead of {3 mm}")
#define SET_HEIGHT N_("Board {1 mm} over the head at the rim instead of {3 mm}")
#define ACTION N_("Ask for {1 mm} of action instead of {3 mm}")
#define ANGLE N_("Cut the neck at {1 deg} instead of {3 deg}")
#define TAIL_HEIGHT N_("Tailpiece {1 mm} over the head at its front edge instead of {3 mm}")
#define TAIL_AT N_("Tailpiece {1 mm} behind the bridge instead of {3 mm}")
#define SHIM_HEAD N_("Shim the heel by {2 mm} at its head end")
#define SHIM_CAP N_("Shim the heel by {2 mm} at its cap end")
#define ACTION_FRET N_("Measure the action at fret {1}")
#define TIGHTEN N_("Tighten the head to {1 N/m}")
#define NUT_SLOTS N_("Strings {1 mm} over the frets at the nut instead of {3 mm}")

const RwCure rw_cures_setup[] = {
  { "side.foot_off_head", RW_P_bridge_offset, RW_LOWER, 1, NULL, BRIDGE_AT },
  { "side.foot_off_head", RW_P_bridge_foot_spread, RW_LOWER, 1, NULL, FEET },
  { "side.no_angle", RW_P_setup_action_fret, RW_RAISE, 0, ACTION_FRET, NULL },
  { "side.no_angle", RW_P_setup_action, RW_LOWER, 0.1, NULL, ACTION },
  { "side.no_angle", RW_P_bridge_offset, RW_EITHER, 1, BRIDGE_AT, BRIDGE_AT },
  { "side.no_angle", RW_P_bridge_height, RW_EITHER, 0.5, BRIDGE, BRIDGE },
  { "side.no_angle", RW_P_neck_set_height, RW_EITHER, 0.5, SET_HEIGHT, SET_HEIGHT },
  { "side.no_balance", RW_P_head_tension, RW_RAISE, 100, TIGHTEN, NULL },
  { "side.no_balance", RW_P_tailpiece_height, RW_RAISE, 0.5, TAIL_HEIGHT, NULL },
  { "side.no_balance", RW_P_neck_thickness_first, RW_RAISE, 0.5,
    N_("Neck {1 mm} thick at the first fret instead of {3 mm}"), NULL },
  { "side.no_force", RW_P_tailpiece_height, RW_LOWER, 0.5, NULL, TAIL_HEIGHT },
  { "side.no_force", RW_P_bridge_height, RW_RAISE, 0.5, BRIDGE, NULL },
  { "side.no_force", RW_P_neck_angle, RW_RAISE, 0.1, ANGLE, NULL },
  { "side.no_force", RW_P_neck_set_height, RW_EITHER, 0.5, SET_HEIGHT, SET_HEIGHT },
  { "side.no_force", RW_P_setup_action, RW_EITHER, 0.1, ACTION, ACTION },
  { "side.no_force", RW_P_setup_action_fret, RW_RAISE, 0, ACTION_FRET, NULL },
  { "side.bridge_under_nut", RW_P_bridge_height, RW_RAISE, 0.1, BRIDGE, NULL },
  { "side.bridge_under_nut", RW_P_neck_angle, RW_LOWER, 0.1, NULL, ANGLE },
  { "side.bridge_under_nut", RW_P_neck_set_height, RW_LOWER, 0.1, NULL, SET_HEIGHT },
  { "neck.angle_misses", RW_P_bridge_height, RW_EITHER | RW_AIM, 0.1, BRIDGE, BRIDGE },
  { "neck.angle_misses", RW_P_joint_shim, RW_EITHER | RW_AIM, 0.1, SHIM_HEAD, SHIM_CAP },
  { "neck.angle_misses", RW_P_neck_angle, RW_EITHER | RW_AIM, 0.05, ANGLE, ANGLE },
  { "neck.string_line", RW_P_tailpiece_offset, RW_EITHER | RW_AIM, 0.1,
    N_("Set the tail over by {2 mm} to the treble side"),
    N_("Set the tail over by {2 mm} to the bass side") },
  { "neck.angle_unusual", RW_P_bridge_height, RW_EITHER, 0.1, BRIDGE, BRIDGE },
  { "neck.angle_unusual", RW_P_neck_set_height, RW_EITHER, 0.1, SET_HEIGHT, SET_HEIGHT },

  { "setup.string_on_fret", RW_P_setup_action, RW_RAISE, 0.1, ACTION, NULL },
  { "setup.string_on_fret", RW_P_bridge_height, RW_RAISE, 0.1, BRIDGE, NULL },
  { "setup.string_on_fret", RW_P_nut_string_height, RW_RAISE, 0.05, NUT_SLOTS, NULL },
  { "setup.string_on_fret", RW_P_setup_relief, RW_RAISE, 0.05,
    N_("Ask for {1 mm} of relief instead of {3 mm}"), NULL },
  { "setup.action_unusual", RW_P_setup_action, RW_EITHER, 0.1, ACTION, ACTION },
  { "setup.action_unusual", RW_P_bridge_height, RW_EITHER, 0.1, BRIDGE, BRIDGE },
  { "setup.action_unusual", RW_P_joint_shim, RW_EITHER, 0.1, SHIM_HEAD, SHIM_CAP },
  { "bridge.landing", RW_P_bridge_offset, RW_EITHER, 0.5, BRIDGE_AT, BRIDGE_AT },
  { "bridge.foot_at_edge", RW_P_bridge_offset, RW_LOWER, 0.5, NULL, BRIDGE_AT },
  { "bridge.foot_at_edge", RW_P_bridge_foot_spread, RW_LOWER, 0.5, NULL, FEET },
  { "bridge.feet_narrow", RW_P_bridge_foot_spread, RW_RAISE, 0.5, FEET, NULL },
  { "bridge.sag", RW_P_head_tension, RW_RAISE, 100, TIGHTEN, NULL },
  { "bridge.sag", RW_P_tailpiece_height, RW_RAISE, 0.5, TAIL_HEIGHT, NULL },
  { "bridge.break_angle", RW_P_tailpiece_height, RW_EITHER, 0.5, TAIL_HEIGHT, TAIL_HEIGHT },
  { "bridge.break_angle", RW_P_tailpiece_anchor, RW_EITHER, 1, TAIL_AT, TAIL_AT },
  { "bridge.break_angle", RW_P_bridge_height, RW_EITHER, 0.5, BRIDGE, BRIDGE },
  { "tailpiece.near", RW_P_tailpiece_anchor, RW_RAISE, 1, TAIL_AT, NULL },
  { "tailpiece.off_rim", RW_P_tailpiece_anchor, RW_LOWER, 1, NULL, TAIL_AT },
  { "strings.over_hoop", RW_P_neck_set_height, RW_RAISE, 0.1, SET_HEIGHT, NULL },
  { "strings.over_hoop", RW_P_hoop_height, RW_LOWER, 0.5, NULL, N_("Hoop {1 mm} high instead of {3 mm}") },
  { "strings.over_hoop", RW_P_bridge_height, RW_RAISE, 0.1, BRIDGE, NULL },
  { "strings.breaks", RW_P_scale_length, RW_LOWER, 5, NULL, N_("Scale of {1 mm} instead of {3 mm}") },
  { "strings.breaks", RW_P_tuning_a4, RW_LOWER, 1, NULL, N_("Tune to an A of {1 Hz} instead of {3 Hz}") },

  { "move.shop_outside", RW_P_setup_humidity_shop, RW_EITHER, 1, N_("Keep the shop's air at {1 %}"),
    N_("Keep the shop's air at {1 %}") },
  { "move.fret_ends", RW_P_frets_end_inset, RW_RAISE, 0.1,
    N_("Inset the fret ends by {1 mm} instead of {3 mm}"), NULL },
};

const int rw_cures_setup_count = G_N_ELEMENTS (rw_cures_setup);
