#include "draft.h"

#include <fcntl.h>
#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>
#include <string.h>
#include <sys/file.h>
#include <unistd.h>

#include "json_scan.h"
#include "project_file.h"
#include "read_file.h"
#include "save.h"

#define FIRST_LINE "rimwright-draft 1\n"
#define ENDING ".rimwright"
#define LOCK_ENDING ".lock"
#define MAX_BYTES (RW_JSON_MAX_BYTES + 64 * 1024)

struct _RwDraftPlace
{
  char *folder;
  char *file; /* NULL until a draft is kept */
  char *lock_file;
  int   lock;
};

/* ---- locks ---- */

/* Takes the lock; -1 where another program holds it or it can't be opened. */
static int
take_lock (const char *lock_file)
{
  int lock = g_open (lock_file, O_RDWR | O_CREAT | O_CLOEXEC, 0600);

  if (lock >= 0 && flock (lock, LOCK_EX | LOCK_NB) != 0)
    {
      close (lock);
      lock = -1;
    }
  return lock;
}

static char *
lock_file_of (const char *file)
{
  return g_strdup_printf ("%.*s" LOCK_ENDING, (int) (strlen (file) - strlen (ENDING)), file);
}

/* ---- keeping ---- */

RwDraftPlace *
rw_draft_place_new (const char *folder)
{
  RwDraftPlace *place = g_new0 (RwDraftPlace, 1);

  place->folder = g_strdup (folder);
  place->lock = -1;
  return place;
}

static void
leave (RwDraftPlace *place)
{
  if (place->lock >= 0)
    close (place->lock);
  place->lock = -1;
  g_clear_pointer (&place->file, g_free);
  g_clear_pointer (&place->lock_file, g_free);
}

void
rw_draft_place_free (RwDraftPlace *place)
{
  if (place == NULL)
    return;
  leave (place);
  g_free (place->folder);
  g_free (place);
}

/* A name of its own for the draft, and its lock held, before there is a draft that could be found. */
static gboolean
settle_down (RwDraftPlace *place, GError **error)
{
  for (int tries = 0; place->file == NULL && tries < 100; tries++)
    {
      g_autofree char *name = g_strdup_printf ("%08x%08x" ENDING, g_random_int (), g_random_int ());
      g_autofree char *file = g_build_filename (place->folder, name, NULL);
      g_autofree char *lock_file = lock_file_of (file);

      if (g_mkdir_with_parents (place->folder, 0700) != 0)
        break;
      if (g_file_test (file, G_FILE_TEST_EXISTS) || (place->lock = take_lock (lock_file)) < 0)
        continue;
      place->file = g_steal_pointer (&file);
      place->lock_file = g_steal_pointer (&lock_file);
    }
  if (place->file == NULL)
    g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS, _("Unsaved work can’t be kept in %s"), place->folder);
  return place->file != NULL;
}

gboolean
rw_draft_keep (RwDraftPlace *place, const char *text, const char *of, const char *kept, GError **error)
{
  g_autofree char *uri = of != NULL ? g_filename_to_uri (of, NULL, NULL) : NULL;
  g_autofree char *bytes
      = g_strdup_printf (FIRST_LINE "of %s\nkept %s\n%s", uri != NULL ? uri : "", kept, text);

  return settle_down (place, error) && rw_save_bytes (place->file, bytes, strlen (bytes), error);
}

void
rw_draft_drop (RwDraftPlace *place)
{
  if (place->file == NULL)
    return;
  g_unlink (place->file);
  g_unlink (place->lock_file);
  leave (place);
}

/* ---- finding ---- */

static void
draft_free (RwDraft *draft)
{
  g_free (draft->file);
  g_free (draft->of);
  g_free (draft->kept);
  rw_project_free (draft->project);
  g_free (draft);
}

/* What follows a word on the next line; moves on behind the line.  NULL if the line does not begin so. */
static char *
next_line (char **at, const char *word)
{
  char *end = strchr (*at, '\n'), *rest = NULL;

  if (end != NULL && g_str_has_prefix (*at, word))
    {
      rest = g_strndup (*at + strlen (word), (gsize) (end - *at) - strlen (word));
      *at = end + 1;
    }
  return rest;
}

static RwDraft *
read_text (const char *file, char *at)
{
  g_autofree char *uri = NULL, *kept = NULL;
  RwProject *project;
  RwDraft *draft;

  if (!g_str_has_prefix (at, FIRST_LINE))
    return NULL;
  at += strlen (FIRST_LINE);
  uri = next_line (&at, "of ");
  kept = next_line (&at, "kept ");
  project = uri != NULL && kept != NULL ? rw_project_from_text (at, -1, NULL) : NULL;
  if (project == NULL)
    return NULL;

  draft = g_new0 (RwDraft, 1);
  draft->file = g_strdup (file);
  draft->of = *uri != '\0' ? g_filename_from_uri (uri, NULL, NULL) : NULL;
  draft->kept = g_utf8_make_valid (kept, -1);
  draft->project = project;
  return draft;
}

/* NULL where it is none. */
static RwDraft *
read_draft (const char *file)
{
  GString *text = rw_read_file (file, MAX_BYTES, NULL);
  RwDraft *draft = text != NULL ? read_text (file, text->str) : NULL;

  if (text != NULL)
    g_string_free (text, TRUE);
  return draft;
}

/* Whether no running program keeps the draft. */
static gboolean
left_behind (const char *file)
{
  g_autofree char *lock_file = lock_file_of (file);
  int lock = take_lock (lock_file);

  if (lock >= 0)
    close (lock);
  return lock >= 0;
}

/* Moments of one zone sort as text; others by no more than a day, which is good enough for an order. */
static int
later_first (gconstpointer a, gconstpointer b)
{
  return strcmp ((*(RwDraft *const *) b)->kept, (*(RwDraft *const *) a)->kept);
}

GPtrArray *
rw_drafts_left (const char *folder)
{
  GPtrArray *drafts = g_ptr_array_new_with_free_func ((GDestroyNotify) draft_free);
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *file = g_build_filename (folder, name, NULL);
      RwDraft *draft = g_str_has_suffix (name, ENDING) && left_behind (file) ? read_draft (file) : NULL;

      if (draft != NULL)
        g_ptr_array_add (drafts, draft);
    }
  g_ptr_array_sort (drafts, later_first);
  return drafts;
}

gboolean
rw_draft_adopt (RwDraftPlace *place, const RwDraft *draft)
{
  g_autofree char *lock_file = lock_file_of (draft->file);
  int lock = take_lock (lock_file);

  if (lock < 0)
    return FALSE;
  rw_draft_drop (place);
  place->file = g_strdup (draft->file);
  place->lock_file = g_steal_pointer (&lock_file);
  place->lock = lock;
  return TRUE;
}

void
rw_draft_forget (const RwDraft *draft)
{
  g_autofree char *lock_file = lock_file_of (draft->file);

  g_unlink (draft->file);
  g_unlink (lock_file);
}
