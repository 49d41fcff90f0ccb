/* A line of the dimension list: a heading with lines under it, or one dimension.
 *
 * Signal
 *   changed ()  the numbers are others
 */
#pragma once

#include <gio/gio.h>

#include "check/listing.h"

#define RW_TYPE_DIMENSION_ITEM (rw_dimension_item_get_type ())
G_DECLARE_FINAL_TYPE (RwDimensionItem, rw_dimension_item, RW, DIMENSION_ITEM, GObject)

RwDimensionItem *rw_dimension_item_new_heading (const char *title);
RwDimensionItem *rw_dimension_item_new         (RwSlot slot);

const char   *rw_dimension_item_title    (RwDimensionItem *self);
GListModel   *rw_dimension_item_children (RwDimensionItem *self); /* NULL for a dimension */
const RwRow  *rw_dimension_item_row      (RwDimensionItem *self); /* NULL for a heading */
void          rw_dimension_item_set_row  (RwDimensionItem *self, const RwRow *row);

/* Lines to come under a heading: collected first, then put in place at once, so that the lines that stay
 * are left alone and keep their state in the view. */
void rw_dimension_item_collect (RwDimensionItem *heading, RwDimensionItem *child);
void rw_dimension_item_arrange (RwDimensionItem *heading);
