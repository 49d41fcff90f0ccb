/* Saving in one step: the new content or the old file, nothing between and nothing left over. */
#include "io/save.h"

#include <errno.h>
#include <glib/gstdio.h>
#include <signal.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

/* A folder of its own for each case. */
typedef struct
{
  char *folder, *path;
} Place;

static void
set_up (Place *place, gconstpointer data)
{
  place->folder = g_dir_make_tmp ("rimwright-save-XXXXXX", NULL);
  g_assert_nonnull (place->folder);
  place->path = g_build_filename (place->folder, "build.rimwright", NULL);
}

static void
empty_folder (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (folder, name, NULL);

      g_assert_cmpint (g_remove (path), ==, 0);
    }
}

static void
tear_down (Place *place, gconstpointer data)
{
  empty_folder (place->folder);
  g_assert_cmpint (g_rmdir (place->folder), ==, 0);
  g_free (place->folder);
  g_free (place->path);
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
save (const char *path, const char *text)
{
  g_autoptr (GError) error = NULL;

  rw_save_bytes (path, text, strlen (text), &error);
  g_assert_no_error (error);
}

static void
assert_content (const char *path, const char *expected)
{
  g_autofree char *content = NULL;
  g_autoptr (GError) error = NULL;

  g_file_get_contents (path, &content, NULL, &error);
  g_assert_no_error (error);
  g_assert_cmpstr (content, ==, expected);
}

static void
assert_refused (const char *path, const char *text)
{
  g_autoptr (GError) error = NULL;

  g_assert_false (rw_save_bytes (path, text, strlen (text), &error));
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS);
  g_test_message ("%s", error->message);
  g_assert_null (strchr (error->message, '\n'));
}

static void
test_new_and_again (Place *place, gconstpointer data)
{
  save (place->path, "first");
  assert_content (place->path, "first");
  save (place->path, "second, and longer");
  assert_content (place->path, "second, and longer");
  save (place->path, "");
  assert_content (place->path, "");
  g_assert_cmpuint (count_files (place->folder), ==, 1);
}

/* A new file has what the umask leaves of 0666, an old one keeps what it had. */
static void
test_permissions (Place *place, gconstpointer data)
{
  static const guint modes[] = { 0600, 0640, 0664 };
  struct stat status;
  mode_t mask = umask (027);

  save (place->path, "first");
  g_assert_cmpint (stat (place->path, &status), ==, 0);
  g_assert_cmpuint (status.st_mode & 07777, ==, 0640);
  for (guint i = 0; i < G_N_ELEMENTS (modes); i++)
    {
      g_assert_cmpint (g_chmod (place->path, (int) modes[i]), ==, 0);
      save (place->path, "again");
      g_assert_cmpint (stat (place->path, &status), ==, 0);
      g_assert_cmpuint (status.st_mode & 07777, ==, modes[i]);
    }
  umask (mask);
}

/* Another name of the old file (a hard link, a reader that has it open) still sees the old content whole. */
static void
test_old_file_is_replaced_not_overwritten (Place *place, gconstpointer data)
{
  g_autofree char *other = g_build_filename (place->folder, "other", NULL);

  save (place->path, "first");
  g_assert_cmpint (link (place->path, other), ==, 0);
  save (place->path, "second");
  assert_content (place->path, "second");
  assert_content (other, "first");
}

static void
test_symbolic_link (Place *place, gconstpointer data)
{
  g_autofree char *name = g_build_filename (place->folder, "link", NULL);

  save (place->path, "first");
  g_assert_cmpint (symlink ("build.rimwright", name), ==, 0);
  save (name, "second");
  g_assert_true (g_file_test (name, G_FILE_TEST_IS_SYMLINK));
  assert_content (place->path, "second");
  g_assert_cmpuint (count_files (place->folder), ==, 2);
}

/* 255 bytes are the longest name that file systems have; the file beside it must fit too. */
static void
test_long_name (Place *place, gconstpointer data)
{
  g_autofree char *fits = g_strnfill (255, 'n'), *too_long = g_strnfill (256, 'n');
  g_autofree char *path = g_build_filename (place->folder, fits, NULL);
  g_autofree char *too_long_path = g_build_filename (place->folder, too_long, NULL);

  save (path, "first");
  save (path, "second");
  assert_content (path, "second");
  assert_refused (too_long_path, "text");
  g_assert_cmpuint (count_files (place->folder), ==, 1);
}

static void
test_folder_in_the_way (Place *place, gconstpointer data)
{
  assert_refused (place->folder, "text");
  g_assert_cmpuint (count_files (place->folder), ==, 0);
}

