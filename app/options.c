#include "options.h"

#include <string.h>

#include "io/project_file.h"
#include "making/making.h"
#include "closest.h"

G_DEFINE_QUARK (rw-options-error-quark, rw_options_error)

/* ---- messages ---- */

static gboolean
fail (GError **error, const char *format, const char *word)
{
  g_autofree char *shown = rw_file_quote (word);
  g_autofree char *message = g_strdup_printf (format, shown);

  g_set_error_literal (error, RW_OPTIONS_ERROR, 0, message);
  return FALSE;
}

gboolean
rw_options_fail_unknown (GError **error, const char *what, const char *word, const GPtrArray *names)
{
  g_autofree char *shown = rw_file_quote (word);
  g_autofree char *unknown = g_strdup_printf (what, shown);

  g_set_error (error, RW_OPTIONS_ERROR, 0, "%s; the closest is %s", unknown, rw_closest_name (word, names));
  return FALSE;
}

/* An error of the engine, which speaks of the parameter by its label, with the id added. */
static gboolean
fail_value (GError **error, const char *id, const GError *reason)
{
  g_autofree char *sentence = rw_file_sentence (reason->message);

  g_set_error (error, RW_OPTIONS_ERROR, 0, "%s (%s)", sentence, id);
  return FALSE;
}

/* ---- reading the words ---- */

