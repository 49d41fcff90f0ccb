/* Builds that come with the program. */
#pragma once

#include "example_built.h"

typedef struct
{
  const char        *name;     /* as asked for: "default" */
  const char        *title;    /* the project's name */
  const char        *summary;  /* one line for the help, no full stop */
  const char        *notes;    /* the project's notes: whom it is for */
  const char *const *settings; /* what differs from the defaults, "id=value", NULL-ended */
  const RwExampleEvent *events;  /* what has happened to it since; NULL: it is planned and no more */
} RwExample;

extern const RwExample rw_examples[];
extern const int     rw_examples_count;

/* The example called name, or NULL. */
const RwExample *rw_example_find (const char *name);

RwProject *rw_example_project (const RwExample *example);

/* Every name with its summary, a line each (new). */
char *rw_examples_overview (void);
