#include "access.h"

void
rw_access_name (GtkWidget *widget, const char *name)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

void
rw_access_describe (GtkWidget *widget, const char *text)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, text, -1);
}

void
rw_access_title (GtkWidget *widget, const char *title)
{
  gtk_widget_set_tooltip_text (widget, title);
  rw_access_name (widget, title);
}
