#include "compare_pane.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/access.h"
#include "base/dialogs.h"
#include "base/words.h"
#include "draw/compare.h"

typedef enum
{
  COLUMN_WHAT,
  COLUMN_BEFORE,
  COLUMN_NOW,
  COLUMN_CHANGE,
  COLUMN_COUNT,
} Column;

/* Names stand near their numbers however wide the window is, pixels. */
#define WHAT_WIDTH 340

struct _RwComparePane
{
  GtkBox parent;

  RwDocument *document;
  GArray     *differences; /* of RwDifference, as the rows show them */
  gboolean    stale;       /* changed while out of sight */

  GtkWidget     *tools, *stop;
  GtkWidget     *pages; /* GtkStack: message or table */
  GtkWidget     *message, *table, *view;
  GtkStringList *rows; /* what differs; the other columns look it up by place */
};

G_DEFINE_FINAL_TYPE (RwComparePane, rw_compare_pane, GTK_TYPE_BOX)

/* ---- words ---- */

static const char *
unit_of (RwSubject subject)
{
  return subject.param >= 0 ? rw_param (subject.param)->unit : rw_slot_dim ((RwSlot) subject.slot)->unit;
}

static char *
what_words (const RwDifference *difference)
{
  RwSubject subject = difference->subject;
  g_autofree char *name = subject.param >= 0 ? g_strdup (_(rw_param (subject.param)->label))
                                             : rw_slot_words ((RwSlot) subject.slot);

  if (difference->more == 0)
    return g_steal_pointer (&name);
  /* Translators: a dimension such as "Nut to fret 19", and how many others of its kind differ too */
  return g_strdup_printf (ngettext ("%s, and %d more", "%s, and %d more", difference->more), name,
                          difference->more);
}

static char *
side_words (const RwDifference *difference, const RwResult *result, double value, RwStyle style)
{
  if (isfinite (value))
    return rw_number_words (value, unit_of (difference->subject), style);
  return difference->subject.param >= 0 ? rw_value_words (&result->used, difference->subject.param, style)
                                        : g_strdup ("–");
}

static char *
change_words (const RwDifference *difference, RwStyle style)
{
  double change = difference->now - difference->before;
  g_autofree char *number = NULL;

  if (!isfinite (change))
    return g_strdup ("");
  number = rw_number_bare (fabs (change), unit_of (difference->subject), style);
  return g_strconcat (change < 0 ? "\342\210\222" : "+", number, NULL);
}

static char *
cell_words (RwComparePane *self, Column column, guint row)
{
  const RwDifference *difference = &g_array_index (self->differences, RwDifference, row);
  RwStyle style = rw_document_style (self->document);

  switch (column)
    {
    case COLUMN_BEFORE:
      return side_words (difference, rw_document_reference (self->document), difference->before, style);
    case COLUMN_NOW:
      return side_words (difference, rw_document_now (self->document), difference->now, style);
    case COLUMN_CHANGE:
      return change_words (difference, style);
    default:
      return what_words (difference);
    }
}

/* ---- the table ---- */

static void
on_setup (GtkSignalListItemFactory *factory, GtkListItem *cell, gpointer column)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), GPOINTER_TO_INT (column) == COLUMN_WHAT ? 0 : 1);
  gtk_list_item_set_child (cell, label);
}

static Column
column_of (GtkSignalListItemFactory *factory)
{
  return (Column) GPOINTER_TO_INT (g_object_get_data (G_OBJECT (factory), "column"));
}

static void
on_bind (RwComparePane *self, GtkListItem *cell, GtkSignalListItemFactory *factory)
{
  g_autofree char *text = cell_words (self, column_of (factory), gtk_list_item_get_position (cell));

  gtk_label_set_text (GTK_LABEL (gtk_list_item_get_child (cell)), text);
}

static void
add_column (RwComparePane *self, Column column, const char *title)
{
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();
  g_autoptr (GtkColumnViewColumn) shown = NULL;

  g_object_set_data (G_OBJECT (factory), "column", GINT_TO_POINTER (column));
  g_signal_connect (factory, "setup", G_CALLBACK (on_setup), GINT_TO_POINTER (column));
  g_signal_connect_object (factory, "bind", G_CALLBACK (on_bind), self, G_CONNECT_SWAPPED);
  shown = gtk_column_view_column_new (title, factory);
  if (column == COLUMN_WHAT)
    gtk_column_view_column_set_fixed_width (shown, WHAT_WIDTH);
  gtk_column_view_append_column (GTK_COLUMN_VIEW (self->view), shown);
}

/* ---- filling ---- */

static void
show_rows (RwComparePane *self)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  guint shown = g_list_model_get_n_items (G_LIST_MODEL (self->rows));

  for (guint i = 0; i < self->differences->len; i++)
    g_ptr_array_add (names, what_words (&g_array_index (self->differences, RwDifference, i)));
  g_ptr_array_add (names, NULL);
  gtk_string_list_splice (self->rows, 0, shown, (const char *const *) names->pdata);
}

