/* What is in the way of a text and its lines in one of its places. */
#pragma once

#include "obstacle.h"
#include "trace.h"
#include "trial.h"

/* From this cost on a place is not taken: lettering would touch a wide line or dimension line, or two
 * dimension lines would run in one. */
#define RW_CLASH 100

/* The cost of what is in the way, on top of the trial's own.  unit: as in RwTrialJob. */
double rw_clash_cost (const RwObstacles *obstacles, const RwTrial *trial, double unit);

/* Walks a line or arc (no head) of a dimension as straight pieces. */
void   rw_mark_walk  (const RwPlacedMark *mark, RwTraceFunc func, gpointer data);
