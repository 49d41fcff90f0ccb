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
  [RW_OUTCOME_TURN_OUTSIDE] = { "turn_outside", N_("Wood to turn off outside"), "mm", RW_P_rim_turning_allowance },
  [RW_OUTCOME_TURN_INSIDE] = { "turn_inside", N_("Wood to turn off inside"), "mm", RW_P_rim_turning_allowance },
  [RW_OUTCOME_STAVE_END] = { "stave_end", N_("Wood to face off the staves"), "mm", RW_P_rim_turning_allowance },
  [RW_OUTCOME_FLATTEN] = { "flatten", N_("Wood to flatten off a course"), "mm", RW_P_rim_flatten_allowance },
  /* A washer more or less sets it right. */
  [RW_OUTCOME_BOLT_REACH] = { "bolt_reach", N_("Shoe bolt in its shoe"), "mm", RW_P_shoes_washer },
  [RW_OUTCOME_NOTCH_MISS] = { "notch_miss", N_("Hook beside its notch"), "mm", RW_P_limits_notch_miss },
  [RW_OUTCOME_HOOK_ROOM] = { "hook_room", N_("Hook beside heel or tailpiece"), "mm", RW_P_limits_shoe_to_tail },
  [RW_OUTCOME_EDGE_MARGIN] = { "edge_margin", N_("Edge margin along the board"), "mm",
                               RW_P_tolerance_edge_margin },
  [RW_OUTCOME_END_GAP] = { "end_gap", N_("Board end to hoop"), "mm", RW_P_fretboard_end_gap },
  [RW_OUTCOME_TANG_ROOM] = { "tang_room", N_("Room under the tangs"), "mm", RW_P_tolerance_tang_room },
  [RW_OUTCOME_HEAD_DROP] = { "head_drop", N_("Headstock’s end in its blank"), "mm", RW_P_neck_blank_allowance },
  [RW_OUTCOME_POST_BEND] = { "post_bend", N_("Strings’ bend behind the nut"), "deg", RW_P_tolerance_post_bend },
  [RW_OUTCOME_POST_GAP] = { "post_gap", N_("Strings past the posts"), "mm", RW_P_tolerance_post_gap },
};

static const struct
{
  RwOutcomeId id;
  int         first, past;
} families[] = {
  { RW_OUTCOME_PITCH, RW_OUTCOME_NOTES, RW_OUTCOME_COURSES },
  { RW_OUTCOME_FLATTEN, RW_OUTCOME_COURSES, RW_OUTCOME_NOTCHES },
  { RW_OUTCOME_NOTCH_MISS, RW_OUTCOME_NOTCHES, RW_OUTCOME_ROOMS },
  { RW_OUTCOME_HOOK_ROOM, RW_OUTCOME_ROOMS, RW_OUTCOME_TREBLE_EDGE },
  { RW_OUTCOME_EDGE_MARGIN, RW_OUTCOME_TREBLE_EDGE, RW_OUTCOME_BENDS },
  { RW_OUTCOME_POST_BEND, RW_OUTCOME_BENDS, RW_OUTCOME_GAPS },
  { RW_OUTCOME_POST_GAP, RW_OUTCOME_GAPS, RW_OUTCOME_ALL },
};

const RwOutcome *
rw_outcome (int place)
{
  for (guint i = 0; i < G_N_ELEMENTS (families); i++)
    if (place >= families[i].first && place < families[i].past)
      return &outcomes[families[i].id];
  return &outcomes[place];
}

void
rw_outcome_members (int outcome, int *first, int *past)
{
  *first = outcome;
  *past = outcome + 1;
  for (guint i = 0; i < G_N_ELEMENTS (families); i++)
    if ((int) families[i].id == outcome)
      {
        *first = families[i].first;
        *past = families[i].past;
      }
}

/* ---- neck and strings ---- */

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

/* As above, at the other frets of which the list has the board's width, and at its end. */
static void
edges (const RwResult *result, const RwResult *plan, double *row)
{
  const RwPlan *now = &result->plan, *planned = &plan->plan;

  for (int n = 0; n < RW_SPAN_EDGE; n++)
    {
      int slot = n < RW_SPAN_FRET ? RW_NECK_WIDTH + n : RW_NECK_WIDTH_AT_END;
      double wider = (result->value[slot] - plan->value[slot]) / 2;
      double x = n < RW_SPAN_FRET ? planned->fret_x[n] : plan->value[RW_NECK_BOARD_LENGTH];
      gboolean short_too = now->has_short && x >= planned->short_x;

      if (n == now->last || !isfinite (wider))
        continue;
      row[RW_OUTCOME_TREBLE_EDGE + n] = rw_plan_treble (planned, x) + wider - rw_plan_string_y (now, 1, x);
      row[RW_OUTCOME_BASS_EDGE + n]
          = rw_plan_string_y (now, short_too ? now->strings : now->full, x) + wider - rw_plan_bass (planned, x);
    }
}

/* Where a string leaves the nut's back face, in the frame of the headstock (model/headstock.c). */
static void
leaves_nut (const RwResult *result, int string, double *x, double *y)
{
  const RwPlan *plan = &result->plan;
  double centre = atan (plan->centre_slope), behind = result->used.nut_thickness;
  double off = rw_plan_string_y (plan, string, -behind) - plan->nut_middle;

  *x = behind * (cos (centre) - 1) - off * sin (centre);
  *y = off * cos (centre) + behind * sin (centre);
}

