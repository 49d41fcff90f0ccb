#include "dimension_columns.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/access.h"
#include "base/look.h"
#include "base/words.h"
#include "document/care_work.h"
#include "making/other_way.h"

/* At least, pixels; where the others leave less the list scrolls sideways. */
#define NAME_WIDTH 220
#define STEP_WIDTH 150

/* One column: what it shows, and whom it asks. */
typedef struct Column Column;

typedef struct
{
  const char *title;
  GtkWidget *(*make) (Column *column, GtkListItem *cell);
  void (*show) (Column *column, GtkWidget *widget, RwDimensionItem *item);
} ColumnKind;

struct Column
{
  const ColumnKind *kind;
  RwDocument       *document;
  RwCareWork       *care;
  RwMeasureReport   report;
  gpointer          report_data;
};

static void
set_text (GtkWidget *label, const char *text)
{
  if (!g_str_equal (gtk_label_get_text (GTK_LABEL (label)), text))
    gtk_label_set_text (GTK_LABEL (label), text);
}

/* The item that a cell is bound to; NULL for one that is not. */
static RwDimensionItem *
item_of (GtkListItem *cell)
{
  return g_object_get_data (G_OBJECT (cell), "rw-item");
}

/* ---- plain cells ---- */

static GtkWidget *
make_number (Column *column, GtkListItem *cell)
{
  GtkWidget *label = gtk_label_new (NULL);

  /* Figures and their signs read from left to right in every language. */
  gtk_widget_set_direction (label, GTK_TEXT_DIR_LTR);
  gtk_label_set_xalign (GTK_LABEL (label), 1);
  gtk_label_set_width_chars (GTK_LABEL (label), 7);
  return label;
}

static GtkWidget *
make_text (Column *column, GtkListItem *cell)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  return label;
}

static void
show_number (Column *column, GtkWidget *label, double value, const RwRow *row)
{
  g_autofree char *text = NULL;

  if (!isnan (value))
    text = rw_number_bare (value, rw_slot_dim (row->slot)->unit, rw_document_style (column->document));
  set_text (label, text != NULL ? text : "");
}

static void
show_planned (Column *column, GtkWidget *label, RwDimensionItem *item)
{
  const RwRow *row = rw_dimension_item_row (item);

  if (row == NULL)
    set_text (label, "");
  else
    show_number (column, label, row->planned, row);
}

/* What is needed now of all that is still to make: slanted, as what nobody has set or measured, and strong where it is
 * not what was planned. */
static void
show_needed (Column *column, GtkWidget *label, RwDimensionItem *item)
{
  const RwRow *row = rw_dimension_item_row (item);
  double needed = row != NULL ? rw_row_needed (row) : NAN;

  rw_look_set (label, "worked-out", !isnan (needed));
  rw_look_set (label, "strong",
               !isnan (needed) && rw_shown_differ (needed, row->planned, rw_slot_dim (row->slot)->unit));
  if (row == NULL)
    set_text (label, "");
  else
    show_number (column, label, needed, row);
}

/* What a made part holds. */
static void
show_made (Column *column, GtkWidget *label, RwDimensionItem *item)
{
  const RwRow *row = rw_dimension_item_row (item);

  if (row == NULL)
    set_text (label, "");
  else
    show_number (column, label, row->made, row);
}

/* New. */
static char *
deviation_text (const char *number, const char *sign, gboolean has_tolerance, gboolean out)
{
  if (!has_tolerance)
    return g_strconcat (sign, number, NULL);
  return g_strdup_printf (out ? C_("deviation", "%s%s, out") : C_("deviation", "%s%s, within"), sign, number);
}

/* What a deviation is held against.  New; NULL where there is nothing. */
static char *
allowance_text (Column *column, RwAllowance allowance, const char *unit)
{
  g_autofree char *within = NULL;

  if (!(allowance.within > 0))
    return NULL;
  within = rw_number_words (allowance.within, unit, rw_style_fine (rw_document_style (column->document)));
  return g_strdup_printf (allowance.asked ? _("This build asks for ± %s")
                                          : _("A careful shop holds ± %s; this build asks for nothing"),
                          within);
}

