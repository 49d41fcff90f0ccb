/* Children side by side, broken into lines where the box is too narrow for all of them at the size that they would like
 * to have.  The last child has all the width that is left on its line.
 */
#pragma once

#include <gtk/gtk.h>

#define RW_TYPE_WRAP_BOX (rw_wrap_box_get_type ())
G_DECLARE_FINAL_TYPE (RwWrapBox, rw_wrap_box, RW, WRAP_BOX, GtkWidget)

GtkWidget *rw_wrap_box_new (GtkWidget *first, GtkWidget *second);

/* None yet, so many pixels apart. */
GtkWidget *rw_wrap_box_new_empty (int spacing);
void       rw_wrap_box_append    (RwWrapBox *self, GtkWidget *child);
