/* The entry of a parameter that is typed: a number, a list, a string set.
 *
 * What is typed goes into the design as soon as it can be read, and is one step of undo until Enter or
 * until the focus leaves.  What can't be read leaves the design as it was and is complained of: after a
 * moment's pause while typing, at once on leaving.  Escape puts back what was there.  Up and Down nudge a
 * number by a step, Page Up and Page Down by ten.
 *
 * Signal
 *   complaint (const char *message)  why the text is refused; NULL: nothing to complain of any more
 */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_PARAM_ENTRY (rw_param_entry_get_type ())
G_DECLARE_FINAL_TYPE (RwParamEntry, rw_param_entry, RW, PARAM_ENTRY, GtkEntry)

GtkWidget *rw_param_entry_new     (RwDocument *document, RwParamId id);
/* Shows the document's value, unless the maker is just typing another. */
void       rw_param_entry_refresh (RwParamEntry *self);
