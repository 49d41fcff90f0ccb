/* Low and high of what rests on guesses.
 *
 * Some inputs nobody knows well: the head's tension, the stiffness of the very piece of wood in the neck, the
 * modulus of the strings and how their ends are held, what a wound string weighs, how the rings lie in the wood,
 * the temper of the hoop's bar.  Each is taken at both ends of what it may be, the build is solved again,
 * and what a dimension moves by is added up over the guesses, as if all erred to the same side at once.
 * What was measured is no guess.
 *
 * A neck or bridge that is cut stays as it is cut: the band of the action is that of the instrument so
 * built.  The band of an angle or a bridge height that is solved for is what would have been right.
 *
 * Rows that are a low and a high themselves have none: what torque a nut takes and how hooks share the load
 * (hooks.c), an unknown mode of the head (head.c).  The friction of the head on its edge, a coating on the film and
 * the creep of the neck are not in print for a banjo: loads are said to be upper bounds, and the rest is left out.
 *
 * Some twenty solves: called when asked for, not while dragging.
 */
#pragma once

#include "solve.h"

typedef enum
{
  RW_GUESS_HEAD_TENSION,
  RW_GUESS_NECK_STIFFNESS,
  RW_GUESS_STRING_MODULUS,
  RW_GUESS_STRING_ENDS,
  RW_GUESS_WOUND_WEIGHT,
  RW_GUESS_GRAIN,
  RW_GUESS_HOOP_YIELD,
  RW_GUESS_COUNT,
} RwGuess;

const char *rw_guess_label (RwGuess guess); /* English, marked for translation: what, and on what grounds */
/* FALSE where it is known. */
gboolean    rw_is_guess    (RwGuess guess, const RwResult *result, const RwMeasured *measured);

/* By slot; NaN where a dimension does not rest on guesses, or is not there. */
typedef struct
{
  double low[RW_SLOT_COUNT], high[RW_SLOT_COUNT];
} RwBands;

/* Given a solved build and what it was solved with (NULL: nothing measured).  New, for g_free(). */
RwBands *rw_bands_new (const RwResult *result, const RwMeasured *measured);
