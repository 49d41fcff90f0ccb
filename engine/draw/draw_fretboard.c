#include "draw_parts.h"

#include <math.h>

/* The fretboard alone, its centre line level: slots, their numbers and places from the nut, and its edge. */

/* ---- places from the nut ---- */

/* Running dimensions: the figure stands upright at the end of its line. */
#define RUN_OUT 13.0

static double
run_level (const RwDraft *draft)
{
  double end = rw_draft_value (draft, RW_NECK_BOARD_LENGTH);

  return fmax (rw_map_board (draft->result, end, rw_plan_treble (&draft->result->plan, end)).y,
               draft->design->nut_width / 2)
         + RUN_OUT;
}

static void
draw_run (RwDraft *draft, int fret)
{
  RwPoint bass, treble, edge;
  RwItem *item;

  /* Of a fret in pieces, the one at the treble edge; the paper has a table of all. */
  rw_place_across (draft->result, rw_slot_place (draft->result, 1, fret), 0, &bass, &treble);
  edge = rw_map_board (draft->result, treble.x, treble.y);
  rw_lead_out (draft, (RwPoint){ edge.x, edge.y + 1.5 }, (RwPoint){ edge.x, run_level (draft) });
  item = rw_figure_slot (draft, rw_slot_row (draft->result, fret), (RwPoint){ edge.x, run_level (draft) + 1.5 },
                         RW_ALIGN_START);
  item->turn = G_PI_2;
  item->offset_mm = -rw_letters_size (RW_LETTERS_SMALL) / 2;
}

/* Where they are counted from: a small ring (ISO 129-1). */
static void
draw_origin (RwDraft *draft)
{
  double level = run_level (draft);

  rw_lead_out (draft, (RwPoint){ 0, draft->design->nut_width / 2 + 1.5 }, (RwPoint){ 0, level });
  rw_sheet_circle (draft->sheet, RW_PEN_CONSTRUCTION, RW_TINT_PAPER, 0, level, 1.2);
}

/* ---- board ---- */

static void
draw_piece (RwDraft *draft, int fret, const RwSlotPiece *piece)
{
  double half = draft->design->frets_slot_width / 2;
  RwPoint bass[2], treble[2];

  rw_place_piece (draft->result, piece, -half, 0, &bass[0], &treble[0]);
  rw_place_piece (draft->result, piece, half, 0, &bass[1], &treble[1]);
  const RwPoint corners[] = {
    rw_map_board (draft->result, bass[0].x, bass[0].y),
    rw_map_board (draft->result, treble[0].x, treble[0].y),
    rw_map_board (draft->result, treble[1].x, treble[1].y),
    rw_map_board (draft->result, bass[1].x, bass[1].y),
  };
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_EDGE, RW_TINT_PAPER, corners, 4), N_ ("Fret"), fret);
}

static void
draw_slot (RwDraft *draft, int fret)
{
  RwSlotPiece pieces[RW_STRINGS_MAX];
  int count = rw_slot_pieces (draft->result, fret, pieces);

  for (int i = 0; i < count; i++)
    {
      RwSlot own = RW_SLOT2 (RW_FRETS_SLOT, pieces[i].first, fret);

      rw_draft_slot (draft, FRETBOARD, count > 1 ? own : rw_slot_row (draft->result, fret));
      draw_piece (draft, fret, &pieces[i]);
    }
}

static void
draw_short_start (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;
  RwPoint at = rw_map_board (draft->result, plan->short_x, plan->short_y);

  rw_draft_param (draft, FRETBOARD, fifth_spacing);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_EDGE, RW_TINT_BONE, at.x, at.y, 1.4),
           N_ ("Short string's nut"), 0);
}

/* ---- edge ---- */

#define EDGE_BELOW 44.0

