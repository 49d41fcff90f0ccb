/* Plans for cutting lengths: a quick one, and the search for better ones.
 *
 * The search covers the largest piece that is left with one bar after the other, over all patterns that take up what
 * else fits: in any plan, pieces can be moved into that bar until nothing more fits, and it costs no more.  Prices from
 * the relaxation tell what the rest costs at least, and so which patterns can still lead to something better. */
#include "line_problem.h"

#include <math.h>
#include <string.h>

RwLineSolution *
rw_line_solution_new (void)
{
  RwLineSolution *solution = g_new0 (RwLineSolution, 1);

  solution->patterns = g_array_new (FALSE, FALSE, sizeof (RwLinePattern));
  return solution;
}

void
rw_line_solution_free (RwLineSolution *solution)
{
  if (solution == NULL)
    return;
  for (guint i = 0; i < solution->patterns->len; i++)
    g_free (g_array_index (solution->patterns, RwLinePattern, i).pieces);
  g_array_unref (solution->patterns);
  g_free (solution);
}

void
rw_line_solution_add (RwLineSolution *solution, const RwLine *line, int stock, const int *pieces, int times)
{
  RwLinePattern pattern = { stock, times, g_memdup2 (pieces, (gsize) line->m * sizeof (int)) };

  g_array_append_val (solution->patterns, pattern);
  solution->cost += times * line->cost[stock];
}

/* What start leaves to be done. */
static void
take_off (const RwLine *line, const RwLineSolution *start, int *demand, int *limit)
{
  for (int i = 0; i < line->m; i++)
    demand[i] = line->demand[i];
  for (int j = 0; j < line->s; j++)
    limit[j] = line->limit[j];
  for (guint p = 0; start != NULL && p < start->patterns->len; p++)
    {
      const RwLinePattern *pattern = &g_array_index (start->patterns, RwLinePattern, p);

      limit[pattern->stock] -= pattern->times;
      for (int i = 0; i < line->m; i++)
        demand[i] = MAX (0, demand[i] - pattern->times * pattern->pieces[i]);
    }
}

static RwLineSolution *
copy_solution (const RwLine *line, const RwLineSolution *start)
{
  RwLineSolution *copy = rw_line_solution_new ();

  for (guint p = 0; start != NULL && p < start->patterns->len; p++)
    {
      const RwLinePattern *pattern = &g_array_index (start->patterns, RwLinePattern, p);

      rw_line_solution_add (copy, line, pattern->stock, pattern->pieces, pattern->times);
    }
  return copy;
}

/* ---- the quick plan ---- */

#define FILL_STEPS 4000

/* Fills a bar with its largest piece, and then by length as well as it goes; what it costs for each length used. */
static double
fill (const RwLine *line, int stock, int largest, int *demand, int *pieces)
{
  g_autofree double *length = g_new (double, line->m);
  double used = (double) line->size[largest];

  for (int i = 0; i < line->m; i++)
    length[i] = (double) line->size[i];
  demand[largest]--;
  rw_line_knapsack (line, length, line->capacity[stock] - line->size[largest], demand, FILL_STEPS, pieces,
                    NULL);
  demand[largest]++;
  pieces[largest]++;
  for (int i = 0; i < line->m; i++)
    used += (double) line->size[i] * (pieces[i] - (i == largest));
  return ((double) line->cost[stock] + 1e-9 * (double) line->capacity[stock]) / used;
}

RwLineSolution *
rw_line_greedy (const RwLine *line, const RwLineSolution *start)
{
  g_autofree int *demand = g_new (int, line->m), *limit = g_new (int, line->s + 1);
  g_autofree int *pieces = g_new (int, line->m), *best = g_new (int, line->m);
  RwLineSolution *solution = copy_solution (line, start);

  take_off (line, start, demand, limit);
  for (int i = 0; i < line->m;)
    {
      int stock = -1;
      double least = INFINITY;

      if (demand[i] == 0)
        {
          i++;
          continue;
        }
      for (int k = 0; k < line->s; k++)
        if (limit[k] > 0 && line->size[i] <= line->capacity[k])
          {
            double each = fill (line, k, i, demand, pieces);

            if (each < least)
              {
                least = each;
                stock = k;
                memcpy (best, pieces, (gsize) line->m * sizeof (int));
              }
          }
      if (stock < 0)
        {
          solution->missing += demand[i];
          solution->cost += demand[i] * line->penalty;
          demand[i] = 0;
          continue;
        }
      int times = limit[stock];
      for (int j = 0; j < line->m; j++)
        if (best[j] > 0)
          times = MIN (times, demand[j] / best[j]);
      for (int j = 0; j < line->m; j++)
        demand[j] -= times * best[j];
      limit[stock] -= times;
      rw_line_solution_add (solution, line, stock, best, times);
    }
  return solution;
}

