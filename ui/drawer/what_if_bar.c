#include "what_if_bar.h"

#include <glib/gi18n.h>
#include <math.h>
#include <string.h>

#include "base/access.h"
#include "base/drop_down.h"
#include "base/look.h"
#include "base/words.h"
#include "base/wrap_box.h"

struct _RwWhatIfBar
{
  GtkBox parent;

  RwDocument *document;
  GtkWidget  *results, *params; /* drop-downs */
  GtkWidget  *wanted, *says, *apply;

  RwSlot    slots[RW_WHAT_IF_RESULTS]; /* what the first drop-down offers */
  int       slot_count;
  GArray   *movers; /* of RwParamId: what the second one offers */
  int       movers_of; /* slot; -1: not listed yet */
  gboolean  listing; /* the drop-downs are being filled */

  RwWhatIf       what; /* the last question and its answer */
  RwWhatIfAnswer answer;
};

G_DEFINE_FINAL_TYPE (RwWhatIfBar, rw_what_if_bar, GTK_TYPE_BOX)

enum
{
  CHANGED,
  SIGNAL_COUNT,
};

static guint signals[SIGNAL_COUNT];

static RwSlot
chosen_slot (RwWhatIfBar *self)
{
  guint place = gtk_drop_down_get_selected (GTK_DROP_DOWN (self->results));

  return self->slots[MIN (place, (guint) self->slot_count - 1)];
}

static RwParamId
chosen_param (RwWhatIfBar *self)
{
  guint place = gtk_drop_down_get_selected (GTK_DROP_DOWN (self->params));

  return place < self->movers->len ? g_array_index (self->movers, RwParamId, place) : RW_P_bridge_height;
}

/* ---- what can be asked ---- */

static RwWhatIf
ask (RwWhatIfBar *self, RwSlot slot, RwParamId param)
{
  return rw_what_if_new (rw_document_design (self->document), rw_document_measured (self->document),
                         rw_document_now (self->document), slot, param);
}

/* Fills a drop-down without the change being taken for the maker's. */
static void
fill (RwWhatIfBar *self, GtkWidget *drop_down, GPtrArray *words, guint chosen)
{
  self->listing = TRUE;
  rw_drop_down_fill (drop_down, words, chosen);
  self->listing = FALSE;
}

static void
list_results (RwWhatIfBar *self)
{
  g_autoptr (GPtrArray) words = g_ptr_array_new_with_free_func (g_free);
  RwSlot slots[RW_WHAT_IF_RESULTS], before = self->slot_count > 0 ? chosen_slot (self) : RW_SLOT_COUNT;
  int count = rw_what_if_results (rw_document_now (self->document), slots);
  guint chosen = 0;

  if (count == 0
      || (count == self->slot_count && memcmp (slots, self->slots, (gsize) count * sizeof slots[0]) == 0))
    return;
  self->slot_count = count;
  memcpy (self->slots, slots, sizeof slots);
  for (int i = 0; i < count; i++)
    {
      g_ptr_array_add (words, rw_slot_words (slots[i]));
      if (slots[i] == before)
        chosen = (guint) i;
    }
  fill (self, self->results, words, chosen);
}

/* Parameters that move the result: each is tried, which takes a few hundredths of a second in all. */
static void
list_movers (RwWhatIfBar *self)
{
  g_autoptr (GPtrArray) words = g_ptr_array_new_with_free_func (g_free);
  RwParamId before = chosen_param (self);
  RwSlot slot = chosen_slot (self);
  guint chosen = 0;

  if (self->movers_of == (int) slot)
    return;
  self->movers_of = (int) slot;
  g_array_set_size (self->movers, 0);
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    {
      const RwParam *param = rw_param (id);
      RwWhatIf what;

      if (!rw_param_is_number (param))
        continue;
      what = ask (self, slot, id);
      if (!rw_what_if_moves (&what))
        continue;
      if (id == before)
        chosen = self->movers->len;
      g_array_append_val (self->movers, id);
      g_ptr_array_add (words, g_strdup (_(param->label)));
    }
  fill (self, self->params, words, chosen);
}

/* ---- the answer ---- */

static double
wanted_value (RwWhatIfBar *self)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->wanted));
  const char *unit = rw_slot_dim (self->what.slot)->unit;
  RwStyle style = rw_document_style (self->document);
  const char *bare = style.units != RW_UNITS_MM && g_str_equal (unit, "mm") ? "in" : NULL;
  g_autoptr (GError) error = NULL;
  double value = NAN;

  if (*text != '\0' && !rw_quantity_read (text, unit, bare, style.decimal, &value, &error))
    value = NAN;
  rw_look_refused (self->wanted, error != NULL);
  gtk_widget_set_tooltip_text (self->wanted, error != NULL ? error->message : NULL);
  return value;
}

