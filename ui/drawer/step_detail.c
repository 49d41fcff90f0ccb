#include "step_detail.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/access.h"
#include "base/words.h"
#include "check/listing.h"
#include "document/care_work.h"
#include "backwards_words.h"
#include "reading_entry.h"

struct _RwStepDetail
{
  GtkBox parent;

  RwDocument       *document;
  RwCareWork       *care;  /* for what sizes may be off by */
  const RwStepInfo *info;
  char             *shown; /* the step and the ids in the grid, as one text: refilled in place while they stay */

  GtkWidget *title, *state, *button, *refusal;
  GtkWidget *needs, *work, *caution;
  GtkWidget *grid;
  GtkWidget *backwards; /* what a measured string height says of the neck */
  GPtrArray *entries;  /* of RwReadingEntry, owned by the grid */
  GPtrArray *expected; /* of GtkLabel: what is needed now, beside each */
  GPtrArray *ids;      /* of char * */
};

G_DEFINE_FINAL_TYPE (RwStepDetail, rw_step_detail, GTK_TYPE_BOX)

static const char *
translate (const char *english)
{
  return _(english);
}

/* ---- the lines of what is read off ---- */

/* "279.00 mm ± 0.25": what is asked of it now, and what it may be off by.  New. */
static char *
expected_words (RwStepDetail *self, const char *id)
{
  RwStyle style = rw_document_style (self->document);
  RwAllowance allowance = rw_care_allowance (rw_care_work_care (self->care), id);
  RwReadingRow row;
  g_autofree char *number = NULL, *room = NULL;

  if (!rw_listing_find (id, rw_document_project (self->document), rw_document_now (self->document),
                        rw_document_planned (self->document), &row))
    return g_strdup ("");
  number = rw_number_words (isfinite (row.made)    ? row.made
                            : isfinite (row.asked) ? row.asked
                                                   : row.value,
                            row.unit, style);
  if (!(allowance.within > 0))
    return g_steal_pointer (&number);
  room = rw_number_bare (allowance.within, row.unit, rw_style_fine (style));
  return g_strdup_printf ("%s ± %s", number, room);
}

static void
add_heading (RwStepDetail *self, const char *text, int line)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, "step-heading");
  gtk_grid_attach (GTK_GRID (self->grid), label, 0, line, 3, 1);
}

static void
add_line (RwStepDetail *self, const char *id, int line)
{
  g_autofree char *text = rw_reading_label (id, translate);
  GtkWidget *label = gtk_label_new (text), *expected = gtk_label_new (NULL);
  GtkWidget *entry = rw_reading_entry_new (self->document, id);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_width_chars (GTK_LABEL (label), 16);
  gtk_label_set_xalign (GTK_LABEL (expected), 1);
  gtk_widget_set_hexpand (entry, TRUE);
  gtk_grid_attach (GTK_GRID (self->grid), label, 0, line, 1, 1);
  gtk_grid_attach (GTK_GRID (self->grid), expected, 1, line, 1, 1);
  gtk_grid_attach (GTK_GRID (self->grid), entry, 2, line, 1, 1);
  g_ptr_array_add (self->ids, g_strdup (id));
  g_ptr_array_add (self->expected, expected);
  g_ptr_array_add (self->entries, entry);
}

static void
add_lines (RwStepDetail *self, const char *heading, char **ids, int *line)
{
  if (ids[0] == NULL)
    return;
  add_heading (self, heading, (*line)++);
  for (int i = 0; ids[i] != NULL; i++)
    add_line (self, ids[i], (*line)++);
}

static void
clear_grid (RwStepDetail *self)
{
  GtkWidget *child;

  g_ptr_array_set_size (self->entries, 0);
  g_ptr_array_set_size (self->expected, 0);
  g_ptr_array_set_size (self->ids, 0);
  while ((child = gtk_widget_get_first_child (self->grid)) != NULL)
    gtk_grid_remove (GTK_GRID (self->grid), child);
}

