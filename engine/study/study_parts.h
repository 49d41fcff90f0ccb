/* Private to the studies: how a table is put together. */
#pragma once

#include <math.h>

#include "study.h"

typedef struct
{
  const RwResult *result;
  RwTranslate     translate;
  RwStudy        *study;
} RwStudyDraft;

/* Rows first, then columns. */
void rw_study_row  (RwStudyDraft *draft, char *name);             /* takes name */
void rw_study_rows (RwStudyDraft *draft, const char *title, int first, int last); /* counted */

typedef struct
{
  const char  *unit;
  int          panel;
  RwColumnRole role;
} RwColumnKind;

/* The values of a new column, all NaN, to be filled in; takes both texts. */
double *rw_study_column (RwStudyDraft *draft, RwColumnKind kind, char *title, char *label);

/* "2 B3". */
char *rw_study_string_name (const RwStudyDraft *draft, int string);

/* Each fills one kind of study. */
void rw_study_pitch   (RwStudyDraft *draft);
void rw_study_action  (RwStudyDraft *draft);
void rw_study_strings (RwStudyDraft *draft);
void rw_study_seasons (RwStudyDraft *draft);
