/* JSON on several lines: what is inside a list or object goes on lines of its own, two spaces in.
 *
 *   RwJsonWriter writer = rw_json_writer (g_string_new (NULL));
 *
 *   rw_json_begin (&writer, '{');
 *   rw_json_text (&writer, "name", "...");
 *   rw_json_name (&writer, "rows");            begins a member, to be followed by one value
 *   rw_json_begin (&writer, '[');
 *   rw_json_next (&writer);                    begins an item of a list, likewise
 *   rw_json_begin_line (&writer, '{');         all of this object goes on one line
 *   rw_json_value (&writer, "at", 1.5);
 *   rw_json_end (&writer, '}');
 *   rw_json_end (&writer, ']');
 *   rw_json_end (&writer, '}');
 */
#pragma once

#include "json_text.h"

typedef struct
{
  GString *out;
  int      indent;
  int      line;  /* indent of the outermost list or object that is all on one line; 0 outside of any */
  gboolean first; /* nothing stands in the present list or object yet */
} RwJsonWriter;

RwJsonWriter rw_json_writer (GString *out);

void rw_json_begin      (RwJsonWriter *writer, char mark);
void rw_json_begin_line (RwJsonWriter *writer, char mark);
void rw_json_next       (RwJsonWriter *writer);
void rw_json_name       (RwJsonWriter *writer, const char *name);
void rw_json_end        (RwJsonWriter *writer, char mark);

/* Whole members.  null where text is NULL, or value not finite. */
void rw_json_text  (RwJsonWriter *writer, const char *name, const char *text);
void rw_json_value (RwJsonWriter *writer, const char *name, double value);
void rw_json_flag  (RwJsonWriter *writer, const char *name, gboolean value);
/* A list of texts that ends with NULL, on one line. */
void rw_json_texts (RwJsonWriter *writer, const char *name, const char *const *texts);
