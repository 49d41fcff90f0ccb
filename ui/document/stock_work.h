/* Planning the cuts off the window's thread: a plan, and where the shelf will not do, what would help.
 *
 * Signals
 *   changed ()  there is another plan, or the work has begun or ended
 */
#pragma once

#include <gio/gio.h>

#include "document.h"
#include "stock/stock_remedy.h"

#define RW_TYPE_STOCK_WORK (rw_stock_work_get_type ())
G_DECLARE_FINAL_TYPE (RwStockWork, rw_stock_work, RW, STOCK_WORK, GObject)

RwStockWork     *rw_stock_work_new      (RwDocument *document);
/* Plans the build as it is now from a shelf; what is at work on another is given up. */
void             rw_stock_work_want     (RwStockWork *self, const RwShelf *shelf);
void             rw_stock_work_stop     (RwStockWork *self);
gboolean         rw_stock_work_busy     (RwStockWork *self);
const RwCutting *rw_stock_work_cutting  (RwStockWork *self); /* NULL: none yet */
const GPtrArray *rw_stock_work_remedies (RwStockWork *self); /* of RwStockRemedy */
const RwDesign  *rw_stock_work_design   (RwStockWork *self); /* that the plan is for */
