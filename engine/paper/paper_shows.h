/* What each paper shows: by it a paper is out of date when a number on it has changed. */
#pragma once

#include <glib.h>

/* Whether a change of a parameter or dimension (indices written out) can be seen on a paper.  A paper that the table
 * does not name shows everything. */
gboolean rw_paper_shows (const char *paper, const char *id);

/* The table, for tests: patterns with a space between them; "*" at the end of one stands for anything. */
typedef struct
{
  const char *paper, *patterns;
} RwPaperContent;

extern const RwPaperContent rw_paper_contents[];
extern const int            rw_paper_contents_count;
