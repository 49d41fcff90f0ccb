#include "cutting_json.h"

#include <math.h>

#include "json_writer.h"

static void
add_pieces (RwJsonWriter *json, const RwCutting *cutting)
{
  rw_json_name (json, "pieces");
  rw_json_begin (json, '[');
  for (guint i = 0; i < cutting->pieces->len; i++)
    {
      const RwPiece *piece = &g_array_index (cutting->pieces, RwPiece, i);
      g_autofree char *mark = rw_piece_mark (piece), *words = rw_piece_words (piece);

      rw_json_next (json);
      rw_json_begin_line (json, '{');
      rw_json_text (json, "mark", mark);
      rw_json_text (json, "piece", words);
      rw_json_text (json, "material", piece->material);
      rw_json_text (json, "kind", rw_stock_kind_id (piece->kind));
      rw_json_value (json, "count", piece->count);
      rw_json_value (json, "length", piece->length);
      rw_json_value (json, "width", piece->width);
      rw_json_value (json, "thickness", piece->thickness);
      rw_json_value (json, "run", piece->run);
      rw_json_value (json, "missing", cutting->missing[i]);
      rw_json_flag (json, "on_edge", piece->on_edge);
      rw_json_end (json, '}');
    }
  rw_json_end (json, ']');
}

static void
add_groups (RwJsonWriter *json, const RwCutting *cutting)
{
  rw_json_name (json, "groups");
  rw_json_begin (json, '[');
  for (guint g = 0; g < cutting->groups->len; g++)
    {
      const RwCutGroup *group = &g_array_index (cutting->groups, RwCutGroup, g);

      rw_json_next (json);
      rw_json_begin_line (json, '{');
      rw_json_value (json, "touched", group->touched);
      rw_json_value (json, "bound", group->bound);
      rw_json_flag (json, "proved", group->proved);
      if (isfinite (group->offcut_bound))
        {
          rw_json_value (json, "offcut", group->offcut);
          rw_json_value (json, "offcut_bound", group->offcut_bound);
        }
      rw_json_end (json, '}');
    }
  rw_json_end (json, ']');
}

static void
add_strip (RwJsonWriter *json, const RwBoardStrip *strip)
{
  rw_json_next (json);
  rw_json_begin (json, '{');
  rw_json_value (json, "from", strip->from);
  rw_json_value (json, "to", strip->to);
  rw_json_name (json, "cuts");
  rw_json_begin (json, '[');
  for (guint c = 0; c < strip->cuts->len; c++)
    {
      const RwBoardCut *cut = &g_array_index (strip->cuts, RwBoardCut, c);

      rw_json_next (json);
      rw_json_begin_line (json, '{');
      rw_json_value (json, "place", cut->piece);
      rw_json_value (json, "from", cut->from);
      rw_json_value (json, "to", cut->to);
      rw_json_value (json, "width", cut->width);
      rw_json_flag (json, "on_edge", cut->on_edge);
      rw_json_end (json, '}');
    }
  rw_json_end (json, ']');
  rw_json_end (json, '}');
}

static void
add_boards (RwJsonWriter *json, const RwCutting *cutting)
{
  rw_json_name (json, "boards");
  rw_json_begin (json, '[');
  for (guint b = 0; b < cutting->boards->len; b++)
    {
      const RwCutBoard *board = &g_array_index (cutting->boards, RwCutBoard, b);

      rw_json_next (json);
      rw_json_begin (json, '{');
      rw_json_value (json, "item", board->item);
      rw_json_value (json, "copy", board->copy);
      rw_json_name (json, "strips");
      rw_json_begin (json, '[');
      for (guint s = 0; s < board->plan->strips->len; s++)
        add_strip (json, g_ptr_array_index (board->plan->strips, s));
      rw_json_end (json, ']');
      rw_json_end (json, '}');
    }
  rw_json_end (json, ']');
}

static void
add_bar (RwJsonWriter *json, const RwCutBar *bar)
{
  rw_json_next (json);
  rw_json_begin_line (json, '{');
  rw_json_value (json, "item", bar->item);
  rw_json_value (json, "times", bar->times);
  rw_json_value (json, "rest", bar->rest);
  rw_json_name (json, "cuts");
  rw_json_begin (json, '[');
  for (guint c = 0; c < bar->cuts->len; c++)
    {
      const RwBarCut *cut = &g_array_index (bar->cuts, RwBarCut, c);

      rw_json_next (json);
      rw_json_begin (json, '{');
      rw_json_value (json, "place", cut->piece);
      rw_json_value (json, "count", cut->count);
      rw_json_end (json, '}');
    }
  rw_json_end (json, ']');
  rw_json_end (json, '}');
}

static void
add_bars (RwJsonWriter *json, const RwCutting *cutting)
{
  rw_json_name (json, "bars");
  rw_json_begin (json, '[');
  for (guint b = 0; b < cutting->bars->len; b++)
    add_bar (json, g_ptr_array_index (cutting->bars, b));
  rw_json_end (json, ']');
}

static void
add_remedy (RwJsonWriter *json, const RwStockRemedy *remedy)
{
  rw_json_next (json);
  rw_json_begin (json, '{');
  rw_json_value (json, "missing", remedy->missing);
  rw_json_name (json, "changes");
  rw_json_begin (json, '[');
  for (guint i = 0; i < remedy->changes->len; i++)
    {
      const RwRemedy *change = g_ptr_array_index (remedy->changes, i);
      g_autofree char *value = rw_design_write (&remedy->design, change->param, RW_STYLE_FILE);

      rw_json_next (json);
      rw_json_begin_line (json, '{');
      rw_json_text (json, "id", rw_param (change->param)->id);
      rw_json_text (json, "value", value);
      rw_json_text (json, "text", change->text);
      rw_json_end (json, '}');
    }
  rw_json_end (json, ']');
  rw_json_end (json, '}');
}

static void
add_remedies (RwJsonWriter *json, const GPtrArray *all)
{
  rw_json_name (json, "remedies");
  rw_json_begin (json, '[');
  for (guint r = 0; all != NULL && r < all->len; r++)
    add_remedy (json, g_ptr_array_index (all, r));
  rw_json_end (json, ']');
}

void
rw_cutting_json (const RwCuttingReport *report, GString *out)
{
  RwJsonWriter json = rw_json_writer (out);
  const RwCutting *cutting = report->cutting;

  rw_json_begin (&json, '{');
  rw_json_value (&json, "rip_kerf", cutting->rip_kerf);
  rw_json_value (&json, "cross_kerf", cutting->cross_kerf);
  rw_json_value (&json, "metal_kerf", cutting->metal_kerf);
  rw_json_value (&json, "end_trim", cutting->end_trim);
  rw_json_value (&json, "edge_trim", cutting->edge_trim);
  rw_json_value (&json, "bar_trim", cutting->bar_trim);
  rw_json_value (&json, "missing", cutting->missing_total);
  rw_json_value (&json, "price", cutting->price);
  rw_json_value (&json, "mass", cutting->mass_g);
  add_pieces (&json, cutting);
  add_groups (&json, cutting);
  add_boards (&json, cutting);
  add_bars (&json, cutting);
  add_remedies (&json, report->remedies);
  rw_json_end (&json, '}');
  g_string_append_c (out, '\n');
}
