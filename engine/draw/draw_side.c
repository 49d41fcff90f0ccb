#include "draw_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* Side elevation: axes and dimensions over the parts. */

#define AXIS_PAST 14.0

static RwPoint
neck (const RwDraft *draft, double x, double over)
{
  return rw_place_neck (draft->result, x, over);
}

static void
draw_axes (RwDraft *draft)
{
  double reach = rw_pot_reach (draft->result) + AXIS_PAST, nut = neck (draft, 0, 0).x;
  double foot = -draft->design->rim_tone_ring_height - draft->design->rim_height;

  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (
      rw_sheet_line (draft->sheet, RW_PEN_CENTRE, (isfinite (nut) ? nut : -reach) - AXIS_PAST, 0, reach, 0),
      N_ ("Head plane"), 0);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, 0, rw_hoop_top (draft->result) + AXIS_PAST, 0,
                          foot - AXIS_PAST),
           N_ ("Axis of the rim"), 0);
}

static void
pot_sizes (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double radius = design->rim_outer_diameter / 2, top = -design->rim_tone_ring_height,
         foot = top - design->rim_height;
  double reach = rw_tail_place (draft->result).back + 8;

  rw_lead_out (draft, (RwPoint){ radius + 1, foot }, (RwPoint){ reach, foot });
  rw_span_param (draft, RW_P_rim_height,
                 (RwSpan){ RW_MEASURE_VERTICAL, { reach, foot }, { reach, top }, 6, 1, NULL });
  rw_span_param (draft, RW_P_rim_outer_diameter,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, { -radius, foot }, { radius, foot }, -9, 1, RW_DIAMETER });
}

/* The bridge's height, and how far the head sinks under it. */
static void
bridge_sizes (RwDraft *draft)
{
  const RwSide *side = &draft->result->side;
  double x = draft->design->bridge_offset, dip = -side->sag;

  rw_note_slot (draft, RW_BRIDGE_HEIGHT,
                (RwNote){ { x, side->bridge_top }, { x + 18, side->bridge_top + 14 }, 1, N_ ("bridge %s") });
  rw_note_slot (draft, RW_BRIDGE_SAG,
                (RwNote){ { x - 2, dip }, { x - 26, side->bridge_top + 10 }, 2, N_ ("dip %s") });
}

/* The neck's tilt against the head plane, at the crossing of board and head plane where that is near. */
static void
neck_angle (RwDraft *draft)
{
  double angle = draft->result->side.angle, set = draft->design->neck_set_height,
         to_rim = draft->result->side.nut_to_rim;
  double back = set / sin (angle);
  RwPoint apex = neck (draft, to_rim - back, 0);
  double radius = 0.8 * (to_rim - back);

  if (fabs (angle) < 0.002 || !(back > -0.2 * to_rim && back < 0.5 * to_rim))
    return;
  rw_sweep_slot (draft, RW_NECK_ANGLE, (RwSweep){ apex, radius, G_PI, G_PI + angle, 1, N_ ("neck angle %s") });
}

static void
neck_heights (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;
  const RwSide *side = &draft->result->side;
  int fret = (int) draft->design->setup_action_fret;
  g_autofree char *action = g_strdup_printf (_("action at fret %d: %%s"), fret);
  double crown = draft->design->frets_count > 0.5 ? draft->design->frets_crown_height : 0;
  RwPoint over = neck (draft, plan->fret_x[fret], crown + side->action / 2);
  RwPoint rim = neck (draft, side->nut_to_rim - 30, 0);
  double last = side->heel_start - 12;
  RwPoint thin[2] = { neck (draft, plan->fret_x[1], -rw_neck_thickness (draft->result, plan->fret_x[1])),
                      neck (draft, plan->fret_x[1], 0) };
  RwPoint thick[2] = { neck (draft, last, -rw_neck_thickness (draft->result, last)), neck (draft, last, 0) };

  if (draft->design->neck_solve_for == RW_SOLVE_ACTION)
    rw_note_slot (draft, RW_SETUP_ACTION + fret, (RwNote){ over, { over.x - 14, over.y + 20 }, 1, action });
  else
    rw_note_param (draft, RW_P_setup_action, (RwNote){ over, { over.x - 14, over.y + 20 }, 1, action });
  rw_note_param (draft, RW_P_neck_set_height,
                 (RwNote){ rim, { rim.x - 14, rim.y + 24 }, 3, N_ ("set height %s") });
  rw_span_param (draft, RW_P_neck_thickness_first,
                 (RwSpan){ RW_MEASURE_ALIGNED, thin[0], thin[1], 0, 3, NULL });
  rw_span_param (draft, RW_P_neck_thickness_last,
                 (RwSpan){ RW_MEASURE_ALIGNED, thick[0], thick[1], 0, 3, NULL });
}

static void
headstock_angle (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double tilt = draft->result->side.angle, back = design->headstock_angle * G_PI / 180;
  double length = 0.72 * design->headstock_length;
  RwPoint apex = rw_place_head_side (draft->result, 0, 0);
  RwPoint level = { apex.x - (length + 10) * cos (tilt), apex.y - (length + 10) * sin (tilt) };

  if (back <= 0)
    return;
  rw_lead_out (draft, apex, level);
  rw_sweep_param (draft, RW_P_headstock_angle,
                  (RwSweep){ apex, length, G_PI + tilt, G_PI + tilt + back, 2, N_ ("headstock %s") });
}

/* Which side is seen: the bass side's edge of the neck, or in a left-handed build the treble side's, stands in front
 * of the other. */
static void
side_seen (RwDraft *draft)
{
  double foot = -draft->design->rim_tone_ring_height - draft->design->rim_height;
  RwPoint beside = neck (draft, draft->result->side.nut_to_rim * 0.58, 0);

  rw_caption (draft, (RwPoint){ beside.x, foot }, 0,
              rw_near_side (draft->design) < 0 ? _("seen from the bass side") : _("seen from the treble side"));
}

void
rw_draw_side (RwDraft *draft)
{
  rw_draw_rim_side (draft);
  rw_draw_bridge_side (draft);
  rw_draw_hoop_side (draft);
  rw_draw_across_side (draft);
  rw_draw_tail_side (draft);
  rw_draw_strings_side (draft);
  rw_draw_neck_side (draft);
  rw_draw_hooks_side (draft);
  draw_axes (draft);
  pot_sizes (draft);
  bridge_sizes (draft);
  neck_angle (draft);
  neck_heights (draft);
  headstock_angle (draft);
  side_seen (draft);
}
