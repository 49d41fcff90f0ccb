/* The facts: what came out, keyed by parameter or by dimension, and what parts hold that are made.  A plain value
 * for the solver; dates, notes and readings live in the ledger (ledger.h), made steps in made.h. */
#pragma once

#include "table/dim.h"

/* Not a number means not measured.  What is held counts as measured, with two differences: it may be a parameter of
 * any kind, and a dimension that is held is there whatever becomes of the rest of the build. */
typedef struct
{
  double   param[RW_PARAM_COUNT];
  double   course_thickness[RW_COURSES_MAX]; /* rim.course_thickness[1] is at 0 */
  double   slot[RW_SLOT_COUNT];
  double   rim_out_of_round; /* by how much the diameters read differ; not a number where there are fewer than two */
  double   held_slot[RW_SLOT_COUNT]; /* of made parts, whatever was read off them: what was asked when they were made */
  gboolean holds_param[RW_PARAM_COUNT]; /* numbers are in param, the others in held */
  gboolean holds_slot[RW_SLOT_COUNT];
  RwDesign held;
} RwMeasured;

void     rw_measured_init (RwMeasured *measured);

/* Sets the value measured for id: a parameter that is a number, "rim.course_thickness[k]", or a dimension
 * with its indices written out.  Refused, with one sentence, are unknown ids, things that are chosen and
 * not measured, and values that are not finite or, for a parameter, outside its range. */
gboolean rw_measured_set (RwMeasured *measured, const char *id, double value, GError **error);

/* The unit of id, or NULL where it can't be measured. */
const char *rw_measurable_unit (const char *id);

/* Holds what a made part has: a parameter of any kind, or a dimension. */
void rw_measured_hold_param (RwMeasured *measured, RwParamId id, const RwDesign *from);
void rw_measured_hold_slot  (RwMeasured *measured, RwSlot slot, double value);
