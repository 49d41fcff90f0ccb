/* Paints boxes of the drawing into memory, two bands at a time: the painter is by far what takes longest in
 * a frame, and most machines have a second processor idle then. */
#pragma once

#include <cairo.h>

#include "base/canvas_view.h"
#include "io/paint_cairo.h"

/* What is painted: a layout at a place of a widget, in the widget's logical pixels. */
typedef struct
{
  const RwLayout  *layout;
  const RwSheet   *ghost; /* lines under its dimensions, of the same scale; or NULL */
  const RwPalette *palette;
  RwCanvasView     place;
  int              width, height, device_scale;
} RwRasterJob;

/* The bytes of a row of the widget, four for a device pixel. */
int rw_bands_stride (const RwRasterJob *job);

/* A surface on memory that holds the widget; drawn on in the widget's pixels. */
cairo_surface_t *rw_bands_surface (const RwRasterJob *job, guchar *pixels);

/* Paints boxes (of RwBox, on whole pixels, within the widget), paper included; returns when all are done.
 * quickly: what is painted is going to be painted anew at once. */
void rw_bands_paint (const RwRasterJob *job, const GArray *boxes, guchar *pixels, gboolean quickly);
