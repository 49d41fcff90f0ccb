/* The command line: lists, checks and papers of a build, without a display.
 *
 * Exit status: 0; 1 where check finds something to stop for; 2 with one sentence on standard error where
 * the words, a value or a file can't be read, or the output can't be written.  Output is in English, has
 * decimal points, and does not depend on the locale.
 */
#pragma once

#include <glib.h>

/* Whether the first word of the command line is for rw_cli_run() and not for the window. */
gboolean rw_cli_knows (const char *word);

/* Runs the command that argv[1] names; returns the exit status. */
int rw_cli_run (int argc, char **argv);
