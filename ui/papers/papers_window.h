/* The window of the papers: which sheets, on which paper, every page as it will be printed; to be saved as
 * PDF or printed.  It follows the document. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_PAPERS_WINDOW (rw_papers_window_get_type ())
G_DECLARE_FINAL_TYPE (RwPapersWindow, rw_papers_window, RW, PAPERS_WINDOW, GtkWindow)

GtkWidget *rw_papers_window_new (GtkWindow *parent, RwDocument *document);
