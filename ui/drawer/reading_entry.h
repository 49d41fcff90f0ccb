/* An entry for what was measured of one number: one reading or several with a semicolon between, what follows from them
 * (mean, spread, how far off), and behind a button the date and a note. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_READING_ENTRY (rw_reading_entry_get_type ())
G_DECLARE_FINAL_TYPE (RwReadingEntry, rw_reading_entry, RW, READING_ENTRY, GtkBox)

/* id: of a parameter, of a course, or of a dimension with its indices written out. */
GtkWidget *rw_reading_entry_new     (RwDocument *document, const char *id);
/* The document has changed.  What is being typed is left alone. */
void       rw_reading_entry_refresh (RwReadingEntry *self);
