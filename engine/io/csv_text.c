#include "csv_text.h"

#include <string.h>

void
rw_csv_row (GString *out, const char *const *fields)
{
  for (int i = 0; fields[i] != NULL; i++)
    {
      g_string_append (out, i > 0 ? "," : "");
      if (strpbrk (fields[i], ",\"\r\n") == NULL)
        g_string_append (out, fields[i]);
      else
        {
          g_auto (GStrv) parts = g_strsplit (fields[i], "\"", -1);
          g_autofree char *doubled = g_strjoinv ("\"\"", parts);

          g_string_append_printf (out, "\"%s\"", doubled);
        }
    }
  g_string_append (out, "\r\n");
}