static void
show_numbers (RwStepDetail *self)
{
  for (guint i = 0; i < self->ids->len; i++)
    {
      g_autofree char *words = expected_words (self, g_ptr_array_index (self->ids, i));

      gtk_label_set_text (g_ptr_array_index (self->expected, i), words);
      rw_reading_entry_refresh (g_ptr_array_index (self->entries, i));
    }
}

static void
fill_grid (RwStepDetail *self)
{
  const RwResult *now = rw_document_now (self->document);
  g_auto (GStrv) given = rw_step_given (self->info, now), yields = rw_step_yields (self->info, now);
  g_autofree char *before = g_strjoinv (" ", given), *after = g_strjoinv (" ", yields);
  g_autofree char *wanted = g_strdup_printf ("%d: %s | %s", (int) (self->info - rw_step_infos), before, after);
  int line = 0;

  if (g_strcmp0 (wanted, self->shown) != 0)
    {
      clear_grid (self);
      add_lines (self, _("Read off the parts before"), given, &line);
      add_lines (self, _("Read off what this step makes"), yields, &line);
      g_free (self->shown);
      self->shown = g_steal_pointer (&wanted);
    }
  show_numbers (self);
}

/* ---- head and words ---- */

static char *
waiting_words (RwStepDetail *self, guint waits_for)
{
  g_autoptr (GStrvBuilder) titles = g_strv_builder_new ();
  g_auto (GStrv) all = NULL;
  g_autofree char *list = NULL;

  for (RwStep step = 0; step < RW_STEP_COUNT; step++)
    {
      const RwStepInfo *info = rw_step_info (step, &rw_document_now (self->document)->used);

      if ((waits_for & RW_STEP_BIT (step)) && info != NULL)
        g_strv_builder_add (titles, _(rw_step_info_title (info)));
    }
  all = g_strv_builder_end (titles);
  list = g_strjoinv ("; ", all);
  return g_strdup_printf (_("Waits for: %s"), list);
}

/* New. */
static char *
state_words (RwStepDetail *self, RwStepState state, guint waits_for)
{
  const RwMadeStep *made = rw_made_find (rw_document_project (self->document)->made, self->info->step);

  if (state == RW_STEP_WAITING)
    return waiting_words (self, waits_for);
  if (made == NULL)
    return g_strdup (_("Can be done now"));
  if (made->date[0] == '\0')
    return g_strdup (_("Made; its sizes are fixed"));
  return g_strdup_printf (_("Made on %s; its sizes are fixed"), made->date);
}

/* format has one %s for the words. */
static void
show_words (GtkWidget *label, const char *format, const char *words)
{
  g_autofree char *text = words != NULL ? g_strdup_printf (format, _(words)) : g_strdup ("");

  gtk_widget_set_visible (label, words != NULL);
  gtk_label_set_text (GTK_LABEL (label), text);
}

static void
show_backwards (RwStepDetail *self)
{
  gboolean strung = self->info->step == RW_STEP_STRING_UP || self->info->step == RW_STEP_SET_UP;
  g_autofree char *words = strung ? rw_backwards_words (self->document) : NULL;

  gtk_widget_set_visible (self->backwards, words != NULL);
  gtk_label_set_text (GTK_LABEL (self->backwards), words != NULL ? words : "");
}

static void
refuse (RwStepDetail *self, const char *message)
{
  gtk_widget_set_visible (self->refusal, message != NULL);
  gtk_label_set_text (GTK_LABEL (self->refusal), message != NULL ? message : "");
}

void
rw_step_detail_show (RwStepDetail *self, const RwStepInfo *info)
{
  const RwProject *project = rw_document_project (self->document);
  guint waits_for;
  RwStepState state = rw_step_state (info, project->made, &rw_document_now (self->document)->used, &waits_for);
  g_autofree char *words = NULL;

  self->info = info;
  words = state_words (self, state, waits_for);
  gtk_label_set_text (GTK_LABEL (self->title), _(rw_step_info_title (info)));
  gtk_label_set_text (GTK_LABEL (self->state), words);
  gtk_button_set_label (GTK_BUTTON (self->button),
                        state == RW_STEP_DONE ? _("Not made after all") : _("Mark as made"));
  show_words (self->needs, _("Known first: %s"), info->needs);
  show_words (self->work, _("Do: %s"), info->work);
  show_words (self->caution, _("Take care: %s"), info->caution);
  refuse (self, NULL);
  rw_care_work_want (self->care, FALSE);
  fill_grid (self);
  show_backwards (self);
}

