/* The search for better plans than the quick one.
 *
 * It covers the largest piece that is left with one bar after the other, over all patterns that take up what else
 * fits: in any plan, pieces can be moved into that bar until nothing more fits, and it costs no more.  Prices from the
 * relaxation tell what the rest costs at least, and so which patterns can still lead to something better.
 *
 * Searched thoroughly, every step has prices of its own, and the patterns by which the relaxation covers the largest
 * piece are tried first.  It then goes astray from the first choice once, twice and so on, before it tries all: W. D.
 * Harvey & M. L. Ginsberg, Limited discrepancy search, 14th International Joint Conference on Artificial Intelligence
 * (1995). */
#include "line_problem.h"

#include <math.h>
#include <string.h>

/* What is remembered of the way, at some hundred bytes each. */
#define SEEN_MOST 200000
/* Prices take as long as so many steps. */
#define PRICES_STEPS 400u
/* How often the first passes stray. */
#define STRAY_MOST 3

typedef struct
{
  int    stock;
  double reduced; /* what the bar costs more than its pieces are worth; patterns of the relaxation before others */
  gint64 rest;
  int    pieces[]; /* m of them */
} Choice;

typedef struct
{
  RwLineWork *work;
  const RwLine *line;
  const RwLinePrices *prices;
  gboolean    thorough;
  int        *demand, *limit, *now;
  double     *densest; /* the best worth for its size from each kind on */
  gint64      cost, best;
  guint       steps, most;
  int         missing;
  int         stray;      /* how often it may still leave the first choice; -1: as often as it likes */
  gboolean    passed_by;  /* something was not tried for that */
  GArray     *trail;      /* of Choice *, not owned */
  GHashTable *seen;       /* what remained, as bytes -> cost by which it was reached */
  RwLineSolution *found;
  const RwLineSolution *start;
} Search;

static gboolean
spent (Search *q)
{
  if (q->work->cancelled || q->steps > q->most)
    return TRUE;
  if (++q->steps % 1024 == 0 && q->work->go_on != NULL && !q->work->go_on (q->work->data))
    q->work->cancelled = TRUE;
  return q->work->cancelled || q->steps > q->most;
}

/* How much more than by the prices may still be spent; negative: nothing better comes of this. */
static double
budget (const Search *q)
{
  double purse = (double) (q->best - q->line->unit - q->cost) + 1e-6;

  return purse < 0 ? purse : purse - rw_line_bound (q->line, q->prices, q->demand, q->limit);
}

/* ---- what a bar may be cut into ---- */

typedef struct
{
  Search    *q;
  GPtrArray *choices; /* of Choice */
  int        stock;
  double     wanted; /* worth that the pattern must have */
} Gather;

static void
add_choice (GPtrArray *choices, const RwLine *line, int stock, double reduced, gint64 rest, const int *pieces)
{
  Choice *choice = g_malloc (sizeof (Choice) + (gsize) line->m * sizeof (int));

  choice->stock = stock;
  choice->reduced = reduced;
  choice->rest = rest;
  memcpy (choice->pieces, pieces, (gsize) line->m * sizeof (int));
  g_ptr_array_add (choices, choice);
}

static gboolean
is_full (const Search *q, gint64 room)
{
  for (int i = q->line->m - 1; i >= 0; i--)
    if (q->demand[i] > q->now[i] && q->line->size[i] <= room)
      return FALSE;
  return TRUE;
}

static void
gather (Gather *g, int i, gint64 room, double worth)
{
  Search *q = g->q;
  const RwLine *line = q->line;

  while (i < line->m && (q->demand[i] == q->now[i] || line->size[i] > room))
    i++;
  if (spent (q) || worth + (i < line->m ? (double) room * q->densest[i] : 0) < g->wanted)
    return;
  if (i == line->m)
    {
      if (is_full (q, room))
        add_choice (g->choices, line, g->stock, g->wanted - worth, room, q->now);
      return;
    }

  int had = q->now[i];
  int most = (int) MIN (q->demand[i] - had, room / line->size[i]);
  for (int n = most; n >= 0; n--)
    {
      q->now[i] = had + n;
      gather (g, i + 1, room - n * line->size[i], worth + n * q->prices->price[i]);
    }
  q->now[i] = had;
}

