#include "findings_pane.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "base/words.h"
#include "finding_row.h"

/* A drag that has not moved for so long is at rest, milliseconds. */
#define SETTLE_MS 120

struct _RwFindingsPane
{
  GtkBox parent;

  RwDocument *document;
  GtkWidget  *list;     /* those that stand open */
  GtkWidget  *fold;     /* a GtkExpander round those that are accepted */
  GtkWidget  *accepted;
  GtkWidget  *scroller, *both;
  guint       reveal_source, settle_source;
  char       *opened;   /* the key of the finding that shows what helps; NULL: none */
  gboolean    stale;    /* changed while out of sight */
};

G_DEFINE_FINAL_TYPE (RwFindingsPane, rw_findings_pane, GTK_TYPE_BOX)

/* ---- the lists ---- */

/* Accepted, it is another, and folds by itself. */
static char *
key_of (const RwFinding *finding)
{
  return g_strdup_printf ("%s %s%s", finding->rule, finding->ids[0], finding->reason != NULL ? " accepted" : "");
}

static gboolean
is_opened (RwFindingsPane *self, const RwFinding *finding)
{
  g_autofree char *key = key_of (finding);

  return g_strcmp0 (self->opened, key) == 0;
}

static RwFindingRow *
row_at (GtkWidget *list, int place)
{
  GtkListBoxRow *row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), place);

  return row != NULL ? RW_FINDING_ROW (row) : NULL;
}

static gboolean
names_selection (RwFindingsPane *self, RwFindingRow *row)
{
  g_autofree char *id = rw_subject_id (rw_document_selection (self->document));

  return id != NULL && g_strv_contains ((const char *const *) rw_finding_row_finding (row)->ids, id);
}

static void
mark_selected (RwFindingsPane *self)
{
  GtkListBoxRow *present = gtk_list_box_get_selected_row (GTK_LIST_BOX (self->list));
  RwFindingRow *row;

  if (present != NULL && names_selection (self, RW_FINDING_ROW (present)))
    return;
  gtk_list_box_unselect_all (GTK_LIST_BOX (self->list));
  for (int i = 0; (row = row_at (self->list, i)) != NULL; i++)
    if (names_selection (self, row))
      {
        gtk_list_box_select_row (GTK_LIST_BOX (self->list), GTK_LIST_BOX_ROW (row));
        return;
      }
}

/* Rows are made once and filled anew. */
static int
fill_list (RwFindingsPane *self, GtkWidget *list, gboolean accepted)
{
  const GPtrArray *findings = rw_document_findings (self->document);
  GtkListBoxRow *over;
  int count = 0;

  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);

      if ((finding->reason != NULL) != accepted)
        continue;
      if (row_at (list, count) == NULL)
        gtk_list_box_append (GTK_LIST_BOX (list), rw_finding_row_new (self->document));
      rw_finding_row_show (row_at (list, count), finding, is_opened (self, finding));
      count++;
    }
  while ((over = gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), count)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (list), GTK_WIDGET (over));
  return count;
}

static void
fill (RwFindingsPane *self)
{
  int accepted;
  g_autofree char *title = NULL;

  self->stale = FALSE;
  fill_list (self, self->list, FALSE);
  accepted = fill_list (self, self->accepted, TRUE);
  title = g_strdup_printf (ngettext ("%d accepted finding", "%d accepted findings", accepted), accepted);
  gtk_expander_set_label (GTK_EXPANDER (self->fold), title);
  rw_access_name (self->fold, title);
  gtk_widget_set_visible (self->fold, accepted > 0);
  mark_selected (self);
}

/* The place that had the focus, when what was in it goes: the row itself, or what stands there then. */
static int
focused_place (RwFindingsPane *self)
{
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));
  GtkWidget *focus = root != NULL ? gtk_root_get_focus (root) : NULL;
  GtkWidget *row = focus != NULL ? gtk_widget_get_ancestor (focus, RW_TYPE_FINDING_ROW) : NULL;

  return row != NULL && gtk_widget_is_ancestor (row, self->list)
           ? gtk_list_box_row_get_index (GTK_LIST_BOX_ROW (row)) : -1;
}

static void
fill_keeping_focus (RwFindingsPane *self)
{
  int place = focused_place (self);
  RwFindingRow *row;

  fill (self);
  row = place >= 0 ? row_at (self->list, place) : NULL;
  if (row == NULL && place > 0)
    row = row_at (self->list, place - 1);
  if (row != NULL)
    gtk_widget_grab_focus (GTK_WIDGET (row));
}

/* Are the findings those that the rows show, whatever their figures? */
static gboolean
has_the_same (RwFindingsPane *self, GtkWidget *list, gboolean accepted)
{
  const GPtrArray *findings = rw_document_findings (self->document);
  int count = 0;

  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);
      RwFindingRow *row;
      g_autofree char *key = NULL, *shown = NULL;

      if ((finding->reason != NULL) != accepted)
        continue;
      row = row_at (list, count++);
      if (row == NULL)
        return FALSE;
      key = key_of (finding);
      shown = key_of (rw_finding_row_finding (row));
      if (strcmp (key, shown) != 0)
        return FALSE;
    }
  return row_at (list, count) == NULL;
}

