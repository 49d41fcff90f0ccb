#include "temper_bar.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/access.h"
#include "base/drop_down.h"
#include "base/words.h"
#include "base/wrap_box.h"
#include "model/slots.h"
#include "study/temperament.h"

struct _RwTemperBar
{
  GtkBox parent;

  RwDocument *document;
  GtkWidget  *names, *slots, *keys, *says, *apply;
  RwCentsList steps; /* of the build, as they were last shown */
  int         way, key;
  gboolean    filled;  /* has shown a build */
  gboolean    filling; /* not the maker */
  RwResult    then;
};

G_DEFINE_FINAL_TYPE (RwTemperBar, rw_temper_bar, GTK_TYPE_BOX)

enum
{
  CHANGED,
  SIGNAL_COUNT,
};

static guint signals[SIGNAL_COUNT];

/* ---- what is offered ---- */

static void
offer_options (GtkWidget *drop_down, RwParamId id, int chosen)
{
  g_autoptr (GPtrArray) words = g_ptr_array_new ();

  for (int place = 0; place < rw_choice_count (rw_param (id)); place++)
    g_ptr_array_add (words, (char *) rw_choice_words (rw_param (id), place));
  rw_drop_down_fill (drop_down, words, (guint) chosen);
}

/* Steps that are none of those with a name come first, as they are. */
static void
offer_temperaments (RwTemperBar *self)
{
  g_autoptr (GPtrArray) words = g_ptr_array_new ();
  int now = rw_temperament_of (&self->steps);

  for (int t = 0; t < rw_temperaments_count; t++)
    g_ptr_array_add (words, (char *) _(rw_temperaments[t].label));
  if (now < 0)
    g_ptr_array_add (words, (char *) _("As it is"));
  rw_drop_down_fill (self->names, words, now < 0 ? (guint) rw_temperaments_count : (guint) now);
}

static gboolean
same_steps (const RwCentsList *a, const RwCentsList *b)
{
  for (int i = 0; i < MAX (a->count, b->count); i++)
    if (fabs ((i < a->count ? a->at[i] : 0) - (i < b->count ? b->at[i] : 0)) > 1e-9)
      return FALSE;
  return TRUE;
}

/* A build of other steps is shown as it is. */
static void
follow_build (RwTemperBar *self)
{
  const RwDesign *d = rw_document_design (self->document);

  if (self->filled && same_steps (&d->frets_temperament, &self->steps) && self->way == d->frets_slots
      && self->key == d->frets_key)
    return;
  self->steps = d->frets_temperament;
  self->way = d->frets_slots;
  self->key = d->frets_key;
  self->filled = self->filling = TRUE;
  offer_temperaments (self);
  offer_options (self->slots, RW_P_frets_slots, self->way);
  offer_options (self->keys, RW_P_frets_key, self->key);
  self->filling = FALSE;
}

/* ---- the answer ---- */

static void
put_chosen (RwTemperBar *self, RwDesign *design)
{
  guint name = gtk_drop_down_get_selected (GTK_DROP_DOWN (self->names));

  design->frets_temperament = name < (guint) rw_temperaments_count ? rw_temperament_steps (&rw_temperaments[name])
                                                                   : self->steps;
  design->frets_slots = (int) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->slots));
  design->frets_key = (int) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->keys));
}

/* How far the slots move that move most, of the build as it is. */
static double
most_moved (const RwResult *now, const RwResult *then)
{
  const RwPlan *plan = &then->plan;
  double most = 0;

  for (int i = 1; i <= plan->strings; i++)
    for (int n = i > plan->full ? (int) then->used.fifth_start_fret + 1 : 1; n <= plan->last; n++)
      most = fmax (most, fabs (rw_slot_place (then, i, n) - rw_slot_place (now, i, n)));
  return most;
}

static int
frets_in_pieces (const RwResult *then)
{
  RwSlotPiece pieces[RW_STRINGS_MAX];
  int count = 0;

  for (int n = 1; n <= then->plan.last; n++)
    count += rw_slot_pieces (then, n, pieces) > 1;
  return count;
}

