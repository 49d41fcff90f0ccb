#include "canvas_bands.h"

#include <math.h>

#include "io/paint_quick.h"

/* A box of the whole widget is cut into so many bands, a smaller one into fewer: enough for both hands to end
 * at about the same time. */
#define BANDS 4

typedef struct
{
  const RwRasterJob *job;
  guchar            *pixels;
  const RwQuick     *quick; /* NULL: the good painter */
  GArray            *bands; /* of RwBox */
  int                next;  /* the next one to take, by either hand */
  GMutex             mutex;
  GCond              done;
  gboolean           helping;
} Task;

int
rw_bands_stride (const RwRasterJob *job)
{
  return cairo_format_stride_for_width (CAIRO_FORMAT_ARGB32, job->width * job->device_scale);
}

cairo_surface_t *
rw_bands_surface (const RwRasterJob *job, guchar *pixels, RwBox box)
{
  int scale = job->device_scale, stride = rw_bands_stride (job);
  gsize first = (gsize) (box.y0 * scale) * stride + (gsize) (box.x0 * scale) * 4;
  cairo_surface_t *surface
      = cairo_image_surface_create_for_data (pixels + first, CAIRO_FORMAT_ARGB32, (int) ((box.x1 - box.x0) * scale),
                                             (int) ((box.y1 - box.y0) * scale), stride);

  cairo_surface_set_device_scale (surface, scale, scale);
  cairo_surface_set_device_offset (surface, -box.x0 * scale, -box.y0 * scale);
  return surface;
}

/* The paper, and what is drawn on it but dimensions and lettering. */
static void
paint_quickly (const Task *task, RwBox band)
{
  int scale = task->job->device_scale;
  RwPixels pixels = {
    .first = (guint32 *) (gpointer) task->pixels,
    .stride = (gsize) rw_bands_stride (task->job) / sizeof (guint32),
    .x0 = (int) band.x0 * scale,
    .y0 = (int) band.y0 * scale,
    .x1 = (int) band.x1 * scale,
    .y1 = (int) band.y1 * scale,
  };

  rw_quick_paint (task->quick, &pixels);
}

static void
paint_band (const Task *task, RwBox band)
{
  const RwRasterJob *job = task->job;
  const RwColour *paper = &job->palette->paper;
  double pixel = 1 / (RW_PX_PER_PAPER_MM * job->device_scale);
  cairo_surface_t *surface;
  cairo_t *cr;

  if (task->quick != NULL)
    paint_quickly (task, band);
  surface = rw_bands_surface (job, task->pixels, band);
  cr = cairo_create (surface);
  if (task->quick == NULL)
    {
      cairo_set_source_rgb (cr, paper->r, paper->g, paper->b);
      cairo_paint (cr);
    }
  cairo_translate (cr, job->place.x, job->place.y);
  cairo_scale (cr, RW_PX_PER_PAPER_MM, RW_PX_PER_PAPER_MM);
  if (task->quick != NULL)
    rw_paint_dimensions (cr, job->layout, job->palette, pixel);
  else
    rw_paint_with_ghost (cr, job->layout, job->ghost, job->palette, pixel);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}

static void
paint_bands (Task *task)
{
  int band;

  while ((band = g_atomic_int_add (&task->next, 1)) < (int) task->bands->len)
    paint_band (task, g_array_index (task->bands, RwBox, band));
}

static void
help (gpointer data, gpointer user_data)
{
  Task *task = data;

  paint_bands (task);
  g_mutex_lock (&task->mutex);
  task->helping = FALSE;
  g_cond_signal (&task->done);
  g_mutex_unlock (&task->mutex);
}

/* The second hand; NULL where there is one processor. */
static GThreadPool *
helper (void)
{
  static gsize made;
  static GThreadPool *pool;

  if (g_once_init_enter (&made))
    {
      if (g_get_num_processors () > 1)
        pool = g_thread_pool_new (help, NULL, 1, TRUE, NULL);
      g_once_init_leave (&made, 1);
    }
  return pool;
}

static void
cut (const RwRasterJob *job, RwBox box, GArray *bands)
{
  double share = (box.x1 - box.x0) * (box.y1 - box.y0) / ((double) job->width * job->height);
  int count = CLAMP ((int) ceil (BANDS * share), 1, BANDS);

  for (int i = 0; i < count; i++)
    {
      RwBox band = { box.x0, floor (box.y0 + (box.y1 - box.y0) * i / count), box.x1,
                     floor (box.y0 + (box.y1 - box.y0) * (i + 1) / count) };

      if (band.y1 > band.y0)
        g_array_append_val (bands, band);
    }
}

void
rw_bands_paint (const RwRasterJob *job, const GArray *boxes, guchar *pixels, gboolean quickly)
{
  int scale = job->device_scale;
  RwPoint origin = { job->place.x * scale, job->place.y * scale };
  g_autoptr (RwQuick) quick
      = quickly ? rw_quick_new (job->layout, job->ghost, job->palette, origin, RW_PX_PER_PAPER_MM * scale) : NULL;
  Task task = { .job = job, .pixels = pixels, .quick = quick };

  task.bands = g_array_new (FALSE, FALSE, sizeof (RwBox));
  for (guint i = 0; i < boxes->len; i++)
    cut (job, g_array_index (boxes, RwBox, i), task.bands);

  g_mutex_init (&task.mutex);
  g_cond_init (&task.done);
  task.helping = task.bands->len > 1 && helper () != NULL; /* before the other hand can have ended */
  if (task.helping)
    g_thread_pool_push (helper (), &task, NULL);
  paint_bands (&task);

  g_mutex_lock (&task.mutex);
  while (task.helping)
    g_cond_wait (&task.done, &task.mutex);
  g_mutex_unlock (&task.mutex);
  g_mutex_clear (&task.mutex);
  g_cond_clear (&task.done);
  g_array_unref (task.bands);
}
