#include "papers_window.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "base/dialogs.h"
#include "base/wrap_box.h"
#include "page_view.h"
#include "papers_form.h"
#include "papers_saver.h"
#include "print.h"

/* The pages are made anew this long after the last change, so that a drag in the drawing stays quick. */
#define PAUSE_MS 150

struct _RwPapersWindow
{
  GtkWindow parent;

  RwDocument *document;
  RwPaperSet *set; /* NULL: nothing chosen, or not yet made */
  int         page;
  guint       pause;

  RwPapersJob *look; /* making the pages to look at; NULL: none */
  char       **leaving; /* ids of the papers that are being saved or printed; NULL: none, or the build has moved on */

  GtkWidget *form;
  GtkWidget *view;
  GtkWidget *where;    /* "page 2 of 31" */
  GtkWidget *near;     /* "64 %" */
  GtkWidget *saver;    /* says what came of saving or printing, or why there are no pages */
};

G_DEFINE_FINAL_TYPE (RwPapersWindow, rw_papers_window, GTK_TYPE_WINDOW)

/* ---- pages ---- */

/* All that is chosen; texts are good until it is asked again. */
static RwPapersOptions
options_of (RwPapersWindow *self)
{
  RwPapersOptions options = { .style = rw_document_style (self->document) };

  rw_papers_form_fill (RW_PAPERS_FORM (self->form), &options);
  return options;
}

static int
page_count (RwPapersWindow *self)
{
  return self->set != NULL ? (int) self->set->pages->len : 0;
}

static void
say (RwPapersWindow *self, const char *text)
{
  rw_papers_saver_say (RW_PAPERS_SAVER (self->saver), text);
}

/* error is NULL where there are pages. */
static void
say_why_none (RwPapersWindow *self, const GError *error)
{
  if (error == NULL)
    say (self, "");
  else if (rw_papers_form_is_empty (RW_PAPERS_FORM (self->form)))
    say (self, _("No sheet is chosen"));
  else
    say (self, error->message);
}

static void
enable_actions (RwPapersWindow *self)
{
  GtkWidget *widget = GTK_WIDGET (self);

  gtk_widget_action_set_enabled (widget, "pages.first", self->page > 0);
  gtk_widget_action_set_enabled (widget, "pages.previous", self->page > 0);
  gtk_widget_action_set_enabled (widget, "pages.next", self->page + 1 < page_count (self));
  gtk_widget_action_set_enabled (widget, "pages.last", self->page + 1 < page_count (self));
  gtk_widget_action_set_enabled (widget, "pages.save",
                                 page_count (self) > 0
                                     && !rw_papers_saver_is_busy (RW_PAPERS_SAVER (self->saver)));
  gtk_widget_action_set_enabled (widget, "pages.print", page_count (self) > 0);
  gtk_widget_action_set_enabled (widget, "pages.nearer", page_count (self) > 0);
  gtk_widget_action_set_enabled (widget, "pages.farther", page_count (self) > 0);
  gtk_widget_action_set_enabled (widget, "pages.whole", page_count (self) > 0);
}

static void
show_page (RwPapersWindow *self, int page)
{
  const RwPaperPage *shown = NULL;
  g_autofree char *words = g_strdup (_("No pages"));

  self->page = CLAMP (page, 0, MAX (page_count (self) - 1, 0));
  if (page_count (self) > 0)
    {
      shown = g_ptr_array_index (self->set->pages, self->page);
      g_free (words);
      words = g_strdup_printf (_("Page %d of %d: %s"), self->page + 1, page_count (self), shown->title);
    }
  rw_page_view_show (RW_PAGE_VIEW (self->view), self->set, shown);
  gtk_label_set_text (GTK_LABEL (self->where), words);
  rw_access_describe (self->view, words);
  enable_actions (self);
}

static void
on_zoomed (RwPapersWindow *self)
{
  double scale = rw_page_view_scale (RW_PAGE_VIEW (self->view));
  g_autofree char *words = g_strdup_printf (_("%.0f %%"), 100 * scale);

  gtk_label_set_text (GTK_LABEL (self->near), scale > 0 ? words : "");
}

/* Takes the pages over, or says why there are none. */
static void
on_looked (RwPapersJob *job, RwPapersOutcome *outcome, gpointer data)
{
  RwPapersWindow *self = data;

  if (job == self->look)
    {
      self->look = NULL;
      rw_page_view_show (RW_PAGE_VIEW (self->view), NULL, NULL);
      g_clear_pointer (&self->set, rw_paper_set_free);
      self->set = g_steal_pointer (&outcome->set);
      say_why_none (self, outcome->error);
      rw_papers_form_compare (RW_PAPERS_FORM (self->form), self->set);
      show_page (self, self->page);
      on_zoomed (self);
    }
  rw_papers_job_unref (job);
}

