/* The yardstick for starting: an empty GTK window that leaves after its first painted frame and prints the
 * milliseconds since main began, as the program does with RIMWRIGHT_EXIT_AFTER_FIRST_FRAME. */
#include <gtk/gtk.h>

static gint64 begun;

static void
painted (GdkFrameClock *clock, gpointer data)
{
  g_print ("%.1f\n", (double) (g_get_monotonic_time () - begun) / 1000);
  exit (0);
}

static void
realized (GtkWidget *window, gpointer data)
{
  g_signal_connect (gtk_widget_get_frame_clock (window), "after-paint", G_CALLBACK (painted), NULL);
}

static void
activate (GtkApplication *application, gpointer data)
{
  GtkWidget *window = gtk_application_window_new (application);

  gtk_window_set_default_size (GTK_WINDOW (window), 1280, 800);
  g_signal_connect (window, "realize", G_CALLBACK (realized), NULL);
  gtk_window_present (GTK_WINDOW (window));
}

int
main (int argc, char **argv)
{
  begun = g_get_monotonic_time ();
  g_autoptr (GtkApplication) application = gtk_application_new (NULL, G_APPLICATION_NON_UNIQUE);

  g_signal_connect (application, "activate", G_CALLBACK (activate), NULL);
  return g_application_run (G_APPLICATION (application), argc, argv);
}
