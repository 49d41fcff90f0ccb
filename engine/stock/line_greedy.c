/* Plans for cutting lengths, and a quick one: the largest piece first, each bar filled as far as it goes. */
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
void
rw_line_take_off (const RwLine *line, const RwLineSolution *start, int *demand, int *limit)
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

RwLineSolution *
rw_line_solution_copy (const RwLine *line, const RwLineSolution *start)
{
  RwLineSolution *copy = rw_line_solution_new ();

  for (guint p = 0; start != NULL && p < start->patterns->len; p++)
    {
      const RwLinePattern *pattern = &g_array_index (start->patterns, RwLinePattern, p);

      rw_line_solution_add (copy, line, pattern->stock, pattern->pieces, pattern->times);
    }
  return copy;
}

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
  RwLineSolution *solution = rw_line_solution_copy (line, start);

  rw_line_take_off (line, start, demand, limit);
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
