/* Cutting boards: which boards to try, in what order to lay the pieces, and the bound. */
#include "cut_board.h"

#include <math.h>
#include <string.h>

#include "board_pack.h"

#define CLOSE 1e-6
#define TRIES 24       /* orders of laying, for each choice of boards */
#define QUICK_TRIES 5
#define CHOICES 250    /* of boards */
#define SUBSET_BOARDS 12 /* with more boards, only the order in which they are opened is tried */
/* An off-cut narrower than this is a lath. */
#define OFFCUT_WIDTH 15.0

typedef struct
{
  const RwBoardTask *task;
  GPtrArray   *zones;  /* of GArray, by stock */
  RwPackBoard *boards; /* the largest first */
  int          board_count;
  GRand       *rand;
  int         *order;
  RwBoardPlan *best;
  gboolean     cancelled;
} Cutter;

/* ---- boards ---- */

static gint
compare_stretches (gconstpointer a, gconstpointer b)
{
  double p = ((const RwStretch *) a)->from, q = ((const RwStretch *) b)->from;

  return p < q ? -1 : p > q;
}

GArray *
rw_board_zones (const RwBoardTask *task, const RwBoardStock *stock)
{
  GArray *zones = g_array_new (FALSE, FALSE, sizeof (RwStretch));
  g_autoptr (GArray) avoid = stock->avoid != NULL ? g_array_copy ((GArray *) stock->avoid)
                                                  : g_array_new (FALSE, FALSE, sizeof (RwStretch));
  double from = task->end_trim, end = stock->length - task->end_trim;

  g_array_sort (avoid, compare_stretches);
  for (guint i = 0; i <= avoid->len; i++)
    {
      RwStretch bad = i < avoid->len ? g_array_index (avoid, RwStretch, i) : (RwStretch){ end, INFINITY };
      RwStretch zone = { from, MIN (bad.from, end) };

      if (zone.to - zone.from > 1)
        g_array_append_val (zones, zone);
      from = MAX (from, bad.to);
    }
  return zones;
}

static double
zone_length (const RwBoardTask *task, const GArray *zones)
{
  double length = 0;

  for (guint z = 0; z < zones->len; z++)
    length += g_array_index (zones, RwStretch, z).to - g_array_index (zones, RwStretch, z).from + task->cross_kerf;
  return length;
}

/* Room for pieces with their kerfs, mm2. */
static double
capacity (const RwBoardTask *task, const RwPackBoard *board)
{
  return board->width > 0 ? zone_length (task, board->zones) * (board->width + task->rip_kerf) : 0;
}

static void
take_boards (Cutter *c)
{
  const RwBoardTask *task = c->task;
  int many = 0, pieces = 0;

  for (int i = 0; i < task->piece_count; i++)
    pieces += MAX (0, task->pieces[i].count);
  for (int k = 0; k < task->stock_count; k++)
    many += CLAMP (task->stock[k].count, 0, pieces);
  c->boards = g_new0 (RwPackBoard, many + 1);
  c->zones = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  for (int k = 0; k < task->stock_count; k++)
    {
      GArray *zones = rw_board_zones (task, &task->stock[k]);

      g_ptr_array_add (c->zones, zones);
      for (int copy = 0; copy < MIN (task->stock[k].count, pieces); copy++)
        {
          RwPackBoard board = { k, copy, task->stock[k].width - 2 * task->edge_trim, task->stock[k].thickness, zones };
          int at = c->board_count++;

          for (; at > 0 && capacity (task, &c->boards[at - 1]) < capacity (task, &board); at--)
            c->boards[at] = c->boards[at - 1];
          c->boards[at] = board;
        }
    }
}

/* ---- the bound ---- */

static double
needs_thick (const RwBoardPiece *piece)
{
  return piece->on_edge ? MIN (piece->thickness, piece->width) : piece->thickness;
}

static double
needs_area (const RwBoardTask *task, const RwBoardPiece *piece)
{
  double width = piece->on_edge ? MIN (piece->thickness, piece->width) : piece->width;

  return piece->count * (piece->length + task->cross_kerf) * (width + task->rip_kerf);
}

