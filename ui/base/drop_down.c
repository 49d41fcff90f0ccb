#include "drop_down.h"

#include "access.h"

GtkWidget *
rw_drop_down_new (const char *name, GCallback chosen, gpointer object)
{
  GtkWidget *widget = gtk_drop_down_new (G_LIST_MODEL (gtk_string_list_new (NULL)), NULL);

  rw_access_name (widget, name);
  g_signal_connect_object (widget, "notify::selected", chosen, object, G_CONNECT_SWAPPED);
  return widget;
}

void
rw_drop_down_fill (GtkWidget *drop_down, GPtrArray *words, guint selected)
{
  GtkStringList *list = GTK_STRING_LIST (gtk_drop_down_get_model (GTK_DROP_DOWN (drop_down)));

  g_ptr_array_add (words, NULL);
  gtk_string_list_splice (list, 0, g_list_model_get_n_items (G_LIST_MODEL (list)),
                          (const char *const *) words->pdata);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (drop_down), selected);
}
