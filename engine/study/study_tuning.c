/* A build before and after its strings were tuned to other notes, string by string. */
#include "tuning.h"

#include <glib/gi18n-lib.h>

#include "model/retune.h"
#include "study_parts.h"
#include "table/note.h"

/* Columns in pairs: as tuned now, and then. */
static const struct
{
  const char  *title[2];
  const char  *unit;
  int          slot; /* of the string 0 */
  int          panel;
} pairs[] = {
  { { N_("Pull now"), N_("Pull then") }, "N", RW_STRINGS_TENSION, 0 },
  { { N_("Set-back now"), N_("Set-back then") }, "mm", RW_BRIDGE_COMPENSATION, 1 },
  { { N_("Share of the wire’s strength now"), N_("Share of the wire’s strength then") }, "%",
    RW_STRINGS_STRENGTH_SHARE, RW_TABLE_ONLY },
};

static double *
column (RwStudyDraft *draft, RwColumnKind kind, const char *title)
{
  return rw_study_column (draft, kind, g_strdup (draft->translate (title)), NULL);
}

static void
add_notes (RwStudyDraft *draft, const RwResult *builds[2])
{
  static const char *const titles[] = { N_("Open note now"), N_("Open note then") };

  for (int k = 0; k < 2; k++)
    {
      const RwDesign *d = &builds[k]->used;
      double *hertz = column (draft, (RwColumnKind){ "Hz", RW_TABLE_ONLY, RW_COLUMN_BAR }, titles[k]);

      for (int i = 1; i <= builds[k]->plan.strings; i++)
        hertz[i - 1] = rw_note_frequency (d->strings_set.at[i - 1].note, d->tuning_a4);
    }
}

static void
add_capo (RwStudyDraft *draft, const RwResult *then, int fret)
{
  double *hertz = column (draft, (RwColumnKind){ "Hz", RW_TABLE_ONLY, RW_COLUMN_BAR }, N_("Open note with the capo"));
  RwCapo capo;

  rw_capo (then, fret, &capo);
  for (int i = 1; i <= then->plan.strings; i++)
    hertz[i - 1] = capo.hertz[i];
}

static void
add_pair (RwStudyDraft *draft, gsize pair, const RwResult *builds[2])
{
  /* What is new stands as a bar, what was as a line across it. */
  static const RwColumnRole roles[] = { RW_COLUMN_LIMIT, RW_COLUMN_BAR };

  for (int k = 1; k >= 0; k--)
    {
      RwColumnKind kind = { pairs[pair].unit, pairs[pair].panel, roles[k] };
      double *values = column (draft, kind, pairs[pair].title[k]);

      for (int i = 1; i <= builds[k]->plan.strings; i++)
        values[i - 1] = builds[k]->value[pairs[pair].slot + i];
    }
}

RwStudy *
rw_study_tuning (const RwResult *now, const RwResult *then, int capo, RwTranslate translate)
{
  const RwResult *builds[2] = { now, then };
  RwStudyDraft draft = { then, translate, rw_study_empty ("tuning", g_strdup (translate (N_("Another tuning")))) };

  draft.study->row_title = g_strdup (translate (N_("String")));
  for (int i = 1; i <= then->plan.strings; i++)
    rw_study_row (&draft, rw_study_string_name (&draft, i));
  draft.study->panels[0] = g_strdup (translate (N_("Pull; the line is as tuned now")));
  draft.study->panels[1] = g_strdup (translate (N_("Set-back of the bridge; the line is as tuned now")));
  for (gsize pair = 0; pair < G_N_ELEMENTS (pairs); pair++)
    add_pair (&draft, pair, builds);
  add_notes (&draft, builds);
  if (capo > 0)
    add_capo (&draft, then, capo);
  return draft.study;
}
