/* What is measured and made, and what papers left. */
#include "document_private.h"

#include <glib/gi18n.h>
#include <string.h>

#include "making/making.h"

static char *
today (void)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();

  return g_date_time_format (now, "%Y-%m-%d");
}

/* ---- readings ---- */

/* The note of an earlier entry is kept. */
static gboolean
write_readings (RwDocument *self, RwProject *project, const char *id, const char *text, GError **error)
{
  const RwEntry *old = rw_ledger_find (project->ledger, id);
  g_autofree char *note = g_strdup (old != NULL ? old->note : "");
  g_autofree char *date = today ();
  g_autoptr (GArray) readings = rw_readings_read (id, text, self->style, error);

  return readings != NULL
         && rw_making_measure (project, id, (const double *) (const void *) readings->data, readings->len, date,
                               note, error);
}

gboolean
rw_document_measure (RwDocument *self, const char *id, const char *text, GError **error)
{
  g_autoptr (RwProject) next = rw_project_copy (rw_document_project (self));
  gboolean empty = text[strspn (text, " \t")] == '\0';

  if (empty)
    rw_making_forget (next, id);
  else if (!write_readings (self, next, id, text, error))
    return FALSE;
  rw_document_put_project (self, g_steal_pointer (&next), empty ? _("Measured value taken away") : _("Measured value"));
  return TRUE;
}

gboolean
rw_document_annotate (RwDocument *self, const char *id, const char *date, const char *note, GError **error)
{
  g_autoptr (RwProject) next = rw_project_copy (rw_document_project (self));
  const RwEntry *old = rw_ledger_find (next->ledger, id);
  g_autoptr (GArray) readings = NULL;

  if (old == NULL)
    return TRUE;
  readings = g_array_copy (old->readings);
  if (!rw_ledger_put (next->ledger, id, (const double *) (const void *) readings->data, readings->len, date, note,
                      error))
    return FALSE;
  rw_document_put_project (self, g_steal_pointer (&next), _("Note on a measured value"));
  return TRUE;
}

/* ---- steps ---- */

gboolean
rw_document_mark_made (RwDocument *self, RwStep step, GError **error)
{
  g_autoptr (RwProject) next = rw_project_copy (rw_document_project (self));
  g_autofree char *date = today (), *name = NULL;

  if (!rw_making_mark (next, step, date, error))
    return FALSE;
  name = g_strdup_printf (_("Made: %s"), _(rw_step_title (step)));
  rw_document_put_project (self, g_steal_pointer (&next), name);
  return TRUE;
}

void
rw_document_unmark_made (RwDocument *self, RwStep step)
{
  g_autoptr (RwProject) next = rw_project_copy (rw_document_project (self));
  g_autofree char *name = g_strdup_printf (_("Not made after all: %s"), _(rw_step_title (step)));

  if (rw_making_unmark (next, step))
    rw_document_put_project (self, g_steal_pointer (&next), name);
}

/* ---- papers ---- */

void
rw_document_record_papers (RwDocument *self, const char *const *papers, RwUnits units)
{
  g_autoptr (RwProject) next = rw_project_copy (rw_document_project (self));
  g_autofree char *date = today ();

  rw_issued_add (next->issued, date, units, papers, rw_making_record (self->now));
  if (!rw_issued_equal (next->issued, rw_document_project (self)->issued))
    rw_document_put_project (self, g_steal_pointer (&next), _("Papers left"));
}
