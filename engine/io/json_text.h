/* JSON as this program writes it: strict, locale-free, numbers with the shortest digits that read back to
 * the same double. */
#pragma once

#include <json-glib/json-glib.h>

/* Each appends one value to out. */
void rw_json_string (GString *out, const char *text);   /* valid UTF-8 */
void rw_json_number (GString *out, double value);       /* null where it is not finite */
void rw_json_node   (GString *out, JsonNode *node);     /* on one line */
