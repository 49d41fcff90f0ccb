/* Lists as comma-separated values. */
#include "list_formats.h"

#include <math.h>
#include <string.h>

#include "model/band.h"
#include "making/care.h"
#include "making/other_way.h"
#include "csv_text.h"

/* Of lengths in inches; the writer of quantities adds two. */
#define DECIMALS 4

static char *
number_field (double value, const char *unit, RwUnits units)
{
  if (!isfinite (value))
    return g_strdup ("");
  if (units == RW_UNITS_MM || strcmp (unit, "mm") != 0)
    return rw_number_write (value);
  return rw_quantity_write (value, unit, units, DECIMALS, '.');
}

static void
append_dimension (GString *out, const RwRow *row, const RwCare *asks, const RwAnswer *answer, const RwBands *bands,
                  RwUnits units)
{
  const RwDim *dim = rw_slot_dim (row->slot);
  const RwTolerance *care = rw_care_of_slot (asks, row->slot);
  const char *why_not = care == NULL && asks != NULL ? rw_why_not_asked (row->slot, &answer->now) : NULL;
  gboolean inches = units != RW_UNITS_MM && strcmp (dim->unit, "mm") == 0;
  g_autofree char *id = rw_slot_id (row->slot);
  g_autofree char *label = rw_slot_label (row->slot);
  RwAllowance allowance = rw_care_allowance (asks, id);
  g_autofree char *value = number_field (row->value, dim->unit, units);
  g_autofree char *planned = number_field (row->planned, dim->unit, units);
  g_autofree char *measured = number_field (row->measured, dim->unit, units);
  g_autofree char *made = number_field (row->made, dim->unit, units);
  g_autofree char *asked = number_field (row->asked, dim->unit, units);
  g_autofree char *deviation = number_field (rw_row_deviation (row), dim->unit, units);
  g_autofree char *needed = number_field (rw_row_needed (row), dim->unit, units);
  /* A tolerance is finer than the fractions on a rule. */
  g_autofree char *tolerance = number_field (dim->tolerance > 0 ? dim->tolerance : NAN, dim->unit,
                                             inches ? RW_UNITS_INCH : RW_UNITS_MM);
  g_autofree char *close = number_field (care != NULL ? care->asked : NAN, dim->unit,
                                         inches ? RW_UNITS_INCH : RW_UNITS_MM);
  g_autofree char *within = number_field (allowance.within > 0 ? allowance.within : NAN, dim->unit,
                                          inches ? RW_UNITS_INCH : RW_UNITS_MM);
  g_autofree char *low = number_field (bands->low[row->slot], dim->unit, units);
  g_autofree char *high = number_field (bands->high[row->slot], dim->unit, units);
  const char *const fields[] = { id, dim->part, label, inches ? "in" : dim->unit, value, planned, measured,
                                 tolerance, rw_step_title (dim->step), made, asked, deviation, needed, close,
                                 care != NULL && care->by_fitting ? "yes" : "", low, high, within,
                                 rw_allowance_name (allowance), why_not != NULL ? why_not : "", NULL };

  rw_csv_row (out, fields);
}

char *
rw_list_csv (const RwProject *project, const RwAnswer *answer, RwUnits units)
{
  static const char *const header[] = { "id", "part", "label", "unit", "value", "planned", "measured",
                                        "tolerance", "step", "made", "asked", "deviation", "needed", "close_enough",
                                        "by_fitting", "low", "high", "within", "within_by",
                                        "why_not_asked", NULL };
  g_autoptr (GArray) rows = rw_listing_rows (project, &answer->now, &answer->planned);
  g_autoptr (RwCare) care = rw_care_new (&project->design, &answer->measured);
  g_autofree RwBands *bands = rw_bands_new (&answer->now, &answer->measured);
  GString *out = g_string_new (NULL);

  rw_csv_row (out, header);
  for (guint i = 0; i < rows->len; i++)
    {
      const RwRow *row = &g_array_index (rows, RwRow, i);

      append_dimension (out, row, care, answer, bands, units);
    }
  return g_string_free (out, FALSE);
}

static void
append_parameter (GString *out, const RwParam *param)
{
  gboolean ranged = rw_param_is_number (param);
  g_autofree char *min = ranged ? rw_number_write (param->min) : g_strdup ("");
  g_autofree char *max = ranged ? rw_number_write (param->max) : g_strdup ("");
  g_autofree char *step = ranged ? rw_number_write (param->step) : g_strdup ("");
  const char *const fields[] = { param->id, param->group, param->label, rw_param_kind_name (param),
                                 param->unit, param->initial, min, max, step, param->meaning, NULL };

  rw_csv_row (out, fields);
}

char *
rw_parameters_csv (void)
{
  static const char *const header[] = { "id", "group", "label", "kind", "unit", "default", "min", "max",
                                        "step", "meaning", NULL };
  GString *out = g_string_new (NULL);

  rw_csv_row (out, header);
  for (int id = 0; id < RW_PARAM_COUNT; id++)
    append_parameter (out, rw_param ((RwParamId) id));
  return g_string_free (out, FALSE);
}
