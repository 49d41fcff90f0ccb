/* Drop-downs of words that are made anew as the build changes. */
#pragma once

#include <gtk/gtk.h>

/* A drop-down without words yet, called name; object's chosen is called, with object first, when another is
 * selected. */
GtkWidget *rw_drop_down_new (const char *name, GCallback chosen, gpointer object);

/* Gives it other words (of char *) and selects one of them, which calls chosen too. */
void rw_drop_down_fill (GtkWidget *drop_down, GPtrArray *words, guint selected);
