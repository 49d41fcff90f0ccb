/* Cutting lengths: the task made into whole numbers, the plan made of the answer, and what lies between. */
#include "line_problem.h"

#include <math.h>
#include <string.h>

#define MICRONS 1000.0

/* Steps of the search.  A million takes some tenths of a second; nearly all plans need a thousand. */
#define STEPS_FIRST 60000u
#define STEPS_PLAIN 100000u
#define STEPS_WHOLE 2000000u
/* With more pieces, the search is not begun from nothing. */
#define MANY_PIECES 120

/* ---- the task as whole numbers ---- */

typedef struct
{
  const RwLineTask *task;
  RwLine line;
  int   *piece_kind; /* of each piece of the task its kind; -1: none is wanted, or it has no length */
  int    pieces;     /* in all */
  gint64 kerf;
} Cutter;

static gint64
microns (double mm)
{
  return (gint64) floor (mm * MICRONS + 0.5);
}

static int
compare_sizes (gconstpointer a, gconstpointer b)
{
  gint64 p = *(const gint64 *) a, q = *(const gint64 *) b;

  return p > q ? -1 : p < q;
}

/* Sorts sizes from large to small and takes out what is there twice; how many are left. */
static int
sort_sizes (gint64 *sizes, int count)
{
  int kept = 0;

  if (count > 0)
    qsort (sizes, (gsize) count, sizeof *sizes, compare_sizes);
  for (int i = 0; i < count; i++)
    if (kept == 0 || sizes[kept - 1] != sizes[i])
      sizes[kept++] = sizes[i];
  return kept;
}

static int
find_size (const gint64 *sizes, int count, gint64 size)
{
  for (int i = 0; i < count; i++)
    if (sizes[i] == size)
      return i;
  return -1;
}

static void
take_pieces (Cutter *c)
{
  const RwLineTask *task = c->task;
  RwLine *line = &c->line;
  int many = 0;

  /* One place more: that of an off-cut that is looked for. */
  line->size = g_new0 (gint64, task->piece_count + 1);
  line->demand = g_new0 (int, task->piece_count + 1);
  c->piece_kind = g_new (int, task->piece_count + 1);
  for (int i = 0; i < task->piece_count; i++)
    if (task->pieces[i].count > 0 && task->pieces[i].length > 0)
      line->size[many++] = microns (task->pieces[i].length) + c->kerf;
  line->m = sort_sizes (line->size, many);
  for (int i = 0; i < task->piece_count; i++)
    {
      gboolean wanted = task->pieces[i].count > 0 && task->pieces[i].length > 0;
      int kind = wanted ? find_size (line->size, line->m, microns (task->pieces[i].length) + c->kerf) : -1;

      c->piece_kind[i] = kind;
      if (kind >= 0)
        {
          line->demand[kind] += task->pieces[i].count;
          c->pieces += task->pieces[i].count;
        }
    }
}

static gint64
capacity_of (const Cutter *c, int stock)
{
  return MAX (0, microns (c->task->stock[stock].length - 2 * c->task->trim) + c->kerf);
}

static int
limit_of (const Cutter *c, int stock)
{
  int count = c->task->stock[stock].count;

  return count == RW_LINE_NO_LIMIT ? c->pieces : CLAMP (count, 0, c->pieces);
}

static void
take_stock (Cutter *c)
{
  const RwLineTask *task = c->task;
  RwLine *line = &c->line;
  gint64 all = 0;

  line->capacity = g_new0 (gint64, task->stock_count + 1);
  line->cost = g_new0 (gint64, task->stock_count + 1);
  line->limit = g_new0 (int, task->stock_count + 1);
  for (int k = 0; k < task->stock_count; k++)
    line->capacity[k] = capacity_of (c, k);
  line->s = sort_sizes (line->capacity, task->stock_count);
  for (int k = 0; k < task->stock_count; k++)
    {
      int kind = find_size (line->capacity, line->s, capacity_of (c, k));

      line->limit[kind] = MIN (line->limit[kind] + limit_of (c, k), c->pieces);
      line->cost[kind] = task->goal == RW_LINE_FEWEST ? 1 : microns (task->stock[k].length);
    }
  for (int k = 0; k < line->s; k++)
    {
      all += line->cost[k] * line->limit[k];
      line->unit = rw_common_divisor (line->unit, line->cost[k]);
    }
  line->unit = MAX (line->unit, 1);
  line->penalty = (all / line->unit + 1) * line->unit;
}