/* Leaves the work to itself: it stops, and what it has made is thrown away. */
static void
leave_look (RwPapersWindow *self)
{
  if (self->look != NULL)
    rw_papers_job_stop (self->look);
  self->look = NULL;
}

static gboolean
make_pages (gpointer user_data)
{
  RwPapersWindow *self = user_data;
  RwPapersOptions options;

  self->pause = 0;
  leave_look (self);
  rw_papers_form_set_project (RW_PAPERS_FORM (self->form), rw_document_project (self->document)->name);
  options = options_of (self);
  self->look = rw_papers_job_start (rw_document_project (self->document), &options, RW_PAPERS_LOOK, NULL,
                                    on_looked, G_OBJECT (self));
  return G_SOURCE_REMOVE;
}

/* Closing the window takes the focus from an entry, which then tells what was typed: too late. */
static void
make_pages_soon (RwPapersWindow *self)
{
  if (self->document == NULL)
    return;
  g_clear_handle_id (&self->pause, g_source_remove);
  self->pause = g_timeout_add (PAUSE_MS, make_pages, self);
}

static void
on_document_changed (RwPapersWindow *self, RwChange what)
{
  if (what & RW_CHANGE_UNITS)
    rw_papers_form_set_style (RW_PAPERS_FORM (self->form), rw_document_style (self->document));
  g_clear_pointer (&self->leaving, g_strfreev);
  make_pages_soon (self);
}

/* ---- what leaves is remembered, for telling later what has changed since ---- */

static void
note_leaving (RwPapersWindow *self)
{
  g_autoptr (GStrvBuilder) ids = g_strv_builder_new ();
  const RwPaperKind *last = NULL;

  for (int i = 0; i < page_count (self); i++)
    {
      const RwPaperPage *page = g_ptr_array_index (self->set->pages, i);

      if (page->kind != last)
        g_strv_builder_add (ids, page->kind->id);
      last = page->kind;
    }
  g_strfreev (self->leaving);
  self->leaving = g_strv_builder_end (ids);
}

/* The pages are the same after it, and what has been said stays. */
static void
record_left (RwPapersWindow *self)
{
  if (self->leaving == NULL)
    return;
  g_signal_handlers_block_matched (self->document, G_SIGNAL_MATCH_DATA, 0, 0, NULL, NULL, self);
  rw_document_record_papers (self->document, (const char *const *) self->leaving,
                             rw_document_style (self->document).units);
  g_signal_handlers_unblock_matched (self->document, G_SIGNAL_MATCH_DATA, 0, 0, NULL, NULL, self);
  g_clear_pointer (&self->leaving, g_strfreev);
}

/* ---- turning pages ---- */

static void
turn (GtkWidget *widget, const char *action, GVariant *parameter)
{
  RwPapersWindow *self = RW_PAPERS_WINDOW (widget);

  if (g_str_equal (action, "pages.first"))
    show_page (self, 0);
  else if (g_str_equal (action, "pages.previous"))
    show_page (self, self->page - 1);
  else if (g_str_equal (action, "pages.next"))
    show_page (self, self->page + 1);
  else
    show_page (self, page_count (self) - 1);
}

static void
zoom (GtkWidget *widget, const char *action, GVariant *parameter)
{
  RwPapersWindow *self = RW_PAPERS_WINDOW (widget);
  int steps = g_str_equal (action, "pages.nearer") ? 1 : g_str_equal (action, "pages.farther") ? -1 : 0;

  rw_page_view_zoom (RW_PAGE_VIEW (self->view), steps);
}

/* ---- saving ---- */

/* What is being typed counts. */
static void
settle (RwPapersWindow *self)
{
  gtk_window_set_focus (GTK_WINDOW (self), self->view);
}

static void
start_saving (RwPapersWindow *self, RwPapersTask task, const char *path)
{
  RwPapersOptions options = options_of (self);

  note_leaving (self);
  rw_papers_saver_start (RW_PAPERS_SAVER (self->saver), rw_document_project (self->document), &options, task,
                         path);
}

static void
on_save_path (const char *path, gpointer user_data)
{
  if (path != NULL)
    start_saving (user_data, RW_PAPERS_FILE, path);
}

/* The title as the name of a file. */
static char *
file_title (RwPapersWindow *self)
{
  return g_strdelimit (rw_document_title (self->document), "/", '-');
}

