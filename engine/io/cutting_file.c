#include "cutting_json.h"

#include <math.h>

#include "csv_text.h"
#include "project/stock_field.h"

typedef struct
{
  const RwCuttingReport *report;
  const RwCutting *cutting;
  RwStyle  style;
  GString *out;
} Writer;

static const RwPiece *
piece_at (const Writer *w, int i)
{
  return &g_array_index (w->cutting->pieces, RwPiece, i);
}

static const RwStockItem *
item_at (const Writer *w, int k)
{
  return g_ptr_array_index (w->cutting->shelf->items, k);
}

static char *
length_text (const Writer *w, double length)
{
  return rw_quantity_write (length, "mm", w->style.units, 1, w->style.decimal);
}

/* ---- text ---- */

static void
item_heading (const Writer *w, int item, int times)
{
  const RwStockItem *stock = item_at (w, item);
  g_autofree char *words = rw_stock_item_words (stock, w->style);

  g_string_append_printf (w->out, "\n%s%s%s", stock->name, *stock->name != '\0' ? ": " : "", words);
  if (times > 1)
    g_string_append_printf (w->out, ", %d alike", times);
  g_string_append_c (w->out, '\n');
}

static void
text_strip (const Writer *w, const RwBoardStrip *strip, guint number)
{
  g_autofree char *wide = length_text (w, strip->to - strip->from);

  g_string_append_printf (w->out, "  strip %u, %s wide:\n", number, wide);
  for (guint i = 0; i < strip->cuts->len;)
    {
      const RwBoardCut *cut = &g_array_index (strip->cuts, RwBoardCut, i);
      const RwPiece *piece = piece_at (w, cut->piece);
      g_autofree char *words = rw_piece_words (piece), *from = length_text (w, cut->from);
      g_autofree char *length = length_text (w, cut->to - cut->from), *across = length_text (w, cut->width);
      guint next = i + 1;

      while (next < strip->cuts->len && g_array_index (strip->cuts, RwBoardCut, next).piece == cut->piece)
        next++;
      g_string_append_printf (w->out, "    from %s: %u × %s, %s%s", from, next - i, words, length,
                              piece->mitre > 0 ? " on the middle line" : "");
      if (strip->to - strip->from > cut->width + 0.05)
        g_string_append_printf (w->out, ", ripped down to %s", across);
      g_string_append (w->out, cut->on_edge ? ", on edge\n" : "\n");
      i = next;
    }
}

static void
text_boards (const Writer *w)
{
  for (guint b = 0; b < w->cutting->boards->len; b++)
    {
      const RwCutBoard *board = &g_array_index (w->cutting->boards, RwCutBoard, b);

      item_heading (w, board->item, 1);
      for (guint s = 0; s < board->plan->strips->len; s++)
        text_strip (w, g_ptr_array_index (board->plan->strips, s), s + 1);
      for (guint o = 0; o < board->plan->offcuts->len; o++)
        {
          const RwOffcut *offcut = &g_array_index (board->plan->offcuts, RwOffcut, o);
          g_autofree char *length = length_text (w, offcut->x1 - offcut->x0);
          g_autofree char *width = length_text (w, offcut->y1 - offcut->y0);

          g_string_append_printf (w->out, "  left: %s × %s\n", length, width);
        }
    }
}

static void
text_bars (const Writer *w)
{
  for (guint b = 0; b < w->cutting->bars->len; b++)
    {
      const RwCutBar *bar = g_ptr_array_index (w->cutting->bars, b);
      g_autofree char *rest = length_text (w, bar->rest);

      item_heading (w, bar->item, bar->times);
      for (guint c = 0; c < bar->cuts->len; c++)
        {
          const RwBarCut *cut = &g_array_index (bar->cuts, RwBarCut, c);
          g_autofree char *words = rw_piece_words (piece_at (w, cut->piece));
          g_autofree char *length = length_text (w, piece_at (w, cut->piece)->length);

          g_string_append_printf (w->out, "  %d × %s, %s\n", cut->count, words, length);
        }
      g_string_append_printf (w->out, "  left: %s\n", rest);
    }
}

/* Of bars: that the off-cut is the longest, or how long one could be at most. */
static void
text_offcut (const Writer *w, const RwCutGroup *group)
{
  g_autofree char *longest = length_text (w, group->offcut), *most = length_text (w, group->offcut_bound);

  if (!isfinite (group->offcut_bound))
    return;
  g_string_append_printf (w->out, "; longest off-cut %s", longest);
  if (group->offcut_bound > group->offcut + RW_OFFCUT_CLOSE)
    g_string_append_printf (w->out, ", no such plan leaves over %s", most);
  else
    g_string_append (w->out, ", proved longest");
}

/* How good the plan is, a line for each wood and each section of metal. */
static void
text_groups (const Writer *w)
{
  for (guint g = 0; g < w->cutting->groups->len; g++)
    {
      const RwCutGroup *group = &g_array_index (w->cutting->groups, RwCutGroup, g);

      g_string_append_printf (w->out, "  %s, %s: %d touched", group->wood ? "boards" : "bars",
                              group->material != NULL ? group->material : "any metal", group->touched);
      if (group->proved && group->bound >= 0)
        g_string_append (w->out, ", proved least");
      else if (group->bound >= 0)
        g_string_append_printf (w->out, ", no plan under %d", group->bound);
      else
        g_string_append (w->out, ", and no plan cuts all of it");
      text_offcut (w, group);
      g_string_append_c (w->out, '\n');
    }
}