static void
add_entries (GOptionContext *context, RwOptions *options, RwTakes takes)
{
  const GOptionArg word = G_OPTION_ARG_FILENAME, words = G_OPTION_ARG_FILENAME_ARRAY;
  const GOptionArg flag = G_OPTION_ARG_NONE;
  const struct
  {
    RwTakes     takes; /* 0: for all commands */
    const char *name;
    GOptionArg  kind;
    gpointer    data;
    const char *argument, *help;
    char        letter;
  } rows[] = {
    { RW_TAKES_BUILD, "set", words, &options->settings, "ID=VALUE", "Give a parameter another value", 0 },
    { RW_TAKES_BUILD, "measured", words, &options->measured, "ID=VALUE", "Say what was measured", 0 },
    { RW_TAKES_FORMAT, "format", word, &options->format, "FORMAT", "text, json, or csv for a table", 0 },
    { RW_TAKES_PLOT, "format", word, &options->format, "FORMAT", "text, csv, json, svg, pdf or png", 0 },
    { RW_TAKES_PLOT, "size", word, &options->size, "WxH", "Of a picture, in mm: 180x80", 0 },
    { RW_TAKES_WHAT_IF, "wanted", G_OPTION_ARG_STRING, &options->wanted, "VALUE",
      "Find the value of PARAMETER that makes RESULT this", 0 },
    { RW_TAKES_TUNING, "capo", G_OPTION_ARG_INT, &options->capo, "FRET", "With a capo on this fret; 0, none", 0 },
    { RW_TAKES_UNITS, "units", word, &options->units, "UNITS",
      "mm, inch, or fraction, fraction-32, fraction-16 (of an inch)", 0 },
    { RW_TAKES_PAPERS, "into", word, &options->into, "DIR", "The folder to write to", 0 },
    { RW_TAKES_PAPERS, "paper", word, &options->paper, "PAPER", "a4, letter and others", 0 },
    { RW_TAKES_PAPERS, "only", words, &options->only, "NAME", "Write this sheet and no others", 0 },
    { RW_TAKES_PAPERS, "svg", flag, &options->svg, NULL, "Write each sheet as SVG too", 0 },
    { RW_TAKES_PAPERS, "png", flag, &options->png, NULL, "Write each sheet as PNG too", 0 },
    { RW_TAKES_REMEDIES, "remedies", flag, &options->remedies, NULL, "After each finding what sets it right",
      0 },
    { RW_TAKES_PAPERS, "record", flag, &options->record, NULL, "Write into FILE that these papers left", 0 },
    { RW_TAKES_PAPERS, "dpi", G_OPTION_ARG_DOUBLE, &options->dpi, "DPI", "Dots per inch of PNG: 200", 0 },
    { RW_TAKES_PAPERS, "hand", word, &options->hand, "HAND", "build, right or left: for whom to draw", 0 },
    { RW_TAKES_PAPERS, "revision", G_OPTION_ARG_STRING, &options->revision, "WORD",
      "The revision shown on each page: A", 0 },
    { RW_TAKES_PAPERS, "margin", G_OPTION_ARG_DOUBLE, &options->margin, "MM", "Round every page: 10", 0 },
    { RW_TAKES_PAPERS, "overlap", G_OPTION_ARG_DOUBLE, &options->overlap, "MM",
      "Of the pages of one sheet: 12", 0 },
    { RW_TAKES_PAPERS, "bar-short", G_OPTION_ARG_DOUBLE, &options->bar_short, "MM",
      "What your printer makes of 100 mm along the paper's short edge", 0 },
    { RW_TAKES_PAPERS, "bar-long", G_OPTION_ARG_DOUBLE, &options->bar_long, "MM",
      "The same along its long edge", 0 },
    { RW_TAKES_SPREAD, "builds", G_OPTION_ARG_INT, &options->builds, "N", "So many builds by chance; 10000",
      0 },
    { RW_TAKES_SPREAD, "seed", G_OPTION_ARG_INT64, &options->seed, "S",
      "The same seed gives the same numbers; 1", 0 },
    { RW_TAKES_SHELF, "shelf", G_OPTION_ARG_FILENAME, &options->shelf, "CSV",
      "The stock, as a table; without it, the shelf of the project", 0 },
    { 0, "help", flag, &options->help, NULL, "Show this help", 'h' },
    { 0, G_OPTION_REMAINING, words, &options->words, NULL, NULL, 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    if (rows[i].takes == 0 || (rows[i].takes & takes))
      {
        const GOptionEntry entries[] = {
          { rows[i].name, rows[i].letter, 0, rows[i].kind, rows[i].data, rows[i].help, rows[i].argument },
          G_OPTION_ENTRY_NULL,
        };

        g_option_context_add_main_entries (context, entries, NULL);
      }
}

static gboolean
check_words (const RwOptions *options, const char *command, RwTakes takes, GError **error)
{
  guint count = options->words != NULL ? g_strv_length (options->words) : 0;
  guint most = takes & (RW_TAKES_BUILD | RW_TAKES_NAME) ? 1 : 0;

  most += takes & (RW_TAKES_STUDY | RW_TAKES_TUNING) ? 1 : takes & RW_TAKES_WHAT_IF ? 2 : 0;
  if (count > most)
    return fail (error, "There is one word too many: %s", options->words[most]);
  if (takes & RW_TAKES_PAPERS && options->into == NULL && !options->help)
    return fail (error, "%s needs a folder to write to, as in --into papers", command);
  return TRUE;
}

gboolean
rw_options_read (RwOptions  *options,
                 const char *command,
                 const char *summary,
                 RwTakes     takes,
                 char      **words,
                 char      **help,
                 GError    **error)
{
  const char *takes_words = takes & RW_TAKES_STUDY     ? "NAME [FILE]"
                            : takes & RW_TAKES_WHAT_IF ? "RESULT PARAMETER [FILE]"
                            : takes & RW_TAKES_TUNING  ? "TUNING [FILE]"
                            : takes & RW_TAKES_BUILD   ? "[FILE]"
                            : takes & RW_TAKES_NAME    ? "[NAME]"
                                                       : NULL;
  g_autoptr (GOptionContext) context = g_option_context_new (takes_words);
  g_autofree char *program = g_strconcat ("rimwright ", command, NULL);
  g_auto (GStrv) arguments = g_new0 (char *, g_strv_length (words) + 2);
  g_autoptr (GError) reason = NULL;

  arguments[0] = g_strdup (program);
  for (int i = 0; words[i] != NULL; i++)
    arguments[i + 1] = g_strdup (words[i]);
  g_set_prgname (program);
  options->builds = 10000;
  options->seed = 1;
  g_option_context_set_help_enabled (context, FALSE);
  g_option_context_set_summary (context, summary);
  add_entries (context, options, takes);
  *help = g_option_context_get_help (context, TRUE, NULL);
  if (!g_option_context_parse_strv (context, &arguments, &reason))
    {
      g_autofree char *sentence = rw_file_sentence (reason->message);

      g_set_error_literal (error, RW_OPTIONS_ERROR, 0, sentence);
      return FALSE;
    }
  return check_words (options, command, takes, error);
}

void
rw_options_clear (RwOptions *options)
{
  g_strfreev (options->settings);
  g_strfreev (options->measured);
  g_strfreev (options->only);
  g_strfreev (options->words);
  g_free (options->shelf);
  g_free (options->format);
  g_free (options->units);
  g_free (options->paper);
  g_free (options->into);
  g_free (options->size);
  g_free (options->wanted);
  g_free (options->hand);
  g_free (options->revision);
}

/* ---- the build ---- */

/* RwTakes "ID=VALUE" apart. */
static char **
split (const char *option, const char *word, GError **error)
{
  g_auto (GStrv) parts = g_strsplit (word, "=", 2);

  if (!g_utf8_validate (word, -1, NULL))
    fail (error, "%s is no text in UTF-8", word);
  else if (parts[0] == NULL || parts[1] == NULL)
    {
      g_autofree char *format = g_strdup_printf ("%s wants ID=VALUE, not %%s", option);

      fail (error, format, word);
    }
  else
    {
      g_strstrip (parts[0]);
      return g_steal_pointer (&parts);
    }
  return NULL;
}

/* Ids that can be set; those that can be measured besides. */
static GPtrArray *
known_ids (gboolean with_dimensions)
{
  GPtrArray *ids = g_ptr_array_new ();

  for (int i = 0; i < RW_PARAM_COUNT; i++)
    g_ptr_array_add (ids, (char *) rw_param ((RwParamId) i)->id);
  for (int i = 0; with_dimensions && i < rw_dims_count; i++)
    g_ptr_array_add (ids, (char *) rw_dims[i].id);
  return ids;
}

static gboolean
set (RwProject *project, const char *id, const char *value, GError **error)
{
  int param = rw_param_find (id);
  g_autoptr (GError) reason = NULL;

  if (param < 0)
    {
      g_autoptr (GPtrArray) ids = known_ids (FALSE);

      return rw_options_fail_unknown (error, "There is no parameter %s", id, ids);
    }
  return rw_design_read (&project->design, (RwParamId) param, value, RW_STYLE_FILE, &reason)
         || fail_value (error, id, reason);
}

static gboolean
measure (RwProject *project, const char *id, const char *text, GError **error)
{
  const char *unit = rw_measurable_unit (id);
  g_autoptr (GError) reason = NULL;
  double value = 0;

  if (unit != NULL && !rw_quantity_read (text, unit, NULL, '.', &value, &reason))
    return fail_value (error, id, reason);
  if (rw_making_measure (project, id, &value, 1, "", "", &reason))
    return TRUE;
  if (g_error_matches (reason, RW_PARAM_ERROR, RW_PARAM_ERROR_UNKNOWN))
    {
      g_autoptr (GPtrArray) ids = known_ids (TRUE);

      return rw_options_fail_unknown (error, "There is no parameter and no dimension %s", id, ids);
    }
  return fail_value (error, id, reason);
}

/* Measured course thicknesses may be given all at once, as a list. */
static gboolean
measure_any (RwProject *project, const char *id, const char *text, GError **error)
{
  g_auto (GStrv) items = NULL;

  if (strcmp (id, rw_param (RW_P_rim_course_thickness)->id) != 0)
    return measure (project, id, text, error);
  items = g_strsplit (text, ";", -1);
  for (int i = 0; items[i] != NULL; i++)
    {
      g_autofree char *course = g_strdup_printf ("%s[%d]", id, i + 1);

      if (!measure (project, course, items[i], error))
        return FALSE;
    }
  return TRUE;
}

static gboolean
apply (RwProject  *project,
       const char *option,
       char      **words,
       gboolean (*use) (RwProject *project, const char *id, const char *value, GError **error),
       GError    **error)
{
  for (int i = 0; words != NULL && words[i] != NULL; i++)
    {
      g_auto (GStrv) parts = split (option, words[i], error);

      if (parts == NULL || !use (project, parts[0], parts[1], error))
        return FALSE;
    }
  return TRUE;
}

RwProject *
rw_options_project (const RwOptions *options, GError **error)
{
  g_autoptr (RwProject) project = NULL;

  project = options->words != NULL ? rw_project_load (options->words[0], error) : rw_project_new ();
  if (project == NULL
      || !apply (project, "--set", options->settings, set, error)
      || !apply (project, "--measured", options->measured, measure_any, error))
    return NULL;
  return g_steal_pointer (&project);
}

/* ---- words of choice ---- */

/* The place of word among names, the first where word is NULL. */
static int
choose (const char *option, const char *word, const char *const *names, GError **error)
{
  g_autofree char *all = g_strjoinv (", ", (char **) names), *format = NULL;

  if (word == NULL)
    return 0;
  for (int i = 0; names[i] != NULL; i++)
    if (strcmp (names[i], word) == 0)
      return i;
  format = g_strdup_printf ("%s is one of %s, not %%s", option, all);
  fail (error, format, word);
  return -1;
}

gboolean
rw_options_format (const RwOptions *options, gboolean csv, RwListFormat *format, GError **error)
{
  static const char *const names[] = { "text", "json", "csv", NULL };
  static const char *const without_csv[] = { "text", "json", NULL };
  static const RwListFormat formats[] = { RW_LIST_TEXT, RW_LIST_JSON, RW_LIST_CSV };
  int chosen = choose ("--format", options->format, csv ? names : without_csv, error);

  if (chosen >= 0)
    *format = formats[chosen];
  return chosen >= 0;
}

gboolean
rw_options_units (const RwOptions *options, RwUnits *units, GError **error)
{
  static const char *const names[] = { "mm", "inch", "fraction", "fraction-32", "fraction-16", NULL };
  static const RwUnits all[]
    = { RW_UNITS_MM, RW_UNITS_INCH, RW_UNITS_FRACTION, RW_UNITS_FRACTION_32, RW_UNITS_FRACTION_16 };
  int chosen = choose ("--units", options->units, names, error);

  if (chosen >= 0)
    *units = all[chosen];
  return chosen >= 0;
}

gboolean
rw_options_paper (const RwOptions *options, const RwPaper **paper, GError **error)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new ();

  *paper = rw_paper_find (options->paper != NULL ? options->paper : "a4");
  if (*paper != NULL)
    return TRUE;
  for (int i = 0; i < rw_papers_count; i++)
    g_ptr_array_add (names, (char *) rw_papers[i].id);
  return rw_options_fail_unknown (error, "There is no paper %s", options->paper, names);
}

gboolean
rw_options_hand (const RwOptions *options, RwPapersHand *hand, GError **error)
{
  static const char *const names[] = { "build", "right", "left", NULL };
  static const RwPapersHand all[] = { RW_PAPERS_AS_BUILT, RW_PAPERS_RIGHT, RW_PAPERS_LEFT };
  int chosen = choose ("--hand", options->hand, names, error);

  if (chosen >= 0)
    *hand = all[chosen];
  return chosen >= 0;
}

/* 0: not given. */
static gboolean
check_number (double number, const char *what, double least, double most, GError **error)
{
  if (number == 0 || (number >= least && number <= most))
    return TRUE;
  g_set_error (error, RW_OPTIONS_ERROR, 0, "%s %g to %g, not %g", what, least, most, number);
  return FALSE;
}

gboolean
rw_options_check_measures (const RwOptions *options, GError **error)
{
  const char *bar = "A bar of 100 mm measures";

  return check_number (options->bar_short, bar, RW_BAR_MIN, RW_BAR_MAX, error)
         && check_number (options->bar_long, bar, RW_BAR_MIN, RW_BAR_MAX, error)
         && check_number (options->margin, "A margin is", RW_PAPER_MARGIN_MIN, RW_PAPER_MARGIN_MAX, error)
         && check_number (options->overlap, "An overlap is", RW_PAPER_OVERLAP_MIN, RW_PAPER_OVERLAP_MAX,
                          error)
         && check_number (options->dpi, "Dots per inch are", RW_PAPERS_DPI_MIN, RW_PAPERS_DPI_MAX, error);
}

gboolean
rw_options_check_only (const RwOptions *options, GError **error)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new ();

  for (int i = 0; i < rw_paper_kinds_count; i++)
    g_ptr_array_add (names, (char *) rw_paper_kinds[i].id);
  for (int i = 0; options->only != NULL && options->only[i] != NULL; i++)
    if (rw_paper_kind_find (options->only[i]) < 0)
      return rw_options_fail_unknown (error, "There is no sheet %s", options->only[i], names);
  return TRUE;
}
