/* The most that fits into a bar: pieces tried one kind after the other, the worthiest for their size first, as long as
 * what is left can still come to more.  What it can come to is read from a table by rooms in whole steps, to which
 * sizes are rounded down: then no choice is worth more than the table says. */
#include "line_problem.h"

#include <string.h>

/* So many steps to a room: more are slower to fill in, and fewer tell less. */
#define ROOMS 1024

typedef struct
{
  const RwLine *line;
  const double *price;
  const int    *demand;
  int          *order; /* kinds, by worth for their size */
  int           kinds;
  gint64        step;  /* of a room */
  int           rooms;
  double       *most;  /* most[at * (rooms + 1) + r]: what the kinds from at on are worth in r steps, or more */
  int          *now, *best;
  double        top;
  guint         steps, limit;
} Knapsack;

/* Kinds that are worth something and fit. */
static void
put_in_order (Knapsack *k, gint64 capacity)
{
  const gint64 *size = k->line->size;
  const double *price = k->price;

  for (int i = 0; i < k->line->m; i++)
    {
      int at = k->kinds;

      if (price[i] <= 0 || k->demand[i] <= 0 || size[i] > capacity)
        continue;
      for (; at > 0 && price[k->order[at - 1]] * (double) size[i] < price[i] * (double) size[k->order[at - 1]]; at--)
        k->order[at] = k->order[at - 1];
      k->order[at] = i;
      k->kinds++;
    }
}

gint64
rw_common_divisor (gint64 a, gint64 b)
{
  while (b != 0)
    {
      gint64 rest = a % b;

      a = b;
      b = rest;
    }
  return a;
}

/* Where all sizes are whole numbers of some step and the room has not too many of them, nothing is rounded. */
static void
choose_step (Knapsack *k, gint64 capacity)
{
  gint64 divisor = 0;

  for (int at = 0; at < k->kinds; at++)
    divisor = rw_common_divisor (divisor, k->line->size[k->order[at]]);
  k->step = MAX (MAX (divisor, 1), (capacity + ROOMS - 1) / ROOMS);
  k->rooms = (int) (capacity / k->step);
}

static void
fill_table (Knapsack *k)
{
  int wide = k->rooms + 1;

  k->most = g_new (double, (gsize) (k->kinds + 1) * (gsize) wide);
  memset (k->most + (gsize) k->kinds * (gsize) wide, 0, (gsize) wide * sizeof (double));
  for (int at = k->kinds - 1; at >= 0; at--)
    {
      int i = k->order[at], size = (int) (k->line->size[i] / k->step);
      const double *without = k->most + (gsize) (at + 1) * (gsize) wide;
      double *with = k->most + (gsize) at * (gsize) wide;

      memcpy (with, without, (gsize) wide * sizeof (double));
      for (int n = 1; n <= k->demand[i] && n * size <= k->rooms; n++)
        {
          double worth = n * k->price[i];

          for (int r = n * size; r <= k->rooms; r++)
            with[r] = MAX (with[r], without[r - n * size] + worth);
        }
    }
}

static void
take_from (Knapsack *k, int at, gint64 room, double worth)
{
  if (worth > k->top + 1e-12)
    {
      k->top = worth;
      memcpy (k->best, k->now, (gsize) k->line->m * sizeof (int));
    }
  if (at == k->kinds || ++k->steps > k->limit
      || worth + k->most[(gsize) at * (gsize) (k->rooms + 1) + (gsize) (room / k->step)] <= k->top * (1 + 1e-5) + 1e-12)
    return;

  int i = k->order[at];

  for (int n = (int) MIN (k->demand[i], room / k->line->size[i]); n >= 0; n--)
    {
      k->now[i] = n;
      take_from (k, at + 1, room - n * k->line->size[i], worth + n * k->price[i]);
    }
  k->now[i] = 0;
}

double
rw_line_knapsack (const RwLine *line, const double *price, gint64 capacity, const int *demand, guint steps,
                  int *pieces, double *bound)
{
  gsize bytes = (gsize) MAX (line->m, 1) * sizeof (int);
  g_autofree int *order = g_malloc (bytes), *now = g_malloc0 (bytes), *best = g_malloc0 (bytes);
  Knapsack k = { .line = line, .price = price, .demand = demand, .order = order, .now = now, .best = best,
                 .limit = steps };

  capacity = MAX (capacity, 0);
  put_in_order (&k, capacity);
  choose_step (&k, capacity);
  fill_table (&k);
  take_from (&k, 0, capacity, 0);
  if (pieces != NULL)
    memcpy (pieces, best, (gsize) line->m * sizeof (int));
  if (bound != NULL)
    *bound = k.steps > k.limit ? k.most[k.rooms] : k.top * (1 + 1e-5) + 1e-12;
  g_free (k.most);
  return k.top;
}
