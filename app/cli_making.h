/* The commands "steps" and "changes", and the record of papers that leave. */
#pragma once

#include "options.h"

/* Both return FALSE with an error where the options make no sense; else text is new. */
gboolean rw_cli_steps   (const RwOptions *options, char **text, GError **error);
gboolean rw_cli_changes (const RwOptions *options, char **text, GError **error);

/* Writes into the project's file that the papers left.  There must be such a file, and it holds the build that was
 * printed: with --set or --measured nothing can be recorded. */
gboolean rw_cli_check_record (const RwOptions *options, GError **error);
gboolean rw_cli_record       (const RwOptions *options, RwProject *project, const char *date, RwUnits units,
                              GError **error);
