/* The lettering of papers as poppler finds it in the PDF: no word on another, none over the edge of the page,
 * on the built-in build, others, and builds drawn at random. */
#include "io/papers.h"
#include "built.h"
#include "random_design.h"
#include "read_back.h"

#include <glib/gstdio.h>
#include <math.h>
#include <string.h>

/* A word's box is as high as the font's lines, over 1.3 times its letters; what touches within this part of
 * the height, at either end, is air. */
#define AIR 0.2
#define SLACK 0.3 /* points */

typedef struct
{
  RwBox box;
  char  word[40];
} Word;

typedef struct
{
  GArray *words; /* of one page */
  double  width, height;
  int     page, faults;
} Reading;

static gboolean
on_each_other (const RwBox *a, const RwBox *b)
{
  return a->x0 + SLACK < b->x1 && b->x0 + SLACK < a->x1 && a->y0 + SLACK < b->y1 && b->y0 + SLACK < a->y1;
}

static void
complain (Reading *reading, const char *what, const Word *a, const Word *b)
{
  reading->faults++;
  g_test_message ("page %d: “%s” %s “%s” at %.0f, %.0f", reading->page, a->word, what, b->word, a->box.x0,
                  a->box.y0);
}

static void
check_page (Reading *reading)
{
  for (guint i = 0; i < reading->words->len; i++)
    {
      const Word *a = &g_array_index (reading->words, Word, i);

      if (a->box.x0 < 0 || a->box.y0 < 0 || a->box.x1 > reading->width || a->box.y1 > reading->height)
        complain (reading, "is off the page", a, a);
      for (guint k = i + 1; k < reading->words->len; k++)
        if (on_each_other (&a->box, &g_array_index (reading->words, Word, k).box))
          complain (reading, "lies on", a, &g_array_index (reading->words, Word, k));
    }
  g_array_set_size (reading->words, 0);
}

static double
number (const char **names, const char **values, const char *name)
{
  for (int i = 0; names[i] != NULL; i++)
    if (g_str_equal (names[i], name))
      return g_ascii_strtod (values[i], NULL);
  return NAN;
}

static void
read_start (GMarkupParseContext *context,
            const char          *element,
            const char         **names,
            const char         **values,
            gpointer             data,
            GError             **error)
{
  Reading *reading = data;

  if (g_str_equal (element, "page"))
    {
      reading->page++;
      reading->width = number (names, values, "width");
      reading->height = number (names, values, "height");
    }
  if (g_str_equal (element, "word"))
    {
      Word word = { { number (names, values, "xMin"), number (names, values, "yMin"),
                      number (names, values, "xMax"), number (names, values, "yMax") },
                    "" };
      double air = AIR * MIN (word.box.x1 - word.box.x0, word.box.y1 - word.box.y0);

      word.box = (RwBox){ word.box.x0 + air, word.box.y0 + air, word.box.x1 - air, word.box.y1 - air };
      g_array_append_val (reading->words, word);
    }
}

static void
read_word (GMarkupParseContext *context, const char *text, gsize length, gpointer data, GError **error)
{
  Reading *reading = data;

  if (g_str_equal (g_markup_parse_context_get_element (context), "word"))
    g_strlcpy (g_array_index (reading->words, Word, reading->words->len - 1).word, text,
               sizeof (Word) - sizeof (RwBox));
}

static void
read_end (GMarkupParseContext *context, const char *element, gpointer data, GError **error)
{
  if (g_str_equal (element, "page"))
    check_page (data);
}

/* Without the head that names a document type, which GLib's reader need not know. */
static Reading
read_words (const char *html)
{
  static const GMarkupParser parser = { read_start, read_end, read_word, NULL, NULL };
  Reading reading = { .words = g_array_new (FALSE, FALSE, sizeof (Word)) };
  GMarkupParseContext *context = g_markup_parse_context_new (&parser, 0, &reading, NULL);
  const char *body = strstr (html, "<doc>"), *end = strstr (html, "</doc>");
  g_autoptr (GError) error = NULL;

  g_assert_nonnull (body);
  g_assert_nonnull (end);
  g_markup_parse_context_parse (context, body, end + strlen ("</doc>") - body, &error);
  g_assert_no_error (error);
  g_markup_parse_context_free (context);
  g_array_unref (reading.words);
  return reading;
}

/* ---- builds ---- */