/* The many files have a folder of their own in the one that was chosen. */
static void
on_save_folder (const char *path, gpointer user_data)
{
  RwPapersWindow *self = user_data;
  g_autofree char *title = file_title (self), *name = g_strdup_printf (_("%s papers"), title);
  g_autofree char *folder = path != NULL ? g_build_filename (path, name, NULL) : NULL;

  if (folder != NULL)
    start_saving (self, RW_PAPERS_FOLDER, folder);
}

static void
save (GtkWidget *widget, const char *action, GVariant *parameter)
{
  RwPapersWindow *self = RW_PAPERS_WINDOW (widget);
  g_autofree char *title = file_title (self), *name = g_strconcat (title, ".pdf", NULL);
  RwPapersOptions options;

  settle (self);
  options = options_of (self);
  if (options.svg || options.png || options.csv || options.json)
    rw_dialog_folder (GTK_WINDOW (self), _("Save the papers in a folder"), on_save_folder, self);
  else if (options.pdf)
    rw_dialog_save_pdf (GTK_WINDOW (self), name, on_save_path, self);
  else
    say (self, _("No kind of file is chosen"));
}

/* ---- printing ---- */

/* The printer chosen is the one whose bars will be measured. */
static void
on_printed (const char *printer, const GError *error, gpointer user_data)
{
  RwPapersWindow *self = user_data;

  if (self->document == NULL) /* closed meanwhile */
    return;
  if (error != NULL)
    rw_dialog_error (GTK_WINDOW (self), _("The papers can’t be printed"), error->message);
  if (printer != NULL)
    {
      rw_papers_form_set_printer (RW_PAPERS_FORM (self->form), printer);
      say (self, _("Sent to the printer"));
      record_left (self);
    }
}

static void
print (GtkWidget *widget, const char *action, GVariant *parameter)
{
  RwPapersWindow *self = RW_PAPERS_WINDOW (widget);
  g_autofree char *title = rw_document_title (self->document);
  RwPrintJob job = { .name = title };
  RwPapersOptions options;
  RwPaperSet *set;

  settle (self);
  job.printer = rw_papers_form_printer (RW_PAPERS_FORM (self->form));
  job.page = self->page;
  options = options_of (self);
  set = rw_paper_set_new (rw_document_project (self->document), &options, NULL);
  if (set == NULL)
    return;
  note_leaving (self);
  rw_print_run (GTK_WINDOW (self), set, &job, on_printed, G_OBJECT (self));
}

/* ---- building ---- */

static GtkWidget *
action_button (const char *text, const char *action)
{
  GtkWidget *button = gtk_button_new_with_label (text);

  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  return button;
}

static GtkWidget *
foot_button (const char *icon, const char *name, const char *action)
{
  GtkWidget *button = gtk_button_new_from_icon_name (icon);

  rw_access_title (button, name);
  gtk_button_set_has_frame (GTK_BUTTON (button), FALSE);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  return button;
}

static void
build_header (RwPapersWindow *self)
{
  GtkWidget *header = gtk_header_bar_new ();
  GtkWidget *print_button = action_button (_("Print…"), "pages.print");

  gtk_widget_add_css_class (print_button, "suggested-action");
  gtk_header_bar_pack_end (GTK_HEADER_BAR (header), print_button);
  gtk_header_bar_pack_end (GTK_HEADER_BAR (header), action_button (_("Save…"), "pages.save"));
  gtk_window_set_titlebar (GTK_WINDOW (self), header);
}

/* The line under the page: where we are, how near, and what has been done. */
static GtkWidget *
build_foot (RwPapersWindow *self)
{
  GtkWidget *page = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6), *zoom = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *foot = rw_wrap_box_new (page, zoom);

  self->where = gtk_label_new (NULL);
  self->near = gtk_label_new (NULL);
  gtk_widget_set_direction (self->near, GTK_TEXT_DIR_LTR);
  gtk_label_set_width_chars (GTK_LABEL (self->near), 6);
  self->saver = rw_papers_saver_new ();
  g_signal_connect_swapped (self->saver, "busy", G_CALLBACK (enable_actions), self);
  g_signal_connect_swapped (self->saver, "saved", G_CALLBACK (record_left), self);
  gtk_widget_add_css_class (foot, "foot");
  gtk_box_append (GTK_BOX (page), foot_button ("go-previous-symbolic", _("Page before"), "pages.previous"));
  gtk_box_append (GTK_BOX (page), foot_button ("go-next-symbolic", _("Next page"), "pages.next"));
  gtk_box_append (GTK_BOX (page), self->where);
  gtk_box_append (GTK_BOX (zoom), foot_button ("zoom-out-symbolic", _("Farther"), "pages.farther"));
  gtk_box_append (GTK_BOX (zoom), self->near);
  gtk_box_append (GTK_BOX (zoom), foot_button ("zoom-in-symbolic", _("Nearer"), "pages.nearer"));
  gtk_box_append (GTK_BOX (zoom), foot_button ("zoom-fit-best-symbolic", _("Whole page"), "pages.whole"));
  gtk_box_append (GTK_BOX (zoom), self->saver);
  return foot;
}