static void
cutter_clear (Cutter *c)
{
  g_free (c->line.size);
  g_free (c->line.demand);
  g_free (c->line.capacity);
  g_free (c->line.cost);
  g_free (c->line.limit);
  g_free (c->piece_kind);
}

/* ---- the best plan ---- */

static void
keep_better (RwLineSolution **best, RwLineSolution *other)
{
  if (other != NULL && (*best == NULL || other->cost < (*best)->cost))
    {
      rw_line_solution_free (*best);
      *best = other;
    }
  else
    rw_line_solution_free (other);
}

/* The relaxation's patterns, as many whole times as it takes them. */
static RwLineSolution *
rounded_down (const RwLine *line, const RwLinePrices *prices)
{
  RwLineSolution *whole = rw_line_solution_copy (line, NULL);

  for (guint p = 0; p < prices->first->patterns->len; p++)
    {
      const RwLinePattern *pattern = &g_array_index (prices->first->patterns, RwLinePattern, p);
      int times = (int) floor (g_array_index (prices->amounts, double, p) + 1e-6);

      if (times > 0)
        rw_line_solution_add (whole, line, pattern->stock, pattern->pieces, times);
    }
  return whole;
}

/* A bound in whole units. */
static gint64
round_up (const RwLine *line, double bound)
{
  return (gint64) ceil (bound / (double) line->unit - 1e-6) * line->unit;
}

/* The cheapest plan; bound is what none goes under.  Given a target, any plan within it will do. */
static RwLineSolution *
cheapest (RwLineWork *work, int pieces, guint steps, gint64 *bound)
{
  const RwLine *line = work->line;
  g_autoptr (RwLinePrices) prices = rw_line_prices_new (line, NAN, NULL);
  gint64 least = round_up (line, prices->bound);
  RwLineSolution *best = rw_line_greedy (line, NULL);
  g_autoptr (RwLineSolution) whole = NULL;
  gboolean exhausted = FALSE;

  work->prices = prices;
  if (best->cost > least)
    {
      whole = rounded_down (line, prices);
      keep_better (&best, rw_line_greedy (line, whole));
    }
  if (best->cost > least && whole->patterns->len > 0)
    keep_better (&best, rw_line_search (work, whole, best->cost, MIN (steps, STEPS_FIRST), FALSE, NULL, &exhausted));
  exhausted = FALSE;
  if (best->cost > least && pieces <= MANY_PIECES)
    keep_better (&best, rw_line_search (work, NULL, best->cost, steps, FALSE, NULL, &exhausted));
  *bound = exhausted ? best->cost : MIN (least, best->cost);
  work->prices = NULL;
  return best;
}

/* ---- the plan ---- */

/* Deals the pieces of a kind out to those of the task, which may have several of the same length. */
static int *
deal_out (const Cutter *c, const RwLinePattern *pattern, int *left)
{
  int *pieces = g_new0 (int, c->task->piece_count + 1);

  for (int kind = 0; kind < c->line.m; kind++)
    {
      int many = pattern->pieces[kind];

      for (int i = 0; i < c->task->piece_count && many > 0; i++)
        if (c->piece_kind[i] == kind)
          {
            int some = MIN (many, left[i]);

            pieces[i] += some;
            left[i] -= some;
            many -= some;
          }
    }
  return pieces;
}

static int
take_one (const Cutter *c, int kind, int *left)
{
  for (int k = 0; k < c->task->stock_count; k++)
    if (left[k] > 0 && capacity_of (c, k) == c->line.capacity[kind])
      {
        left[k]--;
        return k;
      }
  g_return_val_if_reached (0);
}

