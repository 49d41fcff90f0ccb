/* What has changed since papers left, as text, CSV and JSON: see steps_file.h. */
#include "steps_file.h"

#include <math.h>

#include "check/listing.h"
#include "csv_text.h"
#include "json_writer.h"
#include "text_table.h"

static const char *
in_english (const char *english)
{
  return english;
}

/* ---- text ---- */

static char *
shown (double value, const char *words, const char *unit, RwUnits units)
{
  if (words != NULL)
    return g_strdup (words);
  return isfinite (value) ? rw_quantity_show (value, unit, units, '.') : g_strdup ("none");
}

static void
add_row (RwTextTable *table, const RwSinceRow *row, RwUnits units)
{
  g_autofree char *label = rw_reading_label (row->id, in_english);
  g_autofree char *before = shown (row->before, row->words_before, row->unit, units);
  g_autofree char *now = shown (row->now, row->words_now, row->unit, units);
  const char *const fields[] = { label, before, "->", now, rw_quantity_unit (row->unit, units), row->id, NULL };

  rw_text_table_add (table, fields);
}

static char *
rows_text (const RwSince *since)
{
  RwTextTable table = rw_text_table_new (1u << 1 | 1u << 3);

  for (guint i = 0; i < since->rows->len; i++)
    add_row (&table, g_ptr_array_index (since->rows, i), since->last->units);
  return rw_text_table_end (&table);
}

static void
append_papers (GString *out, const RwSince *since)
{
  for (guint i = 0; i < since->papers->len; i++)
    {
      const RwSincePaper *paper = g_ptr_array_index (since->papers, i);

      g_string_append_printf (out, "  %-12s %s", paper->paper, paper->issue->date);
      if (paper->changed->len > 0)
        g_string_append_printf (out, "  out of date: %u changed\n", paper->changed->len);
      else
        g_string_append (out, "  up to date\n");
    }
}

static char *
since_text (const RwSince *since)
{
  g_autofree char *rows = NULL;
  GString *out;

  if (since->last == NULL)
    return g_strdup ("No papers have left yet\n");
  rows = rows_text (since);
  out = g_string_new (NULL);
  g_string_append_printf (out, "Since the papers of %s, in %s\n%s", since->last->date,
                          rw_units_name (since->last->units), since->rows->len > 0 ? rows : "  Nothing has changed\n");
  g_string_append (out, "\nPapers\n");
  append_papers (out, since);
  return g_string_free (out, FALSE);
}

/* ---- CSV ---- */

static char *
number (double value, const char *words)
{
  if (words != NULL)
    return g_strdup (words);
  return isfinite (value) ? rw_number_write (value) : g_strdup ("");
}

static char *
since_csv (const RwSince *since)
{
  static const char *const header[] = { "id", "unit", "before", "now", NULL };
  GString *out = g_string_new (NULL);

  rw_csv_row (out, header);
  for (guint i = 0; i < since->rows->len; i++)
    {
      const RwSinceRow *row = g_ptr_array_index (since->rows, i);
      g_autofree char *before = number (row->before, row->words_before), *now = number (row->now, row->words_now);
      const char *const fields[] = { row->id, row->unit, before, now, NULL };

      rw_csv_row (out, fields);
    }
  return g_string_free (out, FALSE);
}

/* ---- JSON ---- */

static void
append_value (RwJsonWriter *writer, const char *name, double value, const char *words)
{
  if (words != NULL)
    rw_json_text (writer, name, words);
  else
    rw_json_value (writer, name, value);
}

static void
append_json_row (RwJsonWriter *writer, const RwSinceRow *row)
{
  rw_json_next (writer);
  rw_json_begin_line (writer, '{');
  rw_json_text (writer, "id", row->id);
  rw_json_text (writer, "unit", row->unit);
  append_value (writer, "before", row->before, row->words_before);
  append_value (writer, "now", row->now, row->words_now);
  rw_json_end (writer, '}');
}

static void
append_json_paper (RwJsonWriter *writer, const RwSincePaper *paper)
{
  rw_json_next (writer);
  rw_json_begin_line (writer, '{');
  rw_json_text (writer, "paper", paper->paper);
  rw_json_text (writer, "date", paper->issue->date);
  rw_json_text (writer, "units", rw_units_name (paper->issue->units));
  rw_json_name (writer, "changed");
  rw_json_begin (writer, '[');
  for (guint i = 0; i < paper->changed->len; i++)
    {
      rw_json_next (writer);
      rw_json_string (writer->out, g_ptr_array_index (paper->changed, i));
    }
  rw_json_end (writer, ']');
  rw_json_end (writer, '}');
}

static char *
since_json (const RwSince *since)
{
  RwJsonWriter writer = rw_json_writer (g_string_new (NULL));

  rw_json_begin (&writer, '{');
  rw_json_text (&writer, "since", since->last != NULL ? since->last->date : NULL);
  rw_json_name (&writer, "changes");
  rw_json_begin (&writer, '[');
  for (guint i = 0; i < since->rows->len; i++)
    append_json_row (&writer, g_ptr_array_index (since->rows, i));
  rw_json_end (&writer, ']');
  rw_json_name (&writer, "papers");
  rw_json_begin (&writer, '[');
  for (guint i = 0; i < since->papers->len; i++)
    append_json_paper (&writer, g_ptr_array_index (since->papers, i));
  rw_json_end (&writer, ']');
  rw_json_end (&writer, '}');
  g_string_append_c (writer.out, '\n');
  return g_string_free (writer.out, FALSE);
}

char *
rw_since_write (const RwSince *since, RwListFormat format)
{
  switch (format)
    {
    case RW_LIST_CSV:
      return since_csv (since);
    case RW_LIST_JSON:
      return since_json (since);
    case RW_LIST_TEXT:
    default:
      return since_text (since);
    }
}
