/* Drawings in full size on several pages: how many, where, and that all of it is there. */
#include "io/export_pdf.h"
#include "io/paper_size.h"
#include "io/tiling.h"
#include "read_back.h"

#include <math.h>

#define MARGIN 10.0
#define OVERLAP 12.0
#define NEAR 1e-9 /* mm */

static RwLayout *
layout_of (RwSheet *sheet, double width, double height)
{
  rw_sheet_box (sheet, RW_PEN_OUTLINE, RW_TINT_NONE, -7, 3, width - 7, height + 3);
  return rw_layout_new (sheet, 1, 0);
}

/* A4 upright leaves 210 - 20 - 9 = 181 by 297 - 20 - 15 - 9 = 253 mm, across 268 by 166.  Each further page
 * adds its room less the overlap of 12; the drawing takes 4 mm more than its size. */
static void
test_fewest_pages (void)
{
  static const struct
  {
    const char *paper;
    double      width, height;
    int         columns, rows;
    gboolean    across;
  } cases[] = {
    { "a4", 100, 100, 1, 1, FALSE },
    { "a4", 177, 249, 1, 1, FALSE },
    { "a4", 264, 162, 1, 1, TRUE },
    { "a4", 178, 249, 2, 1, FALSE },
    { "a4", 456, 60, 2, 1, TRUE },    /* a fretboard: 2 x 268 - 12 = 524 */
    { "a4", 1020, 40, 4, 1, TRUE },   /* 4 x 268 - 3 x 12 = 1036 */
    { "a4", 1033, 40, 5, 1, TRUE },
    { "a4", 60, 480, 1, 2, FALSE },   /* 2 x 253 - 12 = 494 */
    { "a4", 300, 300, 2, 2, FALSE },
    { "a3", 300, 300, 2, 1, FALSE },  /* 268 by 376 */
    { "a0", 700, 1000, 1, 1, FALSE },
    { "letter", 400, 60, 2, 1, TRUE }, /* 2 x (279.4 - 29) - 12 = 488.8 */
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const RwPaper *paper = rw_paper_find (cases[i].paper);
      g_autoptr (RwSheet) sheet = rw_sheet_new ("test", RW_STYLE_FILE);
      g_autoptr (RwLayout) layout = layout_of (sheet, cases[i].width, cases[i].height);
      RwTiling tiling = rw_tiling_fit (layout, paper->width_mm, paper->height_mm, MARGIN, OVERLAP);

      g_test_message ("%g x %g on %s", cases[i].width, cases[i].height, cases[i].paper);
      g_assert_cmpint (tiling.columns, ==, cases[i].columns);
      g_assert_cmpint (tiling.rows, ==, cases[i].rows);
      g_assert_cmpint (tiling.shape.width > tiling.shape.height, ==, cases[i].across);
    }
}

/* The part of the drawing that a page shows, which is never more than its room. */
static RwBox
shown (const RwTiling *tiling, int column, int row)
{
  RwBox window = rw_tiling_window (tiling, column, row);
  const RwBox *room = &tiling->shape.room;

  g_assert_cmpfloat (window.x1 - window.x0, <=, room->x1 - room->x0 + NEAR);
  g_assert_cmpfloat (window.y1 - window.y0, <=, room->y1 - room->y0 + NEAR);
  return window;
}

static void
assert_covered (const RwTiling *tiling, const RwBox *extent)
{
  RwBox first = shown (tiling, 0, 0), last = shown (tiling, tiling->columns - 1, tiling->rows - 1);

  g_assert_cmpfloat (first.x0, <=, extent->x0 - 2 + NEAR);
  g_assert_cmpfloat (first.y1, >=, extent->y1 + 2 - NEAR);
  g_assert_cmpfloat (last.x1, >=, extent->x1 + 2 - NEAR);
  g_assert_cmpfloat (last.y0, <=, extent->y0 - 2 + NEAR);
  for (int column = 1; column < tiling->columns; column++)
    g_assert_cmpfloat_with_epsilon (shown (tiling, column - 1, 0).x1 - shown (tiling, column, 0).x0, OVERLAP,
                                    NEAR);
  for (int row = 1; row < tiling->rows; row++)
    g_assert_cmpfloat_with_epsilon (shown (tiling, 0, row).y1 - shown (tiling, 0, row - 1).y0, OVERLAP, NEAR);
}

static void
test_covers (void)
{
  for (double width = 20; width < 1300; width += 61)
    for (double height = 20; height < 700; height += 67)
      for (int paper = 0; paper < rw_papers_count; paper++)
        {
          g_autoptr (RwSheet) sheet = rw_sheet_new ("test", RW_STYLE_FILE);
          g_autoptr (RwLayout) layout = layout_of (sheet, width, height);
          RwTiling tiling = rw_tiling_fit (layout, rw_papers[paper].width_mm, rw_papers[paper].height_mm,
                                           MARGIN, OVERLAP);

          assert_covered (&tiling, &layout->extent);
        }
}

