#include "acceptance.h"

static void
mark (RwFinding *finding, const RwAccepted *accepted)
{
  const RwAcceptance *item = rw_accepted_find (accepted, finding->rule, finding->ids[0]);

  if (item == NULL || (int) finding->severity < item->severity)
    return;
  finding->reason = g_strdup (item->reason);
  finding->accepted_on = g_strdup (item->date);
}

/* Stable, so that each half stays in its order. */
static int
compare (gconstpointer a, gconstpointer b)
{
  const RwFinding *one = *(RwFinding *const *) a, *other = *(RwFinding *const *) b;

  return (one->reason != NULL) - (other->reason != NULL);
}

void
rw_findings_accept (GPtrArray *findings, const RwAccepted *accepted)
{
  if (accepted->items->len == 0)
    return;
  for (guint i = 0; i < findings->len; i++)
    mark (g_ptr_array_index (findings, i), accepted);
  g_ptr_array_sort (findings, compare);
}

guint
rw_findings_open (const GPtrArray *findings, RwSeverity severity)
{
  guint sum = 0;

  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);

      sum += finding->severity == severity && finding->reason == NULL;
    }
  return sum;
}
