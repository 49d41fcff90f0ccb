/* Which version of a file was seen, to tell whether another program has changed it since. */
#pragma once

#include <glib.h>

typedef struct
{
  gboolean exists;
  guint64  device, inode, size;
  gint64   seconds, nanoseconds; /* of the last change */
} RwFileMark;

RwFileMark rw_file_mark       (const char *path);
gboolean   rw_file_mark_equal (const RwFileMark *a, const RwFileMark *b);
