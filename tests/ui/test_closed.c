/* Windows closed in the middle of something. */
#include "papers/papers_form.h"
#include "papers/papers_window.h"

#define LONG_ENOUGH_US (1000 * 1000) /* for all that a window puts off */

static GtkWidget *
find_form (GtkWidget *widget)
{
  GtkWidget *found = RW_IS_PAPERS_FORM (widget) ? widget : NULL;

  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL && found == NULL;
       child = gtk_widget_get_next_sibling (child))
    found = find_form (child);
  return found;
}

static void
pass (gint64 time)
{
  gint64 end = g_get_monotonic_time () + time;

  while (g_get_monotonic_time () < end)
    if (!g_main_context_iteration (NULL, FALSE))
      g_usleep (1000);
}

/* The form tells of what was typed when the focus leaves it, and the window that goes takes the focus. */
static void
test_papers_chosen_late (void)
{
  g_autoptr (RwDocument) document = rw_document_new ();
  GtkWidget *parent = gtk_window_new (), *papers, *form;

  gtk_window_present (GTK_WINDOW (parent));
  papers = g_object_ref (rw_papers_window_new (GTK_WINDOW (parent), document));
  form = g_object_ref (find_form (papers));
  gtk_window_destroy (GTK_WINDOW (papers));
  g_object_run_dispose (G_OBJECT (papers));
  g_signal_emit_by_name (form, "chosen");
  pass (LONG_ENOUGH_US);
  g_object_unref (form);
  g_object_unref (papers);
  gtk_window_destroy (GTK_WINDOW (parent));
}

int
main (int argc, char **argv)
{
  gtk_init ();
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/closed/papers/chosen-late", test_papers_chosen_late);
  return g_test_run ();
}
