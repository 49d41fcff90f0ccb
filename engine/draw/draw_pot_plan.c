#include "draw_parts.h"

#include <math.h>

/* The pot from above: rim, what holds the neck, shoes, head, hoop, hooks, in painting order. */

static void
draw_rim (RwDraft *draft)
{
  double outer = draft->design->rim_outer_diameter / 2,
         inner = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2;

  rw_draft_param (draft, RIM, rim_outer_diameter);
  rw_name (rw_ring (draft, RW_PEN_EDGE, RW_TINT_LIGHT_WOOD, (RwPoint){ 0, 0 }, outer, inner), N_ ("Rim"), 0);
}

/* A shoe: flat against the rim, its outer corners taken off. */
static void
draw_shoe (RwDraft *draft, int hook)
{
  double angle = rw_draft_value (draft, RW_HOOKS_ANGLE + hook) * G_PI / 180;
  double outer = rw_hook_place (draft->result).shoe_radius, half = draft->design->shoes_width / 2;
  double rim = draft->design->rim_outer_diameter / 2, corner = fmin (2, half / 3);
  const RwPoint shape[] = {
    rw_place_round (angle, sqrt (fmax (rim * rim - half * half, 0)), -half),
    rw_place_round (angle, outer - corner, -half),
    rw_place_round (angle, outer, -half + corner),
    rw_place_round (angle, outer, half - corner),
    rw_place_round (angle, outer - corner, half),
    rw_place_round (angle, sqrt (fmax (rim * rim - half * half, 0)), half),
  };

  rw_draft_slot (draft, HOOKS, RW_HOOKS_ANGLE + hook);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, shape, G_N_ELEMENTS (shape)),
           N_ ("Shoe"), hook);
}

static void
draw_head (RwDraft *draft)
{
  RwSheet *sheet = draft->sheet;
  double rim = draft->design->rim_outer_diameter / 2, bore = rw_draft_value (draft, RW_HOOP_BORE) / 2;

  /* Its collar shows in the gap to the hoop. */
  rw_draft_param (draft, HEAD, head_nominal);
  rw_name (rw_sheet_circle (sheet, RW_PEN_NONE, RW_TINT_HEAD, 0, 0, fmax (rim, bore)), N_ ("Head"), 0);
  rw_name (rw_sheet_circle (sheet, RW_PEN_EDGE, RW_TINT_NONE, 0, 0, rim), N_ ("Head"), 0);
  rw_draft_param (draft, HEAD, rim_crest_inset);
  rw_name (rw_sheet_circle (sheet, RW_PEN_EDGE, RW_TINT_NONE, 0, 0, rw_draft_value (draft, RW_HEAD_RADIUS)),
           N_ ("Bearing edge"), 0);
  rw_draft_param (draft, RIM, rim_wall);
  rw_name (rw_sheet_circle (sheet, RW_PEN_HIDDEN, RW_TINT_NONE, 0, 0,
                            rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2),
           N_ ("Inside of the rim"), 0);
}

/* The rods stand one above the other and show as one. */
static void
draw_across (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  gboolean stick = design->joint_kind == RW_JOINT_STICK;
  double half = rw_across (design).half;
  double inner = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2;
  const RwPoint corners[] = { { -inner, -half }, { inner, -half }, { inner, half }, { -inner, half } };

  rw_draft_set (draft, RW_LAYER_JOINT,
                stick ? RW_SUBJECT_PARAM (joint_stick_section) : RW_SUBJECT_PARAM (joint_rod_diameter));
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_HIDDEN, RW_TINT_NONE, corners, G_N_ELEMENTS (corners)),
           stick ? N_ ("Stick") : N_ ("Rod"), 0);
}

static void
draw_hoop (RwDraft *draft)
{
  rw_draft_slot (draft, HOOP, RW_HOOP_BORE);
  rw_name (rw_ring (draft, RW_PEN_OUTLINE, RW_TINT_METAL, (RwPoint){ 0, 0 },
                    rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) / 2,
                    rw_draft_value (draft, RW_HOOP_BORE) / 2),
           N_ ("Tension hoop"), 0);
  if (draft->design->hoop_seat != RW_SEAT_GROOVE)
    return;

  rw_draft_param (draft, HOOP, hoop_seat);
  rw_name (rw_sheet_circle (
               draft->sheet, RW_PEN_EDGE, RW_TINT_NONE, 0, 0,
               (rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) + rw_draft_value (draft, RW_HOOP_BORE)) / 4),
           N_ ("Groove for the hooks"), 0);
}

/* Room for the hook beside its rod in the notch. */
#define NOTCH_ROOM 0.6

static void
draw_notch (RwDraft *draft, int hook)
{
  double angle = rw_draft_value (draft, RW_HOOKS_ANGLE + hook) * G_PI / 180;
  double outer = rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) / 2,
         inner = rw_draft_value (draft, RW_HOOP_BORE) / 2;
  double half = draft->design->hooks_rod / 2 + NOTCH_ROOM;
  const RwPoint shape[] = {
    rw_place_round (angle, inner, -half),
    rw_place_round (angle, outer, -half),
    rw_place_round (angle, outer, half),
    rw_place_round (angle, inner, half),
  };

  rw_draft_param (draft, HOOP, hoop_notch_depth);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_EDGE, RW_TINT_METAL, shape, G_N_ELEMENTS (shape)),
           N_ ("Notch"), hook);
}

/* The bent-over end of a hook, round over the leg and sawn off at the tip. */
static void
draw_hook (RwDraft *draft, int hook)
{
  RwSheet *sheet = draft->sheet;
  double angle = rw_draft_value (draft, RW_HOOKS_ANGLE + hook) * G_PI / 180;
  double rod = draft->design->hooks_rod / 2, leg = rw_hook_place (draft->result).top_radius;
  double tip = leg - draft->design->hooks_claw, outwards = G_PI - angle;
  RwPoint p = rw_place_round (angle, tip, -rod), q = rw_place_round (angle, tip, rod);

  rw_draft_slot (draft, HOOKS, RW_HOOKS_ANGLE + hook);
  rw_path_begin (sheet, RW_PEN_OUTLINE, RW_TINT_METAL);
  rw_path_move (sheet, q.x, q.y);
  rw_path_line (sheet, p.x, p.y);
  rw_path_arc (sheet, rw_place_round (angle, leg, 0), rod, outwards + G_PI_2, outwards - G_PI_2);
  rw_path_close (sheet);
  rw_name (rw_path_end (sheet), N_ ("Hook"), hook);
}

static int
hooks (const RwDraft *draft)
{
  return (int)draft->design->hooks_count;
}

void
rw_draw_pot_plan (RwDraft *draft)
{
  draw_rim (draft);
  for (int k = 1; k <= hooks (draft); k++)
    draw_shoe (draft, k);
  draw_head (draft);
  draw_across (draft);
  draw_hoop (draft);
  for (int k = 1; k <= hooks (draft); k++)
    {
      if (draft->design->hoop_seat == RW_SEAT_NOTCHES)
        draw_notch (draft, k);
      draw_hook (draft, k);
    }
}
