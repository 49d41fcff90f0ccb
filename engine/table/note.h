/* Notes by name, in equal temperament. */
#pragma once

#include <glib.h>

/* rw_note_frequency: what string tables and tuners call a note, in Hz.
 *
 * Given     note  a letter A to G, then # or b (or the signs for them) where it is raised or lowered, then
 *                 the octave 0 to 8, C4 being middle C; or a frequency in Hz, with a point: "146.83"
 *           a4    the frequency of A4, Hz
 * Returned  Hz; NaN where it is neither.  A frequency stays as it is, whatever a4.
 * Source    ISO 16: A4 = 440 Hz.  Equal temperament: f = a4 2^(n/12), n semitones above A4.
 */
double rw_note_frequency (const char *note, double a4);

/* The name of a note as files hold it: a capital, then # or b, then the octave.  A new string; NULL where
 * note is no name. */
char *rw_note_name (const char *note);