static int
compare_choices (gconstpointer a, gconstpointer b)
{
  const Choice *p = *(Choice *const *) a, *q = *(Choice *const *) b;

  if (fabs (p->reduced - q->reduced) > 1e-9)
    return p->reduced < q->reduced ? -1 : 1;
  return p->rest < q->rest ? -1 : p->rest > q->rest;
}

static void
gather_choices (Search *q, int largest, double spare, GPtrArray *choices)
{
  const RwLine *line = q->line;

  for (int k = 0; k < line->s; k++)
    if (q->limit[k] > 0 && line->size[largest] <= line->capacity[k])
      {
        Gather g = { q, choices, k, (double) line->cost[k] + q->prices->fee[k] - spare };

        memset (q->now, 0, (gsize) line->m * sizeof (int));
        q->now[largest] = 1;
        gather (&g, largest, line->capacity[k] - line->size[largest], q->prices->price[largest]);
        q->now[largest] = 0;
      }
  g_ptr_array_sort (choices, compare_choices);
}

/* Patterns by which the relaxation covers the largest piece, filled up: those of which it takes most before others. */
static void
relaxed_choices (const Search *q, int largest, GPtrArray *choices)
{
  const RwLine *line = q->line;
  g_autofree int *pieces = g_new (int, line->m + 1);

  for (guint p = 0; p < q->prices->first->patterns->len; p++)
    {
      const RwLinePattern *pattern = &g_array_index (q->prices->first->patterns, RwLinePattern, p);
      gint64 rest = line->capacity[pattern->stock];

      if (pattern->pieces[largest] == 0 || q->limit[pattern->stock] == 0)
        continue;
      for (int i = 0; i < line->m; i++)
        {
          pieces[i] = MIN (pattern->pieces[i], q->demand[i]);
          rest -= pieces[i] * line->size[i];
        }
      for (int i = largest; i < line->m; i++)
        {
          int more = (int) MIN (q->demand[i] - pieces[i], rest / line->size[i]);

          pieces[i] += more;
          rest -= more * line->size[i];
        }
      add_choice (choices, line, pattern->stock, -g_array_index (q->prices->amounts, double, p), rest, pieces);
    }
  g_ptr_array_sort (choices, compare_choices);
}

/* ---- the way ---- */

static void
keep_found (Search *q)
{
  g_clear_pointer (&q->found, rw_line_solution_free);
  q->found = rw_line_solution_copy (q->line, q->start);
  for (guint i = 0; i < q->trail->len; i++)
    {
      const Choice *choice = g_array_index (q->trail, Choice *, i);

      rw_line_solution_add (q->found, q->line, choice->stock, choice->pieces, 1);
    }
  q->found->missing = q->missing;
  q->found->cost = q->best = q->cost;
}

/* Whether the same remains as before, reached by no more then. */
static gboolean
seen_before (Search *q)
{
  gsize pieces = (gsize) q->line->m * sizeof (int), stock = (gsize) q->line->s * sizeof (int);
  g_autofree char *bytes = g_malloc (pieces + stock);
  GBytes *key;
  gint64 *cost;

  memcpy (bytes, q->demand, pieces);
  memcpy (bytes + pieces, q->limit, stock);
  key = g_bytes_new_take (g_steal_pointer (&bytes), pieces + stock);
  cost = g_hash_table_lookup (q->seen, key);
  if (cost != NULL && *cost <= q->cost)
    {
      g_bytes_unref (key);
      return TRUE;
    }
  if (cost != NULL || g_hash_table_size (q->seen) < SEEN_MOST)
    g_hash_table_replace (q->seen, key, g_memdup2 (&q->cost, sizeof q->cost));
  else
    g_bytes_unref (key);
  return FALSE;
}

static void search_on (Search *q);

static void
try_choice (Search *q, Choice *choice)
{
  for (int i = 0; i < q->line->m; i++)
    q->demand[i] -= choice->pieces[i];
  q->limit[choice->stock]--;
  q->cost += q->line->cost[choice->stock];
  g_array_append_val (q->trail, choice);
  search_on (q);
  g_array_set_size (q->trail, q->trail->len - 1);
  q->cost -= q->line->cost[choice->stock];
  q->limit[choice->stock]++;
  for (int i = 0; i < q->line->m; i++)
    q->demand[i] += choice->pieces[i];
}

