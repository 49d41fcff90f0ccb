/* The dimension list: the rows of a solved build as people and programs read them. */
#pragma once

#include "project/project.h"
#include "finding.h"

typedef struct
{
  RwSlot slot;
  double value;    /* now: measured where measured, held where made */
  double planned;  /* of the plan without anything measured or made; NaN where the plan has no such row */
  double measured; /* NaN: not measured */
  double made;     /* what a made part holds; NaN: not made */
  double asked;    /* what all that comes before asks of it now; NaN where that can't be worked out */
} RwRow;

/* All rows that have a value now, in the order of dims.def. */
GArray *rw_listing_rows (const RwProject *project, const RwResult *now, const RwResult *planned);

/* What came out over what is asked: of the measured value, else of the made one; NaN where it is still to make. */
double rw_row_deviation (const RwRow *row);
/* What is needed now of a dimension that is still to make; NaN where it is measured or made. */
double rw_row_needed (const RwRow *row);

/* Whether two values differ as far as they are shown: in hundredths of a millimetre or what its unit has instead.  One
 * of them missing is a difference, both missing is none. */
gboolean rw_shown_differ (double a, double b, const char *unit);

/* What a number is called, by its id, with the index worked in; translate as for rw_slot_label_in().  A new string;
 * NULL for an id that nobody knows. */
char *rw_reading_label (const char *id, const char *(*translate) (const char *english));

/* One value of the design, or a dimension, by its id: what RwRow says of dimensions for both. */
typedef struct
{
  const char *unit;
  double      value, planned, measured, made, asked;
} RwReadingRow;

/* FALSE where the build has no number of that id. */
gboolean rw_listing_find (const char *id, const RwProject *project, const RwResult *now, const RwResult *planned,
                          RwReadingRow *row);
