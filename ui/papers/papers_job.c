#include "papers_job.h"

#include "base/work.h"

struct _RwPapersJob
{
  int             count; /* of references, all on the main thread */

  /* Set before the thread starts. */
  RwProject      *project;
  RwPapersOptions options;
  char          **only;
  char           *date, *revision, *path;
  RwPapersTask    task;
  RwPapersDone    done;

  /* Shared with it. */
  gint stop, units_done, units;

  /* Made by it, and looked at when it has ended. */
  RwPaperSet *set;
  int         pages, files;
  GError     *error;
};

static void
job_free (RwPapersJob *job)
{
  rw_project_free (job->project);
  rw_paper_set_free (job->set);
  g_strfreev (job->only);
  g_free (job->date);
  g_free (job->revision);
  g_free (job->path);
  g_clear_error (&job->error);
  g_free (job);
}

void
rw_papers_job_unref (RwPapersJob *job)
{
  if (--job->count == 0)
    job_free (job);
}

static gboolean
take_progress (int done, int of, gpointer data)
{
  RwPapersJob *job = data;

  g_atomic_int_set (&job->units_done, done);
  g_atomic_int_set (&job->units, of);
  return !g_atomic_int_get (&job->stop);
}

static void
write_folder (RwPapersJob *job)
{
  g_autoptr (GPtrArray) files = g_ptr_array_new_with_free_func (g_free);

  rw_papers_write (job->project, &job->options, job->path, files, &job->error);
  job->files = (int) files->len;
}

static void
run (gpointer data)
{
  RwPapersJob *job = data;

  switch (job->task)
    {
    case RW_PAPERS_LOOK:
      job->set = rw_paper_set_new (job->project, &job->options, &job->error);
      break;
    case RW_PAPERS_FILE:
      rw_papers_write_pdf (job->project, &job->options, job->path, &job->pages, &job->error);
      break;
    case RW_PAPERS_FOLDER:
      write_folder (job);
      break;
    }
}

static void
tell (GObject *owner, gpointer data)
{
  RwPapersJob *job = data;
  RwPapersOutcome outcome
      = { .path = job->path, .pages = job->pages, .files = job->files, .error = job->error };

  outcome.set = g_steal_pointer (&job->set);
  job->done (job, &outcome, owner);
  job->set = outcome.set;
}

RwPapersJob *
rw_papers_job_start (const RwProject       *project,
                     const RwPapersOptions *options,
                     RwPapersTask           task,
                     const char            *path,
                     RwPapersDone           done,
                     GObject               *data)
{
  static const RwWorkKind making = { run, tell, (GDestroyNotify) rw_papers_job_unref };
  RwPapersJob *job = g_new0 (RwPapersJob, 1);

  job->count = 2; /* the caller's and the work's */
  job->project = rw_project_copy (project);
  job->options = *options;
  job->only = g_strdupv ((char **) options->only);
  job->date = g_strdup (options->date);
  job->revision = g_strdup (options->revision);
  job->path = g_strdup (path);
  job->task = task;
  job->done = done;
  job->options.only = (const char **) job->only;
  job->options.date = job->date;
  job->options.revision = job->revision;
  job->options.progress = take_progress;
  job->options.progress_data = job;

  rw_work_start (&making, data, job);
  return job;
}

void
rw_papers_job_stop (RwPapersJob *job)
{
  g_atomic_int_set (&job->stop, TRUE);
}

double
rw_papers_job_share (RwPapersJob *job)
{
  int of = g_atomic_int_get (&job->units);

  return of > 0 ? (double) g_atomic_int_get (&job->units_done) / of : 0;
}
