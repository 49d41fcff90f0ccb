#include "draw_parts.h"

#include <math.h>

#include "table/material.h"

/* Section through the pot at a shoe.  Frame: distance from the rim's axis, height over the head plane.  Bolt,
 * hook and nut lie in the plane of the section and are not hatched. */

#define HATCH 2.4

static double
rim_outer (const RwDraft *draft)
{
  return draft->design->rim_outer_diameter / 2;
}

static double
rim_inner (const RwDraft *draft)
{
  return rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2;
}

static double
wood_top (const RwDraft *draft)
{
  return -draft->design->rim_tone_ring_height;
}

static double
wood_foot (const RwDraft *draft)
{
  return wood_top (draft) - draft->design->rim_height;
}

/* A part cut through. */
static RwItem *
cut_box (RwDraft *draft, RwTint tint, RwBox box, int lean)
{
  const RwPoint corners[]
      = { { box.x0, box.y0 }, { box.x1, box.y0 }, { box.x1, box.y1 }, { box.x0, box.y1 } };

  rw_sheet_polygon (draft->sheet, RW_PEN_NONE, tint, corners, G_N_ELEMENTS (corners));
  rw_hatch (draft, corners, G_N_ELEMENTS (corners), HATCH, lean);
  return rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, corners, G_N_ELEMENTS (corners));
}

/* ---- rim ---- */

/* The bearing edge: a narrow crest, round outside, falling away inside.  With a tone ring the wood is flat.
 */
#define EDGE_FALL 5.0
#define CREST 0.4
#define EDGE_CHORDS 8

static gboolean
is_flat (const RwDraft *draft)
{
  return draft->design->rim_tone_ring_height > 0
         || rim_outer (draft) - draft->design->rim_crest_inset <= rim_inner (draft);
}

/* Inside the crest. */
static double
edge_height (const RwDraft *draft, double r)
{
  double crest = rim_outer (draft) - draft->design->rim_crest_inset,
         width = crest - CREST - rim_inner (draft);
  double fall = fmin (EDGE_FALL, 0.45 * width);

  if (is_flat (draft) || r >= crest - CREST)
    return wood_top (draft);
  return wood_top (draft) - fall * pow ((crest - CREST - r) / width, 1.7);
}

static int
edge_profile (const RwDraft *draft, RwPoint *points)
{
  double outer = rim_outer (draft), inner = rim_inner (draft), top = wood_top (draft);
  double crest = outer - draft->design->rim_crest_inset;
  int count = 0;

  if (is_flat (draft))
    {
      points[count++] = (RwPoint){ inner, top };
      points[count++] = (RwPoint){ outer, top };
      return count;
    }
  for (int i = 0; i <= EDGE_CHORDS; i++)
    {
      double r = inner + (crest - CREST - inner) * i / EDGE_CHORDS;

      points[count++] = (RwPoint){ r, edge_height (draft, r) };
    }
  for (int i = 0; i <= EDGE_CHORDS; i++)
    {
      double t = G_PI_2 * i / EDGE_CHORDS;

      points[count++]
          = (RwPoint){ crest + (outer - crest) * sin (t), top - 1.5 * (outer - crest) * (1 - cos (t)) };
    }
  return count;
}

/* One course, or the whole wall: from a height down to another. */
static void
draw_layer (RwDraft *draft, double top, double foot, RwTint tint, int lean)
{
  RwPoint points[2 * EDGE_CHORDS + 6];
  int count;

  if (top >= wood_top (draft) - 1e-9)
    count = edge_profile (draft, points);
  else
    {
      points[0] = (RwPoint){ rim_inner (draft), top };
      points[1] = (RwPoint){ rim_outer (draft), top };
      count = 2;
    }
  points[count++] = (RwPoint){ rim_outer (draft), foot };
  points[count++] = (RwPoint){ rim_inner (draft), foot };
  rw_sheet_polygon (draft->sheet, RW_PEN_NONE, tint, points, count);
  rw_hatch (draft, points, count, HATCH, lean);
  rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, points, count);
}

static void
draw_plies (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double first = rim_inner (draft) - design->rim_turning_allowance;

  rw_draft_param (draft, RIM, rim_ply_thickness);
  for (int k = 1; k < RW_PLIES_MAX && first + k * design->rim_ply_thickness < rim_outer (draft); k++)
    {
      double r = first + k * design->rim_ply_thickness;

      if (r > rim_inner (draft))
        rw_name (rw_sheet_line (draft->sheet, RW_PEN_EDGE, r, wood_foot (draft), r, edge_height (draft, r)),
                 N_ ("Glue line"), 0);
    }
}

