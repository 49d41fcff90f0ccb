/* Dates as files hold them. */
#pragma once

#include <glib.h>

/* Whether text is a day written as ISO 8601 has it: "2026-05-04". */
gboolean rw_is_date (const char *text);
