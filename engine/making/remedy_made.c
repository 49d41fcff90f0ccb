/* Remedies for a made part of which the design asks something else: the design changed until it asks for what is made.
 * Which number that may be is found by moving each that is free. */
#include <math.h>
#include <string.h>

#include "remedy_cures.h"

#define ROUNDS 8
/* A hundredth of the row's tolerance: the check speaks from the whole of it. */
#define NEAR 0.01

typedef struct
{
  const RwDesign   *design;
  const RwMeasured *measured;
  RwSlot            slot;
  double            made;
  RwResult         *result;
} Made;

/* How far what is asked lies from what is made, with one number at a value. */
static double
miss (Made *made, RwParamId id, double value)
{
  RwDesign design = *made->design;

  if (!rw_design_set (&design, id, value, NULL))
    return NAN;
  rw_solve (&design, made->measured, made->result);
  return made->result->asked[made->slot] - made->made;
}

/* By secants from the present value; NaN where the number does nothing to it, or would leave its range. */
static double
value_that_suits (Made *made, RwParamId id)
{
  double near_enough = NEAR * rw_slot_dim (made->slot)->tolerance;
  double x0 = rw_design_get (made->design, id), step = rw_param (id)->step;
  double f0 = miss (made, id, x0), x1 = x0 + step, f1 = miss (made, id, x1);

  if (isnan (f1))
    {
      x1 = x0 - step;
      f1 = miss (made, id, x1);
    }
  for (int i = 0; i < ROUNDS && isfinite (f1) && fabs (f1) > near_enough; i++)
    {
      double x2 = x1 - f1 * (x1 - x0) / (f1 - f0);

      if (!isfinite (x2))
        return NAN;
      x0 = x1;
      f0 = f1;
      x1 = x2;
      f1 = miss (made, id, x1);
    }
  return fabs (f1) <= near_enough ? round (x1 * 1000) / 1000 : NAN;
}

/* Sizes of the instrument; counts jump, and limits and habits make no part. */
static gboolean
is_size (RwParamId id)
{
  const RwParam *param = rw_param (id);

  return (param->kind == RW_KIND_LENGTH || param->kind == RW_KIND_ANGLE) && param->step > 0
         && id < RW_P_shop_kerf;
}

static RwRemedy *
remedy_new (const Made *made, RwParamId id, double value)
{
  RwRemedy *remedy = g_new0 (RwRemedy, 1);

  remedy->param = id;
  remedy->design = *made->design;
  rw_design_set (&remedy->design, id, value, NULL);
  remedy->word = g_strdup (rw_param (id)->label);
  remedy->pattern = rw_param (id)->kind == RW_KIND_ANGLE
                      ? N_("{id} {1 deg} instead of {3 deg}, as suits what is made")
                      : N_("{id} {1 mm} instead of {3 mm}, as suits what is made");
  remedy->values[0] = value;
  remedy->values[2] = rw_design_get (made->design, id);
  remedy->values[1] = fabs (value - remedy->values[2]);
  remedy->value_count = RW_REMEDY_VALUES;
  return remedy;
}

GPtrArray *
rw_remedies_for_made (const RwDesign *design, const RwMeasured *measured, const RwFinding *finding)
{
  g_autofree RwResult *result = g_new (RwResult, 1);
  GPtrArray *tries = g_ptr_array_new_with_free_func ((GDestroyNotify) rw_remedy_free);
  int slot = rw_slot_find (finding->ids[0]);
  Made made = { design, measured, (RwSlot) slot, finding->values[0], result };

  for (RwParamId id = 0; slot >= 0 && id < RW_PARAM_COUNT; id++)
    {
      double value;

      if (!is_size (id) || isfinite (measured->param[id]) || measured->holds_param[id])
        continue;
      value = value_that_suits (&made, id);
      if (isfinite (value))
        g_ptr_array_add (tries, remedy_new (&made, id, value));
    }
  return tries;
}
