#include "canvas_raster.h"

#include <math.h>

#include "canvas_stamp.h"

/* Memory for patches, of the size of the widget.  There are two of them, to be painted on in turn: the nodes
 * of the last frame stay in use until the next has been shown. */
typedef struct
{
  guchar    *pixels;
  gsize      size;
  GPtrArray *surfaces; /* of cairo_surface_t, for as long as nodes may show them */
} Pad;

struct _RwRaster
{
  /* The picture. */
  cairo_surface_t *surface;
  GskRenderNode   *node;
  RwStamps        *stamps;
  RwRasterJob      painted; /* as it was then; the pointers are only compared */

  GPtrArray *patches; /* of GskRenderNode; NULL: to be found again */
  gboolean   covered; /* by a patch over all of the picture */
  Pad        pads[2];
  int        pad; /* the one that was painted on last */
};

/* While things move, what has moved by less than this has not moved, pixels. */
#define COARSE 0.3

RwRaster *
rw_raster_new (void)
{
  return g_new0 (RwRaster, 1);
}

void
rw_raster_touch (RwRaster *self)
{
  g_clear_pointer (&self->patches, g_ptr_array_unref);
}

void
rw_raster_forget (RwRaster *self)
{
  rw_raster_touch (self);
  g_clear_pointer (&self->node, gsk_render_node_unref);
  g_clear_pointer (&self->surface, cairo_surface_destroy);
  g_clear_pointer (&self->stamps, rw_stamps_free);
}

void
rw_raster_free (RwRaster *self)
{
  rw_raster_forget (self);
  for (int i = 0; i < 2; i++)
    {
      g_clear_pointer (&self->pads[i].surfaces, g_ptr_array_unref);
      g_free (self->pads[i].pixels);
    }
  g_free (self);
}

/* ---- what the picture does not show ---- */

static RwPoint
shift_of (const RwRaster *self, const RwRasterJob *job)
{
  return (RwPoint){ job->place.x - self->painted.place.x, job->place.y - self->painted.place.y };
}

static gboolean
is_usable (const RwRaster *self, const RwRasterJob *job)
{
  return self->node != NULL && self->painted.place.zoom == job->place.zoom
         && self->painted.palette == job->palette && self->painted.width == job->width
         && self->painted.height == job->height && self->painted.device_scale == job->device_scale;
}

/* Adds the part of a box that is in sight. */
static void
add_box (GArray *boxes, const RwRasterJob *job, RwBox box)
{
  RwBox seen = { MAX (box.x0, 0), MAX (box.y0, 0), MIN (box.x1, job->width), MIN (box.y1, job->height) };

  if (seen.x0 < seen.x1 && seen.y0 < seen.y1)
    g_array_append_val (boxes, seen);
}

/* Strips that have come into sight at the sides of a moved picture. */
static void
add_strips (const RwRaster *self, const RwRasterJob *job, GArray *boxes)
{
  RwPoint d = shift_of (self, job);
  double w = job->width, h = job->height;

  if (d.x != 0)
    add_box (boxes, job, d.x > 0 ? (RwBox){ 0, 0, d.x, h } : (RwBox){ w + d.x, 0, w, h });
  if (d.y != 0)
    add_box (boxes, job, d.y > 0 ? (RwBox){ MAX (d.x, 0), 0, w + MIN (d.x, 0), d.y }
                                 : (RwBox){ MAX (d.x, 0), h + d.y, w + MIN (d.x, 0), h });
}

static void
add_changes (const RwRaster *self, const RwRasterJob *job, double grain, GArray *boxes)
{
  g_autoptr (RwStamps) stamps = rw_stamps_new (job->layout);
  g_autoptr (GArray) changed = rw_stamps_diff (self->stamps, stamps, grain);

  for (guint i = 0; i < changed->len; i++)
    {
      RwBox box = g_array_index (changed, RwBox, i);

      add_box (boxes, job, (RwBox){ floor (box.x0 + job->place.x), floor (box.y0 + job->place.y),
                                    ceil (box.x1 + job->place.x), ceil (box.y1 + job->place.y) });
    }
}

/* From this share on a box may as well be all: then the picture under it need not be shown. */
#define NEARLY_ALL 0.75

static gboolean
is_nearly_all (const RwRasterJob *job, RwBox box)
{
  return (box.x1 - box.x0) * (box.y1 - box.y0) > NEARLY_ALL * job->width * job->height;
}

/* Boxes that cover the same and do not overlap: they are painted at the same time. */
static GArray *
apart (GArray *boxes)
{
  GArray *cut = g_array_new (FALSE, FALSE, sizeof (RwBox));
  cairo_region_t *region = cairo_region_create ();

  for (guint i = 0; i < boxes->len; i++)
    {
      RwBox box = g_array_index (boxes, RwBox, i);
      cairo_rectangle_int_t area = { (int) box.x0, (int) box.y0, (int) (box.x1 - box.x0),
                                     (int) (box.y1 - box.y0) };

      cairo_region_union_rectangle (region, &area);
    }
  for (int i = 0; i < cairo_region_num_rectangles (region); i++)
    {
      cairo_rectangle_int_t area;
      RwBox box;

      cairo_region_get_rectangle (region, i, &area);
      box = (RwBox){ area.x, area.y, area.x + area.width, area.y + area.height };
      g_array_append_val (cut, box);
    }
  cairo_region_destroy (region);
  g_array_unref (boxes);
  return cut;
}

