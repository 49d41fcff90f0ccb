#include "tuning_bar.h"

#include <glib/gi18n.h>
#include <math.h>
#include <string.h>

#include "base/access.h"
#include "base/drop_down.h"
#include "base/look.h"
#include "base/words.h"
#include "base/wrap_box.h"
#include "model/retune.h"

struct _RwTuningBar
{
  GtkBox parent;

  RwDocument *document;
  GtkWidget  *names, *notes, *capo, *says, *apply;
  GArray     *offered; /* of int: rows of rw_tunings that the first drop-down offers after "as it is" */
  char       *set;     /* the strings that it is offered for, as notes */
  int         last;    /* fret that a capo goes to */
  gboolean    filling; /* not the maker */
  RwResult    then;
};

G_DEFINE_FINAL_TYPE (RwTuningBar, rw_tuning_bar, GTK_TYPE_BOX)

enum
{
  CHANGED,
  SIGNAL_COUNT,
};

static guint signals[SIGNAL_COUNT];

/* ---- what is offered ---- */

static void
offer_tunings (RwTuningBar *self, const RwStringSet *set)
{
  g_autoptr (GPtrArray) words = g_ptr_array_new ();

  g_array_set_size (self->offered, 0);
  g_ptr_array_add (words, (char *) _("As it is"));
  for (int i = 0; i < rw_tunings_count; i++)
    if (rw_tuning_fits (&rw_tunings[i], set))
      {
        g_array_append_val (self->offered, i);
        g_ptr_array_add (words, (char *) _(rw_tunings[i].label));
      }
  rw_drop_down_fill (self->names, words, 0);
}

static void
offer_frets (RwTuningBar *self, int last)
{
  g_autoptr (GPtrArray) words = g_ptr_array_new_with_free_func (g_free);

  self->last = last;
  g_ptr_array_add (words, g_strdup (_("No capo")));
  for (int n = 1; n <= last; n++)
    g_ptr_array_add (words, g_strdup_printf (_("Capo at fret %d"), n));
  rw_drop_down_fill (self->capo, words, 0);
}

/* Other strings are offered other tunings, and are shown as they are. */
static void
follow_build (RwTuningBar *self)
{
  const RwResult *now = rw_document_now (self->document);
  g_autofree char *notes = rw_tuning_of (&now->used.strings_set);

  self->filling = TRUE;
  if (g_strcmp0 (notes, self->set) != 0)
    {
      offer_tunings (self, &now->used.strings_set);
      gtk_editable_set_text (GTK_EDITABLE (self->notes), notes);
      g_free (self->set);
      self->set = g_steal_pointer (&notes);
    }
  if (now->plan.last != self->last)
    offer_frets (self, now->plan.last);
  self->filling = FALSE;
}

/* ---- the answer ---- */

/* "Action at fret 12 2.31 mm, was 2.40 mm. ..." */
static void
append_change (RwTuningBar *self, GString *out, RwSlot slot)
{
  const RwResult *now = rw_document_now (self->document);
  const char *unit = rw_slot_dim (slot)->unit;
  RwStyle style = rw_document_style (self->document);
  g_autofree char *label = rw_slot_words (slot);
  g_autofree char *before = rw_number_words (now->value[slot], unit, style);
  g_autofree char *after = rw_number_words (self->then.value[slot], unit, style);

  if (isfinite (now->value[slot]) && isfinite (self->then.value[slot]) && strcmp (before, after) != 0)
    g_string_append_printf (out, _("%s: %s, was %s. "), label, after, before);
}

/* The fret of the capo; 0: none. */
static int
chosen_capo (RwTuningBar *self)
{
  int fret = (int) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->capo));

  return fret <= self->last ? fret : 0;
}

static void
append_capo (RwTuningBar *self, GString *out)
{
  int fret = chosen_capo (self);
  g_autofree char *place = NULL, *pull = NULL;
  RwCapo capo;

  if (fret < 1)
    return;
  rw_capo (&self->then, fret, &capo);
  if (capo.spike == 0)
    return;
  if (!isfinite (capo.spike_x))
    {
      g_string_append (out, _("The short string can’t follow the capo: the board has no fret there. "));
      return;
    }
  place = rw_number_words (capo.spike_x, "mm", rw_document_style (self->document));
  pull = rw_number_words (capo.peg_pull, "N", rw_document_style (self->document));
  g_string_append_printf (out, _("The short string’s spike goes behind fret %d, %s from the nut. "), capo.spike,
                          place);
  g_string_append_printf (out, _("Tuned up at its peg instead it pulls %s. "), pull);
}

static void
say (RwTuningBar *self, const char *error)
{
  g_autoptr (GString) text = g_string_new (error);

  if (error == NULL)
    {
      append_capo (self, text);
      append_change (self, text, (RwSlot) (RW_SETUP_ACTION + 12));
      append_change (self, text, RW_BRIDGE_SAG);
      append_change (self, text, RW_BRIDGE_DOWN_FORCE);
    }
  gtk_label_set_text (GTK_LABEL (self->says), text->str);
  gtk_widget_set_sensitive (self->apply, error == NULL);
  rw_look_refused (self->notes, error != NULL);
}

