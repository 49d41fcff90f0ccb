/* Pitch of fretted notes: the string stretched over a fret, stiff, pinned at its ends.
 *
 * In the unloaded fret plane the nut stands at hn + v(0), fret n at v(xn), the bridge at Hb; the short string's
 * start stands for its nut.  A string that slips at nut and bridge stretches over its whole length from peg to
 * tailpiece, else over its speaking length alone.  A set-back moves the bridge and takes its length from the
 * after-length.
 *
 * Ends: pinned, so that stiffness raises a note by sqrt(1 + B), B = pi^2 d^2/l^2, d = sqrt(E I/T).  Nut, fret and
 * saddle hold a string somewhere between that and clamped, where each end takes d off the length that sounds:
 * 1 + 2 d/l + (4 + pi^2/2) d^2/l^2.  How far is not known for a banjo, so it is a guess with a band (band.h), between
 * the two in proportion.  The air in the pot and the head's modes are left out of a string's pitch.
 *
 * Neglects  the finger's dip behind the fret, the bridge giving way.
 * Source    geometry and stretch as in G. Byers, "Classic guitar intonation", American Lutherie 47 (1996);
 *           pinned: H. Fletcher, JASA 36 (1964) 203, f_n = n F sqrt(1 + B n^2);
 *           clamped: P. M. Morse, Vibration and Sound, from memory, held against the exact root in test_pitch.c.
 */
#pragma once

#include "model.h"

/* The factor by which stiffness raises the note of a string: end is d/l, clamped how far its ends are from pinned, 0,
 * to clamped, 1. */
double rw_pitch_stiffened (double end, double clamped);

/* Pitch error of string i at fret n, cents, against its own open note, with the bridge set back by set_back mm. */
double rw_pitch_error (const RwModel *m, int string, int fret, double set_back);
