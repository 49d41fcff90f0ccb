/* Reading files that anybody may have made. */
#pragma once

#include "file_error.h"

/* rw_read_file: all bytes of a file, or of standard input where path is "-"; new.
 *
 * A file may be a device without end: reading stops one byte past most, and it is for the caller to say that this is
 * more than it takes.  A pipe that nobody writes to is empty.
 * Errors are RW_FILE_ERROR_ACCESS.
 */
GString *rw_read_file (const char *path, gsize most, GError **error);
