/* Changes that may make a build fit its stock; private to stock_remedy.c and stock_change.c. */
#pragma once

#include "stock_remedy.h"


/* All choices for what is missing in cutting, the simplest first: an array of arrays of RwRemedy. */
GPtrArray *rw_stock_changes (const RwCutting *cutting, const RwDesign *design);
