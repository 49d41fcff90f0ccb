/* What the strict scan lets through and what it refuses, with the place that it names.  Grammar: RFC 8259,
 * The JavaScript Object Notation (JSON) Data Interchange Format, 2017. */
#include "io/json_scan.h"

#include <string.h>

static const struct
{
  const char *name, *text;
} good[] = {
  { "object", "{}" },
  { "list", " [ ] " },
  { "scalar", "null" },
  { "words", "[true, false, null]" },
  { "numbers", "[0, -0, 1, -12, 0.5, -0.5e3, 1E+2, 1e-02, 123456789012345678]" },
  { "least-double", "5e-324" },
  { "greatest-double", "1.7976931348623157e308" },
  { "underflow", "1e-999" },
  { "greatest-integer", "[9223372036854775807, -9223372036854775807]" },
  { "long-decimal", "99999999999999999999.0" },
  { "escapes", "\"\\\"\\\\\\/\\b\\f\\n\\r\\t\\u00e9\"" },
  { "surrogate-pair", "\"\\ud83d\\ude00\"" },
  { "utf8", "\"h\xC3\xA4lt \xF0\x9F\x98\x80\"" },
  { "delete-in-text", "\"\x7F\"" },
  { "white-space", "\t\r\n {\t\"a\"\r:\n1 }\n" },
  { "same-name-elsewhere", "{\"a\": {\"a\": 1}, \"b\": {\"a\": 2}}" },
  { "names-by-case", "{\"a\": 1, \"A\": 2}" },
};

static const struct
{
  const char *name, *text, *place; /* line:column */
} bad[] = {
  { "breaks-off/object", "{", "1:2" },
  { "breaks-off/text", "\"abc", "1:5" },
  { "breaks-off/escape", "\"abc\\", "1:6" },
  { "breaks-off/list", "[1,\n2", "2:2" },
  { "breaks-off/number", "-", "1:2" },
  { "breaks-off/member", "{\"a\"", "1:5" },
  { "breaks-off/value", "{\"a\":\n", "2:1" },
  { "comma/list", "[1,]", "1:4" },
  { "comma/object", "{\"a\": 1,}", "1:9" },
  { "comma/missing", "[1 2]", "1:4" },
  { "comma/first", "[,1]", "1:2" },
  { "bracket", "[1}", "1:3" },
  { "brace", "{\"a\": 1]", "1:8" },
  { "colon", "{\"a\" 1}", "1:6" },
  { "name/bare", "{a: 1}", "1:2" },
  { "name/number", "{1: 1}", "1:2" },
  { "name/twice", "{\"a\": 1,\n \"b\": 2,\n \"a\": 3}", "3:2" },
  { "name/twice-by-escape", "{\"a\": 1, \"\\u0061\": 2}", "1:10" },
  { "name/twice-empty", "{\"\": 1, \"\": 2}", "1:9" },
  { "comment/lines", "{} // end", "1:4" },
  { "comment/block", "/* start */ {}", "1:1" },
  { "comment/hash", "[1, # one\n 2]", "1:5" },
  { "quotes/name", "{'a': 1}", "1:2" },
  { "quotes/text", "['a']", "1:2" },
  { "number/leading-zero", "[01]", "1:2" },
  { "number/leading-zeros-negative", "-007", "1:1" },
  { "number/plus", "+1", "1:1" },
  { "number/no-whole-part", ".5", "1:1" },
  { "number/no-fraction", "[1.]", "1:4" },
  { "number/no-exponent", "[1e]", "1:4" },
  { "number/hexadecimal", "[0x10]", "1:3" },
  { "number/comma", "[\"a\", 27,5]]", "1:12" },
  { "number/overflow", "[1, 1e999]", "1:5" },
  { "number/overflow-negative", "-1e309", "1:1" },
  { "number/large-integer", "99999999999999999999", "1:1" },
  { "number/integer-past-64-bits", "[9223372036854775808]", "1:2" },
  { "number/nan", "[NaN]", "1:2" },
  { "number/infinity", "Infinity", "1:1" },
  { "number/minus-infinity", "[1, -Infinity]", "1:5" },
  { "word/capital", "True", "1:1" },
  { "word/longer", "[nulls]", "1:2" },
  { "word/shorter", "[tru]", "1:2" },
  { "text/line-break", "\"a\nb\"", "1:3" },
  { "text/control", "\"a\x01\"", "1:3" },
  { "text/escape", "\"\\x41\"", "1:3" },
  { "text/hex", "\"\\u12G4\"", "1:6" },
  { "text/zero", "[\"a\\u0000b\"]", "1:4" },
  { "text/high-surrogate", "\"\\ud83d\"", "1:2" },
  { "text/low-surrogate", "\"\\ude00\"", "1:2" },
  { "text/two-high-surrogates", "\"\\ud83d\\ud83d\"", "1:2" },
  { "utf8/stray-byte", "\"\xC3\xA4\x80\"", "1:3" },
  { "utf8/cut", "\"\xC3", "1:2" },
  { "utf8/overlong", "\"\xC0\xAF\"", "1:2" },
  { "utf8/surrogate", "\"\xED\xA0\x80\"", "1:2" },
  { "utf8/latin-1", "{\n\"name\": \"h\xE4lt\"}", "2:11" },
  { "byte-order-mark", "\xEF\xBB\xBF{}", "1:1" },
  { "trailing/word", "{} x", "1:4" },
  { "trailing/value", "1 2", "1:3" },
  { "trailing/brace", "{}\n}", "2:1" },
  { "column-counts-characters", "[\"\xC3\xA4\xC3\xB6\xC3\xBC\", x]", "1:9" },
};

