/* Tables of stock: whatever they hold is read or refused with reasons, and what is read is a shelf that writes and
 * reads back as itself. */
#include "fuzz.h"

#include <string.h>

#include "io/shelf_file.h"

int
LLVMFuzzerTestOneInput (const guint8 *data, size_t size)
{
  g_autoptr (GPtrArray) faults = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GError) error = NULL;
  g_autoptr (RwShelf) shelf = rw_shelf_from_csv ((const char *) data, size, RW_UNITS_MM, faults, &error);

  for (guint i = 0; i < faults->len; i++)
    g_assert_true (g_utf8_validate (g_ptr_array_index (faults, i), -1, NULL));
  if (shelf == NULL)
    {
      g_assert_true (error->message[0] != '\0' && g_utf8_validate (error->message, -1, NULL));
      return 0;
    }
  g_autofree char *csv = rw_shelf_to_csv (shelf), *json = rw_shelf_to_text (shelf);
  g_autoptr (RwShelf) again = rw_shelf_from_csv (csv, strlen (csv), RW_UNITS_MM, faults, &error);
  g_assert_no_error (error);
  g_assert_true (rw_shelf_equal (shelf, again));
  g_autoptr (RwShelf) read = rw_shelf_from_text (json, strlen (json), &error);
  g_assert_no_error (error);
  g_assert_true (rw_shelf_equal (shelf, read));
  return 0;
}
