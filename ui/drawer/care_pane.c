#include "care_pane.h"

#include <glib/gi18n.h>
#include <string.h>

#include "base/access.h"
#include "base/dialogs.h"
#include "base/number_entry.h"
#include "base/words_table.h"
#include "base/wrap_box.h"
#include "document/care_work.h"
#include "form/form_row.h"
#include "io/save.h"
#include "io/spread_file.h"
#include "study/care_chart.h"
#include "care_tables.h"
#include "chart_view.h"

#define POLL_MS 100
#define ROW_WIDTH 380 /* of the form's rows here, pixels */

/* What is shown. */
typedef enum
{
  VIEW_CARE,
  VIEW_SPREAD,
  VIEW_SHARES,
  VIEW_SHOP,   /* rows of the form: what the shop holds */
  VIEW_LIMITS, /* and what results may be off by */
} View;

struct _RwCarePane
{
  GtkBox parent;

  RwDocument *document;
  RwCareWork *work;
  View        view;
  gboolean    as_table;
  guint       poll;

  GtkWidget *tools;
  GtkWidget *table_button, *save_button;
  GtkWidget *builds, *seed;
  GtkWidget *status, *bar, *stop;
  GtkWidget *pages; /* GtkStack */
  GtkWidget *chart_page, *chart, *table, *message;
  GtkWidget *forms[2];   /* VIEW_SHOP, VIEW_LIMITS: pages; NULL until first shown */
  GPtrArray *form_rows;  /* of RwFormRow, of both */
};

G_DEFINE_FINAL_TYPE (RwCarePane, rw_care_pane, GTK_TYPE_BOX)

/* ---- charts and tables ---- */

static RwSheet *
draw_care (double width, gpointer user_data)
{
  RwCarePane *self = user_data;

  return rw_care_chart (rw_care_work_care (self->work), width, rw_document_style (self->document));
}

static RwSheet *
draw_spread (double width, gpointer user_data)
{
  RwCarePane *self = user_data;

  return rw_spread_chart (rw_care_work_spread (self->work), width, rw_document_style (self->document));
}

static void
show_chart (RwCarePane *self)
{
  RwStyle style = rw_document_style (self->document);
  RwChartSize size = self->view == VIEW_CARE ? rw_care_chart_least (rw_care_work_care (self->work), style)
                                             : rw_spread_chart_least (rw_care_work_spread (self->work), style);

  rw_chart_view_show (RW_CHART_VIEW (self->chart), size.width, size.height,
                      self->view == VIEW_CARE ? draw_care : draw_spread, self);
  rw_access_name (self->chart, self->view == VIEW_CARE ? _("Where care pays") : _("What comes out"));
  gtk_stack_set_visible_child (GTK_STACK (self->pages), self->chart_page);
}

static void
show_table (RwCarePane *self)
{
  RwStyle style = rw_document_style (self->document);
  g_auto (GStrv) titles = NULL;
  GPtrArray *rows;

  if (self->view == VIEW_CARE)
    rows = rw_care_rows (rw_care_work_care (self->work), style, &titles);
  else if (self->view == VIEW_SPREAD)
    rows = rw_spread_rows (rw_care_work_spread (self->work), style, &titles);
  else
    rows = rw_share_rows (rw_care_work_spread (self->work), style, &titles);
  rw_words_table_show (RW_WORDS_TABLE (self->table), (const char *const *) titles, rows,
                       self->view == VIEW_CARE ? 0x1a : self->view == VIEW_SPREAD ? 0xfe : 0x4);
  gtk_stack_set_visible_child (GTK_STACK (self->pages), self->table);
}

/* ---- rows of the form ---- */

