/* rimwright what-if: one result against one parameter, and the value that gives a wanted result. */
#pragma once

#include "options.h"

/* Returns the exit status: 0, 1 where no value gives what is wanted, or 2 with error set. */
int rw_cli_what_if (const RwOptions *options, GError **error);
