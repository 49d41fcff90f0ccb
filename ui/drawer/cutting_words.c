#include "cutting_words.h"

#include <glib/gi18n.h>

#include "project/stock_field.h"
#include "stock/shortage.h"

typedef struct
{
  const RwCutting *cutting;
  RwStyle          style;
  GString         *out;
} Words;

static void
begin_line (Words *words, int item, int times)
{
  const RwStockItem *stock = g_ptr_array_index (words->cutting->shelf->items, item);
  g_autofree char *size = rw_stock_item_words (stock, words->style);
  g_autofree char *named = *stock->name != '\0' ? g_strdup_printf ("%s: %s", stock->name, size) : g_strdup (size);

  if (words->out->len > 0)
    g_string_append_c (words->out, '\n');
  if (times > 1)
    g_string_append_printf (words->out, _("%s; %d alike"), named, times);
  else
    g_string_append (words->out, named);
}

static void
add_part (Words *words, const char *part)
{
  g_string_append_printf (words->out, "; %s", part);
}

/* Of frets there are as many lengths as frets: they are told together. */
static char *
piece_words (const RwPiece *piece)
{
  return piece->use == RW_PIECE_FRET ? g_strdup (_(rw_piece_label (piece->use))) : rw_piece_words (piece);
}

/* What one board or bar gives, in the order of the demand; counts is by piece. */
static void
add_pieces (Words *words, const int *counts)
{
  const GArray *pieces = words->cutting->pieces;

  for (guint i = 0; i < pieces->len; i++)
    {
      const RwPiece *piece = &g_array_index (pieces, RwPiece, i);
      int count = counts[i];

      if (count == 0)
        continue;
      for (; piece->use == RW_PIECE_FRET && i + 1 < pieces->len
             && g_array_index (pieces, RwPiece, i + 1).use == RW_PIECE_FRET; i++)
        count += counts[i + 1];
      g_autofree char *name = piece_words (piece);
      g_autofree char *part = g_strdup_printf ("%d × %s", count, name);
      add_part (words, part);
    }
}

static char *
figure (const Words *words, double length)
{
  return rw_quantity_write (length, "mm", words->style.units, 1, words->style.decimal);
}

static void
add_board (Words *words, const RwCutBoard *board)
{
  g_autofree int *counts = g_new0 (int, words->cutting->pieces->len + 1);
  g_autoptr (GString) left = g_string_new (NULL);

  begin_line (words, board->item, 1);
  for (guint s = 0; s < board->plan->strips->len; s++)
    {
      const RwBoardStrip *strip = g_ptr_array_index (board->plan->strips, s);

      for (guint c = 0; c < strip->cuts->len; c++)
        counts[g_array_index (strip->cuts, RwBoardCut, c).piece]++;
    }
  add_pieces (words, counts);
  for (guint i = 0; i < board->plan->offcuts->len; i++)
    {
      const RwOffcut *offcut = &g_array_index (board->plan->offcuts, RwOffcut, i);
      g_autofree char *length = figure (words, offcut->x1 - offcut->x0);
      g_autofree char *width = figure (words, offcut->y1 - offcut->y0);

      g_string_append_printf (left, "%s%s × %s", i > 0 ? "; " : "", length, width);
    }
  if (left->len > 0)
    {
      g_autofree char *part = g_strdup_printf (_("Left to keep: %s"), left->str);

      add_part (words, part);
    }
}

static void
add_bar (Words *words, const RwCutBar *bar)
{
  g_autofree int *counts = g_new0 (int, words->cutting->pieces->len + 1);
  g_autofree char *rest = figure (words, bar->rest);
  g_autofree char *left = g_strdup_printf (_("Left: %s"), rest);

  begin_line (words, bar->item, bar->times);
  for (guint c = 0; c < bar->cuts->len; c++)
    {
      const RwBarCut *cut = &g_array_index (bar->cuts, RwBarCut, c);

      counts[cut->piece] += cut->count;
    }
  add_pieces (words, counts);
  add_part (words, left);
}

static void
add_missing (Words *words)
{
  g_autoptr (GArray) shortages = rw_shortages (words->cutting);

  for (guint i = 0; i < shortages->len; i++)
    {
      g_autofree char *line
          = rw_shortage_words (words->cutting, &g_array_index (shortages, RwShortage, i), words->style);

      g_string_append_printf (words->out, "%s%s", i > 0 ? "\n" : "", line);
    }
}

char *
rw_cutting_words (const RwCutting *cutting, RwStyle style)
{
  Words words = { cutting, style, g_string_new (NULL) };

  add_missing (&words);
  for (guint b = 0; b < cutting->boards->len; b++)
    add_board (&words, &g_array_index (cutting->boards, RwCutBoard, b));
  for (guint b = 0; b < cutting->bars->len; b++)
    add_bar (&words, g_ptr_array_index (cutting->bars, b));
  return g_string_free (words.out, FALSE);
}