static void
text_missing (const Writer *w)
{
  g_autoptr (GArray) shortages = rw_shortages (w->cutting);

  if (shortages->len == 0)
    {
      g_string_append (w->out, "The shelf will do.\n");
      return;
    }
  g_string_append (w->out, "The shelf will not do.\n\nMissing:\n");
  for (guint i = 0; i < shortages->len; i++)
    {
      g_autofree char *words = rw_shortage_words (w->cutting, &g_array_index (shortages, RwShortage, i), w->style);

      g_string_append_printf (w->out, "  %s\n", words);
    }
  g_string_append (w->out, "\nTo buy, with spare:\n");
  for (guint i = 0; i < shortages->len; i++)
    {
      g_autofree char *words = rw_shortage_buy_words (w->cutting, &g_array_index (shortages, RwShortage, i),
                                                      w->report->design, w->style);

      g_string_append_printf (w->out, "  %s\n", words);
    }
}

static void
text_remedies (const Writer *w)
{
  if (w->report->remedies == NULL || w->report->remedies->len == 0)
    return;
  g_string_append (w->out, "\nWhat would help:\n");
  for (guint r = 0; r < w->report->remedies->len; r++)
    {
      const RwStockRemedy *remedy = g_ptr_array_index (w->report->remedies, r);

      for (guint i = 0; i < remedy->changes->len; i++)
        {
          const RwRemedy *change = g_ptr_array_index (remedy->changes, i);
          g_autofree char *words = rw_remedy_words (change, change->pattern, w->style);

          g_string_append_printf (w->out, "  %s %s\n", i == 0 ? "-" : " ", words);
        }
      if (remedy->missing > 0)
        g_string_append_printf (w->out, "    Still missing then: %d\n", remedy->missing);
    }
}

static void
write_text (const Writer *w)
{
  text_missing (w);
  text_remedies (w);
  g_string_append (w->out, "\nThe plan:\n");
  text_groups (w);
  text_boards (w);
  text_bars (w);
  g_string_append_printf (w->out, "\nStock touched: %.2f kg", w->cutting->mass_g / 1000);
  if (w->cutting->price > 0)
    g_string_append_printf (w->out, ", price %.2f where entered", w->cutting->price);
  g_string_append_c (w->out, '\n');
}

/* ---- CSV ---- */

static void
csv_row (const Writer *w, int item, int copy, int strip, const RwPiece *piece, double from, double width, int count)
{
  g_autofree char *copies = g_strdup_printf ("%d", copy);
  g_autofree char *strips = strip > 0 ? g_strdup_printf ("%d", strip) : g_strdup ("");
  g_autofree char *mark = rw_piece_mark (piece), *words = rw_piece_words (piece), *many = g_strdup_printf ("%d", count);
  g_autofree char *at = isnan (from) ? g_strdup ("") : rw_number_write (from);
  g_autofree char *length = rw_number_write (piece->length);
  g_autofree char *across = rw_number_write (width), *number = g_strdup_printf ("%d", item + 1);
  const char *fields[]
      = { number, item_at (w, item)->name, copies, strips, mark, words, many, at, length, across, NULL };

  rw_csv_row (w->out, fields);
}

static void
write_csv (const Writer *w)
{
  static const char *const names[] = { "row", "stock", "number", "strip", "mark", "piece", "count", "from", "length",
                                       "width", NULL };

  rw_csv_row (w->out, names);
  for (guint b = 0; b < w->cutting->boards->len; b++)
    {
      const RwCutBoard *board = &g_array_index (w->cutting->boards, RwCutBoard, b);

      for (guint s = 0; s < board->plan->strips->len; s++)
        {
          const RwBoardStrip *strip = g_ptr_array_index (board->plan->strips, s);

          for (guint c = 0; c < strip->cuts->len; c++)
            {
              const RwBoardCut *cut = &g_array_index (strip->cuts, RwBoardCut, c);

              csv_row (w, board->item, board->copy + 1, (int) s + 1, piece_at (w, cut->piece), cut->from, cut->width,
                       1);
            }
        }
    }
  for (guint b = 0; b < w->cutting->bars->len; b++)
    {
      const RwCutBar *bar = g_ptr_array_index (w->cutting->bars, b);

      for (guint c = 0; c < bar->cuts->len; c++)
        {
          const RwBarCut *cut = &g_array_index (bar->cuts, RwBarCut, c);
          const RwPiece *piece = piece_at (w, cut->piece);

          csv_row (w, bar->item, bar->times, 0, piece, NAN, piece->width, cut->count);
        }
    }
}

char *
rw_cutting_write (const RwCuttingReport *report, RwListFormat format, RwUnits units)
{
  Writer w = { report, report->cutting, { units, '.' }, g_string_new (NULL) };

  if (format == RW_LIST_JSON)
    rw_cutting_json (report, w.out);
  else if (format == RW_LIST_CSV)
    write_csv (&w);
  else
    write_text (&w);
  return g_string_free (w.out, FALSE);
}
