/* Lists as JSON, for other programs: one row a line. */
#include "list_formats.h"

#include <math.h>

#include "model/band.h"
#include "making/care.h"
#include "making/other_way.h"
#include "making/remedy.h"
#include "json_writer.h"

/* Begins a row: the line, its brace and its id. */
static void
begin_row (RwJsonWriter *writer, const char *id)
{
  rw_json_next (writer);
  rw_json_begin_line (writer, '{');
  rw_json_text (writer, "id", id);
}

/* ---- dimensions and findings ---- */

static void
dimension (RwJsonWriter *writer, const RwRow *row, const RwCare *asked, const RwAnswer *answer, const RwBands *bands)
{
  const RwDim *dim = rw_slot_dim (row->slot);
  const RwTolerance *care = rw_care_of_slot (asked, row->slot);
  const char *why_not = care == NULL && asked != NULL ? rw_why_not_asked (row->slot, &answer->now) : NULL;
  g_autofree char *id = rw_slot_id (row->slot);
  g_autofree char *label = rw_slot_label (row->slot);
  RwAllowance allowance = rw_care_allowance (asked, id);

  begin_row (writer, id);
  rw_json_text (writer, "part", dim->part);
  rw_json_text (writer, "label", label);
  rw_json_text (writer, "unit", dim->unit);
  rw_json_value (writer, "value", row->value);
  rw_json_value (writer, "planned", row->planned);
  rw_json_value (writer, "measured", row->measured);
  rw_json_value (writer, "tolerance", dim->tolerance > 0 ? dim->tolerance : NAN);
  rw_json_text (writer, "step", rw_step_title (dim->step));
  rw_json_value (writer, "made", row->made);
  rw_json_value (writer, "asked", row->asked);
  rw_json_value (writer, "deviation", rw_row_deviation (row));
  rw_json_value (writer, "needed", rw_row_needed (row));
  rw_json_value (writer, "close_enough", care != NULL ? care->asked : NAN);
  rw_json_flag (writer, "by_fitting", care != NULL && care->by_fitting);
  rw_json_value (writer, "low", bands->low[row->slot]);
  rw_json_value (writer, "high", bands->high[row->slot]);
  /* What a deviation is held against. */
  rw_json_value (writer, "within", allowance.within > 0 ? allowance.within : NAN);
  rw_json_text (writer, "within_by", rw_allowance_name (allowance));
  rw_json_text (writer, "why_not_asked", why_not != NULL ? why_not : "");
  rw_json_end (writer, '}');
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

      dimension (writer, row, care, answer, bands);
    }
  rw_json_end (writer, ']');
}

/* The parameters that a remedy changes, as --set takes them. */
static void
settings (RwJsonWriter *writer, const RwDesign *design, const RwRemedy *remedy)
{
  rw_json_name (writer, "set");
  rw_json_begin (writer, '{');
  for (int id = 0; id < RW_PARAM_COUNT; id++)
    if (!rw_design_same (design, &remedy->design, (RwParamId) id))
      {
        g_autofree char *value = rw_design_write (&remedy->design, (RwParamId) id, RW_STYLE_FILE);

        rw_json_text (writer, rw_param ((RwParamId) id)->id, value);
      }
  rw_json_end (writer, '}');
}

static void
remedies (RwJsonWriter *writer, const RwAnswer *answer, const RwDesign *design, const RwFinding *found)
{
  g_autoptr (GPtrArray) all = rw_remedies (design, &answer->measured, found);

  rw_json_name (writer, "remedies");
  rw_json_begin (writer, '[');
  for (guint i = 0; i < all->len; i++)
    {
      const RwRemedy *remedy = g_ptr_array_index (all, i);

      rw_json_next (writer);
      rw_json_begin (writer, '{');
      rw_json_text (writer, "text", remedy->text);
      settings (writer, design, remedy);
      rw_json_end (writer, '}');
    }
  rw_json_end (writer, ']');
}

