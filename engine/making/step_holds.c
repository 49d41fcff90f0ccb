/* What belongs to a step once it is made: the parameters that its parts were made by, and its dimensions. */
#include "step.h"

/* Notches filed into the hoop fix the places of the hooks before a hole is drilled for them. */
static gboolean
notched (const RwDesign *used)
{
  return used->hoop_seat == RW_SEAT_NOTCHES;
}

/* What a build has no use for is not held. */
static gboolean
plies (const RwDesign *used)
{
  return used->rim_construction == RW_RIM_PLIES;
}

static gboolean
no_plies (const RwDesign *used)
{
  return !plies (used);
}

static gboolean
segments (const RwDesign *used)
{
  return used->rim_construction == RW_RIM_SEGMENTS;
}

static gboolean
stick (const RwDesign *used)
{
  return used->joint_kind == RW_JOINT_STICK;
}

static gboolean
rods (const RwDesign *used)
{
  return !stick (used);
}

static gboolean
truss_rod (const RwDesign *used)
{
  return used->neck_rod_present == RW_YES;
}

static gboolean
frets (const RwDesign *used)
{
  return used->frets_count > 0;
}

static gboolean
short_string (const RwDesign *used)
{
  return used->strings_set.at[used->strings_set.count - 1].is_short;
}

typedef struct
{
  RwStep    step;
  RwParamId param;
  gboolean (*when) (const RwDesign *used); /* NULL: in every build */
} Owned;

#define OWNED(step, param) { RW_STEP_##step, RW_P_##param, NULL }
#define OWNED_WITH(when, step, param) { RW_STEP_##step, RW_P_##param, when }

