#include "closest.h"

#include <string.h>

/* Names that are longer are compared by their beginnings. */
#define LENGTH_MAX 100

/* A name without what stands in brackets. */
static char *
bare (const char *name)
{
  GString *kept = g_string_new (NULL);
  gboolean inside = FALSE;

  for (const char *p = name; *p != '\0' && kept->len < LENGTH_MAX; p++)
    {
      inside = inside && *p != ']';
      if (!inside)
        g_string_append_c (kept, *p);
      inside = inside || *p == '[';
    }
  return g_string_free (kept, FALSE);
}

/* Levenshtein's distance, row by row. */
static int
distance (const char *a, const char *b)
{
  int length = (int) strlen (b), row[LENGTH_MAX + 1];

  for (int j = 0; j <= length; j++)
    row[j] = j;
  for (int i = 0; a[i] != '\0'; i++)
    {
      int above_left = row[0];

      row[0] = i + 1;
      for (int j = 0; j < length; j++)
        {
          int above = row[j + 1];

          row[j + 1] = MIN (MIN (above, row[j]) + 1, above_left + (a[i] != b[j]));
          above_left = above;
        }
    }
  return row[length];
}

const char *
rw_closest_name (const char *word, const GPtrArray *names)
{
  g_autofree char *bare_word = bare (word);
  const char *best = NULL;
  int least = G_MAXINT;

  for (guint i = 0; i < names->len; i++)
    {
      g_autofree char *name = bare (g_ptr_array_index (names, i));
      int far = distance (bare_word, name);

      if (far < least)
        {
          least = far;
          best = g_ptr_array_index (names, i);
        }
    }
  return best;
}
