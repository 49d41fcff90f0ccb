/* rimwright study: the studies of the set-up as tables and pictures. */
#pragma once

#include "options.h"

/* Returns the exit status: 0, or 2 with error set. */
int   rw_cli_study          (const RwOptions *options, GError **error);
/* Which studies there are, for --help.  New. */
char *rw_cli_study_overview (void);
