#include "draft_keeper.h"

#include "io/project_file.h"

/* From a change to the draft that holds it; what a slow disk takes comes on top. */
#define KEEP_MS 2000

struct _RwDraftKeeper
{
  RwDocument   *document;
  RwDraftPlace *place;
  guint         timer;
  GThread      *writer;        /* has the place while it writes */
  gboolean      changed_since; /* while it was writing */
};

/* What the writer needs. */
typedef struct
{
  RwDraftKeeper *keeper;
  RwDraftPlace  *place;
  char          *text, *of, *kept;
} Job;

char *
rw_draft_folder (void)
{
  return g_build_filename (g_get_user_state_dir (), "rimwright", "drafts", NULL);
}

static void follow (RwDraftKeeper *keeper);

static gboolean
on_written (gpointer user_data)
{
  RwDraftKeeper *keeper = user_data;

  g_thread_join (g_steal_pointer (&keeper->writer));
  if (keeper->changed_since)
    follow (keeper);
  return G_SOURCE_REMOVE;
}

/* A draft that can't be written is tried again with the next change; saving the file itself speaks up. */
static gpointer
write_draft (gpointer data)
{
  Job *job = data;

  rw_draft_keep (job->place, job->text, job->of, job->kept, NULL);
  g_idle_add (on_written, job->keeper);
  g_free (job->text);
  g_free (job->of);
  g_free (job->kept);
  g_free (job);
  return NULL;
}

static gboolean
keep (gpointer user_data)
{
  RwDraftKeeper *keeper = user_data;
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  Job *job = g_new0 (Job, 1);

  job->keeper = keeper;
  job->place = keeper->place;
  job->text = rw_project_to_text (rw_document_project (keeper->document));
  job->of = g_strdup (rw_document_path (keeper->document));
  job->kept = g_date_time_format_iso8601 (now);

  keeper->timer = 0;
  keeper->changed_since = FALSE;
  keeper->writer = g_thread_new ("draft", write_draft, job);
  return G_SOURCE_REMOVE;
}

/* The first change starts the clock; later ones don't put it back. */
static void
follow (RwDraftKeeper *keeper)
{
  gboolean modified = rw_document_modified (keeper->document);

  if (keeper->writer != NULL)
    keeper->changed_since = TRUE;
  else if (!modified)
    {
      g_clear_handle_id (&keeper->timer, g_source_remove);
      rw_draft_drop (keeper->place);
    }
  else if (keeper->timer == 0)
    keeper->timer = g_timeout_add (KEEP_MS, keep, keeper);
}

RwDraftKeeper *
rw_draft_keeper_new (RwDocument *document)
{
  RwDraftKeeper *keeper = g_new0 (RwDraftKeeper, 1);
  g_autofree char *folder = rw_draft_folder ();

  keeper->document = document;
  keeper->place = rw_draft_place_new (folder);
  g_signal_connect_swapped (document, "changed", G_CALLBACK (follow), keeper);
  g_signal_connect_swapped (document, "saved-state", G_CALLBACK (follow), keeper);
  return keeper;
}

void
rw_draft_keeper_free (RwDraftKeeper *keeper)
{
  if (keeper == NULL)
    return;
  g_signal_handlers_disconnect_by_data (keeper->document, keeper);
  g_clear_handle_id (&keeper->timer, g_source_remove);
  if (keeper->writer != NULL)
    {
      g_thread_join (keeper->writer);
      g_idle_remove_by_data (keeper);
    }
  rw_draft_drop (keeper->place);
  rw_draft_place_free (keeper->place);
  g_free (keeper);
}

void
rw_draft_keeper_adopt (RwDraftKeeper *keeper, const RwDraft *draft)
{
  if (keeper->writer == NULL)
    rw_draft_adopt (keeper->place, draft);
}
