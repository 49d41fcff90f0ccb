#include "canvas_private.h"

#include <math.h>

#include "theme.h"
#include "trace.h"

/* Round what was laid out, pixels: half a line and the ends of strokes. */
#define BORDER 4.0

/* Two short dashes of a line for what was before (ISO 128-2: long-dashed double-dotted), pixels. */
static const double ghost_dashes[] = { 12, 2.5, 1.5, 2.5, 1.5, 2.5 };

/* ---- the drawing ---- */

/* The sheet's origin is that of the node, so that moving it leaves the node as it is. */
static GskRenderNode *
paint_drawing (RwCanvas *self, const RwPalette *palette)
{
  const RwLayout *layout = rw_canvas_layout (self);
  RwBox box = layout->extent;
  double k = RW_PX_PER_PAPER_MM, min_line = 1.0 / (k * gtk_widget_get_scale_factor (GTK_WIDGET (self)));
  graphene_rect_t bounds = GRAPHENE_RECT_INIT (floor (box.x0 * k - BORDER), floor (-box.y1 * k - BORDER),
                                               ceil ((box.x1 - box.x0) * k + 2 * BORDER),
                                               ceil ((box.y1 - box.y0) * k + 2 * BORDER));
  GskRenderNode *node = gsk_cairo_node_new (&bounds);
  cairo_t *cr = gsk_cairo_node_get_draw_context (node);

  cairo_set_antialias (cr, self->calm_source != 0 ? CAIRO_ANTIALIAS_FAST : CAIRO_ANTIALIAS_GOOD);
  cairo_scale (cr, k, k);
  rw_paint (cr, layout, palette, min_line);
  cairo_destroy (cr);
  return node;
}

/* ---- the ghost ---- */

static guint
mix (guint hash, double number)
{
  gint64 fine = llround (number * 1e6);

  return hash * 16777619u ^ g_int64_hash (&fine);
}

/* Of an item's path: two that lie on each other have the same. */
static guint
path_hash (const RwSheet *sheet, const RwItem *item)
{
  guint hash = 2166136261u;

  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = &g_array_index (sheet->ops, RwPathOp, item->op_first + i);

      hash = hash * 16777619u ^ op->verb;
      for (int k = 0; k < 3; k++)
        hash = mix (mix (hash, op->p[k].x), op->p[k].y);
      hash = mix (mix (mix (hash, op->radius), op->a0), op->a1);
    }
  return hash;
}

static gboolean
is_outline (const RwItem *item)
{
  return item->kind == RW_ITEM_PATH && item->pen == RW_PEN_OUTLINE;
}

static GHashTable *
outline_hashes (const RwSheet *sheet)
{
  GHashTable *hashes = g_hash_table_new (NULL, NULL);

  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (is_outline (item))
        g_hash_table_add (hashes, GUINT_TO_POINTER (path_hash (sheet, item)));
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

static void
trace_item (cairo_t *cr, const RwSheet *sheet, const RwItem *item, double zoom)
{
  Tracing tracing = { cr, zoom, { NAN, NAN } };

  rw_trace (sheet, item, 0.2 / zoom, FALSE, trace_piece, &tracing);
}

static graphene_rect_t
sheet_bounds (const RwSheet *sheet, double zoom)
{
  RwBox box = rw_sheet_extent (sheet);

  return GRAPHENE_RECT_INIT (floor (box.x0 * zoom - BORDER), floor (-box.y1 * zoom - BORDER),
                             ceil ((box.x1 - box.x0) * zoom + 2 * BORDER),
                             ceil ((box.y1 - box.y0) * zoom + 2 * BORDER));
}

/* Only the outlines that have gone elsewhere: what stands still needs no ghost. */
static GskRenderNode *
paint_ghost (RwCanvas *self, const RwPalette *palette)
{
  g_autoptr (GHashTable) now = outline_hashes (rw_canvas_sheet (self));
  const RwSheet *sheet = self->ghost_sheet;
  graphene_rect_t bounds = sheet_bounds (sheet, self->place.zoom);
  GskRenderNode *node = gsk_cairo_node_new (&bounds);
  cairo_t *cr = gsk_cairo_node_get_draw_context (node);

  cairo_set_source_rgb (cr, palette->pale.r, palette->pale.g, palette->pale.b);
  cairo_set_antialias (cr, CAIRO_ANTIALIAS_FAST);
  cairo_set_line_width (cr, 1);
  cairo_set_dash (cr, ghost_dashes, G_N_ELEMENTS (ghost_dashes), 0);
  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (!is_outline (item) || g_hash_table_contains (now, GUINT_TO_POINTER (path_hash (sheet, item))))
        continue;
      trace_item (cr, sheet, item, self->place.zoom);
      cairo_stroke (cr);
    }
  cairo_destroy (cr);
  return node;
}

static void
ensure_ghost (RwCanvas *self, const RwPalette *palette)
{
  const RwResult *before = rw_canvas_ghost_result (self);

  if (before == NULL || self->ghost != NULL)
    return;
  if (self->ghost_sheet == NULL)
    self->ghost_sheet = rw_draw (self->view, before, NULL, rw_document_style (self->document));
  self->ghost = paint_ghost (self, palette);
}

/* ---- all of it ---- */

static void
append_moved (RwCanvas *self, GtkSnapshot *snapshot, GskRenderNode *node)
{
  gtk_snapshot_save (snapshot);
  gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (self->place.x, self->place.y));
  gtk_snapshot_append_node (snapshot, node);
  gtk_snapshot_restore (snapshot);
}

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
  GdkRGBA paper = { palette->paper.r, palette->paper.g, palette->paper.b, 1 };

  gtk_snapshot_append_color (snapshot, &paper,
                             &GRAPHENE_RECT_INIT (0, 0, gtk_widget_get_width (widget),
                                                  gtk_widget_get_height (widget)));
  if (self->drawing == NULL)
    self->drawing = paint_drawing (self, palette);
  append_moved (self, snapshot, self->drawing);

  ensure_ghost (self, palette);
  if (self->ghost != NULL)
    append_moved (self, snapshot, self->ghost);
  rw_canvas_append_marks (self, snapshot, palette);
  rw_canvas_append_grips (self, snapshot, palette);
  rw_canvas_append_bubble (self, snapshot, palette);
  append_focus (self, snapshot, palette);
}
