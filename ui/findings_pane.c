#include "findings_pane.h"

#include <glib/gi18n.h>

#include "access.h"
#include "mark.h"
#include "words.h"

struct _RwFindingsPane
{
  GtkBox parent;

  RwDocument *document;
  GtkWidget  *list;
  gboolean    stale; /* changed while out of sight */
};

G_DEFINE_FINAL_TYPE (RwFindingsPane, rw_findings_pane, GTK_TYPE_BOX)

/* ---- a row: mark, severity, text; made once and filled anew ---- */

static GtkWidget *
row_new (void)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 10);
  GtkWidget *mark = rw_mark_new (RW_NOTE), *severity = gtk_label_new (NULL), *text = gtk_label_new (NULL);

  gtk_widget_add_css_class (line, "finding");
  gtk_widget_add_css_class (severity, "finding-title");
  gtk_label_set_xalign (GTK_LABEL (severity), 0);
  gtk_label_set_width_chars (GTK_LABEL (severity), 7);
  gtk_label_set_xalign (GTK_LABEL (text), 0);
  gtk_label_set_wrap (GTK_LABEL (text), TRUE);
  gtk_widget_set_hexpand (text, TRUE);
  gtk_widget_set_valign (mark, GTK_ALIGN_START);
  gtk_widget_set_valign (severity, GTK_ALIGN_BASELINE);
  gtk_widget_set_valign (text, GTK_ALIGN_BASELINE);
  gtk_box_append (GTK_BOX (line), mark);
  gtk_box_append (GTK_BOX (line), severity);
  gtk_box_append (GTK_BOX (line), text);
  return line;
}

static void
row_fill (GtkWidget *row, const RwFinding *finding, RwStyle style)
{
  GtkWidget *mark = gtk_widget_get_first_child (gtk_list_box_row_get_child (GTK_LIST_BOX_ROW (row)));
  GtkWidget *severity = gtk_widget_get_next_sibling (mark), *text = gtk_widget_get_next_sibling (severity);
  g_autofree char *words = rw_finding_text (finding, style);
  g_autofree char *name = g_strdup_printf ("%s. %s", rw_severity_words (finding->severity), words);

  rw_mark_set (RW_MARK (mark), finding->severity);
  gtk_label_set_text (GTK_LABEL (severity), rw_severity_words (finding->severity));
  gtk_label_set_text (GTK_LABEL (text), words);
  rw_access_name (row, name);
}

/* ---- the list ---- */

static gboolean
names_selection (RwFindingsPane *self, const RwFinding *finding)
{
  g_autofree char *id = rw_subject_id (rw_document_selection (self->document));

  return id != NULL && g_strv_contains ((const char *const *) finding->ids, id);
}

static void
mark_selected (RwFindingsPane *self)
{
  const GPtrArray *findings = rw_document_findings (self->document);
  GtkListBoxRow *present = gtk_list_box_get_selected_row (GTK_LIST_BOX (self->list));
  int place = present != NULL ? gtk_list_box_row_get_index (present) : -1;

  if (place >= 0 && place < (int)findings->len && names_selection (self, g_ptr_array_index (findings, place)))
    return;
  gtk_list_box_unselect_all (GTK_LIST_BOX (self->list));
  for (guint i = 0; i < findings->len; i++)
    if (names_selection (self, g_ptr_array_index (findings, i)))
      {
        gtk_list_box_select_row (GTK_LIST_BOX (self->list),
                                 gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), (int) i));
        return;
      }
}

static void
fill (RwFindingsPane *self)
{
  const GPtrArray *findings = rw_document_findings (self->document);
  GtkListBoxRow *row;

  self->stale = FALSE;
  for (guint i = 0; i < findings->len; i++)
    {
      if (gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), (int) i) == NULL)
        gtk_list_box_append (GTK_LIST_BOX (self->list), row_new ());
      row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), (int) i);
      row_fill (GTK_WIDGET (row), g_ptr_array_index (findings, i), rw_document_style (self->document));
    }
  while ((row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), (int) findings->len)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (self->list), GTK_WIDGET (row));
  mark_selected (self);
}

static void
on_changed (RwFindingsPane *self)
{
  if (gtk_widget_get_mapped (GTK_WIDGET (self)))
    fill (self);
  else
    self->stale = TRUE;
}

static void
on_map (RwFindingsPane *self)
{
  if (self->stale)
    fill (self);
}

static void
on_selected (RwFindingsPane *self)
{
  if (!self->stale)
    mark_selected (self);
}

static void
on_row_activated (RwFindingsPane *self, GtkListBoxRow *row)
{
  const GPtrArray *findings = rw_document_findings (self->document);
  const RwFinding *finding = g_ptr_array_index (findings, gtk_list_box_row_get_index (row));

  if (finding->ids[0] != NULL)
    rw_document_select (self->document, rw_subject_of_id (finding->ids[0]));
}

/* ---- making and unmaking ---- */

static void
rw_findings_pane_dispose (GObject *object)
{
  g_clear_object (&RW_FINDINGS_PANE (object)->document);
  G_OBJECT_CLASS (rw_findings_pane_parent_class)->dispose (object);
}

static void
rw_findings_pane_class_init (RwFindingsPaneClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_findings_pane_dispose;
}

static void
rw_findings_pane_init (RwFindingsPane *self)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();
  GtkWidget *nothing = gtk_label_new (_("Nothing to remark: all checks are satisfied."));

  self->stale = TRUE;
  self->list = gtk_list_box_new ();
  gtk_widget_add_css_class (self->list, "findings");
  gtk_widget_add_css_class (nothing, "dim-label");
  gtk_widget_set_margin_top (nothing, 16);
  gtk_list_box_set_placeholder (GTK_LIST_BOX (self->list), nothing);
  rw_access_name (self->list, _("Findings"));
  g_signal_connect_object (self->list, "row-activated", G_CALLBACK (on_row_activated), self,
                           G_CONNECT_SWAPPED);

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), self->list);
  gtk_widget_set_vexpand (scroller, TRUE);
  gtk_widget_set_hexpand (scroller, TRUE);
  gtk_box_append (GTK_BOX (self), scroller);
  g_signal_connect (self, "map", G_CALLBACK (on_map), NULL);
}

GtkWidget *
rw_findings_pane_new (RwDocument *document)
{
  RwFindingsPane *self = g_object_new (RW_TYPE_FINDINGS_PANE, NULL);

  self->document = g_object_ref (document);
  g_signal_connect_object (document, "noted", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "selected", G_CALLBACK (on_selected), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}
