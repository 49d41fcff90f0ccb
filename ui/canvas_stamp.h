/* Stamps: what each part of a laid-out drawing looks like, as a number, and where it is. */
#pragma once

#include "layout.h"

typedef struct
{
  guint64 hash;
  RwBox   box; /* pixels from the sheet's origin, y down; lines with their width */
} RwStamp;

/* All stamps of a layout, sorted.  An array of RwStamp. */
GArray *rw_stamps_new  (const RwLayout *layout);

/* Boxes of what is in one of two and not in the other, put together where they lie close, at most a few.
 * An array of RwBox. */
GArray *rw_stamps_diff (const GArray *a, const GArray *b);

/* Of a path alone, whatever pen and tint; the same for two that lie on each other. */
guint64 rw_path_hash   (const RwSheet *sheet, const RwItem *item);
/* Round a path, as far as its points and circles reach; sheet mm. */
RwBox   rw_path_box    (const RwSheet *sheet, const RwItem *item);
