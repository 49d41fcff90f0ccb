#include "cutting_view.h"

#include <math.h>

#include "base/access.h"
#include "base/theme.h"
#include "draw/draw_cutting.h"
#include "io/paint_cairo.h"
#include "cutting_words.h"

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
  const RwPalette *palette;
};

G_DEFINE_FINAL_TYPE (RwCuttingView, rw_cutting_view, GTK_TYPE_WIDGET)

static RwSheet *
draw (RwCuttingView *self, int width)
{
  if (self->cutting == NULL)
    return NULL;
  return rw_draw_cutting (self->cutting, self->design, self->style,
                          (MAX (width, LEAST_WIDTH) - 2 * MARGIN) / rw_theme_paper_scale (GTK_WIDGET (self)), 0, 0);
}

static void
paint (RwCuttingView *self, int width, int height)
{
  const RwColour *paper = &self->palette->paper;
  double k = rw_theme_paper_scale (GTK_WIDGET (self));
  double pixel = 1 / (k * gtk_widget_get_scale_factor (GTK_WIDGET (self)));
  g_autoptr (RwSheet) sheet = draw (self, width);
  g_autoptr (RwLayout) layout = sheet != NULL ? rw_layout_new (sheet, 1, 0) : NULL;
  cairo_t *cr;

  self->picture = gsk_cairo_node_new (&GRAPHENE_RECT_INIT (0, 0, (float) width, (float) height));
  cr = gsk_cairo_node_get_draw_context (self->picture);
  cairo_set_source_rgb (cr, paper->r, paper->g, paper->b);
  cairo_paint (cr);
  cairo_translate (cr, MARGIN, MARGIN);
  cairo_scale (cr, k, k);
  if (layout != NULL)
    rw_paint (cr, layout, self->palette, pixel);
  cairo_destroy (cr);
}

static void
rw_cutting_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  RwCuttingView *self = RW_CUTTING_VIEW (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  const RwPalette *palette = rw_theme_palette (widget);

  if (self->picture == NULL || self->palette != palette || self->width != width)
    {
      g_clear_pointer (&self->picture, gsk_render_node_unref);
      self->palette = palette;
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

      size = sheet != NULL ? (int) ceil (rw_cutting_height (sheet) * rw_theme_paper_scale (widget)) + 2 * MARGIN : 0;
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