/* How far off it came out, against what is asked of it now, and whether that is within what it may be off by. */
static void
show_deviation (Column *column, GtkWidget *label, RwDimensionItem *item)
{
  const RwRow *row = rw_dimension_item_row (item);
  double off = row != NULL ? rw_row_deviation (row) : NAN;
  g_autofree char *id = NULL, *number = NULL, *text = NULL, *against = NULL;
  gboolean out = FALSE;

  if (!isnan (off))
    {
      const char *unit = rw_slot_dim (row->slot)->unit;
      RwAllowance allowance;

      id = rw_slot_id (row->slot);
      allowance = rw_care_allowance (rw_care_work_care (column->care), id);
      out = rw_allowance_passed (allowance, off);
      number = rw_number_bare (fabs (off), unit, rw_document_style (column->document));
      text = deviation_text (number, !rw_shown_differ (off, 0, unit) ? "" : off < 0 ? "−" : "+",
                             allowance.within > 0, out);
      against = allowance_text (column, allowance, unit);
    }
  rw_look_set (label, "complaint", out);
  set_text (label, text != NULL ? text : "");
  gtk_widget_set_tooltip_text (label, against);
}

static void
show_unit (Column *column, GtkWidget *label, RwDimensionItem *item)
{
  const RwRow *row = rw_dimension_item_row (item);
  RwUnits units = rw_document_style (column->document).units;

  set_text (label, row != NULL ? rw_quantity_unit (rw_slot_dim (row->slot)->unit, units) : "");
}

static void
show_tolerance (Column *column, GtkWidget *label, RwDimensionItem *item)
{
  const RwRow *row = rw_dimension_item_row (item);
  const RwDim *dim = row != NULL ? rw_slot_dim (row->slot) : NULL;
  g_autofree char *number = NULL, *text = NULL;

  if (dim != NULL && dim->tolerance > 0)
    {
      number = rw_number_bare (dim->tolerance, dim->unit, rw_style_fine (rw_document_style (column->document)));
      text = g_strconcat ("± ", number, NULL);
    }
  set_text (label, text != NULL ? text : "");
}

/* Within what it should stay for the results to come out, strong where a shop usually doesn't; a stroke for what is cut
 * but that nothing hangs on. */
static void
show_close_enough (Column *column, GtkWidget *label, RwDimensionItem *item)
{
  const RwRow *row = rw_dimension_item_row (item);
  const RwTolerance *care = row != NULL ? rw_care_of_slot (rw_care_work_care (column->care), row->slot) : NULL;
  const char *why = NULL;
  g_autofree char *number = NULL, *text = NULL;

  if (care != NULL)
    {
      number = rw_number_bare (care->asked, rw_slot_dim (row->slot)->unit,
                               rw_style_fine (rw_document_style (column->document)));
      text = g_strdup_printf (care->by_fitting ? C_("close enough", "± %s, fit") : "± %s", number);
      why = rw_tolerance_advice (care);
    }
  else if (row != NULL && rw_care_work_care (column->care) != NULL)
    why = rw_why_not_asked (row->slot, rw_document_now (column->document));
  rw_look_set (label, "strong", care != NULL && (care->takes_care || care->by_fitting));
  set_text (label, text != NULL ? text : why != NULL ? "–" : "");
  gtk_widget_set_tooltip_text (label, why != NULL ? _(why) : NULL);
}

static void
show_step (Column *column, GtkWidget *label, RwDimensionItem *item)
{
  const RwRow *row = rw_dimension_item_row (item);

  set_text (label, row != NULL ? _(rw_step_title (rw_slot_dim (row->slot)->step)) : "");
}

/* ---- the name, with its place in the tree ---- */

static GtkWidget *
make_name (Column *column, GtkListItem *cell)
{
  GtkWidget *expander = gtk_tree_expander_new (), *label = make_text (column, cell);

  gtk_tree_expander_set_child (GTK_TREE_EXPANDER (expander), label);
  return expander;
}

/* What a dimension is, and between what it may lie where it rests on guesses.  New; NULL for a heading. */
static char *
name_words (Column *column, const RwRow *row)
{
  const RwBands *bands = rw_care_work_bands (column->care);
  const RwDim *dim = row != NULL ? rw_slot_dim (row->slot) : NULL;
  RwStyle style = rw_document_style (column->document);
  g_autofree char *low = NULL, *high = NULL, *band = NULL;

  if (dim == NULL)
    return NULL;
  if (bands == NULL || !rw_shown_differ (bands->low[row->slot], bands->high[row->slot], dim->unit))
    return g_strdup (_(dim->definition));
  low = rw_quantity_show (bands->low[row->slot], dim->unit, style.units, style.decimal);
  high = rw_quantity_show (bands->high[row->slot], dim->unit, style.units, style.decimal);
  band = g_strdup_printf (_("Rests on guesses: %s to %s %s"), low, high, rw_quantity_unit (dim->unit, style.units));
  return g_strdup_printf ("%s\n%s", _(dim->definition), g_strchomp (band));
}

