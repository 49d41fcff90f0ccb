#include "draw_cutting.h"

#include <glib/gi18n-lib.h>

#include "draw_cut_page.h"

#define DIMENSIONS 17.0 /* room for the widths of strips */

static void
draw_missing (RwCutPage *page)
{
  g_autoptr (GArray) shortages = rw_shortages (page->cutting);

  if (shortages->len == 0)
    return;
  rw_cut_page_words (page, 0, RW_LETTERS_LARGE, _("Missing"));
  for (guint i = 0; i < shortages->len; i++)
    {
      g_autofree char *words
          = rw_shortage_words (page->cutting, &g_array_index (shortages, RwShortage, i), page->style);

      rw_cut_page_words (page, 0, RW_LETTERS_SMALL, words);
    }
  page->y -= 2;
  rw_cut_page_words (page, 0, RW_LETTERS_LARGE, _("To buy, with spare"));
  for (guint i = 0; i < shortages->len; i++)
    {
      g_autofree char *words
          = rw_shortage_buy_words (page->cutting, &g_array_index (shortages, RwShortage, i), page->build, page->style);

      rw_cut_page_words (page, 0, RW_LETTERS_SMALL, words);
    }
  page->y -= RW_CUT_GAP;
}

/* ---- pages ---- */

static double
longest (const RwCutting *cutting)
{
  double length = 1;

  for (guint k = 0; k < cutting->shelf->items->len; k++)
    length = MAX (length, ((const RwStockItem *) g_ptr_array_index (cutting->shelf->items, k))->length);
  return length;
}

static RwCutPage
page_begin (const RwCutting *cutting, const RwDesign *design, RwStyle style, double width)
{
  return (RwCutPage){ .draft = { .sheet = rw_sheet_new (_("Cutting plan"), style), .design = design },
                 .cutting = cutting, .build = design, .style = style, .width = width,
                 .along = (width - DIMENSIONS) / longest (cutting) };
}

/* Row n: what is missing, then boards, then bars; FALSE where there is no such row. */
static gboolean
draw_row (RwCutPage *page, guint n)
{
  guint boards = page->cutting->boards->len;

  if (n == 0)
    draw_missing (page);
  else if (n <= boards)
    rw_cut_page_board (page, &g_array_index (page->cutting->boards, RwCutBoard, n - 1));
  else if (n <= boards + page->cutting->bars->len)
    rw_cut_page_bar (page, g_ptr_array_index (page->cutting->bars, n - 1 - boards));
  else
    return FALSE;
  return TRUE;
}

static gboolean
row_height (const RwCutPage *like, guint n, double *height)
{
  RwCutPage trial = *like;
  gboolean there;

  trial.draft.sheet = rw_sheet_new ("", like->style);
  trial.y = 0;
  there = draw_row (&trial, n);
  *height = -trial.y;
  rw_sheet_free (trial.draft.sheet);
  return there;
}

RwSheet *
rw_draw_cutting (const RwCutting *cutting, const RwDesign *design, RwStyle style, double width, double height, int page)
{
  RwCutPage p = page_begin (cutting, design, style, width);
  int at = 0, drawn = 0;
  double tall;

  for (guint n = 0; at <= page && row_height (&p, n, &tall); n++)
    {
      if (height > 0 && -p.y + tall > height && -p.y > 0)
        {
          at++;
          p.y = 0;
        }
      if (at == page)
        drawn += draw_row (&p, n) && tall > 0;
      else
        p.y -= tall;
    }
  if (drawn > 0)
    return p.draft.sheet;
  rw_sheet_free (p.draft.sheet);
  return NULL;
}

double
rw_cutting_height (const RwSheet *sheet)
{
  double low = rw_sheet_extent (sheet).y0;

  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (item->kind == RW_ITEM_TEXT)
        low = MIN (low, item->p[0].y);
    }
  return -low + RW_CUT_LINE;
}
