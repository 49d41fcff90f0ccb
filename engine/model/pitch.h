/* Pitch of fretted notes: the string stretched over a fret, stiff, pinned at its ends.
 *
 * In the unloaded fret plane the nut stands at hn + v(0), fret n at v(xn), the bridge at Hb; the short string's
 * start stands for its nut.  A string that slips at nut and bridge stretches over its whole length from peg to
 * tailpiece, else over its speaking length alone.  A set-back moves the bridge and takes its length from the
 * after-length.
 *
 * Neglects  the finger's dip behind the fret, the bridge giving way, clamped ends.
 * Source    geometry and stretch as in G. Byers, "Classic guitar intonation", American Lutherie 47 (1996);
 *           stiffness: H. Fletcher, JASA 36 (1964) 203, f_n = n F sqrt(1 + B n^2).
 */
#pragma once

#include "model.h"

/* Pitch error of string i at fret n, cents, against its own open note, with the bridge set back by set_back mm. */
double rw_pitch_error (const RwModel *m, int string, int fret, double set_back);
