#include "paper_parts.h"

#include "sheet/layout.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#define NOTE_WIDTH 160.0 /* mm, where there is room: longer lines are hard to read */

RwDraft
rw_paper_begin (const RwPaperJob *job, const char *title)
{
  return (RwDraft){
    .sheet = rw_sheet_new (title, job->style),
    .result = job->result,
    .design = &job->result->used,
    .measured = job->measured,
    .note_width = job->note_width > 0 ? MIN (job->note_width, NOTE_WIDTH) : NOTE_WIDTH,
  };
}

RwSheet *
rw_paper_end (RwDraft *draft)
{
  rw_draft_drop_unsolved (draft);
  return draft->sheet;
}

void
rw_paper_mirror_across (RwDraft *draft)
{
  if (draft->design->build_handed == RW_HANDED_LEFT)
    rw_sheet_mirror (draft->sheet, 0);
}

void
rw_paper_mirror_along (RwDraft *draft)
{
  if (draft->design->build_handed == RW_HANDED_LEFT)
    {
      rw_sheet_mirror (draft->sheet, 0);
      rw_sheet_turn (draft->sheet, 0, G_PI);
    }
}

/* Figures */

char *
rw_paper_figure (const RwDraft *draft, double value, int decimals)
{
  RwStyle style = draft->sheet->style;
  RwUnits units = rw_units_parts (style.units) > 0 && decimals > 1 ? RW_UNITS_INCH : style.units;

  return rw_quantity_write (value, "mm", units, decimals, style.decimal);
}

char *
rw_paper_length (const RwDraft *draft, double value, int decimals)
{
  g_autofree char *figure = rw_paper_figure (draft, value, decimals);

  if (decimals <= 1 && fabs (rw_fraction_error (value, draft->sheet->style.units)) > RW_FRACTION_ERROR_TOLD)
    {
      g_autofree char *metric = rw_quantity_write (value, "mm", RW_UNITS_MM, 1, draft->sheet->style.decimal);

      return g_strdup_printf ("%s" RW_NO_BREAK "in (%s" RW_NO_BREAK "mm)", figure, metric);
    }
  return g_strconcat (figure, RW_NO_BREAK, rw_quantity_unit ("mm", draft->sheet->style.units), NULL);
}

char *
rw_paper_degrees (const RwDraft *draft, double value)
{
  g_autofree char *figure = rw_quantity_write (value, "deg", RW_UNITS_MM, 2, draft->sheet->style.decimal);

  return g_strconcat (figure, "°", NULL);
}

/* Lettering */

#define LINE_STEP 4.2
#define NOTE_GAP 0.8

void
rw_paper_words (RwDraft *draft, RwPoint at, const char *words)
{
  rw_draft_set (draft, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  rw_sheet_text (draft->sheet, at.x, at.y, RW_ALIGN_MIDDLE, RW_LETTERS_SMALL, words);
}

void
rw_paper_side (RwDraft *draft, RwPoint at, double turn, const char *words)
{
  rw_draft_set (draft, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  rw_sheet_text (draft->sheet, at.x, at.y, RW_ALIGN_MIDDLE, RW_LETTERS_LARGE, words)->turn = turn;
}

/* What is set off by more than one space, or is a sentence's beginning, has a place to write in at its end; space
 * stands in between. */
static gboolean
is_within_blank (const char *words, const char *space)
{
  const char *end = strstr (space, "__"), *apart = strstr (space, "  "), *stop = strstr (space, ". ");

  return end != NULL && (apart == NULL || end < apart) && (stop == NULL || end < stop) && space[1] != ' '
         && space > words && space[-1] != ' ' && space[-1] != '.';
}

gsize
rw_paper_fit (const char *words, double width)
{
  double room = width / rw_letters_size (RW_LETTERS_SMALL);
  gsize fit = 0;

  for (const char *end = words; *end != '\0'; end++)
    {
      g_autofree char *line = NULL;

      /* A place to write in stays with its name. */
      if (end[1] != '\0' && (end[1] != ' ' || is_within_blank (words, end + 1)))
        continue;
      line = g_strndup (words, (gsize)(end + 1 - words));
      if (fit > 0 && rw_lettering_width (line) > room)
        break;
      fit = strlen (line);
    }
  return fit;
}

void
rw_paper_line (RwDraft *draft, RwPoint *at, const char *words)
{
  rw_paper_line_within (draft, at, draft->note_width, words);
}

void
rw_paper_cell (RwDraft *draft, RwPoint at, RwAlign align, const char *words)
{
  rw_draft_set (draft, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  rw_sheet_text (draft->sheet, at.x, at.y, align, RW_LETTERS_SMALL, words);
}

void
rw_paper_line_within (RwDraft *draft, RwPoint *at, double width, const char *words)
{
  width = MIN (width, draft->note_width);
  rw_draft_set (draft, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  for (gsize fit = rw_paper_fit (words, width); fit > 0; fit = rw_paper_fit (words, width))
    {
      g_autofree char *line = g_strndup (words, fit);

      rw_sheet_text (draft->sheet, at->x, at->y, RW_ALIGN_START, RW_LETTERS_SMALL, line);
      at->y -= LINE_STEP;
      words += fit;
      words += strspn (words, " ");
    }
  at->y -= NOTE_GAP;
}

#define NOTES_UNDER 8.0
#define SMALL_PAPER 120.0
#define PART_ROOM 14.0 /* the usual overlap, and air */

void
rw_paper_part (const RwDraft *draft, RwPoint *at)
{
  if (draft->note_width < SMALL_PAPER)
    at->y -= PART_ROOM;
}

void
rw_paper_print (RwDraft *draft, RwPoint *at, const char *format, ...)
{
  g_autofree char *words = NULL;
  va_list args;

  va_start (args, format);
  words = g_strdup_vprintf (format, args);
  va_end (args);
  rw_paper_line (draft, at, words);
}

static RwBox
box_of_all (RwDraft *draft)
{
  g_autoptr (RwLayout) layout = NULL;

  rw_draft_drop_unsolved (draft);
  layout = rw_layout_new (draft->sheet, 1, 0);
  return layout->extent;
}

RwPoint
rw_paper_under (RwDraft *draft)
{
  RwBox box = box_of_all (draft);

  return (RwPoint){ box.x0, box.y0 - (draft->note_width < SMALL_PAPER ? PART_ROOM : NOTES_UNDER) };
}

/* Marks */

#define CROSS_PAST 3.0

void
rw_paper_hole (RwDraft *draft, RwPoint centre, double radius, const char *name, int number)
{
  double reach = radius + CROSS_PAST;

  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, centre.x, centre.y, radius), name,
           number);
  rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, centre.x - reach, centre.y, centre.x + reach, centre.y);
  rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, centre.x, centre.y - reach, centre.x, centre.y + reach);
}

