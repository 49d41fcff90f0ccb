#include "print.h"

#include <math.h>

#include "papers_memory.h"

#define NEAR 0.5 /* mm: within this a size is the system's by name */

/* Printers know paper by name rather than by measure. */
static GtkPaperSize *
paper_size (double width, double height)
{
  GList *all = gtk_paper_size_get_paper_sizes (FALSE);
  GtkPaperSize *found = NULL;

  for (GList *l = all; l != NULL && found == NULL; l = l->next)
    if (fabs (gtk_paper_size_get_width (l->data, GTK_UNIT_MM) - width) < NEAR
        && fabs (gtk_paper_size_get_height (l->data, GTK_UNIT_MM) - height) < NEAR)
      found = gtk_paper_size_copy (l->data);
  g_list_free_full (all, (GDestroyNotify) gtk_paper_size_free);
  if (found == NULL)
    found = gtk_paper_size_new_custom ("rimwright", "Rimwright", width, height, GTK_UNIT_MM);
  return found;
}

/* Without margins: the page has its own. */
static void
set_up_page (GtkPageSetup *setup, const RwPaperPage *page)
{
  double width = MIN (page->width, page->height), height = MAX (page->width, page->height);
  GtkPaperSize *size = paper_size (width, height);

  gtk_page_setup_set_paper_size (setup, size);
  gtk_page_setup_set_orientation (setup, page->width > page->height ? GTK_PAGE_ORIENTATION_LANDSCAPE
                                                                    : GTK_PAGE_ORIENTATION_PORTRAIT);
  gtk_page_setup_set_top_margin (setup, 0, GTK_UNIT_MM);
  gtk_page_setup_set_bottom_margin (setup, 0, GTK_UNIT_MM);
  gtk_page_setup_set_left_margin (setup, 0, GTK_UNIT_MM);
  gtk_page_setup_set_right_margin (setup, 0, GTK_UNIT_MM);
  gtk_paper_size_free (size);
}

static const RwPaperPage *
page_at (const RwPaperSet *set, int number)
{
  return g_ptr_array_index (set->pages, number);
}

static void
on_request_page_setup (GtkPrintOperation *operation,
                       GtkPrintContext   *context,
                       int                number,
                       GtkPageSetup      *setup,
                       const RwPaperSet  *set)
{
  set_up_page (setup, page_at (set, number));
}

static void
on_draw_page (GtkPrintOperation *operation, GtkPrintContext *context, int number, const RwPaperSet *set)
{
  rw_paper_set_paint (set, page_at (set, number), gtk_print_context_get_cairo_context (context));
}

GtkPrintOperation *
rw_print_new (RwPaperSet *set, const char *job_name)
{
  GtkPrintOperation *operation = gtk_print_operation_new ();
  g_autoptr (GtkPageSetup) setup = gtk_page_setup_new ();

  set_up_page (setup, page_at (set, 0));
  gtk_page_setup_set_orientation (setup, GTK_PAGE_ORIENTATION_PORTRAIT);
  gtk_print_operation_set_default_page_setup (operation, setup);
  gtk_print_operation_set_n_pages (operation, (int) set->pages->len);
  gtk_print_operation_set_job_name (operation, job_name);
  gtk_print_operation_set_unit (operation, GTK_UNIT_MM);
  gtk_print_operation_set_use_full_page (operation, TRUE);
  g_signal_connect (operation, "request-page-setup", G_CALLBACK (on_request_page_setup), set);
  g_signal_connect (operation, "draw-page", G_CALLBACK (on_draw_page), set);
  g_object_set_data_full (G_OBJECT (operation), "rw-paper-set", set, (GDestroyNotify) rw_paper_set_free);
  return operation;
}

/* ---- with the dialog ---- */

typedef struct
{
  RwPrintedFunc done;
  GObject      *data;
} Waiting;

static void
free_waiting (gpointer data, GClosure *closure)
{
  Waiting *waiting = data;

  g_object_unref (waiting->data);
  g_free (waiting);
}

static const char *
chosen_printer (GtkPrintOperation *operation)
{
  GtkPrintSettings *settings = gtk_print_operation_get_print_settings (operation);

  return settings != NULL ? gtk_print_settings_get_printer (settings) : NULL;
}

static void
on_begin_print (GtkPrintOperation *operation, GtkPrintContext *context, RwPaperSet *set)
{
  RwBars bars = rw_bars_load (chosen_printer (operation));

  rw_paper_set_correct (set, bars.short_mm, bars.long_mm);
}

static void
on_done (GtkPrintOperation *operation, GtkPrintOperationResult result, Waiting *waiting)
{
  g_autoptr (GError) error = NULL;
  const char *printer = NULL;

  if (result == GTK_PRINT_OPERATION_RESULT_ERROR)
    gtk_print_operation_get_error (operation, &error);
  if (result == GTK_PRINT_OPERATION_RESULT_APPLY)
    {
      printer = chosen_printer (operation);
      rw_print_settings_save (gtk_print_operation_get_print_settings (operation));
    }
  waiting->done (printer, error, waiting->data);
}

/* Scaling, a choice of pages and the like were meant for the last job only. */
static GtkPrintSettings *
settings_for (const char *printer)
{
  static const char *const passing[] = { GTK_PRINT_SETTINGS_SCALE, GTK_PRINT_SETTINGS_PRINT_PAGES,
                                         GTK_PRINT_SETTINGS_PAGE_RANGES, GTK_PRINT_SETTINGS_PAGE_SET,
                                         GTK_PRINT_SETTINGS_NUMBER_UP, GTK_PRINT_SETTINGS_N_COPIES };
  GtkPrintSettings *settings = rw_print_settings_load ();

  for (guint i = 0; i < G_N_ELEMENTS (passing); i++)
    gtk_print_settings_unset (settings, passing[i]);
  if (*printer != '\0')
    gtk_print_settings_set_printer (settings, printer);
  return settings;
}

void
rw_print_run (GtkWindow        *parent,
              RwPaperSet       *set,
              const RwPrintJob *job,
              RwPrintedFunc     done,
              GObject          *data)
{
  g_autoptr (GtkPrintOperation) operation = rw_print_new (set, job->name);
  g_autoptr (GtkPrintSettings) settings = settings_for (job->printer);
  Waiting *waiting = g_new (Waiting, 1);

  *waiting = (Waiting){ done, g_object_ref (data) };
  gtk_print_operation_set_print_settings (operation, settings);
  gtk_print_operation_set_current_page (operation, job->page);
  gtk_print_operation_set_show_progress (operation, TRUE);
  gtk_print_operation_set_allow_async (operation, TRUE);
  g_signal_connect (operation, "begin-print", G_CALLBACK (on_begin_print), set);
  g_signal_connect_data (operation, "done", G_CALLBACK (on_done), waiting, free_waiting, 0);
  gtk_print_operation_run (operation, GTK_PRINT_OPERATION_ACTION_PRINT_DIALOG, parent, NULL);
}
