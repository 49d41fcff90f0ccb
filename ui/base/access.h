/* Names for people who hear the window instead of seeing it. */
#pragma once

#include <gtk/gtk.h>

/* What a control is called; for one whose own text does not say it. */
void rw_access_name     (GtkWidget *widget, const char *name);
/* What else there is to say of it. */
void rw_access_describe (GtkWidget *widget, const char *text);
/* A button that shows an icon, or a short sign, with its name as tooltip too. */
void rw_access_title    (GtkWidget *widget, const char *title);
