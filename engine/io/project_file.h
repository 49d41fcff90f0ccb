/* Project files: JSON of our own design.
 *
 * {
 *   "rimwright": 1,
 *   "name": "...",
 *   "parameters": { "build.handed": "right", "rim.course_thickness": [ 20, 24, 24 ], ... },
 *   "measured": [ { "id": "rim.outer_diameter", "readings": [ 279.2 ], "date": "2026-05-04", "note": "" } ],
 *   "made": [ { "step": "turn", "date": "2026-05-04", "values": { "rim.outer_diameter": 279.2, ... } } ],
 *   "issued": [ { "date": "...", "units": "mm", "papers": [ "rim-strip" ], "values": { ... } } ],
 *   "notes": "..."
 * }
 *
 * Each member has a file of its own, project_<member>.c; those that say nothing are left out.
 *
 * One value a line, keys in the order of the tables, numbers with the shortest digits that read back to the
 * same double, lengths in mm.  A parameter that the file does not name has its default.
 *
 * What this version does not know is kept and written back after what it knows, by name: members of the
 * file, parameters, measured entries, and members of those.  RwProject.unknown holds each as JSON text under
 * its path: "/NAME", "/parameters/NAME", "/measured/ID", "/measured/ID/NAME", with "~" and "/" in names
 * written "~0" and "~1" as in a JSON pointer (RFC 6901).
 */
#pragma once

#include "project/project.h"
#include "file_error.h"

#define RW_FILE_VERSION 1

/* All messages are one sentence that says what and where (line and column, or the id). */
RwProject *rw_project_from_text (const char *text, gssize length, GError **error);
char      *rw_project_to_text   (const RwProject *project);
RwProject *rw_project_load      (const char *path, GError **error); /* "-" is standard input */
/* Written to a new file in the same folder, flushed to the disk and put in the place of the old one in one
 * step: on any failure the old file is as it was.  What the old file held is kept, see rw_save_version(). */
gboolean   rw_project_save      (const RwProject *project, const char *path, GError **error);
