#include "paper_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* The fretboard in the frame that its fret lines stand square in: slots as lines, their running positions
 * from the nut, edges, shoulder, places for markers, strings thin. */

static double
board_end (const RwDraft *draft)
{
  return rw_draft_value (draft, RW_NECK_BOARD_LENGTH);
}

static gboolean
is_on_board (const RwDraft *draft, int fret)
{
  return fret <= draft->result->plan.last && rw_slot_bass (draft->result, fret) < board_end (draft);
}

/* Ends of a line across, in the sheet. */
static void
across (const RwDraft *draft, double place, double inset, RwPoint *bass, RwPoint *treble)
{
  RwPoint ends[2];

  rw_place_across (draft->result, place, inset, &ends[0], &ends[1]);
  *bass = rw_paper_square (draft->result, ends[0].x, ends[0].y);
  *treble = rw_paper_square (draft->result, ends[1].x, ends[1].y);
}

static double
lowest (const RwDraft *draft)
{
  RwPoint bass, treble;

  across (draft, board_end (draft), 0, &bass, &treble);
  return bass.y;
}

static double
highest (const RwDraft *draft)
{
  RwPoint bass, treble;

  across (draft, board_end (draft), 0, &bass, &treble);
  return treble.y;
}

/* ---- slots ---- */

#define NUMBER_GAP 3.5
#define NUMBER_ROOM 6.0 /* nearer frets have their numbers in two rows */

/* One line right across, or the pieces under the strings. */
static void
draw_pieces (RwDraft *draft, int fret)
{
  RwSlotPiece pieces[RW_STRINGS_MAX];
  int count = rw_slot_pieces (draft->result, fret, pieces);

  for (int i = 0; i < count; i++)
    {
      RwSlot own = RW_SLOT2 (RW_FRETS_SLOT, pieces[i].first, fret);
      RwPoint bass, treble;

      rw_place_piece (draft->result, &pieces[i], 0, draft->design->fretboard_binding, &bass, &treble);
      bass = rw_paper_square (draft->result, bass.x, bass.y);
      treble = rw_paper_square (draft->result, treble.x, treble.y);
      rw_draft_slot (draft, FRETBOARD, count > 1 ? own : rw_slot_row (draft->result, fret));
      rw_name (rw_sheet_line (draft->sheet, RW_PEN_EDGE, pieces[i].place, bass.y, pieces[i].place, treble.y),
               N_ ("Fret"), fret);
    }
}

/* The figure is that of the slot at the bass edge, over which it stands. */
static void
draw_slot (RwDraft *draft, int fret)
{
  double place = rw_slot_bass (draft->result, fret), head = rw_slot_place (draft->result, 1, fret);
  g_autofree char *number = g_strdup_printf ("%d", fret), *figure = rw_paper_figure (draft, place, 2);
  double before = fret > 1 ? rw_slot_bass (draft->result, fret - 1) : 0;
  double raised = place - before < NUMBER_ROOM && fret % 2 == 0 ? 4.5 : 0;
  RwPoint bass, treble;

  draw_pieces (draft, fret);
  across (draft, place, draft->design->fretboard_binding, &bass, &treble);
  rw_draft_slot (draft, TEXT, rw_slot_row (draft->result, fret));
  rw_sheet_text (draft->sheet, head, highest (draft) + NUMBER_GAP + raised, RW_ALIGN_MIDDLE, RW_LETTERS_LARGE, number);
  rw_sheet_text (draft->sheet, place + 1.2, lowest (draft) - 2.5, RW_ALIGN_END, RW_LETTERS_SMALL, figure)
      ->turn
      = G_PI_2;
  rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, place, bass.y - 0.5, place, lowest (draft) - 2);
}

/* Where the markers go: common practice, no source. */
#define MARKER_RADIUS 2.5

