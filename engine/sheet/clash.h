/* What is in the way of a text and its lines in one of its places. */
#pragma once

#include "obstacle.h"
#include "trace.h"
#include "trial.h"

/* From this cost on a place is not taken: lettering would touch a wide line or dimension line, or two
 * dimension lines would run in one. */
#define RW_CLASH 100

typedef struct
{
  RwObstacles *drawing; /* its lines */
  RwObstacles *placed;  /* lettering, and the lines of dimensions */
  double       unit;    /* as in RwTrialJob */
} RwClash;

/* The cost of a trial with all that is in its way.  What comes to limit or more is not worked out to the
 * end. */
double rw_clash_cost (const RwClash *clash, const RwTrial *trial, double limit);

/* Walks a line or arc (no head) of a dimension as straight pieces. */
void   rw_mark_walk  (const RwPlacedMark *mark, RwTraceFunc func, gpointer data);
