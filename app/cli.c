#include "cli.h"

#include <errno.h>
#include <stdio.h>
#include <string.h>

#include "base/words.h"
#include "io/project_file.h"
#include "cli_cut.h"
#include "cli_making.h"
#include "cli_spread.h"
#include "cli_study.h"
#include "cli_tuning.h"
#include "cli_what_if.h"
#include "examples.h"
#include "language.h"
#include "options.h"

enum
{
  STATUS_GOOD = 0,
  STATUS_STOP = 1,
  STATUS_FAILED = 2,
};

/* Does what a command is for; returns the exit status, or STATUS_FAILED with error set. */
typedef int (*Run) (const RwOptions *options, GError **error);

/* ---- output ---- */

static int
complain (const char *message)
{
  g_autofree char *line = g_strdelimit (g_strdup (message), "\n\r", ' ');

  fprintf (stderr, "rimwright: %s%s\n", line, g_str_has_suffix (line, ".") ? "" : ".");
  return STATUS_FAILED;
}

/* Writes all of text to standard output and makes sure that it has arrived. */
static gboolean
emit (const char *text, GError **error)
{
  if (fputs (text, stdout) >= 0 && fflush (stdout) == 0)
    return TRUE;
  g_set_error (error, RW_OPTIONS_ERROR, 0, "Standard output can't be written: %s", g_strerror (errno));
  return FALSE;
}

/* ---- the commands ---- */

static int
run_list (const RwOptions *options, GError **error)
{
  g_autoptr (RwProject) project = NULL;
  g_autoptr (RwAnswer) answer = NULL;
  g_autofree char *text = NULL;
  RwListFormat format;
  RwUnits units;

  if (!rw_options_format (options, TRUE, &format, error) || !rw_options_units (options, &units, error))
    return STATUS_FAILED;
  project = rw_options_project (options, error);
  if (project == NULL)
    return STATUS_FAILED;
  answer = rw_answer_new (project);
  text = rw_list_write (project, answer, format, units);
  return emit (text, error) ? STATUS_GOOD : STATUS_FAILED;
}

static int
run_check (const RwOptions *options, GError **error)
{
  g_autoptr (RwProject) project = NULL;
  g_autoptr (RwAnswer) answer = NULL;
  g_autofree char *text = NULL;
  RwListFormat format;
  RwUnits units;

  if (!rw_options_format (options, FALSE, &format, error) || !rw_options_units (options, &units, error))
    return STATUS_FAILED;
  project = rw_options_project (options, error);
  if (project == NULL)
    return STATUS_FAILED;
  answer = rw_answer_new (project);
  text = rw_findings_write (project, answer, options->remedies, format, units);
  if (!emit (text, error))
    return STATUS_FAILED;
  return rw_answer_stops (answer) ? STATUS_STOP : STATUS_GOOD;
}

static gboolean
write_papers (const RwProject *project, const RwPapersOptions *papers, const char *folder, GError **error)
{
  g_autoptr (GPtrArray) files = g_ptr_array_new_with_free_func (g_free);
  GString *names = g_string_new (NULL);
  gboolean good = rw_papers_write (project, papers, folder, files, error);

  for (guint i = 0; i < files->len; i++)
    g_string_append_printf (names, "%s\n", (const char *) g_ptr_array_index (files, i));
  good = good && emit (names->str, error);
  g_string_free (names, TRUE);
  return good;
}

static int
run_papers (const RwOptions *options, GError **error)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *date = g_date_time_format (now, "%Y-%m-%d");
  g_autoptr (RwProject) project = NULL;
  RwPapersOptions papers = {
    .only = (const char **) options->only,
    .pdf = TRUE,
    .svg = options->svg,
    .png = options->png,
    .dpi = options->dpi,
    .revision = options->revision,
    .style = RW_STYLE_FILE,
    .date = date,
    .margin_mm = options->margin,
    .overlap_mm = options->overlap,
    .bar_short_mm = options->bar_short,
    .bar_long_mm = options->bar_long,
  };

  if (!rw_options_paper (options, &papers.paper, error)
      || !rw_options_units (options, &papers.style.units, error)
      || !rw_options_check_only (options, error) || !rw_options_check_measures (options, error)
      || !rw_options_hand (options, &papers.hand, error) || !rw_cli_check_record (options, error))
    return STATUS_FAILED;
  project = rw_options_project (options, error);
  if (project == NULL)
    return STATUS_FAILED;
  rw_language_speak ();
  papers.style.decimal = rw_locale_decimal ();
  if (!write_papers (project, &papers, options->into, error))
    return STATUS_FAILED;
  if (options->record && !rw_cli_record (options, project, date, papers.style.units, error))
    return STATUS_FAILED;
  return STATUS_GOOD;
}

