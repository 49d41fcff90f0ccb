/* Files of the window: new, open, recent, save, papers. */
#include "window_private.h"

#include <glib/gi18n.h>

#include "base/dialogs.h"
#include "io/project_file.h"
#include "io/save.h"
#include "papers/papers_window.h"

#define SUFFIX ".rimwright"
#define RECENT_COUNT 10

/* What is being typed is taken before it is saved or left. */
static void
settle_typing (RwWindow *self)
{
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (self));

  if (!GTK_IS_EDITABLE (focus))
    return;
  g_object_ref (focus);
  gtk_window_set_focus (GTK_WINDOW (self), NULL);
  if (gtk_widget_get_mapped (focus))
    gtk_window_set_focus (GTK_WINDOW (self), focus);
  g_object_unref (focus);
}

static void
add_recent (const char *path)
{
  g_autofree char *uri = g_filename_to_uri (path, NULL, NULL);
  GtkRecentData data = {
    .mime_type = (char *) "application/json",
    .app_name = (char *) "Rimwright",
    .app_exec = (char *) "rimwright %f",
  };

  if (uri != NULL)
    gtk_recent_manager_add_full (gtk_recent_manager_get_default (), uri, &data);
}

void
rw_window_load (RwWindow *self, const char *path)
{
  g_autoptr (GError) error = NULL;

  if (rw_document_load (self->document, path, &error))
    add_recent (path);
  else
    rw_dialog_error (GTK_WINDOW (self), _("The build can’t be opened"), error->message);
}

void
rw_window_recover (RwWindow *self, const RwDraft *draft)
{
  if (draft->of == NULL || !rw_document_load (self->document, draft->of, NULL))
    rw_document_new_project (self->document);
  rw_document_put_project (self->document, rw_project_copy (draft->project), _("Unsaved work"));
  rw_draft_keeper_adopt (self->drafts, draft);
}

/* ---- saving ---- */

static gboolean
save_to (RwWindow *self, const char *path)
{
  g_autoptr (GError) error = NULL;

  if (!rw_document_save (self->document, path, &error))
    {
      rw_dialog_error (GTK_WINDOW (self), _("The build can’t be saved"), error->message);
      return FALSE;
    }
  add_recent (path);
  return TRUE;
}

/* Whatever waited for the save goes on if it came off, else it is given up. */
static void
save_and_go_on (RwWindow *self, const char *path)
{
  RwWindowFunc go_on = self->go_on;

  self->go_on = NULL;
  if (path != NULL && save_to (self, path) && go_on != NULL)
    go_on (self);
}

static void
on_save_path (const char *path, gpointer user_data)
{
  save_and_go_on (RW_WINDOW (user_data), path);
}

static void
ask_where (RwWindow *self)
{
  const char *path = rw_document_path (self->document);
  g_autofree char *title = rw_document_title (self->document);
  g_autofree char *name = g_strconcat (g_strdelimit (title, "/", '-'), SUFFIX, NULL);

  rw_dialog_save (GTK_WINDOW (self), path != NULL ? path : name, on_save_path, self);
}

static void
save_to_its_file (RwWindow *self)
{
  g_autofree char *path = g_strdup (rw_document_path (self->document));

  save_and_go_on (self, path);
}

static void
on_overwrite_reply (RwReply reply, gpointer user_data)
{
  RwWindow *self = user_data;

  if (reply == RW_REPLY_GO)
    ask_where (self);
  else if (reply == RW_REPLY_OTHER)
    save_to_its_file (self);
  else
    self->go_on = NULL;
}

/* Another program has written the file since; what that put there is not lost without a question. */
static void
ask_whether (RwWindow *self)
{
  g_autofree char *name = g_filename_display_basename (rw_document_path (self->document));
  g_autofree char *question = g_strdup_printf (_("“%s” was changed by another program"), name);

  rw_dialog_ask (GTK_WINDOW (self),
                 &(RwQuestion){
                     .title = _("Changed on the disk"),
                     .question = question,
                     .details = _("Save under another name to keep both. What the other program wrote is kept as"
                                  " the previous version otherwise."),
                     .stay = _("_Cancel"),
                     .other = _("_Overwrite"),
                     .go = _("Save _as…"),
                 },
                 on_overwrite_reply, self);
}

void
rw_window_save (RwWindow *self)
{
  if (rw_document_path (self->document) == NULL)
    ask_where (self);
  else if (rw_document_file_changed (self->document))
    ask_whether (self);
  else
    save_to_its_file (self);
}

static void
save (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  settle_typing (RW_WINDOW (user_data));
  rw_window_save (RW_WINDOW (user_data));
}

static void
save_as (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  settle_typing (RW_WINDOW (user_data));
  ask_where (RW_WINDOW (user_data));
}

