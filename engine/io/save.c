#include "save.h"

#include <errno.h>
#include <fcntl.h>
#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

/* Reports the errno of a call that has just failed. */
static gboolean
fail (const char *path, GError **error)
{
  int number = errno;
  g_autofree char *name = g_path_get_basename (path);
  g_autofree char *shown = rw_file_quote (name);

  g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS, _("%s can't be written: %s"), shown,
               g_strerror (number));
  return FALSE;
}

static gboolean
write_all (int fd, const char *bytes, gsize length)
{
  while (length > 0)
    {
      ssize_t written = write (fd, bytes, length);

      if (written > 0)
        {
          bytes += written;
          length -= (gsize) written;
        }
      else if (written == 0 || errno != EINTR)
        return FALSE;
    }
  return TRUE;
}

/* Down to the disk, as far as the file system knows how to. */
static gboolean
flush (int fd)
{
  return fsync (fd) == 0 || errno == EINVAL || errno == EROFS;
}

/* close() that leaves errno alone, for after a failure. */
static void
drop (int fd)
{
  int number = errno;

  close (fd);
  errno = number;
}

/* Permissions as those of the file that is replaced; owner and group as far as we may. */
static gboolean
keep_permissions (int fd, const struct stat *old)
{
  if (old == NULL)
    return TRUE;
  if (fchown (fd, old->st_uid, old->st_gid) != 0 && fchown (fd, (uid_t) -1, old->st_gid) != 0)
    return fchmod (fd, old->st_mode & 0700) == 0; /* another group is not let in */
  return fchmod (fd, old->st_mode & 07777) == 0;
}

static gboolean
fill (int fd, const char *bytes, gsize length, const struct stat *old)
{
  if (!write_all (fd, bytes, length) || !keep_permissions (fd, old) || !flush (fd))
    {
      drop (fd);
      return FALSE;
    }
  return close (fd) == 0;
}

/* So that the new name outlasts a power cut.  The file is in place by now: no reason to report a failure. */
static void
flush_folder (const char *folder)
{
  int fd = open (folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);

  if (fd < 0)
    return;
  fsync (fd);
  close (fd);
}

/* What the file holds goes on under another name too, in place of what that held: as far as the file system lets
 * us, for the new version matters more than the old.  Where a file can't have two names it is copied. */
static void
keep_previous (const char *path, const char *previous)
{
  g_autofree char *bytes = NULL;
  g_autofree char *temporary = g_strconcat (previous, "-new", NULL);
  gsize length;

  g_unlink (temporary);
  if (link (path, temporary) == 0
      || (g_file_get_contents (path, &bytes, &length, NULL) && rw_save_bytes (temporary, bytes, length, NULL)))
    g_rename (temporary, previous);
  /* Nothing has happened where both are already names of one file. */
  g_unlink (temporary);
}

static gboolean
replace (const char *path, const char *bytes, gsize length, const struct stat *old, const char *previous)
{
  g_autofree char *folder = g_path_get_dirname (path);
  /* A short name of its own: the file's may be as long as names can be. */
  g_autofree char *temporary = g_build_filename (folder, ".rimwright-XXXXXX", NULL);
  /* What was private is private from the first byte on. */
  int fd = g_mkstemp_full (temporary, O_WRONLY | O_CLOEXEC, old != NULL ? 0600 : 0666), number;
  gboolean done = FALSE;

  if (fd < 0)
    return FALSE;
  if (fill (fd, bytes, length, old))
    {
      if (previous != NULL)
        keep_previous (path, previous);
      done = g_rename (temporary, path) == 0;
    }
  if (!done)
    {
      number = errno;
      g_unlink (temporary);
      errno = number;
      return FALSE;
    }
  flush_folder (folder);
  return TRUE;
}

static gboolean
write_through (const char *path, const char *bytes, gsize length)
{
  int fd = open (path, O_WRONLY | O_CLOEXEC | O_NOCTTY);

  return fd >= 0 && fill (fd, bytes, length, NULL);
}

static gboolean
save (const char *path, const char *bytes, gsize length, gboolean keep, GError **error)
{
  g_autofree char *resolved = realpath (path, NULL);
  const char *target = resolved != NULL ? resolved : path;
  g_autofree char *previous = keep ? rw_save_previous (target) : NULL;
  struct stat status;
  gboolean exists = stat (target, &status) == 0, saved;

  if (!exists && errno != ENOENT)
    return fail (path, error);
  if (exists && S_ISDIR (status.st_mode))
    {
      errno = EISDIR;
      return fail (path, error);
    }
  /* A file that is closed to writing stays so, even where its folder would let it be replaced. */
  if (exists && access (target, W_OK) != 0)
    return fail (path, error);
  if (exists && !S_ISREG (status.st_mode))
    saved = write_through (target, bytes, length);
  else
    saved = replace (target, bytes, length, exists ? &status : NULL, exists ? previous : NULL);
  return saved || fail (path, error);
}

gboolean
rw_save_bytes (const char *path, const char *bytes, gsize length, GError **error)
{
  return save (path, bytes, length, FALSE, error);
}

gboolean
rw_save_version (const char *path, const char *bytes, gsize length, GError **error)
{
  return save (path, bytes, length, TRUE, error);
}

char *
rw_save_previous (const char *path)
{
  g_autofree char *resolved = realpath (path, NULL);

  return g_strconcat (resolved != NULL ? resolved : path, "~", NULL);
}