#define HEAD_LENGTH 4.0
#define HEAD_HALF 0.9

static void
arrow_head (RwDraft *draft, RwPoint from, RwPoint tip)
{
  double length = hypot (tip.x - from.x, tip.y - from.y);
  double dx = (tip.x - from.x) / length, dy = (tip.y - from.y) / length;
  RwPoint foot = { tip.x - dx * HEAD_LENGTH, tip.y - dy * HEAD_LENGTH };
  const RwPoint corners[] = { { foot.x - dy * HEAD_HALF, foot.y + dx * HEAD_HALF },
                              tip,
                              { foot.x + dy * HEAD_HALF, foot.y - dx * HEAD_HALF } };

  rw_sheet_polyline (draft->sheet, RW_PEN_CONSTRUCTION, corners, G_N_ELEMENTS (corners));
}

void
rw_paper_arrow (RwDraft *draft, RwPoint from, RwPoint to)
{
  rw_draft_set (draft, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, from.x, from.y, to.x, to.y);
  arrow_head (draft, from, to);
}

void
rw_paper_grain (RwDraft *draft, RwPoint from, RwPoint to)
{
  RwItem *words;

  rw_paper_arrow (draft, from, to);
  arrow_head (draft, to, from);
  words = rw_sheet_text (draft->sheet, (from.x + to.x) / 2, (from.y + to.y) / 2, RW_ALIGN_MIDDLE,
                         RW_LETTERS_SMALL, _("grain"));
  words->turn = atan2 (to.y - from.y, to.x - from.x);
  words->offset_mm = 1;
}

#define MARK_LENGTH 5.0
#define MARK_HALF 1.8

void
rw_paper_mark (RwDraft *draft, RwPoint at, double dx, double dy)
{
  RwPoint foot = { at.x + dx * MARK_LENGTH, at.y + dy * MARK_LENGTH };
  const RwPoint corners[] = { at,
                              { foot.x - dy * MARK_HALF, foot.y + dx * MARK_HALF },
                              { foot.x + dy * MARK_HALF, foot.y - dx * MARK_HALF } };

  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_sheet_polygon (draft->sheet, RW_PEN_EDGE, RW_TINT_METAL, corners, G_N_ELEMENTS (corners));
}

/* The board */

RwPoint
rw_paper_square (const RwResult *result, double x, double y)
{
  return result->used.scale_square_to == RW_SQUARE_TO_NECK ? rw_map_board (result, x, y) : (RwPoint){ x, y };
}

#define SHOULDER_CHORDS 40

static void
line_to (RwDraft *draft, RwMap map, RwPoint p)
{
  RwPoint at = map (draft->result, p.x, p.y);

  rw_path_line (draft->sheet, at.x, at.y);
}

void
rw_paper_board (RwDraft *draft, RwMap map, RwPen pen, double inset)
{
  const RwPlan *plan = &draft->result->plan;
  RwPoint bass[2], treble[2], start;

  rw_place_across (draft->result, 0, inset, &bass[0], &treble[0]);
  rw_place_across (draft->result, rw_draft_value (draft, RW_NECK_BOARD_LENGTH), inset, &bass[1], &treble[1]);
  start = map (draft->result, treble[0].x, treble[0].y);
  rw_path_begin (draft->sheet, pen, RW_TINT_NONE);
  rw_path_move (draft->sheet, start.x, start.y);
  line_to (draft, map, treble[1]);
  line_to (draft, map, bass[1]);
  for (int i = SHOULDER_CHORDS; plan->has_short && i >= 0; i--)
    {
      double x = plan->shoulder_from + (plan->shoulder_to - plan->shoulder_from) * i / SHOULDER_CHORDS;

      if (x > bass[0].x && x < bass[1].x)
        line_to (draft, map, (RwPoint){ x, rw_plan_bass (plan, x) + inset });
    }
  line_to (draft, map, bass[0]);
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), inset > 0 ? N_ ("Binding") : N_ ("Fretboard"), 0);
}
