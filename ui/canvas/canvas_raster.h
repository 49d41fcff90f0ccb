/* The drawing as pixels: a picture of it, painted well while nothing moves, and patches over the picture for
 * what has changed since, painted quickly.
 *
 * A line costs the painter far more than its pixels cost the screen, so a drag must not paint what it does
 * not change.  Every part of the drawing has a stamp: a hash of all that makes it look as it does, and its
 * box.  Stamps that the picture has and the drawing has not, or the other way round, are where a patch goes.
 * A picture that has been moved by whole pixels stays good; what comes into sight beside it is a patch too.
 */
#pragma once

#include <gtk/gtk.h>

#include "canvas_bands.h"

typedef struct _RwRaster RwRaster;

RwRaster *rw_raster_new  (void);
void      rw_raster_free (RwRaster *self);

/* Something that a job holds is another than at the last time. */
void rw_raster_touch  (RwRaster *self);
/* Look or size are others: nothing that was painted can be kept. */
void rw_raster_forget (RwRaster *self);

/* Adds the drawing, paper included, to a snapshot.  moving: it is going to change again at once. */
void rw_raster_append (RwRaster *self, GtkSnapshot *snapshot, const RwRasterJob *job, gboolean moving);
