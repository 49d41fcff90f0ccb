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

/* What is shown is cut into tiles.  The renderer copies a node two or three times on its way to the screen, and a
 * tile stays in the processor's cache meanwhile; the larger a tile, the more of what has not changed is copied
 * with what has.  Device pixels. */
#define TILE_WIDTH 128
#define TILE_HEIGHT 128

struct _RwRaster
{
  /* The picture. */
  cairo_surface_t *surface;
  GPtrArray       *tiles; /* of GskRenderNode, by rows; NULL: there is no picture */
  RwStamps        *stamps;
  RwRasterJob      painted; /* as it was then; the pointers are only compared */

  GskRenderNode *shown; /* picture and patches; NULL: to be put together again */
  Pad            pads[2];
  int            pad; /* the one that was painted on last */
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
  g_clear_pointer (&self->shown, gsk_render_node_unref);
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

/* The tiles in sight, in pixels from the sheet's origin.  They are those of the picture, wherever it has been
 * moved to. */
static RwGrid *
grid_in_sight (const RwRaster *self, const RwRasterJob *job)
{
  double wide = tile_width (job), high = tile_height (job);
  RwPoint shift = is_usable (self, job) ? shift_of (self, job) : (RwPoint){ 0, 0 };
  RwPoint origin = { job->place.x - shift.x, job->place.y - shift.y };
  RwBox area = { wide * floor (-shift.x / wide) - origin.x, high * floor (-shift.y / high) - origin.y,
                 job->width - job->place.x, job->height - job->place.y };

  return rw_grid_new (area, wide, high);
}

/* Strips that have come into sight at the sides of a moved picture. */
static void
touch_strips (const RwRaster *self, const RwRasterJob *job, RwGrid *grid)
{
  RwPoint d = shift_of (self, job), at = { -job->place.x, -job->place.y };
  double w = job->width, h = job->height;

  if (d.x != 0)
    rw_grid_touch_box (grid, d.x > 0 ? (RwBox){ at.x, at.y, at.x + d.x, at.y + h }
                                     : (RwBox){ at.x + w + d.x, at.y, at.x + w, at.y + h });
  if (d.y != 0)
    rw_grid_touch_box (grid, d.y > 0 ? (RwBox){ at.x, at.y, at.x + w, at.y + d.y }
                                     : (RwBox){ at.x, at.y + h + d.y, at.x + w, at.y + h });
}

/* The tiles where the picture does not show the drawing as it is, down to grain. */
static RwGrid *
wrong_tiles (const RwRaster *self, const RwRasterJob *job, double grain)
{
  RwGrid *grid = grid_in_sight (self, job);

  if (is_usable (self, job))
    {
      g_autoptr (RwStamps) stamps = rw_stamps_new (job->layout, job->ghost);

      touch_strips (self, job, grid);
      rw_stamps_touch_changes (self->stamps, stamps, grain, grid);
    }
  else
    rw_grid_touch_box (grid, (RwBox){ -HUGE_VAL, -HUGE_VAL, HUGE_VAL, HUGE_VAL });
  return grid;
}

/* What is in sight of columns first to before end of a row; pixels of the widget. */
static RwBox
box_of (const RwGrid *grid, const RwRasterJob *job, int row, int first, int end)
{
  RwPoint corner = { grid->corner.x + job->place.x, grid->corner.y + job->place.y };

  return (RwBox){ MAX (floor (corner.x + first * grid->wide), 0), MAX (floor (corner.y + row * grid->high), 0),
                  MIN (ceil (corner.x + end * grid->wide), job->width),
                  MIN (ceil (corner.y + (row + 1) * grid->high), job->height) };
}

/* Boxes that cover the touched tiles and do not overlap: they are painted at the same time. */
static GArray *
boxes_of (const RwGrid *grid, const RwRasterJob *job)
{
  GArray *boxes = g_array_new (FALSE, FALSE, sizeof (RwBox));

  for (int row = 0; row < grid->rows; row++)
    for (int first = 0, end; first < grid->columns; first = end + 1)
      {
        const guint8 *touched = grid->touched + row * grid->columns;

        for (end = first; end < grid->columns && touched[end]; end++)
          ;
        if (end > first)
          {
            RwBox box = box_of (grid, job, row, first, end);

            g_array_append_val (boxes, box);
          }
      }
  return boxes;
}

/* ---- the picture ---- */

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

static int
columns_of (const RwRasterJob *job)
{
  return (int) ceil (job->width / tile_width (job));
}

static GPtrArray *
tiles_of (const RwRasterJob *job, cairo_surface_t *surface)
{
  GPtrArray *tiles = g_ptr_array_new_with_free_func ((GDestroyNotify) gsk_render_node_unref);
  double wide = tile_width (job), high = tile_height (job);

  for (double y = 0; y < job->height; y += high)
    for (int i = 0; i < columns_of (job); i++)
      g_ptr_array_add (tiles, tile_node (surface, (RwBox){ i * wide, y, MIN ((i + 1) * wide, job->width),
                                                           MIN (y + high, job->height) }));
  return tiles;
}

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
  self->tiles = tiles_of (job, surface);
  self->stamps = rw_stamps_new (job->layout, job->ghost);
  self->painted = *job;
}

