#include "cutting.h"

#include <math.h>
#include <string.h>

#include "table/material.h"

/* A section is as asked for within this, mm. */
#define SECTION_CLOSE 0.2
/* What may be more is at most so many times as large. */
#define SECTION_MOST 1.6

typedef struct
{
  RwCutting *cutting;
  const RwDesign *d;
  gboolean   quick;
  RwCutGoOn  go_on;
  gpointer   data;
  int       *left;  /* of each item of the shelf */
  gboolean  *done;  /* pieces that have been dealt with */
} Planner;

static const RwPiece *
piece_at (const RwCutting *cutting, guint i)
{
  return &g_array_index (cutting->pieces, RwPiece, i);
}

static const RwStockItem *
item_at (const RwCutting *cutting, guint k)
{
  return g_ptr_array_index (cutting->shelf->items, k);
}

/* ---- what suits ---- */

static gboolean
is_flat_wood (RwStockKind kind)
{
  return kind == RW_STOCK_BOARD || kind == RW_STOCK_SHEET;
}

static gboolean
size_suits (double wanted, double there, gboolean exact)
{
  if (exact)
    return fabs (there - wanted) <= SECTION_CLOSE + 1e-9;
  return there >= wanted - 1e-9 && there <= wanted * SECTION_MOST;
}

gboolean
rw_piece_suits (const RwPiece *piece, const RwStockItem *item)
{
  if (is_flat_wood (piece->kind))
    return is_flat_wood (item->kind) && strcmp (piece->material, item->material) == 0;
  return item->kind == piece->kind && rw_metal_find (item->material) >= 0
         && (piece->material == NULL || strcmp (piece->material, item->material) == 0)
         && size_suits (piece->width, item->width, piece->exact)
         && (!rw_stock_kind_is_thick (piece->kind) || size_suits (piece->thickness, item->thickness, piece->exact));
}

/* Pieces that go together: of one wood; or metal that the same bars suit. */
static gboolean
go_together (const RwCutting *cutting, const RwPiece *a, const RwPiece *b)
{
  if (is_flat_wood (a->kind) || is_flat_wood (b->kind))
    return is_flat_wood (a->kind) && is_flat_wood (b->kind) && strcmp (a->material, b->material) == 0;
  for (guint k = 0; k < cutting->shelf->items->len; k++)
    if (rw_piece_suits (a, item_at (cutting, k)) != rw_piece_suits (b, item_at (cutting, k)))
      return FALSE;
  return a->kind == b->kind && fabs (a->width - b->width) < SECTION_CLOSE
         && fabs (a->thickness - b->thickness) < SECTION_CLOSE && g_strcmp0 (a->material, b->material) == 0;
}

/* The pieces that go with the first one that has not been dealt with; empty at the end. */
static GArray *
next_group (Planner *p)
{
  GArray *group = g_array_new (FALSE, FALSE, sizeof (int));
  const RwPiece *first = NULL;

  for (guint i = 0; i < p->cutting->pieces->len; i++)
    {
      const RwPiece *piece = piece_at (p->cutting, i);
      int at = (int) i;

      if (p->done[i] || (first != NULL && !go_together (p->cutting, first, piece)))
        continue;
      first = first != NULL ? first : piece;
      p->done[i] = TRUE;
      g_array_append_val (group, at);
    }
  return group;
}

/* The items of the shelf that suit a group, and are left. */
static GArray *
stock_for (const Planner *p, const RwPiece *piece)
{
  GArray *stock = g_array_new (FALSE, FALSE, sizeof (int));

  for (guint k = 0; k < p->cutting->shelf->items->len; k++)
    {
      int at = (int) k;

      if (p->left[k] > 0 && rw_piece_suits (piece, item_at (p->cutting, k)))
        g_array_append_val (stock, at);
    }
  return stock;
}

static void
use_up (Planner *p, int item, int count)
{
  const RwStockItem *stock = item_at (p->cutting, (guint) item);

  p->left[item] -= count;
  p->cutting->price += count * stock->price;
  p->cutting->mass_g += count * rw_stock_item_mass (stock);
}

static void
note_missing (Planner *p, const GArray *group, const int *left_out)
{
  for (guint i = 0; i < group->len; i++)
    {
      p->cutting->missing[g_array_index (group, int, i)] = left_out[i];
      p->cutting->missing_total += left_out[i];
    }
}

