#include "cli_making.h"

#include <string.h>

#include "io/project_file.h"
#include "io/steps_file.h"
#include "making/making.h"
#include "paper/paper.h"

gboolean
rw_cli_steps (const RwOptions *options, char **text, GError **error)
{
  g_autoptr (RwProject) project = NULL;
  g_autoptr (RwAnswer) answer = NULL;
  RwListFormat format;
  RwUnits units;

  if (!rw_options_format (options, TRUE, &format, error) || !rw_options_units (options, &units, error))
    return FALSE;
  project = rw_options_project (options, error);
  if (project == NULL)
    return FALSE;
  answer = rw_answer_new (project);
  *text = rw_steps_write (project, answer, format, units);
  return TRUE;
}

gboolean
rw_cli_changes (const RwOptions *options, char **text, GError **error)
{
  g_autoptr (RwProject) project = NULL;
  g_autoptr (RwAnswer) answer = NULL;
  g_autoptr (RwSince) since = NULL;
  RwListFormat format;

  if (!rw_options_format (options, TRUE, &format, error))
    return FALSE;
  project = rw_options_project (options, error);
  if (project == NULL)
    return FALSE;
  answer = rw_answer_new (project);
  since = rw_since_new (project, &answer->now);
  *text = rw_since_write (since, format);
  return TRUE;
}

/* ---- the record of papers ---- */

gboolean
rw_cli_check_record (const RwOptions *options, GError **error)
{
  if (!options->record)
    return TRUE;
  if (options->words == NULL || strcmp (options->words[0], "-") == 0)
    g_set_error_literal (error, RW_OPTIONS_ERROR, 0, "--record needs a project file to write to");
  else if (options->settings != NULL || options->measured != NULL)
    g_set_error_literal (error, RW_OPTIONS_ERROR, 0,
                         "--record goes with the build as it is in its file, without --set and --measured");
  else
    return TRUE;
  return FALSE;
}

/* The papers that were asked for: those named, or all of them. */
static char **
papers_of (const RwOptions *options)
{
  g_autoptr (GStrvBuilder) papers = NULL;

  if (options->only != NULL)
    return g_strdupv (options->only);
  papers = g_strv_builder_new ();
  for (int i = 0; i < rw_paper_kinds_count; i++)
    g_strv_builder_add (papers, rw_paper_kinds[i].id);
  return g_strv_builder_end (papers);
}

gboolean
rw_cli_record (const RwOptions *options, RwProject *project, const char *date, RwUnits units, GError **error)
{
  g_autoptr (RwAnswer) answer = rw_answer_new (project);
  g_auto (GStrv) papers = papers_of (options);

  rw_issued_add (project->issued, date, units, (const char *const *) papers, rw_making_record (&answer->now));
  return rw_project_save (project, options->words[0], error);
}
