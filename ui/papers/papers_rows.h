/* How the parts of the papers' form are laid out: headings, and rows of a name with its control. */
#pragma once

#include <gtk/gtk.h>

GtkWidget *rw_papers_heading (const char *text);

/* A grid for rows, at the end of a box. */
GtkWidget *rw_papers_grid    (GtkBox *box);
void       rw_papers_row     (GtkWidget *grid, int row, const char *name, GtkWidget *control);

/* A drop-down of words; changed is called with data, swapped, when another is chosen. */
GtkWidget *rw_papers_drop_down (const char *const *words, guint chosen, GCallback changed, gpointer data);

/* A small note under the rows. */
GtkWidget *rw_papers_note    (const char *text);