/* Every register mark of a page lies on one of its neighbour, at the same place of the drawing. */
static GArray *
crosses (const RwTiling *tiling, int column, int row)
{
  g_autoptr (RwSheet) frame = rw_sheet_new ("test", RW_STYLE_FILE);
  GArray *found = g_array_new (FALSE, FALSE, sizeof (RwPoint));
  RwPoint origin = rw_tiling_origin (tiling, column, row);

  rw_tiling_draw (tiling, NULL, column, row, frame);
  for (guint i = 0; i < frame->ops->len; i++)
    {
      const RwPathOp *op = &g_array_index (frame->ops, RwPathOp, i);
      RwPoint at = { op->p[0].x - origin.x, op->p[0].y - origin.y };

      if (op->verb == RW_VERB_ARC)
        g_array_append_val (found, at);
    }
  return found;
}

static int
shared (const GArray *a, const GArray *b)
{
  int count = 0;

  for (guint i = 0; i < a->len; i++)
    for (guint k = 0; k < b->len; k++)
      {
        RwPoint p = g_array_index (a, RwPoint, i), q = g_array_index (b, RwPoint, k);

        count += hypot (p.x - q.x, p.y - q.y) < NEAR;
      }
  return count;
}

static void
test_register_marks (void)
{
  const RwPaper *paper = rw_paper_find ("a4");
  g_autoptr (RwSheet) sheet = rw_sheet_new ("test", RW_STYLE_FILE);
  g_autoptr (RwLayout) layout = layout_of (sheet, 500, 480);
  RwTiling tiling = rw_tiling_fit (layout, paper->width_mm, paper->height_mm, MARGIN, OVERLAP);

  g_assert_cmpint (tiling.columns, ==, 3);
  g_assert_cmpint (tiling.rows, ==, 2);

  g_autoptr (GArray) middle = crosses (&tiling, 1, 0), left = crosses (&tiling, 0, 0);
  g_autoptr (GArray) right = crosses (&tiling, 2, 0), below = crosses (&tiling, 1, 1);

  g_assert_cmpuint (middle->len, ==, 6);
  g_assert_cmpint (shared (middle, left), ==, 2);
  g_assert_cmpint (shared (middle, right), ==, 2);
  g_assert_cmpint (shared (middle, below), ==, 2);
  g_assert_cmpint (shared (left, right), ==, 0);
}

static void
test_single_page_is_clean (void)
{
  const RwPaper *paper = rw_paper_find ("a4");
  g_autoptr (RwSheet) sheet = rw_sheet_new ("test", RW_STYLE_FILE), frame = rw_sheet_new ("", RW_STYLE_FILE);
  g_autoptr (RwLayout) layout = layout_of (sheet, 100, 100);
  RwTiling tiling = rw_tiling_fit (layout, paper->width_mm, paper->height_mm, MARGIN, OVERLAP);
  RwBox part = shown (&tiling, 0, 0);

  rw_tiling_draw (&tiling, layout, 0, 0, frame);
  g_assert_cmpuint (frame->items->len, ==, 0);
  /* In the middle of the room. */
  g_assert_cmpfloat_with_epsilon (part.x0 + part.x1, layout->extent.x0 + layout->extent.x1, NEAR);
  g_assert_cmpfloat_with_epsilon (part.y0 + part.y1, layout->extent.y0 + layout->extent.y1, NEAR);
}

/* Pages with room to spare are moved so that lettering does not stand on the seam: here in the middle, where
 * the seam of two centred pages would be. */
static void
test_seams_spare_lettering (void)
{
  const RwPaper *paper = rw_paper_find ("a4");
  g_autoptr (RwSheet) sheet = rw_sheet_new ("test", RW_STYLE_FILE);

  rw_sheet_box (sheet, RW_PEN_OUTLINE, RW_TINT_NONE, 0, 0, 400, 60);
  rw_sheet_text (sheet, 200, 30, RW_ALIGN_MIDDLE, RW_LETTERS_LARGE, "fretboard");

  g_autoptr (RwLayout) layout = rw_layout_new (sheet, 1, 0);
  RwTiling tiling = rw_tiling_fit (layout, paper->width_mm, paper->height_mm, MARGIN, OVERLAP);
  const RwBox *text = &g_array_index (layout->texts, RwPlacedText, 0).box;
  double seam0 = shown (&tiling, 1, 0).x0, seam1 = shown (&tiling, 0, 0).x1;

  g_assert_cmpint (tiling.columns, ==, 2);
  g_assert_true (text->x1 <= seam0 || text->x0 >= seam1);
  assert_covered (&tiling, &layout->extent);
}

