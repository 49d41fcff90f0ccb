#include "form_row.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/access.h"
#include "base/look.h"
#include "base/mark.h"
#include "base/standing.h"
#include "base/words.h"
#include "param_choice.h"
#include "param_entry.h"
#include "string_set_choice.h"

struct _RwFormRow
{
  GtkBox parent;

  RwDocument *document;
  RwParamId   id;

  GtkWidget *label;
  GtkWidget *mark;      /* of a finding that concerns the value */
  GtkWidget *editor;    /* RwParamEntry, GtkDropDown, or a box of drop-downs */
  GtkWidget *unit;      /* NULL for what has none */
  GtkWidget *standing;  /* where the value comes from */
  GtkWidget *measured;
  GtkWidget *complaint;
};

G_DEFINE_FINAL_TYPE (RwFormRow, rw_form_row, GTK_TYPE_BOX)

static void
show_text (GtkWidget *label, const char *text)
{
  gtk_widget_set_visible (label, text != NULL);
  if (text != NULL && !g_str_equal (text, gtk_label_get_text (GTK_LABEL (label))))
    gtk_label_set_text (GTK_LABEL (label), text);
}

static GtkWidget *
small_label (const char *css_class)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_add_css_class (label, "small");
  gtk_widget_add_css_class (label, css_class);
  gtk_widget_hide (label);
  return label;
}

static void
on_complaint (RwFormRow *self, const char *message)
{
  show_text (self->complaint, message);
}

static void
on_focus (RwFormRow *self)
{
  rw_document_select (self->document, (RwSubject){ self->id, -1 });
}

static void
on_label_pressed (RwFormRow *self)
{
  gtk_widget_grab_focus (self->editor);
}

/* ---- building ---- */

/* Lists are too long to stand beside their label. */
static gboolean
is_wide (const RwParam *param)
{
  return param->kind == RW_KIND_STRING_SET || param->kind == RW_KIND_LENGTH_LIST
         || param->kind == RW_KIND_CENTS_LIST;
}

static GtkWidget *
editor_for (RwFormRow *self, const RwParam *param)
{
  GtkWidget *editor;

  if (rw_param_is_choice (param))
    return rw_param_choice_new (self->document, self->id);
  if (param->kind == RW_KIND_WOOD_LIST)
    return rw_wood_list_new (self->document, self->id);
  editor = rw_param_entry_new (self->document, self->id);
  g_signal_connect_object (editor, "complaint", G_CALLBACK (on_complaint), self, G_CONNECT_SWAPPED);
  return editor;
}

static void
add_label (RwFormRow *self, GtkWidget *line, const RwParam *param)
{
  GtkGesture *press = gtk_gesture_click_new ();

  self->label = gtk_label_new (_(param->label));
  if (param->kind == RW_KIND_WOOD_LIST)
    gtk_widget_set_valign (self->label, GTK_ALIGN_START);
  gtk_label_set_xalign (GTK_LABEL (self->label), 0);
  gtk_label_set_wrap (GTK_LABEL (self->label), TRUE);
  gtk_widget_set_hexpand (self->label, TRUE);
  g_signal_connect_swapped (press, "pressed", G_CALLBACK (on_label_pressed), self);
  gtk_widget_add_controller (self->label, GTK_EVENT_CONTROLLER (press));
  gtk_box_append (GTK_BOX (line), self->label);

  self->mark = rw_mark_new (RW_NOTE);
  gtk_widget_hide (self->mark);
  gtk_box_append (GTK_BOX (line), self->mark);
}

static void
add_unit (RwFormRow *self, GtkWidget *line, const RwParam *param)
{
  if (!rw_param_is_number (param) && param->kind != RW_KIND_LENGTH_LIST)
    return;
  self->unit = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->unit), 0);
  gtk_label_set_width_chars (GTK_LABEL (self->unit), 5);
  gtk_widget_add_css_class (self->unit, "dim-label");
  gtk_box_append (GTK_BOX (line), self->unit);
}

/* The unit beside the editor, and what a screen reader says: the label, the unit, what it means. */
static void
refresh_unit (RwFormRow *self, const RwParam *param)
{
  const char *unit = rw_quantity_unit (param->unit, rw_document_style (self->document).units);
  g_autofree char *text = NULL;

  if (self->unit != NULL)
    gtk_label_set_text (GTK_LABEL (self->unit), unit);
  if (*param->meaning == '\0')
    text = g_strdup (unit);
  else
    text = *unit == '\0' ? g_strdup (_(param->meaning)) : g_strdup_printf ("%s. %s", unit, _(param->meaning));
  rw_access_describe (self->editor, text);
}

