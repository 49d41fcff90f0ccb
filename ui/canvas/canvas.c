#include "canvas_private.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/theme.h"
#include "frame_trace.h"
#include "grip_words.h"

G_DEFINE_FINAL_TYPE (RwCanvas, rw_canvas, GTK_TYPE_WIDGET)

enum
{
  HINT,
  MOVED,
  SIGNAL_COUNT,
};

static guint signals[SIGNAL_COUNT];

/* Round a fitted view, pixels. */
#define MARGIN 20.0

/* What has not moved for so long is at rest, milliseconds. */
#define REST_MS 120

/* ---- the drawing ---- */

static void
drop_marks (RwCanvas *self)
{
  g_clear_pointer (&self->marks, gsk_render_node_unref);
}

static void
drop_layout (RwCanvas *self)
{
  rw_raster_touch (self->raster);
  drop_marks (self);
  g_clear_pointer (&self->layout, rw_layout_free);
}

static void
drop_sheet (RwCanvas *self)
{
  drop_layout (self);
  g_clear_pointer (&self->sheet, rw_sheet_free);
  rw_canvas_fade_ghost (self);
  self->item = -1;
}

static gboolean
come_to_rest (gpointer data)
{
  RwCanvas *self = data;

  self->rest_source = 0;
  rw_raster_touch (self->raster);
  gtk_widget_queue_draw (GTK_WIDGET (self));
  return G_SOURCE_REMOVE;
}

void
rw_canvas_stir (RwCanvas *self)
{
  g_clear_handle_id (&self->rest_source, g_source_remove);
  self->rest_source = g_timeout_add (REST_MS, come_to_rest, self);
}

const RwSheet *
rw_canvas_sheet (RwCanvas *self)
{
  if (self->sheet == NULL)
    self->sheet = rw_draw (self->view, rw_document_now (self->document), rw_document_measured (self->document),
                           rw_document_style (self->document));
  return self->sheet;
}

/* Lettering follows the desktop's size of text. */
static double
letters (RwCanvas *self)
{
  return rw_letters_size (RW_LETTERS_SMALL) * rw_theme_text_scale (GTK_WIDGET (self));
}

const RwLayout *
rw_canvas_layout (RwCanvas *self)
{
  if (self->layout == NULL)
    self->layout = rw_layout_new (rw_canvas_sheet (self), rw_canvas_view_scale (&self->place), letters (self));
  return self->layout;
}

/* The box of everything laid out, in mm of the sheet. */
static RwBox
extent (RwCanvas *self)
{
  const RwLayout *layout = rw_canvas_layout (self);
  RwBox box = layout->extent;

  return (RwBox){ box.x0 / layout->scale, box.y0 / layout->scale, box.x1 / layout->scale,
                  box.y1 / layout->scale };
}

RwGripScene
rw_canvas_scene (RwCanvas *self)
{
  return (RwGripScene){ rw_document_design (self->document), rw_document_measured (self->document),
                        rw_document_now (self->document), self->view };
}

/* ---- size and place ---- */

void
rw_canvas_zoomed (RwCanvas *self)
{
  drop_layout (self);
  rw_canvas_fade_ghost (self);
  rw_canvas_panned (self);
}

void
rw_canvas_panned (RwCanvas *self)
{
  rw_raster_touch (self->raster);
  rw_canvas_pointed (self);
}

/* While a grip is held its bubble says all there is to say; labels elsewhere would have the whole window
 * laid out anew in every frame. */
void
rw_canvas_pointed (RwCanvas *self)
{
  gtk_widget_queue_draw (GTK_WIDGET (self));
  if (self->drag == NULL)
    g_signal_emit (self, signals[MOVED], 0);
}

/* Dimensions and lettering round the drawing keep their size whatever the zoom: what is left is for the
 * drawing.  Twice, since they move into each other's room. */
