/* Project files: JSON of our own design.
 *
 * {
 *   "rimwright": 1,
 *   "name": "...",
 *   "parameters": { "scale.length": 650, "build.handed": "right", "rim.course_thickness": [ 20, 24, 24 ], ... },
 *   "measured": [ { "id": "rim.outer_diameter", "readings": [ 279.2 ], "date": "2026-05-04", "note": "" } ],
 *   "notes": "..."
 * }
 *
 * One value a line, keys in the order of the tables, numbers with the shortest digits that read back to the
 * same double, lengths in mm.  A parameter that the file does not name has its default.  Members that this
 * version does not know are kept and written back.
 */
#pragma once

#include "project.h"

#include <gio/gio.h>

#define RW_FILE_VERSION 1

#define RW_FILE_ERROR (rw_file_error_quark ())
GQuark rw_file_error_quark (void);

typedef enum
{
  RW_FILE_ERROR_DAMAGED, /* not JSON, or JSON that is no project */
  RW_FILE_ERROR_TOO_NEW, /* a version after RW_FILE_VERSION */
  RW_FILE_ERROR_TOO_BIG, /* over the limits of json_scan.h */
  RW_FILE_ERROR_VALUE,   /* a value that its parameter can't have */
  RW_FILE_ERROR_ACCESS,  /* can't be read or written */
} RwFileError;

/* All messages are one sentence that says what and where (line and column, or the id). */
RwProject *rw_project_from_text (const char *text, gssize length, GError **error);
char      *rw_project_to_text   (const RwProject *project);
RwProject *rw_project_load      (const char *path, GError **error); /* "-" is standard input */
/* Written to a new file in the same folder, flushed to the disk and put in the place of the old one in one
 * step: on any failure the old file is as it was. */
gboolean   rw_project_save      (const RwProject *project, const char *path, GError **error);
