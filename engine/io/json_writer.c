#include "json_writer.h"

RwJsonWriter
rw_json_writer (GString *out)
{
  return (RwJsonWriter){ out, 0, 0, TRUE };
}

void
rw_json_begin (RwJsonWriter *writer, char mark)
{
  g_string_append_c (writer->out, mark);
  writer->indent += 2;
  writer->first = TRUE;
}

void
rw_json_begin_line (RwJsonWriter *writer, char mark)
{
  rw_json_begin (writer, mark);
  if (writer->line == 0)
    writer->line = writer->indent;
}

void
rw_json_next (RwJsonWriter *writer)
{
  g_string_append (writer->out, writer->first ? "" : ",");
  if (writer->line > 0)
    g_string_append_c (writer->out, ' ');
  else
    g_string_append_printf (writer->out, "\n%*s", writer->indent, "");
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
  if (!writer->first && writer->line > 0)
    g_string_append_c (writer->out, ' ');
  else if (!writer->first)
    g_string_append_printf (writer->out, "\n%*s", writer->indent, "");
  g_string_append_c (writer->out, mark);
  if (writer->indent < writer->line)
    writer->line = 0;
  writer->first = FALSE;
}

void
rw_json_text (RwJsonWriter *writer, const char *name, const char *text)
{
  rw_json_name (writer, name);
  if (text != NULL)
    rw_json_string (writer->out, text);
  else
    g_string_append (writer->out, "null");
}

void
rw_json_value (RwJsonWriter *writer, const char *name, double value)
{
  rw_json_name (writer, name);
  rw_json_number (writer->out, value);
}

void
rw_json_flag (RwJsonWriter *writer, const char *name, gboolean value)
{
  rw_json_name (writer, name);
  g_string_append (writer->out, value ? "true" : "false");
}

void
rw_json_texts (RwJsonWriter *writer, const char *name, const char *const *texts)
{
  rw_json_name (writer, name);
  rw_json_begin_line (writer, '[');
  for (int i = 0; texts[i] != NULL; i++)
    {
      rw_json_next (writer);
      rw_json_string (writer->out, texts[i]);
    }
  rw_json_end (writer, ']');
}
