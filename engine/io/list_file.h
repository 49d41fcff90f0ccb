/* The dimension list, the findings and the table of parameters as text for people, CSV (RFC 4180) and JSON.
 * All in English and without regard to the locale. */
#pragma once

#include "check/answer.h"
#include "check/listing.h"

typedef enum { RW_LIST_TEXT, RW_LIST_CSV, RW_LIST_JSON } RwListFormat;

/* rw_list_write: every dimension that the build has.
 *
 * Text goes by the steps of the making, and has the findings after them.  CSV has a row for each dimension in
 * the order of the table, empty fields for what was not measured or has no tolerance.  JSON is an object
 * with the lists "dimensions", "findings", "steps" (titles in order) and "parameters"; null stands for what
 * CSV leaves empty.  All three tell beside the tolerance that a shop holds the one that the build asks for,
 * close_enough, and by_fitting where it is finer than can be measured or held (making/tolerance.h); and low and
 * high of what rests on guesses (model/band.h).  units changes how lengths are shown in text and CSV; JSON and
 * CSV in mm have all digits.
 * A new string.
 */
char *rw_list_write (const RwProject *project, const RwAnswer *answer, RwListFormat format, RwUnits units);

/* The findings alone, as text or JSON: an object with the list "findings".  Those that are accepted come last,
 * with the reason.  With remedies, those that there are follow each finding: what to do, and the parameters it
 * sets.  A new string. */
char *rw_findings_write (const RwProject *project,
                         const RwAnswer  *answer,
                         gboolean         remedies,
                         RwListFormat     format,
                         RwUnits          units);

/* The table of parameters: id, group, label, kind, unit, default, min, max, step, meaning.  A new string. */
char *rw_parameters_write (RwListFormat format);
