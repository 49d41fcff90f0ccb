/* The canvas: one view of the build on the screen, with grips to drag.
 *
 * The drawing is made by the engine and kept as one render node until numbers, size or look are others;
 * what moves with the pointer (grips, marks, the bubble with the value) is small and laid over it.
 *
 * Pointer: a grip shows on approach and is dragged; Shift slows the drag down to a tenth and makes its steps
 * finer; Escape puts back what was.  A click selects what it hits, on a figure it opens an entry.  The wheel
 * zooms at the pointer; dragging the sheet, the middle button or Space moves it, two fingers too.
 * Keys: Tab walks the grips, arrows move one by a step, Shift by a fine one, Control by ten; Enter types a
 * value; Escape leaves the grip; + - 0 zoom and fit.
 *
 * Signals
 *   hint (const char *)  what is under the pointer, or held; NULL: nothing
 *   moved ()             the scale or the pointer's place are others
 */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"
#include "draw/drawing.h"

#define RW_TYPE_CANVAS (rw_canvas_get_type ())
G_DECLARE_FINAL_TYPE (RwCanvas, rw_canvas, RW, CANVAS, GtkWidget)

GtkWidget *rw_canvas_new      (RwDocument *document, RwView view);
RwView     rw_canvas_get_view (RwCanvas *self);
/* Shows another view, fitted. */
void       rw_canvas_set_view (RwCanvas *self, RwView view);

/* Makes the whole view fit; it goes on fitting until it is zoomed or moved. */
void       rw_canvas_fit      (RwCanvas *self);
/* Zooms about the pointer, or about the middle. */
void       rw_canvas_zoom     (RwCanvas *self, double factor);
/* n of "1 : n". */
double     rw_canvas_scale    (RwCanvas *self);
/* Where the pointer is on the sheet, mm; FALSE where it is not over it. */
gboolean   rw_canvas_pointer  (RwCanvas *self, RwPoint *sheet);
