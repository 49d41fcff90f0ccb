#include "shelf_table.h"

#include <glib/gi18n.h>
#include <string.h>

#include "base/access.h"
#include "base/look.h"
#include "table/material.h"

struct _RwShelfTable
{
  GtkWidget parent;

  RwShelf   *shelf;
  RwStyle    style;
  GtkWidget *scroller;
  GtkWidget *grid;
  gboolean   filling; /* the table is being laid out: what changes is not the maker's doing */
};

G_DEFINE_FINAL_TYPE (RwShelfTable, rw_shelf_table, GTK_TYPE_WIDGET)

enum
{
  EDITED,
  SAID,
  SIGNAL_COUNT,
};

static guint signals[SIGNAL_COUNT];

static const int widths[RW_STOCK_FIELD_COUNT] = { /* characters */
  [RW_STOCK_NAME] = 16, [RW_STOCK_LENGTH] = 7, [RW_STOCK_WIDTH] = 6, [RW_STOCK_THICKNESS] = 5, [RW_STOCK_COUNT] = 3,
  [RW_STOCK_AVOID] = 10, [RW_STOCK_PRICE] = 5, [RW_STOCK_MASS] = 6,
};

/* Which item and field a widget of the table is for. */
static GQuark
place_quark (void)
{
  return g_quark_from_static_string ("rw-shelf-place");
}

static void
set_place (GtkWidget *widget, guint row, RwStockField field)
{
  g_object_set_qdata (G_OBJECT (widget), place_quark (), GUINT_TO_POINTER (row * RW_STOCK_FIELD_COUNT + field + 1));
}

static RwStockItem *
item_of (RwShelfTable *self, GtkWidget *widget, RwStockField *field)
{
  guint place = GPOINTER_TO_UINT (g_object_get_qdata (G_OBJECT (widget), place_quark ())) - 1;

  *field = (RwStockField) (place % RW_STOCK_FIELD_COUNT);
  return g_ptr_array_index (self->shelf->items, place / RW_STOCK_FIELD_COUNT);
}

/* ---- editing ---- */

static void
take_text (RwShelfTable *self, GtkWidget *widget, const char *text)
{
  RwStockField field;
  RwStockItem *item = item_of (self, widget, &field);
  g_autoptr (RwStockItem) before = rw_stock_item_copy (item);
  g_autofree char *shown = rw_stock_field_write (item, field, self->style);
  g_autoptr (GError) error = NULL;

  if (self->filling || strcmp (shown, text) == 0)
    return;
  if (rw_stock_field_read (item, field, text, self->style, &error))
    {
      g_autofree char *taken = rw_stock_field_write (item, field, self->style);

      rw_look_refused (widget, FALSE);
      if (GTK_IS_EDITABLE (widget))
        gtk_editable_set_text (GTK_EDITABLE (widget), taken);
      g_signal_emit (self, signals[SAID], 0, NULL);
      if (!rw_stock_item_equal (before, item))
        g_signal_emit (self, signals[EDITED], 0);
    }
  else
    {
      rw_look_refused (widget, TRUE);
      g_signal_emit (self, signals[SAID], 0, error->message);
    }
}

static void
on_activate (GtkWidget *entry, RwShelfTable *self)
{
  take_text (self, entry, gtk_editable_get_text (GTK_EDITABLE (entry)));
}

static void
on_leave (GtkEventController *controller, RwShelfTable *self)
{
  on_activate (gtk_event_controller_get_widget (controller), self);
}

static void
on_choice (GtkWidget *choice, GParamSpec *spec, RwShelfTable *self)
{
  guint at = gtk_drop_down_get_selected (GTK_DROP_DOWN (choice));
  RwStockField field;

  if (self->filling)
    return;
  item_of (self, choice, &field);
  if (field == RW_STOCK_KIND)
    take_text (self, choice, rw_stock_kind_id ((RwStockKind) at));
  else
    take_text (self, choice, (int) at < rw_woods_count ? rw_woods[at].id : rw_metals[(int) at - rw_woods_count].id);
}

static void fill (RwShelfTable *self);

static void
on_remove (GtkWidget *button, RwShelfTable *self)
{
  RwStockField field;
  RwStockItem *item = item_of (self, button, &field);

  g_ptr_array_remove (self->shelf->items, item);
  fill (self);
  g_signal_emit (self, signals[EDITED], 0);
}

/* ---- laying out ---- */

static GtkWidget *
new_choice (const RwStockItem *item, RwStockField field)
{
  g_autoptr (GtkStringList) words = gtk_string_list_new (NULL);
  int selected = 0;

  if (field == RW_STOCK_KIND)
    {
      selected = (int) item->kind;
      for (int kind = 0; kind < RW_STOCK_KIND_COUNT; kind++)
        gtk_string_list_append (words, _(rw_stock_kind_label ((RwStockKind) kind)));
    }
  else
    {
      int wood = rw_wood_find (item->material);

      selected = wood >= 0 ? wood : rw_woods_count + rw_metal_find (item->material);
      for (int i = 0; i < rw_woods_count; i++)
        gtk_string_list_append (words, _(rw_woods[i].label));
      for (int i = 0; i < rw_metals_count; i++)
        gtk_string_list_append (words, _(rw_metals[i].label));
    }
  GtkWidget *choice = gtk_drop_down_new (G_LIST_MODEL (g_steal_pointer (&words)), NULL);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (choice), (guint) selected);
  return choice;
}

