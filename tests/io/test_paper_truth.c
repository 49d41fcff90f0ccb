/* Papers measured: where holes and slots lie in the PDF's pages and in the SVG, as poppler and a reader of
 * XML find them, against the engine's numbers. */
#include "io/papers.h"
#include "io/export_svg.h"
#include "io/export_pdf.h"
#include "built.h"
#include "read_back.h"

#include <math.h>

#define MM_PER_POINT (25.4 / 72)
#define NEAR 0.02 /* mm */

typedef struct
{
  const char *name, *changes, *paper;
  double      bar_short, bar_long; /* mm; 0: 100 */
} Case;

static const Case cases[] = {
  { "default", "", "a4", 0, 0 },
  { "letter", "scale.length=660|frets.count=18", "letter", 0, 0 },
  { "twelve-inch", "rim.outer_diameter=304|head.nominal=304.8|hooks.count=24", "a3", 0, 0 },
  { "corrected", "rim.height=60", "a4", 99.4, 100.6 },
  { "corrected-legal", "shoes.below_edge=28|hooks.count=20", "legal", 101.2, 98.9 },
};

static RwPaperSet *
set_of (const Case *c, const Built *built)
{
  static const char *only[] = { "rim-strip", "fretboard", NULL };
  RwPapersOptions options = { .paper = rw_paper_find (c->paper),
                              .only = only,
                              .style = RW_STYLE_FILE,
                              .date = "2026-05-04",
                              .bar_short_mm = c->bar_short,
                              .bar_long_mm = c->bar_long };
  g_autoptr (RwProject) project = rw_project_new ();
  g_autoptr (GError) error = NULL;
  RwPaperSet *set;

  project->design = built->design;
  set = rw_paper_set_new (project, &options, &error);
  g_assert_no_error (error);
  return set;
}

static GBytes *
pdf_of (const RwPaperSet *set)
{
  g_autoptr (RwPdf) pdf = rw_pdf_new ("test", "2026-05-04");

  for (guint i = 0; i < set->pages->len; i++)
    {
      const RwPaperPage *page = g_ptr_array_index (set->pages, i);

      rw_paper_set_paint (set, page, rw_pdf_begin_page (pdf, page->width, page->height, page->label, TRUE));
    }
  return rw_pdf_finish (pdf, NULL);
}

/* A line that has to be there: ends in mm of the drawing, y up. */
typedef struct
{
  RwBox line;
} Wanted;

/* The level line of a shoe hole's cross: 3 mm past the hole on both sides, at minus the arc from the neck. */
static Wanted
hole_line (const Built *built, int hook)
{
  g_autofree char *arc = g_strdup_printf ("hooks.arc[%d]", hook);
  double x = -built_value (built, arc), y = -built_value (built, "shoes.hole_below_edge");
  double reach = built->design.shoes_bolt_hole / 2 + 3;

  return (Wanted){ { x - reach, y, x + reach, y } };
}

/* Where it comes to stand on a page: mm from the upper left corner, larger or smaller about the page's
 * middle. */
static RwBox
on_page (const RwPaperPage *page, const Case *c, RwBox line)
{
  RwPoint origin = page->parts[0].origin;
  gboolean upright = page->width <= page->height;
  double by_short = c->bar_short > 0 ? 100 / c->bar_short : 1,
         by_long = c->bar_long > 0 ? 100 / c->bar_long : 1;
  double sx = upright ? by_short : by_long, sy = upright ? by_long : by_short;
  double x = page->width / 2, y = page->height / 2;

  return (RwBox){ x + sx * (origin.x + line.x0 - x), y + sy * (origin.y - line.y0 - y),
                  x + sx * (origin.x + line.x1 - x), y + sy * (origin.y - line.y1 - y) };
}

static gboolean
is_shown (const RwPaperPage *page, RwBox line)
{
  RwPoint origin = page->parts[0].origin;

  return origin.x + line.x0 > page->clip.x0 && origin.x + line.x1 < page->clip.x1;
}

