#include "file_mark.h"

#include <sys/stat.h>

RwFileMark
rw_file_mark (const char *path)
{
  RwFileMark mark = { .exists = FALSE };
  struct stat status;

  if (stat (path, &status) != 0)
    return mark;
  mark.exists = TRUE;
  mark.device = status.st_dev;
  mark.inode = status.st_ino;
  mark.size = (guint64) status.st_size;
  mark.seconds = status.st_mtim.tv_sec;
  mark.nanoseconds = status.st_mtim.tv_nsec;
  return mark;
}

gboolean
rw_file_mark_equal (const RwFileMark *a, const RwFileMark *b)
{
  if (!a->exists || !b->exists)
    return a->exists == b->exists;
  return a->device == b->device && a->inode == b->inode && a->size == b->size && a->seconds == b->seconds
         && a->nanoseconds == b->nanoseconds;
}