static GtkWidget *
build_form (RwCarePane *self, RwParamId first)
{
  GtkWidget *flow = gtk_flow_box_new (), *scroller = gtk_scrolled_window_new ();

  gtk_flow_box_set_selection_mode (GTK_FLOW_BOX (flow), GTK_SELECTION_NONE);
  gtk_flow_box_set_max_children_per_line (GTK_FLOW_BOX (flow), 3);
  gtk_widget_set_valign (flow, GTK_ALIGN_START);
  for (int id = first; id < RW_PARAM_COUNT && rw_param ((RwParamId) id)->group == rw_param (first)->group; id++)
    {
      GtkWidget *row = rw_form_row_new (self->document, (RwParamId) id), *child = gtk_flow_box_child_new ();

      gtk_widget_set_size_request (row, ROW_WIDTH, -1);
      gtk_widget_set_focusable (child, FALSE);
      gtk_flow_box_child_set_child (GTK_FLOW_BOX_CHILD (child), row);
      gtk_flow_box_append (GTK_FLOW_BOX (flow), child);
      g_ptr_array_add (self->form_rows, row);
    }
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), flow);
  gtk_stack_add_child (GTK_STACK (self->pages), scroller);
  return scroller;
}

static void
show_form (RwCarePane *self)
{
  GtkWidget **form = &self->forms[self->view - VIEW_SHOP];

  if (*form == NULL)
    *form = build_form (self, self->view == VIEW_SHOP ? RW_P_scatter_mitre : RW_P_tolerance_action);
  gtk_stack_set_visible_child (GTK_STACK (self->pages), *form);
}

/* ---- showing ---- */

static gboolean
has_numbers (RwCarePane *self)
{
  if (rw_care_work_failed (self->work))
    return FALSE;
  return self->view == VIEW_CARE ? rw_care_work_care (self->work) != NULL : rw_care_work_spread (self->work) != NULL;
}

static void
show_message (RwCarePane *self)
{
  gboolean failed = rw_care_work_failed (self->work);

  gtk_label_set_text (GTK_LABEL (self->message),
                      failed ? _("This can't be worked out for the build as it is. The findings say why.")
                             : _("Building by chance…"));
  gtk_stack_set_visible_child (GTK_STACK (self->pages), self->message);
}

static void
show_status (RwCarePane *self)
{
  const RwSpread *spread = rw_care_work_spread (self->work);
  double progress = rw_care_work_progress (self->work);
  g_autofree char *words = NULL;

  if (spread != NULL && !rw_care_work_failed (self->work))
    words = rw_spread_words (spread, rw_document_style (self->document));
  gtk_label_set_text (GTK_LABEL (self->status), words != NULL ? words : "");
  rw_access_describe (self->chart, words != NULL ? words : "");
  gtk_widget_set_visible (self->bar, progress >= 0);
  gtk_widget_set_visible (self->stop, progress >= 0);
  if (progress >= 0)
    gtk_progress_bar_set_fraction (GTK_PROGRESS_BAR (self->bar), progress);
}

static gboolean
on_poll (gpointer user_data)
{
  RwCarePane *self = user_data;

  show_status (self);
  if (rw_care_work_progress (self->work) >= 0)
    return G_SOURCE_CONTINUE;
  self->poll = 0;
  return G_SOURCE_REMOVE;
}

static void
show (RwCarePane *self)
{
  gboolean form = self->view >= VIEW_SHOP;

  show_status (self);
  gtk_widget_set_sensitive (self->table_button, !form && self->view != VIEW_SHARES);
  gtk_widget_set_sensitive (self->save_button, has_numbers (self));
  if (rw_care_work_progress (self->work) >= 0 && self->poll == 0)
    self->poll = g_timeout_add (POLL_MS, on_poll, self);
  if (form)
    show_form (self);
  else if (!has_numbers (self))
    show_message (self);
  else if (self->as_table || self->view == VIEW_SHARES)
    show_table (self);
  else
    show_chart (self);
}

static void
bring_up_to_date (RwCarePane *self)
{
  if (!gtk_widget_get_mapped (GTK_WIDGET (self)))
    return;
  rw_care_work_want (self->work, TRUE);
  show (self);
}

