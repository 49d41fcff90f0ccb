/* rimwright study: the studies of the set-up as tables and pictures; and what other commands need for theirs. */
#pragma once

#include "io/study_file.h"
#include "options.h"

/* Returns the exit status: 0, or 2 with error set. */
int   rw_cli_study          (const RwOptions *options, GError **error);
/* Which studies there are, for --help.  New. */
char *rw_cli_study_overview (void);

/* Text as it stands. */
const char *rw_cli_in_english (const char *english);
/* A number with its unit.  New. */
char       *rw_cli_quantity (double value, const char *unit, RwStyle style);
/* The build that is named after so many words of the command's own. */
RwProject  *rw_cli_study_project (const RwOptions *options, guint words, GError **error);
/* Units and size as asked for; whether the format is one. */
gboolean    rw_cli_study_look (const RwOptions *options, RwStudyLook *look, GError **error);
/* Writes a study to standard output in the format asked for, dated today; before (NULL: nothing) stands over the table
 * of a text. */
gboolean    rw_cli_study_write (const RwOptions   *options,
                                const RwStudy     *study,
                                const RwStudyLook *look,
                                const char        *before,
                                GError           **error);
