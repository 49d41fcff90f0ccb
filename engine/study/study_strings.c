/* Pull of each string, and the stress in its wire or core against the strength of the wire. */
#include "study_parts.h"

#include <glib/gi18n-lib.h>

void
rw_study_strings (RwStudyDraft *draft)
{
  const RwResult *result = draft->result;
  const char *pull = draft->translate (N_("Pull"));
  const char *stress = draft->translate (N_("Stress in the wire or core"));
  const char *limit = draft->translate (N_("Strength of the wire"));

  draft->study->row_title = g_strdup (draft->translate (N_("String")));
  for (int i = 1; i <= result->plan.strings; i++)
    rw_study_row (draft, rw_study_string_name (draft, i));
  draft->study->panels[0] = g_strdup (draft->translate (N_("Pull")));
  draft->study->panels[1] = g_strdup (draft->translate (N_("Stress; the line is where the wire breaks")));

  double *pulls = rw_study_column (draft, (RwColumnKind){ "N", 0, RW_COLUMN_BAR }, g_strdup (pull), NULL);
  double *stresses = rw_study_column (draft, (RwColumnKind){ "MPa", 1, RW_COLUMN_BAR }, g_strdup (stress), NULL);
  double *limits = rw_study_column (draft, (RwColumnKind){ "MPa", 1, RW_COLUMN_LIMIT }, g_strdup (limit), NULL);

  for (int i = 1; i <= result->plan.strings; i++)
    {
      pulls[i - 1] = result->value[RW_STRINGS_TENSION + i];
      stresses[i - 1] = result->value[RW_STRINGS_STRESS + i];
      limits[i - 1] = 100 * stresses[i - 1] / result->value[RW_STRINGS_STRENGTH_SHARE + i];
    }
}
