/* Work in a thread: nothing of the window's may end in a thread, whichever side lets go last.  Which one does is
 * chance, about one in fifty for the thread, so each kind of work is left many times. */
#include "document/care_work.h"
#include "document/stock_work.h"
#include "papers/papers_job.h"

#include "io/file_error.h"

/* ---- where things end ---- */

typedef struct
{
  GThread *thread; /* that it ended in; NULL: it lives */
} End;

static void
on_end (gpointer data, GObject *gone)
{
  g_atomic_pointer_set (&((End *) data)->thread, g_thread_self ());
}

/* Lets go of an object that is at work, and waits for its end. */
static void
leave (gpointer object)
{
  End end = { NULL };

  g_object_weak_ref (object, on_end, &end);
  g_object_unref (object);
  while (g_atomic_pointer_get (&end.thread) == NULL)
    if (!g_main_context_iteration (NULL, FALSE))
      g_usleep (1000);
  g_assert_true (end.thread == g_thread_self ());
}

/* ---- work ---- */

static void
leave_care (void)
{
  RwDocument *document = rw_document_new ();
  RwCareWork *work = rw_care_work_of (document);

  rw_care_work_want (work, FALSE);
  g_object_unref (document);
  leave (work);
}

static void
leave_stock (void)
{
  RwDocument *document = rw_document_new ();
  RwStockWork *work = rw_stock_work_new (document);
  g_autoptr (RwShelf) shelf = rw_shelf_new ();

  rw_stock_work_want (work, shelf);
  rw_stock_work_stop (work);
  g_object_unref (document);
  leave (work);
}

static void
on_papers (RwPapersJob *job, RwPapersOutcome *outcome, gpointer data)
{
  g_assert_error (outcome->error, RW_FILE_ERROR, RW_FILE_ERROR_STOPPED);
  rw_papers_job_unref (job);
}

static void
leave_papers (void)
{
  GObject *window = g_object_new (G_TYPE_OBJECT, NULL);
  g_autoptr (RwProject) project = rw_project_new ();
  RwPapersOptions options = { .paper = rw_paper_find ("a4"), .style = RW_STYLE_FILE, .date = "2026-05-04" };

  rw_papers_job_stop (
      rw_papers_job_start (project, &options, RW_PAPERS_LOOK, NULL, on_papers, window));
  leave (window);
}

typedef struct
{
  const char *path;
  void (*leave) (void);
  int         times;
} Case;

static void
repeat (gconstpointer data)
{
  const Case *kind = data;

  for (int i = 0; i < kind->times; i++)
    kind->leave ();
}

int
main (int argc, char **argv)
{
  static const Case cases[] = {
    { "/threads/care", leave_care, 50 },
    { "/threads/stock", leave_stock, 500 },
    { "/threads/papers", leave_papers, 100 },
  };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    g_test_add_data_func (cases[i].path, &cases[i], repeat);
  return g_test_run ();
}