/* Whether one piece alone fits on some board. */
static gboolean
fits_somewhere (const Cutter *c, const RwBoardPiece *piece)
{
  for (int b = 0; b < c->board_count; b++)
    for (int edge = 0; edge <= (piece->on_edge ? 1 : 0); edge++)
      {
        const RwPackBoard *board = &c->boards[b];

        if (board->thickness < (edge ? piece->width : piece->thickness) - CLOSE
            || board->width < (edge ? piece->thickness : piece->width) - CLOSE)
          continue;
        for (guint z = 0; z < board->zones->len; z++)
          {
            const RwStretch *zone = &g_array_index (board->zones, RwStretch, z);

            if (piece->length + (piece->run > 0 ? piece->run + c->task->cross_kerf : 0)
                <= zone->to - zone->from + CLOSE)
              return TRUE;
          }
      }
  return FALSE;
}

/* Boards at least this thick, the largest first, until they have the area of all pieces that need such; -1: never. */
static int
boards_for (const Cutter *c, double thick)
{
  double area = 0;
  int count = 0;

  for (int i = 0; i < c->task->piece_count; i++)
    if (needs_thick (&c->task->pieces[i]) >= thick - CLOSE)
      area += needs_area (c->task, &c->task->pieces[i]);
  for (int b = 0; b < c->board_count && area > CLOSE; b++)
    if (c->boards[b].thickness >= thick - CLOSE)
      {
        area -= capacity (c->task, &c->boards[b]);
        count++;
      }
  return area > CLOSE ? -1 : count;
}

static int
find_bound (const Cutter *c)
{
  int bound = 0;

  for (int i = 0; i < c->task->piece_count; i++)
    {
      int count = boards_for (c, needs_thick (&c->task->pieces[i]));

      if (c->task->pieces[i].count > 0 && (count < 0 || !fits_somewhere (c, &c->task->pieces[i])))
        return -1;
      bound = MAX (bound, count);
    }
  return bound;
}

/* ---- off-cuts ---- */

static void
add_offcut (const RwBoardTask *task, RwBoardPlan *plan, RwBoardPlanBoard *board, RwOffcut offcut)
{
  if (offcut.x1 - offcut.x0 < MAX (task->least_offcut, CLOSE) || offcut.y1 - offcut.y0 < OFFCUT_WIDTH)
    return;
  g_array_append_val (board->offcuts, offcut);
  plan->offcut = MAX (plan->offcut, (offcut.x1 - offcut.x0) * (offcut.y1 - offcut.y0));
}

/* Where the cuts of a strip end within a zone. */
static double
strip_end (const RwBoardTask *task, const RwBoardStrip *strip, const RwStretch *zone)
{
  double end = zone->from;

  for (guint i = 0; i < strip->cuts->len; i++)
    {
      const RwBoardCut *cut = &g_array_index (strip->cuts, RwBoardCut, i);

      if (cut->from >= zone->from - CLOSE && cut->from < zone->to)
        end = MAX (end, cut->to + task->cross_kerf + task->pieces[cut->piece].run / 2);
    }
  return end;
}

static void
find_offcuts (const Cutter *c, RwBoardPlan *plan)
{
  const RwBoardTask *task = c->task;

  for (guint b = 0; b < plan->boards->len; b++)
    {
      RwBoardPlanBoard *board = g_ptr_array_index (plan->boards, b);
      const GArray *zones = g_ptr_array_index (c->zones, (guint) board->stock);
      double top = 0;

      for (guint z = 0; z < zones->len; z++)
        {
          const RwStretch *zone = &g_array_index (zones, RwStretch, z);

          for (guint s = 0; s < board->strips->len; s++)
            {
              const RwBoardStrip *strip = g_ptr_array_index (board->strips, s);

              top = strip->to + task->rip_kerf;
              add_offcut (task, plan, board,
                          (RwOffcut){ strip_end (task, strip, zone), strip->from, zone->to, strip->to });
            }
          add_offcut (task, plan, board,
                      (RwOffcut){ zone->from, top, zone->to, task->stock[board->stock].width - task->edge_trim });
        }
    }
}

/* ---- trying ---- */

static gboolean
is_better (const RwBoardPlan *a, const RwBoardPlan *b)
{
  if (b == NULL || a->missing != b->missing)
    return b == NULL || a->missing < b->missing;
  if (a->boards->len != b->boards->len)
    return a->boards->len < b->boards->len;
  return a->offcut > b->offcut + 1;
}

