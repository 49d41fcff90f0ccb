#include "since_view.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/access.h"
#include "base/words.h"
#include "check/listing.h"
#include "paper/paper.h"
#include "paper/since.h"

struct _RwSinceView
{
  GtkBox parent;

  RwDocument *document;
  GtkWidget  *head;
  GtkWidget  *papers; /* GtkListBox */
  GtkWidget  *rows;   /* GtkListBox */
};

G_DEFINE_FINAL_TYPE (RwSinceView, rw_since_view, GTK_TYPE_BOX)

static const char *
translate (const char *english)
{
  return _(english);
}

static void
clear_list (GtkWidget *list)
{
  GtkListBoxRow *row;

  while ((row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), 0)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (list), GTK_WIDGET (row));
}

static GtkWidget *
text_new (const char *text, float xalign, gboolean expand)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), xalign);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_widget_set_hexpand (label, expand);
  return label;
}

/* ---- papers ---- */

static const char *
paper_title (const char *id)
{
  int kind = rw_paper_kind_find (id);

  return kind >= 0 ? _(rw_paper_kinds[kind].title) : id;
}

/* The names of what has changed on a paper, for the tooltip.  New. */
static char *
changed_words (const RwSincePaper *paper)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < paper->changed->len; i++)
    {
      g_autofree char *label = rw_reading_label (g_ptr_array_index (paper->changed, i), translate);

      g_string_append_printf (text, "%s%s", i > 0 ? "\n" : "", label);
    }
  return g_string_free (text, FALSE);
}

static void
add_paper (RwSinceView *self, const RwSincePaper *paper)
{
  guint count = paper->changed->len;
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  g_autofree char *state
      = count > 0 ? g_strdup_printf (ngettext ("out of date: %u change", "out of date: %u changes", count), count)
                  : g_strdup (_("up to date"));
  g_autofree char *words = changed_words (paper);
  g_autofree char *name = g_strdup_printf ("%s, %s", paper_title (paper->paper), state);
  GtkWidget *label = text_new (state, 1, FALSE);

  gtk_widget_add_css_class (label, count > 0 ? "complaint" : "dim-label");
  gtk_box_append (GTK_BOX (line), text_new (paper_title (paper->paper), 0, TRUE));
  gtk_box_append (GTK_BOX (line), label);
  gtk_widget_set_tooltip_text (line, count > 0 ? words : NULL);
  gtk_list_box_append (GTK_LIST_BOX (self->papers), line);
  rw_access_name (gtk_widget_get_parent (line), name);
}

/* ---- numbers ---- */

static char *
value_words (double value, const char *words, const char *unit, RwStyle style)
{
  if (words != NULL)
    return g_strdup (words);
  return isfinite (value) ? rw_number_words (value, unit, style) : g_strdup (_("none"));
}

static void
add_row (RwSinceView *self, const RwSinceRow *row, RwStyle style)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  g_autofree char *label = rw_reading_label (row->id, translate);
  g_autofree char *before = value_words (row->before, row->words_before, row->unit, style);
  g_autofree char *now = value_words (row->now, row->words_now, row->unit, style);
  g_autofree char *name = g_strdup_printf (_("%s: %s before, %s now"), label, before, now);
  GtkWidget *was = text_new (before, 1, FALSE), *is = text_new (now, 1, FALSE);

  gtk_label_set_width_chars (GTK_LABEL (was), 12);
  gtk_label_set_width_chars (GTK_LABEL (is), 12);
  gtk_widget_add_css_class (was, "dim-label");
  gtk_widget_add_css_class (is, "strong");
  gtk_box_append (GTK_BOX (line), text_new (label, 0, TRUE));
  gtk_box_append (GTK_BOX (line), was);
  gtk_box_append (GTK_BOX (line), gtk_label_new ("→"));
  gtk_box_append (GTK_BOX (line), is);
  gtk_list_box_append (GTK_LIST_BOX (self->rows), line);
  g_object_set_data_full (G_OBJECT (gtk_widget_get_parent (line)), "rw-id", g_strdup (row->id), g_free);
  rw_access_name (gtk_widget_get_parent (line), name);
}

static void
on_row_activated (RwSinceView *self, GtkListBoxRow *row)
{
  rw_document_select (self->document, rw_subject_of_id (g_object_get_data (G_OBJECT (row), "rw-id")));
}

