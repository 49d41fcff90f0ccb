#include "draw_parts.h"

#include <math.h>

/* The neck from above: wood, board, nut, frets, headstock, posts, the short string's peg. */

static void
move_to (RwDraft *draft, RwMap map, RwPoint p)
{
  RwPoint at = map (draft->result, p.x, p.y);

  rw_path_move (draft->sheet, at.x, at.y);
}

static void
line_to (RwDraft *draft, RwMap map, RwPoint p)
{
  RwPoint at = map (draft->result, p.x, p.y);

  rw_path_line (draft->sheet, at.x, at.y);
}

/* Along the bass edge, or inset from it, from one place to another; the shoulder in short chords. */
#define SHOULDER_CHORDS 20

static void
bass_edge_to (RwDraft *draft, RwMap map, RwPoint from, RwPoint to, double inset)
{
  const RwPlan *plan = &draft->result->plan;
  double low = fmin (from.x, to.x), high = fmax (from.x, to.x);

  for (int i = 0; plan->has_short && i <= SHOULDER_CHORDS; i++)
    {
      double t = (double)(from.x < to.x ? i : SHOULDER_CHORDS - i) / SHOULDER_CHORDS;
      double x = plan->shoulder_from + (plan->shoulder_to - plan->shoulder_from) * t;

      if (x > low && x < high)
        line_to (draft, map, (RwPoint){ x, rw_plan_bass (plan, x) + inset });
    }
  line_to (draft, map, to);
}

/* What lies between two lines across the board. */
static RwItem *
strip (RwDraft *draft, RwMap map, double from, double to, RwTint tint)
{
  RwPoint bass[2], treble[2];

  rw_place_across (draft->result, from, 0, &bass[0], &treble[0]);
  rw_place_across (draft->result, to, 0, &bass[1], &treble[1]);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, tint);
  move_to (draft, map, bass[0]);
  line_to (draft, map, treble[0]);
  line_to (draft, map, treble[1]);
  line_to (draft, map, bass[1]);
  bass_edge_to (draft, map, bass[1], bass[0], 0);
  rw_path_close (draft->sheet);
  return rw_path_end (draft->sheet);
}

static gboolean
is_fretted (const RwDraft *draft)
{
  return draft->design->frets_count > 0.5;
}

static void
draw_binding (RwDraft *draft, RwMap map)
{
  double inset = draft->design->fretboard_binding, end = rw_draft_value (draft, RW_NECK_BOARD_LENGTH);
  RwPoint bass[2], treble[2];

  if (inset <= 0)
    return;

  rw_place_across (draft->result, 0, inset, &bass[0], &treble[0]);
  rw_place_across (draft->result, end, inset, &bass[1], &treble[1]);
  rw_draft_param (draft, FRETBOARD, fretboard_binding);
  rw_path_begin (draft->sheet, RW_PEN_EDGE, RW_TINT_NONE);
  move_to (draft, map, treble[0]);
  line_to (draft, map, treble[1]);
  move_to (draft, map, bass[0]);
  bass_edge_to (draft, map, bass[0], bass[1], inset);
  rw_name (rw_path_end (draft->sheet), N_ ("Binding"), 0);
}

/* A piece of a fret with its crown's width, or on a fretless board the line at its place. */
static void
draw_piece (RwDraft *draft, RwMap map, const RwSlotPiece *piece)
{
  double half = draft->design->frets_crown_width / 2, inset = draft->design->frets_end_inset;
  RwPoint bass[2], treble[2];

  if (is_fretted (draft))
    {
      rw_place_piece (draft->result, piece, -half, inset, &bass[0], &treble[0]);
      rw_place_piece (draft->result, piece, half, inset, &bass[1], &treble[1]);
      rw_path_begin (draft->sheet, RW_PEN_EDGE, RW_TINT_METAL);
      move_to (draft, map, bass[0]);
      line_to (draft, map, treble[0]);
      line_to (draft, map, treble[1]);
      line_to (draft, map, bass[1]);
      rw_path_close (draft->sheet);
    }
  else
    {
      rw_place_piece (draft->result, piece, 0, 0, &bass[0], &treble[0]);
      rw_path_begin (draft->sheet, RW_PEN_EDGE, RW_TINT_NONE);
      move_to (draft, map, bass[0]);
      line_to (draft, map, treble[0]);
    }
}

static void
draw_fret (RwDraft *draft, RwMap map, int fret)
{
  RwSlotPiece pieces[RW_STRINGS_MAX];
  int count = rw_slot_pieces (draft->result, fret, pieces);

  for (int i = 0; i < count; i++)
    {
      RwSlot own = RW_SLOT2 (RW_FRETS_SLOT, pieces[i].first, fret);

      rw_draft_slot (draft, FRETBOARD, count > 1 ? own : rw_slot_row (draft->result, fret));
      draw_piece (draft, map, &pieces[i]);
      rw_name (rw_path_end (draft->sheet), N_ ("Fret"), fret);
    }
}

#define MARKER_RADIUS 2.2

