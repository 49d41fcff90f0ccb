#include "json_scan.h"

#include <errno.h>
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

typedef struct
{
  const char *start, *at, *end;
  int         depth;
  GError    **error;
} Scan;

static gboolean scan_value (Scan *scan);

/* ---- messages ---- */

/* Says what is wrong, in words still to be translated, and where. */
static gboolean
fail (Scan *scan, const char *where, RwFileError code, const char *what)
{
  const char *line_start = scan->start;
  int line = 1;

  for (const char *p = scan->start; p < where; p++)
    if (*p == '\n')
      {
        line++;
        line_start = p + 1;
      }
  g_set_error (scan->error, RW_FILE_ERROR, code, _("Line %d, column %ld: %s"), line,
               g_utf8_strlen (line_start, where - line_start) + 1, _(what));
  return FALSE;
}

static gboolean
damaged (Scan *scan, const char *where, const char *what)
{
  return fail (scan, where, RW_FILE_ERROR_DAMAGED, where < scan->end ? what : N_("the text breaks off"));
}

/* ---- single characters ---- */

/* The character at a place, 0 at the end.  The text itself holds no 0: it is valid UTF-8 by then. */
static char
char_at (const Scan *scan, const char *at)
{
  return at < scan->end ? *at : '\0';
}

static char
peek (const Scan *scan)
{
  return char_at (scan, scan->at);
}

static gboolean
take (Scan *scan, char c)
{
  if (peek (scan) != c)
    return FALSE;
  scan->at++;
  return TRUE;
}

/* To the next character that says something. */
static gboolean
skip_space (Scan *scan)
{
  while (scan->at < scan->end && strchr (" \t\r\n", *scan->at) != NULL)
    scan->at++;
  if (peek (scan) == '/' || peek (scan) == '#')
    return damaged (scan, scan->at, N_("a comment, which JSON does not have"));
  return TRUE;
}

/* ---- strings ---- */

/* The four hexadecimal digits at scan->at, or -1. */
static int
take_hex4 (Scan *scan)
{
  int code = 0;

  for (int i = 0; i < 4; i++)
    {
      int digit = g_ascii_xdigit_value (peek (scan));

      if (digit < 0)
        return -1;
      code = 16 * code + digit;
      scan->at++;
    }
  return code;
}

/* What follows "\u"; a pair of surrogates is one character. */
static gboolean
scan_unicode_escape (Scan *scan, GString *decoded)
{
  const char *where = scan->at - 2;
  int code = take_hex4 (scan), low;

  if (code < 0)
    return damaged (scan, scan->at, N_("\\u needs four hexadecimal digits"));
  if (code == 0)
    return damaged (scan, where, N_("the character \\u0000 is not allowed"));
  if (code >= 0xD800 && code <= 0xDFFF)
    {
      gboolean more = code < 0xDC00 && take (scan, '\\') && take (scan, 'u');

      low = more ? take_hex4 (scan) : -1;
      if (low < 0xDC00 || low > 0xDFFF)
        return damaged (scan, where, N_("half of a surrogate pair"));
      code = 0x10000 + ((code - 0xD800) << 10) + (low - 0xDC00);
    }
  g_string_append_unichar (decoded, (gunichar) code);
  return TRUE;
}

static gboolean
scan_escape (Scan *scan, GString *decoded)
{
  static const char letters[] = "\"\\/bfnrt", meant[] = "\"\\/\b\f\n\r\t";
  const char *letter;

  if (take (scan, 'u'))
    return scan_unicode_escape (scan, decoded);
  letter = peek (scan) != '\0' ? strchr (letters, peek (scan)) : NULL;
  if (letter == NULL)
    return damaged (scan, scan->at, N_("an unknown letter after \\"));
  g_string_append_c (decoded, meant[letter - letters]);
  scan->at++;
  return TRUE;
}

/* A string from its opening quotation mark on; decoded takes what it says. */
static gboolean
scan_string (Scan *scan, GString *decoded)
{
  if (peek (scan) == '\'')
    return damaged (scan, scan->at, N_("single quotation marks; JSON has double ones"));
  if (!take (scan, '"'))
    return damaged (scan, scan->at, N_("a name in quotation marks is missing"));
  while (!take (scan, '"'))
    {
      if (scan->at == scan->end)
        return damaged (scan, scan->at, "");
      if ((guchar) *scan->at < 0x20)
        return damaged (scan, scan->at, N_("a line break or control character inside a text"));
      if (!take (scan, '\\'))
        g_string_append_c (decoded, *scan->at++);
      else if (!scan_escape (scan, decoded))
        return FALSE;
    }
  return TRUE;
}

/* ---- numbers and words ---- */

static gboolean
take_digits (Scan *scan)
{
  const char *from = scan->at;

  while (g_ascii_isdigit (peek (scan)))
    scan->at++;
  return scan->at > from;
}

static gboolean
fits (const char *from, const char *to, gboolean whole)
{
  g_autofree char *digits = g_strndup (from, (gsize) (to - from));

  errno = 0;
  if (whole)
    return g_ascii_strtoull (digits, NULL, 10) <= G_MAXINT64 && errno == 0;
  return isfinite (g_ascii_strtod (digits, NULL));
}

