#include "listing.h"

#include <math.h>

/* What was measured for a slot.  A dimension that is a parameter too is one value with it. */
static double
measured_value (const RwMeasured *measured, RwSlot slot)
{
  int param;

  if (measured == NULL)
    return NAN;
  if (isfinite (measured->slot[slot]))
    return measured->slot[slot];
  param = rw_slot_dim (slot)->span == RW_SPAN_ONE ? rw_param_find (rw_slot_dim (slot)->id) : -1;
  return param >= 0 ? measured->param[param] : NAN;
}

GArray *
rw_listing_rows (const RwResult *now, const RwResult *planned, const RwMeasured *measured)
{
  GArray *rows = g_array_new (FALSE, FALSE, sizeof (RwRow));

  for (int i = 0; i < RW_SLOT_COUNT; i++)
    if (isfinite (now->value[i]))
      {
        RwRow row = { (RwSlot) i, now->value[i], planned->value[i], measured_value (measured, (RwSlot) i) };

        g_array_append_val (rows, row);
      }
  return rows;
}
