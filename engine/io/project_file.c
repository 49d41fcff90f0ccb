#include "project_file.h"

#include <string.h>

#include "json_scan.h"
#include "read_file.h"
#include "save.h"

/* Who reads that a line is damaged wants to know of which file. */
static void
name_file (const char *path, GError **error)
{
  g_autofree char *name = g_path_get_basename (path);
  g_autofree char *shown = rw_file_quote (name);

  g_prefix_error (error, "%s: ", shown);
}

RwProject *
rw_project_load (const char *path, GError **error)
{
  GString *text = rw_read_file (path, RW_JSON_MAX_BYTES, error);
  RwProject *project;

  if (text == NULL)
    return NULL;
  project = rw_project_from_text (text->str, (gssize) text->len, error);
  if (project == NULL && strcmp (path, "-") != 0)
    name_file (path, error);
  g_string_free (text, TRUE);
  return project;
}

gboolean
rw_project_save (const RwProject *project, const char *path, GError **error)
{
  g_autofree char *text = rw_project_to_text (project);

  return rw_save_version (path, text, strlen (text), error);
}
