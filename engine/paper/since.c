#include "since.h"

#include <math.h>
#include <string.h>

#include "making/making.h"
#include "paper.h"
#include "paper_shows.h"

static void
row_free (RwSinceRow *row)
{
  g_free (row->id);
  g_free (row->words_before);
  g_free (row->words_now);
  g_free (row);
}

static void
paper_free (RwSincePaper *paper)
{
  g_free (paper->paper);
  g_ptr_array_unref (paper->changed);
  g_free (paper);
}

/* ---- two snapshots ---- */

/* As people read it from the paper. */
static gboolean
looks_other (double a, double b, const char *unit, RwUnits units)
{
  g_autofree char *one = NULL, *other = NULL;

  if (!isfinite (a) || !isfinite (b))
    return isfinite (a) != isfinite (b);
  one = rw_quantity_show (a, unit, units, '.');
  other = rw_quantity_show (b, unit, units, '.');
  return strcmp (one, other) != 0;
}

static void
add_number (GPtrArray *rows, char *id, const char *unit, double before, double now)
{
  RwSinceRow *row = g_new0 (RwSinceRow, 1);

  *row = (RwSinceRow){ id, unit, before, now, NULL, NULL };
  g_ptr_array_add (rows, row);
}

static void
compare_param (GPtrArray *rows, RwParamId id, const RwSnapshot *before, const RwSnapshot *now, RwUnits units)
{
  const RwParam *param = rw_param (id);

  if (!before->has_param[id] || !now->has_param[id] || rw_design_same (&before->design, &now->design, id)
      || rw_slot_find (param->id) >= 0)
    return;
  if (rw_param_is_number (param))
    {
      double was = rw_design_get (&before->design, id), is = rw_design_get (&now->design, id);

      if (looks_other (was, is, param->unit, units))
        add_number (rows, g_strdup (param->id), param->unit, was, is);
    }
  else
    {
      const RwStyle style = { units, '.' };

      add_number (rows, g_strdup (param->id), param->unit, NAN, NAN);
      ((RwSinceRow *) rows->pdata[rows->len - 1])->words_before = rw_design_write (&before->design, id, style);
      ((RwSinceRow *) rows->pdata[rows->len - 1])->words_now = rw_design_write (&now->design, id, style);
    }
}

static GPtrArray *
compare (const RwSnapshot *before, const RwSnapshot *now, RwUnits units)
{
  GPtrArray *rows = g_ptr_array_new_with_free_func ((GDestroyNotify) row_free);

  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    compare_param (rows, id, before, now, units);
  for (RwSlot slot = 0; slot < RW_SLOT_COUNT; slot++)
    {
      double was = rw_snapshot_slot (before, slot), is = rw_snapshot_slot (now, slot);

      if (looks_other (was, is, rw_slot_dim (slot)->unit, units))
        add_number (rows, rw_slot_id (slot), rw_slot_dim (slot)->unit, was, is);
    }
  return rows;
}

/* ---- papers ---- */

static RwSincePaper *
judge (const char *id, const RwIssue *issue, const GPtrArray *rows)
{
  RwSincePaper *paper = g_new (RwSincePaper, 1);

  *paper = (RwSincePaper){ g_strdup (id), issue, g_ptr_array_new_with_free_func (g_free) };
  for (guint i = 0; i < rows->len; i++)
    {
      const RwSinceRow *row = g_ptr_array_index (rows, i);

      if (rw_paper_shows (id, row->id))
        g_ptr_array_add (paper->changed, g_strdup (row->id));
    }
  return paper;
}

static void
judge_papers (RwSince *since, const RwIssued *issued, const RwSnapshot *now)
{
  g_autoptr (GHashTable) compared = g_hash_table_new_full (NULL, NULL, NULL, (GDestroyNotify) g_ptr_array_unref);

  for (int i = 0; i < rw_paper_kinds_count; i++)
    {
      const RwIssue *issue = rw_issued_last (issued, rw_paper_kinds[i].id);
      GPtrArray *rows;

      if (issue == NULL)
        continue;
      rows = g_hash_table_lookup (compared, issue);
      if (rows == NULL)
        {
          rows = compare (issue->values, now, issue->units);
          g_hash_table_insert (compared, (gpointer) issue, rows);
        }
      g_ptr_array_add (since->papers, judge (rw_paper_kinds[i].id, issue, rows));
    }
}

RwSince *
rw_since_new (const RwProject *project, const RwResult *now)
{
  RwSince *since = g_new0 (RwSince, 1);
  g_autoptr (RwSnapshot) record = rw_making_record (now);

  since->last = rw_issued_last (project->issued, NULL);
  since->papers = g_ptr_array_new_with_free_func ((GDestroyNotify) paper_free);
  since->rows = since->last != NULL ? compare (since->last->values, record, since->last->units)
                                    : g_ptr_array_new ();
  judge_papers (since, project->issued, record);
  return since;
}

void
rw_since_free (RwSince *since)
{
  if (since == NULL)
    return;
  g_ptr_array_unref (since->rows);
  g_ptr_array_unref (since->papers);
  g_free (since);
}

guint
rw_since_out_of_date (const RwSince *since)
{
  guint count = 0;

  for (guint i = 0; i < since->papers->len; i++)
    count += ((const RwSincePaper *) g_ptr_array_index (since->papers, i))->changed->len > 0;
  return count;
}
