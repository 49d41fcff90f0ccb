/* The linear relaxation of cutting lengths, by column generation: P. C. Gilmore & R. E. Gomory, A linear programming
 * approach to the cutting stock problem, Operations Research 9 (1961). */
#include "line_problem.h"

#include <math.h>
#include <string.h>

/* ---- the simplex method, with the inverse of the basis ---- */

#define PIVOTS 3000
#define STEPS 1000u /* of the knapsack, for a column */
/* Near enough to the least, of its cost. */
#define CLOSE 1e-4
#define TINY 1e-9

/* Rows: first demands, sum a x >= d, then stock, sum x <= limit.  A column of the basis is a pattern (stock >= 0), the
 * surplus of a demand, the slack of a stock, or pieces left out. */
typedef enum { COLUMN_PATTERN, COLUMN_SURPLUS, COLUMN_SLACK, COLUMN_OUT } ColumnKind;

typedef struct
{
  ColumnKind kind;
  int        row; /* or the stock of a pattern */
  double     cost;
  int       *pieces;
} Column;

typedef struct
{
  const RwLine *line;
  int           n;
  double       *inverse; /* n x n by rows */
  double       *x, *y, *enter, *step;
  double       *worth; /* of the best pattern of each stock, at the prices y: no pattern is worth more */
  Column       *basis;
} Simplex;

static void
simplex_init (Simplex *lp, const RwLine *line)
{
  gsize n = (gsize) (line->m + line->s);

  lp->line = line;
  lp->n = (int) n;
  lp->inverse = g_new0 (double, n * n);
  lp->x = g_new (double, n);
  lp->y = g_new (double, n);
  lp->enter = g_new (double, n);
  lp->step = g_new (double, n);
  lp->worth = g_new0 (double, line->s + 1);
  lp->basis = g_new0 (Column, n);
  for (int r = 0; r < lp->n; r++)
    {
      gboolean piece = r < line->m;

      lp->inverse[r * lp->n + r] = 1;
      lp->x[r] = piece ? line->demand[r] : line->limit[r - line->m];
      lp->basis[r] = (Column){ piece ? COLUMN_OUT : COLUMN_SLACK, r, piece ? (double) line->penalty : 0, NULL };
    }
}

static void
simplex_clear (Simplex *lp)
{
  for (int r = 0; r < lp->n; r++)
    g_free (lp->basis[r].pieces);
  g_free (lp->basis);
  g_free (lp->inverse);
  g_free (lp->x);
  g_free (lp->y);
  g_free (lp->enter);
  g_free (lp->step);
  g_free (lp->worth);
}

static void
price_rows (Simplex *lp)
{
  for (int c = 0; c < lp->n; c++)
    {
      lp->y[c] = 0;
      for (int r = 0; r < lp->n; r++)
        lp->y[c] += lp->basis[r].cost * lp->inverse[r * lp->n + c];
    }
}

/* The column that promises most, found in so many steps: its reduced cost, 0 where there is none.  pieces is a scratch
 * list. */
static double
choose_column (Simplex *lp, Column *best, int *pieces, guint steps)
{
  const RwLine *line = lp->line;
  double least = 0;

  for (int i = 0; i < line->m; i++)
    {
      double out = (double) line->penalty - lp->y[i];

      if (lp->y[i] < least)
        {
          least = lp->y[i];
          *best = (Column){ COLUMN_SURPLUS, i, 0, NULL };
        }
      if (out < least)
        {
          least = out;
          *best = (Column){ COLUMN_OUT, i, (double) line->penalty, NULL };
        }
    }
  for (int k = 0; k < line->s; k++)
    {
      double fee = -lp->y[line->m + k];

      if (fee < least)
        {
          least = fee;
          g_free (best->pieces);
          *best = (Column){ COLUMN_SLACK, line->m + k, 0, NULL };
        }
      double reduced = (double) line->cost[k] + fee
                       - rw_line_knapsack (line, lp->y, line->capacity[k], line->demand, steps, pieces,
                                           &lp->worth[k]);
      if (reduced < least - TINY)
        {
          int *taken = best->kind == COLUMN_PATTERN && best->pieces != NULL ? best->pieces : g_new (int, line->m);

          memcpy (taken, pieces, (gsize) line->m * sizeof (int));
          least = reduced;
          *best = (Column){ COLUMN_PATTERN, k, (double) line->cost[k], taken };
        }
    }
  return least;
}

static void
enter_column (Simplex *lp, const Column *column)
{
  int m = lp->line->m;

  memset (lp->enter, 0, (gsize) lp->n * sizeof (double));
  if (column->kind == COLUMN_PATTERN)
    {
      for (int i = 0; i < m; i++)
        lp->enter[i] = column->pieces[i];
      lp->enter[m + column->row] = 1;
    }
  else
    lp->enter[column->row] = column->kind == COLUMN_SURPLUS ? -1 : 1;
  for (int r = 0; r < lp->n; r++)
    {
      lp->step[r] = 0;
      for (int c = 0; c < lp->n; c++)
        lp->step[r] += lp->inverse[r * lp->n + c] * lp->enter[c];
    }
}

/* Takes column into the basis in place of what first comes to nothing; FALSE where nothing does. */
static gboolean
pivot (Simplex *lp, Column column)
{
  int out = -1;

  for (int r = 0; r < lp->n; r++)
    if (lp->step[r] > TINY)
      {
        double ratio = lp->x[r] / lp->step[r], best = out < 0 ? INFINITY : lp->x[out] / lp->step[out];

        if (ratio < best - TINY || (ratio <= best && lp->step[r] > lp->step[out]))
          out = r;
      }
  if (out < 0)
    return FALSE;

  double lead = lp->step[out], *row = lp->inverse + out * lp->n;
  for (int c = 0; c < lp->n; c++)
    row[c] /= lead;
  lp->x[out] /= lead;
  for (int r = 0; r < lp->n; r++)
    if (r != out && fabs (lp->step[r]) > 0)
      {
        for (int c = 0; c < lp->n; c++)
          lp->inverse[r * lp->n + c] -= lp->step[r] * row[c];
        lp->x[r] = MAX (0, lp->x[r] - lp->step[r] * lp->x[out]);
      }
  g_free (lp->basis[out].pieces);
  lp->basis[out] = column;
  return TRUE;
}

