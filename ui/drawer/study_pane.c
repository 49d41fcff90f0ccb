#include "study_pane.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/access.h"
#include "base/words.h"
#include "study/study.h"
#include "plot_view.h"
#include "study_output.h"
#include "study_table.h"
#include "temper_bar.h"
#include "tuning_bar.h"
#include "what_if_bar.h"

/* In the list of studies, after those that need no question. */
enum
{
  WHAT_IF = RW_STUDY_COUNT,
  TUNING,
  CHOICES,
};

struct _RwStudyPane
{
  GtkBox parent;

  RwDocument *document;
  int         choice; /* an RwStudyKind, or one of the above */
  RwStudy    *study; /* shown now */
  gboolean    stale; /* changed while out of sight */

  GtkWidget *tools;
  GtkWidget *what_if, *tuning, *temper; /* what is asked, over the plot */
  GtkWidget *pages; /* GtkStack: plot, table, or a message */
  GtkWidget *plot;
  GtkWidget *table;
  GtkWidget *message;
  gboolean   as_table;
};

G_DEFINE_FINAL_TYPE (RwStudyPane, rw_study_pane, GTK_TYPE_BOX)

static const char *
translate (const char *english)
{
  return _(english);
}

/* ---- what is heard of a plot ---- */

/* "Pull, N: 43.6 to 64.3" for each of the plots. */
static void
append_range (RwStudyPane *self, int panel, GString *out)
{
  double low = INFINITY, high = -INFINITY;
  const char *unit = "";
  g_autofree char *least = NULL, *most = NULL;

  for (guint i = 0; i < self->study->columns->len; i++)
    {
      const RwStudyColumn *column = &g_array_index (self->study->columns, RwStudyColumn, i);

      if (column->panel == panel && column->role != RW_COLUMN_LOAD)
        unit = column->unit;
      for (guint row = 0; column->panel == panel && column->role != RW_COLUMN_LOAD && row < self->study->rows->len;
           row++)
        if (isfinite (column->values[row]))
          {
            low = fmin (low, column->values[row]);
            high = fmax (high, column->values[row]);
          }
    }
  if (!(low <= high))
    return;
  least = rw_number_words (low, unit, rw_document_style (self->document));
  most = rw_number_words (high, unit, rw_document_style (self->document));
  g_string_append_printf (out, _("%s: from %s to %s. "), self->study->panels[panel], least, most);
}

/* New. */
static char *
summary (RwStudyPane *self)
{
  GString *text = g_string_new (NULL);

  for (int panel = 0; panel < 2 && self->study->panels[panel] != NULL; panel++)
    append_range (self, panel, text);
  return g_string_free (text, FALSE);
}

/* ---- showing ---- */

/* A build that gives nothing to ask for has a study without numbers. */
static RwStudy *
make_study (RwStudyPane *self)
{
  RwStudy *study = NULL;

  if (self->choice == WHAT_IF)
    study = rw_what_if_bar_study (RW_WHAT_IF_BAR (self->what_if), translate);
  if (self->choice == TUNING)
    study = rw_tuning_bar_study (RW_TUNING_BAR (self->tuning), translate);
  if (self->choice == RW_STUDY_TEMPERAMENT)
    study = rw_temper_bar_study (RW_TEMPER_BAR (self->temper), translate);
  if (study != NULL)
    return study;
  return rw_study_new ((RwStudyKind) (self->choice % RW_STUDY_COUNT), rw_document_now (self->document), translate);
}

/* "Long neck · Action along the neck". */
static RwStudyCopy
copy_study (gpointer user_data)
{
  RwStudyPane *self = user_data;
  RwStudyCopy copy = { make_study (self), rw_document_style (self->document), NULL };
  g_autofree char *title = rw_document_title (self->document);

  copy.heading = g_strdup_printf ("%s · %s", title, copy.study->title);
  return copy;
}

static void
fill (RwStudyPane *self)
{
  RwStudy *before = self->study;
  RwStyle style = rw_document_style (self->document);
  g_autofree char *heard = NULL;

  self->stale = FALSE;
  self->study = make_study (self);
  heard = summary (self);
  rw_access_name (self->plot, self->study->title);
  rw_plot_view_show (RW_PLOT_VIEW (self->plot), self->study, style, heard);
  rw_study_table_show (RW_STUDY_TABLE (self->table), self->as_table ? self->study : NULL, style);
  g_clear_pointer (&before, rw_study_free);
  if (!rw_study_has_numbers (self->study))
    gtk_stack_set_visible_child (GTK_STACK (self->pages), self->message);
  else
    gtk_stack_set_visible_child (GTK_STACK (self->pages), self->as_table ? self->table : self->plot);
}

