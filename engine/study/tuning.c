#include "tuning.h"

#include <glib/gi18n-lib.h>
#include <string.h>

#define BETWEEN " \t,;"

const RwTuning rw_tunings[] = {
  { N_("Open G"), "D4 B3 G3 D3 G4", TRUE },
  { N_("Double C"), "D4 C4 G3 C3 G4", TRUE },
  { N_("Drop C"), "D4 B3 G3 C3 G4", TRUE },
  { N_("G modal"), "D4 C4 G3 D3 G4", TRUE },
  { N_("G minor"), "D4 A#3 G3 D3 G4", TRUE },
  { N_("Open D"), "D4 A3 F#3 D3 F#4", TRUE },
  { N_("Open A"), "E4 C#4 A3 E3 A4", TRUE },
  { N_("Double D"), "E4 D4 A3 D3 A4", TRUE },
  { N_("Fifths on C"), "A4 D4 G3 C3", FALSE },
  { N_("Fifths on G, an octave below the fiddle"), "E4 A3 D3 G2", FALSE },
  { N_("As the upper strings of a guitar"), "E4 B3 G3 D3", FALSE },
  { N_("Drop C, four strings"), "D4 B3 G3 C3", FALSE },
  { N_("Guitar"), "E4 B3 G3 D3 A2 E2", FALSE },
};

const int rw_tunings_count = G_N_ELEMENTS (rw_tunings);

static char **
split (const char *text)
{
  g_auto (GStrv) words = g_strsplit_set (text, BETWEEN, -1);
  GPtrArray *notes = g_ptr_array_new ();

  for (int i = 0; words[i] != NULL; i++)
    if (*words[i] != '\0')
      g_ptr_array_add (notes, g_strdup (words[i]));
  g_ptr_array_add (notes, NULL);
  return (char **) g_ptr_array_free (notes, FALSE);
}

gboolean
rw_tuning_fits (const RwTuning *tuning, const RwStringSet *set)
{
  g_auto (GStrv) notes = split (tuning->notes);

  return (int) g_strv_length (notes) == set->count && tuning->has_short == set->at[set->count - 1].is_short;
}

char *
rw_tuning_of (const RwStringSet *set)
{
  GString *text = g_string_new (NULL);

  for (int i = 0; i < set->count; i++)
    g_string_append_printf (text, "%s%s", i > 0 ? " " : "", set->at[i].note);
  return g_string_free (text, FALSE);
}

char **
rw_tuning_read (const char *text, const RwStringSet *set, GError **error)
{
  g_auto (GStrv) notes = split (text);
  int count = (int) g_strv_length (notes);

  if (count == set->count)
    return g_steal_pointer (&notes);
  g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE,
               g_dngettext (GETTEXT_PACKAGE, "%d note is wanted, one for each string, from the 1st on",
                            "%d notes are wanted, one for each string, from the 1st on", (gulong) set->count),
               set->count);
  return NULL;
}
