#include "snapshot.h"

#include <math.h>

RwSnapshot *
rw_snapshot_new (void)
{
  RwSnapshot *snapshot = g_new0 (RwSnapshot, 1);

  rw_design_init (&snapshot->design);
  snapshot->rows = g_array_new (FALSE, FALSE, sizeof (RwSnapshotRow));
  return snapshot;
}

RwSnapshot *
rw_snapshot_copy (const RwSnapshot *snapshot)
{
  RwSnapshot *copy = g_memdup2 (snapshot, sizeof *snapshot);

  copy->rows = g_array_copy (snapshot->rows);
  return copy;
}

void
rw_snapshot_free (RwSnapshot *snapshot)
{
  if (snapshot == NULL)
    return;
  g_array_unref (snapshot->rows);
  g_free (snapshot);
}

static const RwSnapshotRow *
row_at (const RwSnapshot *snapshot, guint i)
{
  return &g_array_index (snapshot->rows, RwSnapshotRow, i);
}

static gboolean
same_rows (const RwSnapshot *a, const RwSnapshot *b)
{
  if (a->rows->len != b->rows->len)
    return FALSE;
  for (guint i = 0; i < a->rows->len; i++)
    if (row_at (a, i)->slot != row_at (b, i)->slot || row_at (a, i)->value != row_at (b, i)->value)
      return FALSE;
  return TRUE;
}

gboolean
rw_snapshot_equal (const RwSnapshot *a, const RwSnapshot *b)
{
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    if (a->has_param[id] != b->has_param[id]
        || (a->has_param[id] && !rw_design_same (&a->design, &b->design, id)))
      return FALSE;
  return same_rows (a, b);
}

/* ---- putting in ---- */

static gboolean
accepts (const char *id, double value, GError **error)
{
  g_autofree RwMeasured *scratch = g_new (RwMeasured, 1);

  return rw_measured_set (scratch, id, value, error);
}

/* The first row that is not before slot. */
static guint
place_of (const RwSnapshot *snapshot, RwSlot slot)
{
  guint low = 0, high = snapshot->rows->len;

  while (low < high)
    {
      guint middle = (low + high) / 2;

      if (row_at (snapshot, middle)->slot < slot)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

static gboolean
stands_at (const RwSnapshot *snapshot, guint place, RwSlot slot)
{
  return place < snapshot->rows->len && row_at (snapshot, place)->slot == slot;
}

static void
put_row (RwSnapshot *snapshot, RwSlot slot, double value)
{
  guint place = place_of (snapshot, slot);
  RwSnapshotRow row = { slot, value + 0.0 }; /* -0 is 0 */

  if (stands_at (snapshot, place, slot))
    g_array_index (snapshot->rows, RwSnapshotRow, place) = row;
  else
    g_array_insert_val (snapshot->rows, place, row);
}

gboolean
rw_snapshot_put_param (RwSnapshot *snapshot, RwParamId id, const RwDesign *from, GError **error)
{
  const RwParam *param = rw_param (id);
  int slot = rw_slot_find (param->id);

  if (rw_param_is_number (param) && !accepts (param->id, rw_design_get (from, id), error))
    return FALSE;
  rw_design_copy (&snapshot->design, from, id);
  snapshot->has_param[id] = TRUE;
  if (slot >= 0)
    put_row (snapshot, (RwSlot) slot, rw_design_get (from, id));
  return TRUE;
}

gboolean
rw_snapshot_put_slot (RwSnapshot *snapshot, RwSlot slot, double value, GError **error)
{
  g_autofree char *id = rw_slot_id (slot);
  int param = rw_param_find (id);

  if (!accepts (id, value, error))
    return FALSE;
  put_row (snapshot, slot, value);
  if (param >= 0)
    {
      rw_design_set (&snapshot->design, (RwParamId) param, value, NULL);
      snapshot->has_param[param] = TRUE;
    }
  return TRUE;
}

double
rw_snapshot_slot (const RwSnapshot *snapshot, RwSlot slot)
{
  guint place = place_of (snapshot, slot);

  return stands_at (snapshot, place, slot) ? row_at (snapshot, place)->value : NAN;
}

void
rw_snapshot_hold (const RwSnapshot *snapshot, RwMeasured *measured)
{
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    if (snapshot->has_param[id])
      rw_measured_hold_param (measured, id, &snapshot->design);
  for (guint i = 0; i < snapshot->rows->len; i++)
    rw_measured_hold_slot (measured, row_at (snapshot, i)->slot, row_at (snapshot, i)->value);
}
