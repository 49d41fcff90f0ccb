/* Writing files so that nothing is lost: project files and everything that is exported. */
#pragma once

#include "file_error.h"

/* rw_save_bytes: makes bytes the content of the file at path, in one step.
 *
 * They go to a new file in the same folder, which is flushed to the disk, given the permissions of the old
 * file and put in its place; on any failure the old file is as it was and the new one is gone.  Through a
 * symbolic link the file it leads to is replaced, not the link.  What is no regular file (a terminal, a
 * pipe) is written to as it stands.  Errors are RW_FILE_ERROR_ACCESS.
 */
gboolean rw_save_bytes (const char *path, const char *bytes, gsize length, GError **error);

/* rw_save_version: the same, and what the file held before goes on beside it, at rw_save_previous(), as far as the
 * file system allows that. */
gboolean rw_save_version (const char *path, const char *bytes, gsize length, GError **error);

/* Where the version before the last save is kept: the file's name and "~".  A new string. */
char *rw_save_previous (const char *path);
