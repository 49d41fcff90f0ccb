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

const RwTolerance *
rw_care_of_slot (const RwCare *care, RwSlot slot)
{
  for (guint i = 0; care != NULL && i < care->bench->cuts->len; i++)
    if (rw_bench_cut (care->bench, i)->slot == (int) slot)
      return &care->tolerances[i];
  return NULL;
}