static void
fit_now (RwCanvas *self)
{
  double width = gtk_widget_get_width (GTK_WIDGET (self)) - 2 * MARGIN;
  double height = gtk_widget_get_height (GTK_WIDGET (self)) - 2 * MARGIN;
  RwBox paths = rw_sheet_extent (rw_canvas_sheet (self));
  double wide = paths.x1 - paths.x0, high = paths.y1 - paths.y0, bare;

  if (width < 1 || height < 1 || wide <= 0 || high <= 0)
    return;
  bare = MIN (width / wide, height / high); /* without anything round it */
  self->place.zoom = 0.8 * bare;
  for (int round = 0; round < 3; round++)
    {
      RwBox all;
      double zoom = self->place.zoom, left_x, left_y;

      drop_layout (self);
      all = extent (self);
      left_x = width - (all.x1 - all.x0 - wide) * zoom;
      left_y = height - (all.y1 - all.y0 - high) * zoom;
      self->place.zoom = MAX (MIN (left_x / wide, left_y / high), 0.5 * bare);
    }
  drop_layout (self);
  rw_canvas_view_centre (&self->place, extent (self), width + 2 * MARGIN, height + 2 * MARGIN,
                         gtk_widget_get_scale_factor (GTK_WIDGET (self)));
  rw_canvas_zoomed (self);
}

void
rw_canvas_fit (RwCanvas *self)
{
  self->fitted = TRUE;
  fit_now (self);
}

void
rw_canvas_zoom (RwCanvas *self, double factor)
{
  GtkWidget *widget = GTK_WIDGET (self);
  RwPoint middle = { gtk_widget_get_width (widget) / 2.0, gtk_widget_get_height (widget) / 2.0 };

  rw_canvas_stir (self);
  rw_canvas_view_zoom (&self->place, factor, self->over ? self->pointer : middle,
                       gtk_widget_get_scale_factor (widget));
  self->fitted = FALSE;
  rw_canvas_zoomed (self);
}

double
rw_canvas_scale (RwCanvas *self)
{
  return 1 / rw_canvas_view_scale (&self->place);
}

gboolean
rw_canvas_pointer (RwCanvas *self, RwPoint *sheet)
{
  *sheet = rw_canvas_view_to_sheet (&self->place, self->pointer);
  return self->over;
}

static void
rw_canvas_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  RwCanvas *self = RW_CANVAS (widget);

  if (self->popover != NULL)
    gtk_popover_present (GTK_POPOVER (self->popover));
  rw_raster_touch (self->raster);
  if (self->fitted)
    fit_now (self);
  else
    rw_canvas_view_keep (&self->place, extent (self), width, height, gtk_widget_get_scale_factor (widget));
}

/* ---- the view ---- */

RwView
rw_canvas_get_view (RwCanvas *self)
{
  return self->view;
}

void
rw_canvas_set_view (RwCanvas *self, RwView view)
{
  if (view == self->view)
    return;
  if (self->drag != NULL)
    rw_canvas_cancel_drag (self);
  self->view = view;
  rw_canvas_take_grip (self, NULL, FALSE);
  drop_sheet (self);
  rw_canvas_drop_ghost (self);
  rw_canvas_fit (self);
  rw_canvas_tell (self);
}

/* ---- what is said ---- */

/* Screen readers have no children to walk in a drawing, so it tells the grip at hand itself. */
static void
describe (RwCanvas *self, const char *hint)
{
  g_autofree char *label = g_strdup_printf (_("Drawing: %s"), _(rw_view_title (self->view)));
  g_autofree char *words = NULL;

  if (self->grip != NULL)
    words = g_strdup_printf (_("%s. Arrow keys move this grip, Enter types its value, Tab goes to the next."),
                             hint);
  else
    words = g_strdup (hint != NULL ? hint : _("Tab walks the grips of the drawing."));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, label,
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, words, -1);
}

void
rw_canvas_tell (RwCanvas *self)
{
  RwStyle style = rw_document_style (self->document);
  g_autofree char *hint = NULL;

  if (self->grip != NULL)
    {
      RwGripScene scene = rw_canvas_scene (self);

      hint = rw_grip_words (self->grip, &scene, style);
    }
  else if (self->item >= 0 && self->sheet != NULL && self->item < (int) self->sheet->items->len)
    hint = rw_item_words (&g_array_index (self->sheet->items, RwItem, self->item),
                          rw_document_now (self->document), style);
  describe (self, hint);
  g_signal_emit (self, signals[HINT], 0, self->drag == NULL ? hint : NULL);
}

/* ---- what the document tells ---- */

