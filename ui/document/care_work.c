#include "care_work.h"

#include "base/work.h"

#define BUILDS_GIVEN 10000
#define SEED_GIVEN 1

/* One piece of work: what it starts from, and what comes of it. */
typedef struct
{
  RwDesign    design;
  RwMeasured  measured;
  RwSpreadJob spread_job;
  gboolean    with_spread;
  gint        stop, done; /* atomic */
  gboolean    outdated;   /* build, number or seed are others by now */
  RwBands    *bands;
  RwCare     *care;
  RwSpread   *spread;
} Job;

struct _RwCareWork
{
  GObject parent;

  RwDocument *document;
  guint       builds;
  guint64     seed;

  RwBands    *bands;
  RwCare     *care;
  RwSpread   *spread;
  gboolean    care_fresh, spread_fresh; /* of the build as it is now; bands are as fresh as care */
  gboolean    broken_off;               /* the maker does not want the spread of this build */

  Job        *job; /* at work, which owns it */
  gboolean    again, again_with_spread;
};

G_DEFINE_FINAL_TYPE (RwCareWork, rw_care_work, G_TYPE_OBJECT)

static guint changed_signal;

/* ---- at work ---- */

static void
job_free (gpointer data)
{
  Job *job = data;

  g_free (job->bands);
  g_clear_pointer (&job->care, rw_care_free);
  g_clear_pointer (&job->spread, rw_spread_free);
  g_free (job);
}

static RwBands *
work_bands_out (const Job *job)
{
  g_autofree RwResult *result = g_new (RwResult, 1);

  rw_solve (&job->design, &job->measured, result);
  return rw_bands_new (result, &job->measured);
}

static void
run (gpointer data)
{
  Job *job = data;

  job->bands = work_bands_out (job);
  job->care = rw_care_new (&job->design, &job->measured);
  if (job->care != NULL && job->with_spread)
    job->spread = rw_spread_new (job->care->bench, job->care->sensitivity, &job->spread_job);
}

static void start (RwCareWork *self, gboolean with_spread);

static void
take_results (RwCareWork *self, Job *job)
{
  g_free (self->bands);
  self->bands = g_steal_pointer (&job->bands);
  g_clear_pointer (&self->care, rw_care_free);
  self->care = g_steal_pointer (&job->care);
  self->care_fresh = TRUE;
  if (self->care != NULL && (!job->with_spread || job->spread == NULL))
    return;
  /* A build that can't be strung up has no spread either. */
  g_clear_pointer (&self->spread, rw_spread_free);
  self->spread = g_steal_pointer (&job->spread);
  self->spread_fresh = TRUE;
}

static void
on_done (GObject *owner, gpointer data)
{
  RwCareWork *self = RW_CARE_WORK (owner);
  Job *job = data;

  self->job = NULL;
  if (self->again)
    {
      self->again = FALSE;
      start (self, self->again_with_spread);
      return;
    }
  if (!job->outdated)
    take_results (self, job);
  g_signal_emit (self, changed_signal, 0);
}

static void
start (RwCareWork *self, gboolean with_spread)
{
  static const RwWorkKind working_out = { run, on_done, job_free };
  Job *job = g_new0 (Job, 1);

  job->design = *rw_document_design (self->document);
  job->measured = *rw_document_measured (self->document);
  job->with_spread = with_spread;
  job->spread_job = (RwSpreadJob){ .builds = self->builds, .seed = self->seed, .threads = g_get_num_processors (),
                                   .stop = &job->stop, .done = &job->done };
  self->job = job;
  rw_work_start (&working_out, G_OBJECT (self), job);
  g_signal_emit (self, changed_signal, 0);
}

void
rw_care_work_want (RwCareWork *self, gboolean spread)
{
  gboolean with_spread = spread && !self->broken_off;

  if (self->care_fresh && (self->spread_fresh || !with_spread))
    return;
  if (self->job == NULL)
    start (self, with_spread);
  else if (self->job->outdated || (with_spread && !self->job->with_spread))
    {
      self->again = TRUE;
      self->again_with_spread = with_spread;
    }
}

/* What is at work is no longer what is wanted. */
static void
outdate (RwCareWork *self)
{
  self->spread_fresh = self->broken_off = FALSE;
  if (self->job == NULL)
    return;
  self->job->outdated = TRUE;
  g_atomic_int_set (&self->job->stop, 1);
}

static void
on_noted (RwCareWork *self, RwChange what)
{
  if (!(what & (RW_CHANGE_NUMBERS | RW_CHANGE_PROJECT)))
    return;
  self->care_fresh = FALSE;
  outdate (self);
}

void
rw_care_work_set (RwCareWork *self, guint builds, guint64 seed)
{
  if (builds == self->builds && seed == self->seed)
    return;
  self->builds = builds;
  self->seed = seed;
  outdate (self);
}

void
rw_care_work_stop (RwCareWork *self)
{
  self->broken_off = TRUE;
  self->again = FALSE;
  if (self->job != NULL)
    g_atomic_int_set (&self->job->stop, 1);
}

/* ---- results ---- */

const RwCare *
rw_care_work_care (RwCareWork *self)
{
  return self->care;
}

const RwSpread *
rw_care_work_spread (RwCareWork *self)
{
  return self->spread;
}

const RwBands *
rw_care_work_bands (RwCareWork *self)
{
  return self->bands;
}

gboolean
rw_care_work_failed (RwCareWork *self)
{
  return self->care_fresh && self->care == NULL;
}

double
rw_care_work_progress (RwCareWork *self)
{
  if (self->job == NULL || !self->job->with_spread)
    return -1;
  return (double) g_atomic_int_get (&self->job->done) / self->job->spread_job.builds;
}

/* ---- making and unmaking ---- */

static void
rw_care_work_finalize (GObject *object)
{
  RwCareWork *self = RW_CARE_WORK (object);

  g_object_set_data (G_OBJECT (self->document), "rw-care-work", NULL);
  g_clear_object (&self->document);
  g_free (self->bands);
  g_clear_pointer (&self->care, rw_care_free);
  g_clear_pointer (&self->spread, rw_spread_free);
  G_OBJECT_CLASS (rw_care_work_parent_class)->finalize (object);
}

static void
rw_care_work_class_init (RwCareWorkClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = rw_care_work_finalize;
  changed_signal = g_signal_new ("changed", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                 G_TYPE_NONE, 0);
}

static void
rw_care_work_init (RwCareWork *self)
{
  self->builds = BUILDS_GIVEN;
  self->seed = SEED_GIVEN;
}

RwCareWork *
rw_care_work_of (RwDocument *document)
{
  RwCareWork *self = g_object_get_data (G_OBJECT (document), "rw-care-work");

  if (self != NULL)
    return g_object_ref (self);
  self = g_object_new (RW_TYPE_CARE_WORK, NULL);
  self->document = g_object_ref (document);
  g_object_set_data (G_OBJECT (document), "rw-care-work", self);
  g_signal_connect_object (document, "noted", G_CALLBACK (on_noted), self, G_CONNECT_SWAPPED);
  return self;
}
