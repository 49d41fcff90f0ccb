#include "listing.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

static double
reading (const RwProject *project, const char *id)
{
  const RwEntry *entry = rw_ledger_find (project->ledger, id);

  return entry != NULL ? rw_entry_mean (entry) : NAN;
}

/* ---- what is asked of a number that is both set and worked out ---- */

/* What the model would work out for it if it were neither measured nor made; a fact about the angle or the bridge
 * changes what is solved for, and so what the solver can say of it. */
static double
asked_without_fact (const RwProject *project, RwParamId param, RwSlot slot)
{
  g_autofree RwMeasured *facts = g_new (RwMeasured, 1);
  g_autofree RwResult *result = g_new (RwResult, 1);

  rw_project_measured (project, facts);
  facts->param[param] = NAN;
  facts->slot[slot] = NAN;
  facts->holds_param[param] = FALSE;
  facts->holds_slot[slot] = FALSE;
  rw_solve (&project->design, facts, result);
  return result->value[slot];
}

/* ---- dimensions ---- */

/* What was measured and made, in arrays by slot. */
static void
collect (const RwProject *project, double *measured, double *made)
{
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    measured[slot] = made[slot] = NAN;
  for (guint i = 0; i < project->ledger->entries->len; i++)
    {
      const RwEntry *entry = g_ptr_array_index (project->ledger->entries, i);
      int slot = rw_slot_find (entry->id);

      if (slot >= 0)
        measured[slot] = rw_entry_mean (entry);
    }
  for (guint i = 0; i < project->made->steps->len; i++)
    {
      const RwMadeStep *step = g_ptr_array_index (project->made->steps, i);

      for (guint k = 0; k < step->held->rows->len; k++)
        {
          const RwSnapshotRow *row = &g_array_index (step->held->rows, RwSnapshotRow, k);

          made[row->slot] = row->value;
        }
    }
}

static RwRow
row_of (const RwResult *now, const RwResult *planned, RwSlot slot)
{
  return (RwRow){ slot, now->value[slot], planned->value[slot], NAN, NAN, now->asked[slot] };
}

static void
ask_again (const RwProject *project, RwRow *row)
{
  g_autofree char *id = NULL;
  int param;

  if (isnan (row->measured) && isnan (row->made))
    return;
  id = rw_slot_id (row->slot);
  param = rw_param_find (id);
  if (param >= 0)
    row->asked = asked_without_fact (project, (RwParamId) param, row->slot);
}

GArray *
rw_listing_rows (const RwProject *project, const RwResult *now, const RwResult *planned)
{
  GArray *rows = g_array_new (FALSE, FALSE, sizeof (RwRow));
  g_autofree double *measured = g_new (double, RW_SLOT_COUNT), *made = g_new (double, RW_SLOT_COUNT);

  collect (project, measured, made);
  for (int i = 0; i < RW_SLOT_COUNT; i++)
    if (isfinite (now->value[i]))
      {
        RwRow row = row_of (now, planned, (RwSlot) i);

        row.measured = measured[i];
        row.made = made[i];
        ask_again (project, &row);
        g_array_append_val (rows, row);
      }
  return rows;
}

double
rw_row_deviation (const RwRow *row)
{
  return (isfinite (row->measured) ? row->measured : row->made) - row->asked;
}

double
rw_row_needed (const RwRow *row)
{
  return isfinite (row->measured) || isfinite (row->made) ? NAN : row->value;
}

gboolean
rw_shown_differ (double a, double b, const char *unit)
{
  g_autofree char *one = NULL, *other = NULL;

  if (!isfinite (a) || !isfinite (b))
    return isfinite (a) != isfinite (b);
  one = rw_quantity_show (a, unit, RW_UNITS_MM, '.');
  other = rw_quantity_show (b, unit, RW_UNITS_MM, '.');
  return strcmp (one, other) != 0;
}

/* ---- any number by its id ---- */

static gboolean
find_slot (RwSlot slot, const RwProject *project, const RwResult *now, const RwResult *planned, RwReadingRow *row)
{
  g_autofree char *id = rw_slot_id (slot);
  const RwMadeStep *made = rw_made_holder_of_slot (project->made, slot);
  RwRow found = row_of (now, planned, slot);

  found.measured = reading (project, id);
  found.made = made != NULL ? rw_snapshot_slot (made->held, slot) : NAN;
  ask_again (project, &found);
  *row = (RwReadingRow){ rw_slot_dim (slot)->unit, found.value, found.planned, found.measured, found.made,
                         found.asked };
  return isfinite (found.value);
}

/* A strip width that is left open is the least that serves. */
static double
closed (RwParamId id, const RwDesign *design, const RwResult *result)
{
  double value = rw_design_get (design, id);

  return id == RW_P_rim_strip_width && value == 0 ? result->value[RW_RIM_SEGMENT_MIN_WIDTH] : value;
}

static void
find_param (RwParamId id, const RwProject *project, const RwResult *now, RwReadingRow *row)
{
  const RwMadeStep *made = rw_made_holder_of_param (project->made, id);
  double design = closed (id, &project->design, now);

  *row = (RwReadingRow){ rw_param (id)->unit, closed (id, &now->used, now), design,
                         reading (project, rw_param (id)->id),
                         made != NULL ? rw_design_get (&made->held->design, id) : NAN, design };
}

/* The place in a list of courses that an id stands for, from 0; -1: none. */
static int
find_course (const char *id, const RwDesign *used)
{
  for (int k = 0; k < used->rim_course_thickness.count; k++)
    {
      g_autofree char *written = g_strdup_printf ("%s[%d]", rw_param (RW_P_rim_course_thickness)->id, k + 1);

      if (strcmp (id, written) == 0)
        return k;
    }
  return -1;
}

static double
course (const RwDesign *design, int k)
{
  return k < design->rim_course_thickness.count ? design->rim_course_thickness.at[k] : NAN;
}

char *
rw_reading_label (const char *id, const char *(*translate) (const char *english))
{
  int slot = rw_slot_find (id), param = rw_param_find (id), k = 0;
  const RwParam *courses = rw_param (RW_P_rim_course_thickness);

  if (slot >= 0)
    return rw_slot_label_in ((RwSlot) slot, translate);
  if (param >= 0)
    return g_strdup (translate (rw_param ((RwParamId) param)->label));
  if (!g_str_has_prefix (id, courses->id) || sscanf (id + strlen (courses->id), "[%d]", &k) != 1)
    return NULL;
  return g_strdup_printf (translate (N_("%s %d")), translate (courses->label), k);
}

gboolean
rw_listing_find (const char      *id,
                 const RwProject *project,
                 const RwResult  *now,
                 const RwResult  *planned,
                 RwReadingRow    *row)
{
  int slot = rw_slot_find (id), param = rw_param_find (id), k = find_course (id, &now->used);
  const RwMadeStep *made = rw_made_holder_of_param (project->made, RW_P_rim_course_thickness);

  if (slot >= 0)
    return find_slot ((RwSlot) slot, project, now, planned, row);
  if (param >= 0 && rw_param_is_number (rw_param ((RwParamId) param)))
    find_param ((RwParamId) param, project, now, row);
  else if (k >= 0)
    *row = (RwReadingRow){ rw_param (RW_P_rim_course_thickness)->unit, course (&now->used, k),
                           course (&project->design, k), reading (project, id),
                           made != NULL ? course (&made->held->design, k) : NAN, course (&project->design, k) };
  else
    return FALSE;
  return TRUE;
}
