/* The drawer under the sheet: findings, dimensions, steps, studies of the set-up, care, stock,
 * comparing.  Each page is made
 * when it is first shown. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

typedef enum
{
  RW_PAGE_FINDINGS,
  RW_PAGE_DIMENSIONS,
  RW_PAGE_STEPS,
  RW_PAGE_STUDY,
  RW_PAGE_CARE,
  RW_PAGE_STOCK,
  RW_PAGE_COMPARE,
  RW_PAGE_COUNT,
} RwDrawerPage;

#define RW_TYPE_DRAWER (rw_drawer_get_type ())
G_DECLARE_FINAL_TYPE (RwDrawer, rw_drawer, RW, DRAWER, GtkBox)

GtkWidget   *rw_drawer_new  (RwDocument *document);
RwDrawerPage rw_drawer_page (RwDrawer *self);
void         rw_drawer_show (RwDrawer *self, RwDrawerPage page);