/* New. */
static char *
head_words (const RwSince *since)
{
  guint out = rw_since_out_of_date (since);

  if (since->last == NULL)
    return g_strdup (_("No papers have left yet. Those that leave by the papers window are noted by themselves, and "
                       "this page tells what has changed since."));
  if (since->rows->len == 0)
    return g_strdup_printf (_("Nothing has changed since the papers of %s."), since->last->date);
  return g_strdup_printf (ngettext ("Since the papers of %s: %u number has changed; papers out of date: %u.",
                                    "Since the papers of %s: %u numbers have changed; papers out of date: %u.",
                                    since->rows->len),
                          since->last->date, since->rows->len, out);
}

void
rw_since_view_fill (RwSinceView *self)
{
  g_autoptr (RwSince) since
      = rw_since_new (rw_document_project (self->document), rw_document_now (self->document));
  g_autofree char *head = head_words (since);

  gtk_label_set_text (GTK_LABEL (self->head), head);
  clear_list (self->papers);
  clear_list (self->rows);
  for (guint i = 0; i < since->papers->len; i++)
    add_paper (self, g_ptr_array_index (since->papers, i));
  for (guint i = 0; i < since->rows->len; i++)
    add_row (self, g_ptr_array_index (since->rows, i), rw_document_style (self->document));
}

static void
on_left (RwSinceView *self)
{
  g_autofree const char **papers = g_new0 (const char *, (gsize) rw_paper_kinds_count + 1);

  for (int i = 0; i < rw_paper_kinds_count; i++)
    papers[i] = rw_paper_kinds[i].id;
  rw_document_record_papers (self->document, papers, rw_document_style (self->document).units);
}

/* ---- making and unmaking ---- */

static GtkWidget *
list_new (const char *name)
{
  GtkWidget *list = gtk_list_box_new ();

  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list), GTK_SELECTION_NONE);
  gtk_widget_add_css_class (list, "steps");
  rw_access_name (list, name);
  return list;
}

static GtkWidget *
scrolled (GtkWidget *child, gboolean expand)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), child);
  gtk_widget_set_vexpand (scroller, TRUE);
  gtk_widget_set_hexpand (scroller, expand);
  return scroller;
}

static void
build (RwSinceView *self)
{
  GtkWidget *top = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12), *body = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  GtkWidget *left = gtk_button_new_with_label (_("All papers left today")), *papers;

  self->head = text_new (NULL, 0, TRUE);
  gtk_label_set_wrap (GTK_LABEL (self->head), TRUE);
  gtk_label_set_ellipsize (GTK_LABEL (self->head), PANGO_ELLIPSIZE_NONE);
  g_signal_connect_object (left, "clicked", G_CALLBACK (on_left), self, G_CONNECT_SWAPPED);
  rw_access_describe (left, _("For papers that left in another way, as from the command line"));
  gtk_widget_set_tooltip_text (left, _("For papers that left in another way, as from the command line"));
  gtk_widget_set_valign (left, GTK_ALIGN_CENTER);
  gtk_widget_add_css_class (top, "since-head");
  gtk_box_append (GTK_BOX (top), self->head);
  gtk_box_append (GTK_BOX (top), left);

  self->papers = list_new (_("Papers"));
  self->rows = list_new (_("What has changed"));
  g_signal_connect_object (self->rows, "row-activated", G_CALLBACK (on_row_activated), self, G_CONNECT_SWAPPED);
  papers = scrolled (self->papers, FALSE);
  gtk_widget_set_size_request (papers, 320, -1);
  gtk_box_append (GTK_BOX (body), papers);
  gtk_box_append (GTK_BOX (body), gtk_separator_new (GTK_ORIENTATION_VERTICAL));
  gtk_box_append (GTK_BOX (body), scrolled (self->rows, TRUE));
  gtk_box_append (GTK_BOX (self), top);
  gtk_box_append (GTK_BOX (self), body);
}

static void
rw_since_view_dispose (GObject *object)
{
  g_clear_object (&RW_SINCE_VIEW (object)->document);
  G_OBJECT_CLASS (rw_since_view_parent_class)->dispose (object);
}

static void
rw_since_view_class_init (RwSinceViewClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_since_view_dispose;
}

static void
rw_since_view_init (RwSinceView *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  build (self);
}

GtkWidget *
rw_since_view_new (RwDocument *document)
{
  RwSinceView *self = g_object_new (RW_TYPE_SINCE_VIEW, NULL);

  self->document = g_object_ref (document);
  return GTK_WIDGET (self);
}
