#include "json_writer.h"

void
rw_json_begin (RwJsonWriter *writer, char mark)
{
  g_string_append_c (writer->out, mark);
  writer->indent += 2;
  writer->first = TRUE;
}

void
rw_json_next (RwJsonWriter *writer)
{
  g_string_append_printf (writer->out, "%s\n%*s", writer->first ? "" : ",", writer->indent, "");
  writer->first = FALSE;
}

void
rw_json_name (RwJsonWriter *writer, const char *name)
{
  rw_json_next (writer);
  rw_json_string (writer->out, name);
  g_string_append (writer->out, ": ");
}

void
rw_json_end (RwJsonWriter *writer, char mark)
{
  writer->indent -= 2;
  if (!writer->first)
    g_string_append_printf (writer->out, "\n%*s", writer->indent, "");
  g_string_append_c (writer->out, mark);
  writer->first = FALSE;
}
