#include "issued.h"

#include <string.h>

static void
issue_free (RwIssue *issue)
{
  g_free (issue->date);
  g_strfreev (issue->papers);
  rw_snapshot_free (issue->values);
  g_free (issue);
}

/* Takes values over. */
static RwIssue *
issue_new (const char *date, RwUnits units, const char *const *papers, RwSnapshot *values)
{
  RwIssue *issue = g_new (RwIssue, 1);

  issue->date = g_strdup (date != NULL ? date : "");
  issue->units = units;
  issue->papers = g_strdupv ((char **) papers);
  issue->values = values;
  return issue;
}

static RwIssue *
issue_at (const RwIssued *issued, guint i)
{
  return g_ptr_array_index (issued->issues, i);
}

static gboolean
has_paper (const RwIssue *issue, const char *paper)
{
  return g_strv_contains ((const char *const *) issue->papers, paper);
}

RwIssued *
rw_issued_new (void)
{
  RwIssued *issued = g_new (RwIssued, 1);

  issued->issues = g_ptr_array_new_with_free_func ((GDestroyNotify) issue_free);
  return issued;
}

RwIssued *
rw_issued_copy (const RwIssued *issued)
{
  RwIssued *copy = rw_issued_new ();

  for (guint i = 0; i < issued->issues->len; i++)
    {
      const RwIssue *issue = issue_at (issued, i);

      g_ptr_array_add (copy->issues, issue_new (issue->date, issue->units, (const char *const *) issue->papers,
                                                rw_snapshot_copy (issue->values)));
    }
  return copy;
}

void
rw_issued_free (RwIssued *issued)
{
  if (issued == NULL)
    return;
  g_ptr_array_unref (issued->issues);
  g_free (issued);
}

gboolean
rw_issued_equal (const RwIssued *a, const RwIssued *b)
{
  if (a->issues->len != b->issues->len)
    return FALSE;
  for (guint i = 0; i < a->issues->len; i++)
    {
      const RwIssue *one = issue_at (a, i), *other = issue_at (b, i);

      if (strcmp (one->date, other->date) != 0 || one->units != other->units
          || !g_strv_equal ((const char *const *) one->papers, (const char *const *) other->papers)
          || !rw_snapshot_equal (one->values, other->values))
        return FALSE;
    }
  return TRUE;
}

/* Whether the issue is the last for one of its papers at least. */
static gboolean
still_counts (const RwIssued *issued, const RwIssue *issue)
{
  for (int i = 0; issue->papers[i] != NULL; i++)
    if (rw_issued_last (issued, issue->papers[i]) == issue)
      return TRUE;
  return FALSE;
}

void
rw_issued_append (RwIssued          *issued,
                  const char        *date,
                  RwUnits            units,
                  const char *const *papers,
                  RwSnapshot        *values)
{
  g_ptr_array_add (issued->issues, issue_new (date, units, papers, values));
}

void
rw_issued_add (RwIssued          *issued,
               const char        *date,
               RwUnits            units,
               const char *const *papers,
               RwSnapshot        *values)
{
  rw_issued_append (issued, date, units, papers, values);
  for (guint i = issued->issues->len - 1; i-- > 0;)
    if (!still_counts (issued, issue_at (issued, i)))
      g_ptr_array_remove_index (issued->issues, i);
}

const RwIssue *
rw_issued_last (const RwIssued *issued, const char *paper)
{
  for (guint i = issued->issues->len; i-- > 0;)
    if (paper == NULL || has_paper (issue_at (issued, i), paper))
      return issue_at (issued, i);
  return NULL;
}

static const char *const unit_names[] = {
  [RW_UNITS_MM] = "mm",
  [RW_UNITS_INCH] = "inch",
  [RW_UNITS_FRACTION] = "fraction",
  [RW_UNITS_FRACTION_32] = "fraction-32",
  [RW_UNITS_FRACTION_16] = "fraction-16",
};

const char *
rw_units_name (RwUnits units)
{
  return unit_names[units];
}

int
rw_units_find (const char *name)
{
  for (guint i = 0; i < G_N_ELEMENTS (unit_names); i++)
    if (strcmp (name, unit_names[i]) == 0)
      return (int) i;
  return -1;
}