/* There is a word on what is close enough. */
static void
on_care (RwStepDetail *self)
{
  if (self->info != NULL && gtk_widget_get_mapped (GTK_WIDGET (self)))
    show_numbers (self);
}

static void
on_button (RwStepDetail *self)
{
  g_autoptr (GError) error = NULL;

  if (self->info == NULL)
    return;
  if (rw_made_find (rw_document_project (self->document)->made, self->info->step) != NULL)
    rw_document_unmark_made (self->document, self->info->step);
  else if (!rw_document_mark_made (self->document, self->info->step, &error))
    refuse (self, error->message);
}

/* ---- making and unmaking ---- */

static GtkWidget *
words_new (RwStepDetail *self, const char *css_class)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  gtk_box_append (GTK_BOX (self), label);
  return label;
}

static void
build_head (RwStepDetail *self)
{
  GtkWidget *head = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);

  self->title = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->title), 0);
  gtk_label_set_wrap (GTK_LABEL (self->title), TRUE);
  gtk_label_set_natural_wrap_mode (GTK_LABEL (self->title), GTK_NATURAL_WRAP_NONE);
  gtk_widget_add_css_class (self->title, "step-title");
  self->state = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->state), 0);
  gtk_label_set_wrap (GTK_LABEL (self->state), TRUE);
  gtk_widget_set_hexpand (self->state, TRUE);
  gtk_widget_add_css_class (self->state, "dim-label");
  self->button = gtk_button_new_with_label (_("Mark as made"));
  g_signal_connect_object (self->button, "clicked", G_CALLBACK (on_button), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (head), self->title);
  gtk_box_append (GTK_BOX (head), self->state);
  gtk_box_append (GTK_BOX (head), self->button);
  gtk_box_append (GTK_BOX (self), head);
}

static void
rw_step_detail_dispose (GObject *object)
{
  RwStepDetail *self = RW_STEP_DETAIL (object);

  g_clear_object (&self->care);
  g_clear_object (&self->document);
  g_clear_pointer (&self->shown, g_free);
  g_clear_pointer (&self->entries, g_ptr_array_unref);
  g_clear_pointer (&self->expected, g_ptr_array_unref);
  g_clear_pointer (&self->ids, g_ptr_array_unref);
  G_OBJECT_CLASS (rw_step_detail_parent_class)->dispose (object);
}

static void
rw_step_detail_class_init (RwStepDetailClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_step_detail_dispose;
}

static void
rw_step_detail_init (RwStepDetail *self)
{
  self->entries = g_ptr_array_new ();
  self->expected = g_ptr_array_new ();
  self->ids = g_ptr_array_new_with_free_func (g_free);
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 4);
  gtk_widget_add_css_class (GTK_WIDGET (self), "step-detail");
  build_head (self);
  self->refusal = words_new (self, "complaint");
  self->needs = words_new (self, NULL);
  self->work = words_new (self, NULL);
  self->caution = words_new (self, "step-caution");
  self->grid = gtk_grid_new ();
  gtk_grid_set_column_spacing (GTK_GRID (self->grid), 12);
  gtk_grid_set_row_spacing (GTK_GRID (self->grid), 2);
  gtk_box_append (GTK_BOX (self), self->grid);
  self->backwards = words_new (self, "step-heading");
}

GtkWidget *
rw_step_detail_new (RwDocument *document)
{
  RwStepDetail *self = g_object_new (RW_TYPE_STEP_DETAIL, NULL);

  self->document = g_object_ref (document);
  self->care = rw_care_work_of (document);
  g_signal_connect_object (self->care, "changed", G_CALLBACK (on_care), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}
