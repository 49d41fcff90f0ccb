/* Pitch error by string and fret: with the bridge on its theoretical line, and at its best straight place. */
#include "study_parts.h"

#include <glib/gi18n-lib.h>

static void
add_string (RwStudyDraft *draft, int string, gboolean best)
{
  const RwResult *result = draft->result;
  char *name = rw_study_string_name (draft, string);
  const char *pattern = best ? draft->translate (N_("%s, best bridge")) : "%s";
  g_auto (GStrv) parts = g_strsplit (pattern, "%s", 2);
  double *values = rw_study_column (draft, (RwColumnKind){ "cent", best ? 1 : 0, RW_COLUMN_LINE },
                                    g_strjoinv (name, parts), name);

  for (int n = 1; n <= result->plan.last; n++)
    values[n - 1] = best ? result->cents_best[string][n] : result->value[RW_SLOT2 (RW_SETUP_CENTS, string, n)];
}

void
rw_study_pitch (RwStudyDraft *draft)
{
  rw_study_rows (draft, draft->translate (N_("Fret")), 1, draft->result->plan.last);
  draft->study->same_range = TRUE;
  draft->study->panels[0] = g_strdup (draft->translate (N_("Pitch error, bridge on its line")));
  draft->study->panels[1] = g_strdup (draft->translate (N_("Pitch error, bridge at its best straight place")));
  for (int best = 0; best <= 1; best++)
    for (int i = 1; i <= draft->result->plan.strings; i++)
      add_string (draft, i, best);
}
