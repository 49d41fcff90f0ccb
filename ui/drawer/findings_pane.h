/* The findings, worst first, and folded below them those that are accepted.  Choosing one opens it, with what
 * helps, and selects the thing to look at first. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_FINDINGS_PANE (rw_findings_pane_get_type ())
G_DECLARE_FINAL_TYPE (RwFindingsPane, rw_findings_pane, RW, FINDINGS_PANE, GtkBox)

GtkWidget *rw_findings_pane_new (RwDocument *document);
