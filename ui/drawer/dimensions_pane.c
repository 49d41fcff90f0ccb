#include "dimensions_pane.h"

#include <glib/gi18n.h>
#include <string.h>

#include "base/access.h"
#include "base/words.h"
#include "document/care_work.h"
#include "backwards_words.h"
#include "dimension_columns.h"
#include "dimension_item.h"

/* Part or step, family, dimension. */
#define MOST_DEPTH 3

struct _RwDimensionsPane
{
  GtkBox parent;

  RwDocument *document;
  RwCareWork *care;    /* for what is close enough */
  gboolean    stale;   /* changed while out of sight */
  gboolean    by_step; /* else by part */
  char       *words;   /* casefolded search; NULL: everything */

  RwDimensionItem    *root;     /* a heading over the headings */
  GHashTable         *headings; /* key -> RwDimensionItem */
  GHashTable         *lines;    /* slot -> RwDimensionItem */
  GtkTreeListModel   *tree;
  GtkSingleSelection *selection;
  gboolean            following; /* the document's selection is being shown */
  guint               scroll_source;

  GtkWidget *tools;
  GtkWidget *view;
  GtkWidget *backwards; /* what a measured string height says of the neck */
  GtkWidget *message;
};

G_DEFINE_FINAL_TYPE (RwDimensionsPane, rw_dimensions_pane, GTK_TYPE_BOX)

/* ---- filling ---- */

static RwDimensionItem *
heading_for (RwDimensionsPane *self, const char *key, const char *title)
{
  RwDimensionItem *heading = g_hash_table_lookup (self->headings, key);

  if (heading == NULL)
    {
      heading = rw_dimension_item_new_heading (title);
      g_hash_table_insert (self->headings, g_strdup (key), heading);
    }
  return heading;
}

static RwDimensionItem *
line_for (RwDimensionsPane *self, const RwRow *row)
{
  RwDimensionItem *line = g_hash_table_lookup (self->lines, GINT_TO_POINTER (row->slot));

  if (line == NULL)
    {
      line = rw_dimension_item_new (row->slot);
      g_hash_table_insert (self->lines, GINT_TO_POINTER (row->slot), line);
    }
  rw_dimension_item_set_row (line, row);
  return line;
}

static gboolean
holds (const char *text, const char *words)
{
  g_autofree char *folded = g_utf8_casefold (text, -1);

  return strstr (folded, words) != NULL;
}

static gboolean
wanted (RwDimensionsPane *self, RwDimensionItem *line, const RwDim *dim)
{
  return self->words == NULL || holds (rw_dimension_item_title (line), self->words)
         || holds (_(dim->label), self->words) || holds (dim->id, self->words)
         || holds (rw_part_words (dim->part), self->words)
         || holds (_(rw_step_title (dim->step)), self->words);
}

/* Collects a heading under its parent once in a filling. */
static void
collect_once (GPtrArray *used, RwDimensionItem *parent, RwDimensionItem *heading)
{
  if (g_ptr_array_find (used, heading, NULL))
    return;
  g_ptr_array_add (used, heading);
  rw_dimension_item_collect (parent, heading);
}

/* Under the heading of its part or step, and under one of its family where it has an index. */
static void
place_line (RwDimensionsPane *self, GPtrArray *used, RwDimensionItem *line, const RwDim *dim)
{
  const char *title = self->by_step ? _(rw_step_title (dim->step)) : rw_part_words (dim->part);
  g_autofree char *key = g_strconcat (self->by_step ? "step " : "part ", title, NULL);
  g_autofree char *family = g_strconcat (key, " ", dim->id, NULL);
  RwDimensionItem *heading = heading_for (self, key, title);

  collect_once (used, self->root, heading);
  if (dim->span > 1)
    {
      RwDimensionItem *of_family = heading_for (self, family, _(dim->label));

      collect_once (used, heading, of_family);
      heading = of_family;
    }
  rw_dimension_item_collect (heading, line);
}

