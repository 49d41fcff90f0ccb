/* Lists as JSON, for other programs: one row a line. */
#include "list_formats.h"

#include <math.h>

#include "model/band.h"
#include "making/care.h"
#include "making/remedy.h"
#include "json_writer.h"

static void
append_text (GString *out, const char *name, const char *text)
{
  g_string_append_printf (out, ", \"%s\": ", name);
  rw_json_string (out, text);
}

static void
append_number (GString *out, const char *name, double value)
{
  g_string_append_printf (out, ", \"%s\": ", name);
  rw_json_number (out, value);
}

static void
append_flag (GString *out, const char *name, gboolean value)
{
  g_string_append_printf (out, ", \"%s\": %s", name, value ? "true" : "false");
}

/* Begins a row: the line, its brace and its id. */
static void
begin_row (RwJsonWriter *writer, const char *id)
{
  rw_json_next (writer);
  g_string_append (writer->out, "{ \"id\": ");
  rw_json_string (writer->out, id);
}

static void
end_row (RwJsonWriter *writer)
{
  g_string_append (writer->out, " }");
}

/* ---- dimensions and findings ---- */

static void
dimension (RwJsonWriter *writer, const RwRow *row, const RwTolerance *care, const RwBands *bands)
{
  const RwDim *dim = rw_slot_dim (row->slot);
  g_autofree char *id = rw_slot_id (row->slot);
  g_autofree char *label = rw_slot_label (row->slot);

  begin_row (writer, id);
  append_text (writer->out, "part", dim->part);
  append_text (writer->out, "label", label);
  append_text (writer->out, "unit", dim->unit);
  append_number (writer->out, "value", row->value);
  append_number (writer->out, "planned", row->planned);
  append_number (writer->out, "measured", row->measured);
  append_number (writer->out, "tolerance", dim->tolerance > 0 ? dim->tolerance : NAN);
  append_text (writer->out, "step", rw_step_title (dim->step));
  append_number (writer->out, "made", row->made);
  append_number (writer->out, "asked", row->asked);
  append_number (writer->out, "deviation", rw_row_deviation (row));
  append_number (writer->out, "needed", rw_row_needed (row));
  append_number (writer->out, "close_enough", care != NULL ? care->asked : NAN);
  append_flag (writer->out, "by_fitting", care != NULL && care->by_fitting);
  append_number (writer->out, "low", bands->low[row->slot]);
  append_number (writer->out, "high", bands->high[row->slot]);
  end_row (writer);
}

static void
dimensions (RwJsonWriter *writer, const RwProject *project, const RwAnswer *answer)
{
  g_autoptr (GArray) rows = rw_listing_rows (project, &answer->now, &answer->planned);
  g_autoptr (RwCare) care = rw_care_new (&project->design, &answer->measured);
  g_autofree RwBands *bands = rw_bands_new (&answer->now, &answer->measured);

  rw_json_name (writer, "dimensions");
  rw_json_begin (writer, '[');
  for (guint i = 0; i < rows->len; i++)
    {
      const RwRow *row = &g_array_index (rows, RwRow, i);

      dimension (writer, row, rw_care_of_slot (care, row->slot), bands);
    }
  rw_json_end (writer, ']');
}

/* "set": the parameters that a remedy changes, as --set takes them. */
static void
settings (GString *out, const RwDesign *design, const RwRemedy *remedy)
{
  gboolean first = TRUE;

  g_string_append (out, ", \"set\": {");
  for (int id = 0; id < RW_PARAM_COUNT; id++)
    if (!rw_design_same (design, &remedy->design, (RwParamId) id))
      {
        g_autofree char *value = rw_design_write (&remedy->design, (RwParamId) id, RW_STYLE_FILE);

        g_string_append_printf (out, "%s \"%s\": ", first ? "" : ",", rw_param ((RwParamId) id)->id);
        rw_json_string (out, value);
        first = FALSE;
      }
  g_string_append (out, " }");
}

static void
remedies (GString *out, const RwAnswer *answer, const RwDesign *design, const RwFinding *found)
{
  g_autoptr (GPtrArray) all = rw_remedies (design, &answer->measured, found);

  g_string_append (out, ", \"remedies\": [");
  for (guint i = 0; i < all->len; i++)
    {
      const RwRemedy *remedy = g_ptr_array_index (all, i);

      g_string_append_printf (out, "%s { \"text\": ", i > 0 ? "," : "");
      rw_json_string (out, remedy->text);
      settings (out, design, remedy);
      g_string_append (out, " }");
    }
  g_string_append (out, all->len > 0 ? " ]" : "]");
}

/* design NULL: without remedies. */
static void
finding (RwJsonWriter *writer, const RwAnswer *answer, const RwDesign *design, const RwFinding *found)
{
  GString *out = writer->out;

  rw_json_next (writer);
  g_string_append (out, "{ \"severity\": ");
  rw_json_string (out, rw_severity_name (found->severity));
  append_text (out, "rule", found->rule);
  append_text (out, "text", found->text);
  g_string_append (out, ", \"ids\": [");
  for (int i = 0; found->ids[i] != NULL; i++)
    {
      g_string_append (out, i > 0 ? ", " : " ");
      rw_json_string (out, found->ids[i]);
    }
  g_string_append (out, " ]");
  if (found->reason != NULL)
    {
      append_text (out, "accepted", found->reason);
      append_text (out, "accepted_on", found->accepted_on);
    }
  if (design != NULL)
    remedies (out, answer, design, found);
  end_row (writer);
}