static void
draw_edge (RwDraft *draft, double top)
{
  const RwDesign *design = draft->design;
  double end = rw_draft_value (draft, RW_NECK_BOARD_LENGTH), foot = top - design->fretboard_thickness;
  double half = design->frets_slot_width / 2, depth = rw_draft_value (draft, RW_FRETS_SLOT_DEPTH);
  const RwPlan *plan = &draft->result->plan;
  double first = rw_slot_bass (draft->result, 1);

  rw_draft_param (draft, FRETBOARD, fretboard_thickness);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_DARK_WOOD, 0, foot, end, top),
           N_ ("Fretboard"), 0);
  rw_draft_slot (draft, FRETBOARD, RW_FRETS_SLOT_DEPTH);
  for (int fret = 1; fret <= plan->last && plan->fret_x[fret] < end; fret++)
    {
      double place = rw_slot_bass (draft->result, fret);

      rw_name (rw_sheet_box (draft->sheet, RW_PEN_EDGE, RW_TINT_PAPER, place - half, top - depth, place + half, top),
               N_ ("Slot"), fret);
    }
  rw_span_param (draft, RW_P_fretboard_thickness,
                 (RwSpan){ RW_MEASURE_VERTICAL, { 0, foot }, { 0, top }, -7, 1, NULL });
  rw_span_slot (draft, RW_FRETS_SLOT_DEPTH,
                (RwSpan){ RW_MEASURE_VERTICAL, { first, top - depth }, { first, top }, 10, 2, NULL });
  rw_span_slot (draft, RW_NECK_BOARD_LENGTH,
                (RwSpan){ RW_MEASURE_HORIZONTAL, { 0, foot }, { end, foot }, -8, 1, NULL });
}

/* ---- dimensions ---- */

static void
draw_widths (RwDraft *draft)
{
  double end = rw_draft_value (draft, RW_NECK_BOARD_LENGTH);
  RwPoint nut[2], last[2];

  rw_place_across (draft->result, 0, 0, &nut[0], &nut[1]);
  rw_place_across (draft->result, end, 0, &last[0], &last[1]);
  for (int i = 0; i < 2; i++)
    {
      nut[i] = rw_map_board (draft->result, nut[i].x, nut[i].y);
      last[i] = rw_map_board (draft->result, last[i].x, last[i].y);
    }
  rw_span_param (draft, RW_P_nut_width, (RwSpan){ RW_MEASURE_VERTICAL, nut[0], nut[1], -8, 1, NULL });
  rw_span_slot (draft, RW_NECK_WIDTH_AT_END, (RwSpan){ RW_MEASURE_VERTICAL, last[0], last[1], 8, 1, NULL });
}

static void
draw_shoulder (RwDraft *draft, double level)
{
  const RwPlan *plan = &draft->result->plan;
  RwPoint from = { plan->shoulder_from, level }, to = { plan->shoulder_to, level },
          start = { plan->short_x, level };

  rw_span_param (draft, RW_P_fifth_shoulder_length, (RwSpan){ RW_MEASURE_HORIZONTAL, from, to, -7, 2, NULL });
  rw_span_param (draft, RW_P_fifth_shoulder, (RwSpan){ RW_MEASURE_HORIZONTAL, to, start, -7, 2, NULL });
  if (draft->design->fifth_route == RW_ROUTE_SIDE_PEG)
    rw_span_param (draft, RW_P_fifth_peg_distance,
                   (RwSpan){ RW_MEASURE_HORIZONTAL,
                             { plan->short_x - draft->design->fifth_peg_distance, level },
                             start,
                             -14,
                             3,
                             NULL });
}

void
rw_draw_fretboard (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;
  double end = rw_draft_value (draft, RW_NECK_BOARD_LENGTH);
  double low
      = fmin (rw_map_board (draft->result, end, rw_plan_bass (plan, end)).y, -draft->design->nut_width / 2);

  rw_draw_board (draft, rw_map_board);
  for (int fret = 1; fret <= plan->last && plan->fret_x[fret] < end; fret++)
    {
      draw_slot (draft, fret);
      rw_draw_fret_number (draft, fret, rw_map_board, 3);
      draw_run (draft, fret);
    }
  draw_origin (draft);
  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, -8, 0, end + 8, 0), N_ ("Centre line of the neck"), 0);
  draw_widths (draft);
  if (plan->has_short)
    {
      draw_short_start (draft);
      draw_shoulder (draft, low);
    }
  draw_edge (draft, low - EDGE_BELOW);
}
