/* The build form: every parameter, in groups that follow the order of the making, made from the table.
 * A filter stands on top; at the foot is said what the selected row means and what may be entered. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_FORM (rw_form_get_type ())
G_DECLARE_FINAL_TYPE (RwForm, rw_form, RW, FORM, GtkBox)

GtkWidget *rw_form_new          (RwDocument *document);
/* Puts the focus into the filter. */
void       rw_form_focus_filter (RwForm *self);
