/* A row of the form: label, entry or drop-down, unit, and below what there is to say of the value: from
 * what it was worked out, what was measured, why the build has no use for it, why a text was refused. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_FORM_ROW (rw_form_row_get_type ())
G_DECLARE_FINAL_TYPE (RwFormRow, rw_form_row, RW, FORM_ROW, GtkBox)

GtkWidget *rw_form_row_new     (RwDocument *document, RwParamId id);
void       rw_form_row_refresh (RwFormRow *self, RwChange what);
/* Marks the row as the selected one. */
void       rw_form_row_mark    (RwFormRow *self, gboolean marked);
