#include "cutting_view.h"

#include <math.h>

#include "access.h"
#include "canvas_view.h"
#include "cutting_words.h"
#include "draw/draw_cutting.h"
#include "io/paint_cairo.h"
#include "theme.h"

/* Pixels. */
#define MARGIN 10
#define LEAST_WIDTH 420

struct _RwCuttingView
{
  GtkWidget parent;

  const RwCutting *cutting;
  const RwDesign  *design;
  RwStyle          style;
  GskRenderNode   *picture; /* kept until size, look or plan are others */
  int              width;
  gboolean         dark;
};

G_DEFINE_FINAL_TYPE (RwCuttingView, rw_cutting_view, GTK_TYPE_WIDGET)

static RwSheet *
draw (RwCuttingView *self, int width)
{
  if (self->cutting == NULL)
    return NULL;
  return rw_draw_cutting (self->cutting, self->design, self->style,
                          (MAX (width, LEAST_WIDTH) - 2 * MARGIN) / RW_PX_PER_PAPER_MM, 0, 0);
}

static void
paint (RwCuttingView *self, int width, int height)
{
  const RwPalette *palette = self->dark ? &rw_palette_dark : &rw_palette_light;
  double pixel = 1 / (RW_PX_PER_PAPER_MM * gtk_widget_get_scale_factor (GTK_WIDGET (self)));
  g_autoptr (RwSheet) sheet = draw (self, width);
  g_autoptr (RwLayout) layout = sheet != NULL ? rw_layout_new (sheet, 1, 0) : NULL;
  cairo_t *cr;

  self->picture = gsk_cairo_node_new (&GRAPHENE_RECT_INIT (0, 0, (float) width, (float) height));
  cr = gsk_cairo_node_get_draw_context (self->picture);
  cairo_set_source_rgb (cr, palette->paper.r, palette->paper.g, palette->paper.b);
  cairo_paint (cr);
  cairo_translate (cr, MARGIN, MARGIN);
  cairo_scale (cr, RW_PX_PER_PAPER_MM, RW_PX_PER_PAPER_MM);
  if (layout != NULL)
    rw_paint (cr, layout, palette, pixel);
  cairo_destroy (cr);
}

static void
rw_cutting_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  RwCuttingView *self = RW_CUTTING_VIEW (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  gboolean dark = rw_theme_is_dark (widget);

  if (self->picture == NULL || self->dark != dark || self->width != width)
    {
      g_clear_pointer (&self->picture, gsk_render_node_unref);
      self->dark = dark;
      self->width = width;
      paint (self, width, height);
    }
  gtk_snapshot_append_node (snapshot, self->picture);
}

static GtkSizeRequestMode
rw_cutting_view_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
rw_cutting_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                         int *minimum_baseline, int *natural_baseline)
{
  RwCuttingView *self = RW_CUTTING_VIEW (widget);
  int size = LEAST_WIDTH;

  if (orientation == GTK_ORIENTATION_VERTICAL)
    {
      g_autoptr (RwSheet) sheet = draw (self, for_size > 0 ? for_size : LEAST_WIDTH);

      size = sheet != NULL ? (int) ceil (rw_cutting_height (sheet) * RW_PX_PER_PAPER_MM) + 2 * MARGIN : 0;
    }
  *minimum = *natural = size;
}

static void
rw_cutting_view_dispose (GObject *object)
{
  g_clear_pointer (&RW_CUTTING_VIEW (object)->picture, gsk_render_node_unref);
  G_OBJECT_CLASS (rw_cutting_view_parent_class)->dispose (object);
}

static void
rw_cutting_view_class_init (RwCuttingViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = rw_cutting_view_dispose;
  widget_class->snapshot = rw_cutting_view_snapshot;
  widget_class->measure = rw_cutting_view_measure;
  widget_class->get_request_mode = rw_cutting_view_request_mode;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
rw_cutting_view_init (RwCuttingView *self)
{
}

GtkWidget *
rw_cutting_view_new (void)
{
  return g_object_new (RW_TYPE_CUTTING_VIEW, NULL);
}

void
rw_cutting_view_show (RwCuttingView *self, const RwCutting *cutting, const RwDesign *design, RwStyle style)
{
  g_autofree char *words = NULL;

  self->cutting = cutting;
  self->design = design;
  self->style = style;
  words = cutting != NULL ? rw_cutting_words (cutting, style) : g_strdup ("");
  rw_access_describe (GTK_WIDGET (self), words);
  g_clear_pointer (&self->picture, gsk_render_node_unref);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}
