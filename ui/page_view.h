/* A page of paper, whole, as it will be printed. */
#pragma once

#include <gtk/gtk.h>

#include "io/paper_set.h"

#define RW_TYPE_PAGE_VIEW (rw_page_view_get_type ())
G_DECLARE_FINAL_TYPE (RwPageView, rw_page_view, RW, PAGE_VIEW, GtkWidget)

GtkWidget *rw_page_view_new (void);

/* Shows a page, both NULL for none; set and page must live until the next call.  Painted anew even if they
 * are the same. */
void rw_page_view_show (RwPageView *self, const RwPaperSet *set, const RwPaperPage *page);
