/* What would make the shelf do: each with a button that applies all of its changes as one step.
 *
 * Signals
 *   apply (RwStockRemedy *)  the maker wants it
 */
#pragma once

#include <gtk/gtk.h>

#include "stock/stock_remedy.h"

#define RW_TYPE_STOCK_REMEDY_LIST (rw_stock_remedy_list_get_type ())
G_DECLARE_FINAL_TYPE (RwStockRemedyList, rw_stock_remedy_list, RW, STOCK_REMEDY_LIST, GtkBox)

GtkWidget *rw_stock_remedy_list_new  (void);
/* remedies (of RwStockRemedy; may be NULL) must last until the next call. */
void       rw_stock_remedy_list_show (RwStockRemedyList *self, const GPtrArray *remedies, RwStyle style);
