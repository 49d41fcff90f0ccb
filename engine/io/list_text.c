/* Lists for people, on a terminal or on paper. */
#include "list_formats.h"

#include <math.h>

#include "text_table.h"

static char *
number (double value, const char *unit, RwUnits units)
{
  return rw_quantity_show (value, unit, units, '.');
}

/* ---- dimensions ---- */

/* A line of the list; tolerance 0 and a measured NaN are left blank. */
typedef struct
{
  const char *id, *label, *unit;
  double      value, tolerance, planned, measured;
} Line;

static void
add_line (RwTextTable *columns, const Line *line, RwUnits units)
{
  g_autofree char *value = number (line->value, line->unit, units);
  /* A tolerance is finer than the fractions on a rule. */
  g_autofree char *tolerance = number (line->tolerance, line->unit,
                                       rw_units_parts (units) > 0 ? RW_UNITS_INCH : units);
  g_autofree char *within = g_strconcat ("± ", tolerance, NULL);
  g_autofree char *planned = isfinite (line->planned) ? number (line->planned, line->unit, units) : NULL;
  g_autofree char *measured = g_strdup_printf ("measured; planned %s", planned != NULL ? planned : "none");
  const char *const fields[] = { line->label, value, rw_quantity_unit (line->unit, units),
                                 line->tolerance > 0 ? within : "", line->id,
                                 isfinite (line->measured) ? measured : "", NULL };

  rw_text_table_add (columns, fields);
}

static void
add_dimension (RwTextTable *columns, const RwRow *row, RwUnits units)
{
  const RwDim *dim = rw_slot_dim (row->slot);
  g_autofree char *id = rw_slot_id (row->slot);
  g_autofree char *label = rw_slot_label (row->slot);
  const Line line = { id, label, dim->unit, row->value, dim->tolerance, row->planned, row->measured };

  add_line (columns, &line, units);
}

/* What was measured of parameters: they have no row among the dimensions, or one of the same id that shows
 * it. */
static void
add_measured_parameters (RwTextTable      *columns,
                         const RwProject  *project,
                         const RwMeasured *measured,
                         RwUnits           units)
{
  static const char *const heading[] = { "Measured parameters", NULL };
  guint before = columns->rows->len;

  rw_text_table_add (columns, heading);
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    if (isfinite (measured->param[id]) && rw_slot_find (rw_param (id)->id) < 0)
      {
        const RwParam *param = rw_param (id);
        const Line line = { param->id, param->label, param->unit, measured->param[id], 0,
                            rw_design_get (&project->design, id), measured->param[id] };

        add_line (columns, &line, units);
      }
  for (int i = 0; i < project->design.rim_course_thickness.count; i++)
    if (isfinite (measured->course_thickness[i]))
      {
        const RwParam *param = rw_param (RW_P_rim_course_thickness);
        g_autofree char *id = g_strdup_printf ("%s[%d]", param->id, i + 1);
        g_autofree char *label = g_strdup_printf ("%s %d", param->label, i + 1);
        const Line line = { id, label, param->unit, measured->course_thickness[i], 0,
                            project->design.rim_course_thickness.at[i], measured->course_thickness[i] };

        add_line (columns, &line, units);
      }
  if (columns->rows->len == before + 1)
    g_ptr_array_set_size (columns->rows, (int) before);
}

/* By the steps of the making, in each as the table has them. */
static char *
dimensions (const RwProject *project, const RwAnswer *answer, RwUnits units)
{
  g_autoptr (GArray) rows = rw_listing_rows (&answer->now, &answer->planned, &answer->measured);
  RwTextTable columns = rw_text_table_new (1u << 1);

  for (RwStep step = 0; step < RW_STEP_COUNT; step++)
    {
      const char *const heading[] = { rw_step_title (step), NULL };
      gboolean headed = FALSE;

      for (guint i = 0; i < rows->len; i++)
        {
          const RwRow *row = &g_array_index (rows, RwRow, i);

          if (rw_slot_dim (row->slot)->step != step)
            continue;
          if (!headed)
            rw_text_table_add (&columns, heading);
          headed = TRUE;
          add_dimension (&columns, row, units);
        }
    }
  add_measured_parameters (&columns, project, &answer->measured, units);
  return rw_text_table_end (&columns);
}

char *
rw_list_text (const RwProject *project, const RwAnswer *answer, RwUnits units)
{
  g_autofree char *list = dimensions (project, answer, units);
  g_autofree char *findings = rw_findings_text (answer, units);

  return g_strconcat (list, "\nFindings\n", findings, NULL);
}

/* ---- findings ---- */

char *
rw_findings_text (const RwAnswer *answer, RwUnits units)
{
  GString *out = g_string_new (NULL);

  for (guint i = 0; i < answer->findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (answer->findings, i);
      g_autofree char *text = rw_finding_words (finding, finding->pattern, (RwStyle){ units, '.' });
      g_autofree char *ids = g_strjoinv (", ", finding->ids);

      g_string_append_printf (out, "  %-7s  %s\n", rw_severity_name (finding->severity), text);
      g_string_append_printf (out, "  %-7s  %s: %s\n", "", finding->rule, ids);
    }
  if (answer->findings->len == 0)
    g_string_append (out, "  Nothing found\n");
  return g_string_free (out, FALSE);
}

/* ---- the table of parameters ---- */

static void
add_parameter (RwTextTable *columns, const RwParam *param)
{
  g_autofree char *min = rw_number_write (param->min);
  g_autofree char *max = rw_number_write (param->max);
  g_autofree char *range = rw_param_is_number (param) ? g_strdup_printf ("%s to %s", min, max) : NULL;
  const char *const fields[] = { param->id, param->label, range != NULL ? range : rw_param_kind_name (param),
                                 rw_quantity_unit (param->unit, RW_UNITS_MM), param->initial, NULL };

  rw_text_table_add (columns, fields);
}

char *
rw_parameters_text (void)
{
  RwTextTable columns = rw_text_table_new (0);

  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    {
      const char *const heading[] = { rw_param (id)->group, NULL };

      if (id == 0 || rw_param (id - 1)->group != rw_param (id)->group)
        rw_text_table_add (&columns, heading);
      add_parameter (&columns, rw_param (id));
    }
  return rw_text_table_end (&columns);
}
