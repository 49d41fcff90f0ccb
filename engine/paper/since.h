/* Since the last papers: what has changed since papers left for the bench, and which of them are out of date. */
#pragma once

#include "project/project.h"
#include "model/solve.h"

/* One number or choice that is not what it was.  Numbers that are missing are NaN; choices have words instead. */
typedef struct
{
  char       *id; /* indices written out */
  const char *unit;
  double      before, now;
  char       *words_before, *words_now; /* NULL for numbers */
} RwSinceRow;

typedef struct
{
  char          *paper;
  const RwIssue *issue;   /* the last that it was in */
  GPtrArray     *changed; /* of char *: ids of what it shows and has changed; none: it is up to date */
} RwSincePaper;

typedef struct
{
  const RwIssue *last;   /* NULL: no papers have left yet */
  GPtrArray     *rows;   /* of RwSinceRow: against the last issue, parameters first, in the order of the tables */
  GPtrArray     *papers; /* of RwSincePaper: each that ever left, in the order of the table of papers */
} RwSince;

/* Differences that can't be seen in the units of the issue are none.  The project must live as long. */
RwSince *rw_since_new  (const RwProject *project, const RwResult *now);
void     rw_since_free (RwSince *since);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwSince, rw_since_free)

guint rw_since_out_of_date (const RwSince *since); /* how many papers */