/* Rows come in the order of the table; grouped by step they follow the steps. */
static void
place_rows (RwDimensionsPane *self, GPtrArray *used, const GArray *rows)
{
  int passes = self->by_step ? RW_STEP_COUNT : 1;

  for (int step = 0; step < passes; step++)
    for (guint i = 0; i < rows->len; i++)
      {
        const RwRow *row = &g_array_index (rows, RwRow, i);
        const RwDim *dim = rw_slot_dim (row->slot);
        RwDimensionItem *line;

        if (self->by_step && (int) dim->step != step)
          continue;
        line = line_for (self, row);
        if (wanted (self, line, dim))
          place_line (self, used, line, dim);
      }
}

/* Whoever reads a string height off here is told here what it says of the neck. */
static void
show_backwards (RwDimensionsPane *self)
{
  g_autofree char *words = rw_backwards_words (self->document);

  gtk_widget_set_visible (self->backwards, words != NULL);
  gtk_label_set_text (GTK_LABEL (self->backwards), words != NULL ? words : "");
}

static void
fill (RwDimensionsPane *self)
{
  g_autoptr (GArray) rows
      = rw_listing_rows (rw_document_project (self->document), rw_document_now (self->document),
                         rw_document_planned (self->document));
  g_autoptr (GPtrArray) used = g_ptr_array_new ();

  self->stale = FALSE;
  rw_care_work_want (self->care, FALSE);
  place_rows (self, used, rows);
  for (guint i = 0; i < used->len; i++)
    rw_dimension_item_arrange (g_ptr_array_index (used, i));
  rw_dimension_item_arrange (self->root);
  show_backwards (self);
}

/* ---- the tree ---- */

static GListModel *
children_of (gpointer item, gpointer user_data)
{
  GListModel *children = rw_dimension_item_children (RW_DIMENSION_ITEM (item));

  return children != NULL ? g_object_ref (children) : NULL;
}

/* A new tree over the same lines: found lines are all shown, else families are folded. */
static void
plant (RwDimensionsPane *self)
{
  GListModel *headings = g_object_ref (rw_dimension_item_children (self->root));

  g_clear_object (&self->tree);
  self->tree = gtk_tree_list_model_new (headings, FALSE, self->words != NULL, children_of, NULL, NULL);
  for (guint i = 0; self->words == NULL && i < g_list_model_get_n_items (headings); i++)
    {
      g_autoptr (GtkTreeListRow) row = gtk_tree_list_model_get_child_row (self->tree, i);

      gtk_tree_list_row_set_expanded (row, TRUE);
    }
  self->following = TRUE;
  gtk_single_selection_set_model (self->selection, G_LIST_MODEL (self->tree));
  self->following = FALSE;
}

static void
refill (RwDimensionsPane *self)
{
  fill (self);
  plant (self);
}

/* Where a line stands: the place of its heading in list, of the heading below that, of the line itself, in
 * a row that ends with the line.  Their number; 0 where it is not in the list. */
static int
find_places (GListModel *list, RwDimensionItem *line, guint *places, int depth)
{
  for (guint i = 0; depth < MOST_DEPTH && i < g_list_model_get_n_items (list); i++)
    {
      g_autoptr (RwDimensionItem) item = RW_DIMENSION_ITEM (g_list_model_get_item (list, i));
      GListModel *below = rw_dimension_item_children (item);
      int found = item == line ? depth + 1 : below != NULL ? find_places (below, line, places, depth + 1) : 0;

      places[depth] = i;
      if (found > 0)
        return found;
    }
  return 0;
}

/* The row of a line, the headings over it being unfolded; NULL where the line is not shown. */
static GtkTreeListRow *
unfold_to (RwDimensionsPane *self, RwDimensionItem *line)
{
  guint places[MOST_DEPTH];
  int depth = find_places (rw_dimension_item_children (self->root), line, places, 0);
  GtkTreeListRow *row = depth > 0 ? gtk_tree_list_model_get_child_row (self->tree, places[0]) : NULL;

  for (int i = 1; i < depth; i++)
    {
      g_autoptr (GtkTreeListRow) heading = row;

      gtk_tree_list_row_set_expanded (heading, TRUE);
      row = gtk_tree_list_row_get_child_row (heading, places[i]);
    }
  return row;
}

