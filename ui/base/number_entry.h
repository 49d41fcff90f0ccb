/* An entry for one length that is no parameter of the build: read in the present units, kept in its range. */
#pragma once

#include <gtk/gtk.h>

#include "table/param_text.h"

#define RW_TYPE_NUMBER_ENTRY (rw_number_entry_get_type ())
G_DECLARE_FINAL_TYPE (RwNumberEntry, rw_number_entry, RW, NUMBER_ENTRY, GtkEntry)

/* label names the number in complaints, which are shown as the entry's tooltip; the range's unit is that of
 * the value.
 *
 * Signal
 *   entered  ()   the maker has given a value
 */
GtkWidget *rw_number_entry_new (const RwRange *range, const char *label);

void   rw_number_entry_set_style (RwNumberEntry *self, RwStyle style);
void   rw_number_entry_set_value (RwNumberEntry *self, double value);
double rw_number_entry_value     (RwNumberEntry *self);
