#include "canvas_private.h"

#include <math.h>

#include "sheet/trace.h"
#include "canvas_stamp.h"
#include "theme.h"

/* Long-dashed double-dotted, for what was before (ISO 128-2), pixels. */
static const double ghost_dashes[] = { 12, 2.5, 1.5, 2.5, 1.5, 2.5 };

/* Outlines smaller than this are lost in a ghost, pixels; where so many move that the whole build does, the
 * large ones tell it all. */
#define GHOST_LEAST 20.0
#define GHOST_MANY 24
#define GHOST_LARGE 80.0

/* ---- the ghost ---- */

static gboolean
is_outline (const RwItem *item)
{
  return item->kind == RW_ITEM_PATH && item->pen == RW_PEN_OUTLINE;
}

static GHashTable *
outline_hashes (const RwSheet *sheet)
{
  GHashTable *hashes = g_hash_table_new_full (g_int64_hash, g_int64_equal, g_free, NULL);

  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);
      guint64 hash = rw_path_hash (sheet, item);

      if (is_outline (item))
        g_hash_table_add (hashes, g_memdup2 (&hash, sizeof hash));
    }
  return hashes;
}

typedef struct
{
  cairo_t *cr;
  double   zoom;
  RwPoint  end; /* of the piece before */
} Tracing;

static void
trace_piece (RwPoint a, RwPoint b, gpointer data)
{
  Tracing *tracing = data;

  if (a.x != tracing->end.x || a.y != tracing->end.y)
    cairo_move_to (tracing->cr, a.x * tracing->zoom, -a.y * tracing->zoom);
  cairo_line_to (tracing->cr, b.x * tracing->zoom, -b.y * tracing->zoom);
  tracing->end = b;
}

/* One outline of the ghost, as a node of its own: it stays the same for the whole drag, and where it lies
 * still nothing has to be painted. */
static GskRenderNode *
paint_outline (const RwSheet *sheet, const RwItem *item, double zoom, const RwPalette *palette)
{
  RwBox box = rw_path_box (sheet, item);
  graphene_rect_t bounds = GRAPHENE_RECT_INIT (floor (box.x0 * zoom) - 1, floor (-box.y1 * zoom) - 1,
                                               ceil ((box.x1 - box.x0) * zoom) + 3,
                                               ceil ((box.y1 - box.y0) * zoom) + 3);
  GskRenderNode *node = gsk_cairo_node_new (&bounds);
  Tracing tracing = { gsk_cairo_node_get_draw_context (node), zoom, { NAN, NAN } };

  cairo_set_antialias (tracing.cr, CAIRO_ANTIALIAS_FAST);
  cairo_set_source_rgb (tracing.cr, palette->pale.r, palette->pale.g, palette->pale.b);
  cairo_set_line_width (tracing.cr, 1);
  cairo_set_dash (tracing.cr, ghost_dashes, G_N_ELEMENTS (ghost_dashes), 0);
  rw_trace (sheet, item, 0.2 / zoom, FALSE, trace_piece, &tracing);
  cairo_stroke (tracing.cr);
  cairo_destroy (tracing.cr);
  return node;
}

static GskRenderNode *
ghost_outline (RwCanvas *self, int item, const RwPalette *palette)
{
  GskRenderNode *node = g_hash_table_lookup (self->ghost_nodes, GINT_TO_POINTER (item));

  if (node == NULL)
    {
      node = paint_outline (self->ghost_sheet, &g_array_index (self->ghost_sheet->items, RwItem, item),
                            self->place.zoom, palette);
      g_hash_table_insert (self->ghost_nodes, GINT_TO_POINTER (item), node);
    }
  return node;
}

/* Only the outlines that have gone elsewhere: what stands still needs no ghost.  An array of int. */
static GArray *
moved_outlines (RwCanvas *self)
{
  g_autoptr (GHashTable) now = outline_hashes (rw_canvas_sheet (self));
  GArray *moved = g_array_new (FALSE, FALSE, sizeof (int));

  for (int i = 0; i < (int) self->ghost_sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (self->ghost_sheet->items, RwItem, i);
      guint64 hash = rw_path_hash (self->ghost_sheet, item);

      if (is_outline (item) && !g_hash_table_contains (now, &hash))
        g_array_append_val (moved, i);
    }
  return moved;
}

static void
append_ghost (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette)
{
  const RwResult *before = rw_canvas_ghost_result (self);
  g_autoptr (GArray) moved = NULL;
  double least;

  if (before != self->ghost_of)
    rw_canvas_drop_ghost (self);
  self->ghost_of = before;
  if (before == NULL)
    return;
  if (self->ghost_sheet == NULL)
    self->ghost_sheet = rw_draw (self->view, before, NULL, rw_document_style (self->document));

  moved = moved_outlines (self);
  least = (moved->len > GHOST_MANY ? GHOST_LARGE : GHOST_LEAST) / self->place.zoom;
  gtk_snapshot_save (snapshot);
  gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (self->place.x, self->place.y));
  for (guint i = 0; i < moved->len; i++)
    {
      int item = g_array_index (moved, int, i);
      RwBox box = rw_path_box (self->ghost_sheet, &g_array_index (self->ghost_sheet->items, RwItem, item));

      if (MAX (box.x1 - box.x0, box.y1 - box.y0) >= least)
        gtk_snapshot_append_node (snapshot, ghost_outline (self, item, palette));
    }
  gtk_snapshot_restore (snapshot);
}

/* ---- the drawing ---- */

static void
append_drawing (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette)
{
  GtkWidget *widget = GTK_WIDGET (self);
  RwRasterJob job = {
    .layout = rw_canvas_layout (self),
    .palette = palette,
    .place = self->place,
    .width = gtk_widget_get_width (widget),
    .height = gtk_widget_get_height (widget),
    .device_scale = gtk_widget_get_scale_factor (widget),
  };

  gboolean held = rw_document_drag_start (self->document) != NULL;

  rw_raster_append (self->raster, snapshot, &job, held || self->rest_source != 0);
}

/* ---- all of it ---- */

static void
append_focus (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette)
{
  GtkWidget *widget = GTK_WIDGET (self);
  GdkRGBA accent = { palette->accent.r, palette->accent.g, palette->accent.b, 1 };
  GskRoundedRect frame;

  if (!gtk_widget_has_visible_focus (widget))
    return;
  gsk_rounded_rect_init_from_rect (&frame,
                                   &GRAPHENE_RECT_INIT (0, 0, gtk_widget_get_width (widget),
                                                        gtk_widget_get_height (widget)), 0);
  gtk_snapshot_append_border (snapshot, &frame, (float[4]){ 2, 2, 2, 2 },
                              (GdkRGBA[4]){ accent, accent, accent, accent });
}

void
rw_canvas_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  RwCanvas *self = RW_CANVAS (widget);
  const RwPalette *palette = rw_theme_is_dark (widget) ? &rw_palette_dark : &rw_palette_light;

  append_drawing (self, snapshot, palette);
  append_ghost (self, snapshot, palette);
  rw_canvas_append_marks (self, snapshot, palette);
  rw_canvas_append_grips (self, snapshot, palette);
  rw_canvas_append_bubble (self, snapshot, palette);
  append_focus (self, snapshot, palette);
}