static void
on_changed (RwCanvas *self, RwChange what)
{
  if (what & RW_CHANGE_PROJECT)
    {
      if (self->drag != NULL)
        rw_canvas_end_drag (self);
      rw_canvas_take_grip (self, NULL, FALSE);
    }
  drop_sheet (self);
  if (what & RW_CHANGE_UNITS)
    rw_canvas_drop_ghost (self);
  rw_canvas_stir (self);
  if ((what & RW_CHANGE_PROJECT) && self->fitted)
    fit_now (self);
  if (self->grip != NULL && self->drag == NULL)
    rw_canvas_tell (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
on_reference (RwCanvas *self)
{
  rw_canvas_drop_ghost (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
on_look (RwCanvas *self)
{
  drop_layout (self);
  rw_raster_forget (self->raster);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
on_selected (RwCanvas *self)
{
  drop_marks (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* ---- making and unmaking ---- */

static void
rw_canvas_init (RwCanvas *self)
{
  self->raster = rw_raster_new ();
  self->item = -1;
  self->fitted = TRUE;
  self->place = (RwCanvasView){ .zoom = RW_PX_PER_PAPER_MM / 3 };
  gtk_widget_set_direction (GTK_WIDGET (self), GTK_TEXT_DIR_LTR); /* figures are in every language */
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_widget_set_hexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_vexpand (GTK_WIDGET (self), TRUE);
  rw_canvas_add_pointer (self);
  rw_canvas_add_keys (self);
}

static void
rw_canvas_dispose (GObject *object)
{
  RwCanvas *self = RW_CANVAS (object);

  if (self->drag != NULL)
    rw_canvas_end_drag (self);
  g_clear_handle_id (&self->rest_source, g_source_remove);
  g_clear_pointer (&self->popover, gtk_widget_unparent);
  drop_sheet (self);
  rw_canvas_drop_ghost (self);
  g_clear_pointer (&self->grip_start, g_free);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (rw_canvas_parent_class)->dispose (object);
}

static void
rw_canvas_finalize (GObject *object)
{
  RwCanvas *self = RW_CANVAS (object);

  rw_raster_free (self->raster);
  G_OBJECT_CLASS (rw_canvas_parent_class)->finalize (object);
}

static void
rw_canvas_realize (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (rw_canvas_parent_class)->realize (widget);
  rw_frame_trace_follow (widget);
}

static void
rw_canvas_css_changed (GtkWidget *widget, GtkCssStyleChange *change)
{
  GTK_WIDGET_CLASS (rw_canvas_parent_class)->css_changed (widget, change);
  on_look (RW_CANVAS (widget));
}

static void
rw_canvas_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                   int *minimum_baseline, int *natural_baseline)
{
  *minimum = 200;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 800 : 500;
}

static void
rw_canvas_class_init (RwCanvasClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  GType type = G_TYPE_FROM_CLASS (klass);

  object_class->dispose = rw_canvas_dispose;
  object_class->finalize = rw_canvas_finalize;
  widget_class->realize = rw_canvas_realize;
  widget_class->css_changed = rw_canvas_css_changed;
  widget_class->measure = rw_canvas_measure;
  widget_class->size_allocate = rw_canvas_size_allocate;
  widget_class->snapshot = rw_canvas_snapshot;
  widget_class->focus = rw_canvas_walk;
  gtk_widget_class_set_css_name (widget_class, "canvas");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);

  signals[HINT] = g_signal_new ("hint", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                                G_TYPE_STRING);
  signals[MOVED] = g_signal_new ("moved", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

GtkWidget *
rw_canvas_new (RwDocument *document, RwView view)
{
  RwCanvas *self = g_object_new (RW_TYPE_CANVAS, NULL);

  self->document = g_object_ref (document);
  self->view = view;
  g_signal_connect_object (document, "changed", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "selected", G_CALLBACK (on_selected), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "reference", G_CALLBACK (on_reference), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (gtk_widget_get_settings (GTK_WIDGET (self)), "notify::gtk-xft-dpi",
                           G_CALLBACK (on_look), self, G_CONNECT_SWAPPED);
  g_signal_connect (self, "notify::scale-factor", G_CALLBACK (on_look), NULL);
  rw_canvas_tell (self);
  return GTK_WIDGET (self);
}
