/* The shelf as a table for other programs, and from them. */
#include <glib/gi18n-lib.h>
#include <string.h>

#include "csv_read.h"
#include "csv_text.h"
#include "project/stock_field.h"
#include "shelf_file.h"

/* ---- writing ---- */

char *
rw_shelf_to_csv (const RwShelf *shelf)
{
  GString *out = g_string_new (NULL);
  const char *names[RW_STOCK_FIELD_COUNT + 1] = { NULL };

  for (int field = 0; field < RW_STOCK_FIELD_COUNT; field++)
    names[field] = rw_stock_field_id ((RwStockField) field);
  rw_csv_row (out, names);
  for (guint i = 0; i < shelf->items->len; i++)
    {
      g_auto (GStrv) texts = g_new0 (char *, RW_STOCK_FIELD_COUNT + 1);

      for (int field = 0; field < RW_STOCK_FIELD_COUNT; field++)
        texts[field] = rw_stock_field_write (g_ptr_array_index (shelf->items, i), (RwStockField) field, RW_STYLE_FILE);
      rw_csv_row (out, (const char *const *) texts);
    }
  return g_string_free (out, FALSE);
}

/* ---- reading ---- */

typedef struct
{
  RwStyle    style;
  GArray    *columns; /* of int: the RwStockField of each */
  GPtrArray *faults;
} Table;

static gboolean
fail (GError **error, const char *sentence)
{
  g_set_error_literal (error, RW_FILE_ERROR, RW_FILE_ERROR_DAMAGED, sentence);
  return FALSE;
}

/* Whichever of comma, semicolon and tab the first line has most of. */
static char
find_separator (const char *text, gsize length)
{
  const char *candidates = ",;\t";
  gsize line = 0, most = 0;
  char best = ',';

  while (line < length && text[line] != '\n' && text[line] != '\r')
    line++;
  for (const char *c = candidates; *c != '\0'; c++)
    {
      gsize count = 0;

      for (gsize i = 0; i < line; i++)
        count += text[i] == *c;
      if (count > most)
        {
          most = count;
          best = *c;
        }
    }
  return best;
}

static gboolean
has_column (const Table *table, int field)
{
  for (guint c = 0; c < table->columns->len; c++)
    if (g_array_index (table->columns, int, c) == field)
      return TRUE;
  return FALSE;
}

static gboolean
read_heading (Table *table, const RwCsvRow *row, GError **error)
{
  static const RwStockField needed[] = { RW_STOCK_MATERIAL, RW_STOCK_LENGTH, RW_STOCK_WIDTH };

  for (guint c = 0; c < row->fields->len; c++)
    {
      const char *name = g_strstrip (g_ptr_array_index (row->fields, c));
      int field = rw_stock_field_find (name);

      if (field < 0 || has_column (table, field))
        {
          g_autofree char *shown = rw_file_quote (name);

          g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_DAMAGED,
                       _("Row 1, column %u: %s is no column; name, kind, material, length, width, thickness, count, "
                         "avoid, price and mass are, once each"), c + 1, shown);
          return FALSE;
        }
      g_array_append_val (table->columns, field);
    }
  for (guint i = 0; i < G_N_ELEMENTS (needed); i++)
    if (!has_column (table, (int) needed[i]))
      {
        g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_DAMAGED, _("Row 1: there is no column “%s”; add it"),
                     rw_stock_field_id (needed[i]));
        return FALSE;
      }
  return TRUE;
}

G_GNUC_PRINTF (3, 4)
static void
add_fault (Table *table, guint line, const char *format, ...)
{
  g_autofree char *what = NULL, *sentence = NULL;
  va_list args;

  if (table->faults == NULL)
    return;
  va_start (args, format);
  what = g_strdup_vprintf (format, args);
  va_end (args);
  sentence = rw_file_sentence (what);
  g_ptr_array_add (table->faults, g_strdup_printf (_("Line %u: %s"), line, sentence));
}

/* A row without a kind, of metal: a bar where it has a thickness, else a rod. */
static void
guess_kind (RwStockItem *item)
{
  if (!rw_stock_is_wood (item))
    item->kind = item->thickness > 0 ? RW_STOCK_BAR : RW_STOCK_ROD;
}

/* NULL, with a fault, where a field is bad. */
static RwStockItem *
read_row (Table *table, const RwCsvRow *row)
{
  g_autoptr (RwStockItem) item = rw_stock_item_new (RW_STOCK_BOARD);
  g_autoptr (GError) reason = NULL;
  gboolean kind_given = FALSE;

  if (row->open)
    {
      add_fault (table, row->line, _("a quotation mark is not closed; all after it is left out"));
      return NULL;
    }
  if (row->fields->len > table->columns->len)
    {
      add_fault (table, row->line,
                 _("%u fields, but there are %u columns; put quotation marks round a field with a comma"),
                 row->fields->len, table->columns->len);
      return NULL;
    }
  for (guint c = 0; c < row->fields->len; c++)
    {
      RwStockField field = (RwStockField) g_array_index (table->columns, int, c);
      const char *text = g_ptr_array_index (row->fields, c);
      gboolean empty = text[strspn (text, " \t")] == '\0';

      if (empty && (field == RW_STOCK_KIND || field == RW_STOCK_COUNT))
        continue;
      kind_given = kind_given || field == RW_STOCK_KIND;
      if (!rw_stock_field_read (item, field, text, table->style, &reason))
        {
          add_fault (table, row->line, "%s", reason->message);
          return NULL;
        }
    }
  if (!kind_given)
    guess_kind (item);
  if (rw_stock_item_check (item, &reason))
    return g_steal_pointer (&item);
  add_fault (table, row->line, "%s", reason->message);
  return NULL;
}

static void
read_rows (Table *table, const GPtrArray *rows, RwShelf *shelf)
{
  for (guint i = 1; i < rows->len; i++)
    {
      const RwCsvRow *row = g_ptr_array_index (rows, i);

      if (shelf->items->len == RW_SHELF_MAX)
        {
          add_fault (table, row->line, _("a shelf has %d rows at most; what follows is left out"), RW_SHELF_MAX);
          return;
        }
      RwStockItem *item = read_row (table, row);
      if (item != NULL)
        g_ptr_array_add (shelf->items, item);
    }
}

RwShelf *
rw_shelf_from_csv (const char *text, gsize length, RwUnits units, GPtrArray *faults, GError **error)
{
  static const char mark[] = "\xef\xbb\xbf"; /* that some programs begin a file with */
  gsize skip = length >= 3 && memcmp (text, mark, 3) == 0 ? 3 : 0;
  char separator = find_separator (text + skip, length - skip);
  g_autoptr (GPtrArray) rows = NULL;
  g_autoptr (GArray) columns = g_array_new (FALSE, FALSE, sizeof (int));
  g_autoptr (RwShelf) shelf = rw_shelf_new ();
  Table table = { { units, separator == ',' ? '.' : ',' }, columns, faults };

  if (memchr (text, '\0', length) != NULL || !g_utf8_validate (text, (gssize) length, NULL))
    {
      fail (error, _("The table is not text in UTF-8; save it as CSV in UTF-8"));
      return NULL;
    }
  rows = rw_csv_read (text + skip, length - skip, separator);
  if (rows->len == 0)
    {
      fail (error, _("The table is empty; its first row names the columns"));
      return NULL;
    }
  if (!read_heading (&table, g_ptr_array_index (rows, 0), error))
    return NULL;
  read_rows (&table, rows, shelf);
  return g_steal_pointer (&shelf);
}
