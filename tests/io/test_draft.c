/* Drafts of unsaved work: kept, found when their program has gone, never while it runs. */
#include "io/draft.h"

#include <glib/gstdio.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include "io/project_file.h"

#define MOMENT "2026-05-04T17:12:09+02"

typedef struct
{
  char *folder;
} Place;

static void
set_up (Place *place, gconstpointer data)
{
  g_autofree char *above = g_dir_make_tmp ("rimwright-draft-XXXXXX", NULL);

  place->folder = g_build_filename (above, "drafts", NULL);
}

static void
tear_down (Place *place, gconstpointer data)
{
  g_autoptr (GDir) dir = g_dir_open (place->folder, 0, NULL);
  g_autofree char *above = g_path_get_dirname (place->folder);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (place->folder, name, NULL);

      g_assert_cmpint (g_remove (path), ==, 0);
    }
  g_rmdir (place->folder);
  g_assert_cmpint (g_rmdir (above), ==, 0);
  g_free (place->folder);
}

static char *
some_work (const char *name)
{
  g_autoptr (RwProject) project = rw_project_new ();

  g_free (project->name);
  project->name = g_strdup (name);
  return rw_project_to_text (project);
}

/* A program that keeps a draft and ends without a word, as one that is killed does. */
static void
keep_and_die (const char *folder, const char *name, const char *of, const char *kept)
{
  g_autofree char *text = some_work (name);
  int status;
  pid_t child = fork ();

  if (child == 0)
    {
      RwDraftPlace *place = rw_draft_place_new (folder);

      _exit (rw_draft_keep (place, text, of, kept, NULL) ? 0 : 1);
    }
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  g_assert_cmpint (status, ==, 0);
}

static void
test_left_behind (Place *place, gconstpointer data)
{
  keep_and_die (place->folder, "Maple", "/tmp/a folder/rim ø.rimwright", MOMENT);
  g_autoptr (GPtrArray) drafts = rw_drafts_left (place->folder);

  g_assert_cmpuint (drafts->len, ==, 1);
  const RwDraft *draft = g_ptr_array_index (drafts, 0);
  g_assert_cmpstr (draft->of, ==, "/tmp/a folder/rim ø.rimwright");
  g_assert_cmpstr (draft->kept, ==, MOMENT);
  g_assert_cmpstr (draft->project->name, ==, "Maple");

  rw_draft_forget (draft);
  g_autoptr (GPtrArray) none = rw_drafts_left (place->folder);
  g_assert_cmpuint (none->len, ==, 0);
}

static void
test_never_saved (Place *place, gconstpointer data)
{
  keep_and_die (place->folder, "", NULL, MOMENT);
  g_autoptr (GPtrArray) drafts = rw_drafts_left (place->folder);

  g_assert_cmpuint (drafts->len, ==, 1);
  g_assert_null (((const RwDraft *) g_ptr_array_index (drafts, 0))->of);
}

static void
test_latest_first (Place *place, gconstpointer data)
{
  keep_and_die (place->folder, "one", NULL, "2026-05-04T17:12:09+02");
  keep_and_die (place->folder, "three", NULL, "2026-05-06T07:00:00+02");
  keep_and_die (place->folder, "two", NULL, "2026-05-05T23:59:59+02");
  g_autoptr (GPtrArray) drafts = rw_drafts_left (place->folder);

  g_assert_cmpuint (drafts->len, ==, 3);
  g_assert_cmpstr (((const RwDraft *) g_ptr_array_index (drafts, 0))->project->name, ==, "three");
  g_assert_cmpstr (((const RwDraft *) g_ptr_array_index (drafts, 2))->project->name, ==, "one");
}

/* While its program runs a draft is nobody else's business; dropped, it is gone with its lock. */
static void
test_held (Place *place, gconstpointer data)
{
  RwDraftPlace *held = rw_draft_place_new (place->folder);
  g_autofree char *text = some_work ("Maple");
  g_autoptr (GDir) dir = NULL;

  g_assert_true (rw_draft_keep (held, text, NULL, MOMENT, NULL));
  g_assert_true (rw_draft_keep (held, text, NULL, MOMENT, NULL));
  g_autoptr (GPtrArray) drafts = rw_drafts_left (place->folder);
  g_assert_cmpuint (drafts->len, ==, 0);

  rw_draft_drop (held);
  dir = g_dir_open (place->folder, 0, NULL);
  g_assert_null (g_dir_read_name (dir));
  rw_draft_place_free (held);
}

