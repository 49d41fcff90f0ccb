#include "papers_form.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "base/number_entry.h"
#include "papers_choice.h"
#include "papers_rows.h"

struct _RwPapersForm
{
  GtkBox parent;

  RwPapersMemory memory;
  GtkWidget    **sheets; /* check buttons, by kind */
  const char   **only;   /* ids of those checked, NULL-ended */

  GtkWidget *choice;
  GtkWidget *paper;
  GtkWidget *margin, *overlap;
  GtkWidget *printer;
  GtkWidget *bar_short, *bar_long;
  gboolean   filling;
};

G_DEFINE_FINAL_TYPE (RwPapersForm, rw_papers_form, GTK_TYPE_BOX)

static guint chosen_signal;

static void
tell (RwPapersForm *self)
{
  if (!self->filling)
    g_signal_emit (self, chosen_signal, 0);
}

static void
remember_and_tell (RwPapersForm *self)
{
  rw_papers_memory_save (&self->memory);
  tell (self);
}

/* ---- parts ---- */

static GtkWidget *
add_number (GtkWidget *grid, int row, const char *name, double least, double most)
{
  const RwRange range = { least, most, "mm" };
  GtkWidget *entry = rw_number_entry_new (&range, name);

  rw_papers_row (grid, row, name, entry);
  return entry;
}

/* ---- sheets ---- */

static void
check_all (RwPapersForm *self, gboolean checked)
{
  self->filling = TRUE;
  for (int i = 0; i < rw_paper_kinds_count; i++)
    gtk_check_button_set_active (GTK_CHECK_BUTTON (self->sheets[i]), checked);
  self->filling = FALSE;
  tell (self);
}

static void
on_all (RwPapersForm *self)
{
  check_all (self, TRUE);
}

static void
on_none (RwPapersForm *self)
{
  check_all (self, FALSE);
}

static GtkWidget *
small_button (RwPapersForm *self, const char *text, const char *name, GCallback pressed)
{
  GtkWidget *button = gtk_button_new_with_label (text);

  gtk_button_set_has_frame (GTK_BUTTON (button), FALSE);
  rw_access_name (button, name);
  g_signal_connect_swapped (button, "clicked", pressed, self);
  return button;
}

static void
build_sheets (RwPapersForm *self)
{
  GtkWidget *top = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  GtkWidget *list = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  gtk_box_append (GTK_BOX (top), rw_papers_heading (_("Sheets")));
  gtk_box_append (GTK_BOX (top), small_button (self, _("All"), _("Choose all sheets"), G_CALLBACK (on_all)));
  gtk_box_append (GTK_BOX (top),
                  small_button (self, C_("sheets of paper", "None"), _("Choose no sheet"), G_CALLBACK (on_none)));
  gtk_box_append (GTK_BOX (self), top);

  self->sheets = g_new0 (GtkWidget *, rw_paper_kinds_count);
  self->only = g_new0 (const char *, rw_paper_kinds_count + 1);
  for (int i = 0; i < rw_paper_kinds_count; i++)
    {
      self->sheets[i] = gtk_check_button_new_with_label (_(rw_paper_kinds[i].title));
      gtk_check_button_set_active (GTK_CHECK_BUTTON (self->sheets[i]), TRUE);
      g_signal_connect_swapped (self->sheets[i], "toggled", G_CALLBACK (tell), self);
      gtk_box_append (GTK_BOX (list), self->sheets[i]);
    }
  gtk_box_append (GTK_BOX (self), list);
}

void
rw_papers_form_compare (RwPapersForm *self, const RwPaperSet *set)
{
  for (int i = 0; i < rw_paper_kinds_count; i++)
    {
      gboolean checked = gtk_check_button_get_active (GTK_CHECK_BUTTON (self->sheets[i]));
      gboolean found = FALSE;

      for (guint k = 0; set != NULL && k < set->pages->len && !found; k++)
        found = ((RwPaperPage *) g_ptr_array_index (set->pages, k))->kind == &rw_paper_kinds[i];

      gboolean missing = checked && !found;
      const char *why = missing ? _("This build has no such sheet") : NULL;

      gtk_widget_set_opacity (self->sheets[i], missing ? 0.6 : 1);
      gtk_widget_set_tooltip_text (self->sheets[i], why);
    }
}

