/* Findings: remedies tried and applied, and what is accepted. */
#include "document_private.h"

#include <glib/gi18n.h>

#include "making/remedy.h"

/* ---- remedies ---- */

const GPtrArray *
rw_document_remedies (RwDocument *self, const RwFinding *finding)
{
  GPtrArray *remedies = g_hash_table_lookup (self->remedies, finding);

  if (remedies == NULL)
    {
      remedies = rw_remedies (rw_document_design (self), self->measured, finding);
      g_hash_table_insert (self->remedies, (gpointer) finding, remedies);
    }
  return remedies;
}

void
rw_document_forget_remedies (RwDocument *self)
{
  g_hash_table_remove_all (self->remedies);
  g_clear_pointer (&self->preview, g_free);
}

void
rw_document_preview (RwDocument *self, const RwDesign *design)
{
  if (design == NULL && self->preview == NULL)
    return;
  g_clear_pointer (&self->preview, g_free);
  if (design != NULL)
    {
      self->preview = g_new (RwResult, 1);
      rw_solve (design, self->measured, self->preview);
    }
  rw_document_tell_reference (self);
}

const RwResult *
rw_document_preview_result (RwDocument *self)
{
  return self->preview;
}

void
rw_document_apply (RwDocument *self, const RwDesign *design, const char *name)
{
  RwProject *next = rw_project_copy (rw_document_project (self));

  next->design = *design;
  rw_document_put_project (self, next, name);
}

/* ---- what is accepted ---- */

void
rw_document_accept (RwDocument *self, const RwFinding *finding, const char *reason)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *today = g_date_time_format (now, "%Y-%m-%d");
  RwProject *next = rw_project_copy (rw_document_project (self));

  rw_accepted_add (next->accepted, finding->rule, finding->ids[0], (int) finding->severity, today, reason);
  rw_document_put_project (self, next, _("Accept a finding"));
}

void
rw_document_unaccept (RwDocument *self, const RwFinding *finding)
{
  RwProject *next = rw_project_copy (rw_document_project (self));

  rw_accepted_remove (next->accepted, finding->rule, finding->ids[0]);
  rw_document_put_project (self, next, _("Accept a finding no more"));
}