/* NULL: nothing is wanted. */
static char *
answer_words (RwWhatIfBar *self, double wanted)
{
  RwStyle style = rw_document_style (self->document);
  const RwParam *param = rw_param (self->what.param);
  const char *unit = rw_slot_dim (self->what.slot)->unit;
  g_autofree char *value = rw_number_words (self->answer.value, param->unit, style);
  g_autofree char *now = rw_number_words (self->what.now, param->unit, style);
  g_autofree char *result = rw_number_words (self->answer.result, unit, style);
  g_autofree char *low = rw_number_words (self->answer.low, unit, style);
  g_autofree char *high = rw_number_words (self->answer.high, unit, style);

  if (self->answer.reach == RW_WHAT_IF_NEVER)
    return g_strdup (_("This can’t be worked out for any value."));
  if (!isfinite (wanted))
    return NULL;
  switch (self->answer.reach)
    {
    case RW_WHAT_IF_REACHED:
      return g_strdup_printf (_("%s gives it; now it is %s."), value, now);
    case RW_WHAT_IF_NEAREST:
      return g_strdup_printf (_("%s comes nearest, with %s; now it is %s."), value, result, now);
    default:
      return g_strdup_printf (_("Out of reach: this gives %s to %s."), low, high);
    }
}

static void
say_answer (RwWhatIfBar *self, double wanted)
{
  g_autofree char *answer = answer_words (self, wanted);
  const char *english = rw_what_if_held (&self->what, rw_document_design (self->document));
  const char *held = english != NULL ? _(english) : NULL;
  g_autofree char *both = answer != NULL && held != NULL ? g_strdup_printf ("%s %s", answer, held) : NULL;
  const char *text = both != NULL ? both : answer != NULL ? answer : held;

  gtk_label_set_text (GTK_LABEL (self->says), text != NULL ? text : "");
  gtk_widget_set_sensitive (self->apply, isfinite (wanted) && isfinite (self->answer.value));
}

RwStudy *
rw_what_if_bar_study (RwWhatIfBar *self, RwTranslate translate)
{
  RwStudy *study;
  double wanted;

  list_results (self);
  if (self->slot_count == 0)
    return NULL;
  list_movers (self);
  self->what = ask (self, chosen_slot (self), chosen_param (self));
  wanted = wanted_value (self);
  study = rw_study_what_if (&self->what, wanted, &self->answer, translate);
  say_answer (self, wanted);
  return study;
}

/* ---- what the maker does ---- */

static void
on_chosen (RwWhatIfBar *self)
{
  if (!self->listing)
    g_signal_emit (self, signals[CHANGED], 0);
}

/* A number wanted of one result says nothing of another. */
static void
on_result (RwWhatIfBar *self)
{
  if (self->listing)
    return;
  gtk_editable_set_text (GTK_EDITABLE (self->wanted), "");
  on_chosen (self);
}

/* By the button, or by Enter in the entry, which may come when there is nothing to apply. */
static void
on_apply (RwWhatIfBar *self)
{
  RwProject *project;

  if (!gtk_widget_get_sensitive (self->apply))
    return;
  project = rw_project_copy (rw_document_project (self->document));
  if (rw_what_if_apply (&self->what, self->answer.value, &project->design))
    rw_document_put_project (self->document, project, _(rw_param (self->what.param)->label));
  else
    rw_project_free (project);
}

/* ---- making and unmaking ---- */

static void
rw_what_if_bar_dispose (GObject *object)
{
  g_clear_object (&RW_WHAT_IF_BAR (object)->document);
  G_OBJECT_CLASS (rw_what_if_bar_parent_class)->dispose (object);
}

static void
rw_what_if_bar_finalize (GObject *object)
{
  g_array_unref (RW_WHAT_IF_BAR (object)->movers);
  G_OBJECT_CLASS (rw_what_if_bar_parent_class)->finalize (object);
}

static void
rw_what_if_bar_class_init (RwWhatIfBarClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_what_if_bar_dispose;
  G_OBJECT_CLASS (klass)->finalize = rw_what_if_bar_finalize;
  signals[CHANGED] = g_signal_new ("changed", RW_TYPE_WHAT_IF_BAR, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 0);
}

static void
rw_what_if_bar_init (RwWhatIfBar *self)
{
  GtkWidget *asked = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8), *bar;
  GtkWidget *by = gtk_label_new (C_("what if: this result by that parameter", "by"));

  self->movers = g_array_new (FALSE, FALSE, sizeof (RwParamId));
  self->movers_of = -1;
  gtk_widget_add_css_class (GTK_WIDGET (self), "strip");
  self->results = rw_drop_down_new (_("Result"), G_CALLBACK (on_result), self);
  gtk_box_append (GTK_BOX (asked), self->results);
  gtk_box_append (GTK_BOX (asked), by);
  self->params = rw_drop_down_new (_("Parameter"), G_CALLBACK (on_chosen), self);
  gtk_box_append (GTK_BOX (asked), self->params);

  self->wanted = gtk_entry_new ();
  gtk_editable_set_width_chars (GTK_EDITABLE (self->wanted), 9);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (self->wanted), 9);
  gtk_entry_set_placeholder_text (GTK_ENTRY (self->wanted), _("Wanted"));
  rw_access_name (self->wanted, _("Wanted"));
  g_signal_connect_object (self->wanted, "changed", G_CALLBACK (on_chosen), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->wanted, "activate", G_CALLBACK (on_apply), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (asked), self->wanted);

  self->apply = gtk_button_new_with_label (_("Apply"));
  rw_access_describe (self->apply, _("Puts the value that gives it into the build"));
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
rw_what_if_bar_new (RwDocument *document)
{
  RwWhatIfBar *self = g_object_new (RW_TYPE_WHAT_IF_BAR, NULL);

  self->document = g_object_ref (document);
  return GTK_WIDGET (self);
}
