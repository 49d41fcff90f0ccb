#include "draw_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* A rim of bent plies: the rings with their scarfs, and the wall enlarged. */

static int
plies (const RwDraft *draft)
{
  double count = rw_draft_value (draft, RW_RIM_PLY_COUNT);

  return isfinite (count) ? (int)CLAMP (count, 0, RW_PLIES_MAX) : 0;
}

/* Inside of ply k, counted from 1. */
static double
ply_radius (const RwDraft *draft, int k)
{
  return rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2 - draft->design->rim_turning_allowance
         + (k - 1) * draft->design->rim_ply_thickness;
}

/* From one ply to the next the scarf moves on by about 137.5 degrees, so that no two come near each other. */
static double
scarf_angle (int k)
{
  return k * G_PI * (3 - sqrt (5));
}

static void
draw_ply (RwDraft *draft, int k)
{
  double inner = ply_radius (draft, k), outer = ply_radius (draft, k + 1);
  double half = draft->design->rim_ply_scarf / (inner + outer), angle = scarf_angle (k);
  RwPoint from = rw_place_round (angle - half, inner, 0), to = rw_place_round (angle + half, outer, 0);

  rw_draft_slot (draft, RIM, RW_RIM_PLY_LENGTH + k);
  rw_name (rw_ring (draft, RW_PEN_EDGE, k % 2 != 0 ? RW_TINT_LIGHT_WOOD : RW_TINT_DARK_WOOD,
                    (RwPoint){ 0, 0 }, outer, inner),
           N_ ("Ply"), k);
  rw_draft_param (draft, RIM, rim_ply_scarf);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_OUTLINE, from.x, from.y, to.x, to.y), N_ ("Scarf"), k);
}

static void
ply_note (RwDraft *draft, int ply, RwPoint arrow, RwPoint text)
{
  g_autofree char *words = g_strdup_printf (_("ply %d: %%s"), ply);

  rw_note_slot (draft, RW_RIM_PLY_LENGTH + ply, (RwNote){ arrow, text, 2, words });
}

static void
ring_sizes (RwDraft *draft)
{
  int count = plies (draft);
  double outer = draft->design->rim_outer_diameter / 2,
         inner = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2;
  RwPoint at = rw_place_round (0.75 * G_PI, outer, 0), in = rw_place_round (0.75 * G_PI, inner, 0);
  RwPoint first = rw_place_round (0.3 * G_PI, ply_radius (draft, 1), 0);
  RwPoint last = rw_place_round (0.3 * G_PI, ply_radius (draft, count + 1), 0);
  RwPoint scarf = rw_place_round (scarf_angle (count), ply_radius (draft, count + 1), 0);

  rw_note_param (draft, RW_P_rim_outer_diameter,
                 (RwNote){ at, { at.x + 36, at.y + 28 }, 1, N_ ("outside ⌀ %s") });
  rw_note_slot (draft, RW_RIM_INNER_DIAMETER, (RwNote){ in, { in.x - 34, in.y - 26 }, 1, N_ ("inside ⌀ %s") });
  ply_note (draft, 1, first, (RwPoint){ first.x + 30, first.y - 26 });
  if (count > 1)
    ply_note (draft, count, last, (RwPoint){ last.x - 26, last.y + 30 });
  rw_note_param (draft, RW_P_rim_ply_scarf,
                 (RwNote){ scarf, { scarf.x * 1.18, scarf.y * 1.18 }, 3, N_ ("scarf %s") });
}

/* The wall on the right, its plies upright as they stand on the neck side. */
#define WALL_SCALE_GAP 60.0

static void
draw_wall (RwDraft *draft, double left)
{
  const RwDesign *design = draft->design;
  double origin = left - ply_radius (draft, 1), half = design->rim_height / 2;
  double faces[] = { rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2 + origin,
                     design->rim_outer_diameter / 2 + origin };
  int count = plies (draft);

  for (int k = 1; k <= count; k++)
    {
      rw_draft_param (draft, RIM, rim_ply_thickness);
      rw_name (rw_sheet_box (draft->sheet, RW_PEN_EDGE, k % 2 != 0 ? RW_TINT_LIGHT_WOOD : RW_TINT_DARK_WOOD,
                             ply_radius (draft, k) + origin, -half, ply_radius (draft, k + 1) + origin, half),
               N_ ("Ply"), k);
    }
  rw_draft_param (draft, RIM, rim_wall);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, faces[0], -half, faces[1], half),
           N_ ("Wall as turned"), 0);
  rw_span_param (draft, RW_P_rim_wall,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, { faces[0], half }, { faces[1], half }, 8, 1, NULL });
  rw_span_param (draft, RW_P_rim_ply_thickness,
                 (RwSpan){ RW_MEASURE_HORIZONTAL,
                           { ply_radius (draft, 1) + origin, -half },
                           { ply_radius (draft, 2) + origin, -half },
                           -8,
                           2,
                           NULL });
  rw_span_param (draft, RW_P_rim_height,
                 (RwSpan){ RW_MEASURE_VERTICAL,
                           { ply_radius (draft, count + 1) + origin, -half },
                           { ply_radius (draft, count + 1) + origin, half },
                           8,
                           1,
                           NULL });
}

void
rw_draw_plies (RwDraft *draft)
{
  int count = plies (draft);
  double reach = ply_radius (draft, count + 1), outer = draft->design->rim_outer_diameter / 2;

  for (int k = 1; k <= count; k++)
    draw_ply (draft, k);
  rw_draft_param (draft, RIM, rim_outer_diameter);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, 0, 0, outer),
           N_ ("Outside as turned"), 0);
  rw_draft_param (draft, RIM, rim_wall);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, 0, 0,
                            rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2),
           N_ ("Inside as turned"), 0);
  ring_sizes (draft);
  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_cross (draft, (RwPoint){ 0, 0 }, reach + 10);
  if (draft->design->build_handed == RW_HANDED_LEFT)
    rw_sheet_mirror (draft->sheet, 0);
  draw_wall (draft, reach + WALL_SCALE_GAP);
}
