#include "band.h"

#include "model.h"

/* Shares.  Head: one tap note fixes its tension to a factor of about two in all (head.c), and a tension
 * that is planned is no better known.  Wood: the modulus of single pieces of a species spreads by 22 %
 * (standard deviation; USDA Forest Products Laboratory, Wood Handbook, chapter 5, from memory).  Strings:
 * 190 to 210 GPa are printed for music wire. */
#define HEAD_FACTOR G_SQRT2
#define WOOD_SPREAD 0.22
#define MODULUS_SPREAD 0.05

/* Less is no movement but the last digits of a search. */
#define STILL 1e-7

const char *
rw_guess_label (RwGuess guess)
{
  static const char *const labels[RW_GUESS_COUNT] = {
    [RW_GUESS_HEAD_TENSION] = N_("Head tension: a tap note tells it to a factor of two"),
    [RW_GUESS_NECK_STIFFNESS] = N_("Stiffness of the neck: pieces of one wood differ by 22 %"),
    [RW_GUESS_STRING_MODULUS] = N_("Modulus of the strings: 5 % either way in print"),
  };

  return labels[guess];
}

/* The ends of a guess, as shares of the value used; 1 and 1 where it is known. */
typedef struct
{
  double low, high;
} Range;

static Range
range_of (RwGuess guess, const RwResult *result, const RwMeasured *measured)
{
  const double *value = result->value;
  double tension = value[RW_HEAD_TENSION];

  switch (guess)
    {
    case RW_GUESS_HEAD_TENSION:
      if (measured != NULL
          && (isfinite (measured->param[RW_P_head_tension]) || isfinite (measured->slot[RW_HEAD_TENSION])))
        return (Range){ 1, 1 };
      if (result->used.head_tension_from == RW_TENSION_FROM_TAP)
        return (Range){ value[RW_HEAD_TENSION_LOW] / tension, value[RW_HEAD_TENSION_HIGH] / tension };
      return (Range){ 1 / HEAD_FACTOR, HEAD_FACTOR };
    case RW_GUESS_NECK_STIFFNESS:
      return (Range){ 1 - WOOD_SPREAD, 1 + WOOD_SPREAD };
    case RW_GUESS_STRING_MODULUS:
      if (measured != NULL && isfinite (measured->param[RW_P_strings_modulus]))
        return (Range){ 1, 1 };
      return (Range){ 1 - MODULUS_SPREAD, 1 + MODULUS_SPREAD };
    default:
      g_return_val_if_reached (((Range){ 1, 1 }));
    }
}

gboolean
rw_is_guess (RwGuess guess, const RwResult *result, const RwMeasured *measured)
{
  Range range = range_of (guess, result, measured);

  return range.high > range.low;
}

/* The build with one guess at a share of its value.  A tension out of a tap is set as the tension it is. */
static void
solve_at (const RwDesign   *design,
          const RwMeasured *measured,
          RwGuess           guess,
          double            tension,
          double            share,
          RwResult         *out)
{
  RwDesign moved = *design;
  double wood = 1;

  if (guess == RW_GUESS_HEAD_TENSION)
    {
      moved.head_tension_from = RW_TENSION_GIVEN;
      moved.head_tension = tension * share;
    }
  else if (guess == RW_GUESS_STRING_MODULUS)
    moved.strings_modulus *= share;
  else
    wood = share;
  rw_solve_with_wood (&moved, measured, wood, out);
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
        if (fabs (ends[i] - 1) > 1e-12)
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
  RwDesign built = result->used;

  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    bands->low[slot] = bands->high[slot] = result->value[slot];
  if (built.neck_solve_for != RW_SOLVE_ACTION)
    add_bands (&result->used, result, measured, TRUE, bands);
  if (result->side.outcome == RW_SIDE_SOLVED)
    {
      built.neck_solve_for = RW_SOLVE_ACTION;
      built.neck_angle = result->side.angle / RW_RAD;
      built.bridge_height = result->side.bridge_height;
    }
  add_bands (&built, result, measured, FALSE, bands);
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    if (!(bands->high[slot] - bands->low[slot] > 0))
      bands->low[slot] = bands->high[slot] = NAN;
  return bands;
}
