/* Other notes on the same strings: retuning, a capo.
 *
 * All work on a solved build and are called when asked for, not while dragging.
 */
#pragma once

#include "solve.h"

/* rw_retune: the instrument as it stands, with its strings tuned to other notes.  Neck angle, bridge and
 * rod stay as they are, and what was measured of them; pull, sag, bending, action and pitch follow.
 *
 * Given     now       a solved build, and what it was solved with (NULL: nothing measured)
 *           notes     one a string, from the 1st: "C3", or a frequency in Hz; NULL leaves it
 * Returned  TRUE and the build retuned in then, which is to be compared slot by slot; or FALSE and an error in
 *           RW_PARAM_ERROR, one sentence that names the string.
 */
gboolean rw_retune (const RwResult   *now,
                    const RwMeasured *measured,
                    const char *const notes[RW_STRINGS_MAX],
                    RwResult         *then,
                    GError          **error);

/* Whether a dimension follows from how the strings are tuned: what is worth showing of the two builds. */
gboolean rw_retune_moves (RwSlot slot);

/* With a capo on a fret. */
typedef struct
{
  double hertz[RW_STRINGS_MAX + 1]; /* open notes, the short string carried up as far */
  int    spike;     /* fret behind which the short string is held down; 0 where there is none */
  double spike_x;   /* where that fret is, mm from the nut line; NaN where the board has no such fret */
  double peg_pull;  /* N, should it be tuned up at its peg instead; NaN without a short string */
  double peg_share; /* % of its wire's strength, likewise */
} RwCapo;

/* fret: 0 for none, up to the last. */
void rw_capo (const RwResult *result, int fret, RwCapo *capo);
