/* One writer for each format: what list_file.c chooses from. */
#pragma once

#include "list_file.h"

char *rw_list_text (const RwProject *project, const RwAnswer *answer, RwUnits units);
char *rw_list_csv  (const RwProject *project, const RwAnswer *answer, RwUnits units);
char *rw_list_json (const RwProject *project, const RwAnswer *answer);

/* design: as planned, for the remedies; NULL: without. */
char *rw_findings_text (const RwAnswer *answer, const RwDesign *design, RwUnits units);
char *rw_findings_json (const RwAnswer *answer, const RwDesign *design);

char *rw_parameters_text (void);
char *rw_parameters_csv  (void);
char *rw_parameters_json (void);