/* ---- boards ---- */

static void
take_board_plan (Planner *p, const GArray *group, const GArray *stock, RwBoardPlan *plan)
{
  RwCutting *cutting = p->cutting;

  for (guint b = 0; b < plan->boards->len; b++)
    {
      RwBoardPlanBoard *board = g_ptr_array_index (plan->boards, b);
      RwCutBoard cut = { g_array_index (stock, int, board->stock), board->copy, board };

      for (guint s = 0; s < board->strips->len; s++)
        {
          RwBoardStrip *strip = g_ptr_array_index (board->strips, s);

          for (guint c = 0; c < strip->cuts->len; c++)
            {
              RwBoardCut *one = &g_array_index (strip->cuts, RwBoardCut, c);

              one->piece = g_array_index (group, int, one->piece);
            }
        }
      use_up (p, cut.item, 1);
      g_array_append_val (cutting->boards, cut);
    }
  g_ptr_array_add (cutting->plans, plan);
}

static void
plan_boards (Planner *p, const GArray *group)
{
  RwCutting *cutting = p->cutting;
  const RwPiece *first = piece_at (cutting, (guint) g_array_index (group, int, 0));
  g_autoptr (GArray) items = stock_for (p, first);
  g_autofree RwBoardPiece *pieces = g_new0 (RwBoardPiece, group->len + 1);
  g_autofree RwBoardStock *stock = g_new0 (RwBoardStock, items->len + 1);
  RwBoardTask task = { pieces, (int) group->len, stock, (int) items->len, cutting->rip_kerf, cutting->cross_kerf,
                       cutting->end_trim, cutting->edge_trim, cutting->least_offcut, p->quick, p->go_on, p->data };

  for (guint i = 0; i < group->len; i++)
    {
      const RwPiece *piece = piece_at (cutting, (guint) g_array_index (group, int, i));

      pieces[i]
          = (RwBoardPiece){ piece->length, piece->width, piece->thickness, piece->count, piece->on_edge, piece->run };
    }
  for (guint k = 0; k < items->len; k++)
    {
      const RwStockItem *item = item_at (cutting, (guint) g_array_index (items, int, k));

      stock[k] = (RwBoardStock){ item->length, item->width, item->thickness, item->count, item->avoid };
    }

  RwBoardPlan *plan = rw_cut_board (&task);
  RwCutGroup about = { first->material, TRUE, (int) plan->boards->len, plan->bound, FALSE, plan->offcut, NAN };
  about.proved = plan->missing == 0 ? about.touched == about.bound : items->len == 0;
  note_missing (p, group, plan->left_out);
  take_board_plan (p, group, items, plan);
  g_array_append_val (cutting->groups, about);
}

/* ---- bars ---- */

static void
free_bar (gpointer data)
{
  RwCutBar *bar = data;

  g_array_unref (bar->cuts);
  g_free (bar);
}

static int
by_length (gconstpointer a, gconstpointer b, gpointer data)
{
  const RwCutting *cutting = data;
  double p = piece_at (cutting, (guint) ((const RwBarCut *) a)->piece)->length;
  double q = piece_at (cutting, (guint) ((const RwBarCut *) b)->piece)->length;

  return p > q ? -1 : p < q;
}

static void
take_line_plan (Planner *p, const GArray *group, const GArray *stock, const RwLinePlan *plan)
{
  for (guint b = 0; b < plan->bars->len; b++)
    {
      const RwLineBar *from = &g_array_index (plan->bars, RwLineBar, b);
      RwCutBar *bar = g_new0 (RwCutBar, 1);

      bar->item = g_array_index (stock, int, from->stock);
      bar->times = from->times;
      bar->rest = from->rest;
      bar->cuts = g_array_new (FALSE, FALSE, sizeof (RwBarCut));
      for (guint i = 0; i < group->len; i++)
        {
          RwBarCut cut = { g_array_index (group, int, i), from->pieces[i] };

          if (cut.count > 0)
            g_array_append_val (bar->cuts, cut);
        }
      g_array_sort_with_data (bar->cuts, by_length, p->cutting);
      use_up (p, bar->item, bar->times);
      g_ptr_array_add (p->cutting->bars, bar);
    }
}

