#include "retune.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#include "table/note.h"

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
  RwDesign design = now->used;

  if (!set_notes (&design.strings_set, notes, design.tuning_a4, error))
    return FALSE;
  if (measured != NULL)
    *kept = *measured;
  else
    rw_measured_init (kept);
  keep_what_stays (kept, now);
  if (now->side.outcome == RW_SIDE_SOLVED)
    {
      design.neck_solve_for = RW_SOLVE_ACTION;
      design.neck_angle = now->side.angle * 180 / G_PI;
      design.bridge_height = now->side.bridge_height;
    }
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
    capo->spike_x = plan->fret_x[capo->spike];
  /* At one length the pull goes with the square of the note. */
  capo->peg_pull = up * up * result->value[RW_STRINGS_TENSION + plan->strings];
  capo->peg_share = up * up * result->value[RW_STRINGS_STRENGTH_SHARE + plan->strings];
}

/* ---- slots of each string's own ---- */

/* Ratios to the keynote.  Just: five-limit scale.  Meantone: fifths of the fourth root of 5, E flat to G sharp.
 * Pythagorean: fifths of 3/2, E flat to G sharp.  J. M. Barbour, Tuning and Temperament, 1951; from memory. */
#define F 1.4953487812212205 /* 5^(1/4) */

const RwTemperament rw_temperaments[] = {
  { "just", N_("Just, five-limit"),
    { 1, 16.0 / 15, 9.0 / 8, 6.0 / 5, 5.0 / 4, 4.0 / 3, 45.0 / 32, 3.0 / 2, 8.0 / 5, 5.0 / 3, 9.0 / 5, 15.0 / 8 } },
  { "meantone", N_("Quarter-comma meantone"),
    { 1, F * F * F * F * F * F * F / 16, F * F / 2, 4 / (F * F * F), F * F * F * F / 4, 2 / F,
      F * F * F * F * F * F / 8, F, F * F * F * F * F * F * F * F / 16, F * F * F / 2, 4 / (F * F),
      F * F * F * F * F / 4 } },
  { "pythagorean", N_("Pythagorean"),
    { 1, 2187.0 / 2048, 9.0 / 8, 32.0 / 27, 81.0 / 64, 4.0 / 3, 729.0 / 512, 3.0 / 2, 6561.0 / 4096, 27.0 / 16,
      16.0 / 9, 243.0 / 128 } },
};
const int rw_temperaments_count = G_N_ELEMENTS (rw_temperaments);

void
rw_temperament_cents (const RwTemperament *temperament, int key, double cents[RW_TONES])
{
  for (int tone = 0; tone < RW_TONES; tone++)
    cents[(key + tone) % RW_TONES] = 1200 * log2 (temperament->ratios[tone]) - 100 * tone;
}

double
rw_temper_slot (const RwResult *result, const double cents[RW_TONES], int i, int n)
{
  const RwDesign *d = &result->used;
  double steps = 12 * log2 (rw_note_frequency (d->strings_set.at[i - 1].note, d->tuning_a4) / d->tuning_a4);
  int start = i > result->plan.full ? (int) d->fifth_start_fret : 0;
  /* The string's own note over C: A4 is nine over one.  start is taken off, n put on. */
  int own = ((int) lround (steps) + 9) % RW_TONES;
  int note = ((own - start + n) % RW_TONES + RW_TONES) % RW_TONES;
  double from = result->plan.fret_x[start];
  double up = 100 * (n - start) + cents[note] - cents[(own + RW_TONES) % RW_TONES];

  return from + (result->plan.length - from) * (1 - exp2 (-up / 1200));
}
