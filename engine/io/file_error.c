#include "file_error.h"

#define QUOTE_MAX 60 /* characters */
#define SENTENCE_MAX 300

G_DEFINE_QUARK (rw-file-error-quark, rw_file_error)

static void
append_printable (GString *out, const char *text, int max)
{
  g_autofree char *valid = g_utf8_make_valid (text, -1);
  const char *at = valid;

  for (int i = 0; *at != '\0' && i < max; i++, at = g_utf8_next_char (at))
    {
      gunichar c = g_utf8_get_char (at);

      g_string_append_unichar (out, g_unichar_isprint (c) ? c : '?');
    }
  if (*at != '\0')
    g_string_append (out, "…");
}

char *
rw_file_quote (const char *text)
{
  GString *quoted = g_string_new ("“");

  append_printable (quoted, text, QUOTE_MAX);
  g_string_append (quoted, "”");
  return g_string_free (quoted, FALSE);
}

char *
rw_file_sentence (const char *text)
{
  GString *sentence = g_string_new (NULL);

  append_printable (sentence, text, SENTENCE_MAX);
  return g_string_free (sentence, FALSE);
}
