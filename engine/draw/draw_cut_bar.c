#include "draw_cut_page.h"

#include <glib/gi18n-lib.h>

#include "sheet/layout.h"

#define BAND 5.0 /* a bar's height on paper */

/* Puts words down where one more would not go on the line. */
static void
flow (RwCutPage *page, GString *line, const char *words, const char *between)
{
  double size = rw_letters_size (RW_LETTERS_SMALL);

  if (line->len > 0 && (rw_lettering_width (line->str) + rw_lettering_width (words) + 2) * size > page->width)
    {
      rw_cut_page_words (page, 0, RW_LETTERS_SMALL, line->str);
      g_string_truncate (line, 0);
    }
  g_string_append_printf (line, "%s%s", line->len > 0 ? between : "", words);
}

static void
bar_words (RwCutPage *page, const RwCutBar *bar)
{
  g_autofree char *rest = rw_cut_page_figure (page, bar->rest);
  g_autofree char *left = g_strdup_printf (_("Left: %s"), rest);
  GString *line = g_string_new (NULL);

  for (guint c = 0; c < bar->cuts->len; c++)
    {
      const RwBarCut *cut = &g_array_index (bar->cuts, RwBarCut, c);
      const RwPiece *piece = rw_cut_page_piece (page, cut->piece);
      g_autofree char *letters = rw_piece_mark (piece), *words = NULL;
      g_autofree char *length = rw_cut_page_rough (page, piece->length);

      /* Of frets there are as many lengths as frets. */
      if (piece->use == RW_PIECE_FRET)
        words = g_strdup_printf ("%s %s", letters, length);
      else
        words = g_strdup_printf (_("%d × %s (%s): %s"), cut->count, letters, _(rw_piece_label (piece->use)), length);
      flow (page, line, words, "; ");
    }
  flow (page, line, left, "; ");
  rw_cut_page_words (page, 0, RW_LETTERS_SMALL, line->str);
  g_string_free (line, TRUE);
}

void
rw_cut_page_bar (RwCutPage *page, const RwCutBar *bar)
{
  const RwStockItem *item = rw_cut_page_item (page, bar->item);
  RwTint tint = item->kind == RW_STOCK_BOARD ? RW_TINT_LIGHT_WOOD : RW_TINT_METAL;
  double kerf = item->kind == RW_STOCK_WIRE ? 0 : page->cutting->metal_kerf, at = page->cutting->bar_trim, foot;

  rw_cut_page_title (page, bar->item, bar->times);
  foot = page->y - BAND;
  rw_draft_set (&page->draft, RW_LAYER_HOOKS, RW_SUBJECT_NONE);
  rw_cut_page_box (page, RW_PEN_OUTLINE, RW_TINT_PAPER, (RwPoint){ 0, foot },
                   (RwPoint){ item->length * page->along, foot + BAND });
  for (guint c = 0; c < bar->cuts->len; c++)
    {
      const RwBarCut *cut = &g_array_index (bar->cuts, RwBarCut, c);
      const RwPiece *piece = rw_cut_page_piece (page, cut->piece);
      double length = piece->length, from = at;

      rw_draft_set (&page->draft, RW_LAYER_HOOKS, RW_SUBJECT_NONE);
      for (int n = 0; n < cut->count; n++, at += length + kerf)
        rw_cut_page_box (page, RW_PEN_OUTLINE, tint, (RwPoint){ at * page->along, foot },
                         (RwPoint){ (at + length) * page->along, foot + BAND });
      g_autofree char *each = rw_piece_mark (piece);
      g_autofree char *row = cut->count > 1 ? g_strdup_printf ("%d × %s", cut->count, each) : g_strdup (each);
      double middle = (from + at - kerf) / 2 * page->along;
      if (cut->count > 1 || rw_cut_page_has_room (length * page->along, each))
        rw_cut_page_mark (page, (RwPoint){ middle, foot + BAND / 2 }, row, cut->count > 1);
    }
  if (at < item->length - page->cutting->bar_trim)
    rw_cut_page_hatch (page, (RwPoint){ at * page->along, foot },
                       (RwPoint){ item->length * page->along, foot + BAND }, 1);
  page->y = foot - 1;
  bar_words (page, bar);
  page->y -= RW_CUT_GAP - RW_CUT_LINE;
}
