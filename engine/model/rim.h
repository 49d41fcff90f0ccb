/* Courses of the rim, counted from 1 at the head side. */
#pragma once

#include "model.h"

/* Row of the table of woods. */
int    rw_rim_course_wood (const RwDesign *d, int course);
/* Thickness of a course within the finished rim, mm: 0 where it is cut off whole.  top (may be NULL): depth
 * of its upper face under the wood's top edge. */
double rw_rim_course_kept (const RwDesign *d, int course, double *top);