static void
on_changed (RwStudyPane *self)
{
  if (gtk_widget_get_mapped (GTK_WIDGET (self)))
    fill (self);
  else
    self->stale = TRUE;
}

static void
on_map (RwStudyPane *self)
{
  if (self->stale)
    fill (self);
}

static void
on_kind (RwStudyPane *self, GParamSpec *spec, GtkDropDown *chooser)
{
  self->choice = (int) gtk_drop_down_get_selected (chooser);
  gtk_widget_set_visible (self->what_if, self->choice == WHAT_IF);
  gtk_widget_set_visible (self->tuning, self->choice == TUNING);
  gtk_widget_set_visible (self->temper, self->choice == RW_STUDY_TEMPERAMENT);
  on_changed (self);
}

static void
on_table (RwStudyPane *self, GtkToggleButton *button)
{
  self->as_table = gtk_toggle_button_get_active (button);
  on_changed (self);
}

/* ---- making and unmaking ---- */

static void
build_tools (RwStudyPane *self)
{
  const char *titles[CHOICES + 1] = { [WHAT_IF] = _("What if"), [TUNING] = _("Tuning") };
  GtkWidget *chooser, *as_table = gtk_toggle_button_new_with_label (_("Table"));

  for (int kind = 0; kind < RW_STUDY_COUNT; kind++)
    titles[kind] = _(rw_study_name ((RwStudyKind) kind));
  chooser = gtk_drop_down_new_from_strings (titles);
  rw_access_name (chooser, _("Study"));
  g_signal_connect_object (chooser, "notify::selected", G_CALLBACK (on_kind), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (as_table, "toggled", G_CALLBACK (on_table), self, G_CONNECT_SWAPPED);
  rw_access_describe (as_table, _("Shows the numbers instead of the plot"));

  self->tools = g_object_ref_sink (gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8));
  gtk_box_append (GTK_BOX (self->tools), chooser);
  gtk_box_append (GTK_BOX (self->tools), as_table);
  gtk_box_append (GTK_BOX (self->tools), rw_study_output_button (copy_study, self));
}

static void
rw_study_pane_dispose (GObject *object)
{
  RwStudyPane *self = RW_STUDY_PANE (object);

  g_clear_object (&self->tools);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (rw_study_pane_parent_class)->dispose (object);
}

static void
rw_study_pane_finalize (GObject *object)
{
  g_clear_pointer (&RW_STUDY_PANE (object)->study, rw_study_free);
  G_OBJECT_CLASS (rw_study_pane_parent_class)->finalize (object);
}

static void
rw_study_pane_class_init (RwStudyPaneClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_study_pane_dispose;
  G_OBJECT_CLASS (klass)->finalize = rw_study_pane_finalize;
}

static void
rw_study_pane_init (RwStudyPane *self)
{
  self->stale = TRUE;
  self->plot = rw_plot_view_new ();
  self->table = rw_study_table_new ();
  self->message = gtk_label_new (_("This can't be worked out for the build as it is. The findings say why."));
  gtk_widget_add_css_class (self->message, "dim-label");

  self->pages = gtk_stack_new ();
  gtk_stack_add_child (GTK_STACK (self->pages), self->plot);
  gtk_stack_add_child (GTK_STACK (self->pages), self->table);
  gtk_stack_add_child (GTK_STACK (self->pages), self->message);
  gtk_box_append (GTK_BOX (self), self->pages);
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  build_tools (self);
  g_signal_connect (self, "map", G_CALLBACK (on_map), NULL);
}

/* Hidden until its study is chosen. */
static GtkWidget *
add_bar (RwStudyPane *self, GtkWidget *bar)
{
  gtk_widget_hide (bar);
  gtk_box_prepend (GTK_BOX (self), bar);
  g_signal_connect_object (bar, "changed", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  return bar;
}

GtkWidget *
rw_study_pane_new (RwDocument *document)
{
  RwStudyPane *self = g_object_new (RW_TYPE_STUDY_PANE, NULL);

  self->document = g_object_ref (document);
  self->what_if = add_bar (self, rw_what_if_bar_new (document));
  self->tuning = add_bar (self, rw_tuning_bar_new (document));
  self->temper = add_bar (self, rw_temper_bar_new (document));
  g_signal_connect_object (document, "noted", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

GtkWidget *
rw_study_pane_tools (RwStudyPane *self)
{
  return self->tools;
}