/* Brings the picture up to date; it is left alone where it is right already. */
static void
refresh_picture (RwRaster *self, const RwRasterJob *job)
{
  g_autoptr (RwGrid) grid = wrong_tiles (self, job, 0);
  g_autoptr (GArray) wrong = boxes_of (grid, job);
  RwPoint shift = shift_of (self, job);

  if (self->tiles == NULL || wrong->len > 0 || shift.x != 0 || shift.y != 0)
    paint_picture (self, job, wrong);
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
      pad->surface = rw_bands_surface (job, pad->pixels);
      pad->made_for = *job;
    }
  return pad;
}

/* ---- both ---- */

/* The node of the picture for a tile in sight. */
static GskRenderNode *
picture_node (const RwRaster *self, const RwRasterJob *job, const RwGrid *grid, int row, int column)
{
  RwPoint shift = shift_of (self, job);
  GskRenderNode *node, *moved;
  GskTransform *transform;
  int x = (int) lround ((grid->corner.x + job->place.x - shift.x) / grid->wide) + column;
  int y = (int) lround ((grid->corner.y + job->place.y - shift.y) / grid->high) + row;

  node = g_ptr_array_index (self->tiles, y * columns_of (job) + x);
  if (shift.x == 0 && shift.y == 0)
    return gsk_render_node_ref (node);
  transform = gsk_transform_translate (NULL, &GRAPHENE_POINT_INIT (shift.x, shift.y));
  moved = gsk_transform_node_new (node, transform);
  gsk_transform_unref (transform);
  return moved;
}

/* One node for each tile in sight, always in the same order: the renderer compares them one by one with those of the
 * last frame, and paints anew where they differ. */
static GskRenderNode *
put_together (const RwRaster *self, const RwRasterJob *job, const RwGrid *patched)
{
  g_autoptr (GPtrArray) nodes = g_ptr_array_new_with_free_func ((GDestroyNotify) gsk_render_node_unref);

  for (int row = 0; row < patched->rows; row++)
    for (int i = 0; i < patched->columns; i++)
      if (patched->touched[row * patched->columns + i])
        g_ptr_array_add (nodes, tile_node (self->pads[self->pad].surface, box_of (patched, job, row, i, i + 1)));
      else
        g_ptr_array_add (nodes, picture_node (self, job, patched, row, i));
  return gsk_container_node_new ((GskRenderNode **) nodes->pdata, nodes->len);
}

static void
paint_patches (RwRaster *self, const RwRasterJob *job)
{
  g_autoptr (RwGrid) grid = wrong_tiles (self, job, COARSE);
  g_autoptr (GArray) wrong = boxes_of (grid, job);

  if (wrong->len > 0)
    rw_bands_paint (job, wrong, turn_pad (self, job)->pixels, TRUE);
  self->shown = put_together (self, job, grid);
}

void
rw_raster_append (RwRaster *self, GtkSnapshot *snapshot, const RwRasterJob *job, gboolean moving)
{
  if (job->width < 1 || job->height < 1)
    return;
  if (self->shown == NULL)
    {
      if (self->tiles == NULL || !moving)
        refresh_picture (self, job);
      paint_patches (self, job);
    }
  gtk_snapshot_append_node (snapshot, self->shown);
}