static void
test_no_folder (Place *place, gconstpointer data)
{
  g_autofree char *path = g_build_filename (place->folder, "none", "build.rimwright", NULL);

  assert_refused (path, "text");
}

static void
test_file_as_folder (Place *place, gconstpointer data)
{
  g_autofree char *path = g_build_filename (place->path, "build.rimwright", NULL);

  save (place->path, "first");
  assert_refused (path, "text");
  assert_content (place->path, "first");
}

/* Runs body in a child of its own, so that it may give up rights or room; its asserts reach us. */
static void
in_child (void (*body) (const Place *place), const Place *place)
{
  pid_t child = fork ();
  int status;

  g_assert_cmpint (child, >=, 0);
  if (child == 0)
    {
      body (place);
      _exit (0);
    }
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  g_assert_true (WIFEXITED (status) && WEXITSTATUS (status) == 0);
}

/* Permissions do not bind root: nobody (65534) takes over. */
static void
become_nobody (void)
{
  if (geteuid () == 0)
    g_assert_true (setgid (65534) == 0 && setuid (65534) == 0);
}

static void
save_in_closed_folder (const Place *place)
{
  become_nobody ();
  assert_refused (place->path, "second");
}

static void
test_closed_folder (Place *place, gconstpointer data)
{
  save (place->path, "first");
  g_assert_cmpint (g_chmod (place->path, 0666), ==, 0);
  g_assert_cmpint (g_chmod (place->folder, 0555), ==, 0);
  in_child (save_in_closed_folder, place);
  assert_content (place->path, "first");
  g_assert_cmpuint (count_files (place->folder), ==, 1);
  g_assert_cmpint (g_chmod (place->folder, 0755), ==, 0);
}

static void
test_closed_file (Place *place, gconstpointer data)
{
  save (place->path, "first");
  g_assert_cmpint (g_chmod (place->path, 0444), ==, 0);
  g_assert_cmpint (g_chmod (place->folder, 0777), ==, 0);
  in_child (save_in_closed_folder, place);
  assert_content (place->path, "first");
  g_assert_cmpuint (count_files (place->folder), ==, 1);
}

/* Room for 4 KiB in a file: the write stops part way, as on a full disk. */
static void
save_without_room (const Place *place)
{
  const struct rlimit limit = { 4096, 4096 };
  g_autofree char *text = g_strnfill (100000, 'x');

  signal (SIGXFSZ, SIG_IGN);
  g_assert_cmpint (setrlimit (RLIMIT_FSIZE, &limit), ==, 0);
  assert_refused (place->path, text);
}

static void
test_no_room (Place *place, gconstpointer data)
{
  save (place->path, "first");
  in_child (save_without_room, place);
  assert_content (place->path, "first");
  g_assert_cmpuint (count_files (place->folder), ==, 1);
}

/* No handle left to open: fails before anything is written. */
static void
save_without_handles (const Place *place)
{
  const struct rlimit limit = { 0, 0 };

  g_assert_cmpint (setrlimit (RLIMIT_NOFILE, &limit), ==, 0);
  assert_refused (place->path, "second");
}

static void
test_no_handles (Place *place, gconstpointer data)
{
  save (place->path, "first");
  in_child (save_without_handles, place);
  assert_content (place->path, "first");
}

/* What is no regular file is written to, not replaced. */
static void
test_devices (Place *place, gconstpointer data)
{
  struct stat status;

  assert_refused ("/dev/full", "text");
  save ("/dev/null", "text");
  g_assert_cmpint (stat ("/dev/null", &status), ==, 0);
  g_assert_true (S_ISCHR (status.st_mode));
}

static const struct
{
  const char *path;
  void (*test) (Place *place, gconstpointer data);
} cases[] = {
  { "/save/new-and-again", test_new_and_again },
  { "/save/permissions", test_permissions },
  { "/save/replaced-not-overwritten", test_old_file_is_replaced_not_overwritten },
  { "/save/symbolic-link", test_symbolic_link },
  { "/save/long-name", test_long_name },
  { "/save/fails/folder-in-the-way", test_folder_in_the_way },
  { "/save/fails/no-folder", test_no_folder },
  { "/save/fails/file-as-folder", test_file_as_folder },
  { "/save/fails/closed-folder", test_closed_folder },
  { "/save/fails/closed-file", test_closed_file },
  { "/save/fails/no-room", test_no_room },
  { "/save/fails/no-handles", test_no_handles },
  { "/save/devices", test_devices },
};

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    g_test_add (cases[i].path, Place, NULL, set_up, cases[i].test, tear_down);
  return g_test_run ();
}
