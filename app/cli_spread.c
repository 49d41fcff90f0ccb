#include "cli_spread.h"

#include "io/spread_file.h"

#define BUILDS_LEAST 100
#define BUILDS_MOST 1000000

static gboolean
read_job (const RwOptions *options, RwSpreadJob *job, GError **error)
{
  if (options->builds < BUILDS_LEAST || options->builds > BUILDS_MOST)
    g_set_error (error, RW_OPTIONS_ERROR, 0, "--builds wants a whole number from %d to %d, not %d", BUILDS_LEAST,
                 BUILDS_MOST, options->builds);
  else if (options->seed < 0)
    g_set_error (error, RW_OPTIONS_ERROR, 0, "--seed wants a whole number from 0 on, not %" G_GINT64_FORMAT,
                 options->seed);
  else
    {
      *job = (RwSpreadJob){ .builds = (guint) options->builds, .seed = (guint64) options->seed,
                            .threads = g_get_num_processors () };
      return TRUE;
    }
  return FALSE;
}

gboolean
rw_cli_spread (const RwOptions *options, char **text, GError **error)
{
  g_autoptr (RwProject) project = NULL;
  g_autoptr (RwCare) care = NULL;
  g_autoptr (RwSpread) spread = NULL;
  RwMeasured measured;
  RwSpreadJob job;
  RwListFormat format;
  RwUnits units;

  if (!rw_options_format (options, TRUE, &format, error) || !rw_options_units (options, &units, error)
      || !read_job (options, &job, error))
    return FALSE;
  project = rw_options_project (options, error);
  if (project == NULL)
    return FALSE;
  rw_project_measured (project, &measured);
  care = rw_care_new (&project->design, &measured);
  if (care == NULL)
    {
      g_set_error (error, RW_OPTIONS_ERROR, 0,
                   "The build can't be strung up as it is, so nothing spreads; rimwright check says why");
      return FALSE;
    }
  spread = rw_spread_new (care->bench, care->sensitivity, &job);
  *text = rw_spread_write (care, spread, format, units);
  return TRUE;
}
