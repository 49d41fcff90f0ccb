/* The picture of a cutting plan, as wide as there is room and as high as it takes; to stand in what scrolls.
 * Its accessible description says what each board and bar gives. */
#pragma once

#include <gtk/gtk.h>

#include "stock/cutting.h"
#include "table/param.h"

#define RW_TYPE_CUTTING_VIEW (rw_cutting_view_get_type ())
G_DECLARE_FINAL_TYPE (RwCuttingView, rw_cutting_view, RW, CUTTING_VIEW, GtkWidget)

GtkWidget *rw_cutting_view_new  (void);
/* cutting (NULL: nothing to show) and design are not owned: they must last until the next call. */
void       rw_cutting_view_show (RwCuttingView *self, const RwCutting *cutting, const RwDesign *design, RwStyle style);
