/* Cutting lengths from bars: which piece comes from which bar, with the saw's kerf.
 *
 * Pieces with lengths l fit into a bar of length L with kerf k where sum (l + k) <= L - 2 trim + k: the last cut may
 * fall off the end.  As many pieces as can be had are cut; among those plans the cheapest is taken, and among the
 * cheapest the one that leaves the longest off-cut.  Lengths are taken to a thousandth of a millimetre.
 *
 * Formulation: L. V. Kantorovich, 1939; P. C. Gilmore & R. E. Gomory, Operations Research 9 (1961) and 11 (1963).
 */
#pragma once

#include <glib.h>

typedef struct
{
  double length; /* mm */
  int    count;
} RwLinePiece;

#define RW_LINE_NO_LIMIT (-1)
/* An off-cut is proved the longest to half a millimetre, and to what the figures lose. */
#define RW_OFFCUT_CLOSE 0.501

typedef struct
{
  double length; /* mm */
  int    count;  /* or RW_LINE_NO_LIMIT */
} RwLineStock;

typedef enum
{
  RW_LINE_FEWEST, /* each bar touched costs 1 */
  RW_LINE_LENGTH, /* a bar costs its length: for stock that is to be bought */
} RwLineGoal;

/* Asked now and then during the work: FALSE gives up.  What was found until then is still a plan. */
typedef gboolean (*RwCutGoOn) (gpointer data);

typedef struct
{
  const RwLinePiece *pieces;
  int                piece_count;
  const RwLineStock *stock;
  int                stock_count;
  double             kerf, trim; /* mm; trim is lost at either end of a bar */
  RwLineGoal         goal;
  gboolean           plain;      /* only to ask whether it fits: no long search, and none for the longest off-cut */
  RwCutGoOn          go_on;      /* NULL: to the end */
  gpointer           data;
} RwLineTask;

/* times bars of one stock, all cut alike: pieces[i] of the i-th kind of piece.  rest is what is left in one piece
 * at the end of each, after the last cut; never negative. */
typedef struct
{
  int    stock, times;
  int   *pieces;
  double rest;
} RwLineBar;

typedef struct
{
  GArray  *bars;   /* of RwLineBar */
  int     *left_out; /* pieces of each kind that no bar is left for */
  int      missing;  /* in all */
  double   cost;     /* bars or mm, by the goal */
  double   bound;    /* no plan that misses as few costs less; NAN where pieces are missing and none is known */
  gboolean proved;   /* that no fewer can be missing, and none of those be cheaper */
  double   offcut;   /* the longest rest of a bar that was touched */
  double   offcut_bound;  /* no plan that costs as little leaves a longer one; NAN: none known */
  gboolean offcut_proved; /* to RW_OFFCUT_CLOSE */
} RwLinePlan;

RwLinePlan *rw_cut_line       (const RwLineTask *task);
void        rw_line_plan_free (RwLinePlan *plan);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwLinePlan, rw_line_plan_free)
