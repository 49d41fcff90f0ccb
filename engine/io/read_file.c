#include "read_file.h"

#include <errno.h>
#include <fcntl.h>
#include <glib/gi18n-lib.h>
#include <string.h>
#include <unistd.h>

static gboolean
read_all (int fd, gsize most, GString *bytes)
{
  char buffer[64 * 1024];
  ssize_t got;

  do
    {
      got = read (fd, buffer, MIN (sizeof buffer, most + 1 - bytes->len));
      if (got > 0)
        g_string_append_len (bytes, buffer, got);
    }
  while ((got > 0 && bytes->len <= most) || (got < 0 && errno == EINTR));
  return got >= 0;
}

/* Does not wait for a pipe to be opened at its other end; reading waits as usual. */
static int
open_file (const char *path)
{
  int fd = open (path, O_RDONLY | O_CLOEXEC | O_NOCTTY | O_NONBLOCK);

  if (fd >= 0)
    fcntl (fd, F_SETFL, O_RDONLY);
  return fd;
}

static void
fail (GError **error, const char *path, int number)
{
  g_autofree char *name = g_path_get_basename (path);
  g_autofree char *shown = rw_file_quote (name);

  g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS, _("%s can't be read: %s"), shown, g_strerror (number));
}

GString *
rw_read_file (const char *path, gsize most, GError **error)
{
  gboolean standard = strcmp (path, "-") == 0;
  int fd = standard ? STDIN_FILENO : open_file (path);
  GString *bytes = g_string_new (NULL);

  if (fd < 0 || !read_all (fd, most, bytes))
    {
      fail (error, path, errno);
      g_string_free (bytes, TRUE);
      bytes = NULL;
    }
  if (fd >= 0 && !standard)
    close (fd);
  return bytes;
}