static GBytes *
papers_of (const RwProject *project, const char *paper, RwUnits units, RwPapersHand hand)
{
  RwPapersOptions options = { .paper = rw_paper_find (paper), .style = { units, '.' }, .hand = hand,
                              .date = "2026-05-04" };
  g_autofree char *folder = g_dir_make_tmp ("rimwright-text-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "papers.pdf", NULL);
  g_autoptr (GError) error = NULL;
  char *bytes;
  gsize length;
  int pages;

  rw_papers_write_pdf (project, &options, path, &pages, &error);
  g_assert_no_error (error);
  g_assert_true (g_file_get_contents (path, &bytes, &length, NULL));
  g_remove (path);
  g_rmdir (folder);
  return g_bytes_new_take (bytes, length);
}

static void
check (const RwProject *project, const char *paper, RwUnits units, RwPapersHand hand)
{
  g_autoptr (GBytes) pdf = papers_of (project, paper, units, hand);
  g_autofree char *html = read_pdf (pdf, "pdftotext", "-bbox");

  if (html == NULL)
    return;

  Reading reading = read_words (html);

  g_assert_cmpint (reading.page, >, 20);
  g_assert_cmpint (reading.faults, ==, 0);
}

static void
check_build (const char *changes, const char *paper, RwUnits units, RwPapersHand hand)
{
  g_autoptr (RwProject) project = rw_project_new ();
  g_autoptr (Built) built = built_new (changes);

  project->design = built->design;
  check (project, paper, units, hand);
}

#define TWELVE_INCH "rim.outer_diameter=304|head.nominal=304.8|rim.segments=8|hooks.count=22|scale.length=660"
#define SMALL                                                                                                \
  "rim.outer_diameter=202.4|head.nominal=203.2|rim.height=50|hooks.count=14|scale.length=350|frets.count=16"

static void
test_default (void)
{
  check_build ("", "a4", RW_UNITS_MM, RW_PAPERS_AS_BUILT);
  check_build ("", "letter", RW_UNITS_INCH, RW_PAPERS_AS_BUILT);
  check_build ("", "a3", RW_UNITS_MM, RW_PAPERS_AS_BUILT);
}

static void
test_fractions (void)
{
  check_build ("", "letter", RW_UNITS_FRACTION, RW_PAPERS_AS_BUILT);
  check_build ("", "a4", RW_UNITS_FRACTION_16, RW_PAPERS_AS_BUILT);
}

static void
test_left_handed (void)
{
  check_build ("", "a4", RW_UNITS_MM, RW_PAPERS_LEFT);
  check_build ("build.handed=left|" TWELVE_INCH, "letter", RW_UNITS_MM, RW_PAPERS_AS_BUILT);
}

static void
test_constructions (void)
{
  check_build ("rim.construction=staves", "a4", RW_UNITS_MM, RW_PAPERS_AS_BUILT);
  check_build ("rim.construction=plies", "letter", RW_UNITS_MM, RW_PAPERS_AS_BUILT);
  check_build ("joint.kind=stick", "a4", RW_UNITS_MM, RW_PAPERS_AS_BUILT);
}

static void
test_sizes (void)
{
  check_build (TWELVE_INCH, "a4", RW_UNITS_MM, RW_PAPERS_AS_BUILT);
  check_build (SMALL, "a4", RW_UNITS_MM, RW_PAPERS_AS_BUILT);
}

static void
test_random (void)
{
  static const char *const papers[] = { "a4", "letter", "legal", "a3", "tabloid" };
  static const RwUnits units[] = { RW_UNITS_MM, RW_UNITS_FRACTION_32, RW_UNITS_MM, RW_UNITS_INCH };

  for (int i = 0; i < 16; i++)
    {
      g_autoptr (RwProject) project = rw_project_new ();

      random_design_near (&project->design, 12);
      check (project, papers[i % (int) G_N_ELEMENTS (papers)], units[i % (int) G_N_ELEMENTS (units)],
             i % 3 == 2 ? RW_PAPERS_LEFT : RW_PAPERS_AS_BUILT);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/paper-text/default", test_default);
  g_test_add_func ("/paper-text/fractions", test_fractions);
  g_test_add_func ("/paper-text/left-handed", test_left_handed);
  g_test_add_func ("/paper-text/constructions", test_constructions);
  g_test_add_func ("/paper-text/sizes", test_sizes);
  g_test_add_func ("/paper-text/random", test_random);
  return g_test_run ();
}
