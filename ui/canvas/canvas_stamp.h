/* Stamps: what each part of a laid-out drawing looks like and where it is, for telling two drawings apart. */
#pragma once

#include "sheet/layout.h"
#include "canvas_grid.h"

typedef struct _RwStamps RwStamps;

/* ghost: lines that are drawn over the layout's shapes, at its scale; or NULL. */
RwStamps *rw_stamps_new  (const RwLayout *layout, const RwSheet *ghost);
void      rw_stamps_free (RwStamps *stamps);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwStamps, rw_stamps_free)

/* Touches the tiles on which one of two drawings looks otherwise than the other, or something has moved by more
 * than grain pixels.  The grid's pixels are from the sheet's origin. */
void rw_stamps_touch_changes (const RwStamps *a, const RwStamps *b, double grain, RwGrid *grid);

/* Of a path alone, whatever pen and tint; the same for two that lie on each other. */
guint64 rw_path_hash (const RwSheet *sheet, const RwItem *item);
/* Round a path; sheet mm. */
RwBox   rw_path_box  (const RwSheet *sheet, const RwItem *item);