/* On paper: pages are written as PDF and read back; each is laid on the one before by its register marks, as
 * the maker lays them; then lines that stand 300 mm apart on different pages are 300 mm apart, to 0.1 mm. */

#define MM_PER_POINT (25.4 / 72)
#define FIRST_TICK 11.0  /* mm: ticks are known by their heights, register marks by their 8 mm */
#define SECOND_TICK 13.0
#define REGISTER 8.0

/* Where along x a line of a length stands on a page, by its middle; of several the leftmost or the rightmost.
 * NAN where there is none. */
static double
find_line (const GArray *lines, double length, gboolean upright, gboolean rightmost)
{
  double found = (double) NAN;

  for (guint i = 0; i < lines->len; i++)
    {
      RwBox line = g_array_index (lines, RwBox, i);
      double middle = (line.x0 + line.x1) / 2;
      gboolean is_upright = fabs (line.x1 - line.x0) < 0.01;

      if (is_upright == upright && fabs (hypot (line.x1 - line.x0, line.y1 - line.y0) - length) < 0.02
          && (isnan (found) || (rightmost ? middle > found : middle < found)))
        found = middle;
    }
  return found;
}

static GBytes *
strip_as_pdf (const RwLayout *layout, const RwTiling *tiling)
{
  g_autoptr (RwPdf) pdf = rw_pdf_new ("strip", "2026-05-04");

  for (int column = 0; column < tiling->columns; column++)
    {
      g_autoptr (RwSheet) frame = rw_sheet_new ("frame", RW_STYLE_FILE);
      cairo_t *cr = rw_pdf_begin_page (pdf, tiling->shape.width, tiling->shape.height, "page", TRUE);
      RwPoint origin = rw_tiling_origin (tiling, column, 0);

      rw_tiling_draw (tiling, layout, column, 0, frame);

      g_autoptr (RwLayout) marks = rw_layout_new (frame, 1, 0);

      cairo_translate (cr, 0, tiling->shape.height);
      rw_paint (cr, marks, &rw_palette_print, 0);
      cairo_translate (cr, origin.x, -origin.y);
      rw_paint (cr, layout, &rw_palette_print, 0);
    }
  return rw_pdf_finish (pdf, NULL);
}

static void
test_true_over_seams (void)
{
  const RwPaper *paper = rw_paper_find ("a4");
  g_autoptr (RwSheet) sheet = rw_sheet_new ("strip", RW_STYLE_FILE);

  rw_sheet_box (sheet, RW_PEN_OUTLINE, RW_TINT_NONE, 0, 0, 600, 30);
  rw_sheet_line (sheet, RW_PEN_EDGE, 20, 0, 20, FIRST_TICK);
  rw_sheet_line (sheet, RW_PEN_EDGE, 320, 0, 320, SECOND_TICK);

  g_autoptr (RwLayout) layout = rw_layout_new (sheet, 1, 0);
  RwTiling tiling = rw_tiling_fit (layout, paper->width_mm, paper->height_mm, MARGIN, OVERLAP);
  g_autoptr (GBytes) pdf = strip_as_pdf (layout, &tiling);
  double first[2], second[2], left[2], right[2];

  g_assert_cmpint (tiling.columns, ==, 3);
  for (int page = 0; page < 2; page++)
    {
      g_autofree char *options = g_strdup_printf ("-svg -noshrink -nocenter -f %d -l %d", page + 1, page + 1);
      g_autofree char *svg = read_pdf (pdf, "pdftocairo", options);
      if (svg == NULL)
        return;

      g_autoptr (SvgReader) reader = svg_reader_new (svg);
      g_autoptr (GArray) lines = svg_lines (reader, MM_PER_POINT);

      first[page] = find_line (lines, FIRST_TICK, TRUE, FALSE);
      second[page] = find_line (lines, SECOND_TICK, TRUE, FALSE);
      left[page] = find_line (lines, REGISTER, FALSE, FALSE);
      right[page] = find_line (lines, REGISTER, FALSE, TRUE);
    }
  g_assert_false (isnan (first[0]));
  g_assert_false (isnan (second[1]));
  g_assert_cmpfloat_with_epsilon ((right[0] - first[0]) + (second[1] - left[1]), 300, 0.1);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/tiling/fewest-pages", test_fewest_pages);
  g_test_add_func ("/tiling/covers", test_covers);
  g_test_add_func ("/tiling/register-marks", test_register_marks);
  g_test_add_func ("/tiling/single-page-is-clean", test_single_page_is_clean);
  g_test_add_func ("/tiling/true-over-seams", test_true_over_seams);
  g_test_add_func ("/tiling/seams-spare-lettering", test_seams_spare_lettering);
  return g_test_run ();
}
