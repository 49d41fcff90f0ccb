/* Snapshots in project files: an object with the id of each parameter and dimension, and its value. */
#pragma once

#include "project_member.h"

/* Ids that nobody here knows are kept below path, which is where the object stands.  NULL with an error. */
RwSnapshot *rw_snapshot_read  (RwProject *project, JsonNode *node, const char *path, GError **error);
void        rw_snapshot_write (RwJsonWriter *writer, const RwProject *project, const RwSnapshot *snapshot,
                               const char *path);
