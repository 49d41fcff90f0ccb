#include "draw_parts.h"

#include <math.h>

/* The headstock: its face unfolded, posts, strings with their bends; and below it from the side. */

static RwPoint
flat (double u, double v)
{
  return (RwPoint){ -u, v };
}

/* The neck goes on to the right of the nut for this much. */
#define NECK_SHOWN 26.0

/* From the frame of the axis to this view, whose origin is at the nut's back face. */
static RwPoint
map_neck (const RwResult *result, double x, double y)
{
  RwPoint p = rw_map_board (result, x, y);

  return (RwPoint){ p.x + result->used.nut_thickness, p.y };
}

static void
draw_neck_piece (RwDraft *draft)
{
  RwPoint ends[2][2];
  const double places[] = { -draft->design->nut_thickness, 0, NECK_SHOWN };
  const RwTint tints[] = { RW_TINT_BONE, RW_TINT_DARK_WOOD };

  for (int i = 0; i < 2; i++)
    {
      for (int k = 0; k < 2; k++)
        rw_place_across (draft->result, places[i + k], 0, &ends[k][0], &ends[k][1]);
      const RwPoint corners[] = {
        map_neck (draft->result, ends[0][0].x, ends[0][0].y),
        map_neck (draft->result, ends[0][1].x, ends[0][1].y),
        map_neck (draft->result, ends[1][1].x, ends[1][1].y),
        map_neck (draft->result, ends[1][0].x, ends[1][0].y),
      };

      rw_draft_set (draft, RW_LAYER_FRETBOARD,
                    i == 0 ? RW_SUBJECT_PARAM (nut_thickness) : RW_SUBJECT_PARAM (nut_width));
      rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, tints[i], corners, 4),
               i == 0 ? N_ ("Nut") : N_ ("Fretboard"), 0);
    }
}

static RwPoint
post (const RwDraft *draft, int string)
{
  return flat (rw_draft_value (draft, RW_HEADSTOCK_POST_X + string),
               rw_draft_value (draft, RW_HEADSTOCK_POST_Y + string));
}

/* Where the string leaves the nut's back face, and where it comes from. */
static RwPoint
over_nut (const RwDraft *draft, int string, double x)
{
  return map_neck (draft->result, x, rw_plan_string_y (&draft->result->plan, string, x));
}

static void
draw_string (RwDraft *draft, int string)
{
  RwPoint at = post (draft, string), nut = over_nut (draft, string, -draft->design->nut_thickness);
  RwPoint from = over_nut (draft, string, NECK_SHOWN);

  rw_draft_slot (draft, STRINGS, RW_HEADSTOCK_BEND + string);
  rw_path_begin (draft->sheet, RW_PEN_EDGE, RW_TINT_NONE);
  rw_path_move (draft->sheet, from.x, from.y);
  rw_path_line (draft->sheet, nut.x, nut.y);
  rw_path_line (draft->sheet, at.x, at.y);
  rw_name (rw_path_end (draft->sheet), N_ ("String"), string);
}

/* The bend is told beside the string's run to its post: those of the inner strings nearer to the axis and farther to
 * the right than those of the outer ones, so that no line crosses another. */
static void
bend_note (RwDraft *draft, int string)
{
  int full = draft->result->plan.full;
  gboolean inner = string > 1 && string < full;
  RwPoint at = post (draft, string), nut = over_nut (draft, string, -draft->design->nut_thickness);
  RwPoint on = { nut.x + (at.x - nut.x) * 0.25, nut.y + (at.y - nut.y) * 0.25 };
  double half = fmax (draft->design->headstock_width, draft->design->nut_width) / 2;
  double side = 2 * string > full + 1 ? -1 : 1;
  RwPoint words = { inner ? 0.62 * half : 0.24 * half, side * (inner ? 0.62 : 0.92) * half };

  rw_note_slot (draft, RW_HEADSTOCK_BEND + string, (RwNote){ on, words, 2, N_ ("bend %s") });
}

/* ---- dimensions of the face ---- */

