#include "csv_read.h"

typedef struct
{
  const char *at, *end;
  char        separator;
  guint       line;
  GPtrArray  *rows;
  RwCsvRow   *row;
} Reader;

static void
free_row (gpointer data)
{
  RwCsvRow *row = data;

  g_ptr_array_unref (row->fields);
  g_free (row);
}

static void
begin_row (Reader *r)
{
  r->row = g_new0 (RwCsvRow, 1);
  r->row->line = r->line;
  r->row->fields = g_ptr_array_new_with_free_func (g_free);
}

/* A row of nothing but one empty field is an empty line. */
static void
end_row (Reader *r)
{
  gboolean empty = r->row->fields->len == 1 && *(const char *) g_ptr_array_index (r->row->fields, 0) == '\0';

  if (empty || r->row->fields->len == 0)
    free_row (r->row);
  else
    g_ptr_array_add (r->rows, r->row);
  r->row = NULL;
}

static gboolean
at_line_end (const Reader *r)
{
  return *r->at == '\n' || *r->at == '\r';
}

static void
skip_line_end (Reader *r)
{
  if (*r->at == '\r' && r->at + 1 < r->end && r->at[1] == '\n')
    r->at++;
  r->at++;
  r->line++;
}

/* What stands in quotation marks; two of them are one. */
static void
read_quoted (Reader *r, GString *field)
{
  for (r->at++; r->at < r->end; r->at++)
    {
      if (*r->at == '"' && (r->at + 1 == r->end || r->at[1] != '"'))
        {
          r->at++;
          return;
        }
      if (*r->at == '"')
        r->at++;
      r->line += *r->at == '\n';
      g_string_append_c (field, *r->at);
    }
  r->row->open = TRUE;
}

static void
read_field (Reader *r)
{
  GString *field = g_string_new (NULL);

  if (r->at < r->end && *r->at == '"')
    read_quoted (r, field);
  for (; r->at < r->end && *r->at != r->separator && !at_line_end (r); r->at++)
    g_string_append_c (field, *r->at);
  g_ptr_array_add (r->row->fields, g_string_free (field, FALSE));
}

GPtrArray *
rw_csv_read (const char *text, gsize length, char separator)
{
  Reader r = { text, text + length, separator, 1, g_ptr_array_new_with_free_func (free_row), NULL };

  while (r.at < r.end)
    {
      begin_row (&r);
      for (;;)
        {
          read_field (&r);
          if (r.at >= r.end || *r.at != separator)
            break;
          r.at++;
        }
      end_row (&r);
      if (r.at < r.end)
        skip_line_end (&r);
    }
  return r.rows;
}
