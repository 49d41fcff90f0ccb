/* Measured values: what came out, keyed by parameter or by dimension.  A plain value for the solver; dates,
 * notes and readings live in the ledger (ledger.h). */
#pragma once

#include "table/dim.h"

/* Not a number means not measured. */
typedef struct
{
  double param[RW_PARAM_COUNT];
  double course_thickness[RW_COURSES_MAX]; /* rim.course_thickness[1] is at 0 */
  double slot[RW_SLOT_COUNT];
} RwMeasured;

void     rw_measured_init (RwMeasured *measured);

/* Sets the value measured for id: a parameter that is a number, "rim.course_thickness[k]", or a dimension
 * with its indices written out.  Refused, with one sentence, are unknown ids, things that are chosen and
 * not measured, and values that are not finite or, for a parameter, outside its range. */
gboolean rw_measured_set (RwMeasured *measured, const char *id, double value, GError **error);

/* As above with the value as text: a quantity in the id's own unit unless it carries one.  For
 * rim.course_thickness without an index, a list separated by ";". */
gboolean rw_measured_read (RwMeasured *measured, const char *id, const char *text, RwStyle style, GError **error);

/* The unit of id, or NULL where it can't be measured. */
const char *rw_measurable_unit (const char *id);
