#include "words_table.h"

#include "access.h"

struct _RwWordsTable
{
  GtkBox parent;

  GPtrArray     *rows; /* of char ** */
  GStrv          titles;
  GtkStringList *places; /* one for each row; the columns look it up */
  GtkWidget     *view;
};

G_DEFINE_FINAL_TYPE (RwWordsTable, rw_words_table, GTK_TYPE_BOX)

/* ---- columns ---- */

typedef struct
{
  RwWordsTable *table;
  guint         place;
  gboolean      right;
} Column;

static void
make_cell (GtkSignalListItemFactory *factory, GtkListItem *cell, gpointer user_data)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), ((Column *) user_data)->right ? 1 : 0);
  gtk_list_item_set_child (cell, label);
}

static void
show_cell (GtkSignalListItemFactory *factory, GtkListItem *cell, gpointer user_data)
{
  const Column *column = user_data;
  char **fields = g_ptr_array_index (column->table->rows, gtk_list_item_get_position (cell));

  gtk_label_set_text (GTK_LABEL (gtk_list_item_get_child (cell)), fields[column->place]);
}

static void
free_column (gpointer data, GClosure *closure)
{
  g_free (data);
}

static void
add_column (RwWordsTable *self, guint place, gboolean right)
{
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();
  Column *column = g_new (Column, 1);
  g_autoptr (GtkColumnViewColumn) shown = NULL;

  *column = (Column){ self, place, right };
  g_signal_connect (factory, "setup", G_CALLBACK (make_cell), column);
  g_signal_connect_data (factory, "bind", G_CALLBACK (show_cell), column, free_column, 0);
  shown = gtk_column_view_column_new (self->titles[place], factory);
  gtk_column_view_append_column (GTK_COLUMN_VIEW (self->view), shown);
}

static void
build_columns (RwWordsTable *self, const char *const *titles, guint right)
{
  GListModel *present = gtk_column_view_get_columns (GTK_COLUMN_VIEW (self->view));

  while (g_list_model_get_n_items (present) > 0)
    {
      g_autoptr (GtkColumnViewColumn) column = g_list_model_get_item (present, 0);

      gtk_column_view_remove_column (GTK_COLUMN_VIEW (self->view), column);
    }
  g_strfreev (self->titles);
  self->titles = g_strdupv ((char **) titles);
  for (guint k = 0; self->titles[k] != NULL; k++)
    add_column (self, k, (right & (1u << k)) != 0);
}

/* Rows go before columns and come after them, so that no cell looks for what is not there. */
void
rw_words_table_show (RwWordsTable *self, const char *const *titles, GPtrArray *rows, guint right)
{
  guint shown = g_list_model_get_n_items (G_LIST_MODEL (self->places));
  g_autofree const char **names = g_new0 (const char *, rows->len + 1);

  gtk_string_list_splice (self->places, 0, shown, NULL);
  g_clear_pointer (&self->rows, g_ptr_array_unref);
  self->rows = rows;
  if (self->titles == NULL || !g_strv_equal (titles, (const char *const *) self->titles))
    build_columns (self, titles, right);
  for (guint i = 0; i < rows->len; i++)
    names[i] = ((char **) g_ptr_array_index (rows, i))[0];
  gtk_string_list_splice (self->places, 0, 0, names);
}

/* ---- making and unmaking ---- */

static void
rw_words_table_dispose (GObject *object)
{
  g_clear_object (&RW_WORDS_TABLE (object)->places);
  G_OBJECT_CLASS (rw_words_table_parent_class)->dispose (object);
}

static void
rw_words_table_finalize (GObject *object)
{
  RwWordsTable *self = RW_WORDS_TABLE (object);

  g_strfreev (self->titles);
  g_clear_pointer (&self->rows, g_ptr_array_unref);
  G_OBJECT_CLASS (rw_words_table_parent_class)->finalize (object);
}

static void
rw_words_table_class_init (RwWordsTableClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_words_table_dispose;
  G_OBJECT_CLASS (klass)->finalize = rw_words_table_finalize;
}

static void
rw_words_table_init (RwWordsTable *self)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();
  GtkSingleSelection *selection;

  self->places = gtk_string_list_new (NULL);
  selection = gtk_single_selection_new (g_object_ref (G_LIST_MODEL (self->places)));
  gtk_single_selection_set_autoselect (selection, FALSE);
  gtk_single_selection_set_can_unselect (selection, TRUE);
  self->view = gtk_column_view_new (GTK_SELECTION_MODEL (selection));
  gtk_widget_add_css_class (self->view, "data-table");
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), self->view);
  gtk_widget_set_hexpand (scroller, TRUE);
  gtk_widget_set_vexpand (scroller, TRUE);
  gtk_box_append (GTK_BOX (self), scroller);
}

GtkWidget *
rw_words_table_new (const char *name)
{
  RwWordsTable *self = g_object_new (RW_TYPE_WORDS_TABLE, NULL);

  rw_access_name (self->view, name);
  return GTK_WIDGET (self);
}
