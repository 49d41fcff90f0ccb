/* Sets of strings by name, for the usual instruments and tunings.
 *
 * The name may stand wherever a set is written (strings.set=five_light); what is kept is the set.
 */
#pragma once

#include "param.h"

typedef struct
{
  const char *id;
  const char *label;
  const char *strings;  /* as the parameter strings.set is written */
  double      scale_mm; /* scale length that it suits */
} RwNamedSet;

extern const RwNamedSet rw_string_sets[];
extern const int        rw_string_sets_count;

/* Row of the table by its name, or -1. */
int rw_string_set_find (const char *id);

/* rw_string_set_take: the set of a row, for a design. */
void rw_string_set_take (RwStringSet *set, int row);
