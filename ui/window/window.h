/* The window: form, sheet, drawer and foot round one document. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"
#include "io/draft.h"

#define RW_TYPE_WINDOW (rw_window_get_type ())
G_DECLARE_FINAL_TYPE (RwWindow, rw_window, RW, WINDOW, GtkApplicationWindow)

GtkWidget  *rw_window_new      (GtkApplication *application);
RwDocument *rw_window_document (RwWindow *self);

/* Opens a file; says so in a dialog where it can't. */
void rw_window_load (RwWindow *self, const char *path);
/* Goes on with a draft that was left behind. */
void rw_window_recover (RwWindow *self, const RwDraft *draft);
/* Whether the window holds nothing but the build that every start begins with. */
gboolean rw_window_is_untouched (RwWindow *self);

/* Goes on at once where there is no unsaved work; else asks, and saves first if that is the answer.  go_on
 * is not called where the maker stays. */
typedef void (*RwWindowFunc) (RwWindow *self);

void rw_window_unless_unsaved (RwWindow *self, RwWindowFunc go_on);
