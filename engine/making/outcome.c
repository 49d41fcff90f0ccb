#include "outcome.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define RAD (G_PI / 180)

static const RwOutcome outcomes[RW_OUTCOME_COUNT] = {
  [RW_OUTCOME_ACTION] = { "action", N_("Action"), "mm", RW_P_tolerance_action },
  [RW_OUTCOME_BRIDGE_HEIGHT] = { "bridge_height", N_("Bridge height that sets the action right"), "mm",
                                 RW_P_tolerance_bridge_height },
  [RW_OUTCOME_BRIDGE_PLACE] = { "bridge_place", N_("Bridge beyond the rim’s centre"), "mm",
                                RW_P_tolerance_bridge_place },
  [RW_OUTCOME_PITCH] = { "pitch", N_("Pitch of the note that scatters most"), "cent", RW_P_tolerance_pitch },
  [RW_OUTCOME_STRING_LINE] = { "string_line", N_("Middle string past the tail’s centre"), "mm",
                               RW_P_tolerance_string_line },
  [RW_OUTCOME_TREBLE_MARGIN] = { "treble_margin", N_("Treble edge margin at the last fret"), "mm",
                                 RW_P_tolerance_edge_margin },
  [RW_OUTCOME_BASS_MARGIN] = { "bass_margin", N_("Bass edge margin at the last fret"), "mm",
                               RW_P_tolerance_edge_margin },
  [RW_OUTCOME_OVER_HOOP] = { "over_hoop", N_("String over the hoop"), "mm", RW_P_tolerance_over_hoop },
  [RW_OUTCOME_HOOK_THREAD] = { "hook_thread", N_("Thread past the nut"), "mm", RW_P_tolerance_hook_thread },
  [RW_OUTCOME_HOOK_TIP] = { "hook_tip", N_("Hook end above the back edge"), "mm", RW_P_tolerance_hook_tip },
  [RW_OUTCOME_HOOK_LEAN] = { "hook_lean", N_("Lean of the hooks"), "deg", RW_P_tolerance_hook_lean },
  [RW_OUTCOME_HOOP_CLEARANCE] = { "hoop_clearance", N_("Hoop’s clearance over the collar"), "mm",
                                  RW_P_tolerance_hoop_clearance },
  [RW_OUTCOME_HEAD_ROOM] = { "head_room", N_("Room of the rim in the head’s band"), "mm",
                             RW_P_tolerance_head_room },
  [RW_OUTCOME_RING_GAP] = { "ring_gap", N_("Gap at a ring’s last joint"), "mm", RW_P_tolerance_ring_gap },
};

const RwOutcome *
rw_outcome (int place)
{
  return &outcomes[place < RW_OUTCOME_COUNT ? place : RW_OUTCOME_PITCH];
}

/* The heel cut sideways by another angle than the strings ask for throws their line off the tail's centre, over the
 * rim's whole diameter. */
static double
string_line (const RwResult *result)
{
  const RwPlan *plan = &result->plan;
  double rim = result->value[RW_NECK_NUT_TO_RIM];
  double middle = (rw_plan_treble (plan, rim) + rw_plan_bass (plan, rim)) / 2;
  double wanted = -atan ((middle - plan->nut_middle) / rim);

  return result->used.rim_outer_diameter * tan (result->value[RW_NECK_SIDE_ANGLE] * RAD - wanted);
}

/* The board's edges stand where they were planned, each moved by half of what its width is off; the strings where
 * nut and bridge hold them. */
static void
margins (const RwResult *result, const RwResult *plan, double *row)
{
  int last = result->plan.last;
  double x = plan->plan.fret_x[last];
  double wider = (result->value[RW_NECK_WIDTH + last] - plan->value[RW_NECK_WIDTH + last]) / 2;

  row[RW_OUTCOME_TREBLE_MARGIN] = rw_plan_treble (&plan->plan, x) + wider - rw_plan_string_y (&result->plan, 1, x);
  row[RW_OUTCOME_BASS_MARGIN] = rw_plan_string_y (&result->plan, result->plan.strings, x) + wider
                                - rw_plan_bass (&plan->plan, x);
}

/* What is left of the leg below the nut when the hoop first touches the head's band. */
static double
hook_thread (const RwResult *result)
{
  const RwDesign *d = &result->used;
  double claw = d->hoop_height - d->head_collar - d->hoop_notch_depth + result->value[RW_HOOKS_SEAT_OFFSET]
                + d->hooks_rod / 2;
  double bolt = result->value[RW_SHOES_HOLE_BELOW_EDGE] + d->rim_tone_ring_height;

  return result->value[RW_HOOKS_LEG] - claw - bolt - d->shoes_height / 2 - d->hooks_nut_height;
}

/* All mitres off by the same: the formula of rim.joint_gap, with its sign. */
static double
ring_gap (const RwResult *result)
{
  const RwDesign *d = &result->used;
  double outside = d->rim_outer_diameter / 2 + d->rim_turning_allowance;
  double off = result->value[RW_RIM_SEGMENT_MITRE] - 180 / d->rim_segments;

  return 2 * outside * sin (d->rim_segments * off * RAD);
}

void
rw_outcomes_read (const RwResult *result, const RwResult *plan, double *row)
{
  const double *at = result->value;

  for (int place = 0; place < RW_OUTCOME_ALL; place++)
    row[place] = NAN;
  row[RW_OUTCOME_ACTION] = result->side.action;
  row[RW_OUTCOME_BRIDGE_PLACE] = result->used.bridge_offset;
  row[RW_OUTCOME_STRING_LINE] = string_line (result);
  margins (result, plan, row);
  row[RW_OUTCOME_OVER_HOOP] = at[RW_STRINGS_OVER_HOOP];
  row[RW_OUTCOME_HOOK_THREAD] = hook_thread (result);
  row[RW_OUTCOME_HOOK_TIP] = at[RW_HOOKS_TIP_OVER_BACK];
  row[RW_OUTCOME_HOOK_LEAN] = at[RW_HOOKS_LEAN];
  row[RW_OUTCOME_HOOP_CLEARANCE] = (at[RW_HOOP_BORE] - result->used.head_nominal) / 2;
  row[RW_OUTCOME_HEAD_ROOM] = result->used.head_nominal - result->used.rim_outer_diameter;
  row[RW_OUTCOME_RING_GAP] = ring_gap (result);
  for (int i = 1; i <= result->plan.strings; i++)
    for (int n = 1; n <= RW_FRETS_MAX; n++)
      row[RW_OUTCOME_NOTE (i, n)] = result->cents_best[i][n];
}