static void
along_sizes (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double half = fmax (design->headstock_width, design->nut_width) / 2, last = 0;
  int row = 0;

  for (int i = draft->result->plan.full; i >= 1; i--)
    {
      double u = rw_draft_value (draft, RW_HEADSTOCK_POST_X + i),
             v = rw_draft_value (draft, RW_HEADSTOCK_POST_Y + i);

      if (!(v < 0) || !(u > last + 0.01))
        continue;
      rw_lead_out (draft, flat (u, v - design->headstock_button / 2), flat (u, -half - 2));
      rw_span_slot (draft, RW_HEADSTOCK_POST_X + i,
                    (RwSpan){ RW_MEASURE_HORIZONTAL, flat (u, -half), flat (0, -half), -8 * ++row, 1, NULL });
      last = u;
    }
  rw_lead_out (draft, flat (0, -design->nut_width / 2), flat (0, -half - 2));
  rw_span_param (draft, RW_P_headstock_length,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, flat (design->headstock_length, -half), flat (0, -half),
                           -8 * (row + 1), 1, NULL });
}

static void
across_sizes (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  int full = draft->result->plan.full, last = full / 2;
  double half = design->headstock_width / 2, widest = 0.85 * design->headstock_length;
  RwPoint first[2] = { post (draft, full), post (draft, 1) };
  RwPoint far[2] = { post (draft, full + 1 - last), post (draft, last) };

  rw_span_param (draft, RW_P_headstock_width,
                 (RwSpan){ RW_MEASURE_VERTICAL, flat (widest, -half), flat (widest, half), -16, 1, NULL });
  rw_span_param (draft, RW_P_headstock_post_across_first,
                 (RwSpan){ RW_MEASURE_VERTICAL, first[0], first[1], -7, 2, NULL });
  if (last > 1)
    rw_span_param (draft, RW_P_headstock_post_across_last,
                   (RwSpan){ RW_MEASURE_VERTICAL, far[0], far[1], -7, 2, NULL });
  rw_note_param (draft, RW_P_headstock_post_hole,
                 (RwNote){ { far[1].x + 0.35 * design->headstock_post_hole,
                             far[1].y + 0.35 * design->headstock_post_hole },
                           { far[1].x - 14, half + 10 },
                           2,
                           N_ ("hole ⌀ %s") });
  rw_note_param (
      draft, RW_P_headstock_button,
      (RwNote){ { far[1].x - 0.35 * design->headstock_button, far[1].y + 0.35 * design->headstock_button },
                { far[1].x - 34, half + 10 },
                3,
                N_ ("button ⌀ %s") });
}

void
rw_draw_head_face (RwDraft *draft)
{
  int full = draft->result->plan.full;

  rw_draw_head_outline (draft, rw_map_head_flat);
  rw_draw_ears (draft);
  draw_neck_piece (draft);
  for (int i = 1; i <= draft->result->plan.strings; i++)
    if (i <= full || draft->design->fifth_route == RW_ROUTE_TUNNEL)
      draw_string (draft, i);
  rw_draw_posts (draft, rw_map_head_flat);
  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, -draft->design->headstock_length - 8, 0,
                          draft->design->nut_thickness + NECK_SHOWN + 8, 0),
           N_ ("Centre line of the neck"), 0);
  along_sizes (draft);
  across_sizes (draft);
  for (int i = 1; i <= full; i++)
    bend_note (draft, i);
}

/* ---- from the side, the headstock lying level ---- */

#define SIDE_BELOW 62.0
#define SIDE_NECK 70.0

static double
side_level (const RwDraft *draft)
{
  return -fmax (draft->design->headstock_width, draft->design->nut_width) / 2 - SIDE_BELOW;
}

static RwPoint
on_head (const RwDraft *draft, double u, double over)
{
  return (RwPoint){ -u, side_level (draft) + over };
}

/* From the nut line along the board, over its surface. */
static RwPoint
on_neck (const RwDraft *draft, double x, double over)
{
  double tilt = draft->design->headstock_angle * G_PI / 180;
  double dx = x + draft->design->nut_thickness, dy = over + draft->design->fretboard_thickness;

  return (RwPoint){ dx * cos (tilt) + dy * sin (tilt),
                    side_level (draft) - dx * sin (tilt) + dy * cos (tilt) };
}