static void
findings (RwJsonWriter *writer, const RwAnswer *answer, const RwDesign *design)
{
  rw_json_name (writer, "findings");
  rw_json_begin (writer, '[');
  for (guint i = 0; i < answer->findings->len; i++)
    finding (writer, answer, design, g_ptr_array_index (answer->findings, i));
  rw_json_end (writer, ']');
}

static void
steps (RwJsonWriter *writer)
{
  rw_json_name (writer, "steps");
  rw_json_begin (writer, '[');
  for (int step = 0; step < RW_STEP_COUNT; step++)
    {
      rw_json_next (writer);
      rw_json_string (writer->out, rw_step_title ((RwStep) step));
    }
  rw_json_end (writer, ']');
}

/* ---- parameters of a build ---- */

/* What was measured of the courses, null for those that were not; null where none was. */
static void
append_measured_courses (GString *out, const RwMeasured *measured, int count)
{
  int last = 0;

  for (int i = 0; i < count; i++)
    if (isfinite (measured->course_thickness[i]))
      last = i + 1;
  g_string_append (out, last > 0 ? ", \"measured\": [" : ", \"measured\": null");
  for (int i = 0; i < last; i++)
    {
      g_string_append (out, i > 0 ? ", " : " ");
      rw_json_number (out, measured->course_thickness[i]);
    }
  g_string_append (out, last > 0 ? " ]" : "");
}

static void
parameter_value (RwJsonWriter *writer, RwParamId id, const RwProject *project, const RwAnswer *answer)
{
  const RwEntry *entry = rw_ledger_find (project->ledger, rw_param (id)->id);
  const RwMadeStep *made = rw_made_holder_of_param (project->made, id);

  begin_row (writer, rw_param (id)->id);
  append_text (writer->out, "unit", rw_param (id)->unit);
  append_number (writer->out, "value", rw_design_get (&answer->now.used, id));
  append_number (writer->out, "planned", rw_design_get (&project->design, id));
  append_number (writer->out, "measured", entry != NULL ? rw_entry_mean (entry) : NAN);
  append_number (writer->out, "made", made != NULL ? rw_design_get (&made->held->design, id) : NAN);
  end_row (writer);
}

static void
append_made_text (GString *out, const RwMadeStep *made, RwParamId id)
{
  g_autofree char *text = made != NULL ? rw_design_write (&made->held->design, id, RW_STYLE_FILE) : NULL;

  if (text != NULL)
    append_text (out, "made", text);
  else
    append_number (out, "made", NAN);
}

static void
parameter_text (RwJsonWriter *writer, RwParamId id, const RwProject *project, const RwAnswer *answer)
{
  g_autofree char *now = rw_design_write (&answer->now.used, id, RW_STYLE_FILE);
  g_autofree char *planned = rw_design_write (&project->design, id, RW_STYLE_FILE);

  begin_row (writer, rw_param (id)->id);
  append_text (writer->out, "unit", rw_param (id)->unit);
  append_text (writer->out, "text", now);
  append_text (writer->out, "planned", planned);
  if (id == RW_P_rim_course_thickness)
    append_measured_courses (writer->out, &answer->measured, project->design.rim_course_thickness.count);
  else
    append_number (writer->out, "measured", NAN);
  append_made_text (writer->out, rw_made_holder_of_param (project->made, id), id);
  end_row (writer);
}

static void
parameters (RwJsonWriter *writer, const RwProject *project, const RwAnswer *answer)
{
  rw_json_name (writer, "parameters");
  rw_json_begin (writer, '[');
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    if (rw_param_is_number (rw_param (id)))
      parameter_value (writer, id, project, answer);
    else
      parameter_text (writer, id, project, answer);
  rw_json_end (writer, ']');
}

/* ---- whole texts ---- */

static char *
finish (RwJsonWriter *writer)
{
  rw_json_end (writer, '}');
  g_string_append_c (writer->out, '\n');
  return g_string_free (writer->out, FALSE);
}

char *
rw_list_json (const RwProject *project, const RwAnswer *answer)
{
  RwJsonWriter writer = rw_json_writer (g_string_new (NULL));

  rw_json_begin (&writer, '{');
  rw_json_name (&writer, "name");
  rw_json_string (writer.out, project->name != NULL ? project->name : "");
  dimensions (&writer, project, answer);
  findings (&writer, answer, NULL);
  steps (&writer);
  parameters (&writer, project, answer);
  return finish (&writer);
}

char *
rw_findings_json (const RwAnswer *answer, const RwDesign *design)
{
  RwJsonWriter writer = rw_json_writer (g_string_new (NULL));

  rw_json_begin (&writer, '{');
  findings (&writer, answer, design);
  return finish (&writer);
}

static void
parameter_row (RwJsonWriter *writer, const RwParam *param)
{
  gboolean ranged = rw_param_is_number (param);

  begin_row (writer, param->id);
  append_text (writer->out, "group", param->group);
  append_text (writer->out, "label", param->label);
  append_text (writer->out, "kind", rw_param_kind_name (param));
  append_text (writer->out, "unit", param->unit);
  append_text (writer->out, "default", param->initial);
  append_number (writer->out, "min", ranged ? param->min : NAN);
  append_number (writer->out, "max", ranged ? param->max : NAN);
  append_number (writer->out, "step", ranged ? param->step : NAN);
  append_text (writer->out, "meaning", param->meaning);
  end_row (writer);
}

char *
rw_parameters_json (void)
{
  RwJsonWriter writer = rw_json_writer (g_string_new (NULL));

  rw_json_begin (&writer, '{');
  rw_json_name (&writer, "parameters");
  rw_json_begin (&writer, '[');
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    parameter_row (&writer, rw_param (id));
  rw_json_end (&writer, ']');
  return finish (&writer);
}
