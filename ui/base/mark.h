/* The mark of a finding: told by its shape before its colour.  Stop is a filled octagon, caution a filled
 * triangle, note a ring. */
#pragma once

#include <gtk/gtk.h>

#include "check/finding.h"

#define RW_TYPE_MARK (rw_mark_get_type ())
G_DECLARE_FINAL_TYPE (RwMark, rw_mark, RW, MARK, GtkWidget)

GtkWidget *rw_mark_new (RwSeverity severity);
void       rw_mark_set (RwMark *self, RwSeverity severity);
/* Shows the mark of a finding and tells its text on hovering; NULL hides it. */
void       rw_mark_show (RwMark *self, const RwFinding *finding, RwStyle style);