/* ---- the search ---- */

/* What is remembered of the way, at some hundred bytes each. */
#define SEEN_MOST 200000

typedef struct
{
  int    stock;
  double reduced; /* what the bar costs more than its pieces are worth */
  gint64 rest;
  int    pieces[]; /* m of them */
} Choice;

typedef struct
{
  RwLineWork *work;
  const RwLine *line;
  int        *demand, *limit, *now;
  double     *densest; /* the best worth for its size from each kind on */
  gint64      cost, best;
  guint       steps, most;
  int         missing;
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

  return purse < 0 ? purse : purse - rw_line_bound (q->line, q->work->prices, q->demand, q->limit);
}

typedef struct
{
  Search    *q;
  GPtrArray *choices; /* of Choice */
  int        stock;
  double     wanted; /* worth that the pattern must have */
} Gather;

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
        {
          Choice *choice = g_malloc (sizeof (Choice) + (gsize) line->m * sizeof (int));

          choice->stock = g->stock;
          choice->reduced = g->wanted - worth;
          choice->rest = room;
          memcpy (choice->pieces, q->now, (gsize) line->m * sizeof (int));
          g_ptr_array_add (g->choices, choice);
        }
      return;
    }

  int had = q->now[i];
  int most = (int) MIN (q->demand[i] - had, room / line->size[i]);
  for (int n = most; n >= 0; n--)
    {
      q->now[i] = had + n;
      gather (g, i + 1, room - n * line->size[i], worth + n * q->work->prices->price[i]);
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

static GPtrArray *
gather_choices (Search *q, int largest, double spare)
{
  const RwLine *line = q->line;
  const RwLinePrices *prices = q->work->prices;
  GPtrArray *choices = g_ptr_array_new_with_free_func (g_free);

  for (int k = 0; k < line->s; k++)
    if (q->limit[k] > 0 && line->size[largest] <= line->capacity[k])
      {
        Gather g = { q, choices, k, (double) line->cost[k] + prices->fee[k] - spare };

        memset (q->now, 0, (gsize) line->m * sizeof (int));
        q->now[largest] = 1;
        gather (&g, largest, line->capacity[k] - line->size[largest], prices->price[largest]);
        q->now[largest] = 0;
      }
  g_ptr_array_sort (choices, compare_choices);
  return choices;
}

static void
keep_found (Search *q)
{
  g_clear_pointer (&q->found, rw_line_solution_free);
  q->found = copy_solution (q->line, q->start);
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
search_on (Search *q)
{
  g_autoptr (GPtrArray) choices = NULL;
  double spare = budget (q);
  int largest = 0;

  if (spent (q) || spare < 0)
    return;
  while (largest < q->line->m && q->demand[largest] == 0)
    largest++;
  if (largest == q->line->m)
    {
      keep_found (q);
      return;
    }
  if (seen_before (q))
    return;
  choices = gather_choices (q, largest, spare);
  for (guint i = 0; i < choices->len && !spent (q); i++)
    try_choice (q, g_ptr_array_index (choices, i));
  try_without (q, largest);
}

RwLineSolution *
rw_line_search (RwLineWork *work, const RwLineSolution *start, gint64 below, guint steps, gboolean *exhausted)
{
  const RwLine *line = work->line;
  Search q = { .work = work, .line = line, .best = below, .most = steps, .start = start,
               .cost = start != NULL ? start->cost : 0 };
  double densest = 0;

  q.demand = g_new (int, line->m + 1);
  q.limit = g_new (int, line->s + 1);
  q.now = g_new0 (int, line->m + 1);
  q.densest = g_new0 (double, line->m + 1);
  q.trail = g_array_new (FALSE, FALSE, sizeof (Choice *));
  q.seen = g_hash_table_new_full (g_bytes_hash, g_bytes_equal, (GDestroyNotify) g_bytes_unref, g_free);
  for (int i = line->m - 1; i >= 0; i--)
    q.densest[i] = densest = MAX (densest, work->prices->price[i] / (double) line->size[i]);
  take_off (line, start, q.demand, q.limit);
  search_on (&q);
  *exhausted = !work->cancelled && q.steps <= q.most;

  g_hash_table_unref (q.seen);
  g_array_unref (q.trail);
  g_free (q.densest);
  g_free (q.now);
  g_free (q.limit);
  g_free (q.demand);
  return q.found;
}
