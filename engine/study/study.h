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
  RW_STUDY_HEAD,    /* how the head sags across and along, and what each foot of the bridge carries */
  RW_STUDY_HOOKS,   /* pull and tightening torque of a hook against the head's tension */
  RW_STUDY_SEASONS, /* what dry and damp air do to action, fret ends and fits */
  RW_STUDY_TEMPERAMENT, /* notes and slots against equal temperament */
  RW_STUDY_COUNT,
} RwStudyKind;

const char *rw_study_id    (RwStudyKind kind); /* "pitch" ... */
const char *rw_study_name  (RwStudyKind kind); /* one word for a list, English, marked for translation */
const char *rw_study_title (RwStudyKind kind); /* what it shows, likewise */
int         rw_study_find  (const char *id);   /* the kind called id, or -1 */

/* How a column is drawn. */
typedef enum
{
  RW_COLUMN_LINE,
  RW_COLUMN_POINT, /* a place on a line that is called by the column's label */
  RW_COLUMN_LOAD,  /* an arrow down on the first line of its panel, with its figure; not on the panel's scale */
  RW_COLUMN_BAR,   /* from 0 */
  RW_COLUMN_LIMIT, /* of the bar in the same row */
} RwColumnRole;

#define RW_TABLE_ONLY (-1)

typedef struct
{
  char        *title; /* for the table, without the unit */
  char        *label; /* for the plot */
  const char  *unit;  /* as the tables of parameters name it */
  int          panel; /* plot that shows it, 0 or 1; RW_TABLE_ONLY */
  RwColumnRole role;
  double      *values; /* one a row, NaN where there is none */
} RwStudyColumn;

typedef struct
{
  char  *name; /* NULL: at says it */
  double at;   /* where it stands along the axis */
} RwStudyRow;

typedef struct
{
  const char *id;         /* "pitch": for names of files, never translated */
  char       *title;
  char       *row_title;  /* what rows are: "Fret" */
  const char *row_unit;   /* of the rows' places along the axis; NULL: rows have names */
  GArray     *rows;       /* of RwStudyRow, from left to right */
  GArray     *columns;    /* of RwStudyColumn */
  char       *panels[2];  /* titles of the plots, without the unit; NULL: no such plot */
  gboolean    same_range; /* both plots go equally high */
  gboolean    free_range; /* the plots need not begin at 0 */
  gboolean    whole;      /* places along the axis are counts */
} RwStudy;

typedef const char *(*RwTranslate) (const char *english);

/* rw_study_new: a study of a solved build.  A study of what could not be worked out has its columns with NaN. */
RwStudy *rw_study_new  (RwStudyKind kind, const RwResult *result, RwTranslate translate);
void     rw_study_free (RwStudy *study);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwStudy, rw_study_free)

/* There is at least one number in it. */
gboolean rw_study_has_numbers (const RwStudy *study);

const RwStudyColumn *rw_study_column_at (const RwStudy *study, guint column);
/* What a row is called, without a unit.  New. */
char                *rw_study_row_name  (const RwStudy *study, guint row, RwStyle style);

/* A number that is to be seen in a plot. */
typedef struct
{
  RwPoint at; /* mm of the sheet */
  RwBox   frame; /* of its plot, mm of the sheet */
  guint   column, row;
} RwStudySpot;

/* rw_study_draw: a new sheet, width by height mm from the origin, to be laid out at a scale of 1.  spots (of
 * RwStudySpot, may be NULL) gets the places of all numbers, column by column. */
RwSheet *rw_study_draw (const RwStudy *study, double width, double height, RwStyle style, GArray *spots);

/* rw_study_nearest: the spot that is meant by pointing at a place: of the plot that is nearest, the row that is
 * nearest across, and of that the number that is nearest up; -1 where there is none. */
int rw_study_nearest (const GArray *spots, RwPoint at);

/* rw_study_step: the spot that the arrow keys lead to from one (-1: the first): so many rows to the right in the same
 * column, or, where dx is 0, to the nearest row of the next column down (1) or up (-1) in the table.  Holds at the
 * ends. */
int rw_study_step (const GArray *spots, int from, int dx, int dy);
