#include "cutting_file.h"

#include <math.h>

#include "csv_text.h"
#include "json_writer.h"
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
        g_string_append (w->out, ", proved least\n");
      else if (group->bound >= 0)
        g_string_append_printf (w->out, ", no plan under %d\n", group->bound);
      else
        g_string_append (w->out, ", and no plan cuts all of it\n");
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

/* ---- JSON ---- */

static void
json_member (GString *out, const char *name, double value, gboolean first)
{
  g_string_append_printf (out, "%s\"%s\": ", first ? "" : ", ", name);
  rw_json_number (out, value);
}

static void
json_piece (GString *out, const RwPiece *piece)
{
  g_autofree char *mark = rw_piece_mark (piece), *words = rw_piece_words (piece);

  g_string_append (out, "\"mark\": ");
  rw_json_string (out, mark);
  g_string_append (out, ", \"piece\": ");
  rw_json_string (out, words);
}

static void
json_pieces (RwJsonWriter *json, const Writer *w)
{
  rw_json_name (json, "pieces");
  rw_json_begin (json, '[');
  for (guint i = 0; i < w->cutting->pieces->len; i++)
    {
      const RwPiece *piece = piece_at (w, (int) i);

      rw_json_next (json);
      g_string_append (json->out, "{ ");
      json_piece (json->out, piece);
      g_string_append (json->out, ", \"material\": ");
      if (piece->material != NULL)
        rw_json_string (json->out, piece->material);
      else
        g_string_append (json->out, "null");
      g_string_append (json->out, ", \"kind\": ");
      rw_json_string (json->out, rw_stock_kind_id (piece->kind));
      json_member (json->out, "count", piece->count, FALSE);
      json_member (json->out, "length", piece->length, FALSE);
      json_member (json->out, "width", piece->width, FALSE);
      json_member (json->out, "thickness", piece->thickness, FALSE);
      json_member (json->out, "run", piece->run, FALSE);
      json_member (json->out, "missing", w->cutting->missing[i], FALSE);
      g_string_append_printf (json->out, ", \"on_edge\": %s }", piece->on_edge ? "true" : "false");
    }
  rw_json_end (json, ']');
}

static void
json_strip (RwJsonWriter *json, const Writer *w, const RwBoardStrip *strip)
{
  rw_json_next (json);
  rw_json_begin (json, '{');
  rw_json_name (json, "from");
  rw_json_number (json->out, strip->from);
  rw_json_name (json, "to");
  rw_json_number (json->out, strip->to);
  rw_json_name (json, "cuts");
  rw_json_begin (json, '[');
  for (guint c = 0; c < strip->cuts->len; c++)
    {
      const RwBoardCut *cut = &g_array_index (strip->cuts, RwBoardCut, c);

      rw_json_next (json);
      g_string_append (json->out, "{ ");
      json_member (json->out, "place", cut->piece, TRUE);
      json_member (json->out, "from", cut->from, FALSE);
      json_member (json->out, "to", cut->to, FALSE);
      json_member (json->out, "width", cut->width, FALSE);
      g_string_append_printf (json->out, ", \"on_edge\": %s }", cut->on_edge ? "true" : "false");
    }
  rw_json_end (json, ']');
  rw_json_end (json, '}');
}

static void
json_boards (RwJsonWriter *json, const Writer *w)
{
  rw_json_name (json, "boards");
  rw_json_begin (json, '[');
  for (guint b = 0; b < w->cutting->boards->len; b++)
    {
      const RwCutBoard *board = &g_array_index (w->cutting->boards, RwCutBoard, b);

      rw_json_next (json);
      rw_json_begin (json, '{');
      rw_json_name (json, "item");
      rw_json_number (json->out, board->item);
      rw_json_name (json, "copy");
      rw_json_number (json->out, board->copy);
      rw_json_name (json, "strips");
      rw_json_begin (json, '[');
      for (guint s = 0; s < board->plan->strips->len; s++)
        json_strip (json, w, g_ptr_array_index (board->plan->strips, s));
      rw_json_end (json, ']');
      rw_json_end (json, '}');
    }
  rw_json_end (json, ']');
}

