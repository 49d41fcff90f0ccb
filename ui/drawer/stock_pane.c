#include "stock_pane.h"

#include <glib/gi18n.h>
#include <math.h>
#include <string.h>

#include "base/access.h"
#include "base/dialogs.h"
#include "base/words.h"
#include "document/stock_work.h"
#include "io/save.h"
#include "io/shelf_file.h"
#include "cutting_view.h"
#include "shelf_table.h"
#include "stock_remedy_list.h"

struct _RwStockPane
{
  GtkBox parent;

  RwDocument  *document;
  RwStockWork *work;
  RwShelf     *own; /* the personal shelf, while it is the one shown; NULL: the project's */

  GtkWidget *tools, *choice, *stop;
  GtkWidget *table, *fault, *verdict, *remedies, *view;
};

G_DEFINE_FINAL_TYPE (RwStockPane, rw_stock_pane, GTK_TYPE_BOX)

static const RwShelf *
shelf_of (RwStockPane *self)
{
  return self->own != NULL ? self->own : rw_document_project (self->document)->shelf;
}

static GtkWindow *
window_of (RwStockPane *self)
{
  return GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self)));
}

static void
plan (RwStockPane *self)
{
  if (gtk_widget_get_mapped (GTK_WIDGET (self)))
    rw_stock_work_want (self->work, shelf_of (self));
}

static void
show_shelf (RwStockPane *self)
{
  rw_shelf_table_show (RW_SHELF_TABLE (self->table), shelf_of (self), rw_document_style (self->document));
}

/* ---- the shelf ---- */

/* The shelf shown becomes another: in the project as a step of undo, the personal one in its file at once. */
static void
put_shelf (RwStockPane *self, const RwShelf *shelf, const char *name)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *path = NULL;

  if (self->own == NULL)
    {
      RwProject *project = rw_project_copy (rw_document_project (self->document));

      rw_shelf_free (project->shelf);
      project->shelf = rw_shelf_copy (shelf);
      rw_document_put_project (self->document, project, name);
      return;
    }
  path = rw_shelf_path ();
  if (!rw_shelf_save (shelf, path, &error))
    rw_dialog_error (window_of (self), _("Your shelf could not be kept"), error->message);
  rw_shelf_free (self->own);
  self->own = rw_shelf_copy (shelf);
  show_shelf (self);
  plan (self);
}

static void
on_edited (RwStockPane *self)
{
  put_shelf (self, rw_shelf_table_shelf (RW_SHELF_TABLE (self->table)), _("Shelf"));
}

static void
on_said (RwStockPane *self, const char *fault)
{
  gtk_label_set_text (GTK_LABEL (self->fault), fault != NULL ? fault : "");
  gtk_widget_set_visible (self->fault, fault != NULL);
}

static void
on_choice (RwStockPane *self)
{
  gboolean personal = gtk_drop_down_get_selected (GTK_DROP_DOWN (self->choice)) == 1;
  g_autofree char *path = rw_shelf_path ();
  g_autoptr (GError) error = NULL;

  g_clear_pointer (&self->own, rw_shelf_free);
  if (personal)
    self->own = rw_shelf_load (path, &error);
  if (error != NULL)
    {
      rw_dialog_error (window_of (self), _("Your shelf could not be read"), error->message);
      gtk_drop_down_set_selected (GTK_DROP_DOWN (self->choice), 0);
    }
  show_shelf (self);
  plan (self);
}

/* ---- CSV ---- */

static void
tell_faults (RwStockPane *self, GPtrArray *faults)
{
  g_autofree char *all = NULL;

  if (faults->len == 0)
    return;
  g_ptr_array_set_size (faults, (gint) MIN (faults->len, 12));
  g_ptr_array_add (faults, NULL);
  all = g_strjoinv ("\n", (char **) faults->pdata);
  rw_dialog_error (window_of (self), _("Some rows were left out"), all);
}

static void
on_import_path (const char *path, gpointer user_data)
{
  g_autoptr (RwStockPane) self = user_data;
  g_autoptr (GPtrArray) faults = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (RwShelf) shelf = NULL;
  g_autoptr (GError) error = NULL;

  if (path == NULL)
    return;
  shelf = rw_shelf_load_csv (path, rw_document_style (self->document).units, faults, &error);
  if (shelf == NULL)
    {
      rw_dialog_error (window_of (self), _("The table could not be read"), error->message);
      return;
    }
  put_shelf (self, shelf, _("Shelf from a table"));
  tell_faults (self, faults);
}