static gboolean
scan_number (Scan *scan)
{
  const char *from = scan->at, *digits;
  gboolean whole = TRUE;

  take (scan, '-');
  digits = scan->at;
  if (peek (scan) == 'I')
    return damaged (scan, from, N_("Infinity is no number in JSON"));
  if (!take_digits (scan))
    return damaged (scan, scan->at, N_("a digit is missing"));
  if (*digits == '0' && scan->at - digits > 1)
    return damaged (scan, from, N_("a number with a leading zero"));
  if (take (scan, '.'))
    {
      whole = FALSE;
      if (!take_digits (scan))
        return damaged (scan, scan->at, N_("a digit is missing"));
    }
  if (take (scan, 'e') || take (scan, 'E'))
    {
      whole = FALSE;
      if (!take (scan, '+'))
        take (scan, '-');
      if (!take_digits (scan))
        return damaged (scan, scan->at, N_("a digit is missing"));
    }
  if (!fits (digits, scan->at, whole))
    return damaged (scan, from, N_("a number too large to be read"));
  return TRUE;
}

static gboolean
scan_word (Scan *scan)
{
  static const char *const words[] = { "true", "false", "null" };

  for (gsize i = 0; i < G_N_ELEMENTS (words); i++)
    {
      gsize length = strlen (words[i]);

      if ((gsize) (scan->end - scan->at) >= length && memcmp (scan->at, words[i], length) == 0
          && !g_ascii_isalnum (char_at (scan, scan->at + length)))
        {
          scan->at += length;
          return TRUE;
        }
    }
  if (peek (scan) == 'N' || peek (scan) == 'I')
    return damaged (scan, scan->at, N_("NaN and Infinity are no numbers in JSON"));
  if (peek (scan) == '\'')
    return damaged (scan, scan->at, N_("single quotation marks; JSON has double ones"));
  return damaged (scan, scan->at, N_("a value is missing or misspelt"));
}

/* ---- lists and objects ---- */

static gboolean
enter (Scan *scan)
{
  if (scan->depth == RW_JSON_MAX_DEPTH)
    return fail (scan, scan->at, RW_FILE_ERROR_TOO_BIG, N_("nested too deeply"));
  scan->depth++;
  scan->at++;
  return skip_space (scan);
}

/* After an item: *done at the closing mark; else past a comma, at the next item. */
static gboolean
next_item (Scan *scan, char close, gboolean *done)
{
  if (!skip_space (scan))
    return FALSE;
  *done = take (scan, close);
  if (*done)
    {
      scan->depth--;
      return TRUE;
    }
  if (!take (scan, ','))
    return damaged (scan, scan->at, close == '}' ? N_("a comma or a closing brace is missing")
                                                 : N_("a comma or a closing bracket is missing"));
  return skip_space (scan);
}

static gboolean
scan_list (Scan *scan)
{
  gboolean done = FALSE;

  if (!enter (scan))
    return FALSE;
  if (peek (scan) == ']')
    return next_item (scan, ']', &done);
  while (!done)
    if (!scan_value (scan) || !next_item (scan, ']', &done))
      return FALSE;
  return TRUE;
}

static gboolean
scan_member (Scan *scan, GHashTable *names)
{
  GString *name = g_string_new (NULL);
  const char *where = scan->at;

  if (!scan_string (scan, name))
    {
      g_string_free (name, TRUE);
      return FALSE;
    }
  if (!g_hash_table_add (names, g_string_free (name, FALSE)))
    return damaged (scan, where, N_("a second member of the same name"));
  if (!skip_space (scan))
    return FALSE;
  if (!take (scan, ':'))
    return damaged (scan, scan->at, N_("a colon is missing"));
  return skip_space (scan) && scan_value (scan);
}

static gboolean
scan_object (Scan *scan)
{
  g_autoptr (GHashTable) names = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  gboolean done = FALSE;

  if (!enter (scan))
    return FALSE;
  if (peek (scan) == '}')
    return next_item (scan, '}', &done);
  while (!done)
    if (!scan_member (scan, names) || !next_item (scan, '}', &done))
      return FALSE;
  return TRUE;
}

static gboolean
scan_value (Scan *scan)
{
  GString *text;
  gboolean good;

  switch (peek (scan))
    {
    case '{':
      return scan_object (scan);
    case '[':
      return scan_list (scan);
    case '"':
      text = g_string_new (NULL);
      good = scan_string (scan, text);
      g_string_free (text, TRUE);
      return good;
    default:
      return peek (scan) == '-' || g_ascii_isdigit (peek (scan)) ? scan_number (scan) : scan_word (scan);
    }
}

/* ---- the whole ---- */

static gboolean
check_bytes (Scan *scan)
{
  const char *bad;

  if (scan->end - scan->start > RW_JSON_MAX_BYTES)
    {
      g_set_error_literal (scan->error, RW_FILE_ERROR, RW_FILE_ERROR_TOO_BIG,
                           _("The file is larger than 8 MiB, more than any project"));
      return FALSE;
    }
  if (!g_utf8_validate (scan->start, scan->end - scan->start, &bad))
    return damaged (scan, bad, N_("a byte that is no text in UTF-8"));
  if (scan->end - scan->start >= 3 && memcmp (scan->start, "\xEF\xBB\xBF", 3) == 0)
    return damaged (scan, scan->start, N_("a byte order mark, which JSON does not have"));
  return TRUE;
}

gboolean
rw_json_scan (const char *text, gsize length, GError **error)
{
  Scan scan = { text, text, text + length, 0, error };

  if (!check_bytes (&scan) || !skip_space (&scan))
    return FALSE;
  if (scan.at == scan.end)
    {
      g_set_error_literal (error, RW_FILE_ERROR, RW_FILE_ERROR_DAMAGED, _("The file is empty"));
      return FALSE;
    }
  if (!scan_value (&scan) || !skip_space (&scan))
    return FALSE;
  if (scan.at < scan.end)
    return damaged (&scan, scan.at, N_("more text after the end"));
  return TRUE;
}
