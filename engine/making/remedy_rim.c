/* Rim, head and tension hoop. */
#include "remedy_cures.h"

#define WALL N_("Wall {1 mm} thick instead of {3 mm}")
#define SEGMENTS N_("{1} segments to a course instead of {3}")
#define SHOES N_("Bolt the shoes {1 mm} under the head's plane instead of {3 mm}")
#define RODS N_("Upper rod {1 mm} under the head's plane instead of {3 mm}")
#define RIM_HIGH N_("Rim {1 mm} high instead of {3 mm}")
#define TURN_TO N_("Turn the rim to {1 mm} instead of {3 mm}")
#define HOOP_HIGH N_("Hoop {1 mm} high instead of {3 mm}")
#define CLEARANCE N_("Hoop clearance {1 mm} instead of {3 mm}")

const RwCure rw_cures_rim[] = {
  { "rim.wall_thin", RW_P_rim_wall, RW_RAISE, 0.5, WALL, NULL },
  { "rim.crest_on_wall", RW_P_rim_crest_inset, RW_LOWER, 0.5,
    NULL, N_("Bring the bearing crest out to {1 mm}") },
  { "rim.crest_on_wall", RW_P_rim_wall, RW_RAISE, 0.5, WALL, NULL },
  { "rim.strip_width", RW_P_rim_strip_width, RW_RAISE, 0.5, N_("Strip {2 mm} wider: {1 mm}"), NULL },
  { "rim.strip_width", RW_P_rim_segments, RW_RAISE, 0, SEGMENTS, NULL },
  { "rim.strip_width", RW_P_rim_wall, RW_LOWER, 0.5, NULL, WALL },
  { "rim.short_edge", RW_P_rim_strip_width, RW_LOWER, 0.5, NULL, N_("Strip {2 mm} narrower: {1 mm}") },
  { "rim.short_edge", RW_P_rim_segments, RW_LOWER, 0, NULL, SEGMENTS },
  { "rim.closing_odd", RW_P_rim_segments, RW_EITHER, 0, SEGMENTS, SEGMENTS },
  { "rim.closing_oval", RW_P_rim_turning_allowance, RW_RAISE, 0.1,
    N_("Leave {1 mm} for turning on each face instead of {3 mm}"), NULL },
  { "rim.closing_oval", RW_P_rim_mitre_error, RW_LOWER, 0.01,
    NULL, N_("Set the saw closer: within {1 deg} at each cut") },
  { "rim.turning_allowance", RW_P_rim_turning_allowance, RW_RAISE, 0.1,
    N_("Leave {1 mm} for turning on each face instead of {3 mm}"), NULL },
  { "rim.speed", RW_P_shop_rim_speed, RW_LOWER, 0.5, NULL, N_("Turn at {1 m/s} instead of {3 m/s}") },
  { "rim.ply_thick", RW_P_rim_ply_thickness, RW_LOWER, 0.1, NULL, N_("Plies of {1 mm} instead of {3 mm}") },
  { "rim.ply_scarf", RW_P_rim_ply_scarf, RW_RAISE, 1, N_("Scarf {1 mm} long instead of {3 mm}"), NULL },
  { "rim.stack_low", RW_P_rim_height, RW_LOWER, 0.5, NULL, RIM_HIGH },
  { "rim.stack_facing", RW_P_rim_height, RW_LOWER, 0.5, NULL, RIM_HIGH },
  { "rim.loads", RW_P_rim_wall, RW_RAISE, 0.5, WALL, NULL },
  { "rim.loads", RW_P_rim_height, RW_RAISE, 0.5, RIM_HIGH, NULL },
  { "rim.joints_in_line", RW_P_rim_course_turn, RW_EITHER | RW_AIM, 0.05,
    N_("Turn each course by {1} of a segment instead of {3}"),
    N_("Turn each course by {1} of a segment instead of {3}") },
  { "rim.hole_to_glue_line", RW_P_shoes_below_edge, RW_EITHER, 0.5, SHOES, SHOES },
  { "rim.hole_to_glue_line", RW_P_joint_rod_upper, RW_EITHER, 0.5, RODS, RODS },
  { "rim.hole_to_joint", RW_P_rim_course_turn, RW_EITHER, 0.01,
    N_("Turn each course by {1} of a segment instead of {3}"),
    N_("Turn each course by {1} of a segment instead of {3}") },
  { "rim.hole_to_joint", RW_P_rim_segments, RW_EITHER, 0, SEGMENTS, SEGMENTS },

  { "head.tight", RW_P_rim_outer_diameter, RW_LOWER, 0.1, NULL, TURN_TO },
  { "head.loose", RW_P_rim_outer_diameter, RW_RAISE, 0.1, TURN_TO, NULL },
  { "head.tension_unusual", RW_P_head_tension, RW_EITHER, 100, N_("Tighten the head to {1 N/m}"),
    N_("Slacken the head to {1 N/m}") },
  { "head.film_stress", RW_P_head_tension, RW_LOWER, 100, NULL, N_("Slacken the head to {1 N/m}") },
  { "head.film_stress", RW_P_head_thickness, RW_RAISE, 0.01,
    N_("Head {1 mm} thick instead of {3 mm}"), NULL },
  { "head.skin_room", RW_P_hoop_clearance, RW_RAISE, 0.05, CLEARANCE, NULL },

  { "hoop.on_band", RW_P_hoop_clearance, RW_LOWER, 0.05, NULL, CLEARANCE },
  { "hoop.on_band", RW_P_head_band, RW_RAISE, 0.1,
    N_("Band or flesh hoop {1 mm} wide instead of {3 mm}"), NULL },
  { "hoop.bottomed", RW_P_hoop_height, RW_RAISE, 0.5, HOOP_HIGH, NULL },
  { "hoop.bottomed", RW_P_head_collar, RW_LOWER, 0.5,
    NULL, N_("Head with a collar of {1 mm} instead of {3 mm}") },
  { "hoop.notch_deep", RW_P_hoop_notch_depth, RW_LOWER, 0.5,
    NULL, N_("File the notches {1 mm} deep instead of {3 mm}") },
  { "hoop.notch_deep", RW_P_hoop_height, RW_RAISE, 0.5, HOOP_HIGH, NULL },
  { "hoop.untested", RW_P_hoop_thickness, RW_RAISE, 0.5, N_("Hoop {1 mm} thick instead of {3 mm}"), NULL },
  { "hoop.on_shoes", RW_P_shoes_below_edge, RW_RAISE, 0.5, SHOES, NULL },
  { "hoop.on_shoes", RW_P_shoes_height, RW_LOWER, 0.5, NULL, N_("Shoes {1 mm} high instead of {3 mm}") },
  { "hoop.edge_round", RW_P_hoop_edge_round, RW_LOWER, 0.5, NULL, N_("Round the hoop's edge to {1 mm}") },
  { "hoop.edge_round", RW_P_hoop_thickness, RW_RAISE, 0.1, N_("Hoop {1 mm} thick instead of {3 mm}"), NULL },
};

const int rw_cures_rim_count = G_N_ELEMENTS (rw_cures_rim);
