#include "papers_saver.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "base/dialogs.h"
#include "io/file_error.h"

#define WATCH_MS 80

struct _RwPapersSaver
{
  GtkBox parent;

  RwPapersJob *job;   /* NULL: not busy */
  guint        watch; /* of how far it is */
  GtkWidget   *said;
  GtkWidget   *bar, *stop;
};

G_DEFINE_FINAL_TYPE (RwPapersSaver, rw_papers_saver, GTK_TYPE_BOX)

static guint busy_signal, saved_signal;

static gboolean
watch (gpointer user_data)
{
  RwPapersSaver *self = user_data;

  gtk_progress_bar_set_fraction (GTK_PROGRESS_BAR (self->bar), rw_papers_job_share (self->job));
  return G_SOURCE_CONTINUE;
}

static void
show_state (RwPapersSaver *self)
{
  gboolean busy = self->job != NULL;

  g_clear_handle_id (&self->watch, g_source_remove);
  if (busy)
    self->watch = g_timeout_add (WATCH_MS, watch, self);
  gtk_progress_bar_set_fraction (GTK_PROGRESS_BAR (self->bar), 0);
  gtk_widget_set_visible (self->bar, busy);
  gtk_widget_set_visible (self->stop, busy);
  gtk_widget_set_visible (self->said, !busy);
  g_signal_emit (self, busy_signal, 0);
}

static void
say_saved (RwPapersSaver *self, const RwPapersOutcome *outcome)
{
  g_autofree char *said = NULL;

  if (outcome->pages > 0)
    said = g_strdup_printf (ngettext ("%d page saved as %s", "%d pages saved as %s", outcome->pages),
                            outcome->pages, outcome->path);
  else
    said = g_strdup_printf (ngettext ("%d file saved in %s", "%d files saved in %s", outcome->files),
                            outcome->files, outcome->path);
  rw_papers_saver_say (self, said);
}

static void
on_saved (RwPapersJob *job, RwPapersOutcome *outcome, gpointer data)
{
  RwPapersSaver *self = data;
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));

  if (job == self->job)
    {
      self->job = NULL;
      show_state (self);
      if (outcome->error == NULL)
        {
          say_saved (self, outcome);
          g_signal_emit (self, saved_signal, 0);
        }
      else if (g_error_matches (outcome->error, RW_FILE_ERROR, RW_FILE_ERROR_STOPPED))
        rw_papers_saver_say (self, outcome->error->message);
      else
        rw_dialog_error (GTK_WINDOW (root), _("The papers can’t be saved"), outcome->error->message);
    }
  rw_papers_job_unref (job);
}

static void
stop (GtkWidget *widget, const char *action, GVariant *parameter)
{
  RwPapersSaver *self = RW_PAPERS_SAVER (widget);

  if (self->job != NULL)
    rw_papers_job_stop (self->job);
}

/* Closed while it writes: the file that is being written is not. */
static void
rw_papers_saver_dispose (GObject *object)
{
  RwPapersSaver *self = RW_PAPERS_SAVER (object);

  g_clear_handle_id (&self->watch, g_source_remove);
  if (self->job != NULL)
    rw_papers_job_stop (self->job);
  self->job = NULL;
  G_OBJECT_CLASS (rw_papers_saver_parent_class)->dispose (object);
}

static void
rw_papers_saver_class_init (RwPapersSaverClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_papers_saver_dispose;
  gtk_widget_class_install_action (GTK_WIDGET_CLASS (klass), "saver.stop", NULL, stop);
  busy_signal = g_signal_new ("busy", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                              G_TYPE_NONE, 0);
  saved_signal = g_signal_new ("saved", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                               G_TYPE_NONE, 0);
}

static void
rw_papers_saver_init (RwPapersSaver *self)
{
  gtk_box_set_spacing (GTK_BOX (self), 6);
  gtk_widget_set_hexpand (GTK_WIDGET (self), TRUE);

  self->said = gtk_label_new (NULL);
  gtk_label_set_ellipsize (GTK_LABEL (self->said), PANGO_ELLIPSIZE_MIDDLE);
  gtk_label_set_xalign (GTK_LABEL (self->said), 1);
  gtk_widget_set_hexpand (self->said, TRUE);

  self->bar = gtk_progress_bar_new ();
  rw_access_name (self->bar, _("Saving"));
  gtk_widget_set_valign (self->bar, GTK_ALIGN_CENTER);
  gtk_widget_set_hexpand (self->bar, TRUE);
  gtk_widget_set_visible (self->bar, FALSE);

  self->stop = gtk_button_new_with_label (_("Stop"));
  gtk_actionable_set_action_name (GTK_ACTIONABLE (self->stop), "saver.stop");
  gtk_widget_set_visible (self->stop, FALSE);

  gtk_box_append (GTK_BOX (self), self->said);
  gtk_box_append (GTK_BOX (self), self->bar);
  gtk_box_append (GTK_BOX (self), self->stop);
}

GtkWidget *
rw_papers_saver_new (void)
{
  return g_object_new (RW_TYPE_PAPERS_SAVER, NULL);
}

void
rw_papers_saver_say (RwPapersSaver *self, const char *text)
{
  gtk_label_set_text (GTK_LABEL (self->said), text);
}

gboolean
rw_papers_saver_is_busy (RwPapersSaver *self)
{
  return self->job != NULL;
}

void
rw_papers_saver_start (RwPapersSaver         *self,
                       const RwProject       *project,
                       const RwPapersOptions *options,
                       RwPapersTask           task,
                       const char            *path)
{
  if (self->job != NULL)
    return;
  self->job = rw_papers_job_start (project, options, task, path, on_saved, G_OBJECT (self));
  show_state (self);
}
