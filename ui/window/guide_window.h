/* The guide: from first idea to strung instrument, with pictures of the build that is open. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

GtkWidget *rw_guide_window_new (GtkWindow *parent, RwDocument *document);