static void
fill (RwComparePane *self)
{
  const RwResult *reference = rw_document_reference (self->document);
  const char *name = rw_document_reference_name (self->document);
  g_autofree char *same = NULL;

  self->stale = FALSE;
  g_array_unref (self->differences);
  self->differences = reference != NULL ? rw_compare (reference, rw_document_now (self->document))
                                        : g_array_new (FALSE, FALSE, sizeof (RwDifference));
  show_rows (self);
  if (reference != NULL)
    same = g_strdup_printf (_("Nothing differs from “%s” yet. Change something, and it is listed here."), name);
  gtk_label_set_text (GTK_LABEL (self->message),
                      same != NULL ? same
                                   : _("Keep the build as it is now, or choose another project’s file: then the "
                                       "drawing shows it as a ghost, and this list shows what differs."));
  gtk_stack_set_visible_child (GTK_STACK (self->pages), self->differences->len > 0 ? self->table : self->message);
  gtk_widget_set_sensitive (self->stop, reference != NULL);
}

static void
on_changed (RwComparePane *self)
{
  if (gtk_widget_get_mapped (GTK_WIDGET (self)))
    fill (self);
  else
    self->stale = TRUE;
}

static void
on_map (RwComparePane *self)
{
  if (self->stale)
    fill (self);
}

/* ---- doing ---- */

static void
on_keep (RwComparePane *self)
{
  rw_document_keep_reference (self->document);
}

static void
on_stop (RwComparePane *self)
{
  rw_document_drop_reference (self->document);
}

static void
on_chosen (const char *path, gpointer user_data)
{
  RwComparePane *self = user_data;
  GtkWindow *window = GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self)));
  g_autoptr (GError) error = NULL;

  if (path != NULL && !rw_document_load_reference (self->document, path, &error))
    rw_dialog_error (window, _("The build can’t be opened"), error->message);
}

static void
on_choose (RwComparePane *self)
{
  rw_dialog_open (GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self))), on_chosen, self);
}

static void
on_activate (RwComparePane *self, guint row)
{
  if (row < self->differences->len)
    rw_document_select (self->document, g_array_index (self->differences, RwDifference, row).subject);
}

/* ---- making and unmaking ---- */

static GtkWidget *
add_tool (RwComparePane *self, const char *label, GCallback callback)
{
  GtkWidget *button = gtk_button_new_with_label (label);

  g_signal_connect_object (button, "clicked", callback, self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (self->tools), button);
  return button;
}

static void
build_table (RwComparePane *self)
{
  GtkSingleSelection *selection;

  self->rows = gtk_string_list_new (NULL);
  selection = gtk_single_selection_new (g_object_ref (G_LIST_MODEL (self->rows)));
  gtk_single_selection_set_autoselect (selection, FALSE);
  gtk_single_selection_set_can_unselect (selection, TRUE);
  self->view = gtk_column_view_new (GTK_SELECTION_MODEL (selection));
  gtk_widget_add_css_class (self->view, "data-table");
  rw_access_name (self->view, _("What differs"));
  add_column (self, COLUMN_WHAT, _("What differs"));
  add_column (self, COLUMN_BEFORE, _("Compared with"));
  add_column (self, COLUMN_NOW, _("Now"));
  add_column (self, COLUMN_CHANGE, _("Change"));
  g_signal_connect_object (self->view, "activate", G_CALLBACK (on_activate), self, G_CONNECT_SWAPPED);

  self->table = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (self->table), self->view);
}

static void
rw_compare_pane_dispose (GObject *object)
{
  RwComparePane *self = RW_COMPARE_PANE (object);

  g_clear_object (&self->rows);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (rw_compare_pane_parent_class)->dispose (object);
}

static void
rw_compare_pane_finalize (GObject *object)
{
  g_array_unref (RW_COMPARE_PANE (object)->differences);
  G_OBJECT_CLASS (rw_compare_pane_parent_class)->finalize (object);
}

static void
rw_compare_pane_class_init (RwComparePaneClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_compare_pane_dispose;
  G_OBJECT_CLASS (klass)->finalize = rw_compare_pane_finalize;
}

static void
rw_compare_pane_init (RwComparePane *self)
{
  self->differences = g_array_new (FALSE, FALSE, sizeof (RwDifference));
  self->tools = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  add_tool (self, _("Keep this state"), G_CALLBACK (on_keep));
  add_tool (self, _("Another file…"), G_CALLBACK (on_choose));
  self->stop = add_tool (self, _("Stop comparing"), G_CALLBACK (on_stop));

  self->message = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (self->message), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (self->message), 70);
  gtk_widget_set_margin_start (self->message, 12);
  gtk_widget_set_margin_end (self->message, 12);
  gtk_widget_add_css_class (self->message, "dim-label");
  build_table (self);

  self->pages = gtk_stack_new ();
  gtk_stack_add_child (GTK_STACK (self->pages), self->message);
  gtk_stack_add_child (GTK_STACK (self->pages), self->table);
  gtk_widget_set_hexpand (self->pages, TRUE);
  gtk_widget_set_vexpand (self->pages, TRUE);
  gtk_box_append (GTK_BOX (self), self->pages);
  g_signal_connect (self, "map", G_CALLBACK (on_map), NULL);
}

GtkWidget *
rw_compare_pane_new (RwDocument *document)
{
  RwComparePane *self = g_object_new (RW_TYPE_COMPARE_PANE, NULL);

  self->document = g_object_ref (document);
  g_signal_connect_object (document, "noted", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "reference", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  fill (self);
  return GTK_WIDGET (self);
}

GtkWidget *
rw_compare_pane_tools (RwComparePane *self)
{
  return self->tools;
}
