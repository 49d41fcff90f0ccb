#include "papers_memory.h"

#define CHOICE "papers"
#define PRINT "print"
#define REVISIONS "revisions"

static char *
file_path (void)
{
  return g_build_filename (g_get_user_config_dir (), "rimwright", "papers.ini", NULL);
}

static GKeyFile *
read_file (void)
{
  GKeyFile *file = g_key_file_new ();
  g_autofree char *path = file_path ();

  g_key_file_load_from_file (file, path, G_KEY_FILE_NONE, NULL);
  return file;
}

static void
write_file (GKeyFile *file)
{
  g_autofree char *path = file_path ();
  g_autofree char *folder = g_path_get_dirname (path);

  g_mkdir_with_parents (folder, 0700);
  g_key_file_save_to_file (file, path, NULL);
}

/* A number within sensible bounds, else the fallback. */
static double
number (GKeyFile *file, const char *group, const char *key, double least, double most, double fallback)
{
  g_autoptr (GError) error = NULL;
  double value = g_key_file_get_double (file, group, key, &error);

  return error == NULL && value >= least && value <= most ? value : fallback;
}

static gboolean
flag (GKeyFile *file, const char *key, gboolean fallback)
{
  g_autoptr (GError) error = NULL;
  gboolean value = g_key_file_get_boolean (file, CHOICE, key, &error);

  return error == NULL ? value : fallback;
}

/* ---- the choice ---- */

/* Paper as it is sold where the maker lives. */
static const RwPaper *
usual_paper (void)
{
  gboolean letter = g_str_equal (gtk_paper_size_get_default (), GTK_PAPER_NAME_LETTER);

  return rw_paper_find (letter ? "letter" : "a4");
}

void
rw_papers_memory_load (RwPapersMemory *memory)
{
  g_autoptr (GKeyFile) file = read_file ();
  g_autofree char *paper = g_key_file_get_string (file, CHOICE, "paper", NULL);

  memory->paper = paper != NULL ? rw_paper_find (paper) : NULL;
  if (memory->paper == NULL)
    memory->paper = usual_paper ();
  memory->margin_mm
      = number (file, CHOICE, "margin", RW_PAPER_MARGIN_MIN, RW_PAPER_MARGIN_MAX, RW_PAPER_MARGIN);
  memory->overlap_mm
      = number (file, CHOICE, "overlap", RW_PAPER_OVERLAP_MIN, RW_PAPER_OVERLAP_MAX, RW_PAPER_OVERLAP);
  memory->printer = g_key_file_get_string (file, CHOICE, "printer", NULL);
  if (memory->printer == NULL)
    memory->printer = g_strdup ("");
  memory->units = (int) number (file, CHOICE, "units", RW_UNITS_MM, RW_UNITS_FRACTION_16,
                                RW_PAPERS_UNITS_OF_WINDOW);
  memory->pdf = flag (file, "pdf", TRUE);
  memory->svg = flag (file, "svg", FALSE);
  memory->png = flag (file, "png", FALSE);
  memory->csv = flag (file, "csv", FALSE);
  memory->json = flag (file, "json", FALSE);
  memory->dpi = (int) number (file, CHOICE, "dpi", RW_PAPERS_DPI_MIN, RW_PAPERS_DPI_MAX, RW_PAPERS_DPI);
}

void
rw_papers_memory_save (const RwPapersMemory *memory)
{
  g_autoptr (GKeyFile) file = read_file ();

  g_key_file_set_string (file, CHOICE, "paper", memory->paper->id);
  g_key_file_set_double (file, CHOICE, "margin", memory->margin_mm);
  g_key_file_set_double (file, CHOICE, "overlap", memory->overlap_mm);
  g_key_file_set_string (file, CHOICE, "printer", memory->printer);
  g_key_file_set_integer (file, CHOICE, "units", memory->units);
  g_key_file_set_boolean (file, CHOICE, "pdf", memory->pdf);
  g_key_file_set_boolean (file, CHOICE, "svg", memory->svg);
  g_key_file_set_boolean (file, CHOICE, "png", memory->png);
  g_key_file_set_boolean (file, CHOICE, "csv", memory->csv);
  g_key_file_set_boolean (file, CHOICE, "json", memory->json);
  g_key_file_set_integer (file, CHOICE, "dpi", memory->dpi);
  write_file (file);
}

void
rw_papers_memory_clear (RwPapersMemory *memory)
{
  g_clear_pointer (&memory->printer, g_free);
}

/* ---- revisions ---- */

/* Names can hold what keys can't. */
static char *
revision_key (const char *project)
{
  g_autofree char *name = g_uri_escape_string (project, NULL, FALSE);

  return g_strconcat ("of-", name, NULL);
}

char *
rw_papers_revision_load (const char *project)
{
  g_autoptr (GKeyFile) file = read_file ();
  g_autofree char *key = revision_key (project);
  char *revision = g_key_file_get_string (file, REVISIONS, key, NULL);

  return revision != NULL ? revision : g_strdup ("");
}

void
rw_papers_revision_save (const char *project, const char *revision)
{
  g_autoptr (GKeyFile) file = read_file ();
  g_autofree char *key = revision_key (project);

  g_key_file_set_string (file, REVISIONS, key, revision);
  write_file (file);
}

/* ---- bars ---- */

/* Names of printers can hold what names of groups can't. */
static char *
bars_group (const char *printer)
{
  g_autofree char *name = g_uri_escape_string (printer != NULL ? printer : "", NULL, FALSE);

  return g_strconcat ("bars ", name, NULL);
}

RwBars
rw_bars_load (const char *printer)
{
  g_autoptr (GKeyFile) file = read_file ();
  g_autofree char *own = bars_group (printer), *any = bars_group ("");
  const char *group = g_key_file_has_group (file, own) ? own : any;

  return (RwBars){ number (file, group, "short", RW_BAR_MIN, RW_BAR_MAX, 100),
                   number (file, group, "long", RW_BAR_MIN, RW_BAR_MAX, 100) };
}

void
rw_bars_save (const char *printer, RwBars bars)
{
  g_autoptr (GKeyFile) file = read_file ();
  g_autofree char *group = bars_group (printer);

  g_key_file_set_double (file, group, "short", bars.short_mm);
  g_key_file_set_double (file, group, "long", bars.long_mm);
  write_file (file);
}

/* ---- print settings ---- */

GtkPrintSettings *
rw_print_settings_load (void)
{
  g_autoptr (GKeyFile) file = read_file ();
  GtkPrintSettings *settings = gtk_print_settings_new ();

  gtk_print_settings_load_key_file (settings, file, PRINT, NULL);
  return settings;
}

void
rw_print_settings_save (GtkPrintSettings *settings)
{
  g_autoptr (GKeyFile) file = read_file ();

  gtk_print_settings_to_key_file (settings, file, PRINT);
  write_file (file);
}