/* ---- the selection ---- */

/* A parameter that is also a dimension, such as the neck angle, has its line too. */
static int
selected_slot (RwDimensionsPane *self)
{
  RwSubject subject = rw_document_selection (self->document);

  return subject.slot >= 0 || subject.param < 0 ? subject.slot : rw_slot_find (rw_param (subject.param)->id);
}

static GtkWidget *
list_inside (GtkWidget *widget)
{
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    if (GTK_IS_LIST_VIEW (child))
      return child;
  return NULL;
}

/* After the frame that lays out what has just been filled or unfolded. */
static gboolean
scroll_to_selected (gpointer user_data)
{
  RwDimensionsPane *self = user_data;
  guint place = gtk_single_selection_get_selected (self->selection);

  self->scroll_source = 0;
  /* Out of sight there is nothing laid out that could be scrolled. */
  if (gtk_widget_get_mapped (self->view) && place < g_list_model_get_n_items (G_LIST_MODEL (self->selection)))
    gtk_widget_activate_action (list_inside (self->view), "list.scroll-to-item", "u", place);
  return G_SOURCE_REMOVE;
}

static void
follow_selection (RwDimensionsPane *self)
{
  int slot = selected_slot (self);
  RwDimensionItem *line = slot >= 0 ? g_hash_table_lookup (self->lines, GINT_TO_POINTER (slot)) : NULL;
  g_autoptr (GtkTreeListRow) row = line != NULL ? unfold_to (self, line) : NULL;
  guint place = row != NULL ? gtk_tree_list_row_get_position (row) : GTK_INVALID_LIST_POSITION;

  self->following = TRUE;
  gtk_single_selection_set_selected (self->selection, place);
  self->following = FALSE;
  if (row != NULL && self->scroll_source == 0)
    self->scroll_source = g_idle_add_full (GDK_PRIORITY_REDRAW + 10, scroll_to_selected, self, NULL);
}

static void
on_selected (RwDimensionsPane *self)
{
  if (!self->stale && gtk_widget_get_mapped (GTK_WIDGET (self)))
    follow_selection (self);
}

static void
on_line_chosen (RwDimensionsPane *self)
{
  GtkTreeListRow *row = gtk_single_selection_get_selected_item (self->selection);
  g_autoptr (RwDimensionItem) item
      = row != NULL ? RW_DIMENSION_ITEM (gtk_tree_list_row_get_item (row)) : NULL;
  const RwRow *chosen = item != NULL ? rw_dimension_item_row (item) : NULL;

  if (!self->following && chosen != NULL && (int) chosen->slot != selected_slot (self))
    rw_document_select (self->document, RW_SUBJECT_SLOT ((int) chosen->slot));
}

/* ---- what happens outside ---- */

static void
on_changed (RwDimensionsPane *self)
{
  if (gtk_widget_get_mapped (GTK_WIDGET (self)))
    fill (self);
  else
    self->stale = TRUE;
}

static void
on_map (RwDimensionsPane *self)
{
  if (!self->stale)
    return;
  if (self->tree == NULL)
    refill (self);
  else
    fill (self);
  follow_selection (self);
}

static void
on_search (RwDimensionsPane *self, GtkSearchEntry *entry)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (entry));

  g_clear_pointer (&self->words, g_free);
  if (*text != '\0')
    self->words = g_utf8_casefold (text, -1);
  refill (self);
}

static void
on_grouping (RwDimensionsPane *self, GParamSpec *spec, GtkDropDown *grouping)
{
  self->by_step = gtk_drop_down_get_selected (grouping) == 1;
  refill (self);
}

static void
on_measure_report (const char *message, gpointer user_data)
{
  RwDimensionsPane *self = user_data;

  gtk_widget_set_visible (self->message, message != NULL);
  gtk_label_set_text (GTK_LABEL (self->message), message != NULL ? message : "");
}

/* ---- making and unmaking ---- */

