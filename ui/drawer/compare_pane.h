/* Comparing: what differs between the build and a state of it that was kept, or another project's file.  The
 * other one is drawn as a ghost meanwhile. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_COMPARE_PANE (rw_compare_pane_get_type ())
G_DECLARE_FINAL_TYPE (RwComparePane, rw_compare_pane, RW, COMPARE_PANE, GtkBox)

GtkWidget *rw_compare_pane_new   (RwDocument *document);
/* What to compare with, for the strip over the pane.  A floating reference at the first call. */
GtkWidget *rw_compare_pane_tools (RwComparePane *self);
