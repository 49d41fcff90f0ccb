#include "application.h"

#include <glib/gi18n.h>
#include <gtk/gtk.h>
#include <stdlib.h>

#include "base/theme.h"
#include "window/recovery.h"
#include "window/window.h"
#include "language.h"

#define APPLICATION_ID "org.rimwright.Rimwright"
#define FIRST_FRAME_VARIABLE "RIMWRIGHT_EXIT_AFTER_FIRST_FRAME"

/* ---- actions ---- */

/* Asks one window after the other; each asks again for the rest once it has gone. */
static void
quit (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  g_autoptr (GList) windows = g_list_copy (gtk_application_get_windows (user_data));

  for (GList *l = windows; l != NULL; l = l->next)
    if (RW_IS_WINDOW (l->data))
      gtk_window_close (l->data);
}

static void
about (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  gtk_show_about_dialog (gtk_application_get_active_window (user_data), "program-name", "Rimwright", "version",
                         RW_VERSION, "comments", _("Designs five-string open-back banjos for the home shop."), NULL);
}

static void
set_accels (GtkApplication *app)
{
  static const struct
  {
    const char *action;
    const char *accels[3];
  } keys[] = {
    { "app.quit", { "<Control>q" } },
    { "win.new", { "<Control>n" } },
    { "win.open", { "<Control>o" } },
    { "win.save", { "<Control>s" } },
    { "win.save-as", { "<Control><Shift>s" } },
    { "win.papers", { "<Control>p" } },
    { "win.undo", { "<Control>z" } },
    { "win.redo", { "<Control><Shift>z", "<Control>y" } },
    { "win.find", { "<Control>f" } },
    { "win.guide", { "F1" } },
    { "win.keys", { "<Control>question" } },
    { "win.show-form", { "<Shift>F9" } },
    { "win.show-drawer", { "F9" } },
    { "win.show-beside", { "<Control>b" } },
    { "win.units::mm", { "<Control>1" } },
    { "win.units::inch", { "<Control>2" } },
    { "win.units::fraction", { "<Control>3" } },
    { "window.close", { "<Control>w" } },
  };

  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    gtk_application_set_accels_for_action (app, keys[i].action, keys[i].accels);
}

/* ---- windows ---- */

static void
on_first_frame (GdkFrameClock *clock, gint64 *start)
{
  g_print ("%.1f ms\n", (double) (g_get_monotonic_time () - *start) / 1000);
  exit (EXIT_SUCCESS);
}

static void
on_realize (GtkWidget *window, gint64 *start)
{
  g_signal_connect (gtk_widget_get_frame_clock (window), "after-paint", G_CALLBACK (on_first_frame), start);
}

static gboolean
offer_unsaved_work (gpointer window)
{
  rw_recovery_offer (window);
  return G_SOURCE_REMOVE;
}

/* The first window of a start asks about work that an earlier one did not save, once it stands. */
static GtkWidget *
new_window (GtkApplication *app)
{
  GtkWidget *window = rw_window_new (app);

  if (gtk_application_get_windows (app)->next == NULL)
    g_idle_add_full (G_PRIORITY_LOW, offer_unsaved_work, g_object_ref (window), g_object_unref);
  if (g_getenv (FIRST_FRAME_VARIABLE) != NULL)
    g_signal_connect (window, "realize", G_CALLBACK (on_realize), g_object_get_data (G_OBJECT (app), "rw-start"));
  return window;
}

static void
on_startup (GtkApplication *app)
{
  static const GActionEntry entries[] = {
    { .name = "quit", .activate = quit },
    { .name = "about", .activate = about },
  };

  rw_theme_install (gdk_display_get_default ());
  g_action_map_add_action_entries (G_ACTION_MAP (app), entries, G_N_ELEMENTS (entries), app);
  set_accels (app);
}

static void
on_activate (GtkApplication *app)
{
  GtkWindow *window = gtk_application_get_active_window (app);

  gtk_window_present (window != NULL ? window : GTK_WINDOW (new_window (app)));
}

/* A window that nothing has been done in takes the first file. */
static RwWindow *
window_for_file (GtkApplication *app)
{
  GtkWindow *active = gtk_application_get_active_window (app);

  if (RW_IS_WINDOW (active) && rw_window_is_untouched (RW_WINDOW (active)))
    return RW_WINDOW (active);
  return RW_WINDOW (new_window (app));
}

static void
on_open (GtkApplication *app, GFile **files, int count)
{
  for (int i = 0; i < count; i++)
    {
      g_autofree char *path = g_file_get_path (files[i]);
      RwWindow *window = window_for_file (app);

      gtk_window_present (GTK_WINDOW (window));
      if (path != NULL)
        rw_window_load (window, path);
    }
}

int
rw_application_run (int argc, char **argv)
{
  gint64 start = g_get_monotonic_time ();
  g_autoptr (GtkApplication) app = gtk_application_new (APPLICATION_ID, G_APPLICATION_HANDLES_OPEN);

  rw_language_speak ();
  g_set_application_name ("Rimwright");
  gtk_window_set_default_icon_name (APPLICATION_ID);
  g_object_set_data (G_OBJECT (app), "rw-start", &start);
  g_signal_connect (app, "startup", G_CALLBACK (on_startup), NULL);
  g_signal_connect (app, "activate", G_CALLBACK (on_activate), NULL);
  g_signal_connect (app, "open", G_CALLBACK (on_open), NULL);
  return g_application_run (G_APPLICATION (app), argc, argv);
}
