#include "foot.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/mark.h"
#include "base/standing.h"
#include "base/words.h"
#include "base/wrap_box.h"
#include "check/acceptance.h"

/* What is told of the pointer keeps its width, so that nothing jumps. */
#define MESSAGE_CHARS 24
#define POINTER_CHARS 18
#define SCALE_CHARS 9
#define SPACING 8

enum
{
  ACTION,
  LANDING,
  ANGLE,
  RESULT_COUNT,
};

struct _RwFoot
{
  GtkBox parent;

  RwDocument *document;
  GtkWidget  *results[RESULT_COUNT]; /* buttons */
  GtkWidget  *findings;              /* a button round: */
  GtkWidget  *marks[3], *counts[3];  /* by severity */
  GtkWidget  *nothing;
  GtkWidget  *message, *pointer, *scale;
};

G_DEFINE_FINAL_TYPE (RwFoot, rw_foot, GTK_TYPE_BOX)

enum
{
  RESULT_PRESSED,
  FINDINGS_PRESSED,
  SIGNAL_COUNT,
};

static guint signals[SIGNAL_COUNT];

/* ---- results ---- */

static int
slot_of (RwFoot *self, int result)
{
  switch (result)
    {
    case ACTION:
      return RW_SETUP_ACTION + (int) rw_document_now (self->document)->used.setup_action_fret;
    case LANDING:
      return RW_BRIDGE_LANDING;
    default:
      return RW_NECK_ANGLE;
    }
}

static void
on_result (GtkWidget *button, RwFoot *self)
{
  for (int i = 0; i < RESULT_COUNT; i++)
    if (self->results[i] == button)
      g_signal_emit (self, signals[RESULT_PRESSED], 0, slot_of (self, i));
}

/* Slanted where it was worked out, underlined where measured, plain where it is the maker's own. */
static void
show_result (RwFoot *self, int result, const char *text, RwParamId id)
{
  const RwMeasured *measured = rw_document_measured (self->document);
  gboolean given = (int)id >= 0 && rw_standing (id, rw_document_now (self->document)).kind == RW_STANDING_SET;
  gboolean found
      = !isnan (measured->slot[slot_of (self, result)]) || ((int)id >= 0 && !isnan (measured->param[id]));
  GtkWidget *label = gtk_button_get_child (GTK_BUTTON (self->results[result]));

  gtk_widget_remove_css_class (label, "worked-out");
  gtk_widget_remove_css_class (label, "measured");
  if (found)
    gtk_widget_add_css_class (label, "measured");
  else if (!given)
    gtk_widget_add_css_class (label, "worked-out");
  gtk_label_set_text (GTK_LABEL (label), text);
}

static void
refresh_action (RwFoot *self, const RwResult *now, RwStyle style)
{
  int fret = (int) now->used.setup_action_fret;
  double listed = now->value[RW_SETUP_ACTION + fret]; /* measured where it was; not every fret is in the list */
  g_autofree char *number = rw_number_words (isnan (listed) ? now->side.action : listed, "mm", style);
  g_autofree char *text = isnan (now->side.action) ? g_strdup (_("Action can’t be worked out"))
                                                   : g_strdup_printf (_("Action at %d: %s"), fret, number);

  show_result (self, ACTION, text, RW_P_setup_action);
}

static void
refresh_landing (RwFoot *self, const RwResult *now, RwStyle style)
{
  double share = now->value[RW_BRIDGE_LANDING];
  g_autofree char *number = rw_number_bare (share, "", style);
  g_autofree char *text = isnan (share) ? g_strdup (_("Bridge off the head"))
                                        : g_strdup_printf (_("Bridge lands at %s of the head"), number);

  show_result (self, LANDING, text, (RwParamId) -1);
}

static void
refresh_angle (RwFoot *self, const RwResult *now, RwStyle style)
{
  double angle = now->value[RW_NECK_ANGLE];
  g_autofree char *number = rw_number_words (angle, "deg", style);
  g_autofree char *text
      = isnan (angle) ? g_strdup (_("No neck angle")) : g_strdup_printf (_("Neck angle %s"), number);

  show_result (self, ANGLE, text, RW_P_neck_angle);
}

/* ---- findings ---- */

static char *
count_words (RwSeverity severity, int count)
{
  switch (severity)
    {
    case RW_STOP:
      return g_strdup_printf (ngettext ("%d stop", "%d stops", count), count);
    case RW_CAUTION:
      return g_strdup_printf (ngettext ("%d caution", "%d cautions", count), count);
    case RW_NOTE:
      return g_strdup_printf (ngettext ("%d note", "%d notes", count), count);
    }
  g_return_val_if_reached (NULL);
}

static void
refresh_findings (RwFoot *self)
{
  const GPtrArray *findings = rw_document_findings (self->document);
  int all = 0;

  for (int i = 0; i < 3; i++)
    {
      int count = (int) rw_findings_open (findings, (RwSeverity) i);
      g_autofree char *text = count_words (i, count);

      gtk_label_set_text (GTK_LABEL (self->counts[i]), text);
      gtk_widget_set_visible (self->counts[i], count > 0);
      gtk_widget_set_visible (self->marks[i], count > 0);
      all += count;
    }
  gtk_widget_set_visible (self->nothing, all == 0);
}

static void
on_findings (RwFoot *self)
{
  g_signal_emit (self, signals[FINDINGS_PRESSED], 0);
}

