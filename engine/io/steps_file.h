/* The steps of the making, how far they have come, and what has changed since papers left, as text for people, CSV
 * (RFC 4180) and JSON.  All in English and without regard to the locale. */
#pragma once

#include "check/answer.h"
#include "paper/since.h"
#include "list_file.h"

/* Every step of the build in order: its state, what it waits for, what is known first, done and read off.  After them,
 * but in CSV, what a measured string height says of the neck (making/backwards.h).  A new string. */
char *rw_steps_write (const RwProject *project, const RwAnswer *answer, RwListFormat format, RwUnits units);

/* What differs from the last papers, and which of those that ever left are out of date.  CSV has the differences
 * alone.  A new string. */
char *rw_since_write (const RwSince *since, RwListFormat format);