static RwPoint
on_back (const RwDraft *draft, double x)
{
  return on_neck (draft, x, -rw_neck_thickness (draft->result, x));
}

static void
path_to (RwDraft *draft, RwPoint p)
{
  rw_path_line (draft->sheet, p.x, p.y);
}

static void
draw_side_wood (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double back = design->headstock_overlay - design->headstock_thickness, length = design->headstock_length;
  RwPoint start = on_neck (draft, -design->nut_thickness, -design->fretboard_thickness);

  rw_draft_param (draft, HEADSTOCK, headstock_thickness);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD);
  rw_path_move (draft->sheet, start.x, start.y);
  path_to (draft, on_neck (draft, SIDE_NECK, -design->fretboard_thickness));
  path_to (draft, on_back (draft, SIDE_NECK));
  path_to (draft, on_back (draft, RW_HOLLOW_NECK));
  rw_path_curve (draft->sheet, on_back (draft, 0), on_head (draft, RW_HOLLOW_HEAD * 0.25, back),
                 on_head (draft, fmin (RW_HOLLOW_HEAD, length), back));
  path_to (draft, on_head (draft, length, back));
  path_to (draft, on_head (draft, length, 0));
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Headstock"), 0);
}

static void
draw_side_facings (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double over = design->headstock_overlay, mitre = over * tan (design->headstock_angle * G_PI / 180);
  double glue = -design->fretboard_thickness, behind = -design->nut_thickness,
         top = design->frets_crown_height + 1;
  const RwPoint overlay[]
      = { on_head (draft, 0, 0), on_head (draft, -mitre, over),
          on_head (draft, design->headstock_length, over), on_head (draft, design->headstock_length, 0) };
  const RwPoint board[] = { on_neck (draft, 0, glue), on_neck (draft, 0, 0), on_neck (draft, SIDE_NECK, 0),
                            on_neck (draft, SIDE_NECK, glue) };
  const RwPoint nut[] = { on_neck (draft, behind, glue), on_neck (draft, behind, top - 0.8),
                          on_neck (draft, 0, top), on_neck (draft, 0, glue) };

  rw_draft_param (draft, HEADSTOCK, headstock_overlay);
  if (over > 0)
    rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_DARK_WOOD, overlay, 4), N_ ("Overlay"),
             0);
  rw_draft_param (draft, FRETBOARD, fretboard_thickness);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_DARK_WOOD, board, 4), N_ ("Fretboard"), 0);
  rw_draft_param (draft, FRETBOARD, nut_thickness);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_BONE, nut, 4), N_ ("Nut"), 0);
}

static void
side_sizes (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double back = design->headstock_overlay - design->headstock_thickness, length = design->headstock_length;
  double tilt = design->headstock_angle * G_PI / 180, reach = SIDE_NECK * 0.9;
  RwPoint pivot = on_head (draft, 0, 0);

  rw_span_param (draft, RW_P_headstock_thickness,
                 (RwSpan){ RW_MEASURE_VERTICAL, on_head (draft, length, back),
                           on_head (draft, length, design->headstock_overlay), -8, 1, NULL });
  rw_note_param (draft, RW_P_headstock_overlay,
                 (RwNote){ on_head (draft, length * 0.8, design->headstock_overlay / 2),
                           on_head (draft, length * 0.8 - 12, design->headstock_overlay + 18), 2,
                           N_ ("overlay %s") });
  rw_lead_out (draft, pivot, (RwPoint){ pivot.x + reach + 8, pivot.y });
  rw_sweep_param (draft, RW_P_headstock_angle, (RwSweep){ pivot, reach, -tilt, 0, 1, N_ ("headstock %s") });
}

void
rw_draw_headstock (RwDraft *draft)
{
  rw_draw_head_face (draft);
  if (draft->design->build_handed == RW_HANDED_LEFT)
    rw_sheet_mirror (draft->sheet, 0);
  draw_side_wood (draft);
  draw_side_facings (draft);
  side_sizes (draft);
}
