/* The command "spread": how far results come out off plan in a shop that works as closely as this one. */
#pragma once

#include "options.h"

/* Returns FALSE with an error where the options make no sense or the build can't be strung up; else text is new. */
gboolean rw_cli_spread (const RwOptions *options, char **text, GError **error);
