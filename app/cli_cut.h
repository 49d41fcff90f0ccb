/* The command "cut": the build cut from a shelf. */
#pragma once

#include "options.h"

gboolean rw_cli_cut (const RwOptions *options, char **text, gboolean *enough, GError **error);
