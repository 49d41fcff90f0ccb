/* What happens to a built-in build on its way from the first cut to the strings: readings, and steps that are made. */
#pragma once

#include "making/making.h"

typedef struct
{
  RwStep      step;
  const char *date;
  const char *id;       /* what was measured; NULL: the step is made */
  const char *readings; /* one or several, by ; */
  const char *note;
} RwExampleEvent;

/* In the order in which they happened; the last has no date. */
extern const RwExampleEvent rw_example_built[];

/* Lets them happen to a project that has only been planned. */
void rw_example_happen (RwProject *project, const RwExampleEvent *events);