/* The hardest to place first: what asks for thick boards, then for wide or long ones. */
static double
hardness (const RwBoardPiece *piece, int rule)
{
  double width = piece->on_edge ? MAX (piece->width, piece->thickness) : piece->width;

  switch (rule)
    {
    case 0:
      return needs_thick (piece) * 1e6 + width * 1e3 + piece->length;
    case 1:
      return width * 1e3 + piece->length;
    case 2:
      return piece->length * 1e3 + width;
    default:
      return piece->length * width * sqrt (needs_thick (piece));
    }
}

static void
sort_order (Cutter *c, int attempt)
{
  const RwBoardTask *task = c->task;
  g_autofree double *key = g_new (double, task->piece_count + 1);

  for (int i = 0; i < task->piece_count; i++)
    {
      double shaken = attempt < 4 ? 1 : g_rand_double_range (c->rand, 0.6, 1.4);

      key[i] = hardness (&task->pieces[i], attempt % 4) * shaken;
      c->order[i] = i;
    }
  for (int i = 1; i < task->piece_count; i++)
    {
      int kind = c->order[i], at = i;

      for (; at > 0 && key[c->order[at - 1]] < key[kind]; at--)
        c->order[at] = c->order[at - 1];
      c->order[at] = kind;
    }
}

/* Tries some orders on some of the boards; whether all pieces were laid. */
static gboolean
try_boards (Cutter *c, const gboolean *open)
{
  gboolean all = FALSE;
  int tries = c->task->quick ? QUICK_TRIES : TRIES;

  for (int attempt = 0; attempt < tries && !c->cancelled; attempt++)
    {
      RwPackTry pack = { c->task, c->boards, c->board_count, open, c->order, attempt % 2 == 1 };
      RwBoardPlan *plan;

      sort_order (c, attempt);
      plan = rw_board_pack (&pack);
      find_offcuts (c, plan);
      all = all || plan->missing == 0;
      if (is_better (plan, c->best))
        {
          g_clear_pointer (&c->best, rw_board_plan_free);
          c->best = plan;
        }
      else
        rw_board_plan_free (plan);
      if (all && c->task->quick)
        break;
      c->cancelled = c->task->go_on != NULL && !c->task->go_on (c->task->data);
    }
  return all;
}

/* All choices of so many boards, the largest first, until enough have been tried; whether one holds everything. */
static gboolean
try_choices (Cutter *c, int count, int *tried)
{
  g_autofree gboolean *open = g_new0 (gboolean, c->board_count + 1);
  guint all = 1u << c->board_count;
  gboolean found = FALSE;

  for (guint choice = 1; choice < all && *tried < CHOICES && !c->cancelled; choice++)
    {
      int bits = 0;

      for (int b = 0; b < c->board_count; b++)
        {
          open[b] = choice >> b & 1;
          bits += open[b];
        }
      if (bits != count)
        continue;
      ++*tried;
      found = try_boards (c, open) || found;
      if (found && c->task->quick)
        break;
    }
  return found;
}

static void
search (Cutter *c, int bound)
{
  g_autofree gboolean *open = g_new0 (gboolean, c->board_count + 1);
  int tried = 0;

  for (int b = 0; b < c->board_count; b++)
    open[b] = TRUE;
  gboolean all = try_boards (c, open);
  if (!all || c->task->quick || c->board_count > SUBSET_BOARDS)
    return;
  for (int count = MAX (bound, 1); count <= (int) c->best->boards->len && !c->cancelled; count++)
    if (try_choices (c, count, &tried))
      return;
}

RwBoardPlan *
rw_cut_board (const RwBoardTask *task)
{
  Cutter c = { .task = task };
  int bound;

  take_boards (&c);
  c.order = g_new0 (int, task->piece_count + 1);
  c.rand = g_rand_new_with_seed (20260504);
  bound = find_bound (&c);
  search (&c, bound);
  c.best->bound = bound;
  g_rand_free (c.rand);
  g_free (c.order);
  g_free (c.boards);
  g_ptr_array_unref (c.zones);
  return c.best;
}

void
rw_board_strip_free (RwBoardStrip *strip)
{
  g_array_unref (strip->cuts);
  g_free (strip);
}

void
rw_board_plan_free (RwBoardPlan *plan)
{
  if (plan == NULL)
    return;
  g_ptr_array_unref (plan->boards);
  g_free (plan->left_out);
  g_free (plan);
}
