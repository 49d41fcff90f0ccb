/* Since the last papers: which papers are out of date, and every number that has changed. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_SINCE_VIEW (rw_since_view_get_type ())
G_DECLARE_FINAL_TYPE (RwSinceView, rw_since_view, RW, SINCE_VIEW, GtkBox)

GtkWidget *rw_since_view_new  (RwDocument *document);
void       rw_since_view_fill (RwSinceView *self); /* as the document is now */
