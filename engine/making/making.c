#include "making.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

/* ---- marking ---- */

/* Where the design leaves a size open, what has come of it. */
static void
close_open_sizes (RwDesign *design, const RwResult *result)
{
  design->neck_angle = result->value[RW_NECK_ANGLE];
  design->bridge_height = result->value[RW_BRIDGE_HEIGHT];
  if (design->rim_strip_width == 0 && isfinite (result->value[RW_RIM_SEGMENT_MIN_WIDTH]))
    design->rim_strip_width = result->value[RW_RIM_SEGMENT_MIN_WIDTH];
}

static gboolean
hold_params (RwSnapshot *held, RwStep step, const RwResult *result, GError **error)
{
  g_autofree RwDesign *sizes = g_memdup2 (&result->used, sizeof result->used);

  close_open_sizes (sizes, result);
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    if (rw_step_holds_param (step, id, &result->used) && !rw_snapshot_put_param (held, id, sizes, error))
      return FALSE;
  return TRUE;
}

/* A size that was read off holds what was asked of it: the reading counts all the same, and that the part came out
 * otherwise is another matter than that other things are asked of it later. */
static double
value_held (const RwProject *project, const RwResult *result, RwSlot slot)
{
  g_autofree char *id = rw_slot_id (slot);
  gboolean was_read = rw_ledger_find (project->ledger, id) != NULL && rw_param_find (id) < 0;

  return was_read && isfinite (result->asked[slot]) ? result->asked[slot] : result->value[slot];
}

static gboolean
hold_slots (RwSnapshot *held, const RwProject *project, RwStep step, const RwResult *result, GError **error)
{
  for (RwSlot slot = 0; slot < RW_SLOT_COUNT; slot++)
    if (isfinite (result->value[slot]) && rw_step_holds_slot (step, slot, &result->used)
        && !rw_snapshot_put_slot (held, slot, value_held (project, result, slot), error))
      return FALSE;
  return TRUE;
}

static RwResult *
solve (const RwProject *project)
{
  g_autofree RwMeasured *facts = g_new (RwMeasured, 1);
  RwResult *result = g_new (RwResult, 1);

  rw_project_measured (project, facts);
  rw_solve (&project->design, facts, result);
  return result;
}

gboolean
rw_making_mark (RwProject *project, RwStep step, const char *date, GError **error)
{
  g_autofree RwResult *result = solve (project);
  g_autoptr (RwSnapshot) held = rw_snapshot_new ();
  RwMadeStep *made;

  if (rw_made_find (project->made, step) != NULL)
    return TRUE;
  if (rw_step_info (step, &result->used) == NULL)
    {
      g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_UNKNOWN, _("This build has no step “%s”"),
                   _(rw_step_title (step)));
      return FALSE;
    }
  if (!hold_params (held, step, result, error) || !hold_slots (held, project, step, result, error))
    return FALSE;
  made = rw_made_add (project->made, step, date);
  rw_snapshot_free (made->held);
  made->held = g_steal_pointer (&held);
  return TRUE;
}

gboolean
rw_making_unmark (RwProject *project, RwStep step)
{
  return rw_made_remove (project->made, step);
}

/* ---- readings ---- */

/* The made step that a reading is about; NULL where what is measured is not made. */
static const RwMadeStep *
made_step_of (const RwProject *project, const char *id)
{
  int param = rw_param_find (id), slot = rw_slot_find (id);

  if (g_str_has_prefix (id, rw_param (RW_P_rim_course_thickness)->id))
    param = RW_P_rim_course_thickness;
  if (param >= 0)
    return rw_made_holder_of_param (project->made, (RwParamId) param);
  return slot >= 0 ? rw_made_holder_of_slot (project->made, (RwSlot) slot) : NULL;
}

/* The build as it would be if the step held its parameters only. */
static RwResult *
solve_with_free_rows (const RwProject *project, RwStep step)
{
  g_autoptr (RwProject) freed = rw_project_copy (project);

  g_array_set_size (rw_made_find (freed->made, step)->held->rows, 0);
  return solve (freed);
}

/* The rows of a made step go with a reading by as much as they follow from it.  What is measured itself is left alone:
 * there the reading counts. */
static void
move_rows (RwMadeStep *made, const char *read, const RwResult *before, const RwResult *after)
{
  for (guint i = 0; i < made->held->rows->len; i++)
    {
      RwSnapshotRow *row = &g_array_index (made->held->rows, RwSnapshotRow, i);
      double from = before->value[row->slot], to = after->value[row->slot];
      g_autofree char *id = rw_slot_id (row->slot);

      if (!isfinite (from) || !isfinite (to) || from == to || rw_param_find (id) >= 0
          || strcmp (id, read) == 0)
        continue;
      row->value = row->value == from ? to : row->value + (to - from);
    }
}

/* Changes the ledger by change(), and lets the made step go with it. */
static gboolean
change_ledger (RwProject *project, const char *id, gboolean (*change) (RwLedger *ledger, gpointer data), gpointer data)
{
  const RwMadeStep *about = made_step_of (project, id);
  g_autofree RwResult *before = about != NULL ? solve_with_free_rows (project, about->step) : NULL;

  if (!change (project->ledger, data))
    return FALSE;
  if (about != NULL)
    {
      g_autofree RwResult *after = solve_with_free_rows (project, about->step);

      move_rows (rw_made_find (project->made, about->step), id, before, after);
    }
  return TRUE;
}

typedef struct
{
  const char   *id;
  const double *readings;
  guint         count;
  const char   *date, *note;
  GError      **error;
} Reading;

static gboolean
put (RwLedger *ledger, gpointer data)
{
  const Reading *r = data;

  return rw_ledger_put (ledger, r->id, r->readings, r->count, r->date, r->note, r->error);
}

static gboolean
take_out (RwLedger *ledger, gpointer data)
{
  return rw_ledger_remove (ledger, data);
}

gboolean
rw_making_measure (RwProject    *project,
                   const char   *id,
                   const double *readings,
                   guint         count,
                   const char   *date,
                   const char   *note,
                   GError      **error)
{
  Reading reading = { id, readings, count, date, note, error };

  return change_ledger (project, id, put, &reading);
}

gboolean
rw_making_forget (RwProject *project, const char *id)
{
  return change_ledger (project, id, take_out, (gpointer) id);
}

/* ---- the record ---- */

RwSnapshot *
rw_making_record (const RwResult *result)
{
  RwSnapshot *record = rw_snapshot_new ();

  /* What no file would take is left out: a number far outside its range is of no use on paper either. */
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    if (!rw_param_is_limit (rw_param (id)))
      rw_snapshot_put_param (record, id, &result->used, NULL);
  for (RwSlot slot = 0; slot < RW_SLOT_COUNT; slot++)
    if (isfinite (result->value[slot]))
      rw_snapshot_put_slot (record, slot, result->value[slot], NULL);
  return record;
}
