/* A program that is killed at any moment while it saves and keeps drafts: the file is one of the versions it wrote,
 * whole, and no older than the last that was reported as saved; so is the draft. */
#include <glib.h>

#include <glib/gstdio.h>
#include <signal.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include "io/draft.h"
#include "io/project_file.h"
#include "io/save.h"

#define KILLS 300
#define LONGEST_US 15000 /* from the start of the work to the kill */
#define MOMENT "2026-05-04T17:12:09+02"

/* What the program tells its parent: the number of the version that is safe by now. */
typedef struct
{
  int saved, kept;
} Safe;

typedef struct
{
  char *folder, *path, *drafts;
} Place;

/* The version is its height over the board, and a note that makes the file longer and shorter by turns. */
static RwProject *
version (int number)
{
  RwProject *project = rw_project_new ();

  project->design.bridge_height = 12.0 + number * 0.001;
  g_free (project->notes);
  project->notes = g_strnfill ((gsize) (number * 7919 % 20000), 'n');
  return project;
}

static int
number_of (const RwProject *project)
{
  int number = (int) ((project->design.bridge_height - 12.0) * 1000 + 0.5);

  g_assert_cmpuint (strlen (project->notes), ==, (gsize) (number * 7919 % 20000));
  return number;
}

static void
work (const Place *place, int pipe)
{
  RwDraftPlace *drafts = rw_draft_place_new (place->drafts);
  Safe safe = { 0, 0 };

  for (int number = 1;; number++)
    {
      RwProject *project = version (number);
      g_autofree char *text = rw_project_to_text (project);

      if (!rw_draft_keep (drafts, text, place->path, MOMENT, NULL))
        _exit (1);
      safe.kept = number;
      if (!rw_project_save (project, place->path, NULL))
        _exit (1);
      safe.saved = number;
      if (write (pipe, &safe, sizeof safe) != sizeof safe)
        _exit (1);
      rw_project_free (project);
    }
}

/* Kills the program after so long; returns the last it has told. */
static Safe
kill_after (const Place *place, int microseconds)
{
  Safe safe = { 0, 0 }, next;
  int ends[2], status;
  pid_t child;

  g_assert_cmpint (pipe (ends), ==, 0);
  child = fork ();
  if (child == 0)
    work (place, ends[1]);
  close (ends[1]);
  g_usleep ((gulong) microseconds);
  kill (child, SIGKILL);
  waitpid (child, &status, 0);
  g_assert_true (WIFSIGNALED (status) && WTERMSIG (status) == SIGKILL);
  while (read (ends[0], &next, sizeof next) == sizeof next)
    safe = next;
  close (ends[0]);
  return safe;
}

static int
file_version (const char *path)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (RwProject) project = rw_project_load (path, &error);

  g_assert_no_error (error);
  return number_of (project);
}

static void
check_draft (const Place *place, Safe safe)
{
  g_autoptr (GPtrArray) drafts = rw_drafts_left (place->drafts);

  g_assert_cmpuint (drafts->len, <=, 1);
  if (safe.kept > 0)
    g_assert_cmpuint (drafts->len, ==, 1);
  if (drafts->len == 0)
    return;
  const RwDraft *draft = g_ptr_array_index (drafts, 0);
  int number = number_of (draft->project);
  g_assert_cmpint (number, >=, safe.kept);
  g_assert_cmpint (number, <=, safe.kept + 1);
  g_assert_cmpstr (draft->of, ==, place->path);
  rw_draft_forget (draft);
}

static void
clear (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (folder, name, NULL);

      if (!g_file_test (path, G_FILE_TEST_IS_DIR))
        g_assert_cmpint (g_remove (path), ==, 0);
    }
}

static void
one_kill (const Place *place)
{
  g_autoptr (RwProject) start = version (0);
  g_autofree char *previous = rw_save_previous (place->path);
  Safe safe;
  int number;

  g_assert_true (rw_project_save (start, place->path, NULL));
  safe = kill_after (place, g_test_rand_int_range (0, LONGEST_US));
  number = file_version (place->path);
  g_assert_cmpint (number, >=, safe.saved);
  g_assert_cmpint (number, <=, safe.saved + 1);
  /* Two names of one version, or the one before. */
  if (number > 0)
    {
      int before = file_version (previous);

      g_assert_cmpint (before, >=, number - 1);
      g_assert_cmpint (before, <=, number);
    }
  check_draft (place, safe);
  clear (place->folder);
  clear (place->drafts);
}

static void
test_kills (void)
{
  Place place;

  place.folder = g_dir_make_tmp ("rimwright-kill-XXXXXX", NULL);
  place.path = g_build_filename (place.folder, "build.rimwright", NULL);
  place.drafts = g_build_filename (place.folder, "drafts", NULL);
  for (int i = 0; i < KILLS; i++)
    one_kill (&place);
  g_rmdir (place.drafts);
  g_assert_cmpint (g_rmdir (place.folder), ==, 0);
  g_free (place.folder);
  g_free (place.path);
  g_free (place.drafts);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/kill/anywhere", test_kills);
  return g_test_run ();
}