static int
run_steps (const RwOptions *options, GError **error)
{
  g_autofree char *text = NULL;

  return rw_cli_steps (options, &text, error) && emit (text, error) ? STATUS_GOOD : STATUS_FAILED;
}

static int
run_changes (const RwOptions *options, GError **error)
{
  g_autofree char *text = NULL;

  return rw_cli_changes (options, &text, error) && emit (text, error) ? STATUS_GOOD : STATUS_FAILED;
}

static int
run_spread (const RwOptions *options, GError **error)
{
  g_autofree char *text = NULL;

  if (!rw_cli_spread (options, &text, error) || !emit (text, error))
    return STATUS_FAILED;
  return STATUS_GOOD;
}

static int
run_cut (const RwOptions *options, GError **error)
{
  g_autofree char *text = NULL;
  gboolean enough = FALSE;

  if (!rw_cli_cut (options, &text, &enough, error) || !emit (text, error))
    return STATUS_FAILED;
  return enough ? STATUS_GOOD : STATUS_STOP;
}

static int
run_parameters (const RwOptions *options, GError **error)
{
  g_autofree char *text = NULL;
  RwListFormat format;

  if (!rw_options_format (options, TRUE, &format, error))
    return STATUS_FAILED;
  text = rw_parameters_write (format);
  return emit (text, error) ? STATUS_GOOD : STATUS_FAILED;
}

static int
run_example (const RwOptions *options, GError **error)
{
  const char *name = options->words != NULL ? options->words[0] : rw_examples[0].name;
  const RwExample *example = rw_example_find (name);
  g_autoptr (RwProject) project = NULL;
  g_autofree char *text = NULL;

  if (example == NULL)
    {
      g_autoptr (GPtrArray) names = g_ptr_array_new ();

      for (int i = 0; i < rw_examples_count; i++)
        g_ptr_array_add (names, (char *) rw_examples[i].name);
      rw_options_fail_unknown (error, "There is no example %s", name, names);
      return STATUS_FAILED;
    }
  project = rw_example_project (example);
  text = rw_project_to_text (project);
  return emit (text, error) ? STATUS_GOOD : STATUS_FAILED;
}

/* ---- choosing ---- */

static const struct
{
  const char *name;
  const char *summary;
  RwTakes       takes;
  Run         run;
} commands[] = {
  { "list", "Lists every dimension of a build, and what does not fit.",
    RW_TAKES_BUILD | RW_TAKES_FORMAT | RW_TAKES_UNITS, run_list },
  { "check", "Says what does not fit; exit status 1 where something stops the build and is not accepted.",
    RW_TAKES_BUILD | RW_TAKES_FORMAT | RW_TAKES_UNITS | RW_TAKES_REMEDIES, run_check },
  { "papers", "Writes the papers for the bench and says which files they are.",
    RW_TAKES_BUILD | RW_TAKES_UNITS | RW_TAKES_PAPERS, run_papers },
  { "steps", "Lists the steps of the making, and how far they have come.",
    RW_TAKES_BUILD | RW_TAKES_FORMAT | RW_TAKES_UNITS, run_steps },
  { "changes", "Says what has changed since papers left, and which of them are out of date.",
    RW_TAKES_BUILD | RW_TAKES_FORMAT, run_changes },
  { "spread", "Builds by chance as a shop does: what comes out how far off plan, and where care pays.",
    RW_TAKES_BUILD | RW_TAKES_FORMAT | RW_TAKES_UNITS | RW_TAKES_SPREAD, run_spread },
  { "study", "Studies the set-up: a table of numbers, or a picture of their plots.",
    RW_TAKES_BUILD | RW_TAKES_UNITS | RW_TAKES_PLOT | RW_TAKES_STUDY, rw_cli_study },
  { "what-if", "Shows a result against a parameter; exit status 1 where no value gives what is wanted.",
    RW_TAKES_BUILD | RW_TAKES_UNITS | RW_TAKES_PLOT | RW_TAKES_WHAT_IF, rw_cli_what_if },
  { "tuning", "Tunes the strings that are on to other notes, and says what changes.",
    RW_TAKES_BUILD | RW_TAKES_UNITS | RW_TAKES_PLOT | RW_TAKES_TUNING, rw_cli_tuning },
  { "cut", "Plans how the build is cut from the stock; exit status 1 where the stock will not do.",
    RW_TAKES_BUILD | RW_TAKES_FORMAT | RW_TAKES_UNITS | RW_TAKES_SHELF, run_cut },
  { "parameters", "Shows the table of parameters.", RW_TAKES_FORMAT, run_parameters },
  { "example", "Writes a built-in build as a project file on standard output.", RW_TAKES_NAME, run_example },
};

