/* The table of a study as text for people, CSV and JSON. */
#include "study_formats.h"

#include <math.h>
#include <string.h>

#include "csv_text.h"
#include "json_writer.h"
#include "text_table.h"

#define DECIMALS 4 /* of lengths in inches; the writer of quantities adds two */

static gboolean
is_length (const char *unit)
{
  return unit != NULL && strcmp (unit, "mm") == 0;
}

/* "Pull, N". */
static char *
with_unit (const char *title, const char *unit)
{
  return unit == NULL || *unit == '\0' ? g_strdup (title) : g_strdup_printf ("%s, %s", title, unit);
}

/* The names of rows and columns, to be ended by NULL. */
static GPtrArray *
heading (const RwStudy *study, RwUnits units)
{
  GPtrArray *fields = g_ptr_array_new_with_free_func (g_free);
  const char *row_unit = study->row_unit != NULL ? rw_quantity_unit (study->row_unit, units) : NULL;

  g_ptr_array_add (fields, with_unit (study->row_title, row_unit));
  for (guint i = 0; i < study->columns->len; i++)
    {
      const RwStudyColumn *column = rw_study_column_at (study, i);

      g_ptr_array_add (fields, with_unit (column->title, rw_quantity_unit (column->unit, units)));
    }
  return fields;
}

/* ---- text ---- */

static GPtrArray *
shown_row (const RwStudy *study, guint row, RwStyle style)
{
  GPtrArray *fields = g_ptr_array_new_with_free_func (g_free);

  g_ptr_array_add (fields, rw_study_row_name (study, row, style));
  for (guint i = 0; i < study->columns->len; i++)
    {
      const RwStudyColumn *column = rw_study_column_at (study, i);
      double value = column->values[row];

      g_ptr_array_add (fields, isfinite (value)
                                 ? rw_quantity_show (value, column->unit, style.units, style.decimal)
                                 : g_strdup (""));
    }
  g_ptr_array_add (fields, NULL);
  return fields;
}

/* Titles of columns are long: they stand in a list of their own, under numbers. */
char *
rw_study_text (const RwStudy *study, RwStyle style)
{
  RwTextTable table = rw_text_table_new (~0u);
  g_autoptr (GPtrArray) titles = heading (study, style.units), numbers = g_ptr_array_new_with_free_func (g_free);
  GString *out = g_string_new (study->title);
  g_autofree char *rows = NULL;

  g_string_append (out, "\n\n");
  for (guint i = 0; i < titles->len; i++)
    g_ptr_array_add (numbers, i == 0 ? g_strdup (g_ptr_array_index (titles, 0)) : g_strdup_printf ("[%u]", i));
  for (guint i = 1; i < titles->len; i++)
    g_string_append_printf (out, "[%u] %s\n", i, (const char *) g_ptr_array_index (titles, i));
  g_string_append_c (out, '\n');
  g_ptr_array_add (numbers, NULL);
  rw_text_table_add (&table, (const char *const *) numbers->pdata);
  for (guint row = 0; row < study->rows->len; row++)
    {
      g_autoptr (GPtrArray) fields = shown_row (study, row, style);

      rw_text_table_add (&table, (const char *const *) fields->pdata);
    }
  rows = rw_text_table_end (&table);
  g_string_append (out, rows);
  return g_string_free (out, FALSE);
}

/* ---- CSV ---- */

static char *
number_field (double value, const char *unit, RwUnits units)
{
  if (!isfinite (value))
    return g_strdup ("");
  if (units == RW_UNITS_MM || !is_length (unit))
    return rw_number_write (value);
  return rw_quantity_write (value, unit, RW_UNITS_INCH, DECIMALS, '.');
}

static GPtrArray *
exact_row (const RwStudy *study, guint row, RwUnits units)
{
  GPtrArray *fields = g_ptr_array_new_with_free_func (g_free);
  const RwStudyRow *place = &g_array_index (study->rows, RwStudyRow, row);

  g_ptr_array_add (fields, place->name != NULL ? g_strdup (place->name)
                                               : number_field (place->at, study->row_unit, units));
  for (guint i = 0; i < study->columns->len; i++)
    {
      const RwStudyColumn *column = rw_study_column_at (study, i);

      g_ptr_array_add (fields, number_field (column->values[row], column->unit, units));
    }
  g_ptr_array_add (fields, NULL);
  return fields;
}

char *
rw_study_csv (const RwStudy *study, RwUnits units)
{
  GString *out = g_string_new (NULL);
  g_autoptr (GPtrArray) titles = heading (study, units);

  g_ptr_array_add (titles, NULL);
  rw_csv_row (out, (const char *const *) titles->pdata);
  for (guint row = 0; row < study->rows->len; row++)
    {
      g_autoptr (GPtrArray) fields = exact_row (study, row, units);

      rw_csv_row (out, (const char *const *) fields->pdata);
    }
  return g_string_free (out, FALSE);
}

/* ---- JSON ---- */

static void
append_rows (RwJsonWriter *writer, const RwStudy *study)
{
  rw_json_name (writer, "rows");
  rw_json_begin_line (writer, '[');
  for (guint row = 0; row < study->rows->len; row++)
    {
      const RwStudyRow *place = &g_array_index (study->rows, RwStudyRow, row);

      rw_json_next (writer);
      if (place->name != NULL)
        rw_json_string (writer->out, place->name);
      else
        rw_json_number (writer->out, place->at);
    }
  rw_json_end (writer, ']');
}

static void
append_column (RwJsonWriter *writer, const RwStudy *study, const RwStudyColumn *column)
{
  rw_json_next (writer);
  rw_json_begin_line (writer, '{');
  rw_json_text (writer, "title", column->title);
  rw_json_text (writer, "unit", column->unit);
  rw_json_name (writer, "values");
  rw_json_begin (writer, '[');
  for (guint row = 0; row < study->rows->len; row++)
    {
      rw_json_next (writer);
      rw_json_number (writer->out, column->values[row]);
    }
  rw_json_end (writer, ']');
  rw_json_end (writer, '}');
}

char *
rw_study_json (const RwStudy *study)
{
  RwJsonWriter writer = rw_json_writer (g_string_new (NULL));

  rw_json_begin (&writer, '{');
  rw_json_text (&writer, "study", study->id);
  rw_json_text (&writer, "title", study->title);
  rw_json_text (&writer, "row_title", study->row_title);
  rw_json_text (&writer, "row_unit", study->row_unit != NULL ? study->row_unit : "");
  append_rows (&writer, study);
  rw_json_name (&writer, "columns");
  rw_json_begin (&writer, '[');
  for (guint i = 0; i < study->columns->len; i++)
    append_column (&writer, study, rw_study_column_at (study, i));
  rw_json_end (&writer, ']');
  rw_json_end (&writer, '}');
  g_string_append_c (writer.out, '\n');
  return g_string_free (writer.out, FALSE);
}
