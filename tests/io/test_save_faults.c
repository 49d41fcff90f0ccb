/* Every system call on the way of a save fails once, in each way it can: the file is then whole, old or new, and
 * the answer says which.  The linker puts the functions below in the place of the real ones. */
#include "io/save.h"

#include <errno.h>
#include <fcntl.h>
#include <glib/gstdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* Long enough that half of it is a write cut short. */
#define OLD_TEXT "the old build, as it was saved before\n"
#define NEW_TEXT "the new build, which is somewhat longer than the old one was\n"
#define SHORT_WRITE 0 /* no error: fewer bytes than asked for */

static int fault_at = -1; /* the call to fail, counted from 0; -1: none */
static int fault_errno;
static int calls;
static const char *fault_name; /* the function that failed */

static gboolean
fails (const char *name)
{
  if (fault_at < 0 || calls++ != fault_at)
    return FALSE;
  fault_name = name;
  errno = fault_errno;
  return TRUE;
}

/* int function (...) that answers -1 when it fails. */
#define FAILING(name, parameters, arguments) \
  int __real_##name parameters; \
  int __wrap_##name parameters; \
  int __wrap_##name parameters \
  { \
    return fails (#name) ? -1 : __real_##name arguments; \
  }

FAILING (fchown, (int fd, uid_t user, gid_t group), (fd, user, group))
FAILING (fchmod, (int fd, mode_t mode), (fd, mode))
FAILING (fsync, (int fd), (fd))
FAILING (access, (const char *path, int mode), (path, mode))
FAILING (link, (const char *path, const char *other), (path, other))
FAILING (g_rename, (const char *path, const char *other), (path, other))
FAILING (g_unlink, (const char *path), (path))
FAILING (g_mkstemp_full, (char *path, int flags, int mode), (path, flags, mode))

/* The descriptor is gone all the same. */
int __real_close (int fd);
int __wrap_close (int fd);

int
__wrap_close (int fd)
{
  gboolean failing = fails ("close");
  int status = __real_close (fd);

  if (failing)
    errno = fault_errno;
  return failing ? -1 : status;
}

ssize_t __real_write (int fd, const void *bytes, size_t count);
ssize_t __wrap_write (int fd, const void *bytes, size_t count);

ssize_t
__wrap_write (int fd, const void *bytes, size_t count)
{
  if (!fails ("write"))
    return __real_write (fd, bytes, count);
  return fault_errno == SHORT_WRITE ? __real_write (fd, bytes, (count + 1) / 2) : -1;
}

/* ---- the case ---- */

static gboolean
holds (const char *path, const char *text)
{
  g_autofree char *found = NULL;

  return g_file_get_contents (path, &found, NULL, NULL) && strcmp (found, text) == 0;
}

static void
put (const char *path, const char *text)
{
  g_assert_true (g_file_set_contents (path, text, -1, NULL));
}

static guint
count_files (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  guint count = 0;

  while (g_dir_read_name (dir) != NULL)
    count++;
  return count;
}

static void
clear (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (folder, name, NULL);

      g_assert_cmpint (g_remove (path), ==, 0);
    }
}

static gboolean
save_with_fault (const char *path, int at, int number, GError **error)
{
  gboolean saved;

  fault_name = NULL;
  fault_errno = number;
  calls = 0;
  fault_at = at;
  saved = rw_save_version (path, NEW_TEXT, strlen (NEW_TEXT), error);
  fault_at = -1;
  return saved;
}

/* One save with one fault; whether there was a call to fail. */
static gboolean
try_fault (const char *folder, int at, int number)
{
  g_autofree char *path = g_build_filename (folder, "build.rimwright", NULL);
  g_autofree char *previous = rw_save_previous (path);
  g_autoptr (GError) error = NULL;
  gboolean saved;

  clear (folder);
  put (path, OLD_TEXT);
  saved = save_with_fault (path, at, number, &error);
  g_test_message ("call %d, %s: %s", at, fault_name != NULL ? fault_name : "none", g_strerror (number));

  g_assert_true (holds (path, saved ? NEW_TEXT : OLD_TEXT));
  g_assert_true (saved == (error == NULL));
  if (!saved)
    g_assert_nonnull (strstr (error->message, g_strerror (number)));
  /* The version before is there, whole, unless just that could not be done. */
  if (saved && (fault_name == NULL || g_strcmp0 (fault_name, "fsync") == 0))
    g_assert_true (holds (previous, OLD_TEXT));
  g_assert_true (!g_file_test (previous, G_FILE_TEST_EXISTS) || holds (previous, OLD_TEXT));
  /* Nothing is left over but what could not be removed. */
  if (g_strcmp0 (fault_name, "g_unlink") != 0)
    g_assert_cmpuint (count_files (folder), <=, 2);
  return fault_name != NULL;
}

static void
test_every_call (gconstpointer data)
{
  g_autofree char *folder = g_dir_make_tmp ("rimwright-faults-XXXXXX", NULL);
  int at = 0;

  while (try_fault (folder, at, GPOINTER_TO_INT (data)))
    at++;
  g_assert_cmpint (at, >=, 9); /* or the functions above were not called */
  clear (folder);
  g_assert_cmpint (g_rmdir (folder), ==, 0);
}

/* A write cut short is gone on with: it is no failure. */
static void
test_short_write (void)
{
  g_autofree char *folder = g_dir_make_tmp ("rimwright-faults-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "build.rimwright", NULL);
  gboolean cut = FALSE;

  for (int at = 0; !cut && at < 100; at++)
    {
      put (path, OLD_TEXT);
      save_with_fault (path, at, SHORT_WRITE, NULL);
      cut = g_strcmp0 (fault_name, "write") == 0;
    }
  g_assert_true (cut);
  g_assert_true (holds (path, NEW_TEXT));
  clear (folder);
  g_assert_cmpint (g_rmdir (folder), ==, 0);
}

int
main (int argc, char **argv)
{
  static const struct
  {
    const char *name;
    int         number;
  } errors[] = {
    { "no-room", ENOSPC }, { "no-quota", EDQUOT }, { "broken-disk", EIO }, { "not-allowed", EACCES },
    { "not-permitted", EPERM }, { "read-only", EROFS }, { "no-handles", EMFILE }, { "name-too-long", ENAMETOOLONG },
  };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (errors); i++)
    {
      g_autofree char *path = g_strconcat ("/save-faults/", errors[i].name, NULL);

      g_test_add_data_func (path, GINT_TO_POINTER (errors[i].number), test_every_call);
    }
  g_test_add_func ("/save-faults/short-write", test_short_write);
  return g_test_run ();
}