static int
find_command (const char *word)
{
  for (guint i = 0; i < G_N_ELEMENTS (commands); i++)
    if (strcmp (commands[i].name, word) == 0)
      return (int) i;
  return -1;
}

static char *
overview (void)
{
  GString *text = g_string_new (
    "Usage:\n"
    "  rimwright [FILE]                the window\n"
    "  rimwright COMMAND [OPTION...]   without a window; COMMAND --help says more\n"
    "\n"
    "Commands:\n");

  for (guint i = 0; i < G_N_ELEMENTS (commands); i++)
    g_string_append_printf (text, "  %-11s %s\n", commands[i].name, commands[i].summary);
  g_string_append (
    text,
    "\n"
    "Without FILE a command takes the built-in build; - is standard input.\n"
    "VALUE is in the unit of the parameter unless it carries one: --set rim.wall=\"9/16 in\".\n");
  return g_string_free (text, FALSE);
}

static gboolean
is_help (const char *word)
{
  return strcmp (word, "--help") == 0 || strcmp (word, "-h") == 0;
}

/* Neither a command nor a file: more likely a command misspelt than a file that has gone. */
static gboolean
is_stray (const char *word)
{
  return word[0] != '-' && strpbrk (word, "./") == NULL && find_command (word) < 0
         && !g_file_test (word, G_FILE_TEST_EXISTS);
}

gboolean
rw_cli_knows (const char *word)
{
  return is_help (word) || strcmp (word, "--version") == 0 || find_command (word) >= 0 || is_stray (word);
}

static int
fail_stray (const char *word, GError **error)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new ();

  for (guint i = 0; i < G_N_ELEMENTS (commands); i++)
    g_ptr_array_add (names, (char *) commands[i].name);
  rw_options_fail_unknown (error, "There is no command and no file %s", word, names);
  return STATUS_FAILED;
}

/* Where a name is to be chosen, the names follow the options. */
static int
show_help (int command, const char *options, GError **error)
{
  RwTakes takes = commands[command].takes;
  g_autofree char *names = takes & RW_TAKES_NAME     ? rw_examples_overview ()
                           : takes & RW_TAKES_STUDY  ? rw_cli_study_overview ()
                           : takes & RW_TAKES_TUNING ? rw_cli_tuning_overview ()
                                                     : NULL;
  g_autofree char *text = g_strconcat (options, names, NULL);

  return emit (text, error) ? STATUS_GOOD : STATUS_FAILED;
}

static int
run_command (int command, char **words, GError **error)
{
  g_auto (RwOptions) options = { 0 };
  g_autofree char *help = NULL;

  if (!rw_options_read (&options, commands[command].name, commands[command].summary, commands[command].takes,
                        words, &help, error))
    return STATUS_FAILED;
  if (options.help)
    return show_help (command, help, error);
  return commands[command].run (&options, error);
}

static int
show_about (const char *word, GError **error)
{
  g_autofree char *text = is_help (word) ? overview () : g_strdup ("rimwright " RW_VERSION "\n");

  return emit (text, error) ? STATUS_GOOD : STATUS_FAILED;
}

int
rw_cli_run (int argc, char **argv)
{
  int command = find_command (argv[1]), status;
  g_autoptr (GError) error = NULL;

  if (command >= 0)
    status = run_command (command, argv + 2, &error);
  else if (is_stray (argv[1]))
    status = fail_stray (argv[1], &error);
  else
    status = show_about (argv[1], &error);
  return error != NULL ? complain (error->message) : status;
}
