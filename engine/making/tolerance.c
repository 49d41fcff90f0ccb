#include "tolerance.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#define CAP 2.0     /* times what the shop holds */
#define FITTED 0.25 /* of what the shop holds: closer than this comes of trying, not of measuring */
#define FINEST_MM 0.05
#define FINEST_DEG 0.05
#define FINEST_TENSION 50.0 /* N/m: no gauge or ear tells less */

/* Movements of an outcome, for a cut as wide off as its cap, that are rounding and no effect. */
#define NOTHING 1e-5

typedef struct
{
  const RwBench       *bench;
  const RwSensitivity *sensitivity;
  int                  outcome;
  double               limit;
} Claim;

static double
cap_of (const RwCut *cut)
{
  return CAP * cut->scatter;
}

static double
finest (const RwCut *cut)
{
  const char *unit = rw_cut_unit (cut);

  if (strcmp (unit, "deg") == 0)
    return FINEST_DEG;
  return strcmp (unit, "N/m") == 0 ? FINEST_TENSION : FINEST_MM;
}

/* 0 where the cut does nothing to the outcome. */
static double
rate_of (const Claim *claim, guint i)
{
  double rate = fabs (rw_sensitivity_rate (claim->sensitivity, i, claim->outcome));

  return rate * cap_of (rw_bench_cut (claim->bench, i)) > NOTHING ? rate : 0;
}

/* What the cuts take of the square of the limit when each has the level, or its cap where that is less. */
static double
taken (const Claim *claim, double level)
{
  double sum = 0;

  for (guint i = 0; i < claim->sensitivity->cuts; i++)
    {
      double part = fmin (rate_of (claim, i) * cap_of (rw_bench_cut (claim->bench, i)), level);

      sum += part * part;
    }
  return sum;
}

/* The level at which all is taken, by halving; the limit itself where caps alone stay inside. */
static double
level_of (const Claim *claim)
{
  double low = 0, high = claim->limit;

  if (taken (claim, high) <= claim->limit * claim->limit)
    return high;
  for (int i = 0; i < 60; i++)
    {
      double middle = (low + high) / 2;

      if (taken (claim, middle) <= claim->limit * claim->limit)
        low = middle;
      else
        high = middle;
    }
  return low;
}

/* Narrows the tolerances to what one outcome asks for. */
static void
claim_limit (const Claim *claim, RwTolerance *tolerances)
{
  double level = level_of (claim);

  for (guint i = 0; i < claim->sensitivity->cuts; i++)
    {
      const RwCut *cut = rw_bench_cut (claim->bench, i);
      double rate = rate_of (claim, i), asked = fmin (cap_of (cut), level / rate);
      RwTolerance *tolerance = &tolerances[i];

      if (rate == 0)
        continue;
      if (!(asked >= tolerance->asked))
        {
          tolerance->asked = asked;
          tolerance->asked_for = asked < cap_of (cut) ? claim->outcome : -1;
        }
      if (!(rate * cut->scatter / claim->limit <= tolerance->used))
        {
          tolerance->used = rate * cut->scatter / claim->limit;
          tolerance->used_of = claim->outcome;
        }
    }
}

static void
finish (RwTolerance *tolerance, const RwCut *cut)
{
  if (!isfinite (tolerance->asked))
    return;
  tolerance->takes_care = tolerance->asked < tolerance->held;
  tolerance->by_fitting = tolerance->asked < fmax (finest (cut), FITTED * tolerance->held);
  tolerance->asked = fmax (tolerance->asked, finest (cut));
}

RwTolerance *
rw_tolerances_new (const RwBench *bench, const RwSensitivity *sensitivity)
{
  RwTolerance *tolerances = g_new (RwTolerance, bench->cuts->len + 1);

  for (guint i = 0; i < bench->cuts->len; i++)
    tolerances[i] = (RwTolerance){ .asked = NAN, .held = rw_bench_cut (bench, i)->scatter, .asked_for = -1,
                                   .used = NAN, .used_of = -1 };
  for (int outcome = 0; outcome < RW_OUTCOME_ALL; outcome++)
    {
      Claim claim = { bench, sensitivity, outcome,
                      rw_design_get (&bench->design, rw_outcome (outcome)->limit) };

      if (claim.limit > 0 && isfinite (bench->outcomes[outcome]))
        claim_limit (&claim, tolerances);
    }
  for (guint i = 0; i < bench->cuts->len; i++)
    finish (&tolerances[i], rw_bench_cut (bench, i));
  return tolerances;
}

const char *
rw_tolerance_advice (const RwTolerance *tolerance)
{
  if (tolerance->by_fitting)
    return N_("fit, don’t measure");
  return tolerance->takes_care ? N_("take care") : N_("as usual");
}

/* ---- ranking ---- */

static int
compare (gconstpointer a, gconstpointer b, gpointer user_data)
{
  const RwTolerance *tolerances = user_data;
  guint i = *(const guint *) a, k = *(const guint *) b;

  if (tolerances[i].used != tolerances[k].used)
    return tolerances[i].used < tolerances[k].used ? 1 : -1;
  return (i > k) - (i < k);
}

static const RwDim *
family (const RwCut *cut)
{
  const RwDim *dim = cut->slot >= 0 ? rw_slot_dim ((RwSlot) cut->slot) : NULL;

  return dim != NULL && dim->span > 1 ? dim : NULL;
}

GArray *
rw_tolerances_ranked (const RwBench *bench, const RwTolerance *tolerances)
{
  g_autoptr (GPtrArray) seen = g_ptr_array_new ();
  GArray *all = g_array_new (FALSE, FALSE, sizeof (guint)), *first = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < bench->cuts->len; i++)
    if (isfinite (tolerances[i].used))
      g_array_append_val (all, i);
  g_array_sort_with_data (all, compare, (gpointer) tolerances);
  for (guint i = 0; i < all->len; i++)
    {
      guint cut = g_array_index (all, guint, i);
      gpointer rows = (gpointer) family (rw_bench_cut (bench, cut));

      if (rows == NULL || !g_ptr_array_find (seen, rows, NULL))
        g_array_append_val (first, cut);
      if (rows != NULL)
        g_ptr_array_add (seen, rows);
    }
  g_array_unref (all);
  return first;
}
