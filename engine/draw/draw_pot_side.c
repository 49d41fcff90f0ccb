#include "draw_parts.h"

#include <math.h>

/* The pot from the side: rim, hoop, hooks and shoes of the near half, rods. */

static double
rim_top (const RwDraft *draft)
{
  return -draft->design->rim_tone_ring_height;
}

static double
rim_foot (const RwDraft *draft)
{
  return rim_top (draft) - draft->design->rim_height;
}

/* Is a place round the rim, as hooks count, on the half that is seen? */
static gboolean
is_near (const RwDraft *draft, double degrees)
{
  return sin (degrees * G_PI / 180) * rw_near_side (draft->design) > 1e-9;
}

void
rw_draw_joints (RwDraft *draft, double turn, double top, double foot)
{
  int count = (int)draft->design->rim_segments;
  double radius = draft->design->rim_outer_diameter / 2;

  if (!isfinite (turn))
    return;
  rw_draft_param (draft, RIM, rim_segments);
  for (int j = 0; j < count; j++)
    {
      double degrees = (j + 0.5) * 360 / count + turn, x = -radius * cos (degrees * G_PI / 180);

      if (is_near (draft, degrees))
        rw_name (rw_sheet_line (draft->sheet, RW_PEN_EDGE, x, top, x, foot), N_ ("Joint"), 0);
    }
}

static void
draw_courses (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double radius = design->rim_outer_diameter / 2, top = rim_top (draft);

  for (int k = 1; k <= design->rim_course_thickness.count && top > rim_foot (draft) + 1e-9; k++)
    {
      double foot = fmax (top - design->rim_course_thickness.at[k - 1], rim_foot (draft));

      rw_draft_param (draft, RIM, rim_course_thickness);
      rw_name (
          rw_sheet_box (draft->sheet, RW_PEN_EDGE, rw_course_tint (design, k), -radius, top, radius, foot),
          N_ ("Course"), k);
      rw_draw_joints (draft, rw_draft_value (draft, RW_RIM_COURSE_TURN + k), top, foot);
      top = foot;
    }
}

/* The head's band or flesh hoop is about as high as it is wide. */
static void
draw_band (RwDraft *draft)
{
  double radius = draft->design->head_nominal / 2 + draft->design->head_band,
         face = rw_hoop_bottom (draft->result);

  rw_draft_param (draft, HEAD, head_band);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_EDGE, RW_TINT_METAL, -radius, face, radius,
                         face - draft->design->head_band),
           N_ ("Head band"), 0);
}

void
rw_draw_rim_side (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double radius = design->rim_outer_diameter / 2;

  rw_draft_param (draft, RIM, rim_height);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, -radius, rim_foot (draft), radius,
                         rim_top (draft)),
           N_ ("Rim"), 0);
  if (design->rim_construction == RW_RIM_SEGMENTS)
    draw_courses (draft);
  else if (design->rim_construction == RW_RIM_STAVES)
    rw_draw_joints (draft, 0, rim_top (draft), rim_foot (draft));

  rw_draft_param (draft, RIM, rim_tone_ring_height);
  if (design->rim_tone_ring_height > 0)
    rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, -radius, rim_top (draft), radius, 0),
             N_ ("Tone ring"), 0);
  rw_draft_param (draft, RIM, rim_height);
  rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, -radius, rim_foot (draft), radius,
                rim_top (draft));
  draw_band (draft);
}

void
rw_draw_hoop_side (RwDraft *draft)
{
  double radius = rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) / 2;

  rw_draft_param (draft, HOOP, hoop_height);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, -radius, rw_hoop_bottom (draft->result),
                         radius, rw_hoop_top (draft->result)),
           N_ ("Tension hoop"), 0);
}

/* A shoe turned by its angle: the box round it, and the edge between its front and the flank that shows. */
static void
draw_shoe (RwDraft *draft, int hook, double angle, const RwHookPlace *place)
{
  double rim = draft->design->rim_outer_diameter / 2, half = draft->design->shoes_width / 2;
  double front[2] = { rw_place_round (angle, place->shoe_radius, -half).x,
                      rw_place_round (angle, place->shoe_radius, half).x };
  double back[2] = { rw_place_round (angle, rim, -half).x, rw_place_round (angle, rim, half).x };
  double left = fmin (fmin (front[0], front[1]), fmin (back[0], back[1]));
  double right = fmax (fmax (front[0], front[1]), fmax (back[0], back[1]));
  double edge = cos (angle) > 0 ? fmax (front[0], front[1]) : fmin (front[0], front[1]);

  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, left, place->shoe_bottom, right,
                         place->shoe_top),
           N_ ("Shoe"), hook);
  if (edge > left + 1 && edge < right - 1)
    rw_sheet_line (draft->sheet, RW_PEN_EDGE, edge, place->shoe_bottom, edge, place->shoe_top);
}

