#include "care.h"

#include <math.h>

#include "other_way.h"

/* ---- one place for each number ---- */

static RwTolerance *
blank (int count)
{
  RwTolerance *tolerances = g_new0 (RwTolerance, count);

  for (int i = 0; i < count; i++)
    tolerances[i].asked = NAN;
  return tolerances;
}

static void
place_cuts (RwCare *care)
{
  for (guint i = 0; i < care->bench->cuts->len; i++)
    {
      const RwCut *cut = rw_bench_cut (care->bench, i);

      if (cut->slot >= 0)
        care->rows[cut->slot] = care->tolerances[i];
      if (cut->param >= 0)
        care->params[cut->param] = care->tolerances[i];
    }
}

static void
place_others (RwCare *care)
{
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    if (isfinite (care->bench->planned.value[slot]) && isnan (care->rows[slot].asked)
        && !rw_other_way (care->bench, care->tolerances, (RwSlot) slot, &care->rows[slot]))
      care->rows[slot].asked = NAN;
}

/* Facts are no cuts any more: of them counts what the plan asked. */
static void
fill_up (RwTolerance *tolerances, const RwTolerance *of_plan, int count)
{
  for (int i = 0; i < count; i++)
    if (isnan (tolerances[i].asked))
      tolerances[i] = of_plan[i];
}

static gboolean
any_fact (const RwMeasured *measured)
{
  for (int i = 0; measured != NULL && i < RW_PARAM_COUNT; i++)
    if (isfinite (measured->param[i]) || measured->holds_param[i])
      return TRUE;
  for (int i = 0; measured != NULL && i < RW_SLOT_COUNT; i++)
    if (isfinite (measured->slot[i]))
      return TRUE;
  return FALSE;
}

/* ---- making and unmaking ---- */

RwCare *
rw_care_new (const RwDesign *design, const RwMeasured *measured)
{
  RwBench *bench = rw_bench_new (design, measured);
  g_autoptr (RwCare) plan = NULL;
  RwCare *care;

  if (bench == NULL)
    return NULL;
  care = g_new0 (RwCare, 1);
  care->bench = bench;
  care->sensitivity = rw_sensitivity_new (bench);
  care->tolerances = rw_tolerances_new (bench, care->sensitivity);
  care->rows = blank (RW_SLOT_COUNT);
  care->params = blank (RW_PARAM_COUNT);
  place_cuts (care);
  place_others (care);
  plan = any_fact (measured) ? rw_care_new (design, NULL) : NULL;
  if (plan != NULL)
    {
      fill_up (care->rows, plan->rows, RW_SLOT_COUNT);
      fill_up (care->params, plan->params, RW_PARAM_COUNT);
    }
  return care;
}

void
rw_care_free (RwCare *care)
{
  g_free (care->params);
  g_free (care->rows);
  g_free (care->tolerances);
  rw_sensitivity_free (care->sensitivity);
  rw_bench_free (care->bench);
  g_free (care);
}

/* ---- what is asked ---- */

const RwTolerance *
rw_care_of_slot (const RwCare *care, RwSlot slot)
{
  return care != NULL && isfinite (care->rows[slot].asked) ? &care->rows[slot] : NULL;
}

RwAllowance
rw_care_allowance (const RwCare *care, const char *id)
{
  int slot = rw_slot_find (id), param = rw_param_find (id);

  if (care != NULL && slot >= 0 && isfinite (care->rows[slot].asked))
    return (RwAllowance){ care->rows[slot].asked, TRUE };
  if (care != NULL && param >= 0 && isfinite (care->params[param].asked))
    return (RwAllowance){ care->params[param].asked, TRUE };
  return (RwAllowance){ slot >= 0 ? rw_slot_dim ((RwSlot) slot)->tolerance : 0, FALSE };
}

gboolean
rw_allowance_passed (RwAllowance allowance, double deviation)
{
  return allowance.within > 0 && fabs (deviation) > allowance.within * 1.0001;
}

const char *
rw_allowance_name (RwAllowance allowance)
{
  if (!(allowance.within > 0))
    return "";
  return allowance.asked ? "asked" : "habit";
}
