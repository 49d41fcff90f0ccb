/* How a widget shows how things stand with it: style classes put on and taken off. */
#pragma once

#include <gtk/gtk.h>

void rw_look_set (GtkWidget *widget, const char *css_class, gboolean on);

/* An entry whose text can't be taken: told to the eye and to the ear alike. */
void rw_look_refused (GtkWidget *entry, gboolean refused);
