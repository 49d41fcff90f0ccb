/* A snapshot: the values that parameters and dimensions had at some moment, kept for later.  What is not in it was
 * not there, or was not asked for. */
#pragma once

#include "measured.h"

typedef struct
{
  RwSlot slot;
  double value;
} RwSnapshotRow;

typedef struct
{
  gboolean has_param[RW_PARAM_COUNT];
  RwDesign design; /* the parameters that it has */
  GArray  *rows;   /* of RwSnapshotRow, by slot */
} RwSnapshot;

RwSnapshot *rw_snapshot_new   (void); /* empty */
RwSnapshot *rw_snapshot_copy  (const RwSnapshot *snapshot);
void        rw_snapshot_free  (RwSnapshot *snapshot);
gboolean    rw_snapshot_equal (const RwSnapshot *a, const RwSnapshot *b);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwSnapshot, rw_snapshot_free)

/* Both put in or replace; an id that is both a parameter and a dimension is one value, and goes in as both.  Refused,
 * with one sentence, are numbers that a measured value can't have either; a limit of the checks is no size and is
 * refused too. */
gboolean rw_snapshot_put_param (RwSnapshot *snapshot, RwParamId id, const RwDesign *from, GError **error);
gboolean rw_snapshot_put_slot  (RwSnapshot *snapshot, RwSlot slot, double value, GError **error);

/* NaN where the snapshot has no such row. */
double rw_snapshot_slot (const RwSnapshot *snapshot, RwSlot slot);

/* All of it as facts: held, as of parts that are made. */
void rw_snapshot_hold (const RwSnapshot *snapshot, RwMeasured *measured);
