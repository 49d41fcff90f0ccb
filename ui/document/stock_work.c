#include "stock_work.h"

#include "base/work.h"

typedef struct
{
  RwDesign   design;
  RwMeasured measured;
  RwShelf   *shelf;
  gint       stop; /* atomic */
  RwDesign   used;
  RwCutting *cutting;
  GPtrArray *remedies;
} Job;

struct _RwStockWork
{
  GObject parent;

  RwDocument *document;
  RwCutting  *cutting;
  GPtrArray  *remedies;
  RwDesign    used;
  Job        *job;  /* at work, which owns it */
  RwShelf    *next; /* wanted when it has ended */
  gboolean    given_up;
};

G_DEFINE_FINAL_TYPE (RwStockWork, rw_stock_work, G_TYPE_OBJECT)

static guint changed_signal;

static void
job_free (gpointer data)
{
  Job *job = data;

  rw_shelf_free (job->shelf);
  g_clear_pointer (&job->cutting, rw_cutting_free);
  g_clear_pointer (&job->remedies, g_ptr_array_unref);
  g_free (job);
}

static gboolean
go_on (gpointer data)
{
  return !g_atomic_int_get (&((Job *) data)->stop);
}

static void
run (gpointer data)
{
  Job *job = data;
  g_autofree RwResult *result = g_new (RwResult, 1);

  rw_solve (&job->design, &job->measured, result);
  job->used = result->used;
  job->cutting = rw_cutting_new (result, job->shelf, FALSE, go_on, job);
  job->remedies = rw_stock_remedies (&job->design, &job->measured, job->shelf, job->cutting, go_on, job);
}

static void start (RwStockWork *self, RwShelf *shelf);

static void
take_results (RwStockWork *self, Job *job)
{
  g_clear_pointer (&self->cutting, rw_cutting_free);
  g_clear_pointer (&self->remedies, g_ptr_array_unref);
  self->cutting = g_steal_pointer (&job->cutting);
  self->remedies = g_steal_pointer (&job->remedies);
  self->used = job->used;
}

static void
on_done (GObject *owner, gpointer job)
{
  RwStockWork *self = RW_STOCK_WORK (owner);

  self->job = NULL;
  if (self->next != NULL)
    {
      start (self, g_steal_pointer (&self->next));
      return;
    }
  if (!self->given_up)
    take_results (self, job);
  g_signal_emit (self, changed_signal, 0);
}

/* Takes the shelf over. */
static void
start (RwStockWork *self, RwShelf *shelf)
{
  static const RwWorkKind planning = { run, on_done, job_free };
  Job *job = g_new0 (Job, 1);

  job->design = *rw_document_design (self->document);
  job->measured = *rw_document_measured (self->document);
  job->shelf = shelf;
  self->job = job;
  self->given_up = FALSE;
  rw_work_start (&planning, G_OBJECT (self), job);
  g_signal_emit (self, changed_signal, 0);
}

void
rw_stock_work_want (RwStockWork *self, const RwShelf *shelf)
{
  if (self->job == NULL)
    {
      start (self, rw_shelf_copy (shelf));
      return;
    }
  rw_shelf_free (self->next);
  self->next = rw_shelf_copy (shelf);
  g_atomic_int_set (&self->job->stop, 1);
}

void
rw_stock_work_stop (RwStockWork *self)
{
  g_clear_pointer (&self->next, rw_shelf_free);
  self->given_up = TRUE;
  if (self->job != NULL)
    g_atomic_int_set (&self->job->stop, 1);
}

gboolean
rw_stock_work_busy (RwStockWork *self)
{
  return self->job != NULL;
}

const RwCutting *
rw_stock_work_cutting (RwStockWork *self)
{
  return self->cutting;
}

const GPtrArray *
rw_stock_work_remedies (RwStockWork *self)
{
  return self->remedies;
}

const RwDesign *
rw_stock_work_design (RwStockWork *self)
{
  return &self->used;
}

static void
rw_stock_work_finalize (GObject *object)
{
  RwStockWork *self = RW_STOCK_WORK (object);

  g_clear_object (&self->document);
  g_clear_pointer (&self->cutting, rw_cutting_free);
  g_clear_pointer (&self->remedies, g_ptr_array_unref);
  g_clear_pointer (&self->next, rw_shelf_free);
  G_OBJECT_CLASS (rw_stock_work_parent_class)->finalize (object);
}

static void
rw_stock_work_class_init (RwStockWorkClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = rw_stock_work_finalize;
  changed_signal = g_signal_new ("changed", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                 G_TYPE_NONE, 0);
}

static void
rw_stock_work_init (RwStockWork *self)
{
}

RwStockWork *
rw_stock_work_new (RwDocument *document)
{
  RwStockWork *self = g_object_new (RW_TYPE_STOCK_WORK, NULL);

  self->document = g_object_ref (document);
  return self;
}
