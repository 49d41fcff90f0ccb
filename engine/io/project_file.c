#include "project_file.h"

#include <errno.h>
#include <fcntl.h>
#include <glib/gi18n-lib.h>
#include <string.h>
#include <unistd.h>

#include "json_scan.h"
#include "save.h"

/* Reads to the end, or to one byte past what the scan lets through: a file may be a device without end. */
static gboolean
read_all (int fd, GString *text)
{
  char buffer[64 * 1024];
  ssize_t got;

  do
    {
      got = read (fd, buffer, sizeof buffer);
      if (got > 0)
        g_string_append_len (text, buffer, got);
    }
  while ((got > 0 && text->len <= RW_JSON_MAX_BYTES) || (got < 0 && errno == EINTR));
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

static GString *
read_file (const char *path)
{
  gboolean standard = strcmp (path, "-") == 0;
  int fd = standard ? STDIN_FILENO : open_file (path), number;
  GString *text = g_string_new (NULL);
  gboolean good = fd >= 0 && read_all (fd, text);

  number = errno;
  if (fd >= 0 && !standard)
    close (fd);
  if (!good)
    {
      g_string_free (text, TRUE);
      text = NULL;
    }
  errno = number;
  return text;
}

RwProject *
rw_project_load (const char *path, GError **error)
{
  GString *text = read_file (path);
  RwProject *project;

  if (text == NULL)
    {
      int number = errno;
      g_autofree char *name = g_path_get_basename (path);
      g_autofree char *shown = rw_file_quote (name);

      g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS, _("%s can't be read: %s"), shown,
                   g_strerror (number));
      return NULL;
    }
  project = rw_project_from_text (text->str, (gssize) text->len, error);
  g_string_free (text, TRUE);
  return project;
}

gboolean
rw_project_save (const RwProject *project, const char *path, GError **error)
{
  g_autofree char *text = rw_project_to_text (project);

  return rw_save_version (path, text, strlen (text), error);
}
