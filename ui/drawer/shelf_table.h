/* The shelf as a table to fill in: a row for each board, bar, rod, tube, sheet and wire.
 *
 * Signals
 *   edited ()              rw_shelf_table_shelf() is another, by the maker's hand
 *   said   (const char *)  why an entry was not taken; NULL: nothing is wrong any more
 */
#pragma once

#include <gtk/gtk.h>

#include "project/stock_field.h"

#define RW_TYPE_SHELF_TABLE (rw_shelf_table_get_type ())
G_DECLARE_FINAL_TYPE (RwShelfTable, rw_shelf_table, RW, SHELF_TABLE, GtkWidget)

GtkWidget     *rw_shelf_table_new   (void);
/* Shows a shelf (copied); the same one again is not laid out anew, so that the focus stays. */
void           rw_shelf_table_show  (RwShelfTable *self, const RwShelf *shelf, RwStyle style);
const RwShelf *rw_shelf_table_shelf (RwShelfTable *self);
/* One row more, like the last. */
void           rw_shelf_table_add   (RwShelfTable *self);