static void
on_import (RwStockPane *self)
{
  rw_dialog_open_any (window_of (self), _("Shelf from a table"), on_import_path, g_object_ref (self));
}

static void
on_export_path (const char *path, gpointer user_data)
{
  g_autoptr (RwStockPane) self = user_data;
  g_autoptr (GError) error = NULL;
  g_autofree char *csv = rw_shelf_to_csv (shelf_of (self));

  if (path != NULL && !rw_save_bytes (path, csv, strlen (csv), &error))
    rw_dialog_error (window_of (self), _("The table could not be written"), error->message);
}

static void
on_export (RwStockPane *self)
{
  rw_dialog_save_as (window_of (self), _("Shelf as a table"), "shelf.csv", on_export_path, g_object_ref (self));
}

/* ---- the plan ---- */

static char *
verdict_words (RwStockPane *self, const RwCutting *cutting)
{
  RwStyle style = rw_document_style (self->document);
  g_autofree char *mass = rw_quantity_write (cutting->mass_g / 1000, "kg", style.units, 1, style.decimal);
  g_autofree char *price = rw_quantity_write (cutting->price, "", style.units, 2, style.decimal);

  if (shelf_of (self)->items->len == 0)
    return g_strdup (_("The shelf is empty. Add what there is, or read it from a table."));
  if (cutting->missing_total > 0)
    return g_strdup_printf (ngettext ("The shelf will not do: %d piece is missing.",
                                      "The shelf will not do: %d pieces are missing.", (gulong) cutting->missing_total),
                            cutting->missing_total);
  if (cutting->price > 0)
    return g_strdup_printf (_("The shelf will do. Stock cut into: %s kg, price %s."), mass, price);
  return g_strdup_printf (_("The shelf will do. Stock cut into: %s kg."), mass);
}

/* What the instrument comes to; empty where it can't be worked out. */
static char *
weight_words (RwStockPane *self)
{
  RwStyle style = rw_document_style (self->document);
  const RwResult *now = rw_document_now (self->document);
  g_autofree char *total = rw_number_words (now->value[RW_WEIGHT_TOTAL], "g", style);
  g_autofree char *balance = rw_number_words (now->value[RW_WEIGHT_BALANCE], "mm", style);

  if (!isfinite (now->value[RW_WEIGHT_TOTAL] + now->value[RW_WEIGHT_BALANCE]))
    return g_strdup ("");
  return g_strdup_printf (_("The instrument: %s, balanced %s from the nut."), total, balance);
}

static void
on_work (RwStockPane *self)
{
  const RwCutting *cutting = rw_stock_work_cutting (self->work);
  gboolean busy = rw_stock_work_busy (self->work);
  RwStyle style = rw_document_style (self->document);
  g_autofree char *words = NULL, *weight = NULL, *both = NULL;

  gtk_widget_set_visible (self->stop, busy);
  if (busy && cutting == NULL)
    gtk_label_set_text (GTK_LABEL (self->verdict), _("Planning …"));
  if (busy || cutting == NULL)
    return;
  words = verdict_words (self, cutting);
  weight = weight_words (self);
  both = g_strdup_printf ("%s\n%s", words, weight);
  gtk_label_set_text (GTK_LABEL (self->verdict), g_strchomp (both));
  rw_stock_remedy_list_show (RW_STOCK_REMEDY_LIST (self->remedies), rw_stock_work_remedies (self->work), style);
  rw_cutting_view_show (RW_CUTTING_VIEW (self->view), cutting, rw_stock_work_design (self->work), style);
}

static void
on_apply (RwStockPane *self, RwStockRemedy *remedy)
{
  const RwRemedy *first = g_ptr_array_index (remedy->changes, 0);
  RwDesign design = remedy->design;
  g_autofree char *name = rw_remedy_words (first, _(first->pattern), rw_document_style (self->document));

  rw_document_apply (self->document, &design, name);
}

static void
on_noted (RwStockPane *self, guint what)
{
  if (what & RW_CHANGE_PROJECT)
    on_said (self, NULL);
  show_shelf (self);
  plan (self);
}

/* ---- the widget ---- */

static GtkWidget *
add_button (RwStockPane *self, const char *label, GCallback clicked)
{
  GtkWidget *button = gtk_button_new_with_label (label);

  g_signal_connect_object (button, "clicked", clicked, self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (self->tools), button);
  return button;
}

