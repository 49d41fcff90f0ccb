#include "tour.h"

#include <glib/gi18n.h>

#define TEXT_CHARS 38

typedef struct
{
  GtkWidget  *window;
  RwTourStop *stops;
  guint       count, here;
  GtkWidget  *note; /* the popover of the present stop */
  GtkWidget  *next; /* its button that goes on */
  gboolean    leaving;
  guint       moving; /* the source that goes on or leaves */
} Tour;

static void
tour_free (gpointer data)
{
  Tour *tour = data;

  g_clear_handle_id (&tour->moving, g_source_remove);
  g_free (tour->stops);
  g_free (tour);
}

static void show_stop (Tour *tour);

static void
drop_note (Tour *tour)
{
  if (tour->note == NULL)
    return;
  gtk_popover_popdown (GTK_POPOVER (tour->note));
  gtk_widget_unparent (tour->note);
  tour->note = NULL;
}

/* The tour lives with the window, as data of it, and a second start takes its place. */
static void
leave (Tour *tour)
{
  drop_note (tour);
  g_signal_handlers_disconnect_by_data (gtk_window_get_toplevels (), tour);
  g_signal_handlers_disconnect_by_data (tour->window, tour);
  g_object_set_data (G_OBJECT (tour->window), "rw-tour", NULL);
}

static void
go_on (Tour *tour)
{
  drop_note (tour);
  tour->here++;
  if (tour->here < tour->count)
    show_stop (tour);
  else
    leave (tour);
}

static gboolean
move (gpointer data)
{
  Tour *tour = data;

  tour->moving = 0;
  if (tour->leaving)
    leave (tour);
  else
    go_on (tour);
  return G_SOURCE_REMOVE;
}

/* Not from inside the note's own button, which goes with the note. */
static void
on_next (Tour *tour)
{
  if (tour->moving == 0)
    tour->moving = g_idle_add (move, tour);
}

static void
on_leave (Tour *tour)
{
  tour->leaving = TRUE;
  on_next (tour);
}

/* Another window of ours would have the note hang over it. */
static void
on_windows (Tour *tour, guint place, guint removed, guint added)
{
  if (added > 0)
    on_leave (tour);
}

static gboolean
on_escape (GtkWidget *widget, GVariant *args, gpointer tour)
{
  on_leave (tour);
  return TRUE;
}

/* The window's own keys don't reach a note that has the focus. */
static gboolean
on_key (GtkEventControllerKey *controller, guint key, guint code, GdkModifierType state, Tour *tour)
{
  return gtk_event_controller_key_forward (controller, tour->window);
}

/* ---- a note ---- */

static void
add_label (GtkWidget *box, const char *text, const char *css_class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), TEXT_CHARS);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  gtk_box_append (GTK_BOX (box), label);
}

static GtkWidget *
new_buttons (Tour *tour)
{
  gboolean last = tour->here + 1 == tour->count;
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *next = gtk_button_new_with_label (last ? _("Done") : _("Next"));
  g_autofree char *place = g_strdup_printf (C_("place in the tour", "%u of %u"), tour->here + 1, tour->count);
  GtkWidget *count = gtk_label_new (place);

  gtk_widget_add_css_class (count, "dim-label");
  gtk_widget_set_hexpand (count, TRUE);
  gtk_widget_set_halign (count, GTK_ALIGN_START);
  gtk_box_append (GTK_BOX (row), count);
  if (!last)
    {
      GtkWidget *stop = gtk_button_new_with_label (_("Leave the tour"));

      g_signal_connect_swapped (stop, "clicked", G_CALLBACK (on_leave), tour);
      gtk_box_append (GTK_BOX (row), stop);
    }
  tour->next = next;
  gtk_widget_add_css_class (next, "suggested-action");
  g_signal_connect_swapped (next, "clicked", G_CALLBACK (on_next), tour);
  gtk_box_append (GTK_BOX (row), next);
  return row;
}

static void
show_stop (Tour *tour)
{
  const RwTourStop *stop = &tour->stops[tour->here];
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 8);
  GtkEventController *keys = gtk_shortcut_controller_new (), *rest = gtk_event_controller_key_new ();

  add_label (box, stop->title, "strong");
  add_label (box, stop->text, NULL);
  gtk_box_append (GTK_BOX (box), new_buttons (tour));
  gtk_widget_add_css_class (box, "tour");

  tour->note = gtk_popover_new ();
  gtk_popover_set_child (GTK_POPOVER (tour->note), box);
  gtk_popover_set_autohide (GTK_POPOVER (tour->note), FALSE);
  gtk_popover_set_position (GTK_POPOVER (tour->note), stop->side);
  gtk_widget_set_parent (tour->note, stop->at);
  gtk_shortcut_controller_add_shortcut (
      GTK_SHORTCUT_CONTROLLER (keys),
      gtk_shortcut_new (gtk_keyval_trigger_new (GDK_KEY_Escape, 0), gtk_callback_action_new (on_escape, tour, NULL)));
  gtk_widget_add_controller (tour->note, keys);
  g_signal_connect (rest, "key-pressed", G_CALLBACK (on_key), tour);
  gtk_widget_add_controller (tour->note, rest);
  gtk_popover_popup (GTK_POPOVER (tour->note));
  /* Enter goes on, Escape leaves. */
  gtk_widget_grab_focus (tour->next);
}

void
rw_tour_start (GtkWidget *window, const RwTourStop *stops, guint count)
{
  Tour *old = g_object_get_data (G_OBJECT (window), "rw-tour"), *tour = g_new0 (Tour, 1);

  if (old != NULL)
    leave (old);
  tour->window = window;
  tour->stops = g_memdup2 (stops, count * sizeof *stops);
  tour->count = count;
  g_object_set_data_full (G_OBJECT (window), "rw-tour", tour, tour_free);
  /* A note goes before the widget that it points at. */
  g_signal_connect_swapped (window, "unrealize", G_CALLBACK (leave), tour);
  g_signal_connect_swapped (gtk_window_get_toplevels (), "items-changed", G_CALLBACK (on_windows), tour);
  show_stop (tour);
}
