#include "care.h"

RwCare *
rw_care_new (const RwDesign *design, const RwMeasured *measured)
{
  RwBench *bench = rw_bench_new (design, measured);
  RwCare *care;

  if (bench == NULL)
    return NULL;
  care = g_new0 (RwCare, 1);
  care->bench = bench;
  care->sensitivity = rw_sensitivity_new (bench);
  care->tolerances = rw_tolerances_new (bench, care->sensitivity);
  return care;
}

void
rw_care_free (RwCare *care)
{
  g_free (care->tolerances);
  rw_sensitivity_free (care->sensitivity);
  rw_bench_free (care->bench);
  g_free (care);
}

static const RwTolerance *
find (const RwCare *care, int param, int slot)
{
  for (guint i = 0; care != NULL && i < care->bench->cuts->len; i++)
    {
      const RwCut *cut = rw_bench_cut (care->bench, i);

      if ((slot >= 0 && cut->slot == slot) || (param >= 0 && cut->param == param))
        return &care->tolerances[i];
    }
  return NULL;
}

const RwTolerance *
rw_care_of_slot (const RwCare *care, RwSlot slot)
{
  return find (care, -1, (int) slot);
}

const RwTolerance *
rw_care_of_param (const RwCare *care, RwParamId param)
{
  return find (care, (int) param, -1);
}