static void
show_name (Column *column, GtkWidget *expander, RwDimensionItem *item)
{
  GtkWidget *label = gtk_tree_expander_get_child (GTK_TREE_EXPANDER (expander));
  const RwRow *row = rw_dimension_item_row (item);
  g_autofree char *words = name_words (column, row);

  set_text (label, rw_dimension_item_title (item));
  rw_look_set (label, "group-name", row == NULL);
  gtk_widget_set_tooltip_text (expander, words);
}

/* ---- the measured value, which is entered here ---- */

/* The mean where there are several readings; the readings and the note are told by the tooltip. */
static char *
measured_text (Column *column, const RwRow *row)
{
  const char *unit = rw_slot_dim (row->slot)->unit;

  if (isnan (row->measured))
    return g_strdup ("");
  return rw_number_bare (row->measured, unit, rw_document_style (column->document));
}

/* "279.1; 279.3 (2026-05-04): by tape".  New; NULL where nothing was measured. */
static char *
entry_words (Column *column, const RwRow *row)
{
  g_autofree char *id = rw_slot_id (row->slot);
  const RwEntry *entry = rw_ledger_find (rw_document_project (column->document)->ledger, id);
  g_autofree char *readings = NULL;

  if (entry == NULL)
    return NULL;
  readings = rw_readings_write (entry, rw_document_style (column->document));
  return entry->note[0] != '\0' ? g_strdup_printf ("%s (%s): %s", readings, entry->date, entry->note)
                                : g_strdup_printf ("%s (%s)", readings, entry->date);
}

static void
take_measured (GtkWidget *entry, GtkListItem *cell)
{
  Column *column = g_object_get_data (G_OBJECT (cell), "rw-column");
  RwDimensionItem *item = item_of (cell);
  const RwRow *row = item != NULL ? rw_dimension_item_row (item) : NULL;
  const char *text = gtk_editable_get_text (GTK_EDITABLE (entry));
  g_autofree char *shown = row != NULL ? measured_text (column, row) : NULL;
  g_autofree char *id = NULL;
  g_autoptr (GError) error = NULL;
  gboolean taken;

  if (row == NULL || g_str_equal (text, shown))
    return;
  id = rw_slot_id (row->slot);
  taken = rw_document_measure (column->document, id, text, &error);
  rw_look_refused (entry, !taken);
  column->report (taken ? NULL : error->message, column->report_data);
}

static void
on_measured_leave (GtkEventControllerFocus *focus, GtkListItem *cell)
{
  take_measured (gtk_event_controller_get_widget (GTK_EVENT_CONTROLLER (focus)), cell);
}

static GtkWidget *
make_measured (Column *column, GtkListItem *cell)
{
  GtkWidget *entry = gtk_entry_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  gtk_entry_set_has_frame (GTK_ENTRY (entry), FALSE);
  gtk_editable_set_alignment (GTK_EDITABLE (entry), 1);
  gtk_editable_set_width_chars (GTK_EDITABLE (entry), 8);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (entry), 8);
  g_signal_connect_object (entry, "activate", G_CALLBACK (take_measured), cell, 0);
  g_signal_connect_object (focus, "leave", G_CALLBACK (on_measured_leave), cell, 0);
  gtk_widget_add_controller (entry, focus);
  return entry;
}

static void
show_measured (Column *column, GtkWidget *entry, RwDimensionItem *item)
{
  const RwRow *row = rw_dimension_item_row (item);
  g_autofree char *text = NULL, *name = NULL, *tip = NULL;

  gtk_widget_set_visible (entry, row != NULL);
  if (row == NULL)
    return;
  text = measured_text (column, row);
  name = g_strdup_printf (_("Measured: %s"), rw_dimension_item_title (item));
  rw_look_refused (entry, FALSE);
  rw_look_set (entry, "measured", !isnan (row->measured));
  gtk_editable_set_text (GTK_EDITABLE (entry), text);
  rw_access_name (entry, name);
  tip = entry_words (column, row);
  gtk_widget_set_tooltip_text (entry, tip);
}

