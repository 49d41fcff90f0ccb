#include "text_table.h"

RwTextTable
rw_text_table_new (guint right)
{
  return (RwTextTable){ g_ptr_array_new_with_free_func ((GDestroyNotify) g_strfreev), right };
}

void
rw_text_table_add (RwTextTable *table, const char *const *fields)
{
  g_ptr_array_add (table->rows, g_strdupv ((char **) fields));
}

static void
pad (GString *out, glong width)
{
  for (glong i = 0; i < width; i++)
    g_string_append_c (out, ' ');
}

static void
append_fields (GString *out, char **fields, const glong *widths, guint right)
{
  for (int k = 0; fields[k] != NULL; k++)
    {
      glong room = widths[k] - g_utf8_strlen (fields[k], -1);

      g_string_append (out, "  ");
      pad (out, right & (1u << k) ? room : 0);
      g_string_append (out, fields[k]);
      pad (out, right & (1u << k) ? 0 : room);
    }
  while (out->str[out->len - 1] == ' ')
    g_string_truncate (out, out->len - 1);
  g_string_append_c (out, '\n');
}

char *
rw_text_table_end (RwTextTable *table)
{
  glong widths[RW_TEXT_TABLE_MOST] = { 0 };
  GString *out = g_string_new (NULL);

  for (guint i = 0; i < table->rows->len; i++)
    {
      char **fields = g_ptr_array_index (table->rows, i);

      for (int k = 0; fields[1] != NULL && fields[k] != NULL; k++)
        widths[k] = MAX (widths[k], g_utf8_strlen (fields[k], -1));
    }
  for (guint i = 0; i < table->rows->len; i++)
    {
      char **fields = g_ptr_array_index (table->rows, i);

      if (fields[1] == NULL)
        g_string_append_printf (out, "%s%s\n", i > 0 ? "\n" : "", fields[0]);
      else
        append_fields (out, fields, widths, table->right);
    }
  g_clear_pointer (&table->rows, g_ptr_array_unref);
  return g_string_free (out, FALSE);
}
