#include "cli_what_if.h"

#include <math.h>

#include "study/what_if.h"
#include "cli_study.h"

enum
{
  GOOD = 0,
  NOT_REACHED = 1,
  FAILED = 2,
};

/* ---- what is asked ---- */

static gboolean
choose_param (const char *word, RwParamId *param, GError **error)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new ();
  int found = rw_param_find (word);

  if (found >= 0 && rw_param_is_number (rw_param ((RwParamId) found)))
    {
      *param = (RwParamId) found;
      return TRUE;
    }
  for (int id = 0; id < RW_PARAM_COUNT; id++)
    if (rw_param_is_number (rw_param ((RwParamId) id)))
      g_ptr_array_add (names, (char *) rw_param ((RwParamId) id)->id);
  return rw_options_fail_unknown (error, "There is no parameter %s that is a number", word, names);
}

/* A dimension that this build has. */
static gboolean
choose_slot (const char *word, const RwResult *now, RwSlot *slot, GError **error)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new ();
  int found = rw_slot_find (word);

  if (found >= 0 && isfinite (now->value[found]))
    {
      *slot = (RwSlot) found;
      return TRUE;
    }
  if (found >= 0)
    {
      g_set_error (error, RW_OPTIONS_ERROR, 0, "This build has no %s", word);
      return FALSE;
    }
  for (int i = 0; i < rw_dims_count; i++)
    g_ptr_array_add (names, (char *) rw_dims[i].id);
  return rw_options_fail_unknown (error, "There is no dimension %s", word, names);
}

static gboolean
read_wanted (const RwOptions *options, RwSlot slot, double *wanted, GError **error)
{
  *wanted = NAN;
  return options->wanted == NULL
         || rw_quantity_read (options->wanted, rw_slot_dim (slot)->unit, NULL, '.', wanted, error);
}

/* ---- the answer ---- */

/* "bridge.height: 16 mm now, 17.5 mm gives it." */
static char *
answer_words (const RwWhatIf *what, const RwWhatIfAnswer *answer, double wanted, RwStyle style)
{
  const RwParam *param = rw_param (what->param);
  const char *unit = rw_slot_dim (what->slot)->unit;
  g_autofree char *value = rw_cli_quantity (answer->value, param->unit, style);
  g_autofree char *now = rw_cli_quantity (what->now, param->unit, style);
  g_autofree char *result = rw_cli_quantity (answer->result, unit, style);
  g_autofree char *low = rw_cli_quantity (answer->low, unit, style);
  g_autofree char *high = rw_cli_quantity (answer->high, unit, style);

  if (answer->reach == RW_WHAT_IF_NEVER)
    return g_strdup ("This can't be worked out for any value.");
  if (!isfinite (wanted))
    return g_strdup_printf ("%s is %s now; from its least to its most this gives %s to %s.", param->id, now, low, high);
  if (answer->reach == RW_WHAT_IF_REACHED)
    return g_strdup_printf ("%s: %s gives it; now it is %s.", param->id, value, now);
  if (answer->reach == RW_WHAT_IF_NEAREST)
    return g_strdup_printf ("%s: %s comes nearest, with %s; now it is %s.", param->id, value, result, now);
  return g_strdup_printf ("%s: out of reach; this gives %s to %s.", param->id, low, high);
}

static int
answer (const RwOptions *options, const RwWhatIf *what, const RwDesign *design, RwStudyLook *look, GError **error)
{
  g_autoptr (RwStudy) study = NULL;
  g_autofree char *words = NULL, *before = NULL;
  const char *held = rw_what_if_held (what, design);
  RwWhatIfAnswer found;
  double wanted;

  if (!read_wanted (options, what->slot, &wanted, error))
    return FAILED;
  study = rw_study_what_if (what, wanted, &found, rw_cli_in_english);
  words = answer_words (what, &found, wanted, look->style);
  before = g_strdup_printf ("%s%s%s\n\n", words, held != NULL ? " " : "", held != NULL ? held : "");
  look->heading = study->title;
  if (!rw_cli_study_write (options, study, look, before, error))
    return FAILED;
  return isfinite (wanted) && !isfinite (found.value) ? NOT_REACHED : GOOD;
}

int
rw_cli_what_if (const RwOptions *options, GError **error)
{
  g_autoptr (RwProject) project = NULL;
  g_autoptr (RwAnswer) now = NULL;
  RwStudyLook look;
  RwParamId param = RW_P_bridge_height;
  RwSlot slot = RW_NECK_ANGLE;

  if (options->words == NULL || options->words[1] == NULL)
    {
      g_set_error_literal (error, RW_OPTIONS_ERROR, 0,
                           "what-if needs a result and a parameter, as in rimwright what-if setup.action[12] "
                           "bridge.height");
      return FAILED;
    }
  if (!rw_cli_study_look (options, &look, error) || !choose_param (options->words[1], &param, error))
    return FAILED;
  project = rw_cli_study_project (options, 2, error);
  if (project == NULL)
    return FAILED;
  now = rw_answer_new (project);
  if (!choose_slot (options->words[0], &now->now, &slot, error))
    return FAILED;

  RwWhatIf what = rw_what_if_new (&project->design, &now->measured, &now->now, slot, param);
  return answer (options, &what, &project->design, &look, error);
}