/* A draft taken up stays on the disk as it was until it is kept anew, in the same place. */
static void
test_adopted (Place *place, gconstpointer data)
{
  RwDraftPlace *next = rw_draft_place_new (place->folder), *late = rw_draft_place_new (place->folder);
  g_autofree char *text = some_work ("Cherry");

  keep_and_die (place->folder, "Maple", NULL, MOMENT);
  g_autoptr (GPtrArray) drafts = rw_drafts_left (place->folder);
  const RwDraft *draft = g_ptr_array_index (drafts, 0);
  g_assert_true (rw_draft_adopt (next, draft));
  g_assert_true (g_file_test (draft->file, G_FILE_TEST_EXISTS));
  g_assert_false (rw_draft_adopt (late, draft));
  g_assert_true (rw_draft_keep (next, text, NULL, MOMENT, NULL));

  rw_draft_place_free (next); /* gone without dropping it */
  g_autoptr (GPtrArray) again = rw_drafts_left (place->folder);
  g_assert_cmpuint (again->len, ==, 1);
  g_assert_cmpstr (((const RwDraft *) g_ptr_array_index (again, 0))->project->name, ==, "Cherry");
  rw_draft_place_free (late);
}

/* What can't be read is neither offered nor thrown away. */
static void
test_damaged (Place *place, gconstpointer data)
{
  static const char *const texts[] = { "", "rimwright-draft 1\n", "rimwright-draft 1\nof \nkept \n", "{}",
                                       "rimwright-draft 1\nof \nkept 2026-05-04T17:12:09+02\n{\"rimwright\": 1" };
  g_autofree char *file = g_build_filename (place->folder, "0123.rimwright", NULL);

  g_assert_cmpint (g_mkdir (place->folder, 0700), ==, 0);
  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_assert_true (g_file_set_contents (file, texts[i], -1, NULL));
      g_autoptr (GPtrArray) drafts = rw_drafts_left (place->folder);
      g_assert_cmpuint (drafts->len, ==, 0);
      g_assert_true (g_file_test (file, G_FILE_TEST_EXISTS));
    }
}

/* Work is not lost to a line that only says when it was kept. */
static void
test_kept_in_another_encoding (Place *place, gconstpointer data)
{
  g_autofree char *file = g_build_filename (place->folder, "0123.rimwright", NULL), *text = some_work ("Maple");
  g_autofree char *bytes = g_strdup_printf ("rimwright-draft 1\nof \nkept 4. M\xe4rz\n%s", text);

  g_assert_cmpint (g_mkdir (place->folder, 0700), ==, 0);
  g_assert_true (g_file_set_contents (file, bytes, -1, NULL));
  g_autoptr (GPtrArray) drafts = rw_drafts_left (place->folder);
  g_assert_cmpuint (drafts->len, ==, 1);
  const RwDraft *draft = g_ptr_array_index (drafts, 0);
  g_assert_cmpstr (draft->kept, ==, "4. M\357\277\275rz");
  g_assert_cmpstr (draft->project->name, ==, "Maple");
}

static void
test_no_folder (Place *place, gconstpointer data)
{
  RwDraftPlace *nowhere = rw_draft_place_new ("/dev/null/drafts");
  g_autofree char *text = some_work ("Maple");
  g_autoptr (GError) error = NULL;

  g_autoptr (GPtrArray) drafts = rw_drafts_left (place->folder);
  g_assert_cmpuint (drafts->len, ==, 0);
  g_assert_false (rw_draft_keep (nowhere, text, NULL, MOMENT, &error));
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS);
  g_assert_nonnull (strstr (error->message, "/dev/null/drafts"));
  rw_draft_place_free (nowhere);
}

int
main (int argc, char **argv)
{
  static const struct
  {
    const char *path;
    void (*test) (Place *place, gconstpointer data);
  } cases[] = {
    { "/draft/left-behind", test_left_behind }, { "/draft/never-saved", test_never_saved },
    { "/draft/latest-first", test_latest_first }, { "/draft/held", test_held },
    { "/draft/adopted", test_adopted }, { "/draft/damaged", test_damaged },
    { "/draft/kept-in-another-encoding", test_kept_in_another_encoding }, { "/draft/no-folder", test_no_folder },
  };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    g_test_add (cases[i].path, Place, NULL, set_up, cases[i].test, tear_down);
  return g_test_run ();
}
