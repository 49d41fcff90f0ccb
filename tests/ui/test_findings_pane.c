/* The list of findings between a change and its being told: while something is dragged, or the list is out of sight,
 * the rows show findings that the document has no more.  What freed memory holds is overwritten (MALLOC_PERTURB_),
 * so that a look at it is a crash. */
#include "drawer/findings_pane.h"

#include <gtk/gtk.h>

static GtkWidget *
window_with (GtkWidget *pane)
{
  GtkWidget *window = gtk_window_new ();

  gtk_window_set_child (GTK_WINDOW (window), pane);
  gtk_window_present (GTK_WINDOW (window));
  while (!gtk_widget_get_mapped (pane))
    g_main_context_iteration (NULL, TRUE);
  return window;
}

/* A build with something to find: a rim of next to no wall. */
static RwDocument *
thin_walled (void)
{
  RwDocument *document = rw_document_new ();
  g_autoptr (GError) error = NULL;

  g_assert_true (rw_document_set_number (document, RW_P_rim_wall, 6, &error));
  g_assert_no_error (error);
  g_assert_cmpuint (rw_document_findings (document)->len, >, 0);
  return document;
}

/* The hand takes hold of the next thing before it has rested. */
static void
test_selected_while_dragged (void)
{
  g_autoptr (RwDocument) document = thin_walled ();
  GtkWidget *window = window_with (rw_findings_pane_new (document));

  rw_document_begin_drag (document, "Wall");
  rw_document_drag_number (document, RW_P_rim_wall, 6.5);
  rw_document_select (document, (RwSubject){ RW_P_rim_wall, -1 });
  rw_document_end_drag (document);
  gtk_window_destroy (GTK_WINDOW (window));
}

/* A finding is opened, which brings it into sight once it is laid out; by then the list is put away, and the build is
 * another. */
static void
test_opened_and_put_away (void)
{
  g_autoptr (RwDocument) document = thin_walled ();
  GtkWidget *pane = rw_findings_pane_new (document), *window = window_with (pane), *list = pane;

  while (!GTK_IS_LIST_BOX (list))
    list = gtk_widget_get_first_child (list);
  gtk_widget_activate (GTK_WIDGET (gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), 0)));
  gtk_widget_hide (pane);
  g_assert_true (rw_document_set_number (document, RW_P_rim_wall, 6.5, NULL));
  while (g_main_context_pending (NULL))
    g_main_context_iteration (NULL, FALSE);
  gtk_window_destroy (GTK_WINDOW (window));
}

int
main (int argc, char **argv)
{
  gtk_init ();
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/findings-pane/selected-while-dragged", test_selected_while_dragged);
  g_test_add_func ("/findings-pane/opened-and-put-away", test_opened_and_put_away);
  return g_test_run ();
}