/* One bar; where the one before is cut alike, that one once more. */
static void
add_bar (const Cutter *c, RwLinePlan *plan, const RwLinePattern *pattern, int *left, int *stock_left)
{
  RwLineBar bar = { take_one (c, pattern->stock, stock_left), 1, deal_out (c, pattern, left), 0 };
  const RwLineTask *task = c->task;
  gint64 used = 0;
  gsize bytes = (gsize) task->piece_count * sizeof (int);

  for (int i = 0; i < task->piece_count; i++)
    if (bar.pieces[i] > 0)
      used += bar.pieces[i] * (microns (task->pieces[i].length) + c->kerf);
  bar.rest = (double) MAX (0, c->line.capacity[pattern->stock] - used - c->kerf) / MICRONS;
  if (plan->bars->len > 0)
    {
      RwLineBar *before = &g_array_index (plan->bars, RwLineBar, plan->bars->len - 1);

      if (before->stock == bar.stock && memcmp (before->pieces, bar.pieces, bytes) == 0)
        {
          before->times++;
          g_free (bar.pieces);
          return;
        }
    }
  g_array_append_val (plan->bars, bar);
}

static RwLinePlan *
plan_of (const Cutter *c, const RwLineSolution *solution)
{
  const RwLineTask *task = c->task;
  RwLinePlan *plan = g_new0 (RwLinePlan, 1);
  g_autofree int *stock_left = g_new0 (int, task->stock_count + 1);

  plan->bars = g_array_new (FALSE, FALSE, sizeof (RwLineBar));
  plan->left_out = g_new0 (int, task->piece_count + 1);
  for (int i = 0; i < task->piece_count; i++)
    plan->left_out[i] = c->piece_kind[i] >= 0 ? task->pieces[i].count : 0;
  for (int k = 0; k < task->stock_count; k++)
    stock_left[k] = limit_of (c, k);
  for (guint p = 0; p < solution->patterns->len; p++)
    {
      const RwLinePattern *pattern = &g_array_index (solution->patterns, RwLinePattern, p);

      for (int n = 0; n < pattern->times; n++)
        add_bar (c, plan, pattern, plan->left_out, stock_left);
    }
  for (int i = 0; i < task->piece_count; i++)
    plan->missing += plan->left_out[i];
  for (guint b = 0; b < plan->bars->len; b++)
    plan->offcut = MAX (plan->offcut, g_array_index (plan->bars, RwLineBar, b).rest);
  return plan;
}

static void
state_bound (const Cutter *c, RwLinePlan *plan, const RwLineSolution *solution, gint64 bound)
{
  double scale = c->task->goal == RW_LINE_FEWEST ? 1 : MICRONS;
  gint64 left_out = plan->missing * c->line.penalty;

  plan->cost = (double) (solution->cost - left_out) / scale;
  plan->proved = bound >= solution->cost;
  plan->bound = bound >= left_out ? (double) (bound - left_out) / scale : NAN;
}

RwLinePlan *
rw_cut_line (const RwLineTask *task)
{
  Cutter c = { .task = task, .kerf = microns (task->kerf) };
  g_autoptr (RwLineSolution) best = NULL;
  RwLinePlan *plan;
  gint64 bound = 0, offcut = -1;

  take_pieces (&c);
  take_stock (&c);
  RwLineWork work = { &c.line, NULL, task->go_on, task->data, FALSE };
  if (task->goal == RW_LINE_FEWEST && c.pieces <= MANY_PIECES)
    best = rw_line_fewest (&work, task->plain, &bound, &offcut);
  else
    best = cheapest (&work, c.pieces, task->plain ? STEPS_PLAIN : STEPS_WHOLE, &bound);
  if (task->goal == RW_LINE_LENGTH && !task->plain && c.pieces <= MANY_PIECES && best->missing == 0 && c.line.s > 0)
    offcut = rw_line_leave_longest (&work, &c.line, &best);
  plan = plan_of (&c, best);
  state_bound (&c, plan, best, bound);
  plan->offcut_bound = offcut >= 0 ? (double) MAX (0, offcut - c.kerf) / MICRONS : NAN;
  plan->offcut_proved = plan->proved && plan->offcut_bound <= plan->offcut + RW_OFFCUT_CLOSE;
  cutter_clear (&c);
  return plan;
}

void
rw_line_plan_free (RwLinePlan *plan)
{
  if (plan == NULL)
    return;
  for (guint b = 0; b < plan->bars->len; b++)
    g_free (g_array_index (plan->bars, RwLineBar, b).pieces);
  g_array_unref (plan->bars);
  g_free (plan->left_out);
  g_free (plan);
}
