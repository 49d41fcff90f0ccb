#include "unknown.h"

#include <string.h>

char *
rw_unknown_path (const char *name, ...)
{
  GString *path = g_string_new (NULL);
  va_list more;

  va_start (more, name);
  for (; name != NULL; name = va_arg (more, const char *))
    {
      g_string_append_c (path, '/');
      for (const char *p = name; *p != '\0'; p++)
        if (*p == '~')
          g_string_append (path, "~0");
        else if (*p == '/')
          g_string_append (path, "~1");
        else
          g_string_append_c (path, *p);
    }
  va_end (more);
  return g_string_free (path, FALSE);
}

static int
compare (gconstpointer a, gconstpointer b)
{
  return strcmp (*(const char *const *) a, *(const char *const *) b);
}

GPtrArray *
rw_unknown_below (GHashTable *unknown, const char *path)
{
  GPtrArray *below = g_ptr_array_new ();
  gsize length = strlen (path);
  GHashTableIter iter;
  gpointer key;

  g_hash_table_iter_init (&iter, unknown);
  while (g_hash_table_iter_next (&iter, &key, NULL))
    if (g_str_has_prefix (key, path) && strrchr (key, '/') == (char *) key + length)
      g_ptr_array_add (below, key);
  g_ptr_array_sort (below, compare);
  return below;
}

char *
rw_unknown_name (const char *path)
{
  GString *name = g_string_new (strrchr (path, '/') + 1);

  g_string_replace (name, "~1", "/", 0);
  g_string_replace (name, "~0", "~", 0);
  return g_string_free (name, FALSE);
}
