#include "draw_parts.h"

#include <math.h>

/* Strings, bridge and tailpiece from above. */

/* Across the bridge line: d along the bridge from the axis, e square to it towards the tail. */
static RwPoint
on_bridge (const RwDraft *draft, double d, double e)
{
  double turn = rw_draft_value (draft, RW_BRIDGE_LINE_ANGLE) * G_PI / 180;

  return (RwPoint){ draft->design->bridge_offset - d * sin (turn) + e * cos (turn),
                    d * cos (turn) + e * sin (turn) };
}

static void
bridge_box (RwDraft *draft, double middle, double half, double half_width)
{
  const RwPoint corners[] = {
    on_bridge (draft, middle - half, -half_width),
    on_bridge (draft, middle + half, -half_width),
    on_bridge (draft, middle + half, half_width),
    on_bridge (draft, middle - half, half_width),
  };

  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_EDGE, RW_TINT_BONE, corners, G_N_ELEMENTS (corners)),
           N_ ("Bridge"), 0);
}

/* The bridge narrows from its feet to its top. */
#define BRIDGE_TOP 0.45

static void
draw_bridge (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double outer = design->bridge_foot_spread / 2, half = design->bridge_foot_length / 2;

  rw_draft_param (draft, BRIDGE, bridge_foot_spread);
  bridge_box (draft, -outer, half, design->bridge_foot_width / 2);
  bridge_box (draft, outer, half, design->bridge_foot_width / 2);
  if (design->bridge_feet > 2.5)
    bridge_box (draft, 0, half, design->bridge_foot_width / 2);
  rw_draft_param (draft, BRIDGE, bridge_offset);
  bridge_box (draft, 0, outer + half, BRIDGE_TOP * design->bridge_foot_width);
}

/* A bent plate: from the strings back over the hoop, a strap down behind it with the screw that holds it. */
static void
draw_tailpiece (RwDraft *draft)
{
  RwTailPlace tail = rw_tail_place (draft->result);
  double corner = fmin (4, tail.front_half / 2), waist = (tail.front + tail.back) / 2;
  double over = draft->design->tailpiece_offset;
  double right = over + tail.front_half, left = over - tail.front_half;
  double back_right = over + tail.back_half, back_left = over - tail.back_half;
  RwSheet *sheet = draft->sheet;

  rw_draft_param (draft, BRIDGE, tailpiece_anchor);
  rw_path_begin (sheet, RW_PEN_OUTLINE, RW_TINT_METAL);
  rw_path_move (sheet, tail.front, left + corner);
  rw_path_line (sheet, tail.front, right - corner);
  rw_path_curve (sheet, (RwPoint){ tail.front, right }, (RwPoint){ tail.front, right },
                 (RwPoint){ tail.front + corner, right });
  rw_path_curve (sheet, (RwPoint){ waist, right }, (RwPoint){ waist, back_right },
                 (RwPoint){ tail.back, back_right });
  rw_path_line (sheet, tail.back + 3, back_right - 3);
  rw_path_line (sheet, tail.back + 3, back_left + 3);
  rw_path_line (sheet, tail.back, back_left);
  rw_path_curve (sheet, (RwPoint){ waist, back_left }, (RwPoint){ waist, left },
                 (RwPoint){ tail.front + corner, left });
  rw_path_curve (sheet, (RwPoint){ tail.front, left }, (RwPoint){ tail.front, left },
                 (RwPoint){ tail.front, left + corner });
  rw_path_close (sheet);
  rw_name (rw_path_end (sheet), N_ ("Tailpiece"), 0);
  rw_sheet_line (sheet, RW_PEN_EDGE, tail.back - 5, back_left, tail.back - 5, back_right);
  rw_name (rw_sheet_box (sheet, RW_PEN_OUTLINE, RW_TINT_METAL, tail.back + 3, over - 4, tail.back + 9, over + 4),
           N_ ("Tailpiece screw"), 0);
}

static RwPoint
tail_hold (const RwDraft *draft, int string)
{
  int strings = draft->result->plan.strings;
  RwTailPlace tail = rw_tail_place (draft->result);

  return (RwPoint){ tail.front + 5,
                    draft->design->tailpiece_offset
                        + (strings > 1 ? tail.string_half * (strings + 1 - 2 * string) / (strings - 1) : 0) };
}

