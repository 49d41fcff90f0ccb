/* The strip at the foot: the three results a maker watches, the findings by severity, where the pointer
 * is, and the scale.  Pressing a result asks for what it is made of.
 *
 * Signals
 *   result-pressed   (int slot)  a dimension: the window shows it in the list
 *   findings-pressed ()
 */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_FOOT (rw_foot_get_type ())
G_DECLARE_FINAL_TYPE (RwFoot, rw_foot, RW, FOOT, GtkBox)

GtkWidget *rw_foot_new         (RwDocument *document);
/* Where the pointer is on the sheet, mm; NULL while it is elsewhere. */
void       rw_foot_set_pointer (RwFoot *self, const RwPoint *place);
/* n of "1 : n". */
void       rw_foot_set_scale   (RwFoot *self, double n);
/* What is under the pointer; NULL: nothing. */
void       rw_foot_hint        (RwFoot *self, const char *text);
