#include "papers_rows.h"

#include "base/access.h"

GtkWidget *
rw_papers_heading (const char *text)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_widget_add_css_class (label, "heading");
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_set_hexpand (label, TRUE);
  return label;
}

GtkWidget *
rw_papers_grid (GtkBox *box)
{
  GtkWidget *grid = gtk_grid_new ();

  gtk_grid_set_row_spacing (GTK_GRID (grid), 6);
  gtk_grid_set_column_spacing (GTK_GRID (grid), 12);
  gtk_box_append (box, grid);
  return grid;
}

void
rw_papers_row (GtkWidget *grid, int row, const char *name, GtkWidget *control)
{
  GtkWidget *label = gtk_label_new (name);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_set_hexpand (label, TRUE);
  rw_access_name (control, name);
  gtk_grid_attach (GTK_GRID (grid), label, 0, row, 1, 1);
  gtk_grid_attach (GTK_GRID (grid), control, 1, row, 1, 1);
}

GtkWidget *
rw_papers_drop_down (const char *const *words, guint chosen, GCallback changed, gpointer data)
{
  GtkWidget *choice = gtk_drop_down_new_from_strings (words);

  gtk_drop_down_set_selected (GTK_DROP_DOWN (choice), chosen);
  g_signal_connect_swapped (choice, "notify::selected", changed, data);
  return choice;
}

GtkWidget *
rw_papers_note (const char *text)
{
  GtkWidget *note = gtk_label_new (text);

  gtk_label_set_wrap (GTK_LABEL (note), TRUE);
  gtk_label_set_xalign (GTK_LABEL (note), 0);
  gtk_label_set_max_width_chars (GTK_LABEL (note), 30);
  gtk_widget_add_css_class (note, "small");
  gtk_widget_add_css_class (note, "dim-label");
  return note;
}