/* One column into the basis; FALSE where none was found that makes it cheaper. */
static gboolean
step (Simplex *lp, int *pieces, guint steps)
{
  Column column = { COLUMN_SLACK, 0, 0, NULL };

  price_rows (lp);
  if (choose_column (lp, &column, pieces, steps) < -1e-8)
    {
      enter_column (lp, &column);
      if (pivot (lp, column))
        return TRUE;
    }
  g_free (column.pieces);
  return FALSE;
}

/* Patterns of a plan, as far as they are wanted and worth it. */
static void
begin_with (Simplex *lp, const RwLineSolution *plan)
{
  const RwLine *line = lp->line;

  for (guint p = 0; plan != NULL && p < plan->patterns->len; p++)
    {
      const RwLinePattern *pattern = &g_array_index (plan->patterns, RwLinePattern, p);
      double reduced = (double) line->cost[pattern->stock];
      Column column = { COLUMN_PATTERN, pattern->stock, reduced, g_new (int, line->m) };

      price_rows (lp);
      reduced -= lp->y[line->m + pattern->stock];
      for (int i = 0; i < line->m; i++)
        {
          column.pieces[i] = MIN (pattern->pieces[i], line->demand[i]);
          reduced -= lp->y[i] * column.pieces[i];
        }
      if (reduced < -1e-8)
        enter_column (lp, &column);
      if (!(reduced < -1e-8) || !pivot (lp, column))
        g_free (column.pieces);
    }
}

/* ---- prices ---- */

/* Prices of the simplex method, made such that no pattern is worth more than its bar: all are lowered alike, by
 * A. A. Farley, A note on bounding a class of linear programming problems, Operations Research 38 (1990).  Nothing then
 * rests on how far the method has come.  Kept where they bound from higher up than those before. */
static void
keep_prices (const Simplex *lp, RwLinePrices *prices)
{
  const RwLine *line = lp->line;
  double most = 1, bound = 0;

  for (int k = 0; k < line->s; k++)
    {
      double over = lp->worth[k] - MAX (0, -lp->y[line->m + k]);

      if (over > 0)
        most = MAX (most, over / (double) MAX (line->cost[k], 1));
    }
  for (int i = 0; i < line->m; i++)
    bound += line->demand[i] * CLAMP (lp->y[i] / most, 0, (double) line->penalty);
  for (int k = 0; k < line->s; k++)
    bound -= line->limit[k] * MAX (0, -lp->y[line->m + k]) / most;
  if (bound <= prices->bound)
    return;
  prices->bound = bound;
  for (int i = 0; i < line->m; i++)
    prices->price[i] = CLAMP (lp->y[i] / most, 0, (double) line->penalty);
  for (int k = 0; k < line->s; k++)
    prices->fee[k] = MAX (0, -lp->y[line->m + k]) / most;
}

static void
take_solution (const Simplex *lp, RwLinePrices *prices)
{
  for (int r = 0; r < lp->n; r++)
    if (lp->basis[r].kind == COLUMN_PATTERN && lp->x[r] > TINY)
      {
        rw_line_solution_add (prices->first, lp->line, lp->basis[r].row, lp->basis[r].pieces, 0);
        g_array_append_val (prices->amounts, lp->x[r]);
      }
}

static double
cost_of (const Simplex *lp)
{
  double cost = 0;

  for (int r = 0; r < lp->n; r++)
    cost += lp->basis[r].cost * lp->x[r];
  return cost;
}

RwLinePrices *
rw_line_prices_new (const RwLine *line, double enough, const RwLineSolution *like)
{
  g_autoptr (RwLineSolution) quick = rw_line_greedy (line, NULL);
  RwLinePrices *prices = g_new0 (RwLinePrices, 1);
  g_autofree int *pieces = g_new0 (int, line->m + 1);
  int turns = 0;
  Simplex lp;

  prices->price = g_new0 (double, line->m + 1);
  prices->fee = g_new0 (double, line->s + 1);
  prices->first = rw_line_solution_new ();
  prices->amounts = g_array_new (FALSE, FALSE, sizeof (double));
  simplex_init (&lp, line);
  begin_with (&lp, like);
  begin_with (&lp, quick);
  while (turns < PIVOTS && step (&lp, pieces, STEPS))
    {
      keep_prices (&lp, prices);
      double cost = cost_of (&lp);
      if (prices->bound > enough + 1e-6 || cost <= enough + 1e-9 || cost - prices->bound <= CLOSE * cost)
        break;
      turns++;
    }
  keep_prices (&lp, prices);
  take_solution (&lp, prices);
  simplex_clear (&lp);
  return prices;
}

void
rw_line_prices_free (RwLinePrices *prices)
{
  if (prices == NULL)
    return;
  g_free (prices->price);
  g_free (prices->fee);
  rw_line_solution_free (prices->first);
  g_array_unref (prices->amounts);
  g_free (prices);
}

double
rw_line_bound (const RwLine *line, const RwLinePrices *prices, const int *demand, const int *limit)
{
  double bound = 0;

  for (int i = 0; i < line->m; i++)
    bound += demand[i] * prices->price[i];
  for (int k = 0; k < line->s; k++)
    bound -= limit[k] * prices->fee[k];
  return bound;
}
