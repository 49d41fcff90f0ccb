#include "number_entry.h"

#include "look.h"

struct _RwNumberEntry
{
  GtkEntry parent;

  RwRange  range;
  char    *label;
  RwStyle  style;
  double   value;
  gboolean filling;
  gboolean edited; /* the text is the maker's and not yet taken */
};

G_DEFINE_FINAL_TYPE (RwNumberEntry, rw_number_entry, GTK_TYPE_ENTRY)

static guint entered_signal;

static void
complain (RwNumberEntry *self, const char *message)
{
  rw_look_refused (GTK_WIDGET (self), message != NULL);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self), message);
}

static void
fill (RwNumberEntry *self)
{
  g_autofree char *text = rw_number_with_unit (self->value, self->range.unit, self->style);

  self->filling = TRUE;
  gtk_editable_set_text (GTK_EDITABLE (self), text);
  self->filling = FALSE;
  self->edited = FALSE;
  complain (self, NULL);
}

/* What can't be read stays to be mended, and the value as it was. */
static void
take_text (RwNumberEntry *self)
{
  g_autoptr (GError) error = NULL;
  double value = self->value;

  if (!self->edited)
    return;
  if (!rw_range_read (&self->range, gtk_editable_get_text (GTK_EDITABLE (self)), self->style, self->label,
                      &value, &error))
    {
      complain (self, error->message);
      return;
    }
  self->value = value;
  fill (self);
  g_signal_emit (self, entered_signal, 0);
}

static void
on_changed (RwNumberEntry *self)
{
  if (self->filling)
    return;
  self->edited = TRUE;
  complain (self, NULL);
}

static void
rw_number_entry_finalize (GObject *object)
{
  g_free (RW_NUMBER_ENTRY (object)->label);
  G_OBJECT_CLASS (rw_number_entry_parent_class)->finalize (object);
}

static void
rw_number_entry_class_init (RwNumberEntryClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = rw_number_entry_finalize;
  entered_signal = g_signal_new ("entered", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                 G_TYPE_NONE, 0);
}

static void
rw_number_entry_init (RwNumberEntry *self)
{
  GtkEventController *focus = gtk_event_controller_focus_new ();

  /* Figures read from left to right in every language. */
  gtk_widget_set_direction (GTK_WIDGET (self), GTK_TEXT_DIR_LTR);
  gtk_editable_set_width_chars (GTK_EDITABLE (self), 9);
  gtk_entry_set_alignment (GTK_ENTRY (self), 1);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (take_text), self);
  gtk_widget_add_controller (GTK_WIDGET (self), focus);
  g_signal_connect (self, "activate", G_CALLBACK (take_text), NULL);
  g_signal_connect (self, "changed", G_CALLBACK (on_changed), NULL);
}

GtkWidget *
rw_number_entry_new (const RwRange *range, const char *label)
{
  RwNumberEntry *self = g_object_new (RW_TYPE_NUMBER_ENTRY, NULL);

  self->range = *range;
  self->label = g_strdup (label);
  return GTK_WIDGET (self);
}

void
rw_number_entry_set_style (RwNumberEntry *self, RwStyle style)
{
  self->style = style;
  fill (self);
}

void
rw_number_entry_set_value (RwNumberEntry *self, double value)
{
  self->value = value;
  fill (self);
}

double
rw_number_entry_value (RwNumberEntry *self)
{
  return self->value;
}
