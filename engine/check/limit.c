#include "limit.h"

static gboolean
is_same (const RwFinding *a, const RwFinding *b)
{
  return a->severity == b->severity && g_str_equal (a->rule, b->rule) && g_str_equal (a->text, b->text);
}

/* Whether it is found as well with the parameters that the trial holds. */
static gboolean
is_found (const RwFinding *finding, const RwDesign *design, const RwMeasured *measured, const RwResult *trial)
{
  g_autoptr (GPtrArray) findings = rw_check (design, measured, trial);

  for (guint i = 0; i < findings->len; i++)
    if (is_same (finding, g_ptr_array_index (findings, i)))
      return TRUE;
  return FALSE;
}

GArray *
rw_finding_limits (const RwFinding *finding, const RwDesign *design, const RwMeasured *measured,
                   const RwResult *result)
{
  GArray *limits = g_array_new (FALSE, FALSE, sizeof (RwParamId));
  g_autofree RwResult *trial = g_memdup2 (result, sizeof *result);

  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    {
      const RwParam *param = rw_param (id);
      const double ends[] = { param->min, param->max };
      gboolean counts = FALSE;

      if (!rw_param_is_limit (param) || !rw_param_is_number (param))
        continue;
      for (guint i = 0; i < G_N_ELEMENTS (ends) && !counts; i++)
        counts = rw_design_set (&trial->used, id, ends[i], NULL)
                 && !is_found (finding, design, measured, trial);
      if (counts)
        g_array_append_val (limits, id);
      rw_design_copy (&trial->used, &result->used, id);
    }
  return limits;
}
