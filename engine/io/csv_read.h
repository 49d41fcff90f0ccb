/* Reading comma-separated values: RFC 4180, Common Format and MIME Type for CSV Files, 2005; line ends of any kind. */
#pragma once

#include <glib.h>

typedef struct
{
  guint      line;   /* in the text, from 1, where the row begins */
  GPtrArray *fields; /* of char * */
  gboolean   open;   /* a quotation mark is not closed: the row runs to the end of the text */
} RwCsvRow;

/* All rows but empty ones, as RwCsvRow; frees them.  separator stands for the comma. */
GPtrArray *rw_csv_read (const char *text, gsize length, char separator);