/* ---- paper ---- */

static void
on_paper (RwPapersForm *self)
{
  guint chosen = gtk_drop_down_get_selected (GTK_DROP_DOWN (self->paper));

  if (chosen == GTK_INVALID_LIST_POSITION || self->memory.paper == &rw_papers[chosen])
    return;
  self->memory.paper = &rw_papers[chosen];
  remember_and_tell (self);
}

static void
on_margins (RwPapersForm *self)
{
  self->memory.margin_mm = rw_number_entry_value (RW_NUMBER_ENTRY (self->margin));
  self->memory.overlap_mm = rw_number_entry_value (RW_NUMBER_ENTRY (self->overlap));
  remember_and_tell (self);
}

static void
build_paper (RwPapersForm *self)
{
  GtkStringList *names = gtk_string_list_new (NULL);
  GtkWidget *grid;

  for (int i = 0; i < rw_papers_count; i++)
    gtk_string_list_append (names, rw_papers[i].label);
  gtk_box_append (GTK_BOX (self), rw_papers_heading (_("Paper")));
  grid = rw_papers_grid (GTK_BOX (self));
  self->paper = gtk_drop_down_new (G_LIST_MODEL (names), NULL);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (self->paper), (guint) (self->memory.paper - rw_papers));
  rw_papers_row (grid, 0, C_("of paper", "Size"), self->paper);
  self->margin = add_number (grid, 1, _("Margin"), RW_PAPER_MARGIN_MIN, RW_PAPER_MARGIN_MAX);
  self->overlap = add_number (grid, 2, _("Overlap"), RW_PAPER_OVERLAP_MIN, RW_PAPER_OVERLAP_MAX);
  rw_number_entry_set_value (RW_NUMBER_ENTRY (self->margin), self->memory.margin_mm);
  rw_number_entry_set_value (RW_NUMBER_ENTRY (self->overlap), self->memory.overlap_mm);
  g_signal_connect_swapped (self->paper, "notify::selected", G_CALLBACK (on_paper), self);
  g_signal_connect_swapped (self->margin, "entered", G_CALLBACK (on_margins), self);
  g_signal_connect_swapped (self->overlap, "entered", G_CALLBACK (on_margins), self);
}

/* ---- printer ---- */

static void
show_bars (RwPapersForm *self)
{
  RwBars bars = rw_bars_load (self->memory.printer);

  rw_number_entry_set_value (RW_NUMBER_ENTRY (self->bar_short), bars.short_mm);
  rw_number_entry_set_value (RW_NUMBER_ENTRY (self->bar_long), bars.long_mm);
}

static void
take_printer (RwPapersForm *self)
{
  const char *name = gtk_editable_get_text (GTK_EDITABLE (self->printer));

  if (g_str_equal (name, self->memory.printer))
    return;
  g_free (self->memory.printer);
  self->memory.printer = g_strdup (name);
  show_bars (self);
  remember_and_tell (self);
}

static void
on_bars (RwPapersForm *self)
{
  rw_bars_save (self->memory.printer, (RwBars){ rw_number_entry_value (RW_NUMBER_ENTRY (self->bar_short)),
                                                rw_number_entry_value (RW_NUMBER_ENTRY (self->bar_long)) });
  tell (self);
}

static GtkWidget *
printer_entry (RwPapersForm *self)
{
  GtkWidget *entry = gtk_entry_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  gtk_editable_set_width_chars (GTK_EDITABLE (entry), 12);
  gtk_editable_set_text (GTK_EDITABLE (entry), self->memory.printer);
  gtk_entry_set_placeholder_text (GTK_ENTRY (entry), _("any"));
  g_signal_connect_swapped (entry, "activate", G_CALLBACK (take_printer), self);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (take_printer), self);
  gtk_widget_add_controller (entry, focus);
  return entry;
}

