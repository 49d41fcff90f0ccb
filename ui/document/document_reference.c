/* The build that the present one is compared with. */
#include "document_private.h"

#include <glib/gi18n.h>

#include "io/project_file.h"

static void
take_reference (RwDocument *self, const RwProject *project, char *name)
{
  RwMeasured *measured = g_new (RwMeasured, 1);

  if (self->reference == NULL)
    self->reference = g_new (RwResult, 1);
  rw_project_measured (project, measured);
  rw_solve (&project->design, measured, self->reference);
  g_free (measured);
  g_free (self->reference_name);
  self->reference_name = name;
  rw_document_tell_reference (self);
}

void
rw_document_keep_reference (RwDocument *self)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *time = g_date_time_format (now, "%H:%M");
  g_autofree char *title = rw_document_title (self);

  /* Translators: a build's name, and the time of day when its state was kept */
  take_reference (self, rw_document_project (self), g_strdup_printf (_("%s at %s"), title, time));
}

gboolean
rw_document_load_reference (RwDocument *self, const char *path, GError **error)
{
  g_autoptr (RwProject) project = rw_project_load (path, error);

  if (project == NULL)
    return FALSE;
  take_reference (self, project, g_filename_display_basename (path));
  return TRUE;
}

void
rw_document_drop_reference (RwDocument *self)
{
  g_clear_pointer (&self->reference, g_free);
  g_clear_pointer (&self->reference_name, g_free);
  rw_document_tell_reference (self);
}

const RwResult *
rw_document_reference (RwDocument *self)
{
  return self->reference;
}

const char *
rw_document_reference_name (RwDocument *self)
{
  return self->reference_name;
}
