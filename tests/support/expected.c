#include "expected.h"

#include <math.h>

void
expected_near (const char *what, double value, double wanted, double tolerance)
{
  if (!(fabs (value - wanted) <= tolerance))
    g_test_fail_printf ("%s is %.12g, not %.12g within %g", what, value, wanted, tolerance);
}

static void
test_row (gconstpointer data)
{
  const Expected *row = data;
  g_autoptr (Built) built = built_new (row->changes);

  expected_near (row->id, built_value (built, row->id), row->value, row->tolerance);
}

void
expected_add (const char *prefix, const Expected *rows, gsize count)
{
  for (gsize i = 0; i < count; i++)
    {
      g_autofree char *path = g_strconcat (prefix, "/", rows[i].name, NULL);

      g_test_add_data_func (path, &rows[i], test_row);
    }
}
