/* Drafts that were left behind: whatever stands in the file, it is offered, with words that can be shown, or passed
 * over; and stays where it is. */
#include "fuzz.h"

#include <glib/gstdio.h>
#include <stdlib.h>
#include <unistd.h>

#include "io/draft.h"

static char *folder, *file;

static void
leave_folder (void)
{
  g_autofree char *lock = g_build_filename (folder, "draft.lock", NULL);

  g_unlink (file);
  g_unlink (lock);
  g_rmdir (folder);
  g_free (file);
  g_free (folder);
}

static void
set_up (void)
{
  static gsize done;

  if (!g_once_init_enter (&done))
    return;
  folder = g_dir_make_tmp ("rimwright-fuzz-XXXXXX", NULL);
  g_assert_nonnull (folder);
  file = g_build_filename (folder, "draft.rimwright", NULL);
  atexit (leave_folder);
  g_once_init_leave (&done, 1);
}

int
LLVMFuzzerTestOneInput (const guint8 *data, size_t size)
{
  g_autoptr (GPtrArray) drafts = NULL;

  set_up ();
  g_assert_true (g_file_set_contents (file, (const char *) data, (gssize) size, NULL));
  drafts = rw_drafts_left (folder);
  for (guint i = 0; i < drafts->len; i++)
    {
      const RwDraft *draft = g_ptr_array_index (drafts, i);

      g_assert_true (g_utf8_validate (draft->kept, -1, NULL));
      g_assert_true (draft->of == NULL || draft->of[0] == '/');
      g_assert_nonnull (draft->project);
    }
  g_assert_true (g_file_test (file, G_FILE_TEST_EXISTS));
  return 0;
}