/* Rod with its bend against the hoop; it leans where claw and bolt stand at different radii. */
static void
draw_rod (RwDraft *draft, int hook, double angle, const RwHookPlace *place)
{
  double rod = draft->design->hooks_rod / 2, bolt = -draft->design->shoes_below_edge;
  double top = -place->top_radius * cos (angle), foot = -place->foot_radius * cos (angle);
  double end = top + (foot - top) * (place->claw - place->end) / (place->claw - bolt);

  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL);
  rw_path_move (draft->sheet, end - rod, place->end);
  rw_path_line (draft->sheet, top - rod, place->claw);
  rw_path_arc (draft->sheet, (RwPoint){ top, place->claw }, rod, G_PI, 0);
  rw_path_line (draft->sheet, end + rod, place->end);
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Hook"), hook);
}

static void
draw_hook (RwDraft *draft, int hook)
{
  RwHookPlace place = rw_hook_place (draft->result);
  double angle = rw_draft_value (draft, RW_HOOKS_ANGLE + hook) * G_PI / 180;
  double foot = -place.foot_radius * cos (angle), half = 0.8 * draft->design->hooks_rod;

  rw_draft_slot (draft, HOOKS, RW_HOOKS_ANGLE + hook);
  draw_rod (draft, hook, angle, &place);
  draw_shoe (draft, hook, angle, &place);
  rw_draft_param (draft, HOOKS, hooks_nut_height);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, foot - half, place.nut_bottom,
                         foot + half, place.shoe_bottom),
           N_ ("Hook nut"), hook);
}

/* From both ends of the near half to its middle, the nearer ones over the farther. */
void
rw_draw_hooks_side (RwDraft *draft)
{
  int count = (int)draft->design->hooks_count, near = rw_near_side (draft->design);
  int first = 1, last = count;

  while (first <= last)
    {
      double low = sin (rw_draft_value (draft, RW_HOOKS_ANGLE + first) * G_PI / 180) * near;
      double high = sin (rw_draft_value (draft, RW_HOOKS_ANGLE + last) * G_PI / 180) * near;
      int hook = low < high ? first++ : last--;

      if (is_near (draft, rw_draft_value (draft, RW_HOOKS_ANGLE + hook)))
        draw_hook (draft, hook);
    }
}

/* Washer and nut of a rod at the tail. */
#define WASHER 2.0
#define NUT 6.0

static void
draw_rod_end (RwDraft *draft, double below, double half)
{
  double radius = draft->design->rim_outer_diameter / 2;

  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, radius, -below - 2.2 * half,
                         radius + WASHER, -below + 2.2 * half),
           N_ ("Washer"), 0);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, radius + WASHER, -below - 1.7 * half,
                         radius + WASHER + NUT, -below + 1.7 * half),
           N_ ("Nut"), 0);
}

static void
draw_stick_end (RwDraft *draft, double below)
{
  double radius = draft->design->rim_outer_diameter / 2;

  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_DARK_WOOD, radius, -below - 4, radius + 5,
                         -below + 4),
           N_ ("End pin"), 0);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_DARK_WOOD, radius + 5, -below - 6, radius + 11,
                         -below + 6),
           N_ ("End pin"), 0);
}

void
rw_draw_across_side (RwDraft *draft)
{
  RwAcross across = rw_across (draft->design);
  gboolean stick = draft->design->joint_kind == RW_JOINT_STICK;
  double radius = draft->design->rim_outer_diameter / 2;

  for (int i = 0; i < across.count; i++)
    {
      double low = -across.below[i] - across.half, high = -across.below[i] + across.half;
      double left = -radius - rw_across_reach (draft->result, i);
      const RwPoint corners[] = { { left, low }, { radius, low }, { radius, high }, { left, high } };

      rw_draft_set (draft, RW_LAYER_JOINT,
                    stick    ? RW_SUBJECT_PARAM (joint_stick_below)
                    : i == 0 ? RW_SUBJECT_PARAM (joint_rod_upper)
                             : RW_SUBJECT_PARAM (joint_rod_spacing));
      rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_HIDDEN, RW_TINT_NONE, corners, G_N_ELEMENTS (corners)),
               stick ? N_ ("Stick") : N_ ("Rod"), 0);
      if (stick)
        draw_stick_end (draft, across.below[i]);
      else
        draw_rod_end (draft, across.below[i], across.half);
    }
}
