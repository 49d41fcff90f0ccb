#include "canvas_raster.h"

#include <math.h>

#include "canvas_stamp.h"

/* Memory for patches, of the size of the widget.  There are two of them, to be painted on in turn: the nodes
 * of the last frame stay in use until the next has been shown.
 *
 * The surface shows the memory and is never drawn on itself: bands are painted through surfaces of their own.
 * So no node ever has cause to copy what it shows. */
typedef struct
{
  guchar          *pixels;
  cairo_surface_t *surface;
  RwRasterJob      made_for; /* its size */
} Pad;

/* What is shown is cut into tiles: the renderer copies a node two or three times on its way to the screen, and
 * a tile stays in the processor's cache meanwhile.  Device pixels. */
#define TILE_WIDTH 256
#define TILE_HEIGHT 64

struct _RwRaster
{
  /* The picture. */
  cairo_surface_t *surface;
  GPtrArray       *tiles; /* of GskRenderNode; NULL: there is no picture */
  RwStamps        *stamps;
  RwRasterJob      painted; /* as it was then; the pointers are only compared */

  GPtrArray      *patches; /* of GskRenderNode; NULL: to be found again */
  cairo_region_t *patched; /* by them, pixels of the widget */
  Pad             pads[2];
  int             pad; /* the one that was painted on last */
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
  g_clear_pointer (&self->patched, cairo_region_destroy);
}

void
rw_raster_forget (RwRaster *self)
{
  rw_raster_touch (self);
  g_clear_pointer (&self->tiles, g_ptr_array_unref);
  g_clear_pointer (&self->surface, cairo_surface_destroy);
  g_clear_pointer (&self->stamps, rw_stamps_free);
}

static void
clear_pad (Pad *pad)
{
  g_clear_pointer (&pad->surface, cairo_surface_destroy);
  g_clear_pointer (&pad->pixels, g_free);
}

void
rw_raster_free (RwRaster *self)
{
  rw_raster_forget (self);
  for (int i = 0; i < 2; i++)
    clear_pad (&self->pads[i]);
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
  return self->tiles != NULL && self->painted.place.zoom == job->place.zoom
         && self->painted.palette == job->palette && self->painted.width == job->width
         && self->painted.height == job->height && self->painted.device_scale == job->device_scale;
}

static double
tile_width (const RwRasterJob *job)
{
  return (double) TILE_WIDTH / job->device_scale;
}

static double
tile_height (const RwRasterJob *job)
{
  return (double) TILE_HEIGHT / job->device_scale;
}

/* Adds the tiles of the picture that a box touches, as far as they are in sight: so each tile is shown from the
 * picture or from a patch, and none of them twice. */
static void
add_box (const RwRaster *self, const RwRasterJob *job, RwBox box, cairo_region_t *region)
{
  double wide = tile_width (job), high = tile_height (job);
  RwPoint shift = is_usable (self, job) ? shift_of (self, job) : (RwPoint){ 0, 0 };
  RwBox all = { shift.x + wide * floor ((box.x0 - shift.x) / wide), shift.y + high * floor ((box.y0 - shift.y) / high),
                shift.x + wide * ceil ((box.x1 - shift.x) / wide), shift.y + high * ceil ((box.y1 - shift.y) / high) };
  RwBox seen = { MAX (all.x0, 0), MAX (all.y0, 0), MIN (all.x1, job->width), MIN (all.y1, job->height) };
  cairo_rectangle_int_t area = { (int) seen.x0, (int) seen.y0, (int) (seen.x1 - seen.x0),
                                 (int) (seen.y1 - seen.y0) };

  if (area.width > 0 && area.height > 0)
    cairo_region_union_rectangle (region, &area);
}

