#include "listing.h"

#include <math.h>

GArray *
rw_listing_rows (const RwResult *now, const RwResult *planned, const RwMeasured *measured)
{
  GArray *rows = g_array_new (FALSE, FALSE, sizeof (RwRow));

  for (int i = 0; i < RW_SLOT_COUNT; i++)
    if (isfinite (now->value[i]))
      {
        RwRow row = { (RwSlot) i, now->value[i], planned->value[i],
                      measured != NULL ? measured->slot[i] : NAN };

        g_array_append_val (rows, row);
      }
  return rows;
}
