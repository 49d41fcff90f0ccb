/* A table of words, for reading line by line and for screen readers. */
#pragma once

#include <gtk/gtk.h>

#define RW_TYPE_WORDS_TABLE (rw_words_table_get_type ())
G_DECLARE_FINAL_TYPE (RwWordsTable, rw_words_table, RW, WORDS_TABLE, GtkBox)

GtkWidget *rw_words_table_new  (const char *name);
/* titles, NULL-ended, head the columns; rows (of char **, taken over) have as many fields.  Columns but the first are
 * set to the right where bit k of right is set. */
void       rw_words_table_show (RwWordsTable *self, const char *const *titles, GPtrArray *rows, guint right);
