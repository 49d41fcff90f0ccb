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

/* A study without rows and columns; takes title. */
RwStudy *rw_study_empty (const char *id, char *title);

/* Rows first, then columns. */
void rw_study_row    (RwStudyDraft *draft, char *name); /* takes name */
void rw_study_rows   (RwStudyDraft *draft, const char *title, int first, int last); /* counted */
/* Places along an axis, in rising order. */
void rw_study_places (RwStudyDraft *draft, const char *title, const char *unit, const double *at, guint count);
guint rw_study_row_of (const RwStudyDraft *draft, double at); /* the row nearest to a place */

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

/* Sorts places and takes out those that are the same within a hair; how many are left. */
guint rw_study_sort_places (double *at, guint count);

/* Each fills one kind of study. */
void rw_study_pitch   (RwStudyDraft *draft);
void rw_study_action  (RwStudyDraft *draft);
void rw_study_strings (RwStudyDraft *draft);
void rw_study_head    (RwStudyDraft *draft);
void rw_study_hooks   (RwStudyDraft *draft);
void rw_study_seasons (RwStudyDraft *draft);
void rw_study_temperament (RwStudyDraft *draft);
