/* One line that says how a group of the form stands: "279 mm, 10 segments, 3 courses". */
#pragma once

#include "model/solve.h"

/* first is the first parameter of the group.  New. */
char *rw_form_summary (RwParamId first, const RwResult *result, RwStyle style);
