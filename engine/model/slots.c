#include "slots.h"

#include <math.h>

#include "table/note.h"

double
rw_fret_cents (const RwDesign *d, int n)
{
  const RwCentsList *off = &d->frets_temperament;
  int step = (n - 1) % RW_TONES;

  if (d->frets_slots == RW_SLOTS_OWN)
    return 100 * n;
  return 100 * n + (n >= 1 && step < off->count ? off->at[step] : 0);
}

/* How far a note so many semitones over the keynote stands off equal temperament.  The 12th step is the keynote
 * again. */
static double
off_equal (const RwDesign *d, int tone)
{
  int step = ((tone - 1) % RW_TONES + RW_TONES) % RW_TONES;

  return step < d->frets_temperament.count ? d->frets_temperament.at[step] : 0;
}

/* Semitones from the keynote up to the open note, octaves apart: A4 is nine over a C.  A frequency is taken for the
 * note that is nearest. */
static int
open_tone (const RwDesign *d, int string)
{
  double hertz = rw_note_frequency (d->strings_set.at[string - 1].note, d->tuning_a4);

  return 9 + (int) lround (12 * log2 (hertz / d->tuning_a4)) - d->frets_key;
}

static int
start_of (const RwDesign *d, int string)
{
  return d->strings_set.at[string - 1].is_short ? (int) d->fifth_start_fret : 0;
}

double
rw_slot_cents (const RwDesign *d, int string, int fret)
{
  int start = start_of (d, string), over = fret - start;

  if (d->frets_slots == RW_SLOTS_ACROSS)
    return rw_fret_cents (d, fret) - rw_fret_cents (d, start);

  int open = open_tone (d, string);
  return 100 * over + off_equal (d, open + over) - off_equal (d, open);
}

double
rw_slot_planned (const RwDesign *d, const RwPlan *plan, int string, int fret)
{
  double from = plan->fret_x[start_of (d, string)];

  return from + (plan->length - from) * (1 - exp2 (-rw_slot_cents (d, string, fret) / 1200));
}

double
rw_slot_place (const RwResult *result, int string, int fret)
{
  double settled = result->value[RW_SLOT2 (RW_FRETS_SLOT, string, fret)];

  if (result->used.frets_slots == RW_SLOTS_ACROSS)
    return result->plan.fret_x[fret];
  return isfinite (settled) ? settled : rw_slot_planned (&result->used, &result->plan, string, fret);
}

int
rw_slot_pieces (const RwResult *result, int fret, RwSlotPiece pieces[RW_STRINGS_MAX])
{
  const RwPlan *plan = &result->plan;
  gboolean own = result->used.frets_slots == RW_SLOTS_OWN;
  int count = 0;

  if (!own)
    {
      pieces[0] = (RwSlotPiece){ 1, plan->strings, plan->fret_x[fret] };
      return 1;
    }
  for (int i = 1; i <= plan->strings; i++)
    {
      double place = rw_slot_place (result, i, fret);

      if (fret <= start_of (&result->used, i))
        continue;
      if (count > 0 && fabs (place - pieces[count - 1].place) < RW_SLOT_SAME_MM)
        pieces[count - 1].last = i;
      else
        pieces[count++] = (RwSlotPiece){ i, i, place };
    }
  return count;
}

double
rw_slot_bass (const RwResult *result, int fret)
{
  const RwPlan *plan = &result->plan;
  gboolean on_short = plan->has_short && fret > (int) result->used.fifth_start_fret;

  return rw_slot_place (result, on_short ? plan->strings : plan->full, fret);
}

RwSlot
rw_slot_row (const RwResult *result, int fret)
{
  if (result->used.frets_slots == RW_SLOTS_OWN)
    return RW_SLOT2 (RW_FRETS_SLOT, 1, fret);
  return (RwSlot) (RW_FRETS_POSITION + fret);
}

/* The edge of a piece on its string's treble side at x: that of the board, or halfway to the next string. */
static double
edge_over (const RwPlan *plan, int string, double x)
{
  if (string <= 1)
    return rw_plan_treble (plan, x);
  return 0.5 * (rw_plan_string_y (plan, string - 1, x) + rw_plan_string_y (plan, string, x));
}

void
rw_slot_shares (const RwResult *result, const RwSlotPiece *piece, double *bass, double *treble)
{
  const RwPlan *plan = &result->plan;
  double x = piece->place, low = rw_plan_bass (plan, x), high = rw_plan_treble (plan, x);
  gboolean over_short = plan->has_short && piece->last == plan->full && x <= plan->short_x;

  *bass = 0;
  *treble = (edge_over (plan, piece->first, x) - low) / (high - low);
  if (piece->last < plan->strings && !over_short)
    *bass = (edge_over (plan, piece->last + 1, x) - low) / (high - low);
}
