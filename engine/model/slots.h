/* Slots for the frets: right across, or pieces of each string's own.
 *
 * With slots of its own each string sounds, at every fret, its note as the temperament tunes it, and its open note is
 * tuned by the temperament too.  The list of steps off equal temperament then counts from the keynote:
 *
 *   u = 100 (n - start) + off (note at n) - off (open note), cents over the open note
 *   x = start + (L - start) (1 - 2^(-u/1200))
 *
 * Neglects  stretch and stiffness, as all fret places do (pitch.h has both).
 * Source    definition; L (1 - 1/q) for a ratio q.
 */
#pragma once

#include "solve.h"

/* What fret n is to sound over the nut where slots go right across, cents: equal steps and what the temperament
 * adds. */
double rw_fret_cents (const RwDesign *d, int n);

/* What a string is to sound at a fret over its start, cents.  A short string's fret is counted from the nut. */
double rw_slot_cents (const RwDesign *d, int string, int fret);

/* mm from the nut line to where a string is stopped by a fret: by the formula, and as measured where it is. */
double rw_slot_planned (const RwDesign *d, const RwPlan *plan, int string, int fret);
double rw_slot_place   (const RwResult *result, int string, int fret);

/* A length of slot under neighbouring strings, from the treble side: first to last. */
typedef struct
{
  int    first, last;
  double place; /* mm from the nut line */
} RwSlotPiece;

/* Places nearer than this are one slot. */
#define RW_SLOT_SAME_MM 0.05

/* The pieces of a fret: one if the slot goes right across.  A short string has none up to its start.  Returns how
 * many. */
int rw_slot_pieces (const RwResult *result, int fret, RwSlotPiece pieces[RW_STRINGS_MAX]);

/* Where a fret lies at the bass edge: the place of its last piece. */
double rw_slot_bass (const RwResult *result, int fret);

/* The row that tells where a fret is: of its piece at the treble edge, where there are several. */
RwSlot rw_slot_row (const RwResult *result, int fret);

/* How far from the bass edge to the treble edge a piece begins and ends, 0 to 1: halfway to the strings beside it. */
void rw_slot_shares (const RwResult *result, const RwSlotPiece *piece, double *bass, double *treble);