/* The first as it is, the others each as once astray. */
static void
try_choices (Search *q, const GPtrArray *choices, gboolean first)
{
  for (guint i = 0; i < choices->len && !spent (q); i++)
    {
      gboolean astray = (!first || i > 0) && q->stray >= 0;

      if (astray && q->stray == 0)
        {
          q->passed_by = TRUE;
          return;
        }
      q->stray -= astray;
      try_choice (q, g_ptr_array_index (choices, i));
      q->stray += astray;
    }
}

/* Goes without all of a kind that are left: leaving out only some of them is tried where the bars have taken the
 * others. */
static void
try_without (Search *q, int i)
{
  int count = q->demand[i];

  q->demand[i] = 0;
  q->missing += count;
  q->cost += count * q->line->penalty;
  search_on (q);
  q->cost -= count * q->line->penalty;
  q->missing -= count;
  q->demand[i] = count;
}

static void
search_from (Search *q, int largest)
{
  g_autoptr (GPtrArray) relaxed = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GPtrArray) choices = g_ptr_array_new_with_free_func (g_free);
  double spare = budget (q);

  if (spare < 0)
    return;
  if (q->thorough)
    relaxed_choices (q, largest, relaxed);
  try_choices (q, relaxed, TRUE);
  if (q->thorough && q->stray == 0)
    q->passed_by = TRUE;
  else
    {
      gather_choices (q, largest, spare, choices);
      try_choices (q, choices, relaxed->len == 0);
    }
  try_without (q, largest);
}

static void
set_prices (Search *q, const RwLinePrices *prices)
{
  double densest = 0;

  q->prices = prices;
  for (int i = q->line->m - 1; i >= 0; i--)
    q->densest[i] = densest = MAX (densest, prices->price[i] / (double) q->line->size[i]);
}

/* With prices for what remains. */
static void
search_afresh (Search *q, int largest)
{
  const RwLinePrices *before = q->prices;
  RwLine rest = *q->line;

  rest.demand = q->demand;
  rest.limit = q->limit;
  q->steps += PRICES_STEPS;
  g_autoptr (RwLinePrices) prices
      = rw_line_prices_new (&rest, (double) (q->best - q->line->unit - q->cost), before->first);
  set_prices (q, prices);
  search_from (q, largest);
  set_prices (q, before);
}

static void
search_on (Search *q)
{
  int largest = 0;

  if (spent (q) || budget (q) < 0)
    return;
  while (largest < q->line->m && q->demand[largest] == 0)
    largest++;
  if (largest == q->line->m)
    keep_found (q);
  else if (seen_before (q))
    return;
  else if (q->thorough)
    search_afresh (q, largest);
  else
    search_from (q, largest);
}

/* One pass after the other, each strays once more; the last tries all. */
static void
search_in_passes (Search *q)
{
  for (int stray = 0; stray <= STRAY_MOST && !spent (q) && q->found == NULL; stray++)
    {
      q->stray = stray;
      q->passed_by = FALSE;
      g_hash_table_remove_all (q->seen);
      search_on (q);
      if (!q->passed_by)
        return;
    }
  q->stray = -1;
  g_hash_table_remove_all (q->seen);
  if (q->found == NULL)
    search_on (q);
}

RwLineSolution *
rw_line_search (RwLineWork *work, const RwLineSolution *start, gint64 below, guint steps, gboolean thorough,
                guint *taken, gboolean *exhausted)
{
  const RwLine *line = work->line;
  Search q = { .work = work, .line = line, .best = below, .most = steps, .start = start, .thorough = thorough,
               .stray = -1, .cost = start != NULL ? start->cost : 0 };

  q.demand = g_new (int, line->m + 1);
  q.limit = g_new (int, line->s + 1);
  q.now = g_new0 (int, line->m + 1);
  q.densest = g_new0 (double, line->m + 1);
  q.trail = g_array_new (FALSE, FALSE, sizeof (Choice *));
  q.seen = g_hash_table_new_full (g_bytes_hash, g_bytes_equal, (GDestroyNotify) g_bytes_unref, g_free);
  set_prices (&q, work->prices);
  rw_line_take_off (line, start, q.demand, q.limit);
  if (thorough)
    search_in_passes (&q);
  else
    search_on (&q);
  if (taken != NULL)
    *taken = q.steps;
  *exhausted = !work->cancelled && q.steps <= q.most && !(thorough && q.found != NULL);

  g_hash_table_unref (q.seen);
  g_array_unref (q.trail);
  g_free (q.densest);
  g_free (q.now);
  g_free (q.limit);
  g_free (q.demand);
  return q.found;
}