static void
draw_markers (RwDraft *draft)
{
  static const int marked[] = { 3, 5, 7, 10, 12, 15, 17, 19, 22, 24 };

  rw_draft_set (draft, RW_LAYER_FRETBOARD, RW_SUBJECT_NONE);
  for (guint i = 0; i < G_N_ELEMENTS (marked) && is_on_board (draft, marked[i]); i++)
    {
      const double *x = draft->result->plan.fret_x;
      double place = (x[marked[i] - 1] + x[marked[i]]) / 2;
      gboolean pair = marked[i] % 12 == 0;
      RwPoint bass, treble;

      across (draft, place, 0, &bass, &treble);
      for (int k = pair ? 0 : 1; k <= (pair ? 2 : 1); k += 2)
        {
          double part = 0.5 + 0.22 * (k - 1);

          rw_paper_hole (draft, (RwPoint){ place, bass.y + (treble.y - bass.y) * part }, MARKER_RADIUS,
                         _("Marker at fret"), marked[i]);
        }
    }
}

static void
draw_strings (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;

  for (int i = 1; i <= plan->strings; i++)
    {
      double start = i <= plan->full ? 0 : plan->short_x, end = board_end (draft);
      RwPoint from = rw_paper_square (draft->result, start, rw_plan_string_y (plan, i, start));
      RwPoint to = rw_paper_square (draft->result, end, rw_plan_string_y (plan, i, end));

      rw_draft_set (draft, RW_LAYER_STRINGS, RW_SUBJECT_NONE);
      rw_name (rw_sheet_line (draft->sheet, RW_PEN_GRAIN, from.x, from.y, to.x, to.y), N_ ("String"), i);
    }
}

/* ---- edges ---- */

static void
draw_ends (RwDraft *draft)
{
  RwPoint bass, treble, middle[2];

  across (draft, 0, 0, &bass, &treble);
  rw_draft_param (draft, FRETBOARD, nut_width);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_OUTLINE, 0, bass.y - 6, 0, treble.y + 6), N_ ("Nut line"), 0);
  middle[0] = rw_map_board (draft->result, 0, draft->result->plan.nut_middle);
  if (draft->design->scale_square_to == RW_SQUARE_TO_STRINGS)
    {
      middle[0] = (RwPoint){ 0, draft->result->plan.nut_middle };
      middle[1] = (RwPoint){ board_end (draft), rw_plan_centre (&draft->result->plan, board_end (draft)) };
    }
  else
    middle[1] = (RwPoint){ board_end (draft), 0 };
  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, middle[0].x - 12, middle[0].y, middle[1].x + 12,
                          middle[1].y),
           N_ ("Centre line of the neck"), 0);
}

static void
draw_widths (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;
  const RwSlot slots[] = { RW_NECK_WIDTH, RW_NECK_WIDTH_AT_END };
  const double places[] = { 0, board_end (draft) };
  double foot = lowest (draft);
  RwPoint bass, treble;

  for (guint i = 0; i < G_N_ELEMENTS (slots); i++)
    {
      across (draft, places[i], 0, &bass, &treble);
      rw_span_slot (draft, slots[i],
                    (RwSpan){ RW_MEASURE_VERTICAL, bass, treble, i == 0 ? -20 : 16, 1, NULL });
    }
  rw_span_slot (draft, RW_NECK_BOARD_LENGTH,
                (RwSpan){ RW_MEASURE_HORIZONTAL, { 0, foot }, { board_end (draft), foot }, -24, 1, NULL });
  if (!plan->has_short)
    return;
  rw_span_param (
      draft, RW_P_fifth_shoulder_length,
      (RwSpan){
          RW_MEASURE_HORIZONTAL, { plan->shoulder_from, foot }, { plan->shoulder_to, foot }, -17, 1, NULL });
}

static void
draw_pip (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;
  RwPoint at = rw_paper_square (draft->result, plan->short_x, plan->short_y);

  if (!plan->has_short)
    return;
  rw_draft_param (draft, FRETBOARD, fifth_start_fret);
  rw_paper_hole (draft, at, 1, N_ ("Start of the short string"), 0);
}

static void
write_slots (RwDraft *draft, RwPoint *at)
{
  g_autofree char *kerf = rw_paper_length (draft, draft->design->frets_slot_width, 2);
  g_autofree char *deep = rw_paper_length (draft, rw_draft_value (draft, RW_FRETS_SLOT_DEPTH), 1);

  rw_paper_print (draft, at,
                  _("Slots %s wide, %s deep, sawn while the board is square; taper it afterwards."), kerf,
                  deep);
  rw_paper_line (
      draft, at,
      _("Nut line to the last slot as made: ____________    Board thickness as made: ____________"));
}

