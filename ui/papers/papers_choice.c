#include "papers_choice.h"

#include <glib/gi18n.h>

#include "base/look.h"
#include "papers_rows.h"

struct _RwPapersChoice
{
  GtkBox parent;

  RwPapersMemory *memory;
  char           *project;  /* its name; NULL: not told yet */
  char           *revision, *date;
  gboolean        is_today; /* the date goes with the calendar */
  gboolean        filling;

  GtkWidget *units, *hand;
  GtkWidget *revision_entry, *date_entry;
  GtkWidget *formats[5]; /* PDF, SVG, PNG, CSV, JSON */
  GtkWidget *resolution;
};

G_DEFINE_FINAL_TYPE (RwPapersChoice, rw_papers_choice, GTK_TYPE_BOX)

static guint chosen_signal;

static void
tell (RwPapersChoice *self)
{
  g_signal_emit (self, chosen_signal, 0);
}

/* ---- the look ---- */

/* In the order of the drop-down, after that of the window. */
static const RwUnits units_order[]
    = { RW_UNITS_MM, RW_UNITS_INCH, RW_UNITS_FRACTION, RW_UNITS_FRACTION_32, RW_UNITS_FRACTION_16 };

static void
on_units (RwPapersChoice *self)
{
  int chosen = (int) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->units));

  self->memory->units = chosen > 0 ? (int) units_order[chosen - 1] : RW_PAPERS_UNITS_OF_WINDOW;
  rw_papers_memory_save (self->memory);
  tell (self);
}

static guint
units_row (int units)
{
  for (guint i = 0; i < G_N_ELEMENTS (units_order); i++)
    if ((int) units_order[i] == units)
      return i + 1;
  return 0;
}

static void
take_revision (RwPapersChoice *self)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->revision_entry));

  if (self->filling || g_str_equal (text, self->revision))
    return;
  g_free (self->revision);
  self->revision = g_strdup (text);
  if (self->project != NULL)
    rw_papers_revision_save (self->project, text);
  tell (self);
}

static char *
today (void)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();

  return g_date_time_format (now, "%Y-%m-%d");
}

static gboolean
is_date (const char *text)
{
  g_autofree char *time = g_strconcat (text, "T00:00:00Z", NULL);
  g_autoptr (GDateTime) read = strlen (text) == 10 ? g_date_time_new_from_iso8601 (time, NULL) : NULL;

  return read != NULL;
}

static void
complain_of_date (RwPapersChoice *self, const char *why)
{
  rw_look_refused (self->date_entry, why != NULL);
  gtk_widget_set_tooltip_text (self->date_entry, why);
}

/* An empty date is today's; one that is none is left to be mended. */
static void
take_date (RwPapersChoice *self)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->date_entry));
  g_autofree char *now = today ();
  const char *date = *text != '\0' ? text : now;

  if (!is_date (date))
    {
      complain_of_date (self, _("A date is year, month and day, as in 2026-05-31"));
      return;
    }
  complain_of_date (self, NULL);
  self->is_today = g_str_equal (date, now);
  if (g_str_equal (date, self->date))
    return;
  g_free (self->date);
  self->date = g_strdup (date);
  gtk_editable_set_text (GTK_EDITABLE (self->date_entry), self->date);
  tell (self);
}

static GtkWidget *
text_entry (RwPapersChoice *self, const char *text, GCallback take)
{
  GtkWidget *entry = gtk_entry_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  gtk_editable_set_width_chars (GTK_EDITABLE (entry), 10);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (entry), 12);
  gtk_editable_set_text (GTK_EDITABLE (entry), text);
  g_signal_connect_swapped (entry, "activate", take, self);
  g_signal_connect_swapped (focus, "leave", take, self);
  gtk_widget_add_controller (entry, focus);
  return entry;
}

static void
build_look (RwPapersChoice *self)
{
  const char *const units[] = { _("As in the window"),
                                _("Millimetres"),
                                _("Decimal inches"),
                                _("Inches to 1/64"),
                                _("Inches to 1/32"),
                                _("Inches to 1/16"),
                                NULL };
  const char *const hands[] = { _("As built"), _("Right-handed"), _("Left-handed"), NULL };
  GtkWidget *grid;

  gtk_box_append (GTK_BOX (self), rw_papers_heading (_("Drawings")));
  grid = rw_papers_grid (GTK_BOX (self));
  self->units = rw_papers_drop_down (units, units_row (self->memory->units), G_CALLBACK (on_units), self);
  self->hand = rw_papers_drop_down (hands, 0, G_CALLBACK (tell), self);
  gtk_widget_set_tooltip_text (self->hand, _("Drawings are mirrored for the other hand, their text is not"));
  self->revision_entry = text_entry (self, self->revision, G_CALLBACK (take_revision));
  gtk_entry_set_placeholder_text (GTK_ENTRY (self->revision_entry), "A");
  gtk_entry_set_max_length (GTK_ENTRY (self->revision_entry), 12);
  self->date_entry = text_entry (self, self->date, G_CALLBACK (take_date));
  rw_papers_row (grid, 0, _("Lengths"), self->units);
  rw_papers_row (grid, 1, _("Hand"), self->hand);
  rw_papers_row (grid, 2, _("Revision"), self->revision_entry);
  rw_papers_row (grid, 3, _("Date"), self->date_entry);
}

