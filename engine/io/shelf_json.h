/* What stands on the shelf, as JSON: in project files and in the file of the personal shelf. */
#pragma once

#include "project_member.h"

/* The members of an item that this version knows, NULL-ended. */
extern const char *const rw_shelf_json_known[];

/* One item on one line, without the closing brace, so that more can follow. */
void rw_shelf_json_begin (GString *out, const RwStockItem *item);

/* NULL with an error of RW_FILE_ERROR.  number, from 1, names the item in it. */
RwStockItem *rw_shelf_json_read (JsonNode *node, guint number, GError **error);
