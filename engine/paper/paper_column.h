/* Lists on paper: lettering set down line by line, page after page.
 *
 * A builder of a list goes through the whole list for each page and sets all of it down here; what is not on
 * the job's page is counted and not kept.
 */
#pragma once

#include "paper.h"

typedef struct
{
  const RwPaperJob *job;
  RwSheet *sheet;
  double y; /* base line of what comes next, from 0 down */
  int page; /* that it stands on */
} RwColumn;

RwColumn rw_column_begin (const RwPaperJob *job, const char *title);
/* The sheet of the job's page, or NULL where the list ended before it. */
RwSheet *rw_column_end (RwColumn *column);

/* Goes on to the next page where less than height is left of this one. */
void rw_column_room (RwColumn *column, double height);
/* Goes down by so much. */
void rw_column_down (RwColumn *column, double height);

/* Set down at x on the line as it is; the line stays. */
void rw_column_text (RwColumn *column, double x, RwAlign align, const char *text);
/* The same from x on, cut short where it is longer than width. */
void rw_column_label (RwColumn *column, double x, double width, const char *text);
/* A place to write in, from x to to. */
void rw_column_blank (RwColumn *column, double x, double to);
/* Large, with room above and under it, and kept together with keep mm of what follows. */
void rw_column_heading (RwColumn *column, double keep, const char *text);
/* Words between x and the right edge, on as many lines as they take, and down under them. */
void rw_column_words (RwColumn *column, double x, const char *words);