static void
build_tools (RwDimensionsPane *self)
{
  const char *groupings[] = { _("By part"), _("By step"), NULL };
  GtkWidget *grouping = gtk_drop_down_new_from_strings (groupings);
  GtkWidget *search = gtk_search_entry_new ();

  g_object_set (search, "placeholder-text", _("Find a dimension"), NULL);
  rw_access_name (search, _("Find a dimension"));
  rw_access_name (grouping, _("Grouped"));
  g_signal_connect_object (search, "search-changed", G_CALLBACK (on_search), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (grouping, "notify::selected", G_CALLBACK (on_grouping), self, G_CONNECT_SWAPPED);

  self->tools = g_object_ref_sink (gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8));
  gtk_box_append (GTK_BOX (self->tools), search);
  gtk_box_append (GTK_BOX (self->tools), grouping);
}

static void
build_view (RwDimensionsPane *self)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();

  self->view = gtk_column_view_new (g_object_ref (GTK_SELECTION_MODEL (self->selection)));
  gtk_widget_add_css_class (self->view, "dimensions");
  rw_access_name (self->view, _("Dimensions"));
  rw_dimension_columns_add (GTK_COLUMN_VIEW (self->view), self->document, on_measure_report, self);

  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), self->view);
  gtk_widget_set_vexpand (scroller, TRUE);
  gtk_widget_set_hexpand (scroller, TRUE);
  gtk_box_append (GTK_BOX (self), scroller);

  self->backwards = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->backwards), 0);
  gtk_label_set_wrap (GTK_LABEL (self->backwards), TRUE);
  gtk_widget_add_css_class (self->backwards, "step-detail");
  gtk_widget_hide (self->backwards);
  gtk_box_append (GTK_BOX (self), self->backwards);

  self->message = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->message), 0);
  gtk_label_set_wrap (GTK_LABEL (self->message), TRUE);
  gtk_widget_add_css_class (self->message, "complaint");
  gtk_widget_hide (self->message);
  gtk_box_append (GTK_BOX (self), self->message);
}

static void
rw_dimensions_pane_dispose (GObject *object)
{
  RwDimensionsPane *self = RW_DIMENSIONS_PANE (object);

  g_clear_handle_id (&self->scroll_source, g_source_remove);
  g_clear_object (&self->care);
  g_clear_object (&self->document);
  g_clear_object (&self->tools);
  g_clear_object (&self->tree);
  g_clear_object (&self->selection);
  g_clear_object (&self->root);
  g_clear_pointer (&self->headings, g_hash_table_unref);
  g_clear_pointer (&self->lines, g_hash_table_unref);
  g_clear_pointer (&self->words, g_free);
  G_OBJECT_CLASS (rw_dimensions_pane_parent_class)->dispose (object);
}

static void
rw_dimensions_pane_class_init (RwDimensionsPaneClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_dimensions_pane_dispose;
}

static void
rw_dimensions_pane_init (RwDimensionsPane *self)
{
  self->stale = TRUE;
  self->root = rw_dimension_item_new_heading ("");
  self->headings = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_object_unref);
  self->lines = g_hash_table_new_full (NULL, NULL, NULL, g_object_unref);
  self->selection = gtk_single_selection_new (NULL);
  gtk_single_selection_set_autoselect (self->selection, FALSE);
  gtk_single_selection_set_can_unselect (self->selection, TRUE);
  g_signal_connect_object (self->selection, "notify::selected-item", G_CALLBACK (on_line_chosen), self,
                           G_CONNECT_SWAPPED);
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  g_signal_connect (self, "map", G_CALLBACK (on_map), NULL);
}

GtkWidget *
rw_dimensions_pane_new (RwDocument *document)
{
  RwDimensionsPane *self = g_object_new (RW_TYPE_DIMENSIONS_PANE, NULL);

  self->document = g_object_ref (document);
  self->care = rw_care_work_of (document);
  build_tools (self);
  build_view (self);
  g_signal_connect_object (document, "noted", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "selected", G_CALLBACK (on_selected), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

GtkWidget *
rw_dimensions_pane_tools (RwDimensionsPane *self)
{
  return self->tools;
}