static void
draw_rim (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double top = wood_top (draft);

  rw_draft_param (draft, RIM, rim_wall);
  if (design->rim_construction != RW_RIM_SEGMENTS)
    draw_layer (draft, top, wood_foot (draft), RW_TINT_LIGHT_WOOD, 1);
  if (design->rim_construction == RW_RIM_PLIES)
    draw_plies (draft);
  if (design->rim_construction != RW_RIM_SEGMENTS)
    return;

  rw_draft_param (draft, RIM, rim_course_thickness);
  for (int k = 1; k <= design->rim_course_thickness.count && top > wood_foot (draft) + 1e-9; k++)
    {
      double foot = fmax (top - design->rim_course_thickness.at[k - 1], wood_foot (draft));

      draw_layer (draft, top, foot, rw_course_tint (design, k), k % 2 != 0 ? 1 : -1);
      top = foot;
    }
}

/* A rod, in the wood where it is thicker than the ring is high, else on a carrier; or a plain ring. */
static void
draw_tone_ring (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double height = design->rim_tone_ring_height, rod = design->rim_tone_ring_rod;
  double crest = rim_outer (draft) - design->rim_crest_inset;
  double half = fmax (design->rim_crest_inset, 2);

  if (height <= 0)
    return;
  rw_draft_param (draft, RIM, rim_tone_ring_height);
  if (height - rod > 0.2)
    rw_name (cut_box (draft, RW_TINT_METAL,
                      (RwBox){ fmax (crest - half, rim_inner (draft)), -height,
                               fmin (crest + half, rim_outer (draft)), -rod * 0.9 },
                      -1),
             N_ ("Tone ring"), 0);
  rw_draft_param (draft, RIM, rim_tone_ring_rod);
  if (rod > 0)
    rw_name (rw_sheet_circle (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, crest, -rod / 2, rod / 2),
             N_ ("Rod of the tone ring"), 0);
}

/* ---- head and hoop ---- */

/* So much of the head is shown inwards of the rim. */
#define HEAD_SHOWN 26.0

static void
draw_head (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double crest = rim_outer (draft) - design->rim_crest_inset, face = rw_hoop_bottom (draft->result);
  double down = design->head_nominal / 2 + 0.15;

  rw_draft_param (draft, HEAD, head_collar);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE);
  rw_path_move (draft->sheet, rim_inner (draft) - HEAD_SHOWN, 0);
  rw_path_line (draft->sheet, crest, 0);
  rw_path_curve (draft->sheet, (RwPoint){ down - 0.2, 0 }, (RwPoint){ down, -0.5 }, (RwPoint){ down, -2.5 });
  rw_path_line (draft->sheet, down, face - design->head_band / 2);
  rw_name (rw_path_end (draft->sheet), N_ ("Head"), 0);

  rw_draft_param (draft, HEAD, head_band);
  rw_name (cut_box (draft, RW_TINT_METAL,
                    (RwBox){ design->head_nominal / 2, face - design->head_band,
                             design->head_nominal / 2 + design->head_band, face },
                    1),
           N_ ("Head band"), 0);
}

/* Cut through a notch: solid up to the seat, and the notch's flank above it. */
static void
draw_hoop (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double inner = rw_draft_value (draft, RW_HOOP_BORE) / 2,
         outer = rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) / 2;
  double top = rw_hoop_top (draft->result), face = rw_hoop_bottom (draft->result);
  double seat = fmax (top - design->hoop_notch_depth, face);
  double round = fmin (fmin (design->hoop_edge_round, outer - inner), seat - face);
  RwPoint points[EDGE_CHORDS + 4] = { { inner, seat }, { inner, face }, { outer, face } };
  int count = 3;

  for (int i = 0; i <= EDGE_CHORDS; i++)
    {
      double t = G_PI_2 * i / EDGE_CHORDS;

      points[count++] = (RwPoint){ outer - round * (1 - cos (t)), seat - round * (1 - sin (t)) };
    }
  rw_draft_param (draft, HOOP, hoop_notch_depth);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, inner, seat - round, outer, top),
           design->hoop_seat == RW_SEAT_GROOVE ? N_ ("Groove for the hooks") : N_ ("Notch"), 0);
  rw_draft_param (draft, HOOP, hoop_thickness);
  rw_sheet_polygon (draft->sheet, RW_PEN_NONE, RW_TINT_METAL, points, count);
  rw_hatch (draft, points, count, HATCH * 0.6, -1);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, points, count), N_ ("Tension hoop"),
           0);
}

/* ---- shoe, bolt, hook, nut ---- */

