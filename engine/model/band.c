#include "band.h"

#include "model.h"
#include "string_load.h"

/* Shares.  Head: one tap note fixes its tension to a factor of about two in all (head.c), and a tension
 * that is planned is no better known.  Wood: the modulus of single pieces of a species spreads by 22 %
 * (standard deviation; USDA Forest Products Laboratory, Wood Handbook, chapter 5, from memory).  Strings:
 * 190 to 210 GPa are printed for music wire.  Wound strings: what core and wrap give stands within 2 % of
 * printed weights (test_string_tension.c).  Hoop: the temper of bar as bought, from memory. */
#define HEAD_FACTOR G_SQRT2
#define WOOD_SPREAD 0.22
#define MODULUS_SPREAD 0.05
#define WOUND_SPREAD 0.02
#define YIELD_SPREAD 0.2

/* Less is no movement but the last digits of a search. */
#define STILL 1e-7

const char *
rw_guess_label (RwGuess guess)
{
  static const char *const labels[RW_GUESS_COUNT] = {
    [RW_GUESS_HEAD_TENSION] = N_("Head tension: a tap note tells it to a factor of two"),
    [RW_GUESS_NECK_STIFFNESS] = N_("Stiffness of the neck: pieces of one wood differ by 22 %"),
    [RW_GUESS_STRING_MODULUS] = N_("Modulus of the strings: 5 % either way in print"),
    [RW_GUESS_STRING_ENDS] = N_("Ends of the strings: anything from hinged to clamped"),
    [RW_GUESS_WOUND_WEIGHT] = N_("Weight of wound strings: 2 % either way of what core and wrap give"),
    [RW_GUESS_GRAIN] = N_("Lie of the wood: quarter-sawn moves least, flat-sawn most"),
    [RW_GUESS_HOOP_YIELD] = N_("Temper of the hoop: bars of one metal differ by 20 %"),
  };

  return labels[guess];
}

/* The value used and its ends: of the head's tension as shares of it. */
typedef struct
{
  double low, used, high;
} Range;

static Range
about (double spread)
{
  return (Range){ 1 - spread, 1, 1 + spread };
}

static gboolean
is_measured (const RwMeasured *measured, int param)
{
  return measured != NULL && isfinite (measured->param[param]);
}

static Range
range_of_head (const RwResult *result, const RwMeasured *measured)
{
  const double *value = result->value;
  double tension = value[RW_HEAD_TENSION];

  if (is_measured (measured, RW_P_head_tension)
      || (measured != NULL && isfinite (measured->slot[RW_HEAD_TENSION])))
    return about (0);
  if (result->used.head_tension_from == RW_TENSION_FROM_TAP)
    return (Range){ value[RW_HEAD_TENSION_LOW] / tension, 1, value[RW_HEAD_TENSION_HIGH] / tension };
  return (Range){ 1 / HEAD_FACTOR, 1, HEAD_FACTOR };
}

/* Wound, and not weighed. */
static gboolean
is_weight_guessed (const RwString *string)
{
  return string->core_mm > 0 && !(string->mass_kg_m > 0);
}

static gboolean
has_guessed_weight (const RwStringSet *set)
{
  for (int i = 0; i < set->count; i++)
    if (is_weight_guessed (&set->at[i]))
      return TRUE;
  return FALSE;
}

static Range
range_of (RwGuess guess, const RwResult *result, const RwMeasured *measured)
{
  const RwDesign *d = &result->used;

  switch (guess)
    {
    case RW_GUESS_HEAD_TENSION:
      return range_of_head (result, measured);
    case RW_GUESS_NECK_STIFFNESS:
      return about (WOOD_SPREAD);
    case RW_GUESS_STRING_MODULUS:
      return about (is_measured (measured, RW_P_strings_modulus) ? 0 : MODULUS_SPREAD);
    case RW_GUESS_STRING_ENDS:
      return (Range){ 0, 0, 1 };
    case RW_GUESS_WOUND_WEIGHT:
      return about (has_guessed_weight (&d->strings_set) ? WOUND_SPREAD : 0);
    case RW_GUESS_GRAIN:
      return (Range){ 0, 1, 1 };
    case RW_GUESS_HOOP_YIELD:
      return about (d->hoop_springback_test > 0 ? 0 : YIELD_SPREAD);
    default:
      g_return_val_if_reached (about (0));
    }
}

