/* A strict look at JSON text before the JSON library sees it.
 *
 * The library reads more than JSON (comments, single quotes, leading zeros), keeps the last of two members
 * of one name, turns 1e999 into infinity and 99999999999999999999 into -1, ends text at \u0000, and
 * overruns the stack where lists are nested deeply.  What passes here is JSON as RFC 8259 has it, means the
 * same to every reader, and is harmless.
 */
#pragma once

#include "file_error.h"

#define RW_JSON_MAX_BYTES (8 * 1024 * 1024)
#define RW_JSON_MAX_DEPTH 64 /* lists and objects inside one another */

/* rw_json_scan: whether text is strict JSON.
 *
 * Refused, with RW_FILE_ERROR_TOO_BIG where a limit is passed and RW_FILE_ERROR_DAMAGED otherwise: all that
 * breaks the grammar; text after the value; invalid UTF-8 and byte order marks; two members of one name;
 * numbers that overflow a double, and whole numbers (without point or exponent) that overflow a gint64;
 * \u0000 and halves of surrogate pairs.  The message says what, and where by line and column, which counts
 * characters from 1.
 */
gboolean rw_json_scan (const char *text, gsize length, GError **error);