/* ---- formats ---- */

static const int resolutions[] = { 100, 150, 200, 300, 400, 600 };

static void
enable_resolution (RwPapersChoice *self)
{
  gtk_widget_set_sensitive (self->resolution, self->memory->png);
}

static void
on_format (RwPapersChoice *self)
{
  gboolean *kept[] = { &self->memory->pdf, &self->memory->svg, &self->memory->png, &self->memory->csv,
                       &self->memory->json };

  for (guint i = 0; i < G_N_ELEMENTS (kept); i++)
    *kept[i] = gtk_check_button_get_active (GTK_CHECK_BUTTON (self->formats[i]));
  rw_papers_memory_save (self->memory);
  enable_resolution (self);
}

static void
on_resolution (RwPapersChoice *self)
{
  self->memory->dpi = resolutions[gtk_drop_down_get_selected (GTK_DROP_DOWN (self->resolution))];
  rw_papers_memory_save (self->memory);
}

static GtkWidget *
resolution_choice (RwPapersChoice *self)
{
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  g_auto (GStrv) words = NULL;
  guint chosen = 2;

  for (guint i = 0; i < G_N_ELEMENTS (resolutions); i++)
    {
      g_autofree char *word = g_strdup_printf ("%d", resolutions[i]);

      g_strv_builder_add (builder, word);
      if (resolutions[i] == self->memory->dpi)
        chosen = i;
    }
  words = g_strv_builder_end (builder);
  return rw_papers_drop_down ((const char *const *) words, chosen, G_CALLBACK (on_resolution), self);
}

static void
build_formats (RwPapersChoice *self)
{
  const char *const labels[] = { _("PDF, all sheets in one"), _("SVG, a file for each sheet"),
                                 _("PNG, a picture of each sheet"), _("CSV, the list of dimensions"),
                                 _("JSON, the list of dimensions") };
  const gboolean kept[] = { self->memory->pdf, self->memory->svg, self->memory->png, self->memory->csv,
                            self->memory->json };
  GtkWidget *list = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0), *grid;

  gtk_box_append (GTK_BOX (self), rw_papers_heading (_("Files")));
  for (guint i = 0; i < G_N_ELEMENTS (labels); i++)
    {
      self->formats[i] = gtk_check_button_new_with_label (labels[i]);
      gtk_check_button_set_active (GTK_CHECK_BUTTON (self->formats[i]), kept[i]);
      g_signal_connect_swapped (self->formats[i], "toggled", G_CALLBACK (on_format), self);
      gtk_box_append (GTK_BOX (list), self->formats[i]);
    }
  gtk_box_append (GTK_BOX (self), list);
  grid = rw_papers_grid (GTK_BOX (self));
  self->resolution = resolution_choice (self);
  rw_papers_row (grid, 0, _("Dots per inch"), self->resolution);
  enable_resolution (self);
}

/* ---- from outside ---- */

void
rw_papers_choice_set_project (RwPapersChoice *self, const char *name)
{
  if (g_strcmp0 (self->project, name) == 0)
    return;
  g_free (self->project);
  self->project = g_strdup (name);
  g_free (self->revision);
  self->revision = rw_papers_revision_load (name);
  self->filling = TRUE;
  gtk_editable_set_text (GTK_EDITABLE (self->revision_entry), self->revision);
  self->filling = FALSE;
}

void
rw_papers_choice_fill (RwPapersChoice *self, RwPapersOptions *options)
{
  if (self->is_today)
    {
      g_free (self->date);
      self->date = today ();
    }
  if (self->memory->units != RW_PAPERS_UNITS_OF_WINDOW)
    options->style.units = (RwUnits) self->memory->units;
  options->hand = (RwPapersHand) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->hand));
  options->revision = self->revision;
  options->date = self->date;
  options->pdf = self->memory->pdf;
  options->svg = self->memory->svg;
  options->png = self->memory->png;
  options->csv = self->memory->csv;
  options->json = self->memory->json;
  options->dpi = self->memory->dpi;
}

static void
rw_papers_choice_finalize (GObject *object)
{
  RwPapersChoice *self = RW_PAPERS_CHOICE (object);

  g_free (self->project);
  g_free (self->revision);
  g_free (self->date);
  G_OBJECT_CLASS (rw_papers_choice_parent_class)->finalize (object);
}

static void
rw_papers_choice_class_init (RwPapersChoiceClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = rw_papers_choice_finalize;
  chosen_signal = g_signal_new ("chosen", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                G_TYPE_NONE, 0);
}

static void
rw_papers_choice_init (RwPapersChoice *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 8);
  self->revision = g_strdup ("");
  self->date = today ();
  self->is_today = TRUE;
}

GtkWidget *
rw_papers_choice_new (RwPapersMemory *memory)
{
  RwPapersChoice *self = g_object_new (RW_TYPE_PAPERS_CHOICE, NULL);

  self->memory = memory;
  build_look (self);
  build_formats (self);
  return GTK_WIDGET (self);
}