/* The stud that a string's loop hangs on. */
static void
draw_tail_hook (RwDraft *draft, int string)
{
  RwPoint hold = tail_hold (draft, string);

  rw_sheet_circle (draft->sheet, RW_PEN_EDGE, RW_TINT_METAL, hold.x, hold.y, 1.1);
}

/* Where the strings' line meets the bridge, which may stand askew. */
static RwPoint
over_bridge (const RwDraft *draft, int string)
{
  double y = draft->result->plan.bridge_y[string];
  double turn = rw_draft_value (draft, RW_BRIDGE_LINE_ANGLE) * G_PI / 180;

  return (RwPoint){ draft->design->bridge_offset - y * tan (turn), y };
}

static void
through (RwDraft *draft, RwPoint p)
{
  rw_path_line (draft->sheet, p.x, p.y);
}

/* Post, nut, bridge, tailpiece: straight between them. */
static void
draw_long_string (RwDraft *draft, int string)
{
  const RwPlan *plan = &draft->result->plan;
  double behind = -draft->design->nut_thickness;
  RwPoint post = rw_map_head_plan (draft->result, rw_draft_value (draft, RW_HEADSTOCK_POST_X + string),
                                   rw_draft_value (draft, RW_HEADSTOCK_POST_Y + string));

  rw_path_begin (draft->sheet, RW_PEN_EDGE, RW_TINT_NONE);
  rw_path_move (draft->sheet, post.x, post.y);
  through (draft, rw_map_plan (draft->result, behind, rw_plan_string_y (plan, string, behind)));
  through (draft, over_bridge (draft, string));
  through (draft, tail_hold (draft, string));
  rw_name (rw_path_end (draft->sheet), N_ ("String"), string);
  draw_tail_hook (draft, string);
}

/* How far the string stands off the neck's side on its peg's barrel. */
#define PEG_STAND_OFF 7.0
#define PIP_RADIUS 1.4

static void
draw_short_string (RwDraft *draft, int string)
{
  const RwPlan *plan = &draft->result->plan;
  gboolean tunnel = draft->design->fifth_route == RW_ROUTE_TUNNEL;
  double peg = plan->short_x - draft->design->fifth_peg_distance;
  RwPoint start = rw_map_plan (draft->result, plan->short_x, plan->short_y);
  RwPoint hold = tunnel
                     ? rw_map_head_plan (draft->result, rw_draft_value (draft, RW_HEADSTOCK_POST_X + string),
                                         rw_draft_value (draft, RW_HEADSTOCK_POST_Y + string))
                     : rw_map_plan (draft->result, peg, rw_plan_bass (plan, peg) - PEG_STAND_OFF);

  rw_name (
      rw_sheet_line (draft->sheet, tunnel ? RW_PEN_HIDDEN : RW_PEN_EDGE, hold.x, hold.y, start.x, start.y),
      N_ ("String"), string);
  rw_path_begin (draft->sheet, RW_PEN_EDGE, RW_TINT_NONE);
  rw_path_move (draft->sheet, start.x, start.y);
  through (draft, over_bridge (draft, string));
  through (draft, tail_hold (draft, string));
  rw_name (rw_path_end (draft->sheet), N_ ("String"), string);
  draw_tail_hook (draft, string);
  rw_draft_param (draft, FRETBOARD, fifth_spacing);
  rw_name (
      rw_sheet_circle (draft->sheet, RW_PEN_EDGE, RW_TINT_BONE, start.x - PIP_RADIUS, start.y, PIP_RADIUS),
      N_ ("Short string's nut"), 0);
}

void
rw_draw_strings_plan (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;

  draw_bridge (draft);
  draw_tailpiece (draft);
  rw_draft_param (draft, STRINGS, strings_set);
  for (int i = 1; i <= plan->full; i++)
    draw_long_string (draft, i);
  if (plan->has_short)
    draw_short_string (draft, plan->strings);
  rw_draw_posts (draft, rw_map_head_plan);
}
