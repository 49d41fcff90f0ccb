/* What was meant by a name that does not exist. */
#pragma once

#include <glib.h>

/* The name among names (of char *, at least one) that takes the fewest letters to be changed, left out or
 * put in to come from word; the first of several.  What stands in brackets does not count, so that
 * "frets.positon[7]" finds "frets.position[n]". */
const char *rw_closest_name (const char *word, const GPtrArray *names);