static void
on_work (RwCarePane *self)
{
  if (gtk_widget_get_mapped (GTK_WIDGET (self)))
    show (self);
}

static void
on_noted (RwCarePane *self, RwChange what)
{
  for (guint i = 0; i < self->form_rows->len; i++)
    rw_form_row_refresh (g_ptr_array_index (self->form_rows, i), what);
  bring_up_to_date (self);
}

/* ---- doing ---- */

static void
on_view (RwCarePane *self, GParamSpec *spec, GtkDropDown *chooser)
{
  self->view = (View) gtk_drop_down_get_selected (chooser);
  show (self);
}

static void
on_table (RwCarePane *self, GtkToggleButton *button)
{
  self->as_table = gtk_toggle_button_get_active (button);
  show (self);
}

static void
on_chance (RwCarePane *self)
{
  rw_care_work_set (self->work, (guint) rw_number_entry_value (RW_NUMBER_ENTRY (self->builds)),
                    (guint64) rw_number_entry_value (RW_NUMBER_ENTRY (self->seed)));
  bring_up_to_date (self);
}

static void
on_stop (RwCarePane *self)
{
  rw_care_work_stop (self->work);
}

static void
on_path (const char *path, gpointer user_data)
{
  g_autoptr (RwCarePane) self = user_data;
  g_autofree char *text = NULL;
  g_autoptr (GError) error = NULL;

  if (path == NULL || !has_numbers (self))
    return;
  if (self->view == VIEW_CARE)
    text = rw_care_csv (rw_care_work_care (self->work));
  else
    text = rw_spread_write (rw_care_work_care (self->work), rw_care_work_spread (self->work), RW_LIST_CSV, RW_UNITS_MM);
  if (!rw_save_bytes (path, text, strlen (text), &error))
    rw_dialog_error (GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self))), _("The table can’t be saved"),
                     error->message);
}

static void
on_save (RwCarePane *self)
{
  rw_dialog_save_as (GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self))), _("Save the table"),
                     self->view == VIEW_CARE ? "care.csv" : "spread.csv", on_path, g_object_ref (self));
}

/* ---- making and unmaking ---- */

static GtkWidget *
add_entry (RwCarePane *self, GtkWidget *line, const char *label, RwRange range, double value)
{
  GtkWidget *words = gtk_label_new (label), *entry = rw_number_entry_new (&range, label);

  rw_number_entry_set_style (RW_NUMBER_ENTRY (entry), rw_document_style (self->document));
  rw_number_entry_set_value (RW_NUMBER_ENTRY (entry), value);
  rw_access_name (entry, label);
  gtk_editable_set_width_chars (GTK_EDITABLE (entry), 7);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (entry), 7);
  g_signal_connect_object (entry, "entered", G_CALLBACK (on_chance), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (line), words);
  gtk_box_append (GTK_BOX (line), entry);
  return entry;
}

static void
build_tools (RwCarePane *self)
{
  const char *views[] = { _("Where care pays"), _("What comes out"), _("Shares of the spread"), _("Care of the shop"),
                          _("Close enough"), NULL };
  GtkWidget *chooser = gtk_drop_down_new_from_strings (views);

  self->tools = g_object_ref_sink (gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8));
  rw_access_name (chooser, _("Page of care"));
  g_signal_connect_object (chooser, "notify::selected", G_CALLBACK (on_view), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (self->tools), chooser);
  self->table_button = gtk_toggle_button_new_with_label (_("Table"));
  rw_access_describe (self->table_button, _("Shows the numbers instead of the chart"));
  g_signal_connect_object (self->table_button, "toggled", G_CALLBACK (on_table), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (self->tools), self->table_button);
  self->save_button = gtk_button_new_with_label (_("Save CSV…"));
  g_signal_connect_object (self->save_button, "clicked", G_CALLBACK (on_save), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (self->tools), self->save_button);
}

