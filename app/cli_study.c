#include "cli_study.h"

#include <errno.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

enum
{
  GOOD = 0,
  FAILED = 2,
};

const char *
rw_cli_in_english (const char *english)
{
  return english;
}

char *
rw_cli_quantity (double value, const char *unit, RwStyle style)
{
  g_autofree char *number = rw_quantity_show (value, unit, style.units, style.decimal);
  const char *shown = rw_quantity_unit (unit, style.units);

  if (*shown == '\0' || strcmp (shown, "°") == 0)
    return g_strconcat (number, shown, NULL);
  return g_strconcat (number, " ", shown, NULL);
}

char *
rw_cli_study_overview (void)
{
  GString *text = g_string_new ("\nStudies:\n");

  for (int kind = 0; kind < RW_STUDY_COUNT; kind++)
    g_string_append_printf (text, "  %-11s %s\n", rw_study_id ((RwStudyKind) kind),
                            rw_study_title ((RwStudyKind) kind));
  g_string_append (text, "\nThe file goes to standard output: rimwright study action --format pdf >action.pdf\n");
  return g_string_free (text, FALSE);
}

/* ---- words of choice ---- */

static gboolean
choose_study (const RwOptions *options, RwStudyKind *kind, GError **error)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new ();
  int found = options->words != NULL ? rw_study_find (options->words[0]) : -1;

  for (int i = 0; i < RW_STUDY_COUNT; i++)
    g_ptr_array_add (names, (char *) rw_study_id ((RwStudyKind) i));
  if (options->words == NULL)
    g_set_error_literal (error, RW_OPTIONS_ERROR, 0, "study needs the name of a study, as in rimwright study action");
  else if (found < 0)
    rw_options_fail_unknown (error, "There is no study %s", options->words[0], names);
  else
    *kind = (RwStudyKind) found;
  return found >= 0;
}

static gboolean
choose_format (const RwOptions *options, RwStudyFormat *format, GError **error)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new ();
  int found = options->format != NULL ? rw_study_format_find (options->format) : RW_STUDY_TEXT;

  for (int i = 0; i < RW_STUDY_FORMAT_COUNT; i++)
    g_ptr_array_add (names, (char *) rw_study_format_name ((RwStudyFormat) i));
  if (found < 0)
    return rw_options_fail_unknown (error, "There is no format %s", options->format, names);
  *format = (RwStudyFormat) found;
  return TRUE;
}

static gboolean
is_between (double value, double least)
{
  return value >= least && value <= RW_STUDY_MOST;
}

/* "180x80". */
static gboolean
choose_size (const RwOptions *options, RwStudyLook *look, GError **error)
{
  const char *size = options->size;
  char *end = NULL;

  if (size == NULL)
    return TRUE;
  look->width = g_ascii_strtod (size, &end);
  look->height = *end == 'x' ? g_ascii_strtod (end + 1, &end) : 0;
  if (*end == '\0' && is_between (look->width, RW_STUDY_LEAST_WIDTH)
      && is_between (look->height, RW_STUDY_LEAST_HEIGHT))
    return TRUE;
  g_set_error (error, RW_OPTIONS_ERROR, 0, "--size is width and height in mm, from %gx%g to %gx%g, as in 180x80",
               RW_STUDY_LEAST_WIDTH, RW_STUDY_LEAST_HEIGHT, RW_STUDY_MOST, RW_STUDY_MOST);
  return FALSE;
}

gboolean
rw_cli_study_look (const RwOptions *options, RwStudyLook *look, GError **error)
{
  RwStudyFormat format;

  *look = RW_STUDY_LOOK;
  return choose_format (options, &format, error) && rw_options_units (options, &look->style.units, error)
         && choose_size (options, look, error);
}

RwProject *
rw_cli_study_project (const RwOptions *options, guint words, GError **error)
{
  RwOptions rest = *options;

  rest.words = options->words[words] != NULL ? options->words + words : NULL;
  return rw_options_project (&rest, error);
}

/* ---- output ---- */

static gboolean
emit (GBytes *bytes, RwStudyFormat format, GError **error)
{
  gsize length;
  const char *data = g_bytes_get_data (bytes, &length);

  if (format > RW_STUDY_SVG && isatty (STDOUT_FILENO))
    {
      g_set_error (error, RW_OPTIONS_ERROR, 0,
                   "A picture is nothing for a terminal; send it to a file, as in >plot.%s",
                   rw_study_format_name (format));
      return FALSE;
    }
  if (fwrite (data, 1, length, stdout) == length && fflush (stdout) == 0)
    return TRUE;
  g_set_error (error, RW_OPTIONS_ERROR, 0, "Standard output can't be written: %s", g_strerror (errno));
  return FALSE;
}

gboolean
rw_cli_study_write (const RwOptions   *options,
                    const RwStudy     *study,
                    const RwStudyLook *look,
                    const char        *before,
                    GError           **error)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *date = g_date_time_format (now, "%Y-%m-%d");
  g_autoptr (GBytes) bytes = NULL;
  RwStudyFormat format = RW_STUDY_TEXT;
  RwStudyLook dated = *look;

  dated.date = date;
  if (!choose_format (options, &format, error))
    return FALSE;
  if (!rw_study_has_numbers (study))
    {
      g_set_error (error, RW_OPTIONS_ERROR, 0,
                   "The study %s can't be worked out for this build; rimwright check says why", study->id);
      return FALSE;
    }
  bytes = rw_study_write (study, format, &dated, error);
  if (bytes == NULL)
    return FALSE;
  if (format == RW_STUDY_TEXT && before != NULL)
    fputs (before, stdout);
  return emit (bytes, format, error);
}

int
rw_cli_study (const RwOptions *options, GError **error)
{
  g_autoptr (RwProject) project = NULL;
  g_autoptr (RwAnswer) answer = NULL;
  g_autoptr (RwStudy) study = NULL;
  RwStudyKind kind = RW_STUDY_PITCH;
  RwStudyLook look;

  if (!choose_study (options, &kind, error) || !rw_cli_study_look (options, &look, error))
    return FAILED;
  project = rw_cli_study_project (options, 1, error);
  if (project == NULL)
    return FAILED;
  answer = rw_answer_new (project);
  look.heading = rw_study_title (kind);
  study = rw_study_new (kind, &answer->now, rw_cli_in_english);
  return rw_cli_study_write (options, study, &look, NULL, error) ? GOOD : FAILED;
}