/* Where the picture does not show the drawing as it is, down to grain; pixels.  An array of RwBox. */
static GArray *
wrong_boxes (const RwRaster *self, const RwRasterJob *job, double grain)
{
  GArray *boxes = g_array_new (FALSE, FALSE, sizeof (RwBox));
  gboolean all = !is_usable (self, job);

  if (!all)
    {
      add_strips (self, job, boxes);
      add_changes (self, job, grain, boxes);
    }
  for (guint i = 0; i < boxes->len; i++)
    all |= is_nearly_all (job, g_array_index (boxes, RwBox, i));
  if (all)
    {
      g_array_set_size (boxes, 0);
      add_box (boxes, job, (RwBox){ 0, 0, job->width, job->height });
    }
  return apart (boxes);
}

/* ---- the picture ---- */

static cairo_surface_t *
surface_new (const RwRasterJob *job)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, job->width * job->device_scale,
                                                         job->height * job->device_scale);

  cairo_surface_set_device_scale (surface, job->device_scale, job->device_scale);
  return surface;
}

/* What the old picture has right is taken from there. */
static void
take_over (RwRaster *self, const RwRasterJob *job, cairo_surface_t *surface)
{
  RwPoint shift = shift_of (self, job);
  cairo_t *cr = cairo_create (surface);

  cairo_set_source_surface (cr, self->surface, shift.x, shift.y);
  cairo_set_operator (cr, CAIRO_OPERATOR_SOURCE);
  cairo_paint (cr);
  cairo_destroy (cr);
}

static GskRenderNode *
surface_node (cairo_surface_t *surface, RwBox box)
{
  GskRenderNode *node = gsk_cairo_node_new (&GRAPHENE_RECT_INIT (box.x0, box.y0, box.x1 - box.x0,
                                                                 box.y1 - box.y0));
  cairo_t *cr = gsk_cairo_node_get_draw_context (node);

  cairo_set_source_surface (cr, surface, 0, 0);
  cairo_set_operator (cr, CAIRO_OPERATOR_SOURCE);
  cairo_paint (cr);
  cairo_destroy (cr);
  return node;
}

/* The surface of a node is never painted on again: the picture gets another. */
static void
paint_picture (RwRaster *self, const RwRasterJob *job, const GArray *wrong)
{
  cairo_surface_t *surface = surface_new (job);

  if (is_usable (self, job))
    take_over (self, job, surface);
  cairo_surface_flush (surface);
  rw_bands_paint (job, wrong, cairo_image_surface_get_data (surface), CAIRO_ANTIALIAS_GOOD);
  cairo_surface_mark_dirty (surface);

  rw_raster_forget (self);
  self->surface = surface;
  self->node = surface_node (surface, (RwBox){ 0, 0, job->width, job->height });
  self->stamps = rw_stamps_new (job->layout);
  self->painted = *job;
}

/* ---- the patches ---- */

/* The next pad, empty and large enough. */
static Pad *
turn_pad (RwRaster *self, const RwRasterJob *job)
{
  Pad *pad = &self->pads[self->pad ^= 1];
  gsize size = (gsize) rw_bands_stride (job) * (gsize) (job->height * job->device_scale);

  g_clear_pointer (&pad->surfaces, g_ptr_array_unref);
  pad->surfaces = g_ptr_array_new_with_free_func ((GDestroyNotify) cairo_surface_destroy);
  if (pad->size < size)
    {
      g_free (pad->pixels);
      pad->pixels = g_malloc (size);
      pad->size = size;
    }
  return pad;
}

static void
paint_patches (RwRaster *self, const RwRasterJob *job)
{
  g_autoptr (GArray) wrong = wrong_boxes (self, job, COARSE);
  Pad *pad;

  self->patches = g_ptr_array_new_with_free_func ((GDestroyNotify) gsk_render_node_unref);
  self->covered = wrong->len == 1 && is_nearly_all (job, g_array_index (wrong, RwBox, 0));
  if (wrong->len == 0)
    return;

  pad = turn_pad (self, job);
  rw_bands_paint (job, wrong, pad->pixels, CAIRO_ANTIALIAS_FAST);
  for (guint i = 0; i < wrong->len; i++)
    {
      RwBox box = g_array_index (wrong, RwBox, i);
      cairo_surface_t *surface = rw_bands_surface (job, pad->pixels, box);

      g_ptr_array_add (pad->surfaces, surface);
      g_ptr_array_add (self->patches, surface_node (surface, box));
    }
}

/* ---- both ---- */

/* Brings the picture up to date; it is left alone where it is right already. */
static void
refresh_picture (RwRaster *self, const RwRasterJob *job)
{
  g_autoptr (GArray) wrong = wrong_boxes (self, job, 0);
  RwPoint shift = shift_of (self, job);

  if (self->node == NULL || wrong->len > 0 || shift.x != 0 || shift.y != 0)
    paint_picture (self, job, wrong);
}

void
rw_raster_append (RwRaster *self, GtkSnapshot *snapshot, const RwRasterJob *job, gboolean moving)
{
  RwPoint shift;

  if (job->width < 1 || job->height < 1)
    return;
  if (self->patches == NULL)
    {
      if (self->node == NULL || !moving)
        refresh_picture (self, job);
      paint_patches (self, job);
    }

  shift = shift_of (self, job);
  if (!self->covered)
    {
      gtk_snapshot_save (snapshot);
      gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (shift.x, shift.y));
      gtk_snapshot_append_node (snapshot, self->node);
      gtk_snapshot_restore (snapshot);
    }
  for (guint i = 0; i < self->patches->len; i++)
    gtk_snapshot_append_node (snapshot, g_ptr_array_index (self->patches, i));
}
