/* The document's file: opening, saving, and what the project is called. */
#include "document_private.h"

#include <glib/gi18n.h>
#include <string.h>

#include "io/project_file.h"

void
rw_document_mark_file (RwDocument *self)
{
  self->file = self->path != NULL ? rw_file_mark (self->path) : (RwFileMark){ .exists = FALSE };
}

gboolean
rw_document_file_changed (RwDocument *self)
{
  RwFileMark now = rw_file_mark (self->path);

  return !rw_file_mark_equal (&now, &self->file);
}

void
rw_document_new_project (RwDocument *self)
{
  rw_document_take_project (self, rw_project_new (), NULL);
}

gboolean
rw_document_load (RwDocument *self, const char *path, GError **error)
{
  RwProject *project = rw_project_load (path, error);

  if (project == NULL)
    return FALSE;
  rw_document_take_project (self, project, path);
  return TRUE;
}

gboolean
rw_document_save (RwDocument *self, const char *path, GError **error)
{
  g_autofree char *new_path = g_strdup (path);

  if (!rw_project_save (rw_document_project (self), path, error))
    return FALSE;
  g_free (self->path);
  self->path = g_steal_pointer (&new_path);
  rw_document_mark_file (self);
  rw_history_mark_saved (self->history);
  rw_document_tell_saved_state (self);
  return TRUE;
}

const char *
rw_document_path (RwDocument *self)
{
  return self->path;
}

/* The file's name without folder and ending. */
static char *
stem_of (const char *path)
{
  g_autofree char *name = g_filename_display_basename (path);

  if (g_str_has_suffix (name, ".rimwright"))
    name[strlen (name) - strlen (".rimwright")] = '\0';
  return g_steal_pointer (&name);
}

char *
rw_document_title (RwDocument *self)
{
  const char *name = rw_document_project (self)->name;

  if (name != NULL && *name != '\0')
    return g_strdup (name);
  return self->path != NULL ? stem_of (self->path) : g_strdup (_("New build"));
}

gboolean
rw_document_modified (RwDocument *self)
{
  return rw_history_modified (self->history);
}

void
rw_document_rename (RwDocument *self, const char *name)
{
  RwProject *next = rw_project_copy (rw_document_project (self));

  g_free (next->name);
  next->name = g_strdup (name);
  rw_history_put (self->history, next, _("Name"), "name");
  rw_document_tell_saved_state (self);
}
