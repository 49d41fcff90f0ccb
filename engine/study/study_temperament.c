/* Where a temperament puts the frets, against equal steps.  Where slots go right across, all strings stand as one. */
#include "study_parts.h"

#include <glib/gi18n-lib.h>

#include "model/slots.h"

static double *
column (RwStudyDraft *draft, RwColumnKind kind, const char *pattern, const char *name)
{
  g_auto (GStrv) parts = g_strsplit (draft->translate (pattern), "%s", 2);

  return rw_study_column (draft, kind, g_strjoinv (name, parts), g_strdup (name));
}

static void
add_string (RwStudyDraft *draft, int string, const char *name)
{
  const RwResult *result = draft->result;
  int start = string > result->plan.full ? (int) result->used.fifth_start_fret : 0;
  double *cents = column (draft, (RwColumnKind){ "cent", 0, RW_COLUMN_LINE }, N_("%s, off equal temperament"), name);
  double *moved = column (draft, (RwColumnKind){ "mm", 1, RW_COLUMN_LINE },
                          N_("%s, from the place of equal steps"), name);
  double *places = column (draft, (RwColumnKind){ "mm", RW_TABLE_ONLY, RW_COLUMN_LINE }, N_("%s, from the nut"), name);

  for (int n = start + 1; n <= result->plan.last; n++)
    {
      cents[n - 1] = rw_slot_cents (&result->used, string, n) - 100 * (n - start);
      places[n - 1] = rw_slot_place (result, string, n);
      moved[n - 1] = places[n - 1] - result->plan.length * (1 - exp2 (-n / 12.0));
    }
}

static gboolean
has_same_slots (const RwResult *result, int string, int other)
{
  gboolean same = (string > result->plan.full) == (other > result->plan.full);

  for (int n = 1; n <= result->plan.last && same; n++)
    same = fabs (rw_slot_place (result, string, n) - rw_slot_place (result, other, n)) < RW_SLOT_SAME_MM;
  return same;
}

/* "1 D4, 4 D3": a string and those after it that have its slots; NULL where one before it has.  New. */
static char *
names_of (const RwStudyDraft *draft, int string)
{
  GString *names;

  for (int i = 1; i < string; i++)
    if (has_same_slots (draft->result, i, string))
      return NULL;
  names = g_string_new (NULL);
  for (int i = string; i <= draft->result->plan.strings; i++)
    {
      g_autofree char *name = rw_study_string_name (draft, i);

      if (has_same_slots (draft->result, string, i))
        g_string_append_printf (names, "%s%s", i > string ? ", " : "", name);
    }
  return g_string_free (names, FALSE);
}

void
rw_study_temperament (RwStudyDraft *draft)
{
  const RwResult *result = draft->result;
  gboolean across = result->used.frets_slots == RW_SLOTS_ACROSS;

  rw_study_rows (draft, draft->translate (N_("Fret")), 1, result->plan.last);
  draft->study->panels[0] = g_strdup (draft->translate (N_("Notes off equal temperament")));
  draft->study->panels[1] = g_strdup (draft->translate (N_("Slots from the places of equal steps")));
  if (across)
    add_string (draft, 1, draft->translate (N_("All strings")));
  for (int i = 1; i <= result->plan.strings && !across; i++)
    {
      g_autofree char *name = names_of (draft, i);

      if (name != NULL)
        add_string (draft, i, name);
    }
}
