#include "dialogs.h"

#include <glib/gi18n.h>

#include "access.h"

/* Who is to be told, kept while a dialog is open. */
typedef struct
{
  GCallback done;
  gpointer  user_data;
  GtkWidget *entry; /* of a question for a text */
} Waiting;

static Waiting *
waiting_new (GCallback done, gpointer user_data)
{
  Waiting *waiting = g_new0 (Waiting, 1);

  waiting->done = done;
  waiting->user_data = user_data;
  return waiting;
}

static void
free_waiting (gpointer waiting, GClosure *closure)
{
  g_free (waiting);
}

/* ---- files and folders ---- */

static void
on_file_response (GtkNativeDialog *dialog, int response, Waiting *waiting)
{
  g_autoptr (GFile) file = gtk_file_chooser_get_file (GTK_FILE_CHOOSER (dialog));
  g_autofree char *path = file != NULL ? g_file_get_path (file) : NULL;
  RwPathFunc done = (RwPathFunc) waiting->done;
  gpointer user_data = waiting->user_data;

  gtk_native_dialog_hide (dialog);
  done (response == GTK_RESPONSE_ACCEPT ? path : NULL, user_data);
  g_object_unref (dialog);
}

static void
add_filters (GtkFileChooser *chooser)
{
  g_autoptr (GtkFileFilter) builds = gtk_file_filter_new ();
  g_autoptr (GtkFileFilter) all = gtk_file_filter_new ();

  gtk_file_filter_set_name (builds, _("Builds (*.rimwright)"));
  gtk_file_filter_add_pattern (builds, "*.rimwright");
  gtk_file_filter_set_name (all, _("All files"));
  gtk_file_filter_add_pattern (all, "*");
  gtk_file_chooser_add_filter (chooser, builds);
  gtk_file_chooser_add_filter (chooser, all);
}

static void
show_chooser (GtkFileChooserNative *dialog, RwPathFunc done, gpointer user_data)
{
  gtk_native_dialog_set_modal (GTK_NATIVE_DIALOG (dialog), TRUE);
  g_signal_connect_data (dialog, "response", G_CALLBACK (on_file_response),
                         waiting_new (G_CALLBACK (done), user_data), free_waiting, 0);
  gtk_native_dialog_show (GTK_NATIVE_DIALOG (dialog));
}

void
rw_dialog_open (GtkWindow *parent, RwPathFunc done, gpointer user_data)
{
  GtkFileChooserNative *dialog = gtk_file_chooser_native_new (
      _("Open a build"), parent, GTK_FILE_CHOOSER_ACTION_OPEN, _("_Open"), _("_Cancel"));

  add_filters (GTK_FILE_CHOOSER (dialog));
  show_chooser (dialog, done, user_data);
}

void
rw_dialog_open_any (GtkWindow *parent, const char *title, RwPathFunc done, gpointer user_data)
{
  GtkFileChooserNative *dialog
      = gtk_file_chooser_native_new (title, parent, GTK_FILE_CHOOSER_ACTION_OPEN, _("_Open"), _("_Cancel"));

  show_chooser (dialog, done, user_data);
}

void
rw_dialog_save (GtkWindow *parent, const char *suggestion, RwPathFunc done, gpointer user_data)
{
  GtkFileChooserNative *dialog = gtk_file_chooser_native_new (
      _("Save the build"), parent, GTK_FILE_CHOOSER_ACTION_SAVE, _("_Save"), _("_Cancel"));
  g_autoptr (GFile) file = g_path_is_absolute (suggestion) ? g_file_new_for_path (suggestion) : NULL;

  add_filters (GTK_FILE_CHOOSER (dialog));
  if (file != NULL)
    gtk_file_chooser_set_file (GTK_FILE_CHOOSER (dialog), file, NULL);
  else
    gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (dialog), suggestion);
  show_chooser (dialog, done, user_data);
}

void
rw_dialog_save_as (GtkWindow *parent, const char *title, const char *suggestion, RwPathFunc done,
                   gpointer user_data)
{
  GtkFileChooserNative *dialog = gtk_file_chooser_native_new (
      title, parent, GTK_FILE_CHOOSER_ACTION_SAVE, _("_Save"), _("_Cancel"));

  gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (dialog), suggestion);
  show_chooser (dialog, done, user_data);
}

void
rw_dialog_save_pdf (GtkWindow *parent, const char *suggestion, RwPathFunc done, gpointer user_data)
{
  GtkFileChooserNative *dialog = gtk_file_chooser_native_new (
      _("Save the papers"), parent, GTK_FILE_CHOOSER_ACTION_SAVE, _("_Save"), _("_Cancel"));
  g_autoptr (GtkFileFilter) pdf = gtk_file_filter_new ();

  gtk_file_filter_set_name (pdf, _("PDF documents"));
  gtk_file_filter_add_pattern (pdf, "*.pdf");
  gtk_file_chooser_add_filter (GTK_FILE_CHOOSER (dialog), pdf);
  gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (dialog), suggestion);
  show_chooser (dialog, done, user_data);
}