static const Owned owned[] = {
  OWNED (CHOOSE, head_nominal),
  OWNED (CHOOSE, head_material),
  OWNED (CHOOSE, head_thickness),
  OWNED (CHOOSE, head_density),
  OWNED (CHOOSE, head_collar),
  OWNED (CHOOSE, head_band),
  OWNED (STOCK, neck_wood),
  OWNED (STOCK, neck_board_wood),
  OWNED (STOCK, neck_blank_allowance),
  OWNED (STOCK, rim_course_wood),
  OWNED (STOCK, rim_construction),
  OWNED (SEGMENTS, rim_construction),
  OWNED_WITH (no_plies, SEGMENTS, rim_segments),
  OWNED_WITH (no_plies, SEGMENTS, rim_strip_width),
  OWNED (SEGMENTS, rim_turning_allowance),
  OWNED_WITH (plies, SEGMENTS, rim_ply_thickness),
  OWNED_WITH (plies, SEGMENTS, rim_ply_scarf),
  OWNED (COURSES, rim_course_thickness),
  OWNED (COURSES, rim_course_wood),
  OWNED_WITH (segments, COURSES, rim_flatten_allowance),
  OWNED_WITH (segments, STACK, rim_course_turn),
  OWNED (TURN, rim_construction),
  OWNED (TURN, rim_outer_diameter),
  OWNED (TURN, rim_wall),
  OWNED (TURN, rim_height),
  OWNED (EDGE, rim_crest_inset),
  OWNED (EDGE, rim_tone_ring_height),
  OWNED (EDGE, rim_tone_ring_rod),
  OWNED (HOOP, hoop_clearance),
  OWNED (HOOP, hoop_thickness),
  OWNED (HOOP, hoop_height),
  OWNED (HOOP, hoop_material),
  OWNED (HOOP, hoop_joint_gap),
  OWNED (HOOP, hoop_springback_test),
  OWNED (HOOP, hoop_seat),
  OWNED (HOOP, hoop_notch_depth),
  OWNED (HOOP, hoop_edge_round),
  OWNED_WITH (notched, HOOP, hooks_count),
  OWNED_WITH (notched, HOOP, hooks_layout),
  OWNED_WITH (notched, HOOP, hooks_first),
  OWNED_WITH (notched, HOOP, hooks_heel_gap),
  OWNED_WITH (notched, HOOP, hooks_tail_gap),
  OWNED (NECK_BLANK, neck_rod_present),
  OWNED_WITH (truss_rod, NECK_BLANK, neck_rod_width),
  OWNED_WITH (truss_rod, NECK_BLANK, neck_rod_depth),
  OWNED_WITH (truss_rod, NECK_BLANK, neck_rod_start),
  OWNED_WITH (truss_rod, NECK_BLANK, neck_rod_end),
  OWNED (NECK_BLANK, headstock_angle),
  OWNED (HEEL, neck_angle),
  OWNED (HEEL, joint_heel_depth),
  OWNED (HEEL, joint_heel_cap_width),
  OWNED (HEEL, joint_hoop_relief),
  OWNED (HEADSTOCK, headstock_length),
  OWNED (HEADSTOCK, headstock_width),
  OWNED (HEADSTOCK, headstock_thickness),
  OWNED (HEADSTOCK, headstock_overlay),
  OWNED (HEADSTOCK, headstock_post_hole),
  OWNED (HEADSTOCK, headstock_post_first),
  OWNED (HEADSTOCK, headstock_post_pitch),
  OWNED (HEADSTOCK, headstock_post_across_first),
  OWNED (HEADSTOCK, headstock_post_across_last),
  OWNED (HEADSTOCK, headstock_button),
  OWNED (HEADSTOCK, nut_thickness),
  OWNED (FRETBOARD, scale_length),
  OWNED (FRETBOARD, scale_square_to),
  OWNED (FRETBOARD, frets_count),
  OWNED_WITH (frets, FRETBOARD, frets_slot_width),
  OWNED_WITH (frets, FRETBOARD, frets_tang_depth),
  OWNED (FRETBOARD, fretboard_thickness),
  OWNED (FRETBOARD, fretboard_binding),
  OWNED (FRETBOARD, fretboard_end_gap),
  OWNED (FRETBOARD, fretboard_tang_clear),
  OWNED (FRETBOARD, nut_width),
  OWNED (FRETBOARD, nut_edge_margin),
  OWNED_WITH (short_string, FRETBOARD, fifth_start_fret),
  OWNED_WITH (short_string, FRETBOARD, fifth_spacing),
  OWNED_WITH (short_string, FRETBOARD, fifth_shoulder),
  OWNED_WITH (short_string, FRETBOARD, fifth_shoulder_length),
  OWNED_WITH (frets, FRETS, frets_crown_height),
  OWNED_WITH (frets, FRETS, frets_crown_width),
  OWNED_WITH (frets, FRETS, frets_end_inset),
  OWNED (FIFTH, fifth_route),
  OWNED (FIFTH, fifth_peg_distance),
  OWNED (FIFTH, fifth_tube_outer),
  OWNED (FIFTH, fifth_tube_wall),
  OWNED (FIFTH, fifth_tube_flatten),
  OWNED (CARVE, neck_thickness_first),
  OWNED (CARVE, neck_thickness_last),
  OWNED (CARVE, neck_heel_start),
  OWNED (CARVE, neck_section),
  OWNED (FIT, neck_set_height),
  OWNED (FIT, joint_kind),
  OWNED_WITH (rods, FIT, joint_rod_diameter),
  OWNED_WITH (rods, FIT, joint_rod_count),
  OWNED_WITH (rods, FIT, joint_rod_upper),
  OWNED_WITH (rods, FIT, joint_rod_spacing),
  OWNED_WITH (stick, FIT, joint_stick_section),
  OWNED_WITH (stick, FIT, joint_stick_below),
  OWNED (SHOES, hooks_count),
  OWNED (SHOES, hooks_layout),
  OWNED (SHOES, hooks_first),
  OWNED (SHOES, hooks_heel_gap),
  OWNED (SHOES, hooks_tail_gap),
  OWNED (SHOES, shoes_stand_off),
  OWNED (SHOES, shoes_width),
  OWNED (SHOES, shoes_height),
  OWNED (SHOES, shoes_below_edge),
  OWNED (SHOES, shoes_thread),
  OWNED (SHOES, shoes_bolt_hole),
  OWNED (HOOKS, hooks_rod),
  OWNED (HOOKS, hooks_thread),
  OWNED (HOOKS, hooks_claw),
  OWNED (HOOKS, hooks_bend_radius),
  OWNED (HOOKS, hooks_k_factor),
  OWNED (HOOKS, hooks_nut_height),
  OWNED (HOOKS, hooks_spare),
  OWNED (HOOKS, hooks_reserve),
  OWNED (HOOKS, hooks_trim),
  OWNED (STRING_UP, bridge_height),
  OWNED (STRING_UP, bridge_spread),
  OWNED (STRING_UP, bridge_foot_spread),
  OWNED (STRING_UP, bridge_feet),
  OWNED (STRING_UP, bridge_foot_length),
  OWNED (STRING_UP, bridge_foot_width),
  OWNED (STRING_UP, bridge_mass),
  OWNED (STRING_UP, tailpiece_anchor),
  OWNED (STRING_UP, tailpiece_height),
  OWNED (STRING_UP, tailpiece_width),
  OWNED (SET_UP, nut_string_height),
  OWNED_WITH (short_string, SET_UP, fifth_start_height),
};

gboolean
rw_step_holds_param (RwStep step, RwParamId id, const RwDesign *used)
{
  for (guint i = 0; i < G_N_ELEMENTS (owned); i++)
    if (owned[i].step == step && owned[i].param == id)
      return owned[i].when == NULL || owned[i].when (used);
  return FALSE;
}

static gboolean
in_row (RwSlot slot, RwSlot first, RwSlot last)
{
  return slot >= first && slot <= last;
}

/* Choosing, stringing up and setting up make no part: their numbers are outcomes, which go on following from all that
 * they depend on.  But for the bridge, which is cut. */
gboolean
rw_step_holds_slot (RwStep step, RwSlot slot, const RwDesign *used)
{
  if (in_row (slot, RW_STRINGS_BRIDGE_Y, RW_STRINGS_BRIDGE_Y_LAST) || slot == RW_BRIDGE_HEIGHT)
    return step == RW_STEP_STRING_UP;
  if (step == RW_STEP_CHOOSE || step == RW_STEP_STRING_UP || step == RW_STEP_SET_UP)
    return FALSE;
  if (step == RW_STEP_HOOP && in_row (slot, RW_HOOKS_ANGLE, RW_HOOKS_ANGLE_LAST))
    return notched (used);
  return rw_slot_dim (slot)->step == step;
}
