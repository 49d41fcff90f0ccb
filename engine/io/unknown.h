/* Members of a project file that this version does not know, by path: see project_file.h. */
#pragma once

#include <glib.h>

/* The path made of names, up to three, NULL-ended.  A new string. */
char *rw_unknown_path (const char *name, ...) G_GNUC_NULL_TERMINATED;

/* The paths in the table that lie directly below a path ("" for the file itself), in order of their names. */
GPtrArray *rw_unknown_below (GHashTable *unknown, const char *path);

/* The last name of a path.  A new string. */
char *rw_unknown_name (const char *path);