void
rw_dialog_folder (GtkWindow *parent, const char *title, RwPathFunc done, gpointer user_data)
{
  GtkFileChooserNative *dialog = gtk_file_chooser_native_new (
      title, parent, GTK_FILE_CHOOSER_ACTION_SELECT_FOLDER, _("_Choose"), _("_Cancel"));

  show_chooser (dialog, done, user_data);
}

/* ---- questions ---- */

/* The answer may be the end of the parent, which the dialog must not look for when its own comes. */
static void
dismiss (GtkDialog *dialog)
{
  gtk_window_set_transient_for (GTK_WINDOW (dialog), NULL);
  gtk_window_destroy (GTK_WINDOW (dialog));
}

static void
on_reply (GtkDialog *dialog, int response, Waiting *waiting)
{
  RwReplyFunc done = (RwReplyFunc) waiting->done;
  gpointer user_data = waiting->user_data;
  RwReply reply = response == RW_REPLY_GO || response == RW_REPLY_OTHER ? (RwReply) response : RW_REPLY_STAY;

  dismiss (dialog);
  done (reply, user_data);
}

void
rw_dialog_ask (GtkWindow *parent, const RwQuestion *question, RwReplyFunc done, gpointer user_data)
{
  GtkWidget *dialog = gtk_message_dialog_new (parent, GTK_DIALOG_MODAL | GTK_DIALOG_DESTROY_WITH_PARENT,
                                              GTK_MESSAGE_QUESTION, GTK_BUTTONS_NONE, "%s", question->question);

  gtk_message_dialog_format_secondary_text (GTK_MESSAGE_DIALOG (dialog), "%s", question->details);
  gtk_window_set_title (GTK_WINDOW (dialog), question->title);
  gtk_dialog_add_button (GTK_DIALOG (dialog), question->other, RW_REPLY_OTHER);
  gtk_dialog_add_button (GTK_DIALOG (dialog), question->stay, RW_REPLY_STAY);
  gtk_dialog_add_button (GTK_DIALOG (dialog), question->go, RW_REPLY_GO);
  gtk_dialog_set_default_response (GTK_DIALOG (dialog), RW_REPLY_GO);
  g_signal_connect_data (dialog, "response", G_CALLBACK (on_reply), waiting_new (G_CALLBACK (done), user_data),
                         free_waiting, 0);
  gtk_window_present (GTK_WINDOW (dialog));
}

static void
on_text_response (GtkDialog *dialog, int response, Waiting *waiting)
{
  g_autofree char *text = g_strdup (gtk_editable_get_text (GTK_EDITABLE (waiting->entry)));
  RwTextFunc done = (RwTextFunc) waiting->done;
  gpointer user_data = waiting->user_data;

  dismiss (dialog);
  done (response == GTK_RESPONSE_OK ? text : NULL, user_data);
}

void
rw_dialog_text (GtkWindow *parent, const char *title, const char *text, RwTextFunc done, gpointer user_data)
{
  GtkWidget *dialog
      = gtk_dialog_new_with_buttons (title, parent, GTK_DIALOG_MODAL | GTK_DIALOG_USE_HEADER_BAR,
                                     _("_Cancel"), GTK_RESPONSE_CANCEL, _("_OK"), GTK_RESPONSE_OK, NULL);
  GtkWidget *content = gtk_dialog_get_content_area (GTK_DIALOG (dialog));
  Waiting *waiting = waiting_new (G_CALLBACK (done), user_data);

  waiting->entry = gtk_entry_new ();
  gtk_editable_set_text (GTK_EDITABLE (waiting->entry), text);
  gtk_editable_set_width_chars (GTK_EDITABLE (waiting->entry), 40);
  gtk_entry_set_activates_default (GTK_ENTRY (waiting->entry), TRUE);
  rw_access_name (waiting->entry, title);
  gtk_widget_set_margin_start (waiting->entry, 18);
  gtk_widget_set_margin_end (waiting->entry, 18);
  gtk_widget_set_margin_top (waiting->entry, 18);
  gtk_widget_set_margin_bottom (waiting->entry, 18);
  gtk_box_append (GTK_BOX (content), waiting->entry);
  gtk_dialog_set_default_response (GTK_DIALOG (dialog), GTK_RESPONSE_OK);
  g_signal_connect_data (dialog, "response", G_CALLBACK (on_text_response), waiting, free_waiting, 0);
  gtk_window_present (GTK_WINDOW (dialog));
}

void
rw_dialog_error (GtkWindow *parent, const char *what, const char *why)
{
  GtkWidget *dialog = gtk_message_dialog_new (parent, GTK_DIALOG_MODAL | GTK_DIALOG_DESTROY_WITH_PARENT,
                                              GTK_MESSAGE_ERROR, GTK_BUTTONS_CLOSE, "%s", what);

  gtk_message_dialog_format_secondary_text (GTK_MESSAGE_DIALOG (dialog), "%s", why);
  gtk_window_set_title (GTK_WINDOW (dialog), _("Not done"));
  g_signal_connect (dialog, "response", G_CALLBACK (gtk_window_destroy), NULL);
  gtk_window_present (GTK_WINDOW (dialog));
}
