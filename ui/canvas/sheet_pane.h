/* A sheet on the bench: one view of the build, with a strip above it to change to another view.
 *
 * Signals
 *   hint  (const char *)  as the canvas says it
 *   moved ()              likewise
 */
#pragma once

#include <gtk/gtk.h>

#include "canvas.h"

#define RW_TYPE_SHEET_PANE (rw_sheet_pane_get_type ())
G_DECLARE_FINAL_TYPE (RwSheetPane, rw_sheet_pane, RW, SHEET_PANE, GtkBox)

GtkWidget *rw_sheet_pane_new    (RwDocument *document, RwView view);
RwCanvas  *rw_sheet_pane_canvas (RwSheetPane *self);
