/* Studies of the set-up: what a solved build will play like, as a table and as a plot of the same numbers.
 *
 * Every number stands once, in a column of the table; plots are drawn from the table.  Texts are translated when
 * a study is made.
 */
#pragma once

#include "model/solve.h"
#include "sheet/sheet.h"

typedef enum
{
  RW_STUDY_PITCH,   /* pitch error by string and fret, before and after the best straight bridge */
  RW_STUDY_ACTION,  /* action along the neck, and the neck's bending */
  RW_STUDY_STRINGS, /* tension, and stress against the wire's strength */
  RW_STUDY_SEASONS, /* how board and rim move over the year */
  RW_STUDY_COUNT,
} RwStudyKind;

const char *rw_study_id    (RwStudyKind kind); /* "pitch" ... */
const char *rw_study_title (RwStudyKind kind); /* English, marked for translation */

/* How a column is drawn. */
typedef enum
{
  RW_COLUMN_LINE,
  RW_COLUMN_BAR,   /* from 0 */
  RW_COLUMN_LIMIT, /* of the bar in the same row */
} RwColumnRole;

typedef struct
{
  char        *title; /* for the table, without the unit */
  char        *label; /* for the plot */
  const char  *unit;  /* as the tables of parameters name it */
  int          panel; /* plot that shows it, 0 or 1 */
  RwColumnRole role;
  double      *values; /* one a row, NaN where there is none */
} RwStudyColumn;

typedef struct
{
  RwStudyKind kind;
  char       *row_title;  /* what rows are: "Fret" */
  GPtrArray  *rows;       /* of char *, what each row is called */
  gboolean    counted;    /* rows are numbers from first_row on, and go along an axis */
  int         first_row;
  GArray     *columns;    /* of RwStudyColumn */
  char       *panels[2];  /* titles of the plots; NULL: no such plot */
  gboolean    same_range; /* both plots go equally high */
} RwStudy;

typedef const char *(*RwTranslate) (const char *english);

/* rw_study_new: a study of a solved build.  A study of what could not be worked out has its columns with NaN. */
RwStudy *rw_study_new  (RwStudyKind kind, const RwResult *result, RwTranslate translate);
void     rw_study_free (RwStudy *study);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwStudy, rw_study_free)

/* There is at least one number in it. */
gboolean rw_study_has_numbers (const RwStudy *study);

/* rw_study_draw: a new sheet, width by height mm from the origin, to be laid out at a scale of 1. */
RwSheet *rw_study_draw (const RwStudy *study, double width, double height, RwStyle style);
