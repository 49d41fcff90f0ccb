#include "draw_cut_page.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#include "sheet/layout.h"

#define ACROSS (1 / 3.0) /* scale across the grain */
#define DEGREE (G_PI / 180)
/* What is cut from a strip stands at least so far to the right. */
#define INDENT 30.0

/* ---- words ---- */

/* The cuts of one piece after another in a strip, that are alike. */
static guint
run_length (const GArray *cuts, guint from)
{
  const RwBoardCut *first = &g_array_index (cuts, RwBoardCut, from);
  guint count = 1;

  for (guint i = from + 1; i < cuts->len; i++, count++)
    {
      const RwBoardCut *cut = &g_array_index (cuts, RwBoardCut, i), *before = &g_array_index (cuts, RwBoardCut, i - 1);

      if (cut->piece != first->piece || cut->on_edge != first->on_edge || cut->from - before->to > 12)
        break;
    }
  return count;
}

static char *
run_words (const RwCutPage *page, const RwBoardStrip *strip, const RwBoardCut *cut, guint count)
{
  const RwPiece *piece = rw_cut_page_piece (page, cut->piece);
  g_autofree char *letters = rw_piece_mark (piece), *name = rw_piece_words (piece);
  g_autofree char *from = rw_cut_page_figure (page, cut->from), *across = rw_cut_page_figure (page, cut->width);
  g_autofree char *length = rw_cut_page_rough (page, piece->length);
  g_autofree char *text = NULL;

  if (piece->mitre > 0)
    {
      g_autofree char *feed = rw_cut_page_figure (page, piece->length + page->cutting->cross_kerf);
      g_autofree char *stop = rw_cut_page_figure (page, piece->finished_length);
      g_autofree char *mitre = rw_quantity_show (piece->mitre, "deg", page->style.units, page->style.decimal);

      text = g_strdup_printf (_("%u × %s (%s): saw at %s°, stop at %s, feed %s, the first from %s"), count, letters,
                              name, mitre, stop, feed, from);
    }
  else
    text = g_strdup_printf (_("%u × %s (%s): %s long, the first from %s"), count, letters, name, length, from);
  if (strip->to - strip->from > cut->width + 0.05)
    return g_strdup_printf (_("%s, then ripped to %s"), text, across);
  return cut->on_edge ? g_strdup_printf (_("%s, on edge"), text) : g_steal_pointer (&text);
}

static char *
rip_words (const RwCutPage *page, const RwBoardStrip *strip, guint number)
{
  g_autofree char *wide = rw_cut_page_figure (page, strip->to - strip->from);

  return g_strdup_printf (_("%u. Rip to %s"), number, wide);
}

/* How far to the right all words stand that say what is cut from the strips. */
static double
indent_of (const RwCutPage *page, const GPtrArray *strips)
{
  double indent = INDENT;

  for (guint s = 0; s < strips->len; s++)
    {
      g_autofree char *rip = rip_words (page, g_ptr_array_index (strips, s), s + 1);

      indent = MAX (indent, rw_lettering_width (rip) * rw_letters_size (RW_LETTERS_SMALL) + 4);
    }
  return indent;
}

static void
strip_words (RwCutPage *page, const RwBoardStrip *strip, guint number, double indent)
{
  g_autofree char *rip = rip_words (page, strip, number);

  rw_cut_page_words (page, 0, RW_LETTERS_SMALL, rip);
  page->y += RW_CUT_LINE;
  for (guint i = 0; i < strip->cuts->len;)
    {
      guint count = run_length (strip->cuts, i);
      g_autofree char *words = run_words (page, strip, &g_array_index (strip->cuts, RwBoardCut, i), count);

      rw_cut_page_words (page, indent, RW_LETTERS_SMALL, words);
      i += count;
    }
}

/* ---- picture ---- */

/* From the board to the sheet: foot is where its lower edge lies. */
static RwPoint
place (const RwCutPage *page, double foot, double x, double y)
{
  return (RwPoint){ x * page->along, foot + y * ACROSS };
}

/* Segments stand on their long and their short edge by turns, as they are sawn from a strip that is turned over. */
static void
draw_piece (RwCutPage *page, double foot, const RwBoardStrip *strip, const RwBoardCut *cut, guint nth)
{
  const RwPiece *piece = rw_cut_page_piece (page, cut->piece);
  double slant = piece->mitre > 0 ? (strip->to - strip->from) / 2 * tan (piece->mitre * DEGREE) : 0;
  double kerf = page->cutting->cross_kerf;
  double from = cut->from, to = cut->to - (slant > 0 ? kerf / cos (piece->mitre * DEGREE) - kerf : 0);
  double top = strip->from + cut->width;

  if (nth % 2 == 1)
    slant = -slant;
  const RwPoint corners[]
      = { place (page, foot, from - slant, strip->from), place (page, foot, to + slant, strip->from),
          place (page, foot, to - slant, top), place (page, foot, from + slant, top) };
  rw_sheet_polygon (page->draft.sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, corners, 4);
}

