#include "temperament.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define FIFTH 1.4953487812212205 /* 5^(1/4) */
#define HUNDREDTH 0.01

/* Just: five-limit scale.  Meantone: fifths of the fourth root of 5, E flat to G sharp where the first is a C.
 * Pythagorean: fifths of 3/2, likewise.  J. M. Barbour, Tuning and Temperament, 1951; from memory. */
const RwTemperament rw_temperaments[] = {
  { "equal", N_("Equal"),
    { 1, 1.0594630943592953, 1.122462048309373, 1.189207115002721, 1.2599210498948732, 1.3348398541700344,
      1.4142135623730951, 1.4983070768766815, 1.5874010519681994, 1.681792830507429, 1.7817974362806785,
      1.8877486253633868 } },
  { "just", N_("Just, five-limit"),
    { 1, 16.0 / 15, 9.0 / 8, 6.0 / 5, 5.0 / 4, 4.0 / 3, 45.0 / 32, 3.0 / 2, 8.0 / 5, 5.0 / 3, 9.0 / 5, 15.0 / 8 } },
  { "meantone", N_("Quarter-comma meantone"),
    { 1, FIFTH * FIFTH * FIFTH * FIFTH * FIFTH * FIFTH * FIFTH / 16, FIFTH * FIFTH / 2, 4 / (FIFTH * FIFTH * FIFTH),
      5.0 / 4, 2 / FIFTH, FIFTH * FIFTH * FIFTH * FIFTH * FIFTH * FIFTH / 8, FIFTH, 25.0 / 16,
      FIFTH * FIFTH * FIFTH / 2, 4 / (FIFTH * FIFTH), 5 * FIFTH / 4 } },
  { "pythagorean", N_("Pythagorean"),
    { 1, 2187.0 / 2048, 9.0 / 8, 32.0 / 27, 81.0 / 64, 4.0 / 3, 729.0 / 512, 3.0 / 2, 6561.0 / 4096, 27.0 / 16,
      16.0 / 9, 243.0 / 128 } },
};
const int rw_temperaments_count = G_N_ELEMENTS (rw_temperaments);

RwCentsList
rw_temperament_steps (const RwTemperament *temperament)
{
  RwCentsList list = { .count = RW_TONES - 1 };

  for (int tone = 1; tone < RW_TONES; tone++)
    {
      double off = 1200 * log2 (temperament->ratios[tone]) - 100 * tone;

      list.at[tone - 1] = round (off / HUNDREDTH) * HUNDREDTH + 0.0; /* no -0 */
    }
  return list;
}

static double
step (const RwCentsList *steps, int i)
{
  return i < steps->count ? steps->at[i] : 0;
}

int
rw_temperament_of (const RwCentsList *steps)
{
  for (int t = 0; t < rw_temperaments_count; t++)
    {
      RwCentsList named = rw_temperament_steps (&rw_temperaments[t]);
      double most = 0;

      for (int i = 0; i < RW_TONES; i++)
        most = fmax (most, fabs (step (steps, i) - step (&named, i)));
      if (most < HUNDREDTH / 2)
        return t;
    }
  return -1;
}