static void
draw_shoe (RwDraft *draft, const RwHookPlace *hook)
{
  double hole = draft->design->hooks_rod / 2 + 0.3;
  const RwBox parts[]
      = { { rim_outer (draft), hook->shoe_bottom, hook->foot_radius - hole, hook->shoe_top },
          { hook->foot_radius + hole, hook->shoe_bottom, hook->shoe_radius, hook->shoe_top } };

  rw_draft_param (draft, HOOKS, shoes_height);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, rim_outer (draft), hook->shoe_bottom,
                         hook->shoe_radius, hook->shoe_top),
           N_ ("Shoe"), 0);
  for (int i = 0; i < 2; i++)
    rw_name (cut_box (draft, RW_TINT_METAL, parts[i], 1), N_ ("Shoe"), 0);
}

/* Washer and head of the shoe's bolt, inside. */
#define WASHER 1.2
#define BOLT_HEAD 3.2
#define TIP_ROOM 0.6

static void
draw_bolt (RwDraft *draft, const RwHookPlace *hook)
{
  const RwDesign *design = draft->design;
  double axis = -design->shoes_below_edge, hole = design->shoes_bolt_hole / 2,
         shank = rw_threads[design->shoes_thread].major_mm / 2;
  double inner = rim_inner (draft), outer = rim_outer (draft);
  double tip = fmax (hook->foot_radius - design->hooks_rod / 2 - TIP_ROOM, outer);

  rw_draft_param (draft, HOOKS, shoes_bolt_hole);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_EDGE, RW_TINT_PAPER, inner, axis - hole, outer, axis + hole),
           N_ ("Bolt hole"), 0);
  rw_draft_param (draft, HOOKS, shoes_thread);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, inner - WASHER, axis - shank, tip,
                         axis + shank),
           N_ ("Shoe bolt"), 0);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, inner - WASHER, axis - 2.6 * shank,
                         inner, axis + 2.6 * shank),
           N_ ("Washer"), 0);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, inner - WASHER - BOLT_HEAD,
                         axis - 1.8 * shank, inner - WASHER, axis + 1.8 * shank),
           N_ ("Shoe bolt"), 0);
}

/* The rod's outline: along the claw, round the bend, down the leg, which may lean. */
static void
draw_hook (RwDraft *draft, const RwHookPlace *hook)
{
  const RwDesign *design = draft->design;
  double rod = design->hooks_rod / 2, top = hook->top_radius, z = hook->claw;
  double bend = fmax (fmin (design->hooks_bend_radius, design->hooks_claw - rod - 0.5), 0.2),
         turn = bend + rod;
  double lean = (hook->foot_radius - top) / (z + design->shoes_below_edge),
         end = top + lean * (z - hook->end);
  RwPoint centre = { top - turn, z - turn };

  rw_draft_slot (draft, HOOKS, RW_HOOKS_LEG);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL);
  rw_path_move (draft->sheet, top - design->hooks_claw, z + rod);
  rw_path_arc (draft->sheet, centre, turn + rod, G_PI_2, 0);
  rw_path_line (draft->sheet, end + rod, hook->end);
  rw_path_line (draft->sheet, end - rod, hook->end);
  rw_path_arc (draft->sheet, centre, bend, 0, G_PI_2);
  rw_path_line (draft->sheet, top - design->hooks_claw, z - rod);
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Hook"), 0);
}

/* A thread is shown by its core (ISO 6410-1), here of the leg below the shoe. */
static void
draw_nut (RwDraft *draft, const RwHookPlace *hook)
{
  const RwDesign *design = draft->design;
  const RwThread *thread = &rw_threads[design->hooks_thread];
  double core = (thread->major_mm - 1.2269 * thread->pitch_mm) / 2, half = 0.82 * design->hooks_rod;
  double r = hook->foot_radius;

  rw_draft_param (draft, HOOKS, hooks_thread);
  for (int side = -1; side <= 1; side += 2)
    rw_sheet_line (draft->sheet, RW_PEN_EDGE, r + side * core, hook->end, r + side * core, hook->shoe_bottom);
  rw_draft_param (draft, HOOKS, hooks_nut_height);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, r - half, hook->nut_bottom, r + half,
                         hook->shoe_bottom),
           N_ ("Hook nut"), 0);
  rw_sheet_line (draft->sheet, RW_PEN_EDGE, r - half / 2, hook->nut_bottom, r - half / 2, hook->shoe_bottom);
  rw_sheet_line (draft->sheet, RW_PEN_EDGE, r + half / 2, hook->nut_bottom, r + half / 2, hook->shoe_bottom);
}

/* ---- dimensions ---- */