/* How many of the holes a page shows; all of them where they should be. */
static int
check_holes (const SvgReader *reader, const RwPaperPage *page, const Case *c, const Built *built, double unit)
{
  int shown = 0;

  for (int k = 1; k <= (int) built->design.hooks_count; k++)
    {
      Wanted wanted = hole_line (built, k);

      if (!is_shown (page, wanted.line))
        continue;
      shown++;
      if (!svg_has_line (reader, on_page (page, c, wanted.line), unit, NEAR))
        {
          g_test_message ("hole %d is not where it should be", k);
          g_test_fail ();
        }
    }
  return shown;
}

/* A slot is an upright line at its place from the nut: its ends are looked for by x alone. */
static gboolean
has_upright (GArray *lines, double x)
{
  for (guint i = 0; i < lines->len; i++)
    {
      RwBox line = g_array_index (lines, RwBox, i);

      if (fabs (line.x0 - x) < NEAR && fabs (line.x1 - x) < NEAR && fabs (line.y1 - line.y0) > 20)
        return TRUE;
    }
  return FALSE;
}

static int
check_slots (const SvgReader *reader, const RwPaperPage *page, const Case *c, const Built *built, double unit)
{
  g_autoptr (GArray) lines = svg_lines (reader, unit);
  int shown = 0;

  for (int n = 1; n <= (int) built->design.frets_count; n++)
    {
      double place = built->design.scale_length * (1 - exp2 (-n / 12.0)); /* equal temperament */
      RwBox line = { place, 0, place, 0 };

      if (!is_shown (page, line))
        continue;
      shown++;
      if (!has_upright (lines, on_page (page, c, line).x0))
        {
          g_test_message ("fret %d is not where it should be", n);
          g_test_fail ();
        }
    }
  return shown;
}

static int
check_page (const SvgReader *reader, const RwPaperPage *page, const Case *c, const Built *built, double unit)
{
  if (g_str_equal (page->kind->id, "rim-strip"))
    return check_holes (reader, page, c, built, unit);
  return check_slots (reader, page, c, built, unit);
}

static int
wanted_in_all (const Built *built)
{
  return (int) built->design.hooks_count + (int) built->design.frets_count;
}

/* Pages overlap, so some are seen twice. */
static void
test_pdf (gconstpointer data)
{
  const Case *c = data;
  g_autoptr (Built) built = built_new (c->changes);
  g_autoptr (RwPaperSet) set = set_of (c, built);
  g_autoptr (GBytes) pdf = pdf_of (set);
  int seen = 0;

  for (guint i = 0; i < set->pages->len; i++)
    {
      g_autofree char *options = g_strdup_printf ("-svg -noshrink -nocenter -f %u -l %u", i + 1, i + 1);
      g_autofree char *svg = read_pdf (pdf, "pdftocairo", options);

      if (svg == NULL)
        return;

      g_autoptr (SvgReader) reader = svg_reader_new (svg);

      seen += check_page (reader, g_ptr_array_index (set->pages, i), c, built, MM_PER_POINT);
    }
  g_assert_cmpint (seen, >=, wanted_in_all (built));
}

/* In one piece and without correction; viewBox and size are in mm. */
static void
test_svg (gconstpointer data)
{
  const Case *c = data;
  const Case plain = { c->name, c->changes, c->paper, 0, 0 };
  g_autoptr (Built) built = built_new (c->changes);
  g_autoptr (RwPaperSet) set = set_of (&plain, built);
  int seen = 0;

  for (guint i = 0; i < set->pieces->len; i++)
    {
      const RwPaperPage *page = g_ptr_array_index (set->pieces, i);
      RwPage picture = rw_paper_page_picture (page);
      g_autofree char *svg = rw_svg_write (&picture, &rw_palette_print);
      g_autoptr (SvgReader) reader = svg_reader_new (svg);

      g_assert_true (g_str_has_suffix (reader->width, "mm") && g_str_has_suffix (reader->height, "mm"));
      seen += check_page (reader, page, &plain, built, 1);
    }
  g_assert_cmpint (seen, ==, wanted_in_all (built));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *pdf = g_strconcat ("/paper-truth/pdf/", cases[i].name, NULL);
      g_autofree char *svg = g_strconcat ("/paper-truth/svg/", cases[i].name, NULL);

      g_test_add_data_func (pdf, &cases[i], test_pdf);
      g_test_add_data_func (svg, &cases[i], test_svg);
    }
  return g_test_run ();
}
