#include "standing.h"

#include <math.h>

typedef gboolean (*Condition) (const RwDesign *design);

static gboolean
short_string (const RwDesign *design)
{
  const RwStringSet *set = &design->strings_set;

  return set->count > 0 && set->at[set->count - 1].is_short;
}

static gboolean
side_peg (const RwDesign *design)
{
  return short_string (design) && design->fifth_route == RW_ROUTE_SIDE_PEG;
}

static gboolean
tunnel (const RwDesign *design)
{
  return short_string (design) && design->fifth_route == RW_ROUTE_TUNNEL;
}

static gboolean
frets (const RwDesign *design)
{
  return design->frets_count > 0;
}

static gboolean
bound_frets (const RwDesign *design)
{
  return frets (design) && design->fretboard_binding > 0;
}

static gboolean
truss_rod (const RwDesign *design)
{
  return design->neck_rod_present == RW_YES;
}

static gboolean
segments (const RwDesign *design)
{
  return design->rim_construction == RW_RIM_SEGMENTS;
}

static gboolean
mitres (const RwDesign *design)
{
  return design->rim_construction != RW_RIM_PLIES;
}

static gboolean
plies (const RwDesign *design)
{
  return design->rim_construction == RW_RIM_PLIES;
}

static gboolean
even (const RwDesign *design)
{
  return design->hooks_layout == RW_LAYOUT_EVEN;
}

static gboolean
by_sides (const RwDesign *design)
{
  return design->hooks_layout == RW_LAYOUT_SIDES;
}

static gboolean
rods (const RwDesign *design)
{
  return design->joint_kind == RW_JOINT_RODS;
}

static gboolean
two_rods (const RwDesign *design)
{
  return rods (design) && design->joint_rod_count > 1;
}

static gboolean
stick (const RwDesign *design)
{
  return design->joint_kind == RW_JOINT_STICK;
}

/* What a parameter is for, and what is said where the build has no use for it. */
static const struct
{
  RwParamId   param;
  Condition   needed;
  const char *why;
} uses[] = {
  { RW_P_frets_slot_width, frets, N_("Only with frets") },
  { RW_P_frets_tang_depth, frets, N_("Only with frets") },
  { RW_P_frets_crown_height, frets, N_("Only with frets") },
  { RW_P_frets_crown_width, frets, N_("Only with frets") },
  { RW_P_frets_end_inset, frets, N_("Only with frets") },
  { RW_P_fretboard_tang_clear, bound_frets, N_("Only with frets and binding") },
  { RW_P_fifth_start_fret, short_string, N_("Only with a short string") },
  { RW_P_fifth_spacing, short_string, N_("Only with a short string") },
  { RW_P_fifth_start_height, short_string, N_("Only with a short string") },
  { RW_P_fifth_shoulder, short_string, N_("Only with a short string") },
  { RW_P_fifth_shoulder_length, short_string, N_("Only with a short string") },
  { RW_P_fifth_route, short_string, N_("Only with a short string") },
  { RW_P_fifth_peg_distance, side_peg, N_("Only with a peg in the side") },
  { RW_P_fifth_tube_outer, tunnel, N_("Only with a tube under the board") },
  { RW_P_fifth_tube_wall, tunnel, N_("Only with a tube under the board") },
  { RW_P_fifth_tube_flatten, tunnel, N_("Only with a tube under the board") },
  { RW_P_neck_rod_width, truss_rod, N_("Only with a truss rod") },
  { RW_P_neck_rod_depth, truss_rod, N_("Only with a truss rod") },
  { RW_P_neck_rod_start, truss_rod, N_("Only with a truss rod") },
  { RW_P_neck_rod_end, truss_rod, N_("Only with a truss rod") },
  { RW_P_rim_segments, mitres, N_("Only for segments and staves") },
  { RW_P_rim_strip_width, segments, N_("Only for segments") },
  { RW_P_rim_course_thickness, segments, N_("Only for segments") },
  { RW_P_rim_course_turn, segments, N_("Only for segments") },
  { RW_P_rim_flatten_allowance, segments, N_("Only for segments") },
  { RW_P_rim_mitre_error, mitres, N_("Only for segments and staves") },
  { RW_P_rim_ply_thickness, plies, N_("Only for bent plies") },
  { RW_P_rim_ply_scarf, plies, N_("Only for bent plies") },
  { RW_P_hooks_first, even, N_("Only when even all round") },
  { RW_P_hooks_heel_gap, by_sides, N_("Only when even on each side") },
  { RW_P_hooks_tail_gap, by_sides, N_("Only when even on each side") },
  { RW_P_joint_rod_diameter, rods, N_("Only with rods") },
  { RW_P_joint_rod_count, rods, N_("Only with rods") },
  { RW_P_joint_rod_upper, rods, N_("Only with rods") },
  { RW_P_joint_rod_spacing, two_rods, N_("Only with two rods") },
  { RW_P_joint_stick_section, stick, N_("Only with a stick") },
  { RW_P_joint_stick_below, stick, N_("Only with a stick") },
};

static RwStanding
worked_out (const char *why, double value)
{
  return (RwStanding){ RW_STANDING_WORKED_OUT, why, value };
}

RwStanding
rw_standing (RwParamId id, const RwResult *result)
{
  const RwDesign *design = &result->used;

  for (guint i = 0; i < G_N_ELEMENTS (uses); i++)
    if (uses[i].param == id && !uses[i].needed (design))
      return (RwStanding){ RW_STANDING_IDLE, uses[i].why, NAN };

  if (id == RW_P_neck_angle && design->neck_solve_for == RW_SOLVE_ANGLE)
    return worked_out (N_("Worked out from bridge height and action"), result->value[RW_NECK_ANGLE]);
  if (id == RW_P_bridge_height && design->neck_solve_for == RW_SOLVE_BRIDGE)
    return worked_out (N_("Worked out from neck angle and action"), result->value[RW_BRIDGE_HEIGHT]);
  if (id == RW_P_setup_action && design->neck_solve_for == RW_SOLVE_ACTION)
    return worked_out (N_("Worked out from neck angle and bridge height"), result->side.action);
  if (id == RW_P_head_tension && design->head_tension_from == RW_TENSION_FROM_TAP)
    return worked_out (N_("Worked out from the tap frequency"), result->value[RW_HEAD_TENSION]);
  if (id == RW_P_head_tap_frequency && design->head_tension_from == RW_TENSION_GIVEN)
    return worked_out (N_("Worked out from the head tension"), result->value[RW_HEAD_TAP_FREQUENCY]);
  if (id == RW_P_rim_strip_width && design->rim_strip_width == 0)
    return (RwStanding){ RW_STANDING_SET, N_("0: the least that serves"),
                         result->value[RW_RIM_SEGMENT_MIN_WIDTH] };
  if (id == RW_P_hoop_springback_test && design->hoop_springback_test == 0)
    return (RwStanding){ RW_STANDING_SET, N_("0: not tested, predicted"), result->value[RW_HOOP_SPRINGBACK] };
  return (RwStanding){ RW_STANDING_SET, NULL, NAN };
}