static void
build_printer (RwPapersForm *self)
{
  GtkWidget *grid;

  gtk_box_append (GTK_BOX (self), rw_papers_heading (_("Printer")));
  grid = rw_papers_grid (GTK_BOX (self));
  self->printer = printer_entry (self);
  rw_papers_row (grid, 0, _("Name"), self->printer);
  self->bar_short = add_number (grid, 1, _("Bar along the short edge"), RW_BAR_MIN, RW_BAR_MAX);
  self->bar_long = add_number (grid, 2, _("Bar along the long edge"), RW_BAR_MIN, RW_BAR_MAX);
  show_bars (self);
  g_signal_connect_swapped (self->bar_short, "entered", G_CALLBACK (on_bars), self);
  g_signal_connect_swapped (self->bar_long, "entered", G_CALLBACK (on_bars), self);

  gtk_box_append (GTK_BOX (self),
                  rw_papers_note (_("Print a page, measure its two bars of 100 mm, and enter what "
                                     "they measure: pages are then drawn so much larger or "
                                     "smaller.")));
}

/* ---- from outside ---- */

void
rw_papers_form_set_style (RwPapersForm *self, RwStyle style)
{
  GtkWidget *numbers[] = { self->margin, self->overlap, self->bar_short, self->bar_long };

  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    rw_number_entry_set_style (RW_NUMBER_ENTRY (numbers[i]), style);
}

void
rw_papers_form_fill (RwPapersForm *self, RwPapersOptions *options)
{
  int count = 0;

  for (int i = 0; i < rw_paper_kinds_count; i++)
    if (gtk_check_button_get_active (GTK_CHECK_BUTTON (self->sheets[i])))
      self->only[count++] = rw_paper_kinds[i].id;
  self->only[count] = NULL;
  rw_papers_choice_fill (RW_PAPERS_CHOICE (self->choice), options);
  options->only = self->only;
  options->paper = self->memory.paper;
  options->margin_mm = self->memory.margin_mm;
  options->overlap_mm = self->memory.overlap_mm;
  options->bar_short_mm = rw_number_entry_value (RW_NUMBER_ENTRY (self->bar_short));
  options->bar_long_mm = rw_number_entry_value (RW_NUMBER_ENTRY (self->bar_long));
}

void
rw_papers_form_set_project (RwPapersForm *self, const char *name)
{
  rw_papers_choice_set_project (RW_PAPERS_CHOICE (self->choice), name);
}

gboolean
rw_papers_form_is_empty (RwPapersForm *self)
{
  for (int i = 0; i < rw_paper_kinds_count; i++)
    if (gtk_check_button_get_active (GTK_CHECK_BUTTON (self->sheets[i])))
      return FALSE;
  return TRUE;
}

const char *
rw_papers_form_printer (RwPapersForm *self)
{
  return self->memory.printer;
}

void
rw_papers_form_set_printer (RwPapersForm *self, const char *printer)
{
  gtk_editable_set_text (GTK_EDITABLE (self->printer), printer);
  take_printer (self);
}

static void
rw_papers_form_finalize (GObject *object)
{
  RwPapersForm *self = RW_PAPERS_FORM (object);

  rw_papers_memory_clear (&self->memory);
  g_free (self->sheets);
  g_free (self->only);
  G_OBJECT_CLASS (rw_papers_form_parent_class)->finalize (object);
}

static void
rw_papers_form_class_init (RwPapersFormClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = rw_papers_form_finalize;
  chosen_signal = g_signal_new ("chosen", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                G_TYPE_NONE, 0);
}

static void
rw_papers_form_init (RwPapersForm *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 8);
  gtk_widget_add_css_class (GTK_WIDGET (self), "papers-form");
  rw_papers_memory_load (&self->memory);
  build_sheets (self);
  self->choice = rw_papers_choice_new (&self->memory);
  g_signal_connect_swapped (self->choice, "chosen", G_CALLBACK (tell), self);
  gtk_box_append (GTK_BOX (self), self->choice);
  build_paper (self);
  build_printer (self);
}

GtkWidget *
rw_papers_form_new (void)
{
  return g_object_new (RW_TYPE_PAPERS_FORM, NULL);
}