/* The version before the last save, as a step that can be undone. */
static void
previous_version (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  RwWindow *self = user_data;
  const char *path = rw_document_path (self->document);
  g_autofree char *previous = path != NULL ? rw_save_previous (path) : NULL;
  g_autoptr (GError) error = NULL;
  RwProject *project;

  settle_typing (self);
  if (previous == NULL || !g_file_test (previous, G_FILE_TEST_EXISTS))
    {
      rw_dialog_error (GTK_WINDOW (self), _("There is no previous version"),
                       _("One is kept beside the file from the second save on."));
      return;
    }
  project = rw_project_load (previous, &error);
  if (project != NULL)
    rw_document_put_project (self->document, project, _("Previous version"));
  else
    rw_dialog_error (GTK_WINDOW (self), _("The previous version can’t be opened"), error->message);
}

/* ---- opening ---- */

static void
start_anew (RwWindow *self)
{
  rw_document_new_project (self->document);
}

static void
new_build (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  settle_typing (RW_WINDOW (user_data));
  rw_window_unless_unsaved (RW_WINDOW (user_data), start_anew);
}

static void
on_open_path (const char *path, gpointer user_data)
{
  if (path != NULL)
    rw_window_load (RW_WINDOW (user_data), path);
}

static void
ask_what (RwWindow *self)
{
  rw_dialog_open (GTK_WINDOW (self), on_open_path, self);
}

static void
open_build (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  settle_typing (RW_WINDOW (user_data));
  rw_window_unless_unsaved (RW_WINDOW (user_data), ask_what);
}

static void
load_wanted (RwWindow *self)
{
  rw_window_load (self, self->wanted);
}

static void
open_recent (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  RwWindow *self = user_data;

  g_free (self->wanted);
  self->wanted = g_strdup (g_variant_get_string (parameter, NULL));
  settle_typing (self);
  rw_window_unless_unsaved (self, load_wanted);
}

/* A file let go over the window is opened in it. */
static gboolean
on_drop (GtkDropTarget *target, const GValue *value, double x, double y, gpointer user_data)
{
  RwWindow *self = user_data;
  char *path = g_file_get_path (g_value_get_object (value));

  if (path == NULL)
    return FALSE;
  g_free (self->wanted);
  self->wanted = path;
  settle_typing (self);
  rw_window_unless_unsaved (self, load_wanted);
  return TRUE;
}

static void
take_drops (RwWindow *self)
{
  GtkDropTarget *target = gtk_drop_target_new (G_TYPE_FILE, GDK_ACTION_COPY);

  g_signal_connect (target, "drop", G_CALLBACK (on_drop), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (target));
}

/* Our own, the latest first. */
static int
later_first (gconstpointer a, gconstpointer b)
{
  return g_date_time_compare (gtk_recent_info_get_modified ((GtkRecentInfo *) b),
                              gtk_recent_info_get_modified ((GtkRecentInfo *) a));
}

void
rw_window_fill_recent (RwWindow *self)
{
  GList *all = g_list_sort (gtk_recent_manager_get_items (gtk_recent_manager_get_default ()), later_first);

  g_menu_remove_all (self->recent);
  for (GList *l = all; l != NULL; l = l->next)
    {
      g_autofree char *path = g_filename_from_uri (gtk_recent_info_get_uri (l->data), NULL, NULL);
      g_autoptr (GMenuItem) item = NULL;

      if (path == NULL || !gtk_recent_info_has_application (l->data, "Rimwright")
          || g_menu_model_get_n_items (G_MENU_MODEL (self->recent)) >= RECENT_COUNT)
        continue;
      item = g_menu_item_new (gtk_recent_info_get_display_name (l->data), NULL);
      g_menu_item_set_action_and_target (item, "win.open-recent", "s", path);
      g_menu_append_item (self->recent, item);
    }
  /* An item without an action says so, and can't be pressed. */
  if (g_menu_model_get_n_items (G_MENU_MODEL (self->recent)) == 0)
    g_menu_append (self->recent, _("None yet"), "win.none");
  g_list_free_full (all, (GDestroyNotify) gtk_recent_info_unref);
}

/* ---- papers ---- */

static void
papers (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  RwWindow *self = user_data;

  settle_typing (self);
  if (self->papers == NULL)
    g_set_weak_pointer (&self->papers, rw_papers_window_new (GTK_WINDOW (self), self->document));
  gtk_window_present (GTK_WINDOW (self->papers));
}

void
rw_window_add_file_actions (RwWindow *self)
{
  static const GActionEntry entries[] = {
    { .name = "new", .activate = new_build },
    { .name = "open", .activate = open_build },
    { .name = "open-recent", .activate = open_recent, .parameter_type = "s" },
    { .name = "save", .activate = save },
    { .name = "save-as", .activate = save_as },
    { .name = "previous-version", .activate = previous_version },
    { .name = "papers", .activate = papers },
  };

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
  take_drops (self);
}