static void
inside_sizes (RwDraft *draft)
{
  double inner = rim_inner (draft), outer = rim_outer (draft), top = wood_top (draft),
         foot = wood_foot (draft);
  double bolt = -draft->design->shoes_below_edge, left = inner - WASHER - BOLT_HEAD;

  rw_span_param (draft, RW_P_rim_wall,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, { inner, foot }, { outer, foot }, -9, 1, NULL });
  rw_span_param (draft, RW_P_rim_height,
                 (RwSpan){ RW_MEASURE_VERTICAL, { inner, foot }, { left, top }, -16, 1, NULL });
  rw_span_slot (draft, RW_SHOES_HOLE_BELOW_EDGE,
                (RwSpan){ RW_MEASURE_VERTICAL, { left, bolt }, { left, top }, -8, 1, NULL });
  rw_note_param (draft, RW_P_shoes_bolt_hole,
                 (RwNote){ { inner + 3, bolt - draft->design->shoes_bolt_hole / 2 },
                           { inner - 12, bolt - 11 },
                           3,
                           N_ ("bolt hole ⌀ %s") });
  if (top < 0)
    rw_span_param (draft, RW_P_rim_tone_ring_height,
                   (RwSpan){ RW_MEASURE_VERTICAL, { left, top }, { left, 0 }, -8, 2, NULL });
}

static void
top_sizes (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double outer = rim_outer (draft), inner = rw_draft_value (draft, RW_HOOP_BORE) / 2,
         hoop = rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) / 2;
  double top = rw_hoop_top (draft->result), face = rw_hoop_bottom (draft->result);
  RwHookPlace hook = rw_hook_place (draft->result);

  rw_span_param (
      draft, RW_P_rim_crest_inset,
      (RwSpan){ RW_MEASURE_HORIZONTAL, { outer - design->rim_crest_inset, 0 }, { outer, 0 }, 12, 2, NULL });
  rw_span_param (draft, RW_P_hoop_thickness,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, { inner, top }, { hoop, top }, 19, 2, NULL });
  rw_span_slot (draft, RW_HOOP_OVERLAP,
                (RwSpan){ RW_MEASURE_HORIZONTAL,
                          { inner, face },
                          { design->head_nominal / 2 + design->head_band, face - 1 },
                          -6,
                          4,
                          NULL });
  rw_span_slot (draft, RW_HOOP_TOP_OVER_HEAD,
                (RwSpan){ RW_MEASURE_VERTICAL, { rim_inner (draft) - 4, 0 }, { inner, top }, -2, 1, NULL });
  rw_span_param (
      draft, RW_P_hoop_height,
      (RwSpan){ RW_MEASURE_VERTICAL, { hook.shoe_radius, face }, { hook.shoe_radius, top }, 29, 1, NULL });
}

static void
outside_sizes (RwDraft *draft)
{
  double outer = rim_outer (draft), foot = wood_foot (draft);
  RwHookPlace hook = rw_hook_place (draft->result);
  double right = hook.shoe_radius, contact = -draft->design->head_collar,
         face = rw_hoop_bottom (draft->result);

  rw_span_slot (draft, RW_HOOKS_LEG,
                (RwSpan){ RW_MEASURE_VERTICAL, { right, hook.end }, { right, hook.claw }, 22, 1, NULL });
  rw_span_param (draft, RW_P_head_collar,
                 (RwSpan){ RW_MEASURE_VERTICAL, { right, contact }, { right, 0 }, 9, 2, NULL });
  rw_span_param (draft, RW_P_hoop_travel,
                 (RwSpan){ RW_MEASURE_VERTICAL, { right, face }, { right, contact }, 9, 3, NULL });
  rw_span_param (
      draft, RW_P_shoes_height,
      (RwSpan){ RW_MEASURE_VERTICAL, { right, hook.shoe_bottom }, { right, hook.shoe_top }, 9, 2, NULL });
  rw_span_param (
      draft, RW_P_hooks_nut_height,
      (RwSpan){ RW_MEASURE_VERTICAL, { right, hook.nut_bottom }, { right, hook.shoe_bottom }, 9, 3, NULL });
  rw_span_slot (draft, RW_HOOKS_TIP_OVER_BACK,
                (RwSpan){ RW_MEASURE_VERTICAL, { right, foot }, { right, hook.end }, 9, 2, NULL });
  rw_span_param (
      draft, RW_P_shoes_stand_off,
      (RwSpan){
          RW_MEASURE_HORIZONTAL, { outer, foot }, { hook.foot_radius, fmin (hook.end, foot) }, -9, 2, NULL });
}

void
rw_draw_pot (RwDraft *draft)
{
  RwHookPlace hook = rw_hook_place (draft->result);

  draw_rim (draft);
  draw_tone_ring (draft);
  draw_shoe (draft, &hook);
  draw_bolt (draft, &hook);
  draw_head (draft);
  draw_hoop (draft);
  draw_hook (draft, &hook);
  draw_nut (draft, &hook);

  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, rim_inner (draft) - HEAD_SHOWN,
                          -draft->design->shoes_below_edge, hook.shoe_radius + 8,
                          -draft->design->shoes_below_edge),
           N_ ("Axis of the bolt"), 0);
  inside_sizes (draft);
  top_sizes (draft);
  outside_sizes (draft);
}
