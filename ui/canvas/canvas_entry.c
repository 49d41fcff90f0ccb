#include "canvas_private.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/standing.h"
#include "base/words.h"

static void
on_closed (RwCanvas *self)
{
  GtkWidget *popover = g_steal_pointer (&self->popover);

  self->entry = self->complaint = NULL;
  gtk_widget_unparent (popover);
  gtk_widget_grab_focus (GTK_WIDGET (self));
}

static void
on_activate (RwCanvas *self)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->entry));
  g_autoptr (GError) error = NULL;

  rw_document_settle (self->document);
  if (!rw_document_set_text (self->document, self->popover_param, text, &error))
    {
      gtk_label_set_text (GTK_LABEL (self->complaint), error->message);
      gtk_widget_set_visible (self->complaint, TRUE);
      gtk_widget_error_bell (self->entry);
      return;
    }
  rw_document_settle (self->document);
  gtk_popover_popdown (GTK_POPOVER (self->popover));
}

static GtkWidget *
wrapped (const char *text, const char *css_class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 40);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  return label;
}

/* As much of a place as is in sight, or what is next to it: pointing off the screen, a popover is squeezed to
 * nothing. */
static GdkRectangle
in_sight (RwCanvas *self, graphene_rect_t place)
{
  double right = gtk_widget_get_width (GTK_WIDGET (self)) - 1, low = gtk_widget_get_height (GTK_WIDGET (self)) - 1;
  double x0 = CLAMP (place.origin.x, 0, right), x1 = CLAMP (place.origin.x + place.size.width, 0, right);
  double y0 = CLAMP (place.origin.y, 0, low), y1 = CLAMP (place.origin.y + place.size.height, 0, low);

  return (GdkRectangle){ (int) floor (x0), (int) floor (y0), MAX ((int) ceil (x1 - x0), 1),
                         MAX ((int) ceil (y1 - y0), 1) };
}

static void
open_over (RwCanvas *self, GtkWidget *content, graphene_rect_t place)
{
  GdkRectangle at = in_sight (self, place);

  self->popover = gtk_popover_new ();
  gtk_popover_set_child (GTK_POPOVER (self->popover), content);
  gtk_popover_set_pointing_to (GTK_POPOVER (self->popover), &at);
  gtk_widget_set_parent (self->popover, GTK_WIDGET (self));
  g_signal_connect_object (self->popover, "closed", G_CALLBACK (on_closed), self, G_CONNECT_SWAPPED);
  gtk_popover_popup (GTK_POPOVER (self->popover));
}

static GtkWidget *
box_with (GtkWidget *title)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);

  gtk_box_append (GTK_BOX (box), title);
  return box;
}

static void
open_entry (RwCanvas *self, RwParamId id, graphene_rect_t place)
{
  const RwParam *param = rw_param (id);
  RwStyle style = rw_document_style (self->document);
  g_autofree char *text = rw_entry_text (rw_document_design (self->document), id, style);
  g_autofree char *range = rw_range_words (param, style);
  GtkWidget *title = wrapped (_(param->label), NULL), *box = box_with (title);

  self->popover_param = id;
  self->entry = gtk_entry_new ();
  gtk_widget_set_direction (self->entry, GTK_TEXT_DIR_LTR);
  gtk_editable_set_text (GTK_EDITABLE (self->entry), text);
  gtk_accessible_update_relation (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_RELATION_LABELLED_BY, title, NULL,
                                  -1);
  g_signal_connect_object (self->entry, "activate", G_CALLBACK (on_activate), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (box), self->entry);
  if (range != NULL)
    gtk_box_append (GTK_BOX (box), wrapped (range, "dim-label"));
  self->complaint = wrapped ("", "error");
  gtk_widget_set_visible (self->complaint, FALSE);
  gtk_box_append (GTK_BOX (box), self->complaint);

  open_over (self, box, place);
  gtk_widget_grab_focus (self->entry);
  gtk_editable_select_region (GTK_EDITABLE (self->entry), 0, -1);
}

/* What can't be typed says what it follows from. */
static void
open_reason (RwCanvas *self, const char *name, const char *reason, graphene_rect_t place)
{
  GtkWidget *box = box_with (wrapped (name, NULL));

  gtk_box_append (GTK_BOX (box), wrapped (reason, "dim-label"));
  open_over (self, box, place);
}

static void
explain_slot (RwCanvas *self, RwSlot slot, graphene_rect_t place)
{
  g_autofree char *label = rw_slot_words (slot);
  g_autofree char *reason = g_strdup_printf (_("Worked out: %s"), _(rw_slot_dim (slot)->definition));

  open_reason (self, label, reason, place);
}

void
rw_canvas_ask (RwCanvas *self, RwSubject subject, graphene_rect_t place)
{
  int param = subject.param >= 0 ? subject.param
              : subject.slot >= 0 ? rw_param_find (rw_slot_dim ((RwSlot) subject.slot)->id) : -1;
  RwStanding standing;

  if (self->popover != NULL)
    return;
  if (param < 0)
    {
      if (subject.slot >= 0)
        explain_slot (self, (RwSlot) subject.slot, place);
      return;
    }
  standing = rw_standing (param, rw_document_now (self->document));
  if (standing.kind != RW_STANDING_SET)
    open_reason (self, _(rw_param (param)->label), standing.why != NULL ? _(standing.why) : "", place);
  else if (rw_param_is_number (rw_param (param)) || rw_param (param)->kind == RW_KIND_LENGTH_LIST)
    open_entry (self, param, place);
}