static void
build (RwFormRow *self)
{
  const RwParam *param = rw_param (self->id);
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkEventController *focus = gtk_event_controller_focus_new ();

  add_label (self, line, param);
  self->editor = editor_for (self, param);
  gtk_widget_set_valign (self->editor, GTK_ALIGN_CENTER);
  if (!is_wide (param))
    gtk_box_append (GTK_BOX (line), self->editor);
  if (param->kind == RW_KIND_STRING_SET)
    gtk_box_append (GTK_BOX (line), rw_string_set_choice_new (self->document));
  add_unit (self, line, param);
  gtk_box_append (GTK_BOX (self), line);
  if (is_wide (param))
    gtk_box_append (GTK_BOX (self), self->editor);

  self->standing = small_label ("dim-label");
  self->measured = small_label ("measured");
  self->complaint = small_label ("complaint");
  gtk_box_append (GTK_BOX (self), self->standing);
  gtk_box_append (GTK_BOX (self), self->measured);
  gtk_box_append (GTK_BOX (self), self->complaint);

  gtk_accessible_update_relation (GTK_ACCESSIBLE (self->editor), GTK_ACCESSIBLE_RELATION_LABELLED_BY,
                                  self->label, NULL, -1);
  g_signal_connect_swapped (focus, "enter", G_CALLBACK (on_focus), self);
  gtk_widget_add_controller (GTK_WIDGET (self), focus);
}

static void
rw_form_row_dispose (GObject *object)
{
  g_clear_object (&RW_FORM_ROW (object)->document);
  G_OBJECT_CLASS (rw_form_row_parent_class)->dispose (object);
}

static void
rw_form_row_class_init (RwFormRowClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_form_row_dispose;
}

static void
rw_form_row_init (RwFormRow *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_widget_add_css_class (GTK_WIDGET (self), "form-row");
}

GtkWidget *
rw_form_row_new (RwDocument *document, RwParamId id)
{
  RwFormRow *self = g_object_new (RW_TYPE_FORM_ROW, NULL);

  self->document = g_object_ref (document);
  self->id = id;
  build (self);
  rw_form_row_refresh (self, RW_CHANGE_ALL);
  return GTK_WIDGET (self);
}

/* ---- refreshing ---- */

static void
refresh_standing (RwFormRow *self, const RwParam *param, const RwStanding *standing)
{
  gboolean left_to_us
      = standing->kind == RW_STANDING_SET && standing->why != NULL && !isnan (standing->value);
  g_autofree char *number = NULL, *text = NULL;

  if (left_to_us)
    {
      number = rw_number_words (standing->value, param->unit, rw_document_style (self->document));
      text = g_strdup_printf ("%s, %s", _(standing->why), number);
    }
  else if (standing->why != NULL)
    text = g_strdup (_(standing->why));
  show_text (self->standing, text);
}

static void
refresh_measured (RwFormRow *self, const RwParam *param)
{
  const RwProject *project = rw_document_project (self->document);
  const RwMadeStep *made = rw_made_holder_of_param (project->made, self->id);
  RwStyle style = rw_document_style (self->document);
  g_autofree char *value = NULL, *text = NULL;

  if (rw_ledger_find (project->ledger, param->id) != NULL)
    {
      value = rw_value_words (&rw_document_now (self->document)->used, self->id, style);
      text = g_strdup_printf (_("Measured %s"), value);
    }
  else if (made != NULL)
    {
      value = rw_value_words (&made->held->design, self->id, style);
      text = g_strdup_printf (_("Made, %s"), value);
    }
  show_text (self->measured, text);
}

void
rw_form_row_refresh (RwFormRow *self, RwChange what)
{
  const RwParam *param = rw_param (self->id);
  RwStanding standing = rw_standing (self->id, rw_document_now (self->document));

  if (RW_IS_PARAM_ENTRY (self->editor))
    rw_param_entry_refresh (RW_PARAM_ENTRY (self->editor));
  if (what & RW_CHANGE_UNITS)
    refresh_unit (self, param);
  gtk_widget_set_sensitive (self->editor, standing.kind != RW_STANDING_IDLE);
  gtk_widget_set_sensitive (self->label, standing.kind != RW_STANDING_IDLE);

  refresh_standing (self, param, &standing);
  refresh_measured (self, param);
  rw_mark_show (RW_MARK (self->mark), rw_document_finding_for (self->document, param->id),
                rw_document_style (self->document));
}

void
rw_form_row_mark (RwFormRow *self, gboolean marked)
{
  rw_look_set (GTK_WIDGET (self), "marked", marked);
}
