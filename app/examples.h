/* Builds that come with the program. */
#pragma once

#include "project.h"

typedef struct
{
  const char        *name;     /* as asked for: "default" */
  const char        *title;    /* the project's name */
  const char *const *settings; /* what differs from the defaults, "id=value", NULL-ended */
} RwExample;

extern const RwExample rw_examples[];
extern const int     rw_examples_count;

/* The example called name, or NULL. */
const RwExample *rw_example_find (const char *name);

RwProject *rw_example_project (const RwExample *example);
