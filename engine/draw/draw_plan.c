#include "draw_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* Plan: axes and dimensions over the parts. */

static RwPoint
on_centre (const RwDraft *draft, double s)
{
  RwPoint p = rw_place_board (draft->result, s, 0);

  return rw_map_plan (draft->result, p.x, p.y);
}

/* Axes run this far past what they belong to. */
#define AXIS_PAST 12.0

static void
draw_axes (RwDraft *draft)
{
  double reach = rw_pot_reach (draft->result) + AXIS_PAST;
  double tip = -draft->design->nut_thickness - draft->design->headstock_length - AXIS_PAST;
  RwPoint from = on_centre (draft, tip), to = on_centre (draft, draft->result->side.nut_to_rim + AXIS_PAST);

  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, isfinite (from.x) ? from.x : -reach, 0,
                          reach + AXIS_PAST, 0),
           N_ ("Axis of the strings"), 0);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, 0, -reach, 0, reach), N_ ("Cross axis"), 0);
  rw_draft_slot (draft, AXES, RW_NECK_SIDE_ANGLE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, from.x, from.y, to.x, to.y),
           N_ ("Centre line of the neck"), 0);
}

/* Lengths along the instrument, below the plan. */
static void
along_below (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double rim = design->rim_outer_diameter / 2, below = -rw_pot_reach (draft->result);
  RwPoint nut = rw_map_plan (draft->result, 0, rw_plan_bass (&draft->result->plan, 0));
  double half = (design->bridge_foot_spread + design->bridge_foot_length) / 2;
  RwPoint face = { -rim, below * 0.55 }, bridge = { design->bridge_offset, below };

  rw_lead_out (draft, (RwPoint){ bridge.x, -half }, bridge);
  rw_lead_out (
      draft, (RwPoint){ face.x, rw_plan_bass (&draft->result->plan, draft->result->side.nut_to_rim) }, face);
  rw_span_slot (draft, RW_NECK_NUT_TO_RIM, (RwSpan){ RW_MEASURE_HORIZONTAL, nut, face, -7, 2, N_ ("nut to rim %s") });
  rw_span_param (draft, RW_P_scale_length, (RwSpan){ RW_MEASURE_HORIZONTAL, nut, bridge, -8, 1, N_ ("scale %s") });
}

static void
on_the_head (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double half = (design->bridge_foot_spread + design->bridge_foot_length) / 2;

  rw_span_param (draft, RW_P_bridge_offset,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, { 0, half }, { design->bridge_offset, half }, 8, 2, NULL });
  rw_span_param (draft, RW_P_bridge_spread,
                 (RwSpan){ RW_MEASURE_VERTICAL,
                           { design->bridge_offset, -design->bridge_spread / 2 },
                           { design->bridge_offset, design->bridge_spread / 2 },
                           9,
                           4,
                           NULL });
}

static void
across_the_neck (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;
  double rim = draft->result->side.nut_to_rim;
  RwPoint nut[2] = { rw_map_plan (draft->result, 0, rw_plan_bass (plan, 0)),
                     rw_map_plan (draft->result, 0, rw_plan_treble (plan, 0)) };
  RwPoint end[2] = { { rw_map_plan (draft->result, rim, 0).x, rw_plan_bass (plan, rim) },
                     { rw_map_plan (draft->result, rim, 0).x, rw_plan_treble (plan, rim) } };

  rw_span_param (draft, RW_P_nut_width, (RwSpan){ RW_MEASURE_VERTICAL, nut[0], nut[1], 6, 3, NULL });
  rw_span_slot (draft, RW_NECK_WIDTH_AT_RIM, (RwSpan){ RW_MEASURE_VERTICAL, end[0], end[1], -9, 4, NULL });
}

void
rw_draw_diameter (RwDraft *draft)
{
  double radius = draft->design->rim_outer_diameter / 2;
  RwPoint at = rw_place_round (0.75 * G_PI, radius, 0);

  rw_note_param (draft, RW_P_rim_outer_diameter,
                 (RwNote){ at, { at.x + 42, at.y + 42 }, 2, N_ ("rim ⌀ %s") });
}

/* The sideways angle, where there is one to be seen. */
static void
sideways (RwDraft *draft)
{
  RwPoint nut = on_centre (draft, 0);
  double angle = rw_draft_value (draft, RW_NECK_SIDE_ANGLE);
  RwPoint tip = on_centre (draft, -draft->design->nut_thickness - 0.97 * draft->design->headstock_length);

  if (fabs (angle) > 0.02)
    rw_note_slot (draft, RW_NECK_SIDE_ANGLE, (RwNote){ tip, { tip.x + 16, nut.y + 56 }, 4, N_ ("sideways %s") });
}

/* The dividers' step between the first two hooks. */
static void
hook_step (RwDraft *draft)
{
  double rim = draft->design->rim_outer_diameter / 2;
  int hooks = (int) draft->design->hooks_count;
  g_autofree char *count = g_strdup_printf (ngettext ("%d hook", "%d hooks", (gulong) hooks), hooks);
  double angle = rw_draft_value (draft, RW_HOOKS_ANGLE + 2) * G_PI / 180;
  double last = rw_draft_value (draft, RW_HOOKS_ANGLE + 1) * G_PI / 180;
  RwPoint shoe = rw_place_round (angle, rw_hook_place (draft->result).shoe_radius, 0);

  rw_span_slot (draft, RW_HOOKS_CHORD + 1,
                (RwSpan){ RW_MEASURE_ALIGNED, rw_place_round (last, rim, 0), rw_place_round (angle, rim, 0),
                          -6, 5, NULL });
  rw_draft_param (draft, DIMENSIONS, hooks_count);
  rw_sheet_leader (draft->sheet, shoe, (RwPoint){ shoe.x - 22, shoe.y + 26 }, RW_FIGURE_PLANNED, count)->rank
      = 3;
}

void
rw_draw_plan (RwDraft *draft)
{
  rw_draw_pot_plan (draft);
  rw_draw_neck_plan (draft);
  rw_draw_strings_plan (draft);
  draw_axes (draft);
  along_below (draft);
  on_the_head (draft);
  across_the_neck (draft);
  sideways (draft);
  hook_step (draft);
}