static GtkWidget *
new_entry (RwShelfTable *self, const RwStockItem *item, RwStockField field)
{
  GtkWidget *entry = gtk_entry_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();
  g_autofree char *text = rw_stock_field_write (item, field, self->style);

  gtk_editable_set_text (GTK_EDITABLE (entry), text);
  gtk_editable_set_width_chars (GTK_EDITABLE (entry), widths[field]);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (entry), widths[field]);
  g_signal_connect_object (entry, "activate", G_CALLBACK (on_activate), self, 0);
  g_signal_connect_object (focus, "leave", G_CALLBACK (on_leave), self, 0);
  gtk_widget_add_controller (entry, focus);
  return entry;
}

static void
add_row (RwShelfTable *self, guint row)
{
  const RwStockItem *item = g_ptr_array_index (self->shelf->items, row);
  GtkWidget *remove = gtk_button_new_from_icon_name ("list-remove-symbolic");
  g_autofree char *number = g_strdup_printf ("%u", row + 1);

  for (int field = 0; field < RW_STOCK_FIELD_COUNT; field++)
    {
      gboolean choice = field == RW_STOCK_KIND || field == RW_STOCK_MATERIAL;
      GtkWidget *widget = choice ? new_choice (item, (RwStockField) field)
                                 : new_entry (self, item, (RwStockField) field);
      g_autofree char *name = g_strdup_printf (_("%s, row %s"), _(rw_stock_field_label ((RwStockField) field)), number);

      set_place (widget, row, (RwStockField) field);
      rw_access_name (widget, name);
      if (choice)
        g_signal_connect_object (widget, "notify::selected", G_CALLBACK (on_choice), self, 0);
      gtk_grid_attach (GTK_GRID (self->grid), widget, field, (int) row + 1, 1, 1);
    }
  set_place (remove, row, RW_STOCK_NAME);
  gtk_button_set_has_frame (GTK_BUTTON (remove), FALSE);
  rw_access_title (remove, _("Take the row off the shelf"));
  g_signal_connect_object (remove, "clicked", G_CALLBACK (on_remove), self, 0);
  gtk_grid_attach (GTK_GRID (self->grid), remove, RW_STOCK_FIELD_COUNT, (int) row + 1, 1, 1);
}

static void
fill (RwShelfTable *self)
{
  self->filling = TRUE;
  self->grid = gtk_grid_new ();
  gtk_grid_set_column_spacing (GTK_GRID (self->grid), 2);
  gtk_grid_set_row_spacing (GTK_GRID (self->grid), 2);
  for (int field = 0; field < RW_STOCK_FIELD_COUNT; field++)
    {
      GtkWidget *heading = gtk_label_new (_(rw_stock_field_label ((RwStockField) field)));

      gtk_label_set_xalign (GTK_LABEL (heading), 0);
      gtk_widget_set_margin_start (heading, 6);
      gtk_widget_set_margin_end (heading, 6);
      gtk_widget_add_css_class (heading, "dim-label");
      gtk_grid_attach (GTK_GRID (self->grid), heading, field, 0, 1, 1);
    }
  for (guint row = 0; row < self->shelf->items->len; row++)
    add_row (self, row);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (self->scroller), self->grid);
  self->filling = FALSE;
}

void
rw_shelf_table_show (RwShelfTable *self, const RwShelf *shelf, RwStyle style)
{
  gboolean same_style = style.units == self->style.units && style.decimal == self->style.decimal;

  if (same_style && self->grid != NULL && rw_shelf_equal (self->shelf, shelf))
    return;
  rw_shelf_free (self->shelf);
  self->shelf = rw_shelf_copy (shelf);
  self->style = style;
  fill (self);
}

const RwShelf *
rw_shelf_table_shelf (RwShelfTable *self)
{
  return self->shelf;
}

void
rw_shelf_table_add (RwShelfTable *self)
{
  guint count = self->shelf->items->len;
  RwStockItem *item;

  if (count >= RW_SHELF_MAX)
    return;
  item = count > 0 ? rw_stock_item_copy (g_ptr_array_index (self->shelf->items, count - 1))
                   : rw_stock_item_new (RW_STOCK_BOARD);
  if (count == 0)
    {
      item->length = 900;
      item->width = 100;
      item->thickness = 25;
    }
  g_ptr_array_add (self->shelf->items, item);
  fill (self);
  g_signal_emit (self, signals[EDITED], 0);
}

/* ---- the widget ---- */

static void
rw_shelf_table_dispose (GObject *object)
{
  RwShelfTable *self = RW_SHELF_TABLE (object);

  g_clear_pointer (&self->scroller, gtk_widget_unparent);
  g_clear_pointer (&self->shelf, rw_shelf_free);
  G_OBJECT_CLASS (rw_shelf_table_parent_class)->dispose (object);
}

static void
rw_shelf_table_class_init (RwShelfTableClass *klass)
{
  GType type = G_TYPE_FROM_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = rw_shelf_table_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  signals[EDITED] = g_signal_new ("edited", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  signals[SAID] = g_signal_new ("said", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
}

static void
rw_shelf_table_init (RwShelfTable *self)
{
  self->shelf = rw_shelf_new ();
  self->scroller = gtk_scrolled_window_new ();
  gtk_widget_set_parent (self->scroller, GTK_WIDGET (self));
}

GtkWidget *
rw_shelf_table_new (void)
{
  return g_object_new (RW_TYPE_SHELF_TABLE, NULL);
}
