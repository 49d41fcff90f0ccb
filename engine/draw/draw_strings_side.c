#include "draw_parts.h"

#include <math.h>

/* Bridge, tailpiece and strings from the side. */

/* The bridge's top is this much of its foot's width. */
#define BRIDGE_TOP 0.5

void
rw_draw_bridge_side (RwDraft *draft)
{
  const RwSide *side = &draft->result->side;
  double x = draft->design->bridge_offset, foot = draft->design->bridge_foot_width / 2;
  const RwPoint shape[] = {
    { x - foot, -side->sag },
    { x - BRIDGE_TOP * foot, side->bridge_top },
    { x + BRIDGE_TOP * foot, side->bridge_top },
    { x + foot, -side->sag },
  };

  rw_draft_slot (draft, BRIDGE, RW_BRIDGE_HEIGHT);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_EDGE, RW_TINT_BONE, shape, G_N_ELEMENTS (shape)),
           N_ ("Bridge"), 0);
}

/* What of head and bridge the hoop hides. */
#define DIP_CHORDS 60

static void
draw_hidden (RwDraft *draft)
{
  const RwSide *side = &draft->result->side;
  double x = draft->design->bridge_offset, foot = draft->design->bridge_foot_width / 2;
  double rim = rw_draft_value (draft, RW_HEAD_RADIUS),
         top = fmin (rw_hoop_top (draft->result), side->bridge_top);
  double inwards = foot * (1 - BRIDGE_TOP) * (top + side->sag) / (side->bridge_top + side->sag);
  const RwPoint legs[] = { { x - foot + inwards, top },
                           { x - foot, -side->sag },
                           { x + foot, -side->sag },
                           { x + foot - inwards, top } };

  rw_draft_slot (draft, HEAD, RW_BRIDGE_SAG);
  rw_path_begin (draft->sheet, RW_PEN_HIDDEN, RW_TINT_NONE);
  rw_path_move (draft->sheet, -rim, 0);
  for (int i = 1; i < DIP_CHORDS; i++)
    {
      double at = rim * (2.0 * i / DIP_CHORDS - 1);

      rw_path_line (draft->sheet, at, -rw_head_dip (draft->result, at));
    }
  rw_path_line (draft->sheet, rim, 0);
  rw_name (rw_path_end (draft->sheet), N_ ("Head, pressed down by the bridge"), 0);
  if (top > -side->sag)
    rw_name (rw_sheet_polyline (draft->sheet, RW_PEN_HIDDEN, legs, G_N_ELEMENTS (legs)), N_ ("Bridge"), 0);
}

/* A bent plate, from the strings back over the hoop and down to what holds it at the tail. */
#define PLATE 2.2

void
rw_draw_tail_side (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  RwTailPlace tail = rw_tail_place (draft->result);
  double front = design->tailpiece_height,
         over = fmax (rw_hoop_top (draft->result) + 1.2, fmin (front - 1, 12));
  double foot = -rw_across (design).below[0] - 7, bend = 5;
  RwSheet *sheet = draft->sheet;

  rw_draft_param (draft, BRIDGE, tailpiece_height);
  rw_path_begin (sheet, RW_PEN_OUTLINE, RW_TINT_METAL);
  rw_path_move (sheet, tail.front, front - 1.2);
  rw_path_line (sheet, tail.front, front + PLATE - 1.2);
  rw_path_curve (sheet, (RwPoint){ tail.front + 8, front + PLATE }, (RwPoint){ tail.back - 14, over + PLATE },
                 (RwPoint){ tail.back - bend, over + PLATE });
  rw_path_curve (sheet, (RwPoint){ tail.back + PLATE, over + PLATE },
                 (RwPoint){ tail.back + PLATE, over + PLATE }, (RwPoint){ tail.back + PLATE, over - bend });
  rw_path_line (sheet, tail.back + PLATE, foot);
  rw_path_line (sheet, tail.back, foot);
  rw_path_line (sheet, tail.back, over - bend);
  rw_path_curve (sheet, (RwPoint){ tail.back, over }, (RwPoint){ tail.back, over },
                 (RwPoint){ tail.back - bend, over });
  rw_path_curve (sheet, (RwPoint){ tail.back - 14, over }, (RwPoint){ tail.front + 8, front - 1 },
                 (RwPoint){ tail.front, front - 1.2 });
  rw_path_close (sheet);
  rw_name (rw_path_end (sheet), N_ ("Tailpiece"), 0);
}

/* Turns of the string on a post stand this far over the face. */
#define TURNS 8.0

static void
draw_long_string (RwDraft *draft, int string)
{
  const RwDesign *design = draft->design;
  RwPoint nut, behind, post;
  double crown = design->frets_count > 0.5 ? design->frets_crown_height : 0;
  double over = crown + design->nut_string_height + draft->result->side.pull_up;

  nut = rw_place_neck (draft->result, 0, over);
  behind = rw_place_neck (draft->result, -design->nut_thickness, over - 0.6);
  post = rw_place_head_side (draft->result, rw_draft_value (draft, RW_HEADSTOCK_POST_X + string),
                             design->headstock_overlay + TURNS);
  rw_path_begin (draft->sheet, RW_PEN_EDGE, RW_TINT_NONE);
  rw_path_move (draft->sheet, post.x, post.y);
  rw_path_line (draft->sheet, behind.x, behind.y);
  rw_path_line (draft->sheet, nut.x, nut.y);
  rw_path_line (draft->sheet, design->bridge_offset, draft->result->side.bridge_top);
  rw_path_line (draft->sheet, rw_tail_place (draft->result).front, design->tailpiece_height);
  rw_name (rw_path_end (draft->sheet), N_ ("String"), string);
}

static void
draw_short_string (RwDraft *draft, int string)
{
  const RwDesign *design = draft->design;
  double crown = design->frets_count > 0.5 ? design->frets_crown_height : 0;
  RwPoint start
      = rw_place_neck (draft->result, draft->result->plan.short_x, crown + design->fifth_start_height);

  rw_path_begin (draft->sheet, RW_PEN_EDGE, RW_TINT_NONE);
  rw_path_move (draft->sheet, start.x, start.y);
  rw_path_line (draft->sheet, design->bridge_offset, draft->result->side.bridge_top);
  rw_name (rw_path_end (draft->sheet), N_ ("String"), string);
}

void
rw_draw_strings_side (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;

  draw_hidden (draft);
  rw_draft_param (draft, STRINGS, strings_set);
  for (int i = 1; i <= plan->full; i++)
    draw_long_string (draft, i);
  if (plan->has_short)
    draw_short_string (draft, plan->strings);
}