static void
build_content (RwPapersWindow *self)
{
  GtkWidget *content = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  GtkWidget *side = gtk_scrolled_window_new ();
  GtkWidget *pages = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  self->form = rw_papers_form_new ();
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (side), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (side), self->form);
  gtk_widget_set_hexpand (side, FALSE);
  gtk_widget_add_css_class (side, "form");

  self->view = rw_page_view_new ();
  rw_access_name (self->view, _("Page"));
  g_signal_connect_swapped (self->view, "zoomed", G_CALLBACK (on_zoomed), self);
  gtk_widget_set_vexpand (self->view, TRUE);
  gtk_widget_set_hexpand (self->view, TRUE);
  gtk_box_append (GTK_BOX (pages), self->view);
  gtk_box_append (GTK_BOX (pages), build_foot (self));

  gtk_box_append (GTK_BOX (content), side);
  gtk_box_append (GTK_BOX (content), pages);
  gtk_window_set_child (GTK_WINDOW (self), content);
}

static void
rw_papers_window_dispose (GObject *object)
{
  RwPapersWindow *self = RW_PAPERS_WINDOW (object);

  g_clear_handle_id (&self->pause, g_source_remove);
  leave_look (self);
  if (self->set != NULL)
    rw_page_view_show (RW_PAGE_VIEW (self->view), NULL, NULL);
  g_clear_pointer (&self->set, rw_paper_set_free);
  g_clear_pointer (&self->leaving, g_strfreev);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (rw_papers_window_parent_class)->dispose (object);
}

static void
rw_papers_window_class_init (RwPapersWindowClass *klass)
{
  static const struct
  {
    const char                 *name;
    GtkWidgetActionActivateFunc run;
    guint                       key;
    GdkModifierType             modifiers;
  } actions[] = {
    { "pages.first", turn, GDK_KEY_Home, GDK_CONTROL_MASK },
    { "pages.previous", turn, GDK_KEY_Page_Up, 0 },
    { "pages.next", turn, GDK_KEY_Page_Down, 0 },
    { "pages.last", turn, GDK_KEY_End, GDK_CONTROL_MASK },
    { "pages.nearer", zoom, GDK_KEY_plus, GDK_CONTROL_MASK },
    { "pages.farther", zoom, GDK_KEY_minus, GDK_CONTROL_MASK },
    { "pages.whole", zoom, GDK_KEY_0, GDK_CONTROL_MASK },
    { "pages.save", save, GDK_KEY_s, GDK_CONTROL_MASK },
    { "pages.print", print, GDK_KEY_p, GDK_CONTROL_MASK },
  };
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = rw_papers_window_dispose;
  for (guint i = 0; i < G_N_ELEMENTS (actions); i++)
    {
      gtk_widget_class_install_action (widget_class, actions[i].name, NULL, actions[i].run);
      gtk_widget_class_add_binding_action (widget_class, actions[i].key, actions[i].modifiers,
                                           actions[i].name, NULL);
    }
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "window.close", NULL);
}

static void
rw_papers_window_init (RwPapersWindow *self)
{
  gtk_window_set_title (GTK_WINDOW (self), _("Papers"));
  gtk_window_set_default_size (GTK_WINDOW (self), 1080, 760);
  gtk_window_set_destroy_with_parent (GTK_WINDOW (self), TRUE);
  build_header (self);
  build_content (self);
}

GtkWidget *
rw_papers_window_new (GtkWindow *parent, RwDocument *document)
{
  RwPapersWindow *self = g_object_new (RW_TYPE_PAPERS_WINDOW, "transient-for", parent, NULL);

  self->document = g_object_ref (document);
  rw_papers_form_set_style (RW_PAPERS_FORM (self->form), rw_document_style (document));
  g_signal_connect_swapped (self->form, "chosen", G_CALLBACK (make_pages_soon), self);
  g_signal_connect_object (document, "noted", G_CALLBACK (on_document_changed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "saved-state", G_CALLBACK (make_pages_soon), self, G_CONNECT_SWAPPED);
  enable_actions (self);
  make_pages_soon (self);
  gtk_window_set_focus (GTK_WINDOW (self), self->view);
  return GTK_WIDGET (self);
}
