/* The fields of what stands on the shelf, as text: for the table in the window and for CSV. */
#pragma once

#include "shelf.h"
#include "table/param.h"

typedef enum
{
  RW_STOCK_NAME,
  RW_STOCK_KIND,
  RW_STOCK_MATERIAL,
  RW_STOCK_LENGTH,
  RW_STOCK_WIDTH,
  RW_STOCK_THICKNESS,
  RW_STOCK_COUNT,
  RW_STOCK_AVOID,
  RW_STOCK_PRICE,
  RW_STOCK_MASS,
  RW_STOCK_FIELD_COUNT,
} RwStockField;

const char *rw_stock_field_id    (RwStockField field); /* "name" ...: columns of CSV */
const char *rw_stock_field_label (RwStockField field);
int         rw_stock_field_find  (const char *id);     /* or -1 */

/* rw_stock_field_read: puts text into a field; lengths in any unit, a material by its id or its label.
 *
 * Refused, with one sentence that quotes the value and says what is wanted (RW_PARAM_ERROR): what is no such thing and
 * what is out of range; the item is then as it was. */
gboolean rw_stock_field_read (RwStockItem *item, RwStockField field, const char *text, RwStyle style, GError **error);

/* The text that read takes back, new; with RW_STYLE_FILE to the last bit.  Empty for what is not known, or not a size
 * of the kind. */
char *rw_stock_field_write (const RwStockItem *item, RwStockField field, RwStyle style);

/* Whether all sizes that the kind has are there and agree with each other; else one sentence. */
gboolean rw_stock_item_check (const RwStockItem *item, GError **error);

/* What it is in a few words: "Board 900 × 120 × 27".  New. */
char *rw_stock_item_words (const RwStockItem *item, RwStyle style);
