/* Rimwright: a command word runs the command line, anything else the window. */
#include <signal.h>

#include "application.h"
#include "cli.h"

int
main (int argc, char **argv)
{
  /* A file that grows past a limit is an error of the write that does it, not the end of the program. */
  signal (SIGXFSZ, SIG_IGN);
  if (argc > 1 && rw_cli_knows (argv[1]))
    return rw_cli_run (argc, argv);
  return rw_application_run (argc, argv);
}
