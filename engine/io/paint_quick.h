/* Paints the shapes of a laid-out sheet on the screen while it moves: as paint_cairo.h does, but many times
 * quicker, and less well where the eye has no time to look (scan.h). */
#pragma once

#include "paint_cairo.h"
#include "scan.h"

typedef struct _RwQuick RwQuick;

/* rw_quick_new: gets a layout ready for painting, whole or in parts, by any number of hands at once.
 *
 * Given  ghost   as in rw_paint_with_ghost()
 *        origin  of the sheet, pixels
 *        scale   pixels per paper mm, > 0
 */
RwQuick *rw_quick_new  (const RwLayout  *layout,
                        const RwSheet   *ghost,
                        const RwPalette *palette,
                        RwPoint          origin,
                        double           scale);
void     rw_quick_free (RwQuick *quick);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwQuick, rw_quick_free)

/* Paints paper and shapes; dimensions and lettering are rw_paint_dimensions()'s. */
void     rw_quick_paint (const RwQuick *quick, const RwPixels *pixels);
