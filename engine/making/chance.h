/* Random numbers by counting: number k of stream s is worked out from the seed, s and k alone, and so is the same
 * whatever is drawn before it, and on however many threads.
 *
 * Source    Philox 4x32, ten rounds: J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, "Parallel random numbers: as
 *           easy as 1, 2, 3", SC'11 (2011); normal deviates: G. E. P. Box, M. E. Muller, Ann. Math. Stat. 29
 *           (1958) 610.
 */
#pragma once

#include <glib.h>

/* Four words for a counter and a key. */
void rw_chance_words (const guint32 counter[4], const guint32 key[2], guint32 words[4]);

/* Evenly spread over (0, 1): what the normal ones are made of, so that it can be checked by itself. */
double rw_chance_even   (guint64 seed, guint32 stream, guint32 number);
/* Normal, mean 0, standard deviation 1. */
double rw_chance_normal (guint64 seed, guint32 stream, guint32 number);
