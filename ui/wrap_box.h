/* Two children side by side, or the second below the first where the box is too narrow for both at the size that they
 * would like to have.  On one line the second has all the width that is left.
 */
#pragma once

#include <gtk/gtk.h>

#define RW_TYPE_WRAP_BOX (rw_wrap_box_get_type ())
G_DECLARE_FINAL_TYPE (RwWrapBox, rw_wrap_box, RW, WRAP_BOX, GtkWidget)

GtkWidget *rw_wrap_box_new (GtkWidget *first, GtkWidget *second);
