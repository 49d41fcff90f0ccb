#include "compare.h"

#include <math.h>

#define LEAST 5e-4

/* How far apart two numbers are; 0: the same to the eye.  One that is left out in one build alone differs
 * without measure. */
static double
apart (double before, double now)
{
  double by = fabs (now - before);

  if (isnan (before) || isnan (now))
    return isnan (before) && isnan (now) ? 0 : HUGE_VAL;
  return by > LEAST * fmax (1, fmax (fabs (before), fabs (now))) ? by : 0;
}

static void
compare_param (GArray *found, const RwResult *before, const RwResult *now, RwParamId id)
{
  const RwParam *param = rw_param (id);
  RwDifference difference = { { (int) id, -1 }, (double) NAN, (double) NAN, 0 };

  if (rw_design_same (&before->used, &now->used, id) || rw_slot_find (param->id) >= 0)
    return;
  if (rw_param_is_number (param))
    {
      difference.before = rw_design_get (&before->used, id);
      difference.now = rw_design_get (&now->used, id);
      if (apart (difference.before, difference.now) <= 0)
        return;
    }
  g_array_append_val (found, difference);
}

static void
compare_family (GArray *found, const RwResult *before, const RwResult *now, const RwDim *dim)
{
  RwDifference most = { RW_SUBJECT_NONE, 0, 0, -1 };
  double farthest = 0;

  for (int i = 0; i < dim->span; i++)
    {
      int slot = (int) dim->first + i;
      double by = apart (before->value[slot], now->value[slot]);

      if (by <= 0)
        continue;
      most.more++;
      if (by > farthest)
        {
          farthest = by;
          most.subject = (RwSubject){ -1, slot };
          most.before = before->value[slot];
          most.now = now->value[slot];
        }
    }
  if (most.more >= 0)
    g_array_append_val (found, most);
}

GArray *
rw_compare (const RwResult *before, const RwResult *now)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (RwDifference));

  for (int id = 0; id < RW_PARAM_COUNT; id++)
    compare_param (found, before, now, (RwParamId) id);
  for (int i = 0; i < rw_dims_count; i++)
    compare_family (found, before, now, &rw_dims[i]);
  return found;
}