static gboolean
settle (gpointer data)
{
  RwFindingsPane *self = data;

  self->settle_source = 0;
  fill_keeping_focus (self);
  return G_SOURCE_REMOVE;
}

/* Figures follow a drag; rows come and go when it rests.  Each that does lays the whole list out anew, and one that
 * flickers past can't be read. */
static void
on_changed (RwFindingsPane *self)
{
  gboolean dragged = rw_document_drag_start (self->document) != NULL;

  g_clear_handle_id (&self->settle_source, g_source_remove);
  if (!gtk_widget_get_mapped (GTK_WIDGET (self)))
    self->stale = TRUE;
  else if (dragged && !self->stale
           && !(has_the_same (self, self->list, FALSE) && has_the_same (self, self->accepted, TRUE)))
    self->settle_source = g_timeout_add (SETTLE_MS, settle, self);
  else
    fill_keeping_focus (self);
}

static void
on_map (RwFindingsPane *self)
{
  if (self->stale)
    fill (self);
}

static void
on_unmap (RwFindingsPane *self)
{
  if (self->document != NULL)
    rw_document_preview (self->document, NULL);
}

static void
on_selected (RwFindingsPane *self)
{
  if (!self->stale)
    mark_selected (self);
}

/* Runs after the frame that lays out what has just been opened. */
static gboolean
reveal_now (gpointer data)
{
  RwFindingsPane *self = data;
  GtkAdjustment *scroll = gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (self->scroller));
  RwFindingRow *row;
  graphene_rect_t place;

  self->reveal_source = 0;
  for (int i = 0; (row = row_at (self->list, i)) != NULL; i++)
    if (is_opened (self, rw_finding_row_finding (row))
        && gtk_widget_compute_bounds (GTK_WIDGET (row), self->both, &place))
      gtk_adjustment_clamp_page (scroll, place.origin.y, place.origin.y + place.size.height);
  return G_SOURCE_REMOVE;
}

/* Opens the finding, or closes it, and goes to what it is about. */
static void
on_row_activated (RwFindingsPane *self, GtkListBoxRow *row)
{
  const RwFinding *finding = rw_finding_row_finding (RW_FINDING_ROW (row));
  RwSubject subject = rw_subject_of_id (finding->ids[0]);
  gboolean open = !is_opened (self, finding);

  g_free (self->opened);
  self->opened = open ? key_of (finding) : NULL;
  rw_document_preview (self->document, NULL);
  fill_keeping_focus (self);
  rw_document_select (self->document, subject);
  if (open && self->reveal_source == 0)
    self->reveal_source = g_idle_add_full (GDK_PRIORITY_REDRAW + 10, reveal_now, self, NULL);
}

/* ---- making and unmaking ---- */

static void
rw_findings_pane_dispose (GObject *object)
{
  g_clear_handle_id (&RW_FINDINGS_PANE (object)->reveal_source, g_source_remove);
  g_clear_handle_id (&RW_FINDINGS_PANE (object)->settle_source, g_source_remove);
  g_clear_object (&RW_FINDINGS_PANE (object)->document);
  G_OBJECT_CLASS (rw_findings_pane_parent_class)->dispose (object);
}

static void
rw_findings_pane_finalize (GObject *object)
{
  g_free (RW_FINDINGS_PANE (object)->opened);
  G_OBJECT_CLASS (rw_findings_pane_parent_class)->finalize (object);
}

static void
rw_findings_pane_class_init (RwFindingsPaneClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_findings_pane_dispose;
  G_OBJECT_CLASS (klass)->finalize = rw_findings_pane_finalize;
}

static GtkWidget *
list_new (RwFindingsPane *self, const char *name)
{
  GtkWidget *list = gtk_list_box_new ();

  gtk_widget_add_css_class (list, "findings");
  rw_access_name (list, name);
  g_signal_connect_object (list, "row-activated", G_CALLBACK (on_row_activated), self, G_CONNECT_SWAPPED);
  return list;
}

static void
rw_findings_pane_init (RwFindingsPane *self)
{
  GtkWidget *nothing = gtk_label_new (_("Nothing to remark: all checks are satisfied."));

  self->stale = TRUE;
  self->scroller = gtk_scrolled_window_new ();
  self->both = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  self->list = list_new (self, _("Findings"));
  gtk_widget_add_css_class (nothing, "dim-label");
  gtk_widget_set_margin_top (nothing, 16);
  gtk_list_box_set_placeholder (GTK_LIST_BOX (self->list), nothing);
  self->accepted = list_new (self, _("Accepted findings"));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (self->accepted), GTK_SELECTION_NONE);
  self->fold = gtk_expander_new (NULL);
  gtk_widget_add_css_class (self->fold, "accepted");
  gtk_expander_set_child (GTK_EXPANDER (self->fold), self->accepted);
  gtk_widget_hide (self->fold);

  gtk_box_append (GTK_BOX (self->both), self->list);
  gtk_box_append (GTK_BOX (self->both), self->fold);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (self->scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (self->scroller), self->both);
  gtk_widget_set_vexpand (self->scroller, TRUE);
  gtk_widget_set_hexpand (self->scroller, TRUE);
  gtk_box_append (GTK_BOX (self), self->scroller);
  g_signal_connect (self, "map", G_CALLBACK (on_map), NULL);
  g_signal_connect (self, "unmap", G_CALLBACK (on_unmap), NULL);
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
