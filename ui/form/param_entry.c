#include "param_entry.h"

#include <math.h>

#include "base/look.h"
#include "base/standing.h"
#include "base/words.h"

/* A pause this long in typing means that the text is meant. */
#define PAUSE_MS 700

struct _RwParamEntry
{
  GtkEntry parent;

  RwDocument *document;
  RwParamId   id;
  RwDesign   *before; /* the design when the focus came, for Escape */
  gboolean    edited; /* the text is the maker's and not yet settled */
  gboolean    filling;
  guint       pause;
};

G_DEFINE_FINAL_TYPE (RwParamEntry, rw_param_entry, GTK_TYPE_ENTRY)

static guint complaint_signal;

static void
complain (RwParamEntry *self, const char *message)
{
  rw_look_refused (GTK_WIDGET (self), message != NULL);
  g_signal_emit (self, complaint_signal, 0, message);
}

/* The text as the design has it; what is worked out from others shows what came of it. */
static char *
present_text (RwParamEntry *self)
{
  RwStyle style = rw_document_style (self->document);
  RwStanding standing = rw_standing (self->id, rw_document_now (self->document));

  if (standing.kind != RW_STANDING_WORKED_OUT)
    return rw_entry_text (rw_document_design (self->document), self->id, style);
  return isfinite (standing.value) ? rw_number_bare (standing.value, rw_param (self->id)->unit, style)
                                   : g_strdup ("–");
}

static void
fill (RwParamEntry *self)
{
  g_autofree char *text = present_text (self);

  if (g_str_equal (text, gtk_editable_get_text (GTK_EDITABLE (self))))
    return;
  self->filling = TRUE;
  gtk_editable_set_text (GTK_EDITABLE (self), text);
  self->filling = FALSE;
}

static void
remember (RwParamEntry *self)
{
  g_free (self->before);
  self->before = g_memdup2 (rw_document_design (self->document), sizeof *self->before);
}

/* Puts the text into the design.  Where it can't, the design has again what it had before the edit: "200 q"
 * must not leave the "20" behind that was read on the way.  aloud: and it is said why. */
static gboolean
try_text (RwParamEntry *self, gboolean aloud)
{
  g_autoptr (GError) error = NULL;

  if (rw_document_set_text (self->document, self->id, gtk_editable_get_text (GTK_EDITABLE (self)), &error))
    {
      complain (self, NULL);
      return TRUE;
    }
  rw_document_put_back (self->document, self->id, self->before);
  if (aloud)
    complain (self, error->message);
  return FALSE;
}

/* Ends an edit.  TRUE: the text was good. */
static gboolean
settle (RwParamEntry *self)
{
  g_clear_handle_id (&self->pause, g_source_remove);
  if (!self->edited)
    return TRUE;
  if (!try_text (self, TRUE))
    return FALSE;
  self->edited = FALSE;
  rw_document_settle (self->document);
  fill (self);
  return TRUE;
}

/* A bad text gives way to the last good value; the complaint stays to be read. */
static void
settle_for_good (RwParamEntry *self)
{
  if (settle (self))
    return;
  self->edited = FALSE;
  rw_document_settle (self->document);
  fill (self);
  rw_look_refused (GTK_WIDGET (self), FALSE);
}

static gboolean
pause_over (gpointer user_data)
{
  RwParamEntry *self = user_data;

  self->pause = 0;
  if (self->edited)
    try_text (self, TRUE);
  return G_SOURCE_REMOVE;
}

static gboolean
settle_unfocused (gpointer user_data)
{
  RwParamEntry *self = user_data;

  self->pause = 0;
  settle_for_good (self);
  return G_SOURCE_REMOVE;
}

/* Text that comes without the focus, from a tool for people who can't type, is whole at once. */
static void
on_changed (RwParamEntry *self)
{
  gboolean typed = gtk_widget_get_state_flags (GTK_WIDGET (self)) & GTK_STATE_FLAG_FOCUS_WITHIN;

  if (self->filling)
    return;
  g_clear_handle_id (&self->pause, g_source_remove);
  if (!self->edited && !typed)
    remember (self);
  self->edited = TRUE;
  if (!typed)
    self->pause = g_idle_add (settle_unfocused, self);
  else if (!try_text (self, FALSE))
    self->pause = g_timeout_add (PAUSE_MS, pause_over, self);
}

static void
on_activate (RwParamEntry *self)
{
  if (!settle (self))
    return;
  remember (self);
  gtk_editable_select_region (GTK_EDITABLE (self), 0, -1);
}

