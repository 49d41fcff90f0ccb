/* The page of the drawer that asks whether the wood will do: the shelf, the cutting plan, what is missing and what
 * would help. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_STOCK_PANE (rw_stock_pane_get_type ())
G_DECLARE_FINAL_TYPE (RwStockPane, rw_stock_pane, RW, STOCK_PANE, GtkBox)

GtkWidget *rw_stock_pane_new (RwDocument *document);

/* Which shelf, and what can be done with it, for the drawer's bar; owned by the pane. */
GtkWidget *rw_stock_pane_tools (RwStockPane *self);
