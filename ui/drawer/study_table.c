#include "study_table.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/access.h"
#include "base/words.h"

struct _RwStudyTable
{
  GtkBox parent;

  const RwStudy *study; /* not owned */
  char          *titles; /* of the columns that there are */
  RwStyle        style;
  GtkStringList *rows;
  GtkWidget     *view;
};

G_DEFINE_FINAL_TYPE (RwStudyTable, rw_study_table, GTK_TYPE_BOX)

/* ---- cells ---- */

/* A column of the view; place -1 holds the names of the rows. */
typedef struct
{
  RwStudyTable *table;
  int           place;
} Column;

static void
make_cell (GtkSignalListItemFactory *factory, GtkListItem *cell, gpointer user_data)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), ((Column *) user_data)->place < 0 ? 0 : 1);
  gtk_list_item_set_child (cell, label);
}

static char *
cell_text (const Column *column, guint row)
{
  const RwStudyTable *table = column->table;
  const RwStudyColumn *values;

  if (column->place < 0)
    return rw_study_row_name (table->study, row, table->style);
  values = &g_array_index (table->study->columns, RwStudyColumn, column->place);
  if (isnan (values->values[row]))
    return g_strdup ("");
  return rw_number_bare (values->values[row], values->unit, table->style);
}

static void
show_cell (GtkSignalListItemFactory *factory, GtkListItem *cell, gpointer user_data)
{
  g_autofree char *text = cell_text (user_data, gtk_list_item_get_position (cell));

  gtk_label_set_text (GTK_LABEL (gtk_list_item_get_child (cell)), text);
}

/* ---- columns ---- */

static void
free_column (gpointer data, GClosure *closure)
{
  g_free (data);
}

static void
add_column (RwStudyTable *self, int place, const char *title)
{
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();
  Column *column = g_new (Column, 1);
  g_autoptr (GtkColumnViewColumn) shown = NULL;

  *column = (Column){ self, place };
  g_signal_connect (factory, "setup", G_CALLBACK (make_cell), column);
  g_signal_connect_data (factory, "bind", G_CALLBACK (show_cell), column, free_column, 0);
  shown = gtk_column_view_column_new (title, factory);
  gtk_column_view_append_column (GTK_COLUMN_VIEW (self->view), shown);
}

/* "From the middle, mm". */
static char *
row_title (const RwStudyTable *self)
{
  const RwStudy *study = self->study;

  if (study->row_unit == NULL || *study->row_unit == '\0')
    return g_strdup (study->row_title);
  return g_strdup_printf ("%s, %s", study->row_title, rw_quantity_unit (study->row_unit, self->style.units));
}

static void
build_columns (RwStudyTable *self)
{
  GListModel *present = gtk_column_view_get_columns (GTK_COLUMN_VIEW (self->view));

  while (g_list_model_get_n_items (present) > 0)
    {
      g_autoptr (GtkColumnViewColumn) column = g_list_model_get_item (present, 0);

      gtk_column_view_remove_column (GTK_COLUMN_VIEW (self->view), column);
    }
  g_autofree char *first = row_title (self);

  add_column (self, -1, first);
  for (guint i = 0; i < self->study->columns->len; i++)
    {
      const RwStudyColumn *column = &g_array_index (self->study->columns, RwStudyColumn, i);
      g_autofree char *title = g_strdup_printf ("%s, %s", column->title,
                                                rw_quantity_unit (column->unit, self->style.units));

      add_column (self, (int) i, title);
    }
}

/* ---- making and unmaking ---- */

static void
rw_study_table_dispose (GObject *object)
{
  g_clear_object (&RW_STUDY_TABLE (object)->rows);
  G_OBJECT_CLASS (rw_study_table_parent_class)->dispose (object);
}

static void
rw_study_table_finalize (GObject *object)
{
  g_free (RW_STUDY_TABLE (object)->titles);
  G_OBJECT_CLASS (rw_study_table_parent_class)->finalize (object);
}

static void
rw_study_table_class_init (RwStudyTableClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_study_table_dispose;
  G_OBJECT_CLASS (klass)->finalize = rw_study_table_finalize;
}

static void
rw_study_table_init (RwStudyTable *self)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();
  GtkSingleSelection *selection;

  self->rows = gtk_string_list_new (NULL);
  selection = gtk_single_selection_new (g_object_ref (G_LIST_MODEL (self->rows)));
  gtk_single_selection_set_autoselect (selection, FALSE);
  gtk_single_selection_set_can_unselect (selection, TRUE);
  self->view = gtk_column_view_new (GTK_SELECTION_MODEL (selection));
  gtk_widget_add_css_class (self->view, "data-table");
  rw_access_name (self->view, _("Numbers of the study"));
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), self->view);
  gtk_widget_set_hexpand (scroller, TRUE);
  gtk_widget_set_vexpand (scroller, TRUE);
  gtk_box_append (GTK_BOX (self), scroller);
}

GtkWidget *
rw_study_table_new (void)
{
  return g_object_new (RW_TYPE_STUDY_TABLE, NULL);
}

/* All titles with their units, one a line.  New. */
static char *
titles_of (const RwStudy *study, RwStyle style)
{
  GString *titles = g_string_new (study->row_title);

  if (study->row_unit != NULL)
    g_string_append (titles, rw_quantity_unit (study->row_unit, style.units));
  for (guint i = 0; i < study->columns->len; i++)
    {
      const RwStudyColumn *column = rw_study_column_at (study, i);

      g_string_append_printf (titles, "\n%s, %s", column->title, rw_quantity_unit (column->unit, style.units));
    }
  return g_string_free (titles, FALSE);
}

/* Other columns are made while there are no rows, so that no cell looks for what is not there. */
void
rw_study_table_show (RwStudyTable *self, const RwStudy *study, RwStyle style)
{
  GListModel *rows = G_LIST_MODEL (self->rows);
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  g_autofree char *titles = study != NULL ? titles_of (study, style) : NULL;
  gboolean keep = study != NULL && g_strcmp0 (titles, self->titles) == 0;

  self->study = study;
  self->style = style;
  if (!keep)
    gtk_string_list_splice (self->rows, 0, g_list_model_get_n_items (rows), NULL);
  if (study == NULL)
    return;
  if (!keep)
    build_columns (self);
  g_free (self->titles);
  self->titles = g_steal_pointer (&titles);
  for (guint i = 0; i < study->rows->len; i++)
    g_ptr_array_add (names, rw_study_row_name (study, i, style));
  g_ptr_array_add (names, NULL);
  gtk_string_list_splice (self->rows, 0, g_list_model_get_n_items (rows), (const char *const *) names->pdata);
}
