#include "retune.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#include "table/note.h"
#include "model.h"
#include "slots.h"

/* ---- other notes ---- */

static const struct
{
  RwSlot first, last;
} moved[] = {
  { RW_STRINGS_TENSION, RW_STRINGS_TENSION_LAST },
  { RW_STRINGS_TENSION_TOTAL, RW_STRINGS_TENSION_TOTAL },
  { RW_STRINGS_STRESS, RW_STRINGS_STRESS_LAST },
  { RW_STRINGS_STRENGTH_SHARE, RW_STRINGS_STRENGTH_SHARE_LAST },
  { RW_STRINGS_STIFFNESS, RW_STRINGS_STIFFNESS_LAST },
  { RW_STRINGS_PARTIAL, RW_STRINGS_PARTIAL_LAST },
  { RW_STRINGS_OVER_HOOP, RW_STRINGS_OVER_HOOP },
  { RW_NECK_PULL_UP, RW_NECK_PULL_UP },
  { RW_NECK_RELIEF_UNRODDED, RW_NECK_RELIEF_UNRODDED },
  { RW_BRIDGE_BREAK_ANGLE, RW_BRIDGE_BREAK_ANGLE },
  { RW_BRIDGE_DOWN_FORCE, RW_BRIDGE_DOWN_FORCE },
  { RW_BRIDGE_SAG, RW_BRIDGE_SAG },
  { RW_BRIDGE_SAG_LOW, RW_BRIDGE_SAG_HIGH },
  { RW_BRIDGE_COMPENSATION, RW_BRIDGE_BEST_ANGLE },
  { RW_SETUP_ACTION, RW_SETUP_ACTION_LAST },
  { RW_SETUP_CENTS, RW_SETUP_CENTS_LAST },
  { RW_RIM_STRING_OVAL, RW_RIM_STRING_OVAL },
};

gboolean
rw_retune_moves (RwSlot slot)
{
  for (guint i = 0; i < G_N_ELEMENTS (moved); i++)
    if (slot >= moved[i].first && slot <= moved[i].last)
      return TRUE;
  return FALSE;
}

static gboolean
set_notes (RwStringSet *set, const char *const notes[RW_STRINGS_MAX], double a4, GError **error)
{
  for (int i = 0; i < set->count; i++)
    {
      if (notes[i] == NULL)
        continue;
      double hertz = rw_note_frequency (notes[i], a4);

      if (!(hertz > 0) || strlen (notes[i]) >= sizeof set->at[i].note)
        {
          g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE,
                       _("String %d: “%s” is no note like D4, F#3 or Bb3, and no frequency"), i + 1, notes[i]);
          return FALSE;
        }
      g_strlcpy (set->at[i].note, notes[i], sizeof set->at[i].note);
    }
  return TRUE;
}

/* What was measured with the old notes is forgotten; the rod stays as it is set. */
static void
keep_what_stays (RwMeasured *kept, const RwResult *now)
{
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    if (rw_retune_moves ((RwSlot) slot))
      {
        kept->slot[slot] = NAN;
        kept->holds_slot[slot] = FALSE;
      }
  if (now->used.neck_rod_present == RW_YES)
    kept->slot[RW_NECK_ROD_MOMENT] = now->side.rod_moment;
}

gboolean
rw_retune (const RwResult   *now,
           const RwMeasured *measured,
           const char *const notes[RW_STRINGS_MAX],
           RwResult         *then,
           GError          **error)
{
  g_autofree RwMeasured *kept = g_new (RwMeasured, 1);
  RwDesign design = rw_as_it_stands (now);

  if (!set_notes (&design.strings_set, notes, design.tuning_a4, error))
    return FALSE;
  if (measured != NULL)
    *kept = *measured;
  else
    rw_measured_init (kept);
  keep_what_stays (kept, now);
  /* Held strings were those of the old notes. */
  kept->holds_param[RW_P_strings_set] = FALSE;
  rw_solve (&design, kept, then);
  return TRUE;
}

/* ---- a capo ---- */

void
rw_capo (const RwResult *result, int fret, RwCapo *capo)
{
  const RwPlan *plan = &result->plan;
  const RwDesign *d = &result->used;
  double up = exp2 (fret / 12.0);

  *capo = (RwCapo){ .spike = 0, .spike_x = NAN, .peg_pull = NAN, .peg_share = NAN };
  for (int i = 1; i <= plan->strings; i++)
    capo->hertz[i] = up * rw_note_frequency (d->strings_set.at[i - 1].note, d->tuning_a4);
  if (!plan->has_short)
    return;
  if (fret > 0)
    capo->spike = (int) d->fifth_start_fret + fret;
  if (capo->spike > 0 && capo->spike <= plan->last)
    capo->spike_x = rw_slot_place (result, plan->strings, capo->spike);
  /* At one length the pull goes with the square of the note. */
  capo->peg_pull = up * up * result->value[RW_STRINGS_TENSION + plan->strings];
  capo->peg_share = up * up * result->value[RW_STRINGS_STRENGTH_SHARE + plan->strings];
}
