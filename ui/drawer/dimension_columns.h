/* The columns of the dimension list: name, planned, needed now, unit, tolerance, close enough, measured, off by, made,
 * step. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"
#include "dimension_item.h"

/* Told what came of a measured value: a sentence where it was refused, NULL where it was taken. */
typedef void (*RwMeasureReport) (const char *message, gpointer user_data);

/* Adds all columns to a view whose rows are GtkTreeListRow over RwDimensionItem. */
void rw_dimension_columns_add (GtkColumnView *view, RwDocument *document, RwMeasureReport report,
                               gpointer user_data);