static void
on_changed (RwFoot *self)
{
  const RwResult *now = rw_document_now (self->document);
  RwStyle style = rw_document_style (self->document);

  refresh_action (self, now, style);
  refresh_landing (self, now, style);
  refresh_angle (self, now, style);
  refresh_findings (self);
}

/* ---- making and unmaking ---- */

static GtkWidget *
flat_button (GtkWidget *child, const char *tooltip)
{
  GtkWidget *button = gtk_button_new ();

  gtk_button_set_child (GTK_BUTTON (button), child);
  gtk_button_set_has_frame (GTK_BUTTON (button), FALSE);
  gtk_widget_set_tooltip_text (button, tooltip);
  return button;
}

static GtkWidget *
build_findings (RwFoot *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);

  for (int i = 0; i < 3; i++)
    {
      self->marks[i] = rw_mark_new (i);
      self->counts[i] = gtk_label_new (NULL);
      gtk_box_append (GTK_BOX (box), self->marks[i]);
      gtk_box_append (GTK_BOX (box), self->counts[i]);
    }
  self->nothing = gtk_label_new (_("No findings"));
  gtk_box_append (GTK_BOX (box), self->nothing);
  self->findings = flat_button (box, _("Show the findings"));
  g_signal_connect_object (self->findings, "clicked", G_CALLBACK (on_findings), self, G_CONNECT_SWAPPED);
  return self->findings;
}

/* Words that may be cut short where the text is large and the window is not. */
static GtkWidget *
short_label (void)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  return label;
}

static GtkWidget *
add_note (GtkWidget *box, int chars, float align)
{
  GtkWidget *label = short_label ();

  gtk_label_set_xalign (GTK_LABEL (label), align);
  gtk_label_set_width_chars (GTK_LABEL (label), chars);
  gtk_label_set_max_width_chars (GTK_LABEL (label), chars);
  gtk_widget_add_css_class (label, "dim-label");
  gtk_box_append (GTK_BOX (box), label);
  return label;
}

static GtkWidget *
build_result (RwFoot *self, int result)
{
  GtkWidget *button = flat_button (short_label (), _("Show it in the list of dimensions"));

  self->results[result] = button;
  g_signal_connect_object (button, "clicked", G_CALLBACK (on_result), self, 0);
  return button;
}

static GtkWidget *
build_notes (RwFoot *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, SPACING);

  self->message = add_note (box, MESSAGE_CHARS, 0);
  gtk_widget_set_hexpand (self->message, TRUE);
  self->pointer = add_note (box, POINTER_CHARS, 1);
  self->scale = add_note (box, SCALE_CHARS, 1);
  gtk_widget_set_direction (self->scale, GTK_TEXT_DIR_LTR);
  return box;
}

static void
rw_foot_dispose (GObject *object)
{
  RwFoot *self = RW_FOOT (object);

  g_clear_object (&self->document);
  G_OBJECT_CLASS (rw_foot_parent_class)->dispose (object);
}

static void
rw_foot_class_init (RwFootClass *klass)
{
  GType type = G_TYPE_FROM_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = rw_foot_dispose;
  signals[RESULT_PRESSED] = g_signal_new ("result-pressed", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                          G_TYPE_NONE, 1, G_TYPE_INT);
  signals[FINDINGS_PRESSED] = g_signal_new ("findings-pressed", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                            G_TYPE_NONE, 0);
}

static void
rw_foot_init (RwFoot *self)
{
  GtkWidget *all = rw_wrap_box_new_empty (SPACING);

  for (int i = 0; i < RESULT_COUNT; i++)
    rw_wrap_box_append (RW_WRAP_BOX (all), build_result (self, i));
  rw_wrap_box_append (RW_WRAP_BOX (all), build_findings (self));
  rw_wrap_box_append (RW_WRAP_BOX (all), build_notes (self));
  gtk_widget_set_hexpand (all, TRUE);
  gtk_box_append (GTK_BOX (self), all);
  gtk_widget_add_css_class (GTK_WIDGET (self), "foot");
}

GtkWidget *
rw_foot_new (RwDocument *document)
{
  RwFoot *self = g_object_new (RW_TYPE_FOOT, NULL);

  self->document = g_object_ref (document);
  g_signal_connect_object (document, "noted", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  on_changed (self);
  return GTK_WIDGET (self);
}

/* ---- what others tell ---- */

void
rw_foot_set_pointer (RwFoot *self, const RwPoint *place)
{
  RwStyle style = rw_document_style (self->document);
  g_autofree char *x = NULL, *y = NULL, *text = NULL;

  if (place != NULL)
    {
      /* The pointer is not held to 1/64 in. */
      if (style.units == RW_UNITS_FRACTION)
        style.units = RW_UNITS_INCH;
      x = rw_quantity_write (place->x, "mm", style.units, 1, style.decimal);
      y = rw_quantity_write (place->y, "mm", style.units, 1, style.decimal);
      text = g_strdup_printf ("%s, %s %s", x, y, rw_quantity_unit ("mm", style.units));
    }
  gtk_label_set_text (GTK_LABEL (self->pointer), text != NULL ? text : "");
}

void
rw_foot_set_scale (RwFoot *self, double n)
{
  RwStyle style = rw_document_style (self->document);
  g_autofree char *number = rw_quantity_write (n, "", style.units, 2, style.decimal);
  g_autofree char *text = g_strdup_printf ("1 : %s", number);

  gtk_label_set_text (GTK_LABEL (self->scale), text);
}

void
rw_foot_hint (RwFoot *self, const char *text)
{
  gtk_label_set_text (GTK_LABEL (self->message), text != NULL ? text : "");
}
