#include "canvas_view.h"

#include <math.h>

#define ZOOM_MIN (RW_PX_PER_PAPER_MM / 50)
#define ZOOM_MAX (RW_PX_PER_PAPER_MM * 20)

/* That much of the drawing stays in sight, pixels. */
#define KEPT 60.0

RwPoint
rw_canvas_view_to_screen (const RwCanvasView *view, RwPoint sheet)
{
  return (RwPoint){ view->x + sheet.x * view->zoom, view->y - sheet.y * view->zoom };
}

RwPoint
rw_canvas_view_to_sheet (const RwCanvasView *view, RwPoint screen)
{
  return (RwPoint){ (screen.x - view->x) / view->zoom, (view->y - screen.y) / view->zoom };
}

double
rw_canvas_view_scale (const RwCanvasView *view)
{
  return view->zoom / RW_PX_PER_PAPER_MM;
}

/* An origin on whole device pixels lets a picture that was painted before be moved without blurring. */
static void
settle (RwCanvasView *view, int device_scale)
{
  view->x = round (view->x * device_scale) / device_scale;
  view->y = round (view->y * device_scale) / device_scale;
}

void
rw_canvas_view_zoom (RwCanvasView *view, double factor, RwPoint about, int device_scale)
{
  RwPoint fixed = rw_canvas_view_to_sheet (view, about);

  view->zoom = CLAMP (view->zoom * factor, ZOOM_MIN, ZOOM_MAX);
  view->x = about.x - fixed.x * view->zoom;
  view->y = about.y + fixed.y * view->zoom;
  settle (view, device_scale);
}

void
rw_canvas_view_pan (RwCanvasView *view, double dx, double dy, int device_scale)
{
  view->x += dx;
  view->y += dy;
  settle (view, device_scale);
}

/* How far to move so that low..high reaches kept far into 0..room. */
static double
into (double low, double high, double room)
{
  double kept = MIN (KEPT, MIN (room, high - low));

  if (high < kept)
    return kept - high;
  return low > room - kept ? room - kept - low : 0;
}

void
rw_canvas_view_keep (RwCanvasView *view, RwBox box, double width, double height, int device_scale)
{
  RwPoint a = rw_canvas_view_to_screen (view, (RwPoint){ box.x0, box.y1 });
  RwPoint b = rw_canvas_view_to_screen (view, (RwPoint){ box.x1, box.y0 });

  rw_canvas_view_pan (view, into (a.x, b.x, width), into (a.y, b.y, height), device_scale);
}

void
rw_canvas_view_centre (RwCanvasView *view, RwBox box, double width, double height, int device_scale)
{
  view->x = width / 2 - (box.x0 + box.x1) / 2 * view->zoom;
  view->y = height / 2 + (box.y0 + box.y1) / 2 * view->zoom;
  settle (view, device_scale);
}