gboolean
rw_is_guess (RwGuess guess, const RwResult *result, const RwMeasured *measured)
{
  Range range = range_of (guess, result, measured);

  return range.high > range.low;
}

static void
weigh (RwStringSet *set, double share)
{
  for (int i = 0; i < set->count; i++)
    if (is_weight_guessed (&set->at[i]))
      set->at[i].mass_kg_m = share * rw_string_mass (&set->at[i]);
}

/* The build with one guess at another value.  A tension out of a tap is set as the tension it is. */
static void
solve_at (const RwDesign   *design,
          const RwMeasured *measured,
          RwGuess           guess,
          double            tension,
          double            value,
          RwResult         *out)
{
  RwDesign moved = *design;
  RwGuessed guessed = RW_GUESSED;

  switch (guess)
    {
    case RW_GUESS_HEAD_TENSION:
      moved.head_tension_from = RW_TENSION_GIVEN;
      moved.head_tension = tension * value;
      break;
    case RW_GUESS_STRING_MODULUS:
      moved.strings_modulus *= value;
      break;
    case RW_GUESS_WOUND_WEIGHT:
      weigh (&moved.strings_set, value);
      break;
    case RW_GUESS_NECK_STIFFNESS:
      guessed.wood = value;
      break;
    case RW_GUESS_STRING_ENDS:
      guessed.ends = value;
      break;
    case RW_GUESS_GRAIN:
      guessed.grain = value;
      break;
    default:
      guessed.yield = value;
    }
  rw_solve_guessed (&moved, measured, guessed, out);
}

/* What is cut once: it has a band only as what would have been right. */
static gboolean
is_cut (RwSlot slot)
{
  return slot == RW_NECK_ANGLE || slot == RW_JOINT_HEEL_ANGLE || slot == RW_BRIDGE_HEIGHT;
}

/* Neither what tells the band itself, nor what the band is of. */
static gboolean
has_band (RwSlot slot, gboolean cut)
{
  return is_cut (slot) == cut && slot != RW_HEAD_TENSION_LOW && slot != RW_HEAD_TENSION_HIGH
         && slot != RW_BRIDGE_SAG_LOW && slot != RW_BRIDGE_SAG_HIGH;
}

static void
widen (const RwResult *result, const RwResult *moved, gboolean cut, RwBands *bands)
{
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    {
      double by = moved->value[slot] - result->value[slot];

      if (!has_band ((RwSlot) slot, cut) || !(fabs (by) > STILL * (1 + fabs (result->value[slot]))))
        continue;
      if (by < 0)
        bands->low[slot] += by;
      else
        bands->high[slot] += by;
    }
}

/* The bands of what is cut, or of all the rest, for a design that comes out as result. */
static void
add_bands (const RwDesign *design, const RwResult *result, const RwMeasured *measured, gboolean cut, RwBands *bands)
{
  g_autofree RwResult *moved = g_new (RwResult, 1);

  for (int guess = 0; guess < RW_GUESS_COUNT; guess++)
    {
      Range range = range_of ((RwGuess) guess, result, measured);
      const double ends[] = { range.low, range.high };

      for (int i = 0; i < 2; i++)
        if (fabs (ends[i] - range.used) > 1e-12)
          {
            solve_at (design, measured, (RwGuess) guess, result->value[RW_HEAD_TENSION], ends[i], moved);
            widen (result, moved, cut, bands);
          }
    }
}

RwBands *
rw_bands_new (const RwResult *result, const RwMeasured *measured)
{
  RwBands *bands = g_new (RwBands, 1);
  RwDesign built = rw_as_it_stands (result);

  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    bands->low[slot] = bands->high[slot] = result->value[slot];
  if (result->used.neck_solve_for != RW_SOLVE_ACTION)
    add_bands (&result->used, result, measured, TRUE, bands);
  add_bands (&built, result, measured, FALSE, bands);
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    if (!(bands->high[slot] - bands->low[slot] > 0))
      bands->low[slot] = bands->high[slot] = NAN;
  return bands;
}
