#include "mark.h"

#include <math.h>

#include "access.h"
#include "theme.h"
#include "words.h"

#define SIDE 12

struct _RwMark
{
  GtkWidget parent;

  RwSeverity severity;
};

G_DEFINE_FINAL_TYPE (RwMark, rw_mark, GTK_TYPE_WIDGET)

static void
trace_polygon (cairo_t *cr, int corners, double radius, double cx, double cy, double first)
{
  for (int i = 0; i < corners; i++)
    {
      double angle = first + 2 * G_PI * i / corners;

      cairo_line_to (cr, cx + radius * cos (angle), cy + radius * sin (angle));
    }
  cairo_close_path (cr);
}

static void
rw_mark_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  RwMark *self = RW_MARK (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  double cx = width / 2.0, cy = height / 2.0;
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));

  gdk_cairo_set_source_rgba (cr, rw_theme_severity (widget, self->severity));
  switch (self->severity)
    {
    case RW_STOP:
      trace_polygon (cr, 8, SIDE / 2.0, cx, cy, G_PI / 8);
      cairo_fill (cr);
      break;
    case RW_CAUTION:
      trace_polygon (cr, 3, SIDE / 1.8, cx, cy + 1, -G_PI / 2);
      cairo_fill (cr);
      break;
    case RW_NOTE:
      cairo_set_line_width (cr, 2);
      cairo_arc (cr, cx, cy, SIDE / 2.0 - 1.5, 0, 2 * G_PI);
      cairo_stroke (cr);
      break;
    }
  cairo_destroy (cr);
}

static void
rw_mark_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                 int *minimum_baseline, int *natural_baseline)
{
  *minimum = *natural = SIDE + 2;
}

static void
rw_mark_class_init (RwMarkClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->snapshot = rw_mark_snapshot;
  widget_class->measure = rw_mark_measure;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
rw_mark_init (RwMark *self)
{
  gtk_widget_set_valign (GTK_WIDGET (self), GTK_ALIGN_CENTER);
}

GtkWidget *
rw_mark_new (RwSeverity severity)
{
  RwMark *self = g_object_new (RW_TYPE_MARK, NULL);

  rw_mark_set (self, severity);
  return GTK_WIDGET (self);
}

void
rw_mark_set (RwMark *self, RwSeverity severity)
{
  self->severity = severity;
  rw_access_name (GTK_WIDGET (self), rw_severity_words (severity));
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
rw_mark_show (RwMark *self, const RwFinding *finding, RwStyle style)
{
  g_autofree char *text = NULL;

  gtk_widget_set_visible (GTK_WIDGET (self), finding != NULL);
  if (finding == NULL)
    return;
  if (self->severity != finding->severity)
    rw_mark_set (self, finding->severity);
  text = rw_finding_text (finding, style);
  /* Setting a tooltip asks the display where the pointer is, which takes long. */
  if (g_strcmp0 (text, gtk_widget_get_tooltip_text (GTK_WIDGET (self))) != 0)
    gtk_widget_set_tooltip_text (GTK_WIDGET (self), text);
}
