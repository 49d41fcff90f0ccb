/* The table of a study in each format: what study_file.c chooses from.  New strings. */
#pragma once

#include "study/study.h"

char *rw_study_text (const RwStudy *study, RwStyle style);
char *rw_study_csv  (const RwStudy *study, RwUnits units);
char *rw_study_json (const RwStudy *study); /* mm */
