/* Tables of dimensions known from outside: a test for each row. */
#pragma once

#include "built.h"

typedef struct
{
  const char *name;
  const char *changes; /* to the built-in build, as in built.h */
  const char *id;      /* of the dimension */
  double      value;
  double      tolerance;
} Expected;

/* Adds a test "<prefix>/<name>" for each row.  The table must outlive the tests. */
void expected_add (const char *prefix, const Expected *rows, gsize count);

/* Fails the test with both numbers where they are farther apart than the tolerance. */
void expected_near (const char *what, double value, double wanted, double tolerance);
