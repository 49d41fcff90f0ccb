/* rimwright tuning: the strings that are on tuned to other notes, and a capo. */
#pragma once

#include "options.h"

/* Returns the exit status: 0, or 2 with error set. */
int   rw_cli_tuning          (const RwOptions *options, GError **error);
/* Which tunings have a name, for --help.  New. */
char *rw_cli_tuning_overview (void);
