/* Widths of the board in plan, mm at x from the nut line. */
#pragma once

#include "model.h"

double rw_plan_width  (const RwPlan *plan, double x);
double rw_plan_middle (const RwPlan *plan, double x);
