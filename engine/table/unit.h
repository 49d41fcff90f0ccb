/* The table of units behind quantity.c.  Units of one kind convert to each other; nothing else does. */
#pragma once

#include <glib.h>

typedef enum
{
  RW_UNIT_LENGTH,
  RW_UNIT_ANGLE,
  RW_UNIT_RATIO,
  RW_UNIT_MASS,
  RW_UNIT_LINEAR_MASS,
  RW_UNIT_DENSITY,
  RW_UNIT_CONCENTRATION,
  RW_UNIT_FORCE,
  RW_UNIT_TENSION,
  RW_UNIT_MOMENT,
  RW_UNIT_PRESSURE,
  RW_UNIT_FREQUENCY,
  RW_UNIT_TURNING,
  RW_UNIT_INTERVAL,
  RW_UNIT_TEMPERATURE,
  RW_UNIT_SPEED,
  RW_UNIT_VOLUME,
} RwUnitKind;

typedef struct
{
  const char *symbol;
  RwUnitKind  kind;
  double      factor; /* value in the kind's base = number * factor + offset */
  double      offset; /* not 0 for scales that don't begin at the base's zero */
} RwUnit;

/* The unit written exactly so, or NULL. */
const RwUnit *rw_unit_find (const char *symbol);

/* The longest unit that text begins with, upper and lower case alike; NULL if there is none.  Only units of
 * like's kind count, of any kind where like is NULL.  A unit that ends in a letter or digit must not be
 * followed by another.  length takes the bytes that it has. */
const RwUnit *rw_unit_match (const char *text, const RwUnit *like, size_t *length);

/* The inch and the foot, by any of their names. */
gboolean rw_unit_is_inch (const RwUnit *unit);
gboolean rw_unit_is_foot (const RwUnit *unit);
