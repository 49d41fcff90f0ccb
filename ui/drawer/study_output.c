#include "study_output.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "base/dialogs.h"
#include "io/save.h"
#include "papers/papers_memory.h"

#define HIGH_PER_WIDE 0.45 /* of the picture on paper */

/* What the menu works for. */
typedef struct
{
  GtkWidget      *button;
  RwStudyCopyFunc copy;
  gpointer        user_data;
} Output;

/* One choice from the menu, until it is done. */
typedef struct
{
  RwStudyCopy   what;
  RwStudyFormat format;
  GtkWindow    *parent;
} Job;

static Job *
job_new (const Output *output)
{
  Job *job = g_new0 (Job, 1);

  job->what = output->copy (output->user_data);
  job->parent = g_object_ref (GTK_WINDOW (gtk_widget_get_root (output->button)));
  return job;
}

static void
job_free (gpointer data)
{
  Job *job = data;

  rw_study_free (job->what.study);
  g_free (job->what.heading);
  g_object_unref (job->parent);
  g_free (job);
}

static RwStudyLook
look_of (const Job *job)
{
  RwStudyLook look = RW_STUDY_LOOK;

  look.style = job->what.style;
  look.heading = job->what.heading;
  return look;
}

/* ---- saving ---- */

/* Dated today, as a document of its own. */
static GBytes *
file_bytes (const Job *job, GError **error)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *date = g_date_time_format (now, "%Y-%m-%d");
  RwStudyLook look = look_of (job);

  look.date = date;
  return rw_study_write (job->what.study, job->format, &look, error);
}

static void
on_path (const char *path, gpointer user_data)
{
  Job *job = user_data;
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = path != NULL ? file_bytes (job, &error) : NULL;
  gsize length = 0;
  const char *data = bytes != NULL ? g_bytes_get_data (bytes, &length) : NULL;

  if (bytes != NULL)
    rw_save_bytes (path, data, length, &error);
  if (error != NULL)
    rw_dialog_error (job->parent, _("The study can’t be saved"), error->message);
  job_free (job);
}

static void
save (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  const char *extension = g_variant_get_string (parameter, NULL);
  Job *job = job_new (user_data);
  g_autofree char *name = g_strdup_printf ("%s.%s", job->what.study->id, extension);

  job->format = (RwStudyFormat) rw_study_format_find (extension);
  rw_dialog_save_as (job->parent, _("Save the study"), name, on_path, job);
}

/* ---- printing ---- */

static void
on_draw_page (GtkPrintOperation *operation, GtkPrintContext *context, int page, Job *job)
{
  RwStudyLook look = look_of (job);

  look.width = gtk_print_context_get_width (context);
  look.height = MIN (gtk_print_context_get_height (context), HIGH_PER_WIDE * look.width);
  rw_study_paint (job->what.study, &look, gtk_print_context_get_cairo_context (context));
}

static void
on_printed (GtkPrintOperation *operation, GtkPrintOperationResult result, Job *job)
{
  g_autoptr (GError) error = NULL;

  if (result == GTK_PRINT_OPERATION_RESULT_APPLY)
    rw_print_settings_save (gtk_print_operation_get_print_settings (operation));
  if (result != GTK_PRINT_OPERATION_RESULT_ERROR)
    return;
  gtk_print_operation_get_error (operation, &error);
  rw_dialog_error (job->parent, _("The study can’t be printed"), error->message);
}

static void
print (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  g_autoptr (GtkPrintOperation) operation = gtk_print_operation_new ();
  g_autoptr (GtkPrintSettings) settings = rw_print_settings_load ();
  g_autoptr (GtkPageSetup) setup = gtk_page_setup_new ();
  Job *job = job_new (user_data);

  gtk_page_setup_set_orientation (setup, GTK_PAGE_ORIENTATION_LANDSCAPE);
  gtk_print_operation_set_default_page_setup (operation, setup);
  gtk_print_operation_set_print_settings (operation, settings);
  gtk_print_operation_set_n_pages (operation, 1);
  gtk_print_operation_set_job_name (operation, job->what.heading);
  gtk_print_operation_set_unit (operation, GTK_UNIT_MM);
  gtk_print_operation_set_allow_async (operation, TRUE);
  g_signal_connect (operation, "draw-page", G_CALLBACK (on_draw_page), job);
  g_signal_connect (operation, "done", G_CALLBACK (on_printed), job);
  g_object_set_data_full (G_OBJECT (operation), "rw-job", job, job_free);
  gtk_print_operation_run (operation, GTK_PRINT_OPERATION_ACTION_PRINT_DIALOG, job->parent, NULL);
}

/* ---- the menu ---- */

static GMenuModel *
build_menu (void)
{
  static const struct
  {
    const char *title, *action;
  } rows[2][4] = {
    { { N_("Save as PDF…"), "study.save::pdf" },
      { N_("Save as SVG…"), "study.save::svg" },
      { N_("Save as PNG…"), "study.save::png" },
      { N_("Save the table as CSV…"), "study.save::csv" } },
    { { N_("Print…"), "study.print" } },
  };
  GMenu *menu = g_menu_new ();

  for (guint section = 0; section < G_N_ELEMENTS (rows); section++)
    {
      g_autoptr (GMenu) part = g_menu_new ();

      for (guint i = 0; i < G_N_ELEMENTS (rows[section]) && rows[section][i].title != NULL; i++)
        g_menu_append (part, _(rows[section][i].title), rows[section][i].action);
      g_menu_append_section (menu, NULL, G_MENU_MODEL (part));
    }
  return G_MENU_MODEL (menu);
}

GtkWidget *
rw_study_output_button (RwStudyCopyFunc copy, gpointer user_data)
{
  static const GActionEntry entries[] = {
    { .name = "save", .activate = save, .parameter_type = "s" },
    { .name = "print", .activate = print },
  };
  g_autoptr (GSimpleActionGroup) actions = g_simple_action_group_new ();
  g_autoptr (GMenuModel) menu = build_menu ();
  GtkWidget *button = gtk_menu_button_new ();
  Output *output = g_new (Output, 1);

  *output = (Output){ button, copy, user_data };
  g_action_map_add_action_entries (G_ACTION_MAP (actions), entries, G_N_ELEMENTS (entries), output);
  gtk_widget_insert_action_group (button, "study", G_ACTION_GROUP (actions));
  g_object_set_data_full (G_OBJECT (button), "rw-output", output, g_free);
  gtk_menu_button_set_menu_model (GTK_MENU_BUTTON (button), menu);
  gtk_menu_button_set_icon_name (GTK_MENU_BUTTON (button), "document-save-symbolic");
  rw_access_title (button, _("Save or print the study"));
  return button;
}
