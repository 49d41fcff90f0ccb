#include "steps_pane.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "making/step.h"
#include "since_view.h"
#include "step_detail.h"

#define LIST_WIDTH 220 /* at least */
#define TITLE_CHARS 12 /* likewise */

struct _RwStepsPane
{
  GtkBox parent;

  RwDocument *document;
  gboolean    stale;   /* changed while out of sight */
  gboolean    filling;
  RwStep      step;    /* shown in full */
  guint       scroll_source;
  gboolean    chosen;  /* by hand; else the next possible one is shown */

  GtkWidget *tools;
  GtkWidget *stack;
  GtkWidget *list;
  GtkWidget *list_scroller;
  GtkWidget *detail;
  GtkWidget *since;
};

G_DEFINE_FINAL_TYPE (RwStepsPane, rw_steps_pane, GTK_TYPE_BOX)

/* ---- a line of the list: sign, number and title, state ---- */

static const struct
{
  const char *sign, *css_class, *words;
} looks[] = {
  [RW_STEP_DONE] = { "✓", "step-done", N_("made") },
  [RW_STEP_POSSIBLE] = { "▶", "step-possible", N_("next") },
  [RW_STEP_WAITING] = { "·", "step-waiting", N_("waits") },
};

static GtkWidget *
line_new (void)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  GtkWidget *sign = gtk_label_new (NULL), *title = gtk_label_new (NULL), *state = gtk_label_new (NULL);

  gtk_label_set_width_chars (GTK_LABEL (sign), 2);
  gtk_label_set_width_chars (GTK_LABEL (title), TITLE_CHARS);
  gtk_label_set_xalign (GTK_LABEL (title), 0);
  gtk_label_set_wrap (GTK_LABEL (title), TRUE);
  gtk_widget_set_hexpand (title, TRUE);
  gtk_box_append (GTK_BOX (line), sign);
  gtk_box_append (GTK_BOX (line), title);
  gtk_box_append (GTK_BOX (line), state);
  return line;
}

static void
line_fill (GtkWidget *row, const RwStepInfo *info, int number, RwStepState state)
{
  GtkWidget *line = gtk_list_box_row_get_child (GTK_LIST_BOX_ROW (row));
  GtkWidget *sign = gtk_widget_get_first_child (line), *title = gtk_widget_get_next_sibling (sign);
  GtkWidget *words = gtk_widget_get_next_sibling (title);
  g_autofree char *text = g_strdup_printf ("%d  %s", number, _(rw_step_info_title (info)));
  g_autofree char *name = g_strdup_printf ("%s, %s", text, _(looks[state].words));

  for (guint i = 0; i < G_N_ELEMENTS (looks); i++)
    gtk_widget_remove_css_class (line, looks[i].css_class);
  gtk_widget_add_css_class (line, looks[state].css_class);
  gtk_label_set_text (GTK_LABEL (sign), looks[state].sign);
  gtk_label_set_text (GTK_LABEL (title), text);
  gtk_label_set_text (GTK_LABEL (words), _(looks[state].words));
  g_object_set_data (G_OBJECT (row), "rw-step", GINT_TO_POINTER ((int) info->step + 1));
  rw_access_name (row, name);
}

static GtkWidget *
row_at (RwStepsPane *self, int place)
{
  GtkListBox *list = GTK_LIST_BOX (self->list);

  if (gtk_list_box_get_row_at_index (list, place) == NULL)
    gtk_list_box_append (list, line_new ());
  return GTK_WIDGET (gtk_list_box_get_row_at_index (list, place));
}

/* ---- filling ---- */

/* The step shown in full: the one chosen while the build has it, else the first that can be done, else the first. */
static int
place_shown (RwStepsPane *self, const RwStepInfo **steps, const RwStepState *states, int count)
{
  for (int i = 0; i < count; i++)
    if (self->chosen && steps[i]->step == self->step)
      return i;
  for (int i = 0; i < count; i++)
    if (states[i] == RW_STEP_POSSIBLE)
      return i;
  return 0;
}

/* After the frame that lays the lines out. */
static gboolean
scroll_to_shown (gpointer user_data)
{
  RwStepsPane *self = user_data;
  GtkAdjustment *adjustment
      = gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (self->list_scroller));
  GtkListBoxRow *row = gtk_list_box_get_selected_row (GTK_LIST_BOX (self->list));
  graphene_rect_t place;

  self->scroll_source = 0;
  /* The lines before and after it are shown too. */
  if (row != NULL && gtk_widget_compute_bounds (GTK_WIDGET (row), self->list, &place))
    gtk_adjustment_clamp_page (adjustment, (double) (place.origin.y - place.size.height),
                               (double) (place.origin.y + 2 * place.size.height));
  return G_SOURCE_REMOVE;
}

static void
bring_into_view (RwStepsPane *self)
{
  if (self->scroll_source == 0)
    self->scroll_source = g_idle_add_full (GDK_PRIORITY_REDRAW + 10, scroll_to_shown, self, NULL);
}