/* ---- table of the pieces ---- */

#define NAME_WIDTH 20.0
#define PLACE_WIDTH 17.0

/* A row for each string, a column for each fret. */
static void
write_places (RwDraft *draft, RwPoint *at)
{
  const RwPlan *plan = &draft->result->plan;

  rw_paper_line (draft, at,
                 _("Each string has slots of its own, from halfway to the string on one side to halfway to that on the "
                   "other: saw the pieces with a short blade, not right across. From the nut line to the slot under "
                   "each string:"));
  for (int n = 1; is_on_board (draft, n); n++)
    {
      g_autofree char *number = g_strdup_printf ("%d", n);

      rw_paper_cell (draft, (RwPoint){ at->x + NAME_WIDTH + (n - 0.2) * PLACE_WIDTH, at->y }, RW_ALIGN_END, number);
    }
  for (int i = 1; i <= plan->strings; i++)
    {
      g_autofree char *name = g_strdup_printf ("%d %s", i, draft->design->strings_set.at[i - 1].note);

      at->y -= RW_PAPER_ROW;
      rw_paper_cell (draft, *at, RW_ALIGN_START, name);
      for (int n = 1; is_on_board (draft, n); n++)
        {
          g_autofree char *figure = rw_paper_figure (draft, rw_slot_place (draft->result, i, n), 2);

          if (i <= plan->full || plan->fret_x[n] > plan->short_x + RW_SLOT_SAME_MM)
            rw_paper_cell (draft, (RwPoint){ at->x + NAME_WIDTH + (n - 0.2) * PLACE_WIDTH, at->y }, RW_ALIGN_END,
                           figure);
        }
    }
  at->y -= RW_PAPER_ROW + 2;
}

static void
write_notes (RwDraft *draft)
{
  RwPoint at = { 0, rw_paper_under (draft).y };

  rw_paper_line (draft, &at,
                 _("Seen from the playing side. Figures run from the nut line; mark them all from there "
                   "with a knife and a rule. Do not saw to glued paper: use the sheet to check."));
  if (draft->design->frets_slots == RW_SLOTS_OWN)
    write_places (draft, &at);
  if (draft->design->frets_count > 0.5)
    write_slots (draft, &at);
  else
    rw_paper_line (
        draft, &at,
        _("This board has no frets: the lines are where the semitones fall, for marks on its side. Board "
           "thickness as made: ____________"));
}

RwSheet *
rw_paper_fretboard (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Fretboard"));
  double middle = board_end (&draft) * 0.5;

  rw_draft_slot (&draft, FRETBOARD, RW_NECK_BOARD_LENGTH);
  rw_paper_board (&draft, rw_paper_square, RW_PEN_OUTLINE, 0);
  if (draft.design->fretboard_binding > 0)
    {
      rw_draft_param (&draft, FRETBOARD, fretboard_binding);
      rw_paper_board (&draft, rw_paper_square, RW_PEN_EDGE, draft.design->fretboard_binding);
    }
  draw_strings (&draft);
  for (int fret = 1; is_on_board (&draft, fret); fret++)
    draw_slot (&draft, fret);
  draw_markers (&draft);
  draw_ends (&draft);
  draw_pip (&draft);
  draw_widths (&draft);
  rw_paper_side (&draft, (RwPoint){ middle, highest (&draft) + 13 }, 0, _("treble"));
  rw_paper_side (&draft, (RwPoint){ middle, lowest (&draft) - 34 }, 0, _("bass"));
  rw_paper_side (&draft, (RwPoint){ -9, 0 }, G_PI_2, _("nut"));
  rw_paper_side (&draft, (RwPoint){ board_end (&draft) + 10, 8 }, G_PI_2, _("body"));
  rw_paper_grain (&draft, (RwPoint){ middle - 90, highest (&draft) + 13 },
                  (RwPoint){ middle - 40, highest (&draft) + 13 });
  rw_paper_mirror_across (&draft);
  write_notes (&draft);
  return rw_paper_end (&draft);
}
