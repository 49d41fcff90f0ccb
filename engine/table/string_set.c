/* Sets of strings as text. */
#include "param_text.h"

#include <glib/gi18n-lib.h>
#include <string.h>

#include "named_set.h"
#include "note.h"
#include "unit.h"

/* Two at full length, from which the spacing at the nut comes, and the one that may be short. */
#define STRINGS_MIN 3

static const RwRange outer_range = { 0.1, 3, "mm" };
static const RwRange core_range = { 0.05, 3, "mm" };
static const RwRange wrap_range = { 500, 23000, "kg/m3" }; /* nylon to gold */
static const RwRange mass_range = { 0.00001, 0.05, "kg/m" };
static const RwRange hertz_range = { 20, 2000, "Hz" };

/* One string being read: its words, of which there is at least one, and the one to read next. */
typedef struct
{
  char      **words;
  int         at;
  RwStyle     style;
  const char *label; /* "String set, string 3" */
  GError    **error;
} Reader;

static gboolean
fail (Reader *reader, RwParamError code, const char *format, const char *word)
{
  g_autofree char *reason = g_strdup_printf (format, word);

  g_set_error (reader->error, RW_PARAM_ERROR, (int) code, "%s: %s", reader->label, reason);
  return FALSE;
}

static gboolean
read_in_range (Reader *reader, const char *text, const RwRange *range, double *value)
{
  return rw_range_read (range, text, reader->style, reader->label, value, reader->error);
}

/* A length in one word, or in two: "0.254", "0.010in", "0.010 in". */
static gboolean
read_length (Reader *reader, const RwRange *range, double *value)
{
  const char      *word = reader->words[reader->at];
  g_autofree char *both = NULL;
  size_t           length;

  if (word == NULL)
    return fail (reader, RW_PARAM_ERROR_VALUE, _("a diameter is missing after “%s”"),
                 reader->words[reader->at - 1]);
  reader->at++;
  if (reader->words[reader->at] != NULL
      && rw_unit_match (reader->words[reader->at], rw_unit_find ("mm"), &length) != NULL
      && reader->words[reader->at][length] == '\0')
    word = both = g_strconcat (word, " ", reader->words[reader->at++], NULL);
  return read_in_range (reader, word, range, value);
}

static gboolean
read_note (Reader *reader, RwString *string)
{
  const char      *word = reader->words[reader->at++];
  g_autofree char *name = rw_note_name (word);
  double           hertz;

  if (name != NULL)
    {
      g_strlcpy (string->note, name, sizeof string->note);
      return TRUE;
    }
  if (!g_ascii_isdigit (word[0]))
    return fail (reader, RW_PARAM_ERROR_VALUE, _("“%s” is no note like D4, F#3 or Bb3, and no frequency"),
                 word);
  if (!read_in_range (reader, word, &hertz_range, &hertz))
    return FALSE;
  g_ascii_formatd (string->note, sizeof string->note, "%.9g", hertz);
  return TRUE;
}

static gboolean
read_winding (Reader *reader, RwString *string)
{
  const char *word = reader->words[reader->at];

  if (g_strcmp0 (word, "p") == 0)
    {
      reader->at++;
      return TRUE;
    }
  if (g_strcmp0 (word, "w") != 0)
    return fail (reader, RW_PARAM_ERROR_VALUE,
                 _("after the diameter comes p for plain or w and the core, not “%s”"),
                 word != NULL ? word : "");
  reader->at++;
  if (!read_length (reader, &core_range, &string->core_mm))
    return FALSE;
  if (string->core_mm >= string->outer_mm)
    return fail (reader, RW_PARAM_ERROR_RANGE, _("the core of “%s” is as thick as the string"),
                 string->note);
  return TRUE;
}

static gboolean
read_option (Reader *reader, RwString *string)
{
  const char *word = reader->words[reader->at++];

  int wire = rw_wire_find (word);

  if (strcmp (word, "short") == 0)
    string->is_short = TRUE;
  else if (wire >= 0)
    string->wire = (RwWire) wire;
  else if (g_str_has_prefix (word, "mass="))
    return read_in_range (reader, word + strlen ("mass="), &mass_range, &string->mass_kg_m);
  else if (g_str_has_prefix (word, "rho=") && string->core_mm > 0)
    return read_in_range (reader, word + strlen ("rho="), &wrap_range, &string->wrap_kg_m3);
  else if (g_str_has_prefix (word, "rho="))
    return fail (reader, RW_PARAM_ERROR_VALUE, _("“%s” is for the wrap of a wound string"), word);
  else
    return fail (reader, RW_PARAM_ERROR_VALUE, _("“%s” is none of short, nylon, gut, rho= and mass="), word);
  return TRUE;
}

