#include "canvas_bands.h"

#include <math.h>

#include "io/paint_quick.h"

/* What is painted is cut into about so many bands: enough for both hands to end at about the same time, and few
 * since each costs something by itself. */
#define BANDS 4
#define LEAST_AREA 10000.0 /* pixels */

/* Boxes that one hand paints at a go, from first to before end. */
typedef struct
{
  guint first, end;
} Band;

typedef struct
{
  const RwRasterJob *job;
  guchar            *pixels;
  const RwQuick     *quick; /* NULL: the good painter */
  GArray            *boxes; /* of RwBox */
  GArray            *bands; /* of Band */
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
rw_bands_surface (const RwRasterJob *job, guchar *pixels)
{
  int scale = job->device_scale;
  cairo_surface_t *surface = cairo_image_surface_create_for_data (pixels, CAIRO_FORMAT_ARGB32, job->width * scale,
                                                                  job->height * scale, rw_bands_stride (job));

  cairo_surface_set_device_scale (surface, scale, scale);
  return surface;
}

/* The paper, and what is drawn on it but dimensions and lettering. */
static void
paint_quickly (const Task *task, RwBox box)
{
  int scale = task->job->device_scale;
  RwPixels pixels = {
    .first = (guint32 *) (gpointer) task->pixels,
    .stride = (gsize) rw_bands_stride (task->job) / sizeof (guint32),
    .x0 = (int) box.x0 * scale,
    .y0 = (int) box.y0 * scale,
    .x1 = (int) box.x1 * scale,
    .y1 = (int) box.y1 * scale,
  };

  rw_quick_paint (task->quick, &pixels);
}

/* Nothing is painted outside of the band's boxes: the other hand is at work there. */
static void
clip_to_band (const Task *task, Band band, cairo_t *cr)
{
  for (guint i = band.first; i < band.end; i++)
    {
      RwBox box = g_array_index (task->boxes, RwBox, i);

      cairo_rectangle (cr, box.x0, box.y0, box.x1 - box.x0, box.y1 - box.y0);
    }
  cairo_clip (cr);
}

static void
paint_band (const Task *task, Band band)
{
  const RwRasterJob *job = task->job;
  const RwColour *paper = &job->palette->paper;
  double pixel = 1 / (RW_PX_PER_PAPER_MM * job->device_scale);
  cairo_surface_t *surface = rw_bands_surface (job, task->pixels);
  cairo_t *cr = cairo_create (surface);

  clip_to_band (task, band, cr);
  if (task->quick != NULL)
    for (guint i = band.first; i < band.end; i++)
      paint_quickly (task, g_array_index (task->boxes, RwBox, i));
  else
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
    paint_band (task, g_array_index (task->bands, Band, band));
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

static double
area_of (RwBox box)
{
  return (box.x1 - box.x0) * (box.y1 - box.y0);
}

/* Cuts boxes into slices of no more than an area, from top to bottom. */
static GArray *
slices_of (const GArray *boxes, double most)
{
  GArray *slices = g_array_new (FALSE, FALSE, sizeof (RwBox));

  for (guint i = 0; i < boxes->len; i++)
    {
      RwBox box = g_array_index (boxes, RwBox, i);
      int count = (int) ceil (area_of (box) / most);

      for (int k = 0; k < count; k++)
        {
          RwBox slice = { box.x0, floor (box.y0 + (box.y1 - box.y0) * k / count), box.x1,
                          floor (box.y0 + (box.y1 - box.y0) * (k + 1) / count) };

          if (slice.y1 > slice.y0)
            g_array_append_val (slices, slice);
        }
    }
  return slices;
}

/* Neighbours among the boxes, until they make up an area. */
static GArray *
bands_of (const GArray *boxes, double enough)
{
  GArray *bands = g_array_new (FALSE, FALSE, sizeof (Band));
  Band band = { 0, 0 };
  double area = 0;

  for (; band.end < boxes->len;)
    {
      area += area_of (g_array_index (boxes, RwBox, band.end++));
      if (area < enough && band.end < boxes->len)
        continue;
      g_array_append_val (bands, band);
      band.first = band.end;
      area = 0;
    }
  return bands;
}

void
rw_bands_paint (const RwRasterJob *job, const GArray *boxes, guchar *pixels, gboolean quickly)
{
  int scale = job->device_scale;
  RwPoint origin = { job->place.x * scale, job->place.y * scale };
  g_autoptr (RwQuick) quick
      = quickly ? rw_quick_new (job->layout, job->ghost, job->palette, origin, RW_PX_PER_PAPER_MM * scale) : NULL;
  Task task = { .job = job, .pixels = pixels, .quick = quick };
  double area = 0;

  for (guint i = 0; i < boxes->len; i++)
    area += area_of (g_array_index (boxes, RwBox, i));
  task.boxes = slices_of (boxes, MAX (area / BANDS, 1));
  task.bands = bands_of (task.boxes, MAX (area / BANDS, LEAST_AREA));

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
  g_array_unref (task.boxes);
}
