/* A spread study as text for people, CSV (RFC 4180) and JSON; in English and without regard to the locale. */
#pragma once

#include "making/care.h"
#include "making/spread.h"
#include "list_file.h"

/* rw_spread_write: what comes out, and where care pays.
 *
 * Text has the results, the shares of the operations in them, and the sizes by how much of a limit each uses up.  CSV
 * has a row for each result, with a column for the share of each operation.  JSON is an object with "builds", "seed",
 * "solved", "shim", "any_note" and the lists "results" and "cuts", a cut having its tolerance asked for and its rates
 * by result.  Numbers that have an error of their own are objects of "value" and "error".  Units are those of the table
 * of dimensions; inches change text alone.  A new string.
 */
char *rw_spread_write (const RwCare *care, const RwSpread *spread, RwListFormat format, RwUnits units);

/* Where care pays, as CSV: a row for each cut that something depends on.  A new string. */
char *rw_care_csv (const RwCare *care);