/* Strips that have come into sight at the sides of a moved picture. */
static void
add_strips (const RwRaster *self, const RwRasterJob *job, cairo_region_t *region)
{
  RwPoint d = shift_of (self, job);
  double w = job->width, h = job->height;

  if (d.x != 0)
    add_box (self, job, d.x > 0 ? (RwBox){ 0, 0, d.x, h } : (RwBox){ w + d.x, 0, w, h }, region);
  if (d.y != 0)
    add_box (self, job, d.y > 0 ? (RwBox){ 0, 0, w, d.y } : (RwBox){ 0, h + d.y, w, h }, region);
}

static void
add_changes (const RwRaster *self, const RwRasterJob *job, double grain, cairo_region_t *region)
{
  g_autoptr (RwStamps) stamps = rw_stamps_new (job->layout, job->ghost);
  g_autoptr (GArray) changed = rw_stamps_diff (self->stamps, stamps, grain);

  for (guint i = 0; i < changed->len; i++)
    {
      RwBox box = g_array_index (changed, RwBox, i);

      add_box (self, job, (RwBox){ box.x0 + job->place.x, box.y0 + job->place.y, box.x1 + job->place.x,
                                   box.y1 + job->place.y }, region);
    }
}

/* Boxes that cover the region and do not overlap: they are painted at the same time. */
static GArray *
boxes_of (const cairo_region_t *region)
{
  GArray *boxes = g_array_new (FALSE, FALSE, sizeof (RwBox));

  for (int i = 0; i < cairo_region_num_rectangles (region); i++)
    {
      cairo_rectangle_int_t area;
      RwBox box;

      cairo_region_get_rectangle (region, i, &area);
      box = (RwBox){ area.x, area.y, area.x + area.width, area.y + area.height };
      g_array_append_val (boxes, box);
    }
  return boxes;
}

/* Where the picture does not show the drawing as it is, down to grain; pixels. */
static cairo_region_t *
wrong_region (const RwRaster *self, const RwRasterJob *job, double grain)
{
  cairo_region_t *region = cairo_region_create ();

  if (is_usable (self, job))
    {
      add_strips (self, job, region);
      add_changes (self, job, grain, region);
    }
  else
    add_box (self, job, (RwBox){ 0, 0, job->width, job->height }, region);
  return region;
}

/* ---- tiles ---- */

/* Drawn, not shown as a texture, which the renderer would have to convert anew in every frame, in sight or
 * not. */
static GskRenderNode *
tile_node (cairo_surface_t *surface, RwBox tile)
{
  GskRenderNode *node = gsk_cairo_node_new (&GRAPHENE_RECT_INIT (tile.x0, tile.y0, tile.x1 - tile.x0,
                                                                 tile.y1 - tile.y0));
  cairo_t *cr = gsk_cairo_node_get_draw_context (node);

  cairo_set_source_surface (cr, surface, 0, 0);
  cairo_set_operator (cr, CAIRO_OPERATOR_SOURCE);
  cairo_paint (cr);
  cairo_destroy (cr);
  return node;
}

/* Cuts a box of the widget into tiles and adds their nodes. */
static void
add_tiles (GPtrArray *nodes, const RwRasterJob *job, RwBox box, cairo_surface_t *surface)
{
  double wide = tile_width (job), high = tile_height (job);

  for (double y = box.y0; y < box.y1; y += high)
    for (double x = box.x0; x < box.x1; x += wide)
      g_ptr_array_add (nodes, tile_node (surface, (RwBox){ x, y, MIN (x + wide, box.x1),
                                                           MIN (y + high, box.y1) }));
}

/* ---- the picture ---- */

static cairo_surface_t *
surface_new (const RwRasterJob *job)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, job->width * job->device_scale,
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

