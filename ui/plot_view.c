#include "plot_view.h"

#include "io/paint_cairo.h"
#include "sheet/layout.h"
#include "canvas_view.h"
#include "theme.h"

/* Pixels. */
#define LEAST_WIDTH 360
#define LEAST_HEIGHT 110
#define MARGIN 8

struct _RwPlotView
{
  GtkWidget parent;

  const RwStudy *study; /* not owned */
  RwStyle        style;
};

G_DEFINE_FINAL_TYPE (RwPlotView, rw_plot_view, GTK_TYPE_WIDGET)

static void
paint (cairo_t *cr, const RwLayout *layout, const RwPalette *palette, int height, int device_scale)
{
  cairo_set_source_rgb (cr, palette->paper.r, palette->paper.g, palette->paper.b);
  cairo_paint (cr);
  cairo_translate (cr, MARGIN, height - MARGIN);
  cairo_scale (cr, RW_PX_PER_PAPER_MM, RW_PX_PER_PAPER_MM);
  rw_paint (cr, layout, palette, 1 / (RW_PX_PER_PAPER_MM * device_scale));
}

static void
rw_plot_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  RwPlotView *self = RW_PLOT_VIEW (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  const RwPalette *palette = rw_theme_is_dark (widget) ? &rw_palette_dark : &rw_palette_light;
  g_autoptr (RwSheet) sheet = NULL;
  g_autoptr (RwLayout) layout = NULL;
  cairo_t *cr;

  if (self->study == NULL)
    return;
  sheet = rw_study_draw (self->study, (width - 2 * MARGIN) / RW_PX_PER_PAPER_MM,
                         (height - 2 * MARGIN) / RW_PX_PER_PAPER_MM, self->style, NULL);
  layout = rw_layout_new (sheet, 1, 0);
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  paint (cr, layout, palette, height, gtk_widget_get_scale_factor (widget));
  cairo_destroy (cr);
}

static void
rw_plot_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                      int *least_baseline, int *natural_baseline)
{
  *least = *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? LEAST_WIDTH : LEAST_HEIGHT;
}

static void
rw_plot_view_class_init (RwPlotViewClass *klass)
{
  GTK_WIDGET_CLASS (klass)->snapshot = rw_plot_view_snapshot;
  GTK_WIDGET_CLASS (klass)->measure = rw_plot_view_measure;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_IMG);
}

static void
rw_plot_view_init (RwPlotView *self)
{
  gtk_widget_set_hexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_vexpand (GTK_WIDGET (self), TRUE);
}

GtkWidget *
rw_plot_view_new (void)
{
  return g_object_new (RW_TYPE_PLOT_VIEW, NULL);
}

void
rw_plot_view_show (RwPlotView *self, const RwStudy *study, RwStyle style)
{
  self->study = study;
  self->style = style;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
