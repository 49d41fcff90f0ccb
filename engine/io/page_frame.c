#include "page_frame.h"

#include "sheet/layout.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define LOWER_ROW 4.6 /* of the title strip, each of two: what is read once */
#define PADDING 2.0
#define BAR_MM 100
#define BAR_INCHES 4

RwPageShape
rw_page_shape (double width, double height, double margin, gboolean with_bars)
{
  double band = with_bars ? RW_BAR_BAND : 0;
  RwBox frame = { margin, margin, width - margin, height - margin };

  return (RwPageShape){ .width = width,
                        .height = height,
                        .frame = frame,
                        .room = { frame.x0 + band, frame.y0 + RW_TITLE_STRIP + band, frame.x1, frame.y1 } };
}

void
rw_frame_border (RwSheet *frame, const RwPageShape *shape)
{
  const RwBox *f = &shape->frame;

  rw_sheet_set (frame, RW_LAYER_FRAME, RW_SUBJECT_NONE);
  rw_sheet_box (frame, RW_PEN_OUTLINE, RW_TINT_NONE, f->x0, f->y0, f->x1, f->y1);
}

/* Title strip */

static double
text_width (const char *text, RwLetters letters)
{
  return rw_lettering_width (text) * rw_letters_size (letters);
}

/* The text, or as much of its beginning as fits before an ellipsis. */
static char *
cut_to_width (const char *text, double width, RwLetters letters)
{
  if (text_width (text, letters) <= width)
    return g_strdup (text);

  for (glong length = g_utf8_strlen (text, -1); length > 0; length--)
    {
      g_autofree char *start = g_utf8_substring (text, 0, length);
      g_autofree char *cut = g_strconcat (g_strchomp (start), "…", NULL);

      if (text_width (cut, letters) <= width)
        return g_steal_pointer (&cut);
    }
  return g_strdup ("");
}

static void
put_cell (RwSheet *frame, RwBox cell, RwLetters letters, const char *text)
{
  g_autofree char *cut = cut_to_width (text, cell.x1 - cell.x0 - 2 * PADDING, letters);
  double base = (cell.y0 + cell.y1 - rw_letters_size (letters)) / 2;

  if (*cut != '\0')
    rw_sheet_text (frame, cell.x0 + PADDING, base, RW_ALIGN_START, letters, cut);
}

/* From the right, each as wide as its text; the units have what is left at the left. */
static void
put_lower_row (RwSheet *frame, RwBox row, const RwTitle *title)
{
  const char *const texts[] = { title->page, title->revision, title->date, title->paper, title->scale };
  double right = row.x1;

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      double left = right - text_width (texts[i], RW_LETTERS_SMALL) - 2 * PADDING - 0.1;

      if (*texts[i] == '\0' || left < row.x0)
        continue;
      put_cell (frame, (RwBox){ left, row.y0, right, row.y1 }, RW_LETTERS_SMALL, texts[i]);
      rw_sheet_line (frame, RW_PEN_EDGE, left, row.y0, left, row.y1);
      right = left;
    }
  put_cell (frame, (RwBox){ row.x0, row.y0, right, row.y1 }, RW_LETTERS_SMALL, title->units);
}

void
rw_frame_title (RwSheet *frame, const RwPageShape *shape, const RwTitle *title)
{
  const RwBox *f = &shape->frame;
  double lower = f->y0 + LOWER_ROW, middle = lower + LOWER_ROW, top = f->y0 + RW_TITLE_STRIP;
  double between = f->x0 + 0.45 * (f->x1 - f->x0);

  rw_sheet_set (frame, RW_LAYER_FRAME, RW_SUBJECT_NONE);
  rw_sheet_box (frame, RW_PEN_OUTLINE, RW_TINT_NONE, f->x0, f->y0, f->x1, top);
  rw_sheet_line (frame, RW_PEN_EDGE, f->x0, lower, f->x1, lower);
  rw_sheet_line (frame, RW_PEN_EDGE, f->x0, middle, f->x1, middle);
  rw_sheet_line (frame, RW_PEN_EDGE, between, middle, between, top);
  put_cell (frame, (RwBox){ f->x0, middle, between, top }, RW_LETTERS_LARGE, title->project);
  put_cell (frame, (RwBox){ between, middle, f->x1, top }, RW_LETTERS_LARGE, title->title);
  put_cell (frame, (RwBox){ f->x0, lower, f->x1, middle }, RW_LETTERS_SMALL, title->view);
  put_lower_row (frame, (RwBox){ f->x0, f->y0, f->x1, lower }, title);
}

