/* A page of paper as it will be printed: whole, or nearer.  The wheel and the keys + and - zoom, 0 shows the
 * whole page; a drag, two fingers and the arrow keys move it.
 *
 * Signals
 *   zoomed   ()   it is shown at another size
 */
#pragma once

#include <gtk/gtk.h>

#include "io/paper_set.h"

#define RW_TYPE_PAGE_VIEW (rw_page_view_get_type ())
G_DECLARE_FINAL_TYPE (RwPageView, rw_page_view, RW, PAGE_VIEW, GtkWidget)

GtkWidget *rw_page_view_new (void);

/* Shows a page, both NULL for none; set and page must live until the next call.  Painted anew even if they
 * are the same; how near it is looked at stays. */
void rw_page_view_show (RwPageView *self, const RwPaperSet *set, const RwPaperPage *page);

/* Nearer or farther by one step about the middle; 0: the whole page. */
void rw_page_view_zoom (RwPageView *self, int steps);

/* How large the page is shown, against its size on a screen of 96 dots per inch; 0: no page. */
double rw_page_view_scale (RwPageView *self);