static void
json_bars (RwJsonWriter *json, const Writer *w)
{
  rw_json_name (json, "bars");
  rw_json_begin (json, '[');
  for (guint b = 0; b < w->cutting->bars->len; b++)
    {
      const RwCutBar *bar = g_ptr_array_index (w->cutting->bars, b);

      rw_json_next (json);
      g_string_append (json->out, "{ ");
      json_member (json->out, "item", bar->item, TRUE);
      json_member (json->out, "times", bar->times, FALSE);
      json_member (json->out, "rest", bar->rest, FALSE);
      g_string_append (json->out, ", \"cuts\": [");
      for (guint c = 0; c < bar->cuts->len; c++)
        {
          const RwBarCut *cut = &g_array_index (bar->cuts, RwBarCut, c);

          g_string_append (json->out, c > 0 ? ", { " : " { ");
          json_member (json->out, "place", cut->piece, TRUE);
          json_member (json->out, "count", cut->count, FALSE);
          g_string_append (json->out, " }");
        }
      g_string_append (json->out, " ] }");
    }
  rw_json_end (json, ']');
}

static void
json_groups (RwJsonWriter *json, const Writer *w)
{
  rw_json_name (json, "groups");
  rw_json_begin (json, '[');
  for (guint g = 0; g < w->cutting->groups->len; g++)
    {
      const RwCutGroup *group = &g_array_index (w->cutting->groups, RwCutGroup, g);

      rw_json_next (json);
      g_string_append (json->out, "{ ");
      json_member (json->out, "touched", group->touched, TRUE);
      json_member (json->out, "bound", group->bound, FALSE);
      g_string_append_printf (json->out, ", \"proved\": %s }", group->proved ? "true" : "false");
    }
  rw_json_end (json, ']');
}

static void
json_remedies (RwJsonWriter *json, const Writer *w)
{
  rw_json_name (json, "remedies");
  rw_json_begin (json, '[');
  for (guint r = 0; w->report->remedies != NULL && r < w->report->remedies->len; r++)
    {
      const RwStockRemedy *remedy = g_ptr_array_index (w->report->remedies, r);

      rw_json_next (json);
      rw_json_begin (json, '{');
      rw_json_name (json, "missing");
      rw_json_number (json->out, remedy->missing);
      rw_json_name (json, "changes");
      rw_json_begin (json, '[');
      for (guint i = 0; i < remedy->changes->len; i++)
        {
          const RwRemedy *change = g_ptr_array_index (remedy->changes, i);
          g_autofree char *value = rw_design_write (&remedy->design, change->param, RW_STYLE_FILE);

          rw_json_next (json);
          g_string_append (json->out, "{ \"id\": ");
          rw_json_string (json->out, rw_param (change->param)->id);
          g_string_append (json->out, ", \"value\": ");
          rw_json_string (json->out, value);
          g_string_append (json->out, ", \"text\": ");
          rw_json_string (json->out, change->text);
          g_string_append (json->out, " }");
        }
      rw_json_end (json, ']');
      rw_json_end (json, '}');
    }
  rw_json_end (json, ']');
}

static void
write_json (const Writer *w)
{
  RwJsonWriter json = rw_json_writer (w->out);
  const RwCutting *cutting = w->cutting;
  const struct { const char *name; double value; } settings[] = {
    { "rip_kerf", cutting->rip_kerf }, { "cross_kerf", cutting->cross_kerf }, { "metal_kerf", cutting->metal_kerf },
    { "end_trim", cutting->end_trim }, { "edge_trim", cutting->edge_trim }, { "bar_trim", cutting->bar_trim },
    { "missing", cutting->missing_total }, { "price", cutting->price }, { "mass", cutting->mass_g },
  };

  rw_json_begin (&json, '{');
  for (gsize i = 0; i < G_N_ELEMENTS (settings); i++)
    {
      rw_json_name (&json, settings[i].name);
      rw_json_number (json.out, settings[i].value);
    }
  json_pieces (&json, w);
  json_groups (&json, w);
  json_boards (&json, w);
  json_bars (&json, w);
  json_remedies (&json, w);
  rw_json_end (&json, '}');
  g_string_append_c (w->out, '\n');
}

char *
rw_cutting_write (const RwCuttingReport *report, RwListFormat format, RwUnits units)
{
  Writer w = { report, report->cutting, { units, '.' }, g_string_new (NULL) };

  if (format == RW_LIST_JSON)
    write_json (&w);
  else if (format == RW_LIST_CSV)
    write_csv (&w);
  else
    write_text (&w);
  return g_string_free (w.out, FALSE);
}
