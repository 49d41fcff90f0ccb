#include "chart_view.h"

#include <math.h>

#include "base/theme.h"
#include "io/paint_cairo.h"
#include "sheet/layout.h"

#define MARGIN 8 /* pixels */

struct _RwChartView
{
  GtkWidget parent;

  double      width, height; /* mm, at least */
  RwChartDraw draw;
  gpointer    user_data;
};

G_DEFINE_FINAL_TYPE (RwChartView, rw_chart_view, GTK_TYPE_WIDGET)

static void
rw_chart_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  RwChartView *self = RW_CHART_VIEW (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  double k = rw_theme_paper_scale (widget);
  const RwPalette *palette = rw_theme_palette (widget);
  g_autoptr (RwSheet) sheet = NULL;
  g_autoptr (RwLayout) layout = NULL;
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, (float) width, (float) height));

  cairo_set_source_rgb (cr, palette->paper.r, palette->paper.g, palette->paper.b);
  cairo_paint (cr);
  if (self->draw != NULL)
    {
      sheet = self->draw ((width - 2 * MARGIN) / k, self->user_data);
      layout = rw_layout_new (sheet, 1, 0);
      /* Whole pixels keep the lines crisp. */
      cairo_translate (cr, MARGIN, MARGIN + round (self->height * k));
      cairo_scale (cr, k, k);
      rw_paint (cr, layout, palette, 1 / (k * gtk_widget_get_scale_factor (widget)));
    }
  cairo_destroy (cr);
}

static void
rw_chart_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                       int *least_baseline, int *natural_baseline)
{
  RwChartView *self = RW_CHART_VIEW (widget);
  double size = orientation == GTK_ORIENTATION_HORIZONTAL ? self->width : self->height;

  *least = *natural = 2 * MARGIN + (int) ceil (size * rw_theme_paper_scale (widget));
}

static void
rw_chart_view_class_init (RwChartViewClass *klass)
{
  GTK_WIDGET_CLASS (klass)->snapshot = rw_chart_view_snapshot;
  GTK_WIDGET_CLASS (klass)->measure = rw_chart_view_measure;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_IMG);
}

static void
rw_chart_view_init (RwChartView *self)
{
  gtk_widget_set_hexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_vexpand (GTK_WIDGET (self), TRUE);
}

GtkWidget *
rw_chart_view_new (void)
{
  return g_object_new (RW_TYPE_CHART_VIEW, NULL);
}

void
rw_chart_view_show (RwChartView *self, double width, double height, RwChartDraw draw, gpointer user_data)
{
  self->width = width;
  self->height = height;
  self->draw = draw;
  self->user_data = user_data;
  gtk_widget_queue_resize (GTK_WIDGET (self));
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
