/* A study of the set-up as a file: its table as text, CSV or JSON, its plots as SVG, PDF or PNG. */
#pragma once

#include "study/study.h"
#include "page.h"

typedef enum
{
  RW_STUDY_TEXT,
  RW_STUDY_CSV,
  RW_STUDY_JSON,
  RW_STUDY_SVG, /* from here on a picture */
  RW_STUDY_PDF,
  RW_STUDY_PNG,
  RW_STUDY_FORMAT_COUNT,
} RwStudyFormat;

/* "text", "csv", "json", "svg", "pdf", "png". */
const char *rw_study_format_name (RwStudyFormat format);
int         rw_study_format_find (const char *name); /* -1: none */

typedef struct
{
  double      width, height; /* mm of the picture, margins included */
  RwStyle     style;
  const char *heading;       /* over the plots: "Pitch of the frets", a build's name */
  const char *date;          /* ISO 8601, of the PDF */
} RwStudyLook;

#define RW_STUDY_LOOK ((RwStudyLook){ 180, 80, RW_STYLE_FILE, NULL, NULL })
#define RW_STUDY_LEAST_WIDTH 80.0
#define RW_STUDY_LEAST_HEIGHT 40.0
#define RW_STUDY_MOST 1200.0 /* mm, of either */

/* rw_study_write: the file's bytes.  Text is for people; CSV has a row for each row of the study, the first of names
 * and units, and JSON an object with the lists "rows" and "columns" of its columns' values; both have all digits,
 * but for lengths in inches, and leave out what is no number.  Pictures are on white, in ink that holds in grey.
 * Errors are in RW_FILE_ERROR. */
GBytes *rw_study_write (const RwStudy *study, RwStudyFormat format, const RwStudyLook *look, GError **error);

/* Paints the picture on a context whose unit is a millimetre, y down: for printing. */
void rw_study_paint (const RwStudy *study, const RwStudyLook *look, cairo_t *cr);
