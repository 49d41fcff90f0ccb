#include "check.h"

#include "table/material.h"

static void
check_air (RwCheck *check)
{
  const RwDesign *used = check->used;
  double low = used->setup_humidity_low, high = used->setup_humidity_high, shop = used->setup_humidity_shop;
  double proud = check->at[RW_MOVE_FRET_END];

  if (low > high)
    rw_check_add (check, RW_CAUTION,
                  "move.swapped", "setup.humidity_low setup.humidity_high",
                  N_("The driest air is given as {1 %} and the dampest as {2 %}; they seem to be swapped."),
                  low, high);
  else if (shop < low || shop > high)
    rw_check_add (check, RW_NOTE,
                  "move.shop_outside", "setup.humidity_shop setup.humidity_low setup.humidity_high",
                  N_("The shop's air at {1 %} is outside the {2 %} to {3 %} of the home, so everything "
                     "moves one way after it is built. Let the wood come to rest where it will live."),
                  shop, low, high);
  rw_check_add (check, rw_check_high (proud, RW_NEVER, used->limits_fret_end_most, used->limits_fret_end),
                "move.fret_ends", "frets.end_inset neck.board_wood setup.humidity_low move.fret_end",
                N_("In the driest air the board shrinks and each fret end stands {1 mm} proud; {2 mm} have "
                   "been seen after a dry winter. Inset the ends more, and undercut the tangs if the board "
                   "is bound."),
                proud, RW_FRET_PROUD_SEEN);
}

/* Rows of movement are left out, not made up, for a wood of which no coefficient is known. */
static void
check_woods (RwCheck *check)
{
  const RwWoodList *courses = &check->used->rim_course_wood;
  int unknown = rw_woods[check->used->neck_board_wood].ct > 0.0 ? 0 : 1;

  for (int k = 0; k < courses->count; k++)
    unknown += rw_woods[courses->at[k]].ct > 0.0 ? 0 : 1;
  rw_check_add (check, unknown > 0 ? RW_NOTE : RW_FINE,
                "move.unknown_wood", "neck.board_wood rim.course_wood",
                N_("No sure coefficient of movement is known for the wood of {1} of the parts, so what it "
                   "does in dry and damp air is left out of the list."),
                unknown);
}

static void
say_unused (RwCheck *check, const char *id)
{
  rw_check_add_values (check, RW_NOTE, "measured.unused", id,
                       N_("{id} was measured, but this build has no use for it. The value is kept and "
                          "changes nothing."),
                       NULL, 0);
}

static void
check_measured_params (RwCheck *check)
{
  const RwDesign *used = check->used;
  gboolean plies = used->rim_construction == RW_RIM_PLIES, stick = used->joint_kind == RW_JOINT_STICK;
  gboolean segments = used->rim_construction == RW_RIM_SEGMENTS, rod = used->neck_rod_present == RW_YES;
  gboolean five = check->result->plan.has_short, frets = used->frets_count > 0.0;
  const struct
  {
    RwParamId id;
    gboolean  has_use;
  } uses[] = {
    { RW_P_rim_ply_thickness, plies },      { RW_P_rim_ply_scarf, plies },
    { RW_P_rim_strip_width, !plies },       { RW_P_rim_flatten_allowance, segments },
    { RW_P_joint_stick_section, stick },    { RW_P_joint_stick_below, stick },
    { RW_P_joint_rod_diameter, !stick },    { RW_P_joint_rod_upper, !stick },
    { RW_P_joint_rod_spacing, !stick },     { RW_P_neck_rod_width, rod },
    { RW_P_neck_rod_depth, rod },           { RW_P_neck_rod_start, rod },
    { RW_P_neck_rod_end, rod },             { RW_P_fifth_spacing, five },
    { RW_P_fifth_start_height, five },      { RW_P_fifth_shoulder, five },
    { RW_P_fifth_peg_distance, five },      { RW_P_frets_tang_depth, frets },
    { RW_P_frets_crown_height, frets },     { RW_P_frets_slot_width, frets },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (uses); i++)
    if (!uses[i].has_use && isfinite (check->measured->param[uses[i].id]))
      say_unused (check, rw_param (uses[i].id)->id);
}

static void
check_measured (RwCheck *check)
{
  if (check->measured == NULL)
    return;
  check_measured_params (check);
  for (int k = check->used->rim_course_thickness.count; k < RW_COURSES_MAX; k++)
    if (isfinite (check->measured->course_thickness[k]))
      {
        g_autofree char *id = g_strdup_printf ("rim.course_thickness[%d]", k + 1);

        say_unused (check, id);
      }
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    if (isfinite (check->measured->slot[slot]) && !isfinite (check->at[slot]))
      {
        g_autofree char *id = rw_slot_id ((RwSlot) slot);

        say_unused (check, id);
      }
}

void
rw_check_materials (RwCheck *check)
{
  check_air (check);
  check_woods (check);
  check_measured (check);
}
