#include "cli_cut.h"

#include "io/cutting_file.h"
#include "io/shelf_file.h"

/* The shelf in a table, or that of the project.  A bad row is an error: half a shelf would give a wrong answer. */
static RwShelf *
read_shelf (const RwOptions *options, RwUnits units, const RwProject *project, GError **error)
{
  g_autoptr (GPtrArray) faults = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (RwShelf) shelf = NULL;

  if (options->shelf == NULL)
    return rw_shelf_copy (project->shelf);
  shelf = rw_shelf_load_csv (options->shelf, units, faults, error);
  if (shelf == NULL || faults->len == 0)
    return g_steal_pointer (&shelf);
  g_set_error_literal (error, RW_OPTIONS_ERROR, 0, g_ptr_array_index (faults, 0));
  return NULL;
}

gboolean
rw_cli_cut (const RwOptions *options, char **text, gboolean *enough, GError **error)
{
  g_autoptr (RwProject) project = NULL;
  g_autoptr (RwShelf) shelf = NULL;
  g_autofree RwResult *result = g_new (RwResult, 1);
  RwMeasured measured;
  RwListFormat format;
  RwUnits units;

  if (!rw_options_format (options, TRUE, &format, error) || !rw_options_units (options, &units, error))
    return FALSE;
  project = rw_options_project (options, error);
  shelf = project != NULL ? read_shelf (options, units, project, error) : NULL;
  if (shelf == NULL)
    return FALSE;
  rw_project_measured (project, &measured);
  rw_solve (&project->design, &measured, result);
  g_autoptr (RwCutting) cutting = rw_cutting_new (result, shelf, FALSE, NULL, NULL);
  g_autoptr (GPtrArray) remedies = rw_stock_remedies (&project->design, &measured, shelf, cutting, NULL, NULL);
  RwCuttingReport report = { &result->used, cutting, remedies };
  *text = rw_cutting_write (&report, format, units);
  *enough = cutting->missing_total == 0;
  return TRUE;
}