/* ---- cells ---- */

static void
show_cell (GtkListItem *cell)
{
  Column *column = g_object_get_data (G_OBJECT (cell), "rw-column");
  RwDimensionItem *item = item_of (cell);

  if (item != NULL)
    column->kind->show (column, gtk_list_item_get_child (cell), item);
}

static void
on_setup (GtkSignalListItemFactory *factory, GtkListItem *cell, Column *column)
{
  g_object_set_data (G_OBJECT (cell), "rw-column", column);
  gtk_list_item_set_child (cell, column->kind->make (column, cell));
}

/* Units are not the items' affair: the document tells of them. */
static void
on_document_changed (GtkListItem *cell, guint what)
{
  if (what & RW_CHANGE_UNITS)
    show_cell (cell);
}

static void
on_bind (GtkSignalListItemFactory *factory, GtkListItem *cell, Column *column)
{
  GtkTreeListRow *row = gtk_list_item_get_item (cell);
  RwDimensionItem *item = gtk_tree_list_row_get_item (row);
  GtkWidget *child = gtk_list_item_get_child (cell);

  g_object_set_data_full (G_OBJECT (cell), "rw-item", item, g_object_unref);
  if (GTK_IS_TREE_EXPANDER (child))
    gtk_tree_expander_set_list_row (GTK_TREE_EXPANDER (child), row);
  g_signal_connect_object (item, "changed", G_CALLBACK (show_cell), cell, G_CONNECT_SWAPPED);
  g_signal_connect_object (column->document, "noted", G_CALLBACK (on_document_changed), cell,
                           G_CONNECT_SWAPPED);
  if (column->kind->show == show_close_enough || column->kind->show == show_deviation
      || column->kind->show == show_name)
    g_signal_connect_object (column->care, "changed", G_CALLBACK (show_cell), cell, G_CONNECT_SWAPPED);
  show_cell (cell);
}

static void
on_unbind (GtkSignalListItemFactory *factory, GtkListItem *cell, Column *column)
{
  RwDimensionItem *item = item_of (cell);

  g_signal_handlers_disconnect_by_data (item, cell);
  g_signal_handlers_disconnect_by_data (column->document, cell);
  g_signal_handlers_disconnect_by_data (column->care, cell);
  g_object_set_data (G_OBJECT (cell), "rw-item", NULL);
}

static const ColumnKind kinds[] = {
  { N_("Dimension"), make_name, show_name },
  { N_("Planned"), make_number, show_planned },
  { N_("Needed now"), make_number, show_needed },
  { N_("Unit"), make_text, show_unit },
  { N_("Tolerance"), make_number, show_tolerance },
  { N_("Close enough"), make_number, show_close_enough },
  { N_("Measured"), make_measured, show_measured },
  { N_("Off by"), make_number, show_deviation },
  { N_("Made"), make_number, show_made },
  { N_("Step"), make_text, show_step },
};

static void
free_column (gpointer data)
{
  g_object_unref (((Column *) data)->care);
  g_free (data);
}

void
rw_dimension_columns_add (GtkColumnView *view,
                          RwDocument *document,
                          RwMeasureReport report,
                          gpointer user_data)
{
  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    {
      GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();
      Column *column = g_new0 (Column, 1);
      GtkColumnViewColumn *added;

      *column = (Column){ &kinds[i], document, rw_care_work_of (document), report, user_data };
      g_object_set_data_full (G_OBJECT (factory), "rw-column", column, free_column);
      g_signal_connect (factory, "setup", G_CALLBACK (on_setup), column);
      g_signal_connect (factory, "bind", G_CALLBACK (on_bind), column);
      g_signal_connect (factory, "unbind", G_CALLBACK (on_unbind), column);

      added = gtk_column_view_column_new (_(kinds[i].title), factory);
      gtk_column_view_column_set_expand (added, i == 0);
      if (i == 0)
        gtk_column_view_column_set_fixed_width (added, NAME_WIDTH);
      if (i == G_N_ELEMENTS (kinds) - 1)
        gtk_column_view_column_set_fixed_width (added, STEP_WIDTH);
      gtk_column_view_column_set_resizable (added, TRUE);
      gtk_column_view_append_column (view, added);
      g_object_unref (added);
    }
}