/* The nearest that a string on its way to its post comes to the hole of another. */
static double
post_gap (const RwResult *result, int string)
{
  const double *px = &result->value[RW_HEADSTOCK_POST_X], *py = &result->value[RW_HEADSTOCK_POST_Y];
  double x, y, least = INFINITY;

  leaves_nut (result, string, &x, &y);
  for (int other = 1; other <= result->plan.strings; other++)
    {
      double along_x = px[string] - x, along_y = py[string] - y;
      double length = along_x * along_x + along_y * along_y;
      double t = ((px[other] - x) * along_x + (py[other] - y) * along_y) / length;

      if (other != string && t > 0 && t < 1)
        least = fmin (least, hypot (px[other] - x - t * along_x, py[other] - y - t * along_y));
    }
  return isfinite (least) ? least - result->used.headstock_post_hole / 2 : NAN;
}

static void
headstock (const RwResult *result, double *row)
{
  const RwDesign *d = &result->used;

  row[RW_OUTCOME_HEAD_DROP] = d->headstock_length * sin (d->headstock_angle * RAD);
  for (int i = 1; i <= result->plan.full; i++)
    {
      row[RW_OUTCOME_BENDS + i] = result->value[RW_HEADSTOCK_BEND + i];
      row[RW_OUTCOME_GAPS + i] = post_gap (result, i);
    }
}

/* How far a size came out from what is asked of it; it is marked on the part before as that came out, so errors of
 * those don't come in. */
static double
off (const RwResult *result, const RwResult *plan, int slot)
{
  return result->value[slot] - plan->asked[slot];
}

static void
fretboard (const RwResult *result, const RwResult *plan, double *row)
{
  row[RW_OUTCOME_END_GAP] = result->used.fretboard_end_gap - off (result, plan, RW_NECK_BOARD_LENGTH);
  row[RW_OUTCOME_TANG_ROOM] = result->value[RW_FRETS_SLOT_DEPTH] - result->used.frets_tang_depth;
}

/* ---- hooks and hoop ---- */

/* Whether a hook of a groove stands next to heel or tailpiece. */
static gboolean
has_neighbour (int hook, int count)
{
  return hook == 1 || hook == count || hook == (count + 1) / 2 || hook == count / 2 + 1;
}

/* The hook stands where its shoe is drilled, the notch where it is filed. */
static void
hooks (const RwResult *result, const RwResult *plan, double *row)
{
  const RwDesign *d = &result->used;
  double inward = plan->used.rim_outer_diameter / plan->value[RW_HOOP_OUTER_DIAMETER];

  for (int k = 1; k <= d->hooks_count; k++)
    {
      double shoe = off (result, plan, RW_HOOKS_ARC + k);

      if (d->hoop_seat == RW_SEAT_NOTCHES)
        row[RW_OUTCOME_NOTCHES + k] = shoe - off (result, plan, RW_HOOP_NOTCH_ARC + k) * inward;
      else if (has_neighbour (k, (int) d->hooks_count))
        row[RW_OUTCOME_ROOMS + k] = shoe;
    }
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

/* ---- rim ---- */

/* All mitres off by the same: the formula of rim.joint_gap, with its sign. */
static double
ring_gap (const RwResult *result)
{
  const RwDesign *d = &result->used;
  double outside = d->rim_outer_diameter / 2 + d->rim_turning_allowance;
  double off = result->value[RW_RIM_SEGMENT_MITRE] - 180 / d->rim_segments;

  return 2 * outside * sin (d->rim_segments * off * RAD);
}

/* All pieces of a ring off by the same: flats of the outside and corners of the inside, against the turned wall. */
static void
ring_wood (const RwResult *result, double *row)
{
  const RwDesign *d = &result->used;
  double half = G_PI / d->rim_segments, outside = d->rim_outer_diameter / 2;
  double flat = result->value[RW_RIM_SEGMENT_OUTER_EDGE] / (2 * tan (half));
  double strip = d->rim_strip_width > 0 ? d->rim_strip_width : result->value[RW_RIM_SEGMENT_MIN_WIDTH];

  row[RW_OUTCOME_TURN_OUTSIDE] = flat - outside;
  row[RW_OUTCOME_TURN_INSIDE] = outside - d->rim_wall - (flat - strip) / cos (half);
  row[RW_OUTCOME_STAVE_END] = result->value[RW_RIM_STAVE_LENGTH] - d->rim_height;
  for (int k = 1; k <= d->rim_course_thickness.count; k++)
    row[RW_OUTCOME_COURSES + k] = result->value[RW_RIM_COURSE_ROUGH + k] - d->rim_course_thickness.at[k - 1];
}

/* As long as it is, or as it would be bought for the planned wall. */
static double
bolt_reach (const RwResult *result, const RwResult *plan)
{
  const RwDesign *d = &result->used;
  double bought = d->shoes_bolt_length > 0 ? d->shoes_bolt_length - d->shoes_washer
                                           : plan->used.rim_wall + d->shoes_thread_depth;

  return bought - d->rim_wall;
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
  row[RW_OUTCOME_BOLT_REACH] = bolt_reach (result, plan);
  ring_wood (result, row);
  edges (result, plan, row);
  fretboard (result, plan, row);
  headstock (result, row);
  hooks (result, plan, row);
  for (int i = 1; i <= result->plan.strings; i++)
    for (int n = 1; n <= RW_FRETS_MAX; n++)
      row[RW_OUTCOME_NOTE (i, n)] = result->cents_best[i][n];
}