static GtkWidget *
build_controls (RwCarePane *self)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);

  self->bar = gtk_progress_bar_new ();
  gtk_widget_set_valign (self->bar, GTK_ALIGN_CENTER);
  rw_access_name (self->bar, _("Builds done"));
  self->stop = gtk_button_new_with_label (_("Stop"));
  rw_access_describe (self->stop, _("Breaks the builds off; the numbers stay as they were"));
  g_signal_connect_object (self->stop, "clicked", G_CALLBACK (on_stop), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (line), self->bar);
  gtk_box_append (GTK_BOX (line), self->stop);
  self->builds = add_entry (self, line, _("Builds"), (RwRange){ 100, 1000000, "" }, 10000);
  self->seed = add_entry (self, line, _("Seed"), (RwRange){ 0, 999999, "" }, 1);
  return line;
}

/* What came out, and beside it or under it how many builds that took. */
static void
build_status (RwCarePane *self)
{
  GtkWidget *line;

  self->status = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->status), 0);
  gtk_label_set_wrap (GTK_LABEL (self->status), TRUE);
  line = rw_wrap_box_new (self->status, build_controls (self));
  gtk_widget_set_margin_start (line, 12);
  gtk_widget_set_margin_end (line, 8);
  gtk_widget_set_margin_top (line, 2);
  gtk_widget_set_margin_bottom (line, 2);
  gtk_box_append (GTK_BOX (self), line);
}

static void
build_pages (RwCarePane *self)
{
  self->pages = gtk_stack_new ();
  gtk_stack_set_hhomogeneous (GTK_STACK (self->pages), FALSE);
  gtk_stack_set_vhomogeneous (GTK_STACK (self->pages), FALSE);
  self->chart = rw_chart_view_new ();
  self->chart_page = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (self->chart_page), self->chart);
  self->table = rw_words_table_new (_("Numbers of care"));
  self->message = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->message, "dim-label");
  gtk_stack_add_child (GTK_STACK (self->pages), self->message);
  gtk_stack_add_child (GTK_STACK (self->pages), self->chart_page);
  gtk_stack_add_child (GTK_STACK (self->pages), self->table);
  gtk_widget_set_vexpand (self->pages, TRUE);
  gtk_box_append (GTK_BOX (self), self->pages);
}

static void
rw_care_pane_dispose (GObject *object)
{
  RwCarePane *self = RW_CARE_PANE (object);

  g_clear_handle_id (&self->poll, g_source_remove);
  if (self->chart != NULL)
    rw_chart_view_show (RW_CHART_VIEW (self->chart), 0, 0, NULL, NULL);
  self->chart = NULL;
  g_clear_object (&self->tools);
  g_clear_object (&self->work);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (rw_care_pane_parent_class)->dispose (object);
}

static void
rw_care_pane_finalize (GObject *object)
{
  g_ptr_array_unref (RW_CARE_PANE (object)->form_rows);
  G_OBJECT_CLASS (rw_care_pane_parent_class)->finalize (object);
}

static void
rw_care_pane_class_init (RwCarePaneClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_care_pane_dispose;
  G_OBJECT_CLASS (klass)->finalize = rw_care_pane_finalize;
}

static void
rw_care_pane_init (RwCarePane *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  self->form_rows = g_ptr_array_new ();
  g_signal_connect (self, "map", G_CALLBACK (bring_up_to_date), NULL);
}

GtkWidget *
rw_care_pane_new (RwDocument *document)
{
  RwCarePane *self = g_object_new (RW_TYPE_CARE_PANE, NULL);

  self->document = g_object_ref (document);
  self->work = rw_care_work_of (document);
  build_tools (self);
  build_status (self);
  build_pages (self);
  g_signal_connect_object (document, "noted", G_CALLBACK (on_noted), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->work, "changed", G_CALLBACK (on_work), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

GtkWidget *
rw_care_pane_tools (RwCarePane *self)
{
  return self->tools;
}
