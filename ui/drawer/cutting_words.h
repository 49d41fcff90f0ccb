/* What the picture of a cutting plan shows, for people who hear it. */
#pragma once

#include "stock/cutting.h"
#include "table/param.h"

/* A line for all that is missing, and one for each board and bar: what it is, what it gives, and what is left.  New. */
char *rw_cutting_words (const RwCutting *cutting, RwStyle style);
