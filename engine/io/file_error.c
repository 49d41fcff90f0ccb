#include "file_error.h"

#define QUOTE_MAX 60 /* characters */

G_DEFINE_QUARK (rw-file-error-quark, rw_file_error)

char *
rw_file_quote (const char *text)
{
  g_autofree char *valid = g_utf8_make_valid (text, -1);
  GString *quoted = g_string_new ("“");
  const char *at = valid;

  for (int i = 0; *at != '\0' && i < QUOTE_MAX; i++, at = g_utf8_next_char (at))
    {
      gunichar c = g_utf8_get_char (at);

      g_string_append_unichar (quoted, g_unichar_isprint (c) ? c : '?');
    }
  if (*at != '\0')
    g_string_append (quoted, "…");
  g_string_append (quoted, "”");
  return g_string_free (quoted, FALSE);
}