/* The surface of a node is never painted on again: the picture gets another. */
static void
paint_picture (RwRaster *self, const RwRasterJob *job, const GArray *wrong)
{
  cairo_surface_t *surface = surface_new (job);

  if (is_usable (self, job))
    take_over (self, job, surface);
  cairo_surface_flush (surface);
  rw_bands_paint (job, wrong, cairo_image_surface_get_data (surface), FALSE);
  cairo_surface_mark_dirty (surface);

  rw_raster_forget (self);
  self->surface = surface;
  self->tiles = g_ptr_array_new_with_free_func ((GDestroyNotify) gsk_render_node_unref);
  add_tiles (self->tiles, job, (RwBox){ 0, 0, job->width, job->height }, surface);
  self->stamps = rw_stamps_new (job->layout, job->ghost);
  self->painted = *job;
}

/* Brings the picture up to date; it is left alone where it is right already. */
static void
refresh_picture (RwRaster *self, const RwRasterJob *job)
{
  cairo_region_t *region = wrong_region (self, job, 0);
  g_autoptr (GArray) wrong = boxes_of (region);
  RwPoint shift = shift_of (self, job);

  if (self->tiles == NULL || wrong->len > 0 || shift.x != 0 || shift.y != 0)
    paint_picture (self, job, wrong);
  cairo_region_destroy (region);
}

/* ---- the patches ---- */

/* The other pad, made anew where the widget has another size. */
static Pad *
turn_pad (RwRaster *self, const RwRasterJob *job)
{
  Pad *pad = &self->pads[self->pad ^= 1];

  if (pad->surface == NULL || pad->made_for.width != job->width || pad->made_for.height != job->height
      || pad->made_for.device_scale != job->device_scale)
    {
      clear_pad (pad);
      pad->pixels = g_malloc ((gsize) rw_bands_stride (job) * (gsize) (job->height * job->device_scale));
      pad->surface = rw_bands_surface (job, pad->pixels, (RwBox){ 0, 0, job->width, job->height });
      pad->made_for = *job;
    }
  return pad;
}

static void
paint_patches (RwRaster *self, const RwRasterJob *job)
{
  g_autoptr (GArray) wrong = NULL;
  Pad *pad;

  self->patched = wrong_region (self, job, COARSE);
  self->patches = g_ptr_array_new_with_free_func ((GDestroyNotify) gsk_render_node_unref);
  wrong = boxes_of (self->patched);
  if (wrong->len == 0)
    return;

  pad = turn_pad (self, job);
  rw_bands_paint (job, wrong, pad->pixels, TRUE);
  for (guint i = 0; i < wrong->len; i++)
    add_tiles (self->patches, job, g_array_index (wrong, RwBox, i), pad->surface);
}

/* ---- both ---- */

/* Is there anything of a tile beside the patches? */
static gboolean
shows (const RwRaster *self, const GskRenderNode *tile, RwPoint shift)
{
  graphene_rect_t bounds;
  cairo_rectangle_int_t area;

  gsk_render_node_get_bounds ((GskRenderNode *) tile, &bounds);
  area = (cairo_rectangle_int_t){ (int) (bounds.origin.x + shift.x), (int) (bounds.origin.y + shift.y),
                                  (int) bounds.size.width, (int) bounds.size.height };
  return cairo_region_contains_rectangle (self->patched, &area) != CAIRO_REGION_OVERLAP_IN;
}

void
rw_raster_append (RwRaster *self, GtkSnapshot *snapshot, const RwRasterJob *job, gboolean moving)
{
  RwPoint shift;

  if (job->width < 1 || job->height < 1)
    return;
  if (self->patches == NULL)
    {
      if (self->tiles == NULL || !moving)
        refresh_picture (self, job);
      paint_patches (self, job);
    }

  shift = shift_of (self, job);
  gtk_snapshot_save (snapshot);
  gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (shift.x, shift.y));
  for (guint i = 0; i < self->tiles->len; i++)
    if (shows (self, g_ptr_array_index (self->tiles, i), shift))
      gtk_snapshot_append_node (snapshot, g_ptr_array_index (self->tiles, i));
  gtk_snapshot_restore (snapshot);
  for (guint i = 0; i < self->patches->len; i++)
    gtk_snapshot_append_node (snapshot, g_ptr_array_index (self->patches, i));
}
