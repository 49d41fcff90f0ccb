/* The board in plan: widths in mm at x from the nut line, and frets. */
#pragma once

#include "model.h"

double rw_plan_width  (const RwPlan *plan, double x);
double rw_plan_middle (const RwPlan *plan, double x);
