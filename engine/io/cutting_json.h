/* The cutting plan as JSON: what cutting_file.c chooses from. */
#pragma once

#include "cutting_file.h"

/* Appends the whole object, and a line end, to out. */
void rw_cutting_json (const RwCuttingReport *report, GString *out);