static void
fill_steps (RwStepsPane *self)
{
  const RwMade *made = rw_document_project (self->document)->made;
  const RwDesign *used = &rw_document_now (self->document)->used;
  const RwStepInfo *steps[RW_STEP_COUNT];
  RwStepState states[RW_STEP_COUNT];
  int count = rw_steps_of (used, steps), shown;
  GtkListBoxRow *row;

  self->filling = TRUE;
  for (int i = 0; i < count; i++)
    {
      states[i] = rw_step_state (steps[i], made, used, NULL);
      line_fill (row_at (self, i), steps[i], i + 1, states[i]);
    }
  while ((row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), count)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (self->list), GTK_WIDGET (row));

  shown = place_shown (self, steps, states, count);
  if (self->step != steps[shown]->step || gtk_list_box_get_selected_row (GTK_LIST_BOX (self->list)) == NULL)
    bring_into_view (self);
  self->step = steps[shown]->step;
  gtk_list_box_select_row (GTK_LIST_BOX (self->list),
                           gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), shown));
  rw_step_detail_show (RW_STEP_DETAIL (self->detail), steps[shown]);
  self->filling = FALSE;
}

static void
fill (RwStepsPane *self)
{
  self->stale = FALSE;
  if (g_str_equal (gtk_stack_get_visible_child_name (GTK_STACK (self->stack)), "since"))
    rw_since_view_fill (RW_SINCE_VIEW (self->since));
  else
    fill_steps (self);
}

static void
on_changed (RwStepsPane *self)
{
  if (gtk_widget_get_mapped (GTK_WIDGET (self)))
    fill (self);
  else
    self->stale = TRUE;
}

static void
on_map (RwStepsPane *self)
{
  if (self->stale)
    fill (self);
}

static void
on_row_selected (RwStepsPane *self, GtkListBoxRow *row)
{
  if (self->filling || row == NULL)
    return;
  self->step = (RwStep) (GPOINTER_TO_INT (g_object_get_data (G_OBJECT (row), "rw-step")) - 1);
  self->chosen = TRUE;
  fill_steps (self);
}

static void
on_page (RwStepsPane *self, GParamSpec *spec, GtkDropDown *pages)
{
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack),
                                    gtk_drop_down_get_selected (pages) == 1 ? "since" : "steps");
  fill (self);
}

/* ---- making and unmaking ---- */

static GtkWidget *
scrolled (GtkWidget *child)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), child);
  gtk_widget_set_vexpand (scroller, TRUE);
  return scroller;
}

static GtkWidget *
build_steps (RwStepsPane *self, RwDocument *document)
{
  GtkWidget *page = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0), *detail;

  self->list = gtk_list_box_new ();
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (self->list), GTK_SELECTION_BROWSE);
  gtk_widget_add_css_class (self->list, "steps");
  rw_access_name (self->list, _("Steps"));
  g_signal_connect_object (self->list, "row-selected", G_CALLBACK (on_row_selected), self, G_CONNECT_SWAPPED);
  self->list_scroller = scrolled (self->list);
  gtk_scrolled_window_set_propagate_natural_width (GTK_SCROLLED_WINDOW (self->list_scroller), TRUE);
  gtk_widget_set_size_request (self->list_scroller, LIST_WIDTH, -1);

  self->detail = rw_step_detail_new (document);
  detail = scrolled (self->detail);
  gtk_widget_set_hexpand (detail, TRUE);
  gtk_box_append (GTK_BOX (page), self->list_scroller);
  gtk_box_append (GTK_BOX (page), gtk_separator_new (GTK_ORIENTATION_VERTICAL));
  gtk_box_append (GTK_BOX (page), detail);
  return page;
}

static void
build_tools (RwStepsPane *self)
{
  const char *pages[] = { _("Steps"), _("Since the last papers"), NULL };

  self->tools = g_object_ref_sink (gtk_drop_down_new_from_strings (pages));
  rw_access_name (self->tools, _("Shown"));
  g_signal_connect_object (self->tools, "notify::selected", G_CALLBACK (on_page), self, G_CONNECT_SWAPPED);
}

static void
rw_steps_pane_dispose (GObject *object)
{
  RwStepsPane *self = RW_STEPS_PANE (object);

  g_clear_handle_id (&self->scroll_source, g_source_remove);
  g_clear_object (&self->document);
  g_clear_object (&self->tools);
  G_OBJECT_CLASS (rw_steps_pane_parent_class)->dispose (object);
}

static void
rw_steps_pane_class_init (RwStepsPaneClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_steps_pane_dispose;
}

static void
rw_steps_pane_init (RwStepsPane *self)
{
  self->stale = TRUE;
  self->stack = gtk_stack_new ();
  gtk_box_append (GTK_BOX (self), self->stack);
  build_tools (self);
  g_signal_connect (self, "map", G_CALLBACK (on_map), NULL);
}

GtkWidget *
rw_steps_pane_new (RwDocument *document)
{
  RwStepsPane *self = g_object_new (RW_TYPE_STEPS_PANE, NULL);

  self->document = g_object_ref (document);
  self->since = rw_since_view_new (document);
  gtk_stack_add_named (GTK_STACK (self->stack), build_steps (self, document), "steps");
  gtk_stack_add_named (GTK_STACK (self->stack), self->since, "since");
  g_signal_connect_object (document, "noted", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

GtkWidget *
rw_steps_pane_tools (RwStepsPane *self)
{
  return self->tools;
}
