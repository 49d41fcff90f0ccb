/* Columns for people, on a terminal or on paper: every column is as wide as its widest text. */
#pragma once

#include <glib.h>

#define RW_TEXT_TABLE_MOST 16 /* columns */

typedef struct
{
  GPtrArray *rows;  /* of char ** */
  guint      right; /* bit k: column k is set to the right */
} RwTextTable;

RwTextTable rw_text_table_new (guint right);
/* Fields are NULL-ended.  A row of one field only is a heading, with a blank line before it. */
void        rw_text_table_add (RwTextTable *table, const char *const *fields);
/* The text, new; takes the rows over. */
char       *rw_text_table_end (RwTextTable *table);