/* Each piece has its mark, or where they are too small the row of them one together. */
static void
draw_marks (RwCutPage *page, double foot, const RwBoardStrip *strip)
{
  for (guint i = 0; i < strip->cuts->len;)
    {
      guint count = run_length (strip->cuts, i);
      const RwBoardCut *first = &g_array_index (strip->cuts, RwBoardCut, i);
      const RwBoardCut *last = &g_array_index (strip->cuts, RwBoardCut, i + count - 1);
      g_autofree char *each = rw_piece_mark (rw_cut_page_piece (page, first->piece));
      g_autofree char *row = g_strdup_printf ("%u × %s", count, each);
      double middle = strip->from + first->width / 2;
      gboolean roomy = rw_cut_page_has_room ((first->to - first->from) * page->along, each);

      for (guint n = 0; n < count && roomy; n++)
        {
          const RwBoardCut *cut = first + n;

          rw_cut_page_mark (page, place (page, foot, (cut->from + cut->to) / 2, middle), each, FALSE);
        }
      if (!roomy)
        rw_cut_page_mark (page, place (page, foot, (first->from + last->to) / 2, middle), count > 1 ? row : each,
                          count > 1);
      i += count;
    }
}

static void
draw_strip (RwCutPage *page, double foot, double length, const RwBoardStrip *strip)
{
  RwPoint a = place (page, foot, 0, strip->from), b = place (page, foot, length, strip->to);
  double wide = strip->to - strip->from;

  rw_draft_set (&page->draft, RW_LAYER_RIM, RW_SUBJECT_NONE);
  rw_sheet_line (page->draft.sheet, RW_PEN_EDGE, a.x, a.y, b.x, a.y);
  rw_sheet_line (page->draft.sheet, RW_PEN_EDGE, a.x, b.y, b.x, b.y);
  for (guint i = 0, nth = 0; i < strip->cuts->len; i++, nth++)
    draw_piece (page, foot, strip, &g_array_index (strip->cuts, RwBoardCut, i), nth);
  rw_draft_set (&page->draft, RW_LAYER_DIMENSIONS, RW_SUBJECT_NONE);
  rw_sheet_dimension (page->draft.sheet, RW_MEASURE_VERTICAL, (RwPoint){ b.x, a.y }, b, 6, RW_FIGURE_WORKED_OUT, wide,
                      NULL);
}

/* Stretches to avoid are hatched the other way. */
static void
draw_waste (RwCutPage *page, double foot, const RwStockItem *item, const RwBoardPlanBoard *plan)
{
  for (guint i = 0; i < plan->offcuts->len; i++)
    {
      const RwOffcut *offcut = &g_array_index (plan->offcuts, RwOffcut, i);

      rw_cut_page_hatch (page, place (page, foot, offcut->x0, offcut->y0),
                         place (page, foot, offcut->x1, offcut->y1), 1);
    }
  for (guint i = 0; i < item->avoid->len; i++)
    {
      const RwStretch *bad = &g_array_index (item->avoid, RwStretch, i);
      RwPoint a = place (page, foot, bad->from, 0), b = place (page, foot, MIN (bad->to, item->length), item->width);

      rw_cut_page_hatch (page, a, b, -1);
      rw_cut_page_hatch (page, a, b, 1);
    }
}

static void
offcut_words (RwCutPage *page, const RwBoardPlanBoard *plan, double indent)
{
  GString *all = g_string_new (NULL);

  for (guint i = 0; i < plan->offcuts->len; i++)
    {
      const RwOffcut *offcut = &g_array_index (plan->offcuts, RwOffcut, i);
      g_autofree char *length = rw_cut_page_figure (page, offcut->x1 - offcut->x0);
      g_autofree char *width = rw_cut_page_figure (page, offcut->y1 - offcut->y0);

      g_string_append_printf (all, "%s%s × %s", i > 0 ? "; " : "", length, width);
    }
  if (all->len > 0)
    {
      g_autofree char *words = g_strdup_printf (_("Left to keep: %s"), all->str);

      rw_cut_page_words (page, indent, RW_LETTERS_SMALL, words);
    }
  g_string_free (all, TRUE);
}

void
rw_cut_page_board (RwCutPage *page, const RwCutBoard *board)
{
  const RwStockItem *item = rw_cut_page_item (page, board->item);
  double indent = indent_of (page, board->plan->strips), foot;
  RwPoint corner, opposite;

  rw_cut_page_title (page, board->item, 1);
  foot = page->y - item->width * ACROSS;
  corner = place (page, foot, 0, 0);
  opposite = place (page, foot, item->length, item->width);
  rw_draft_set (&page->draft, RW_LAYER_RIM, RW_SUBJECT_NONE);
  rw_cut_page_box (page, RW_PEN_EDGE, RW_TINT_PAPER, corner, opposite);
  draw_waste (page, foot, item, board->plan);
  for (guint s = 0; s < board->plan->strips->len; s++)
    draw_strip (page, foot, item->length, g_ptr_array_index (board->plan->strips, s));
  for (guint s = 0; s < board->plan->strips->len; s++)
    draw_marks (page, foot, g_ptr_array_index (board->plan->strips, s));
  rw_draft_set (&page->draft, RW_LAYER_RIM, RW_SUBJECT_NONE);
  rw_cut_page_box (page, RW_PEN_OUTLINE, RW_TINT_NONE, corner, opposite);
  page->y = foot - 1;
  for (guint s = 0; s < board->plan->strips->len; s++)
    strip_words (page, g_ptr_array_index (board->plan->strips, s), s + 1, indent);
  offcut_words (page, board->plan, indent);
  page->y -= RW_CUT_GAP - RW_CUT_LINE;
}