static gboolean
put_back (RwParamEntry *self)
{
  if (!self->edited)
    return FALSE;
  g_clear_handle_id (&self->pause, g_source_remove);
  self->edited = FALSE;
  rw_document_put_back (self->document, self->id, self->before);
  rw_document_settle (self->document);
  complain (self, NULL);
  fill (self);
  gtk_editable_select_region (GTK_EDITABLE (self), 0, -1);
  return TRUE;
}

/* The table's step; in inches the fraction next to it. */
static double
step_of (const RwParam *param, RwStyle style)
{
  if (param->kind != RW_KIND_LENGTH || style.units == RW_UNITS_MM)
    return param->step;
  return param->step >= 0.5 ? RW_MM_PER_INCH / 32 : RW_MM_PER_INCH / 64;
}

static gboolean
nudge (RwParamEntry *self, double steps)
{
  const RwParam *param = rw_param (self->id);
  double step = step_of (param, rw_document_style (self->document)), value;

  if (!rw_param_is_number (param) || !gtk_editable_get_editable (GTK_EDITABLE (self)) || step <= 0
      || !settle (self))
    return FALSE;
  value = (round (rw_design_get (rw_document_design (self->document), self->id) / step) + steps) * step;
  rw_document_set_number (self->document, self->id, CLAMP (value, param->min, param->max), NULL);
  complain (self, NULL);
  fill (self);
  return TRUE;
}

static gboolean
on_key (RwParamEntry *self, guint key, guint code, GdkModifierType modifiers)
{
  if ((modifiers & gtk_accelerator_get_default_mod_mask ()) != 0)
    return GDK_EVENT_PROPAGATE;
  switch (key)
    {
    case GDK_KEY_Escape:
      return put_back (self);
    case GDK_KEY_Up:
      return nudge (self, 1);
    case GDK_KEY_Down:
      return nudge (self, -1);
    case GDK_KEY_Page_Up:
      return nudge (self, 10);
    case GDK_KEY_Page_Down:
      return nudge (self, -10);
    default:
      return GDK_EVENT_PROPAGATE;
    }
}

static void
rw_param_entry_dispose (GObject *object)
{
  RwParamEntry *self = RW_PARAM_ENTRY (object);

  g_clear_handle_id (&self->pause, g_source_remove);
  g_clear_object (&self->document);
  g_clear_pointer (&self->before, g_free);
  G_OBJECT_CLASS (rw_param_entry_parent_class)->dispose (object);
}

static void
rw_param_entry_class_init (RwParamEntryClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_param_entry_dispose;
  complaint_signal = g_signal_new ("complaint", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                                   NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
}

static void
rw_param_entry_init (RwParamEntry *self)
{
  GtkEventController *keys = gtk_event_controller_key_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  /* Figures read from left to right in every language. */
  gtk_widget_set_direction (GTK_WIDGET (self), GTK_TEXT_DIR_LTR);

  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (on_key), self);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);

  g_signal_connect_swapped (focus, "enter", G_CALLBACK (remember), self);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (settle_for_good), self);
  gtk_widget_add_controller (GTK_WIDGET (self), focus);

  g_signal_connect (self, "changed", G_CALLBACK (on_changed), NULL);
  g_signal_connect (self, "activate", G_CALLBACK (on_activate), NULL);
}

GtkWidget *
rw_param_entry_new (RwDocument *document, RwParamId id)
{
  RwParamEntry *self = g_object_new (RW_TYPE_PARAM_ENTRY, NULL);

  self->document = g_object_ref (document);
  self->id = id;
  if (rw_param_is_number (rw_param (id)))
    {
      gtk_editable_set_alignment (GTK_EDITABLE (self), 1);
      gtk_editable_set_width_chars (GTK_EDITABLE (self), 9);
      gtk_editable_set_max_width_chars (GTK_EDITABLE (self), 9);
    }
  fill (self);
  return GTK_WIDGET (self);
}

void
rw_param_entry_refresh (RwParamEntry *self)
{
  RwStanding standing = rw_standing (self->id, rw_document_now (self->document));
  gboolean worked_out = standing.kind == RW_STANDING_WORKED_OUT;

  gtk_editable_set_editable (GTK_EDITABLE (self), !worked_out);
  rw_look_set (GTK_WIDGET (self), "worked-out", worked_out);
  if (!self->edited)
    fill (self);
}
