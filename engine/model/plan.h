/* The board in plan: widths in mm at x from the nut line, and frets. */
#pragma once

#include "model.h"

double rw_plan_width  (const RwPlan *plan, double x);
double rw_plan_middle (const RwPlan *plan, double x);
/* What fret n is to sound over the nut, cents: equal steps and what the temperament adds. */
double rw_fret_cents  (const RwDesign *d, int n);