static void
test_good (gconstpointer data)
{
  const char *text = data;
  g_autoptr (GError) error = NULL;

  g_assert_true (rw_json_scan (text, strlen (text), &error));
  g_assert_no_error (error);
}

/* Refused with a message that is one line and names the place. */
static void
test_bad (gconstpointer data)
{
  guint i = GPOINTER_TO_UINT (data);
  g_autoptr (GError) error = NULL;
  g_auto (GStrv) place = g_strsplit (bad[i].place, ":", 2);
  g_autofree char *where = g_strdup_printf ("Line %s, column %s: ", place[0], place[1]);

  g_assert_false (rw_json_scan (bad[i].text, strlen (bad[i].text), &error));
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_DAMAGED);
  g_test_message ("%s", error->message);
  g_assert_true (g_str_has_prefix (error->message, where));
  g_assert_null (strchr (error->message, '\n'));
}

/* Damage anywhere: every beginning of a good text but the whole is refused. */
static void
test_cut (void)
{
  static const char text[] = "{\"a\": [1.5e3, \"x\\u00e9\", true, null], \"b\": {\"c\": -0.25}}";

  for (gsize length = 0; length < strlen (text); length++)
    {
      g_autofree char *exact = g_memdup2 (text, MAX (length, 1)); /* so that reading past the end is found */
      g_autoptr (GError) error = NULL;

      g_assert_false (rw_json_scan (exact, length, &error));
      g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_DAMAGED);
    }
  g_assert_true (rw_json_scan (text, strlen (text), NULL));
}

static void
test_empty (void)
{
  static const char *const texts[] = { "", " \n\t" };

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr (GError) error = NULL;

      g_assert_false (rw_json_scan (texts[i], strlen (texts[i]), &error));
      g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_DAMAGED);
    }
}

/* A zero byte inside the text is refused; length counts, not the zero. */
static void
test_zero_byte (void)
{
  g_autoptr (GError) error = NULL;

  g_assert_false (rw_json_scan ("[1]\0", 4, &error));
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_DAMAGED);
}

static char *
nested (int depth, char open, char close)
{
  GString *text = g_string_new (NULL);

  for (int i = 0; i < depth; i++)
    g_string_append (text, open == '{' ? "{\"a\":" : "[");
  g_string_append_c (text, '1');
  for (int i = 0; i < depth; i++)
    g_string_append_c (text, close);
  return g_string_free (text, FALSE);
}

static void
test_depth (void)
{
  static const char marks[] = "[]{}";

  for (int i = 0; i < 4; i += 2)
    {
      g_autofree char *deep = nested (64, marks[i], marks[i + 1]);
      g_autofree char *deeper = nested (65, marks[i], marks[i + 1]);
      g_autofree char *deepest = nested (500000, marks[i], marks[i + 1]);
      g_autoptr (GError) error = NULL, error2 = NULL;

      g_assert_true (rw_json_scan (deep, strlen (deep), NULL));
      g_assert_false (rw_json_scan (deeper, strlen (deeper), &error));
      g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_TOO_BIG);
      g_assert_false (rw_json_scan (deepest, strlen (deepest), &error2));
      g_assert_error (error2, RW_FILE_ERROR, RW_FILE_ERROR_TOO_BIG);
    }
}

/* Lists one after another are not inside one another. */
static void
test_width (void)
{
  GString *text = g_string_new ("[[]");

  for (int i = 0; i < 1000; i++)
    g_string_append (text, ",[{}]");
  g_string_append_c (text, ']');
  g_assert_true (rw_json_scan (text->str, text->len, NULL));
  g_string_free (text, TRUE);
}

static void
test_size (void)
{
  g_autofree char *text = g_malloc (8 * 1024 * 1024 + 1);
  g_autoptr (GError) error = NULL;

  memset (text, ' ', 8 * 1024 * 1024 + 1);
  text[0] = '1';
  g_assert_true (rw_json_scan (text, 8 * 1024 * 1024, NULL));
  g_assert_false (rw_json_scan (text, 8 * 1024 * 1024 + 1, &error));
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_TOO_BIG);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (good); i++)
    {
      g_autofree char *path = g_strconcat ("/json-scan/good/", good[i].name, NULL);

      g_test_add_data_func (path, good[i].text, test_good);
    }
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autofree char *path = g_strconcat ("/json-scan/bad/", bad[i].name, NULL);

      g_test_add_data_func (path, GUINT_TO_POINTER (i), test_bad);
    }
  g_test_add_func ("/json-scan/cut-anywhere", test_cut);
  g_test_add_func ("/json-scan/empty", test_empty);
  g_test_add_func ("/json-scan/zero-byte", test_zero_byte);
  g_test_add_func ("/json-scan/depth", test_depth);
  g_test_add_func ("/json-scan/width", test_width);
  g_test_add_func ("/json-scan/size", test_size);
  return g_test_run ();
}
