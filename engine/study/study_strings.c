/* Pull of each string, and the stress in its wire or core against the strength of the wire.
 *
 * Strength: least tensile strength of music wire to ASTM A228, 2211 MPa mm^0.145 / d^0.145 for 0.1 to 6.5 mm.
 * Source: R. Budynas & J. Nisbett, Shigley's Mechanical Engineering Design, table of constants for the strength of
 * spring wires; from memory. */
#include "study_parts.h"

#include <glib/gi18n-lib.h>

static double
strength (double diameter)
{
  return diameter >= 0.1 && diameter <= 6.5 ? 2211 / pow (diameter, 0.145) : NAN;
}

void
rw_study_strings (RwStudyDraft *draft)
{
  const RwResult *result = draft->result;
  const char *pull = draft->translate (N_("Pull"));
  const char *stress = draft->translate (N_("Stress in the wire or core"));
  const char *limit = draft->translate (N_("Strength of music wire"));

  draft->study->row_title = g_strdup (draft->translate (N_("String")));
  for (int i = 1; i <= result->plan.strings; i++)
    rw_study_row (draft, rw_study_string_name (draft, i));
  draft->study->panels[0] = g_strdup (draft->translate (N_("Pull")));
  draft->study->panels[1] = g_strdup (draft->translate (N_("Stress; the line is where music wire breaks")));

  double *pulls = rw_study_column (draft, (RwColumnKind){ "N", 0, RW_COLUMN_BAR }, g_strdup (pull), NULL);
  double *stresses = rw_study_column (draft, (RwColumnKind){ "MPa", 1, RW_COLUMN_BAR }, g_strdup (stress), NULL);
  double *limits = rw_study_column (draft, (RwColumnKind){ "MPa", 1, RW_COLUMN_LIMIT }, g_strdup (limit), NULL);

  for (int i = 1; i <= result->plan.strings; i++)
    {
      const RwString *string = &result->used.strings_set.at[i - 1];
      double d = string->core_mm > 0 ? string->core_mm : string->outer_mm;

      pulls[i - 1] = result->value[RW_STRINGS_TENSION + i];
      stresses[i - 1] = pulls[i - 1] / (G_PI * d * d / 4);
      limits[i - 1] = strength (d);
    }
}
