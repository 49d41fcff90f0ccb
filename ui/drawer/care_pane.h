/* The care page of the drawer: where care pays, what a shop's builds spread to, and what that is worked out from. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_CARE_PANE (rw_care_pane_get_type ())
G_DECLARE_FINAL_TYPE (RwCarePane, rw_care_pane, RW, CARE_PANE, GtkBox)

GtkWidget *rw_care_pane_new   (RwDocument *document);
/* What is shown and how; to stand wherever there is room. */
GtkWidget *rw_care_pane_tools (RwCarePane *self);
