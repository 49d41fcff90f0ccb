/* The application: windows, files given at the start, quitting. */
#pragma once

/* Runs the window until it is closed; returns the exit status.  argv may name files to open.
 *
 * With RIMWRIGHT_EXIT_AFTER_FIRST_FRAME set, says the milliseconds from here to the first frame painted and
 * ends: for measuring the start. */
int rw_application_run (int argc, char **argv);