static void
on_add (RwStockPane *self)
{
  rw_shelf_table_add (RW_SHELF_TABLE (self->table));
}

static void
on_stop (RwStockPane *self)
{
  rw_stock_work_stop (self->work);
}

static void
build_tools (RwStockPane *self)
{
  const char *const shelves[] = { _("This project’s shelf"), _("My shelf"), NULL };

  self->tools = g_object_ref_sink (gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8));
  self->choice = gtk_drop_down_new_from_strings (shelves);
  rw_access_name (self->choice, _("Which shelf"));
  g_signal_connect_object (self->choice, "notify::selected", G_CALLBACK (on_choice), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (self->tools), self->choice);
  add_button (self, _("Add a row"), G_CALLBACK (on_add));
  add_button (self, _("Read a table …"), G_CALLBACK (on_import));
  add_button (self, _("Write a table …"), G_CALLBACK (on_export));
  self->stop = add_button (self, _("Stop planning"), G_CALLBACK (on_stop));
  gtk_widget_hide (self->stop);
}

static GtkWidget *
new_label (void)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_set_margin_start (label, 8);
  gtk_widget_set_margin_top (label, 4);
  return label;
}

static GtkWidget *
build_shelf (RwStockPane *self)
{
  GtkWidget *side = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);

  self->table = rw_shelf_table_new ();
  gtk_widget_set_vexpand (self->table, TRUE);
  self->fault = new_label ();
  gtk_widget_add_css_class (self->fault, "error");
  gtk_widget_hide (self->fault);
  g_signal_connect_object (self->table, "edited", G_CALLBACK (on_edited), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->table, "said", G_CALLBACK (on_said), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (side), self->table);
  gtk_box_append (GTK_BOX (side), self->fault);
  return side;
}

static GtkWidget *
build_plan (RwStockPane *self)
{
  GtkWidget *side = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4), *scroller = gtk_scrolled_window_new ();

  self->verdict = new_label ();
  self->remedies = rw_stock_remedy_list_new ();
  self->view = rw_cutting_view_new ();
  rw_access_name (self->view, _("Cutting plan"));
  gtk_widget_set_hexpand (self->view, TRUE);
  g_signal_connect_object (self->remedies, "apply", G_CALLBACK (on_apply), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (side), self->verdict);
  gtk_box_append (GTK_BOX (side), self->remedies);
  gtk_box_append (GTK_BOX (side), self->view);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_AUTOMATIC, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), side);
  return scroller;
}

static void
rw_stock_pane_dispose (GObject *object)
{
  RwStockPane *self = RW_STOCK_PANE (object);

  if (self->work != NULL)
    rw_stock_work_stop (self->work);
  g_clear_object (&self->tools);
  g_clear_object (&self->work);
  g_clear_object (&self->document);
  g_clear_pointer (&self->own, rw_shelf_free);
  G_OBJECT_CLASS (rw_stock_pane_parent_class)->dispose (object);
}

static void
rw_stock_pane_class_init (RwStockPaneClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_stock_pane_dispose;
}

static void
rw_stock_pane_init (RwStockPane *self)
{
  GtkWidget *halves = gtk_paned_new (GTK_ORIENTATION_HORIZONTAL);

  build_tools (self);
  gtk_paned_set_start_child (GTK_PANED (halves), build_shelf (self));
  gtk_paned_set_end_child (GTK_PANED (halves), build_plan (self));
  gtk_paned_set_shrink_end_child (GTK_PANED (halves), FALSE);
  gtk_widget_set_hexpand (halves, TRUE);
  gtk_box_append (GTK_BOX (self), halves);
  g_signal_connect (self, "map", G_CALLBACK (plan), NULL);
}

GtkWidget *
rw_stock_pane_new (RwDocument *document)
{
  RwStockPane *self = g_object_new (RW_TYPE_STOCK_PANE, NULL);

  self->document = g_object_ref (document);
  self->work = rw_stock_work_new (document);
  g_signal_connect_object (self->work, "changed", G_CALLBACK (on_work), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "noted", G_CALLBACK (on_noted), self, G_CONNECT_SWAPPED);
  show_shelf (self);
  return GTK_WIDGET (self);
}

GtkWidget *
rw_stock_pane_tools (RwStockPane *self)
{
  return self->tools;
}