static void
draw_marker (RwDraft *draft, RwMap map, double place, double across)
{
  RwPoint bass, treble, at;

  rw_place_across (draft->result, place, 0, &bass, &treble);
  at = map (draft->result, bass.x + (treble.x - bass.x) * across, bass.y + (treble.y - bass.y) * across);
  rw_sheet_circle (draft->sheet, RW_PEN_EDGE, RW_TINT_BONE, at.x, at.y, MARKER_RADIUS);
}

/* Common practice, no source. */
static void
draw_markers (RwDraft *draft, RwMap map)
{
  static const int marked[] = { 3, 5, 7, 10, 12, 15, 17, 19, 22, 24 };
  const RwPlan *plan = &draft->result->plan;
  double end = rw_draft_value (draft, RW_NECK_BOARD_LENGTH);

  rw_draft_set (draft, RW_LAYER_FRETBOARD, RW_SUBJECT_NONE);
  for (guint i = 0; i < G_N_ELEMENTS (marked); i++)
    {
      int fret = marked[i];
      double place = (plan->fret_x[fret - 1] + plan->fret_x[fret]) / 2;

      if (fret > plan->last || plan->fret_x[fret] > end)
        break;
      if (fret % 12 != 0)
        draw_marker (draft, map, place, 0.5);
      else
        {
          draw_marker (draft, map, place, 0.3);
          draw_marker (draft, map, place, 0.7);
        }
    }
}

static void
draw_nut (RwDraft *draft, RwMap map)
{
  rw_draft_param (draft, FRETBOARD, nut_thickness);
  rw_name (strip (draft, map, -draft->design->nut_thickness, 0, RW_TINT_BONE), N_ ("Nut"), 0);
}

void
rw_draw_board (RwDraft *draft, RwMap map)
{
  double end = rw_draft_value (draft, RW_NECK_BOARD_LENGTH);

  rw_draft_slot (draft, FRETBOARD, RW_NECK_BOARD_LENGTH);
  rw_name (strip (draft, map, 0, end, RW_TINT_DARK_WOOD), N_ ("Fretboard"), 0);
  draw_markers (draft, map);
  draw_binding (draft, map);
}

static void
draw_frets (RwDraft *draft, RwMap map)
{
  const RwPlan *plan = &draft->result->plan;
  double end = rw_draft_value (draft, RW_NECK_BOARD_LENGTH);

  for (int fret = 1; fret <= plan->last && plan->fret_x[fret] < end; fret++)
    draw_fret (draft, map, fret);
}

/* A line round the pot's axis from one edge of the neck to the other. */
static void
round_to (RwDraft *draft, double radius)
{
  const RwPlan *plan = &draft->result->plan;
  double end = draft->result->side.nut_to_rim;

  rw_path_arc (draft->sheet, (RwPoint){ 0, 0 }, radius, G_PI - asin (rw_plan_treble (plan, end) / radius),
               G_PI - asin (rw_plan_bass (plan, end) / radius));
}

void
rw_draw_heel_above (RwDraft *draft, double place, double radius)
{
  double relief = fmax (rw_draft_value (draft, RW_JOINT_RELIEF_DEPTH), 0);
  RwPoint bass, treble;

  rw_place_across (draft->result, place, 0, &bass, &treble);
  rw_draft_slot (draft, NECK, RW_JOINT_HEEL_WIDTH);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD);
  move_to (draft, rw_map_plan, bass);
  line_to (draft, rw_map_plan, treble);
  round_to (draft, radius);
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Heel"), 0);

  rw_draft_param (draft, NECK, joint_hoop_relief);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE);
  round_to (draft, draft->design->rim_outer_diameter / 2 + relief);
  rw_name (rw_path_end (draft->sheet), N_ ("Relief for the hoop"), 0);
}

/* What shows of the heel between board and hoop. */
static void
draw_heel_end (RwDraft *draft)
{
  double radius
      = fmax (rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER), draft->design->rim_outer_diameter) / 2;

  rw_draw_heel_above (draft, draft->result->side.heel_start, radius);
}

/* Outline of the headstock: one half, from the nut's back face to the middle of the tip, as parts of its
 * length and of half its greatest width.  It flares out, draws in a little between the pairs of posts, widens
 * again and ends in a low ogee.  The first point's v, the half width of the neck, is 0 here. */
static const RwPoint half_outline[][3] = {
  { { 0.09, 0 }, { 0.11, 0.90 }, { 0.24, 0.90 } },       { { 0.35, 0.90 }, { 0.42, 0.85 }, { 0.53, 0.86 } },
  { { 0.65, 0.87 }, { 0.74, 1.00 }, { 0.85, 1.00 } },    { { 0.90, 1.00 }, { 0.935, 0.97 }, { 0.935, 0.84 } },
  { { 0.935, 0.60 }, { 0.953, 0.50 }, { 0.968, 0.34 } }, { { 0.980, 0.21 }, { 1.00, 0.14 }, { 1.00, 0 } },
};

static RwPoint
outline_point (const RwDraft *draft, RwMap map, RwPoint p, int side)
{
  const RwDesign *design = draft->design;
  double half = fmax (design->headstock_width, design->nut_width) / 2;
  double v = p.y * half;

  if (p.x < 0.1)
    v = design->nut_width / 2;
  return map (draft->result, p.x * design->headstock_length, side * v);
}