static void
say (RwTemperBar *self)
{
  const RwResult *now = rw_document_now (self->document);
  double most = most_moved (now, &self->then);
  int pieces = frets_in_pieces (&self->then);
  g_autofree char *by = rw_number_words (most, "mm", rw_document_style (self->document));
  g_autofree char *moved = most > 0.005 ? g_strdup_printf (_("Slots move by up to %s."), by) : NULL;
  g_autofree char *sawn = pieces == 0 ? NULL
                                      : g_strdup_printf (ngettext ("%d fret is in pieces.", "%d frets are in pieces.",
                                                                   (gulong) pieces),
                                                         pieces);
  g_autofree char *both = g_strdup_printf ("%s %s", moved != NULL ? moved : "", sawn != NULL ? sawn : "");

  gtk_label_set_text (GTK_LABEL (self->says), g_strstrip (both));
  gtk_widget_set_sensitive (self->keys, self->then.used.frets_slots == RW_SLOTS_OWN);
  gtk_widget_set_sensitive (self->apply, !same_steps (&self->then.used.frets_temperament, &self->steps)
                                           || self->then.used.frets_slots != self->way
                                           || self->then.used.frets_key != self->key);
}

RwStudy *
rw_temper_bar_study (RwTemperBar *self, RwTranslate translate)
{
  RwDesign design = *rw_document_design (self->document);

  follow_build (self);
  put_chosen (self, &design);
  rw_solve (&design, rw_document_measured (self->document), &self->then);
  say (self);
  return rw_study_new (RW_STUDY_TEMPERAMENT, &self->then, translate);
}

/* ---- what the maker does ---- */

static void
on_changed (RwTemperBar *self)
{
  if (!self->filling)
    g_signal_emit (self, signals[CHANGED], 0);
}

static void
on_apply (RwTemperBar *self)
{
  RwProject *project = rw_project_copy (rw_document_project (self->document));

  put_chosen (self, &project->design);
  rw_document_put_project (self->document, project, _("Another temperament"));
}

/* ---- making and unmaking ---- */

static void
rw_temper_bar_dispose (GObject *object)
{
  g_clear_object (&RW_TEMPER_BAR (object)->document);
  G_OBJECT_CLASS (rw_temper_bar_parent_class)->dispose (object);
}

static void
rw_temper_bar_class_init (RwTemperBarClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_temper_bar_dispose;
  signals[CHANGED] = g_signal_new ("changed", RW_TYPE_TEMPER_BAR, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 0);
}

static void
rw_temper_bar_init (RwTemperBar *self)
{
  GtkWidget *asked = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8), *bar;

  gtk_widget_add_css_class (GTK_WIDGET (self), "strip");
  self->names = rw_drop_down_new (_("Temperament"), G_CALLBACK (on_changed), self);
  self->slots = rw_drop_down_new (_("Slots"), G_CALLBACK (on_changed), self);
  self->keys = rw_drop_down_new (_("Keynote"), G_CALLBACK (on_changed), self);
  self->apply = gtk_button_new_with_label (_("Apply"));
  rw_access_describe (self->apply, _("Puts this temperament into the build"));
  g_signal_connect_object (self->apply, "clicked", G_CALLBACK (on_apply), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (asked), self->names);
  gtk_box_append (GTK_BOX (asked), self->slots);
  gtk_box_append (GTK_BOX (asked), self->keys);
  gtk_box_append (GTK_BOX (asked), self->apply);

  self->says = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (self->says), TRUE);
  gtk_label_set_xalign (GTK_LABEL (self->says), 0);
  bar = rw_wrap_box_new (asked, self->says);
  gtk_widget_set_hexpand (bar, TRUE);
  gtk_box_append (GTK_BOX (self), bar);
}

GtkWidget *
rw_temper_bar_new (RwDocument *document)
{
  RwTemperBar *self = g_object_new (RW_TYPE_TEMPER_BAR, NULL);

  self->document = g_object_ref (document);
  return GTK_WIDGET (self);
}
