/* A build given by what it changes in the built-in one, solved. */
#pragma once

#include "model/solve.h"
#include "project/project.h"

typedef struct
{
  RwDesign   design;
  RwMeasured measured;
  RwResult   result;
} Built;

/* changes: "~value" for a rim whose diameters were read so far apart, "id=value" with "|" between, values as text in
 * the unit of the table, or "@id=number" for what was measured; "" for none.  Lists have their items separated by
 * ";" as in files. */
Built *built_new (const char *changes);
void   built_free (Built *built);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Built, built_free)

/* The dimension called id, its indices written out; the test fails where the build has no such row. */
double built_value (const Built *built, const char *id);

/* A project as it stands, with what is measured and made in it.  New, for g_free(). */
RwResult *built_result (const RwProject *project);
