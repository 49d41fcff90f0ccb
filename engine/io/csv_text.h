/* Comma-separated values: RFC 4180, Common Format and MIME Type for CSV Files, 2005. */
#pragma once

#include <glib.h>

/* Appends a row of fields, NULL-ended, with its line end. */
void rw_csv_row (GString *out, const char *const *fields);
