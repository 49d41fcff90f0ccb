#include "examples.h"

#include <string.h>

const RwExample rw_examples[] = {
  { "default", "", (const char *const[]){ NULL } },
};

const int rw_examples_count = G_N_ELEMENTS (rw_examples);

const RwExample *
rw_example_find (const char *name)
{
  for (int i = 0; i < rw_examples_count; i++)
    if (strcmp (rw_examples[i].name, name) == 0)
      return &rw_examples[i];
  return NULL;
}

RwProject *
rw_example_project (const RwExample *example)
{
  RwProject *project = rw_project_new ();

  g_free (project->name);
  project->name = g_strdup (example->title);
  for (int i = 0; example->settings[i] != NULL; i++)
    {
      g_auto (GStrv) parts = g_strsplit (example->settings[i], "=", 2);
      int id = rw_param_find (parts[0]);
      g_autoptr (GError) error = NULL;

      if (id < 0 || !rw_design_read (&project->design, (RwParamId) id, parts[1], RW_STYLE_FILE, &error))
        g_error ("example %s: %s", example->name, example->settings[i]);
    }
  return project;
}