/* Check bars */

static void
put_tick (RwSheet *frame, double x, double height)
{
  rw_sheet_line (frame, RW_PEN_EDGE, x, 0, x, height);
}

/* Along x from the origin: millimetres over the line, inches under it.  On the smallest paper there is no
 * room behind it for its labels. */
static void
put_bar (RwSheet *frame, double room, const char *label_mm, const char *label_inch)
{
  double inches = BAR_INCHES * RW_MM_PER_INCH, label_x = inches + PADDING;
  double mm_width = text_width (label_mm, RW_LETTERS_SMALL);
  double inch_width = text_width (label_inch, RW_LETTERS_SMALL);

  rw_sheet_line (frame, RW_PEN_EDGE, 0, 0, MAX (BAR_MM, inches), 0);
  for (int mm = 0; mm <= BAR_MM; mm += 10)
    put_tick (frame, mm, mm % 50 == 0 ? 3.2 : 2);
  for (int half = 0; half <= 2 * BAR_INCHES; half++)
    put_tick (frame, half * RW_MM_PER_INCH / 2, half % 2 == 0 ? -3.2 : -2);
  if (label_x + MAX (mm_width, inch_width) > room)
    return;
  rw_sheet_text (frame, label_x, 0.8, RW_ALIGN_START, RW_LETTERS_SMALL, label_mm);
  rw_sheet_text (frame, label_x, -3.3, RW_ALIGN_START, RW_LETTERS_SMALL, label_inch);
}

/* "100 mm", or with what it measures in the drawing: "100 mm on paper = 250 mm". */
static char *
bar_label (const RwSheet *frame, double scale, int length, const char *unit)
{
  double drawn = round (10 * length / scale) / 10;
  g_autofree char *measure = rw_quantity_write (drawn, "", RW_UNITS_MM, drawn == floor (drawn) ? 0 : 1,
                                                frame->style.decimal);

  if (scale == 1)
    return g_strdup_printf ("%d %s", length, unit);
  return g_strdup_printf (_("%d %s on paper = %s %s"), length, unit, measure, unit);
}

/* For the upright bar, which has room for no more. */
static void
put_upright_bar (RwSheet *frame, const RwPageShape *shape)
{
  g_autofree char *mm = bar_label (frame, 1, BAR_MM, "mm"), *inch = bar_label (frame, 1, BAR_INCHES, "in");
  guint first = frame->items->len;

  put_bar (frame, shape->room.y1 - shape->room.y0, mm, inch);
  rw_sheet_turn (frame, first, G_PI_2);
  rw_sheet_move (frame, first, shape->room.x0 - RW_BAR_BAND / 2, shape->room.y0);
}

void
rw_frame_bars (RwSheet *frame, const RwPageShape *shape, double scale)
{
  g_autofree char *mm = bar_label (frame, scale, BAR_MM, "mm");
  g_autofree char *inch = bar_label (frame, scale, BAR_INCHES, "in");
  guint first = frame->items->len;

  rw_sheet_set (frame, RW_LAYER_FRAME, RW_SUBJECT_NONE);
  put_bar (frame, shape->room.x1 - shape->room.x0, mm, inch);
  rw_sheet_move (frame, first, shape->room.x0, shape->room.y0 - RW_BAR_BAND / 2);
  put_upright_bar (frame, shape);
}
