/* Stamps: what each part of a laid-out drawing looks like and where it is, for telling two drawings apart. */
#pragma once

#include "sheet/layout.h"

typedef struct _RwStamps RwStamps;

/* ghost: lines that are drawn over the layout's shapes, at its scale; or NULL. */
RwStamps *rw_stamps_new  (const RwLayout *layout, const RwSheet *ghost);
void      rw_stamps_free (RwStamps *stamps);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwStamps, rw_stamps_free)

/* Boxes round what looks otherwise in one of two drawings than in the other, or has moved by more than grain
 * pixels; in pixels from the sheet's origin, y down, on whole numbers.  What lies close is put together, so
 * that they are few.  An array of RwBox; empty: the two are the same. */
GArray *rw_stamps_diff (const RwStamps *a, const RwStamps *b, double grain);

/* Of a path alone, whatever pen and tint; the same for two that lie on each other. */
guint64 rw_path_hash (const RwSheet *sheet, const RwItem *item);
/* Round a path; sheet mm. */
RwBox   rw_path_box  (const RwSheet *sheet, const RwItem *item);
