#include "cli_study.h"

#include <errno.h>
#include <stdio.h>
#include <unistd.h>

#include "io/study_file.h"

enum
{
  GOOD = 0,
  FAILED = 2,
};

static const char *
in_english (const char *english)
{
  return english;
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

static RwStudy *
make_study (const RwOptions *options, RwStudyKind kind, RwStudyLook *look, GError **error)
{
  RwOptions rest = *options; /* the words after the study's name */
  g_autoptr (RwProject) project = NULL;
  g_autoptr (RwAnswer) answer = NULL;

  rest.words = options->words[1] != NULL ? options->words + 1 : NULL;
  project = rw_options_project (&rest, error);
  if (project == NULL)
    return NULL;
  answer = rw_answer_new (project);
  look->heading = rw_study_title (kind);
  return rw_study_new (kind, &answer->now, in_english);
}

int
rw_cli_study (const RwOptions *options, GError **error)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *date = g_date_time_format (now, "%Y-%m-%d");
  g_autoptr (RwStudy) study = NULL;
  g_autoptr (GBytes) bytes = NULL;
  RwStudyLook look = RW_STUDY_LOOK;
  RwStudyFormat format = RW_STUDY_TEXT;
  RwStudyKind kind = RW_STUDY_PITCH;

  look.date = date;
  if (!choose_study (options, &kind, error) || !choose_format (options, &format, error)
      || !rw_options_units (options, &look.style.units, error) || !choose_size (options, &look, error))
    return FAILED;
  study = make_study (options, kind, &look, error);
  if (study == NULL)
    return FAILED;
  if (!rw_study_has_numbers (study))
    {
      g_set_error (error, RW_OPTIONS_ERROR, 0,
                   "The study %s can't be worked out for this build; rimwright check says why", study->id);
      return FAILED;
    }
  bytes = rw_study_write (study, format, &look, error);
  return bytes != NULL && emit (bytes, format, error) ? GOOD : FAILED;
}
