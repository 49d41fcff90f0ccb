#include "grip_words.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/words.h"

char *
rw_grip_name (const RwGrip *grip)
{
  const char *label = _(rw_param (grip->param)->label);

  return grip->item > 0 ? g_strdup_printf ("%s %d", label, grip->item) : g_strdup (label);
}

/* Hundredths where a fine step is smaller than a tenth, and for angles. */
static char *
number (const RwParam *param, double value, RwStyle style)
{
  int decimals = 1;

  if (param->kind == RW_KIND_COUNT)
    decimals = 0;
  else if (param->kind != RW_KIND_LENGTH && param->kind != RW_KIND_LENGTH_LIST)
    decimals = 2;
  else if (param->step > 0 && param->step < 0.075)
    decimals = 2;
  return rw_quantity_write (value, param->unit, style.units, decimals, style.decimal);
}

static char *
number_with_unit (const RwParam *param, double value, RwStyle style)
{
  g_autofree char *digits = number (param, value, style);
  const char *unit = rw_quantity_unit (param->unit, style.units);
  gboolean close = g_strcmp0 (unit, "°") == 0;

  if (unit == NULL || *unit == '\0')
    return g_steal_pointer (&digits);
  return g_strconcat (digits, close ? "" : "\302\240", unit, NULL);
}

char *
rw_grip_value (const RwGrip *grip, const RwResult *result, RwStyle style)
{
  return number_with_unit (rw_param (grip->param), rw_grip_shown (grip, result), style);
}

char *
rw_grip_change (const RwGrip *grip, const RwResult *from, const RwResult *result, RwStyle style)
{
  double change = rw_grip_shown (grip, result) - rw_grip_shown (grip, from);
  g_autofree char *digits = NULL;

  if (!isfinite (change) || fabs (change) < 1e-9)
    return NULL;
  digits = number (rw_param (grip->param), fabs (change), style);
  return g_strconcat (change < 0 ? "\342\210\222" : "+", digits, NULL);
}

char *
rw_grip_by (const RwGrip *grip, const RwResult *result, RwStyle style)
{
  RwParamId id = rw_grip_drags (grip, result);
  g_autofree char *value = NULL;

  if (id == grip->param)
    return NULL;
  value = number_with_unit (rw_param (id), rw_design_get (&result->used, id), style);
  return g_strdup_printf ("%s %s", _(rw_param (id)->label), value);
}

char *
rw_grip_words (const RwGrip *grip, const RwGripScene *scene, RwStyle style)
{
  g_autofree char *name = rw_grip_name (grip);
  g_autofree char *value = rw_grip_value (grip, scene->result, style);
  RwParamId drags = rw_grip_drags (grip, scene->result);

  if (rw_grip_is_fact (grip, scene))
    /* Translators: a parameter and its value */
    return g_strdup_printf (_("%s %s: measured, and so no longer to be dragged"), name, value);
  if (drags != grip->param)
    /* Translators: a parameter, its value, and the parameter that it follows from */
    return g_strdup_printf (_("%s %s: worked out. Dragging changes: %s"), name, value,
                            _(rw_param (drags)->label));
  return g_strdup_printf ("%s %s", name, value);
}

static char *
subject_words (RwSubject subject, const RwResult *result, RwStyle style)
{
  g_autofree char *label = NULL, *value = NULL;

  if (subject.param >= 0)
    {
      label = g_strdup (_(rw_param (subject.param)->label));
      value = rw_value_words (&result->used, subject.param, style);
    }
  else if (subject.slot >= 0 && isfinite (result->value[subject.slot]))
    {
      label = rw_slot_words (subject.slot);
      value = rw_number_words (result->value[subject.slot], rw_slot_dim (subject.slot)->unit, style);
    }
  return label != NULL ? g_strdup_printf ("%s %s", label, value) : NULL;
}

char *
rw_item_words (const RwItem *item, const RwResult *result, RwStyle style)
{
  g_autofree char *subject = subject_words (item->subject, result, style);

  if (item->name == NULL)
    return g_steal_pointer (&subject);
  if (subject == NULL)
    return g_strdup (_(item->name));
  return g_strdup_printf ("%s \302\267 %s", _(item->name), subject);
}