static void
plan_bars (Planner *p, const GArray *group)
{
  RwCutting *cutting = p->cutting;
  const RwPiece *first = piece_at (cutting, (guint) g_array_index (group, int, 0));
  g_autoptr (GArray) items = stock_for (p, first);
  g_autofree RwLinePiece *pieces = g_new0 (RwLinePiece, group->len + 1);
  g_autofree RwLineStock *stock = g_new0 (RwLineStock, items->len + 1);
  RwLineTask task = { pieces, (int) group->len, stock, (int) items->len, cutting->metal_kerf, cutting->bar_trim,
                      RW_LINE_FEWEST, p->quick, p->go_on, p->data };

  for (guint i = 0; i < group->len; i++)
    {
      const RwPiece *piece = piece_at (cutting, (guint) g_array_index (group, int, i));

      pieces[i] = (RwLinePiece){ piece->length, piece->count };
    }
  for (guint k = 0; k < items->len; k++)
    {
      int item = g_array_index (items, int, k);

      stock[k] = (RwLineStock){ item_at (cutting, (guint) item)->length, p->left[item] };
    }
  if (first->kind == RW_STOCK_WIRE)
    task.kerf = 0; /* nipped */

  g_autoptr (RwLinePlan) plan = rw_cut_line (&task);
  RwCutGroup about
      = { first->material, FALSE, (int) plan->cost, 0, plan->proved, plan->offcut, plan->offcut_bound };
  about.bound = plan->missing > 0 ? (plan->proved ? -1 : 0) : (int) plan->bound;
  note_missing (p, group, plan->left_out);
  take_line_plan (p, group, items, plan);
  g_array_append_val (cutting->groups, about);
}

/* ---- the whole ---- */

static void
take_settings (RwCutting *cutting, const RwDesign *d)
{
  cutting->rip_kerf = d->stock_rip_kerf;
  cutting->cross_kerf = d->shop_kerf;
  cutting->metal_kerf = d->shop_rod_kerf;
  cutting->end_trim = d->stock_end_trim;
  cutting->edge_trim = d->stock_edge_trim;
  cutting->bar_trim = d->stock_bar_trim;
  cutting->least_offcut = d->stock_least_offcut;
}

RwCutting *
rw_cutting_new (const RwResult *result, const RwShelf *shelf, gboolean quick, RwCutGoOn go_on, gpointer data)
{
  RwCutting *cutting = g_new0 (RwCutting, 1);
  guint items = shelf->items->len;

  cutting->pieces = rw_demand (result);
  cutting->shelf = rw_shelf_copy (shelf);
  cutting->missing = g_new0 (int, cutting->pieces->len + 1);
  cutting->boards = g_array_new (FALSE, FALSE, sizeof (RwCutBoard));
  cutting->bars = g_ptr_array_new_with_free_func (free_bar);
  cutting->groups = g_array_new (FALSE, FALSE, sizeof (RwCutGroup));
  cutting->plans = g_ptr_array_new_with_free_func ((GDestroyNotify) rw_board_plan_free);
  take_settings (cutting, &result->used);

  Planner p = { cutting, &result->used, quick, go_on, data, g_new0 (int, items + 1),
                g_new0 (gboolean, cutting->pieces->len + 1) };
  for (guint k = 0; k < items; k++)
    p.left[k] = item_at (cutting, k)->count;
  for (;;)
    {
      g_autoptr (GArray) group = next_group (&p);

      if (group->len == 0)
        break;
      if (is_flat_wood (piece_at (cutting, (guint) g_array_index (group, int, 0))->kind))
        plan_boards (&p, group);
      else
        plan_bars (&p, group);
    }
  cutting->whole = go_on == NULL || go_on (data);
  g_free (p.left);
  g_free (p.done);
  return cutting;
}

void
rw_cutting_free (RwCutting *cutting)
{
  if (cutting == NULL)
    return;
  g_array_unref (cutting->pieces);
  rw_shelf_free (cutting->shelf);
  g_free (cutting->missing);
  g_array_unref (cutting->boards);
  g_ptr_array_unref (cutting->bars);
  g_array_unref (cutting->groups);
  g_ptr_array_unref (cutting->plans);
  g_free (cutting);
}
