#include "sheet_pane.h"

#include <glib/gi18n.h>

struct _RwSheetPane
{
  GtkBox parent;

  GtkWidget *tabs[RW_VIEW_COUNT];
  GtkWidget *strip; /* scrolls */
  GtkWidget *canvas;
};

G_DEFINE_FINAL_TYPE (RwSheetPane, rw_sheet_pane, GTK_TYPE_BOX)

enum
{
  HINT,
  MOVED,
  SIGNAL_COUNT,
};

static guint signals[SIGNAL_COUNT];

/* Brings the tab of the view that is shown into sight. */
static void
reveal_tab (RwSheetPane *self)
{
  GtkWidget *tab = self->tabs[rw_canvas_get_view (RW_CANVAS (self->canvas))];
  GtkAdjustment *along = gtk_scrolled_window_get_hadjustment (GTK_SCROLLED_WINDOW (self->strip));
  graphene_rect_t place;

  if (gtk_widget_compute_bounds (tab, gtk_widget_get_parent (tab), &place))
    gtk_adjustment_clamp_page (along, place.origin.x, place.origin.x + place.size.width);
}

static void
on_tab (GtkWidget *tab, RwSheetPane *self)
{
  if (!gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (tab)))
    return;
  for (int view = 0; view < RW_VIEW_COUNT; view++)
    if (self->tabs[view] == tab)
      rw_canvas_set_view (RW_CANVAS (self->canvas), view);
  reveal_tab (self);
}

static void
on_hint (RwSheetPane *self, const char *hint)
{
  g_signal_emit (self, signals[HINT], 0, hint);
}

static void
on_moved (RwSheetPane *self)
{
  g_signal_emit (self, signals[MOVED], 0);
}

/* ---- keys: 1 to 9 show a view, Page Up and Page Down the one before and the one after ---- */

#define KEYED_VIEWS 9

static void
show_view (RwSheetPane *self, RwView view)
{
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->tabs[view]), TRUE);
}

static gboolean
on_view_key (GtkWidget *widget, GVariant *args, gpointer data)
{
  show_view (RW_SHEET_PANE (widget), (RwView) g_variant_get_int32 (args));
  return TRUE;
}

static gboolean
on_page_key (GtkWidget *widget, GVariant *args, gpointer data)
{
  RwSheetPane *self = RW_SHEET_PANE (widget);
  int view = (int) rw_canvas_get_view (RW_CANVAS (self->canvas));
  int way = g_variant_get_int32 (args);

  show_view (self, (RwView) ((view + way + RW_VIEW_COUNT) % RW_VIEW_COUNT));
  return TRUE;
}

static void
add_keys (GtkWidgetClass *klass)
{
  for (int i = 0; i < KEYED_VIEWS; i++)
    gtk_widget_class_add_binding (klass, GDK_KEY_1 + i, 0, on_view_key, "i", i);
  gtk_widget_class_add_binding (klass, GDK_KEY_Page_Up, 0, on_page_key, "i", -1);
  gtk_widget_class_add_binding (klass, GDK_KEY_Page_Down, 0, on_page_key, "i", 1);
}

/* The strip scrolls where it is narrower than its tabs. */
static GtkWidget *
build_strip (RwSheetPane *self, RwView view)
{
  GtkWidget *strip = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  GtkWidget *scroller = gtk_scrolled_window_new ();

  gtk_widget_add_css_class (strip, "strip");
  for (int i = 0; i < RW_VIEW_COUNT; i++)
    {
      self->tabs[i] = gtk_toggle_button_new_with_label (_(rw_view_title (i)));
      gtk_button_set_has_frame (GTK_BUTTON (self->tabs[i]), FALSE);
      if (i > 0)
        gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (self->tabs[i]), GTK_TOGGLE_BUTTON (self->tabs[0]));
      gtk_box_append (GTK_BOX (strip), self->tabs[i]);
    }
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->tabs[view]), TRUE);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_EXTERNAL, GTK_POLICY_NEVER);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), strip);
  return scroller;
}

static void
rw_sheet_pane_class_init (RwSheetPaneClass *klass)
{
  GType type = G_TYPE_FROM_CLASS (klass);

  add_keys (GTK_WIDGET_CLASS (klass));
  signals[HINT]
      = g_signal_new ("hint", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
  signals[MOVED] = g_signal_new ("moved", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
rw_sheet_pane_init (RwSheetPane *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
}

GtkWidget *
rw_sheet_pane_new (RwDocument *document, RwView view)
{
  RwSheetPane *self = g_object_new (RW_TYPE_SHEET_PANE, NULL);

  self->strip = build_strip (self, view);
  gtk_box_append (GTK_BOX (self), self->strip);
  self->canvas = rw_canvas_new (document, view);
  gtk_widget_set_hexpand (self->canvas, TRUE);
  gtk_widget_set_vexpand (self->canvas, TRUE);
  gtk_box_append (GTK_BOX (self), self->canvas);

  for (int i = 0; i < RW_VIEW_COUNT; i++)
    g_signal_connect_object (self->tabs[i], "toggled", G_CALLBACK (on_tab), self, 0);
  g_signal_connect_object (gtk_scrolled_window_get_hadjustment (GTK_SCROLLED_WINDOW (self->strip)), "changed",
                           G_CALLBACK (reveal_tab), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->canvas, "hint", G_CALLBACK (on_hint), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->canvas, "moved", G_CALLBACK (on_moved), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

RwCanvas *
rw_sheet_pane_canvas (RwSheetPane *self)
{
  return RW_CANVAS (self->canvas);
}
