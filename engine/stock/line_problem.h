/* What the parts of the cutter for lengths share; private to cut_line.c and line_*.c.
 *
 * Sizes are whole thousandths of a millimetre with the kerf added, so that a pattern fits where its sizes add up to
 * no more than the capacity.  Kinds of pieces are in order of falling size, no two alike; nor are two kinds of stock.
 */
#pragma once

#include "cut_line.h"

typedef struct
{
  int     m, s; /* kinds of pieces and of stock */
  gint64 *size;
  int    *demand;
  gint64 *capacity, *cost;
  int    *limit;
  gint64  penalty; /* for a piece left out: more than all stock costs */
  gint64  unit;    /* every cost is a multiple of it */
} RwLine;

/* A pattern, cut so many times. */
typedef struct
{
  int  stock, times;
  int *pieces;
} RwLinePattern;

typedef struct
{
  GArray *patterns; /* of RwLinePattern */
  gint64  cost;     /* with penalties */
  int     missing;
} RwLineSolution;

RwLineSolution *rw_line_solution_new  (void);
void            rw_line_solution_free (RwLineSolution *solution);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwLineSolution, rw_line_solution_free)
void            rw_line_solution_add  (RwLineSolution *solution, const RwLine *line, int stock, const int *pieces,
                                       int times);

RwLineSolution *rw_line_solution_copy (const RwLine *line, const RwLineSolution *start); /* NULL: an empty one */

/* What start (may be NULL) leaves to be done. */
void rw_line_take_off (const RwLine *line, const RwLineSolution *start, int *demand, int *limit);

/* Prices that bound every plan from below: for what remains of demand d and stock limits u,
 * cost >= sum d price - sum u fee, which may be less than nothing.  first is the relaxation's solution, for rounding;
 * its amounts by pattern. */
typedef struct
{
  double *price; /* of a piece */
  double *fee;   /* of a bar of each stock */
  double  bound;
  RwLineSolution *first; /* times are 0 */
  GArray *amounts;       /* of double */
} RwLinePrices;

/* The linear relaxation by column generation.  It goes on until it is at its least, or costs no more than enough, or
 * certainly will; enough may be NAN.  like (may be NULL) is a plan for something alike, to begin with. */
RwLinePrices *rw_line_prices_new  (const RwLine *line, double enough, const RwLineSolution *like);
void          rw_line_prices_free (RwLinePrices *prices);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwLinePrices, rw_line_prices_free)

double rw_line_bound (const RwLine *line, const RwLinePrices *prices, const int *demand, const int *limit);

/* The most that pieces can be worth within a capacity, at most demand of each, as far as so many steps find it; pieces
 * (may be NULL) takes the choice.  bound (may be NULL): no choice is worth more. */
double rw_line_knapsack (const RwLine *line, const double *price, gint64 capacity, const int *demand, guint steps,
                         int *pieces, double *bound);

/* The greatest; of 0 and a number that number. */
gint64 rw_common_divisor (gint64 a, gint64 b);

typedef struct
{
  const RwLine       *line;
  const RwLinePrices *prices;
  RwCutGoOn           go_on;
  gpointer            data;
  gboolean            cancelled;
} RwLineWork;

/* Looks for a plan cheaper than below that goes on from start (may be NULL), with so many steps at most; NULL where
 * none was found.  exhausted tells whether there is certainly none cheaper than what is returned.  thorough takes
 * longer over each step, strays less, and ends with the first plan it finds.  taken (may be NULL): steps. */
RwLineSolution *rw_line_search (RwLineWork *work, const RwLineSolution *start, gint64 below, guint steps,
                                gboolean thorough, guint *taken, gboolean *exhausted);

/* Largest piece first, each bar filled as far as it goes. */
RwLineSolution *rw_line_greedy (const RwLine *line, const RwLineSolution *start);

/* The plan that leaves out the fewest pieces and touches the fewest bars, where every bar costs 1; of those the one
 * that leaves the longest off-cut, unless plain.  bound: no plan costs less, penalties included.  offcut: as below;
 * -1: not looked for. */
RwLineSolution *rw_line_fewest (RwLineWork *work, gboolean plain, gint64 *bound, gint64 *offcut);

/* best, that leaves nothing out, becomes the plan of line that costs no more and leaves the longest off-cut that was
 * found.  Returned is what none goes over; with a kerf in it, as all sizes. */
gint64 rw_line_leave_longest (RwLineWork *work, const RwLine *line, RwLineSolution **best);
