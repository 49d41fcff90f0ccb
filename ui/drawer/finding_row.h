/* A finding in its list: mark, severity and text; opened, what helps, each remedy to be tried on the drawing
 * by pointing at it and applied by a press, and a place to accept the finding with a reason. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_FINDING_ROW (rw_finding_row_get_type ())
G_DECLARE_FINAL_TYPE (RwFindingRow, rw_finding_row, RW, FINDING_ROW, GtkListBoxRow)

GtkWidget *rw_finding_row_new (RwDocument *document);

/* finding is one of the document's, and kept while it is shown: what the document finds meanwhile is shown later while
 * something is dragged or the list is out of sight.  Remedies are looked for only when open. */
void             rw_finding_row_show    (RwFindingRow *self, const RwFinding *finding, gboolean open);
const RwFinding *rw_finding_row_finding (RwFindingRow *self);
