/* JSON on several lines: what is inside a list or object goes on lines of its own, two spaces in.
 *
 *   rw_json_begin (&writer, '{');
 *   rw_json_name (&writer, "name");            begins a line, to be followed by one value
 *   rw_json_string (writer.out, "...");
 *   rw_json_end (&writer, '}');
 */
#pragma once

#include "json_text.h"

typedef struct
{
  GString *out;
  int      indent;
  gboolean first; /* nothing stands in the present list or object yet */
} RwJsonWriter;

void rw_json_begin (RwJsonWriter *writer, char mark);
void rw_json_next  (RwJsonWriter *writer); /* a line for the next item of a list */
void rw_json_name  (RwJsonWriter *writer, const char *name);
void rw_json_end   (RwJsonWriter *writer, char mark);
