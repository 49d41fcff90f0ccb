/* The keys: what can be done without a pointer, and by which keys. */
#pragma once

#include <gtk/gtk.h>

/* The keys of actions are those that the application has given them. */
GtkWidget *rw_keys_window_new (GtkWindow *parent);