/* The words of a text, without the empty ones between blanks. */
static char **
words_of (const char *text)
{
  g_autoptr (GStrvBuilder) words = g_strv_builder_new ();
  g_auto (GStrv)           all = g_strsplit_set (text, " \t\n\r", -1);

  for (int i = 0; all[i] != NULL; i++)
    if (*all[i] != '\0')
      g_strv_builder_add (words, all[i]);
  return g_strv_builder_end (words);
}

static gboolean
read_string (RwString *string, const char *text, RwStyle style, const char *label, GError **error)
{
  g_auto (GStrv) words = words_of (text);
  Reader         reader = { words, 0, style, label, error };

  if (!read_note (&reader, string) || !read_length (&reader, &outer_range, &string->outer_mm)
      || !read_winding (&reader, string))
    return FALSE;
  while (words[reader.at] != NULL)
    if (!read_option (&reader, string))
      return FALSE;
  return TRUE;
}

static gboolean
check_short (const RwStringSet *set, const char *label, GError **error)
{
  for (int i = 0; i < set->count - 1; i++)
    if (set->at[i].is_short)
      {
        g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE,
                     _("%s: string %d is short, but only the last may be"), label, i + 1);
        return FALSE;
      }
  return TRUE;
}

static gboolean
take_named (RwStringSet *set, const char *name, const char *label, GError **error)
{
  g_autoptr (GString) names = g_string_new (NULL);
  int row = rw_string_set_find (name);

  if (row >= 0)
    {
      rw_string_set_take (set, row);
      return TRUE;
    }
  for (int i = 0; i < rw_string_sets_count; i++)
    g_string_append_printf (names, "%s%s", i > 0 ? ", " : "", rw_string_sets[i].id);
  g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE, _("%s: “%s” is none of the sets %s"), label, name,
               names->str);
  return FALSE;
}

gboolean
rw_string_set_read (RwStringSet *set, const char *text, RwStyle style, const char *label, GError **error)
{
  g_autofree char *word = g_strstrip (g_strdup (text));

  /* A lone word is the name of a set. */
  if (g_ascii_isalpha (word[0]) && strpbrk (word, "; \t\n\r") == NULL)
    return take_named (set, word, label, error);

  g_auto (GStrv) items = rw_items_read (text, label, STRINGS_MIN, RW_STRINGS_MAX, error);
  RwStringSet    read;

  if (items == NULL)
    return FALSE;
  memset (&read, 0, sizeof read);
  for (; items[read.count] != NULL; read.count++)
    {
      g_autofree char *which = g_strdup_printf (_("%s, string %d"), label, read.count + 1);

      if (!read_string (&read.at[read.count], items[read.count], style, which, error))
        return FALSE;
    }
  if (!check_short (&read, label, error))
    return FALSE;
  memcpy (set, &read, sizeof read);
  return TRUE;
}

static void
write_option (GString *text, const char *name, double value, const char *unit, RwStyle style)
{
  if (value > 0)
    {
      g_autofree char *number = rw_number_in_style (value, unit, style);

      g_string_append_printf (text, " %s=%s", name, number);
    }
}

static void
write_string (GString *text, const RwString *string, RwStyle style)
{
  g_autofree char *outer = rw_number_in_style (string->outer_mm, "mm", style);
  g_autofree char *core = rw_number_in_style (string->core_mm, "mm", style);

  g_string_append_printf (text, "%s %s %s", string->note, outer, string->core_mm > 0 ? "w " : "p");
  if (string->core_mm > 0)
    g_string_append (text, core);
  if (string->is_short)
    g_string_append (text, " short");
  if (string->wire != RW_WIRE_STEEL)
    g_string_append_printf (text, " %s", rw_wires[string->wire].id);
  write_option (text, "rho", string->wrap_kg_m3, "kg/m3", style);
  write_option (text, "mass", string->mass_kg_m, "kg/m", style);
}

char *
rw_string_set_write (const RwStringSet *set, RwStyle style)
{
  GString *text = g_string_new (NULL);

  if (rw_units_parts (style.units) > 0) /* no one calls a string 1/64 */
    style.units = RW_UNITS_INCH;
  for (int i = 0; i < set->count; i++)
    {
      if (i > 0)
        g_string_append (text, "; ");
      write_string (text, &set->at[i], style);
    }
  return g_string_free (text, FALSE);
}
