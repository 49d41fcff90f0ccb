/* The dimension list and the table of parameters as CSV (RFC 4180), JSON and text. */
#pragma once

#include "listing.h"
#include "project.h"

typedef enum { RW_LIST_TEXT, RW_LIST_CSV, RW_LIST_JSON } RwListFormat;

/* New strings.  units changes how lengths are shown in text and CSV; JSON keeps full precision in the
 * unit of the table. */
char *rw_list_write       (const RwProject *project, RwListFormat format, RwUnits units);
char *rw_findings_write   (const RwProject *project, RwListFormat format); /* text or JSON */
char *rw_parameters_write (RwListFormat format);
