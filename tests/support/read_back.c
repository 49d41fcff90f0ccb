#include "read_back.h"

#include <glib/gstdio.h>
#include <math.h>
#include <string.h>

/* Asked by the leak sanitizer: fontconfig keeps its configuration to the end of the program. */
const char *__lsan_default_suppressions (void);

const char *
__lsan_default_suppressions (void)
{
  return "leak:libfontconfig\n";
}

/* Runs a command line and gives what it prints. */
static char *
run (const char *command)
{
  g_autoptr (GError) error = NULL;
  char *output = NULL;
  int status;

  g_spawn_command_line_sync (command, &output, NULL, &status, &error);
  g_assert_no_error (error);
  g_assert_cmpint (status, ==, 0);
  return output;
}

char *
read_pdf (GBytes *pdf, const char *program, const char *options)
{
  g_autofree char *found = g_find_program_in_path (program);
  g_autofree char *folder = g_dir_make_tmp ("rimwright-read-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "a.pdf", NULL);
  gboolean to_output = !g_str_equal (program, "pdfinfo") && !g_str_equal (program, "pdffonts");
  g_autofree char *command = g_strdup_printf ("%s %s '%s'%s", program, options, path, to_output ? " -" : "");
  g_autoptr (GError) error = NULL;
  char *output = NULL;

  g_file_set_contents (path, g_bytes_get_data (pdf, NULL), (gssize) g_bytes_get_size (pdf), &error);
  g_assert_no_error (error);
  if (found != NULL)
    output = run (command);
  else
    g_test_skip ("poppler's programs are not installed");
  g_remove (path);
  g_rmdir (folder);
  return output;
}

static void
keep (char **place, const char *value)
{
  g_free (*place);
  *place = g_strdup (value);
}

/* "1 0 0 1 0 0 M 0 0 L 1 1", of transform="matrix(1,0,0,1,0,0)" or none. */
static char *
path_of (const char **names, const char **values)
{
  g_autofree char *matrix = g_strdup ("1 0 0 1 0 0");
  const char *data = "";

  for (int i = 0; names[i] != NULL; i++)
    {
      if (g_str_equal (names[i], "d"))
        data = values[i];
      if (g_str_equal (names[i], "transform") && g_str_has_prefix (values[i], "matrix("))
        {
          keep (&matrix, values[i] + strlen ("matrix("));
          g_strdelimit (matrix, ",)", ' ');
        }
    }
  return g_strconcat (matrix, " ", data, NULL);
}

static void
read_start (GMarkupParseContext *context,
            const char          *element,
            const char         **names,
            const char         **values,
            gpointer             data,
            GError             **error)
{
  SvgReader *reader = data;

  for (int i = 0; names[i] != NULL; i++)
    {
      if (g_str_equal (element, "g") && g_str_equal (names[i], "id"))
        keep (&reader->group, values[i]);
      if (g_str_equal (element, "svg") && g_str_equal (names[i], "width"))
        keep (&reader->width, values[i]);
      if (g_str_equal (element, "svg") && g_str_equal (names[i], "height"))
        keep (&reader->height, values[i]);
      if (g_str_equal (element, "svg") && g_str_equal (names[i], "viewBox"))
        keep (&reader->view, values[i]);
    }
  if (g_str_equal (element, "path"))
    g_ptr_array_add (reader->paths, path_of (names, values));
  reader->in_title = g_str_equal (element, "title");
  reader->in_text = g_str_equal (element, "text");
}

static void
read_text (GMarkupParseContext *context, const char *text, gsize length, gpointer data, GError **error)
{
  SvgReader *reader = data;
  g_autofree char *copy = g_strndup (text, length);

  if (reader->in_title && reader->group != NULL)
    {
      g_ptr_array_add (reader->groups, g_strconcat (reader->group, ":", copy, NULL));
      g_clear_pointer (&reader->group, g_free);
    }
  if (reader->in_text)
    g_string_append_printf (reader->texts, "%s\n", copy);
  reader->in_title = reader->in_text = FALSE;
}

SvgReader *
svg_reader_new (const char *svg)
{
  static const GMarkupParser parser = { .start_element = read_start, .text = read_text };
  SvgReader *reader = g_new0 (SvgReader, 1);
  GMarkupParseContext *context = g_markup_parse_context_new (&parser, 0, reader, NULL);
  g_autoptr (GError) error = NULL;

  reader->paths = g_ptr_array_new_with_free_func (g_free);
  reader->groups = g_ptr_array_new_with_free_func (g_free);
  reader->texts = g_string_new (NULL);
  g_markup_parse_context_parse (context, svg, (gssize) strlen (svg), &error);
  g_assert_no_error (error);
  g_markup_parse_context_end_parse (context, &error);
  g_assert_no_error (error);
  g_markup_parse_context_free (context);
  return reader;
}

void
svg_reader_free (SvgReader *reader)
{
  g_ptr_array_unref (reader->paths);
  g_ptr_array_unref (reader->groups);
  g_string_free (reader->texts, TRUE);
  g_free (reader->width);
  g_free (reader->height);
  g_free (reader->view);
  g_free (reader->group);
  g_free (reader);
}

/* The numbers of a text of numbers, blanks, M and L; FALSE where there is anything else, or another count. */
static gboolean
read_numbers (const char *text, double *numbers, int count)
{
  g_autofree char *copy = g_strdelimit (g_strdup (text), "ML,", ' ');
  char *end = copy;

  for (int i = 0; i < count; i++)
    {
      char *start = end;

      numbers[i] = g_ascii_strtod (start, &end);
      if (end == start)
        return FALSE;
    }
  return *g_strchug (end) == '\0';
}

GArray *
svg_lines (const SvgReader *reader, double unit)
{
  GArray *lines = g_array_new (FALSE, FALSE, sizeof (RwBox));

  for (guint i = 0; i < reader->paths->len; i++)
    {
      double n[10];

      if (!read_numbers (g_ptr_array_index (reader->paths, i), n, G_N_ELEMENTS (n)))
        continue;

      RwBox line = { unit * (n[0] * n[6] + n[2] * n[7] + n[4]), unit * (n[1] * n[6] + n[3] * n[7] + n[5]),
                     unit * (n[0] * n[8] + n[2] * n[9] + n[4]), unit * (n[1] * n[8] + n[3] * n[9] + n[5]) };

      g_array_append_val (lines, line);
    }
  return lines;
}

gboolean
svg_has_line (const SvgReader *reader, RwBox line, double unit, double near)
{
  g_autoptr (GArray) lines = svg_lines (reader, unit);

  for (guint i = 0; i < lines->len; i++)
    {
      RwBox found = g_array_index (lines, RwBox, i);

      if (hypot (found.x0 - line.x0, found.y0 - line.y0) < near
          && hypot (found.x1 - line.x1, found.y1 - line.y1) < near)
        return TRUE;
    }
  return FALSE;
}
