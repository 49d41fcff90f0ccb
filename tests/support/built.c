#include "built.h"

#include <math.h>
#include <string.h>

static void
change (Built *built, const char *text)
{
  g_autoptr (GError) error = NULL;

  if (*text == '~')
    {
      built->measured.rim_out_of_round = g_ascii_strtod (text + 1, NULL);
      return;
    }

  gboolean measured = *text == '@';
  const char *id = text + (measured ? 1 : 0), *value = strchr (text, '=');

  g_assert_nonnull (value);
  g_autofree char *name = g_strndup (id, (gsize) (value - id));
  if (measured)
    rw_measured_set (&built->measured, name, g_ascii_strtod (value + 1, NULL), &error);
  else
    {
      int param = rw_param_find (name);

      g_assert_cmpint (param, >=, 0);
      rw_design_read (&built->design, (RwParamId) param, value + 1, RW_STYLE_FILE, &error);
    }
  g_assert_no_error (error);
}

Built *
built_new (const char *changes)
{
  Built *built = g_new0 (Built, 1);
  g_auto (GStrv) all = g_strsplit (changes, "|", -1);

  rw_design_init (&built->design);
  rw_measured_init (&built->measured);
  for (int i = 0; all[i] != NULL; i++)
    if (*g_strstrip (all[i]) != '\0')
      change (built, all[i]);
  rw_solve (&built->design, &built->measured, &built->result);
  return built;
}

void
built_free (Built *built)
{
  g_free (built);
}

double
built_value (const Built *built, const char *id)
{
  int slot = rw_slot_find (id);

  if (slot < 0 || !isfinite (built->result.value[slot]))
    g_error ("The build has no row %s", id);
  return built->result.value[slot];
}

RwResult *
built_result (const RwProject *project)
{
  g_autofree RwMeasured *facts = g_new (RwMeasured, 1);
  RwResult *result = g_new (RwResult, 1);

  rw_project_measured (project, facts);
  rw_solve (&project->design, facts, result);
  return result;
}
