/* What every sheet has to say: whose it is, how it is seen, which of how many, of what date and revision; and
 * the words that keep a part the right way round on the bench. */
#include "io/papers.h"
#include "built.h"
#include "read_back.h"

#include <glib/gstdio.h>
#include <string.h>

#define NAME "Walnut for the porch"

/* Pages of the PDF as text; NULL where poppler is not installed. */
static char **
pages_of (const char *only, const char *changes, RwUnits units)
{
  const char *kinds[] = { only, NULL };
  RwPapersOptions options = { .paper = rw_paper_find ("a4"), .only = only != NULL ? kinds : NULL,
                              .style = { units, '.' }, .date = "2026-05-04", .revision = "B7" };
  g_autoptr (RwProject) project = rw_project_new ();
  g_autoptr (Built) built = built_new (changes);
  g_autofree char *folder = g_dir_make_tmp ("rimwright-marks-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "papers.pdf", NULL);
  g_autoptr (GError) error = NULL;
  char *data;
  gsize length;
  int count;

  project->design = built->design;
  g_free (project->name);
  project->name = g_strdup (NAME);
  rw_papers_write_pdf (project, &options, path, &count, &error);
  g_assert_no_error (error);
  g_assert_true (g_file_get_contents (path, &data, &length, NULL));
  g_remove (path);
  g_rmdir (folder);

  g_autoptr (GBytes) pdf = g_bytes_new_take (data, length);
  g_autofree char *text = read_pdf (pdf, "pdftotext", "-layout");

  if (text == NULL)
    return NULL;
  if (g_str_has_suffix (text, "\f"))
    text[strlen (text) - 1] = '\0';
  char **pages = g_strsplit (text, "\f", -1);

  g_assert_cmpuint (g_strv_length (pages), ==, (guint) count);
  return pages;
}

static void
assert_says (const char *page, const char *words)
{
  if (strstr (page, words) == NULL)
    g_error ("“%s” is not on this page:\n%s", words, page);
}

static void
test_title_strips (void)
{
  static const char *const wanted[] = { NAME, "2026-05-04", "revision B7", "all in millimetres" };
  g_auto (GStrv) pages = pages_of (NULL, "", RW_UNITS_MM);

  for (int i = 0; pages != NULL && pages[i] != NULL; i++)
    {
      for (guint k = 0; k < G_N_ELEMENTS (wanted); k++)
        assert_says (pages[i], wanted[k]);
      g_assert_true (g_regex_match_simple ("sheet \\d+ of \\d+", pages[i], 0, 0));
    }
}

/* Full size is said on every page that is, with both bars in both directions. */
static void
test_scale_and_bars (void)
{
  for (int kind = 0; kind < rw_paper_kinds_count; kind++)
    {
      if (rw_paper_kinds[kind].fit != RW_PAPER_FULL_SIZE)
        continue;

      g_auto (GStrv) pages = pages_of (rw_paper_kinds[kind].id, "", RW_UNITS_MM);

      for (int i = 0; pages != NULL && pages[i] != NULL; i++)
        {
          const char *first = strstr (pages[i], "100 mm"), *inch = strstr (pages[i], "4 in");

          g_assert_true (g_regex_match_simple ("1 ?: ?1 ", pages[i], 0, 0));
          assert_says (pages[i], rw_paper_kinds[kind].view);
          g_assert_nonnull (first);
          g_assert_nonnull (strstr (first + 1, "100 mm"));
          g_assert_nonnull (inch);
          g_assert_nonnull (strstr (inch + 1, "4 in"));
        }
    }
}

/* The words that a sheet can't do without. */
static const struct
{
  const char *kind, *changes;
  const char *words[8];
} marks[] = {
  { "general", "", { "treble", "bass", "tail", "seen from the head side" } },
  { "segment",
    "",
    { "seen from the head side", "grain", "360°", "18.00°", "Course 1", "half rings", "advances" } },
  { "segment", "rim.construction=staves", { "Stave card", "grain", "staves", "360°", "half" } },
  { "segment", "rim.construction=plies", { "Ply card", "grain", "ply", "scarf" } },
  { "ring", "", { "neck", "tail", "treble", "bass", "flat caul" } },
  { "rim-plan", "", { "neck", "tail", "treble", "bass", "head side", "bearing circle" } },
  { "rim-strip",
    "",
    { "neck", "tail", "treble", "bass", "head side", "hooks are counted this way", "Tape" } },
  { "pot", "", { "head side", "inside" } },
  { "hooks-hoop",
    "",
    { "bend begins", "thread from here", "springback", "former", "Notches", "test bends" } },
  { "heel", "", { "treble", "bass", "head side", "wedge", "Hollow", "Relief" } },
  { "neck-side", "", { "grain", "fret 1", "fret 12", "heel starts", "channel" } },
  { "neck-plan", "", { "treble", "bass", "grain", "fret 5" } },
  { "sections", "", { "treble", "bass", "fret 1", "fret 5", "fret 12", "start of the heel", "facets" } },
  { "headstock", "", { "treble", "bass", "neck", "grain", "overlay" } },
  { "fretboard", "", { "treble", "bass", "nut", "body", "grain" } },
  { "scale-stick", "", { "nut", "bridge", "none from the fret before" } },
  { "bridge-nut", "", { "treble", "bass", "Nut", "Bridge" } },
  { "shopping", "", { "Hook rod", "to spare", "Strings", "Wood" } },
  { "steps", "", { "Known first", "Take care" } },
};

static void
test_marks (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (marks); i++)
    {
      g_auto (GStrv) pages = pages_of (marks[i].kind, marks[i].changes, RW_UNITS_MM);
      g_autofree char *all = pages != NULL ? g_strjoinv ("\n", pages) : NULL;

      for (int k = 0; all != NULL && k < 8 && marks[i].words[k] != NULL; k++)
        assert_says (all, marks[i].words[k]);
    }
}

/* A strip of 26.2 mm is bought 27 mm wide, or 1 1/8 in: at the next eighth, as 26.2 mm are 1.0315 in. */
static void
test_stock_rounded_up (void)
{
  g_auto (GStrv) metric = pages_of ("shopping", "rim.strip_width=26.2", RW_UNITS_MM);
  g_auto (GStrv) inches = pages_of ("shopping", "rim.strip_width=26.2", RW_UNITS_FRACTION);

  if (metric == NULL || inches == NULL)
    return;
  assert_says (metric[0], "27 mm wide");
  assert_says (inches[0], "1 1/8 in wide");
}

/* A pot section's rim height of 64 mm is 2.5197 in.  At 1/64 it is 2 33/64 in = 63.897 mm, and 0.103 mm are
 * missing; at 1/16 it is 2 1/2 in = 63.5 mm, and 0.5 mm are. */
static void
test_fraction_error_told (void)
{
  g_auto (GStrv) fine = pages_of ("pot", "rim.height=64", RW_UNITS_FRACTION);
  g_auto (GStrv) coarse = pages_of ("pot", "rim.height=64", RW_UNITS_FRACTION_16);

  if (fine == NULL || coarse == NULL)
    return;
  assert_says (fine[0], "2 33/64 (+0.1)");
  assert_says (coarse[0], "2 1/2 (+0.5)");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/paper-marks/title-strips", test_title_strips);
  g_test_add_func ("/paper-marks/scale-and-bars", test_scale_and_bars);
  g_test_add_func ("/paper-marks/words", test_marks);
  g_test_add_func ("/paper-marks/stock-rounded-up", test_stock_rounded_up);
  g_test_add_func ("/paper-marks/fraction-error", test_fraction_error_told);
  return g_test_run ();
}
