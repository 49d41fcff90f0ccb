/* How a sheet lies on the screen: size and place, and the way between their points.
 *
 * Sheet: millimetres of the thing drawn, y up.  Screen: logical pixels of the widget, y down.  Pure.
 */
#pragma once

#include "sheet/sheet.h"

/* One millimetre of paper on the screen, in logical pixels: line weights and lettering come out as they do on
 * paper at 96 pixels to the inch, which CSS takes as its inch too. */
#define RW_PX_PER_PAPER_MM (96.0 / 25.4)

typedef struct
{
  double zoom; /* pixels per mm of the sheet */
  double x, y; /* pixels: where the sheet's origin stands; whole device pixels */
} RwCanvasView;

RwPoint rw_canvas_view_to_screen (const RwCanvasView *view, RwPoint sheet);
RwPoint rw_canvas_view_to_sheet  (const RwCanvasView *view, RwPoint screen);

/* Paper mm per sheet mm: the scale that the sheet is laid out at.  1 / it is the n of "1 : n". */
double rw_canvas_view_scale (const RwCanvasView *view);

/* Zooms by a factor about a point of the screen that stays where it is, within 1 : 50 to 20 : 1. */
void rw_canvas_view_zoom (RwCanvasView *view, double factor, RwPoint about, int device_scale);
/* Moves by pixels; keeps some of box (sheet mm) within a screen of width x height. */
void rw_canvas_view_pan  (RwCanvasView *view, double dx, double dy, int device_scale);
void rw_canvas_view_keep (RwCanvasView *view, RwBox box, double width, double height, int device_scale);
/* Puts the middle of box in the middle of a screen. */
void rw_canvas_view_centre (RwCanvasView *view, RwBox box, double width, double height, int device_scale);
