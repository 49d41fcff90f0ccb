#include "work.h"

typedef struct
{
  const RwWorkKind *kind;
  GObject          *owner;
  gpointer          job;
} Work;

static void
run (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Work *work = data;

  work->kind->run (work->job);
  g_task_return_boolean (task, TRUE);
}

static void
on_done (GObject *source, GAsyncResult *result, gpointer data)
{
  GApplication *app = g_application_get_default ();
  Work *work = data;

  work->kind->done (work->owner, work->job);
  work->kind->free (work->job);
  g_object_unref (work->owner);
  g_free (work);
  if (app != NULL)
    g_application_release (app);
}

void
rw_work_start (const RwWorkKind *kind, GObject *owner, gpointer job)
{
  GApplication *app = g_application_get_default ();
  Work *work = g_new (Work, 1);
  g_autoptr (GTask) task = g_task_new (NULL, NULL, on_done, work);

  /* The program ends when its work has: not in the middle of a file. */
  if (app != NULL)
    g_application_hold (app);
  *work = (Work){ kind, g_object_ref (owner), job };
  g_task_set_task_data (task, work, NULL);
  g_task_run_in_thread (task, run);
}