/* design NULL: without remedies. */
static void
finding (RwJsonWriter *writer, const RwAnswer *answer, const RwDesign *design, const RwFinding *found)
{
  rw_json_next (writer);
  rw_json_begin_line (writer, '{');
  rw_json_text (writer, "severity", rw_severity_name (found->severity));
  rw_json_text (writer, "rule", found->rule);
  rw_json_text (writer, "text", found->text);
  rw_json_texts (writer, "ids", (const char *const *) found->ids);
  if (found->reason != NULL)
    {
      rw_json_text (writer, "accepted", found->reason);
      rw_json_text (writer, "accepted_on", found->accepted_on);
    }
  if (design != NULL)
    remedies (writer, answer, design, found);
  rw_json_end (writer, '}');
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
append_measured_courses (RwJsonWriter *writer, const RwMeasured *measured, int count)
{
  int last = 0;

  for (int i = 0; i < count; i++)
    if (isfinite (measured->course_thickness[i]))
      last = i + 1;
  if (last == 0)
    {
      rw_json_text (writer, "measured", NULL);
      return;
    }
  rw_json_name (writer, "measured");
  rw_json_begin (writer, '[');
  for (int i = 0; i < last; i++)
    {
      rw_json_next (writer);
      rw_json_number (writer->out, measured->course_thickness[i]);
    }
  rw_json_end (writer, ']');
}

static void
parameter_value (RwJsonWriter *writer, RwParamId id, const RwProject *project, const RwAnswer *answer)
{
  const RwEntry *entry = rw_ledger_find (project->ledger, rw_param (id)->id);
  const RwMadeStep *made = rw_made_holder_of_param (project->made, id);

  begin_row (writer, rw_param (id)->id);
  rw_json_text (writer, "unit", rw_param (id)->unit);
  rw_json_value (writer, "value", rw_design_get (&answer->now.used, id));
  rw_json_value (writer, "planned", rw_design_get (&project->design, id));
  rw_json_value (writer, "measured", entry != NULL ? rw_entry_mean (entry) : NAN);
  rw_json_value (writer, "made", made != NULL ? rw_design_get (&made->held->design, id) : NAN);
  rw_json_end (writer, '}');
}

static void
parameter_text (RwJsonWriter *writer, RwParamId id, const RwProject *project, const RwAnswer *answer)
{
  g_autofree char *now = rw_design_write (&answer->now.used, id, RW_STYLE_FILE);
  g_autofree char *planned = rw_design_write (&project->design, id, RW_STYLE_FILE);
  const RwMadeStep *step = rw_made_holder_of_param (project->made, id);
  g_autofree char *made = step != NULL ? rw_design_write (&step->held->design, id, RW_STYLE_FILE) : NULL;

  begin_row (writer, rw_param (id)->id);
  rw_json_text (writer, "unit", rw_param (id)->unit);
  rw_json_text (writer, "text", now);
  rw_json_text (writer, "planned", planned);
  if (id == RW_P_rim_course_thickness)
    append_measured_courses (writer, &answer->measured, project->design.rim_course_thickness.count);
  else
    rw_json_value (writer, "measured", NAN);
  rw_json_text (writer, "made", made);
  rw_json_end (writer, '}');
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
  rw_json_text (&writer, "name", project->name != NULL ? project->name : "");
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
  rw_json_text (writer, "group", param->group);
  rw_json_text (writer, "label", param->label);
  rw_json_text (writer, "kind", rw_param_kind_name (param));
  rw_json_text (writer, "unit", param->unit);
  rw_json_text (writer, "default", param->initial);
  rw_json_value (writer, "min", ranged ? param->min : NAN);
  rw_json_value (writer, "max", ranged ? param->max : NAN);
  rw_json_value (writer, "step", ranged ? param->step : NAN);
  rw_json_text (writer, "meaning", param->meaning);
  rw_json_end (writer, '}');
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