void
rw_draw_head_outline (RwDraft *draft, RwMap map)
{
  const int parts = G_N_ELEMENTS (half_outline);
  const RwDesign *design = draft->design;
  double mitre = design->headstock_overlay * tan (design->headstock_angle * G_PI / 180);
  RwPoint start = map (draft->result, -mitre, design->nut_width / 2);
  RwPoint close = map (draft->result, -mitre, -design->nut_width / 2);
  RwPoint flare = outline_point (draft, map, (RwPoint){ 0, 0 }, 1);

  rw_draft_param (draft, HEADSTOCK, headstock_length);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD);
  rw_path_move (draft->sheet, start.x, start.y);
  rw_path_line (draft->sheet, flare.x, flare.y);
  for (int i = 0; i < parts; i++)
    rw_path_curve (draft->sheet, outline_point (draft, map, half_outline[i][0], 1),
                   outline_point (draft, map, half_outline[i][1], 1),
                   outline_point (draft, map, half_outline[i][2], 1));
  for (int i = parts - 1; i >= 0; i--)
    {
      RwPoint end = i > 0 ? half_outline[i - 1][2] : (RwPoint){ 0, 0 };

      rw_path_curve (draft->sheet, outline_point (draft, map, half_outline[i][1], -1),
                     outline_point (draft, map, half_outline[i][0], -1), outline_point (draft, map, end, -1));
    }
  rw_path_line (draft->sheet, close.x, close.y);
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Headstock"), 0);
}

void
rw_draw_posts (RwDraft *draft, RwMap map)
{
  const RwDesign *design = draft->design;

  for (int i = 1; i <= draft->result->plan.strings; i++)
    {
      double u = rw_draft_value (draft, RW_HEADSTOCK_POST_X + i),
             v = rw_draft_value (draft, RW_HEADSTOCK_POST_Y + i);
      RwPoint at = map (draft->result, u, v);

      rw_draft_param (draft, HEADSTOCK, headstock_button);
      rw_name (rw_sheet_circle (draft->sheet, RW_PEN_HIDDEN, RW_TINT_NONE, at.x, at.y,
                                design->headstock_button / 2),
               N_ ("Tuner housing"), i);
      rw_draft_slot (draft, HEADSTOCK, RW_HEADSTOCK_POST_X + i);
      rw_name (rw_sheet_circle (draft->sheet, RW_PEN_EDGE, RW_TINT_METAL, at.x, at.y,
                                design->headstock_post_hole / 2),
               N_ ("Tuner bushing"), i);
      rw_name (rw_sheet_circle (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, at.x, at.y,
                                0.3 * design->headstock_post_hole),
               N_ ("Post"), i);
    }
}

/* A peg in the side of the neck: collar against the edge, barrel, knob. */
static void
draw_side_peg (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;
  double x = plan->short_x - draft->design->fifth_peg_distance;
  RwPoint edge = rw_map_plan (draft->result, x, rw_plan_bass (plan, x));
  const struct
  {
    double half, from, to;
  } parts[] = { { 4, 0, 3 }, { 2.2, 3, 11 }, { 3.2, 11, 13 }, { 7.5, 13, 21 } };

  rw_draft_param (draft, NECK, fifth_peg_distance);
  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, i == 3 ? RW_TINT_BONE : RW_TINT_METAL,
                           edge.x - parts[i].half, edge.y - parts[i].to, edge.x + parts[i].half,
                           edge.y - parts[i].from),
             N_ ("Side peg"), 0);
}

void
rw_draw_fret_number (RwDraft *draft, int fret, RwMap map, int rank)
{
  g_autofree char *number = g_strdup_printf ("%d", fret);
  RwPoint bass, treble, at;
  RwItem *item;

  rw_place_across (draft->result, rw_slot_bass (draft->result, fret), 0, &bass, &treble);
  at = map (draft->result, bass.x, bass.y);
  rw_draft_slot (draft, TEXT, rw_slot_row (draft->result, fret));
  item = rw_sheet_text (draft->sheet, at.x, at.y, RW_ALIGN_MIDDLE, RW_LETTERS_SMALL, number);
  item->offset_mm = -4;
  item->rank = rank;
}

void
rw_draw_neck_plan (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;

  if (plan->has_short && draft->design->fifth_route == RW_ROUTE_SIDE_PEG)
    draw_side_peg (draft);
  draw_heel_end (draft);
  rw_draw_head_outline (draft, rw_map_head_plan);
  draw_nut (draft, rw_map_plan);
  rw_draw_board (draft, rw_map_plan);
  draw_frets (draft, rw_map_plan);
  for (int fret = 1; fret <= plan->last && plan->fret_x[fret] < rw_draft_value (draft, RW_NECK_BOARD_LENGTH);
       fret++)
    if (fret == 5 || fret == 12 || fret == plan->last)
      rw_draw_fret_number (draft, fret, rw_map_plan, 2);
}
