/* What lies where pages are glued over one another: register marks, and nothing that has to be read. */
#include "io/paper_set.h"
#include "io/tiling.h"
#include "built.h"
#include "random_design.h"

#define NOTE 50.0 /* mm */

typedef struct
{
  int sheets, pages;
  int texts; /* in bands */
  int notes; /* of them, longer than a figure or a name */
} Tally;

/* Touching does not matter. */
static gboolean
is_in_band (double low, double high, double from, double overlap)
{
  return low < from + overlap && high > from;
}

static void
count_texts (const RwTiling *tiling, const RwLayout *layout, Tally *tally)
{
  for (guint i = 0; i < layout->texts->len; i++)
    {
      const RwPlacedText *text = &g_array_index (layout->texts, RwPlacedText, i);
      gboolean lost = FALSE;

      for (int column = 1; column < tiling->columns; column++)
        lost = lost || is_in_band (text->box.x0, text->box.x1, tiling->left[column], tiling->overlap);
      for (int row = 1; row < tiling->rows; row++)
        lost = lost
               || is_in_band (text->box.y0, text->box.y1, tiling->top[row] - tiling->overlap, tiling->overlap);
      if (lost)
        g_test_message ("“%s” is in a band", text->text);
      tally->texts += lost;
      tally->notes += lost && text->width > NOTE;
    }
}

static Tally
tally (const RwProject *project, const char *paper_id, RwUnits units, RwPapersHand hand)
{
  const RwPaper *paper = rw_paper_find (paper_id);
  RwPapersOptions options
      = { .paper = paper, .style = { units, '.' }, .hand = hand, .date = "2026-05-04" };
  g_autoptr (RwPaperSet) set = rw_paper_set_new (project, &options, NULL);
  Tally tally = { 0, 0, 0, 0 };

  g_assert_nonnull (set);
  for (guint i = 0; i < set->pieces->len; i++)
    {
      const RwPaperPage *piece = g_ptr_array_index (set->pieces, i);
      const RwLayout *layout = piece->parts[0].layout;
      RwTiling tiling = rw_tiling_fit (layout, paper->width_mm, paper->height_mm, RW_PAPER_MARGIN, RW_PAPER_OVERLAP);

      g_test_message ("%s on %s: %d by %d", piece->kind->id, paper_id, tiling.columns, tiling.rows);
      tally.sheets++;
      tally.pages += tiling.columns * tiling.rows;
      int lost;
      g_autoptr (RwLayout) settled = rw_tiling_settle (&tiling, layout, &lost);

      count_texts (&tiling, settled, &tally);
    }
  return tally;
}

/* allowed: figures that have nowhere to go on small pages; both pages have them whole or cut at the seam. */
static void
check (const RwProject *project, const char *paper, RwUnits units, RwPapersHand hand, int allowed)
{
  Tally t = tally (project, paper, units, hand);

  g_test_message ("%d sheets on %d pages of %s, %d texts in bands", t.sheets, t.pages, paper, t.texts);
  g_assert_cmpint (t.texts, <=, allowed);
  g_assert_cmpint (t.notes, ==, 0);
}

static void
check_build (const char *changes, const char *paper, RwUnits units, RwPapersHand hand)
{
  g_autoptr (RwProject) project = rw_project_new ();
  g_autoptr (Built) built = built_new (changes);

  g_test_message ("%s", changes);
  project->design = built->design;
  check (project, paper, units, hand, g_str_equal (paper, "a5") ? 4 : units == RW_UNITS_MM ? 0 : 1);
}

static const char *const papers[] = { "a5", "a4", "letter", "legal", "a3", "tabloid" };

static void
test_papers (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (papers); i++)
    {
      check_build ("", papers[i], RW_UNITS_MM, RW_PAPERS_AS_BUILT);
      check_build ("", papers[i], i == 0 ? RW_UNITS_INCH : RW_UNITS_FRACTION, RW_PAPERS_LEFT);
    }
}

static void
test_builds (void)
{
  static const char *const builds[] = {
    "rim.construction=staves", "rim.construction=plies", "joint.kind=stick|build.handed=left",
    "frets.count=0", "fifth.route=tunnel|frets.count=24", "fretboard.binding=1.5|joint.shim=1",
    "headstock.ears=yes|scale.length=711",
  };

  for (guint i = 0; i < G_N_ELEMENTS (builds); i++)
    for (guint k = 0; k < 3; k++)
      check_build (builds[i], papers[k], k == 2 ? RW_UNITS_FRACTION_32 : RW_UNITS_MM, RW_PAPERS_AS_BUILT);
}

static void
test_random (void)
{
  for (int i = 0; i < 24; i++)
    {
      g_autoptr (RwProject) project = rw_project_new ();

      random_design_near (&project->design, 12);
      check (project, papers[i % (int) G_N_ELEMENTS (papers)], i % 4 == 3 ? RW_UNITS_INCH : RW_UNITS_MM,
             i % 3 == 2 ? RW_PAPERS_LEFT : RW_PAPERS_AS_BUILT, i % (int) G_N_ELEMENTS (papers) == 0 ? 4 : 1);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/paper-seams/papers", test_papers);
  g_test_add_func ("/paper-seams/builds", test_builds);
  g_test_add_func ("/paper-seams/random", test_random);
  return g_test_run ();
}
