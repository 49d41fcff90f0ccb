/* Quantities: whatever is typed is read or refused with a reason, and what is read is finite and reads back
 * from what is written. */
#include "fuzz.h"

#include <math.h>

#include "table/quantity.h"

static const char *const units[] = { "mm", "deg", "", "%", "N/m", "kg/m3", "GPa", "degC", "ml" };

static void
check (const char *text, const char *unit, const char *bare)
{
  g_autoptr (GError) error = NULL;
  g_autofree char   *written = NULL;
  double             value, again;

  if (!rw_quantity_read (text, unit, bare, ',', &value, &error))
    {
      g_assert_true (error->message[0] != '\0' && g_utf8_validate (error->message, -1, NULL));
      return;
    }
  g_assert_no_error (error);
  g_assert_true (isfinite (value));
  written = rw_number_write (value);
  g_assert_true (rw_quantity_read (written, unit, NULL, '.', &again, NULL));
  g_assert_cmpfloat (again, ==, value);
}

int
LLVMFuzzerTestOneInput (const guint8 *data, size_t size)
{
  g_autofree char *text = g_strndup ((const char *) data, size);

  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    check (text, units[i], NULL);
  check (text, "mm", "in");
  return 0;
}
