/* The dimension list: every number the shop needs, by part or by step, with what was measured. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_DIMENSIONS_PANE (rw_dimensions_pane_get_type ())
G_DECLARE_FINAL_TYPE (RwDimensionsPane, rw_dimensions_pane, RW, DIMENSIONS_PANE, GtkBox)

GtkWidget *rw_dimensions_pane_new   (RwDocument *document);
/* Search and grouping, to be put where there is room for them. */
GtkWidget *rw_dimensions_pane_tools (RwDimensionsPane *self);
