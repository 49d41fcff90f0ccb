#include "draw_cut_page.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#include "project/stock_field.h"
#include "sheet/layout.h"

#define HATCH 1.6

const RwPiece *
rw_cut_page_piece (const RwCutPage *page, int i)
{
  return &g_array_index (page->cutting->pieces, RwPiece, i);
}

const RwStockItem *
rw_cut_page_item (const RwCutPage *page, int k)
{
  return g_ptr_array_index (page->cutting->shelf->items, k);
}

char *
rw_cut_page_figure (const RwCutPage *page, double length)
{
  return rw_quantity_write (length, "mm", page->style.units, 1, page->style.decimal);
}

char *
rw_cut_page_rough (const RwCutPage *page, double length)
{
  int parts = rw_units_parts (page->style.units);
  double step = parts > 0 ? RW_MM_PER_INCH / parts : 0;

  return rw_cut_page_figure (page, step > 0 ? ceil (length / step - 1e-6) * step : length);
}

static void
one_line (RwCutPage *page, double x, RwLetters letters, const char *words)
{
  page->y -= RW_CUT_LINE;
  rw_draft_set (&page->draft, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  rw_sheet_text (page->draft.sheet, x, page->y, RW_ALIGN_START, letters, words);
}

/* Whether a line may end before a word: not within "3 1/8 × 2 in", nor before a unit. */
static gboolean
may_break (const char *before, const char *word)
{
  gboolean figure = g_ascii_isdigit (before[strlen (before) - 1]) && g_ascii_isdigit (*word);

  return !figure && !g_str_equal (word, "×") && !g_str_has_suffix (before, "×") && !g_str_equal (word, "mm")
         && !g_str_equal (word, "in");
}

void
rw_cut_page_words (RwCutPage *page, double x, RwLetters letters, const char *words)
{
  double size = rw_letters_size (letters), room = (page->width - x) / size;
  g_auto (GStrv) each = g_strsplit (words, " ", -1);
  g_autoptr (GString) line = g_string_new (NULL);
  gsize end = 0; /* of what stays on the line where it gets too long; 0: nothing does */

  for (int i = 0; each[i] != NULL; i++)
    {
      if (line->len > 0 && may_break (line->str, each[i]))
        end = line->len;
      g_string_append_printf (line, "%s%s", line->len > 0 ? " " : "", each[i]);
      if (end == 0 || rw_lettering_width (line->str) <= room)
        continue;
      g_autofree char *rest = g_strdup (line->str + end + 1);
      g_string_truncate (line, end);
      one_line (page, x, letters, line->str);
      page->y -= size - rw_letters_size (RW_LETTERS_SMALL);
      g_string_assign (line, rest);
      end = 0;
    }
  one_line (page, x, letters, line->str);
}

void
rw_cut_page_title (RwCutPage *page, int item, int times)
{
  const RwStockItem *stock = rw_cut_page_item (page, item);
  g_autofree char *words = rw_stock_item_words (stock, page->style);
  g_autofree char *named = *stock->name != '\0' ? g_strdup_printf ("%s: %s", stock->name, words) : g_strdup (words);
  g_autofree char *many = times > 1 ? g_strdup_printf (_("%s; %d alike"), named, times) : g_strdup (named);

  page->y -= 1;
  rw_cut_page_words (page, 0, RW_LETTERS_LARGE, many);
  page->y -= 2.5;
}

void
rw_cut_page_box (RwCutPage *page, RwPen pen, RwTint tint, RwPoint a, RwPoint b)
{
  rw_sheet_box (page->draft.sheet, pen, tint, a.x, a.y, b.x, b.y);
}

void
rw_cut_page_hatch (RwCutPage *page, RwPoint a, RwPoint b, int lean)
{
  const RwPoint corners[] = { a, { b.x, a.y }, b, { a.x, b.y } };

  rw_hatch (&page->draft, corners, 4, HATCH, lean);
}

gboolean
rw_cut_page_has_room (double width, const char *words)
{
  return width > rw_lettering_width (words) * rw_letters_size (RW_LETTERS_SMALL) + 1;
}

void
rw_cut_page_mark (RwCutPage *page, RwPoint middle, const char *words, gboolean covered)
{
  double half = (rw_lettering_width (words) * rw_letters_size (RW_LETTERS_SMALL) + 1) / 2;

  rw_draft_set (&page->draft, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  if (covered)
    rw_sheet_box (page->draft.sheet, RW_PEN_NONE, RW_TINT_PAPER, middle.x - half, middle.y - 1.6, middle.x + half,
                  middle.y + 1.6);
  rw_sheet_text (page->draft.sheet, middle.x, middle.y - 1.1, RW_ALIGN_MIDDLE, RW_LETTERS_SMALL, words);
}