RwStudy *
rw_tuning_bar_study (RwTuningBar *self, RwTranslate translate)
{
  const RwResult *now = rw_document_now (self->document);
  g_autoptr (GError) error = NULL;
  g_auto (GStrv) notes = NULL;
  const char *each[RW_STRINGS_MAX] = { NULL };

  follow_build (self);
  self->then = *now;
  notes = rw_tuning_read (gtk_editable_get_text (GTK_EDITABLE (self->notes)), &now->used.strings_set, &error);
  for (int i = 0; notes != NULL && notes[i] != NULL; i++)
    each[i] = notes[i];
  if (notes != NULL && !rw_retune (now, rw_document_measured (self->document), each, &self->then, &error))
    self->then = *now;
  say (self, error != NULL ? error->message : NULL);
  return rw_study_tuning (now, &self->then, chosen_capo (self), translate);
}

/* ---- what the maker does ---- */

static void
on_changed (RwTuningBar *self)
{
  if (!self->filling)
    g_signal_emit (self, signals[CHANGED], 0);
}

static void
on_name (RwTuningBar *self)
{
  guint place = gtk_drop_down_get_selected (GTK_DROP_DOWN (self->names));

  if (self->filling || place > self->offered->len)
    return;
  gtk_editable_set_text (GTK_EDITABLE (self->notes),
                         place == 0 ? self->set
                                    : rw_tunings[g_array_index (self->offered, int, place - 1)].notes);
}

static void
on_apply (RwTuningBar *self)
{
  RwProject *project;

  if (!gtk_widget_get_sensitive (self->apply))
    return;
  project = rw_project_copy (rw_document_project (self->document));
  project->design.strings_set = self->then.used.strings_set;
  rw_document_put_project (self->document, project, _("Another tuning"));
}

/* ---- making and unmaking ---- */

static void
rw_tuning_bar_dispose (GObject *object)
{
  g_clear_object (&RW_TUNING_BAR (object)->document);
  G_OBJECT_CLASS (rw_tuning_bar_parent_class)->dispose (object);
}

static void
rw_tuning_bar_finalize (GObject *object)
{
  g_array_unref (RW_TUNING_BAR (object)->offered);
  g_free (RW_TUNING_BAR (object)->set);
  G_OBJECT_CLASS (rw_tuning_bar_parent_class)->finalize (object);
}

static void
rw_tuning_bar_class_init (RwTuningBarClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_tuning_bar_dispose;
  G_OBJECT_CLASS (klass)->finalize = rw_tuning_bar_finalize;
  signals[CHANGED] = g_signal_new ("changed", RW_TYPE_TUNING_BAR, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 0);
}

static void
rw_tuning_bar_init (RwTuningBar *self)
{
  GtkWidget *asked = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8), *bar;

  self->offered = g_array_new (FALSE, FALSE, sizeof (int));
  self->last = -1;
  gtk_widget_add_css_class (GTK_WIDGET (self), "strip");
  self->names = rw_drop_down_new (_("Tuning"), G_CALLBACK (on_name), self);
  gtk_box_append (GTK_BOX (asked), self->names);

  self->notes = gtk_entry_new ();
  gtk_editable_set_width_chars (GTK_EDITABLE (self->notes), 16);
  rw_access_name (self->notes, _("Notes"));
  rw_access_describe (self->notes, _("From the 1st string on: notes like D4 or F#3, or frequencies in Hz"));
  gtk_widget_set_tooltip_text (self->notes, _("From the 1st string on: notes like D4 or F#3, or frequencies in Hz"));
  g_signal_connect_object (self->notes, "changed", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->notes, "activate", G_CALLBACK (on_apply), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (asked), self->notes);
  self->capo = rw_drop_down_new (_("Capo"), G_CALLBACK (on_changed), self);
  gtk_box_append (GTK_BOX (asked), self->capo);

  self->apply = gtk_button_new_with_label (_("Apply"));
  rw_access_describe (self->apply, _("Puts these notes into the build"));
  g_signal_connect_object (self->apply, "clicked", G_CALLBACK (on_apply), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (asked), self->apply);

  self->says = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (self->says), TRUE);
  gtk_label_set_xalign (GTK_LABEL (self->says), 0);
  bar = rw_wrap_box_new (asked, self->says);
  gtk_widget_set_hexpand (bar, TRUE);
  gtk_box_append (GTK_BOX (self), bar);
}

GtkWidget *
rw_tuning_bar_new (RwDocument *document)
{
  RwTuningBar *self = g_object_new (RW_TYPE_TUNING_BAR, NULL);

  self->document = g_object_ref (document);
  return GTK_WIDGET (self);
}
