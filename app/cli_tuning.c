#include "cli_tuning.h"

#include <math.h>
#include <string.h>

#include "model/retune.h"
#include "study/tuning.h"
#include "cli_study.h"

enum
{
  GOOD = 0,
  FAILED = 2,
};

char *
rw_cli_tuning_overview (void)
{
  GString *text = g_string_new ("\nTunings by name:\n");

  for (int i = 0; i < rw_tunings_count; i++)
    g_string_append_printf (text, "  %-42s %s\n", rw_tunings[i].label, rw_tunings[i].notes);
  g_string_append (text, "\nOr notes from the 1st string on: rimwright tuning \"D4 B3 G3 C3 G4\"\n");
  return g_string_free (text, FALSE);
}

/* ---- what is asked ---- */

/* The notes of a tuning by its name, or the word itself. */
static const char *
notes_of (const char *word, const RwStringSet *set)
{
  for (int i = 0; i < rw_tunings_count; i++)
    if (g_ascii_strcasecmp (rw_tunings[i].label, word) == 0 && rw_tuning_fits (&rw_tunings[i], set))
      return rw_tunings[i].notes;
  return word;
}

static gboolean
retune (const char *word, const RwAnswer *answer, RwResult *then, GError **error)
{
  const RwStringSet *set = &answer->now.used.strings_set;
  const char *each[RW_STRINGS_MAX] = { NULL };
  g_auto (GStrv) notes = rw_tuning_read (notes_of (word, set), set, error);

  for (int i = 0; notes != NULL && notes[i] != NULL; i++)
    each[i] = notes[i];
  return notes != NULL && rw_retune (&answer->now, &answer->measured, each, then, error);
}

static gboolean
check_capo (int fret, const RwResult *result, GError **error)
{
  if (fret >= 0 && fret <= result->plan.last)
    return TRUE;
  g_set_error (error, RW_OPTIONS_ERROR, 0, "--capo takes a fret from 0 to %d", result->plan.last);
  return FALSE;
}

/* ---- the answer ---- */

static void
append_change (GString *out, RwSlot slot, const RwResult *now, const RwResult *then, RwStyle style)
{
  const char *unit = rw_slot_dim (slot)->unit;
  g_autofree char *label = rw_slot_label (slot);
  g_autofree char *before = rw_cli_quantity (now->value[slot], unit, style);
  g_autofree char *after = rw_cli_quantity (then->value[slot], unit, style);

  if (isfinite (now->value[slot]) && isfinite (then->value[slot]) && strcmp (before, after) != 0)
    g_string_append_printf (out, "%s: %s, was %s\n", label, after, before);
}

static void
append_capo (GString *out, int fret, const RwResult *then, RwStyle style)
{
  g_autofree char *place = NULL, *pull = NULL;
  RwCapo capo;

  rw_capo (then, fret, &capo);
  if (fret == 0 || !then->plan.has_short)
    return;
  place = rw_cli_quantity (capo.spike_x, "mm", style);
  pull = rw_cli_quantity (capo.peg_pull, "N", style);
  if (isfinite (capo.spike_x))
    g_string_append_printf (out, "The short string's spike goes behind fret %d, %s from the nut.\n", capo.spike, place);
  else
    g_string_append (out, "The short string can't follow the capo: the board has no fret there.\n");
  g_string_append_printf (out, "Tuned up at its peg instead it pulls %s, %.0f %% of its wire's strength.\n", pull,
                          capo.peg_share);
}

/* What stands over the table. */
static char *
changes (const RwOptions *options, const RwResult *now, const RwResult *then, RwStyle style)
{
  static const RwSlot told[] = { RW_SETUP_ACTION + 12, RW_BRIDGE_SAG, RW_BRIDGE_DOWN_FORCE, RW_BRIDGE_BREAK_ANGLE,
                                 RW_NECK_PULL_UP, RW_STRINGS_TENSION_TOTAL };
  GString *out = g_string_new (NULL);

  for (gsize i = 0; i < G_N_ELEMENTS (told); i++)
    append_change (out, told[i], now, then, style);
  append_capo (out, options->capo, then, style);
  if (out->len > 0)
    g_string_append_c (out, '\n');
  return g_string_free (out, FALSE);
}

int
rw_cli_tuning (const RwOptions *options, GError **error)
{
  g_autofree RwResult *then = g_new (RwResult, 1);
  g_autoptr (RwProject) project = NULL;
  g_autoptr (RwAnswer) answer = NULL;
  g_autoptr (RwStudy) study = NULL;
  g_autofree char *before = NULL;
  RwStudyLook look;

  if (options->words == NULL)
    {
      g_set_error_literal (error, RW_OPTIONS_ERROR, 0,
                           "tuning needs a name or notes, as in rimwright tuning \"Double C\"");
      return FAILED;
    }
  if (!rw_cli_study_look (options, &look, error))
    return FAILED;
  project = rw_cli_study_project (options, 1, error);
  if (project == NULL)
    return FAILED;
  answer = rw_answer_new (project);
  if (!check_capo (options->capo, &answer->now, error) || !retune (options->words[0], answer, then, error))
    return FAILED;
  study = rw_study_tuning (&answer->now, then, options->capo, rw_cli_in_english);
  before = changes (options, &answer->now, then, look.style);
  look.heading = study->title;
  return rw_cli_study_write (options, study, &look, before, error) ? GOOD : FAILED;
}
