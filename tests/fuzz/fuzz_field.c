/* What is typed into the fields of the window: whatever it is, it is taken or refused with a reason; what is taken is
 * what is written, read again, and what is refused changes nothing.
 *
 * The field stands on the first line: a parameter or a dimension by its id, a column of the stock as "stock.length",
 * or "tuning"; the text is all that follows. */
#include "fuzz.h"

#include <string.h>

#include "project/measured.h"
#include "project/stock_field.h"
#include "study/tuning.h"
#include "table/param_text.h"

static const RwStyle styles[] = {
  { RW_UNITS_MM, '.' }, { RW_UNITS_MM, ',' }, { RW_UNITS_INCH, '.' }, { RW_UNITS_FRACTION, '.' },
  { RW_UNITS_FRACTION_16, ',' },
};

static void
check_refusal (const GError *error)
{
  g_assert_true (error->message[0] != '\0' && g_utf8_validate (error->message, -1, NULL));
}

static void
check_param (RwParamId id, const char *text, RwStyle style)
{
  g_autofree RwDesign *design = g_new (RwDesign, 1), *before = g_new (RwDesign, 1), *again = g_new (RwDesign, 1);
  g_autofree char *written = NULL;
  g_autoptr (GError) error = NULL;

  rw_design_init (design);
  *again = *before = *design;
  if (!rw_design_read (design, id, text, style, &error))
    {
      check_refusal (error);
      g_assert_true (rw_design_same (design, before, id));
      return;
    }
  written = rw_design_write (design, id, RW_STYLE_FILE);
  g_assert_true (rw_design_read (again, id, written, RW_STYLE_FILE, &error));
  g_assert_true (rw_design_same (design, again, id));
}

/* Read as the ledger does. */
static void
check_measured (const char *id, const char *text, RwStyle style)
{
  g_autofree RwMeasured *measured = g_new (RwMeasured, 1);
  const char *unit = rw_measurable_unit (id);
  g_autoptr (GError) error = NULL;
  double value = 0;

  rw_measured_init (measured);
  if ((unit != NULL && !rw_number_read (text, unit, style, id, &value, &error))
      || !rw_measured_set (measured, id, value, &error))
    check_refusal (error);
}

static void
check_stock (RwStockField field, const char *text, RwStyle style)
{
  g_autoptr (RwStockItem) item = rw_stock_item_new (RW_STOCK_BOARD);
  g_autoptr (RwStockItem) before = rw_stock_item_copy (item), again = rw_stock_item_copy (item);
  g_autofree char *written = NULL;
  g_autoptr (GError) error = NULL;

  if (!rw_stock_field_read (item, field, text, style, &error))
    {
      check_refusal (error);
      g_assert_true (rw_stock_item_equal (item, before));
      return;
    }
  written = rw_stock_field_write (item, field, RW_STYLE_FILE);
  g_assert_true (rw_stock_field_read (again, field, written, RW_STYLE_FILE, &error));
  g_assert_true (rw_stock_item_equal (item, again));
}

static void
check_tuning (const char *text)
{
  g_autofree RwDesign *design = g_new (RwDesign, 1);
  g_auto (GStrv) notes = NULL;
  g_autoptr (GError) error = NULL;

  rw_design_init (design);
  notes = rw_tuning_read (text, &design->strings_set, &error);
  if (notes == NULL)
    check_refusal (error);
  else
    g_assert_cmpint ((int) g_strv_length (notes), ==, design->strings_set.count);
}

static void
check (const char *field, const char *text, RwStyle style)
{
  int param = rw_param_find (field);
  int column = g_str_has_prefix (field, "stock.") ? rw_stock_field_find (field + strlen ("stock.")) : -1;

  if (param >= 0)
    check_param ((RwParamId) param, text, style);
  if (column >= 0)
    check_stock ((RwStockField) column, text, style);
  else if (strcmp (field, "tuning") == 0)
    check_tuning (text);
  else
    check_measured (field, text, style);
}

int
LLVMFuzzerTestOneInput (const guint8 *data, size_t size)
{
  g_autofree char *field = g_strndup ((const char *) data, size);
  char *text = strchr (field, '\n');

  if (text == NULL)
    return 0;
  *text++ = '\0';
  /* What the toolkit hands over is text. */
  if (!g_utf8_validate (field, -1, NULL) || !g_utf8_validate (text, -1, NULL))
    return 0;
  for (guint i = 0; i < G_N_ELEMENTS (styles); i++)
    check (field, text, styles[i]);
  return 0;
}
