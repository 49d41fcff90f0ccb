/* Temperaments by name, as steps off equal temperament. */
#pragma once

#include "table/param.h"

typedef struct
{
  const char *id;
  const char *label; /* English, marked for translation */
  double      ratios[RW_TONES]; /* of the tones of a scale to its first */
} RwTemperament;

/* The first is equal temperament. */
extern const RwTemperament rw_temperaments[];
extern const int           rw_temperaments_count;

/* The steps of a temperament for the list of a design: cents by which the 1st to 11th tone over the first stand off
 * equal temperament, to a hundredth. */
RwCentsList rw_temperament_steps (const RwTemperament *temperament);

/* The temperament whose steps these are, within the hundredth; -1 where it is none of them. */
int rw_temperament_of (const RwCentsList *steps);
