/* The printer gets what the PDF has: as many pages, each in its size and direction, at exactly 1 : 1.  They
 * are exported through the toolkit's print operation, which needs no display. */
#include "papers/print.h"
#include "read_back.h"

#include <glib/gstdio.h>
#include <math.h>

#define MM_PER_POINT (25.4 / 72)
#define NEAR 0.02      /* mm: what poppler prints is good to 0.003 mm */
#define NEAR_EDGE 0.06 /* mm: the toolkit's sizes of paper have whole points or tenths of a mm */

static RwPaperSet *
set_of (const char *kind, const char *paper)
{
  const char *only[] = { kind, NULL };
  RwPapersOptions options
      = { .paper = rw_paper_find (paper), .only = only, .style = RW_STYLE_FILE, .date = "2026-05-04" };
  g_autoptr (RwProject) project = rw_project_new ();
  g_autoptr (GError) error = NULL;
  RwPaperSet *set = rw_paper_set_new (project, &options, &error);

  g_assert_no_error (error);
  return set;
}

/* Takes the set over. */
static GBytes *
export (RwPaperSet *set)
{
  g_autoptr (GtkPrintOperation) operation = rw_print_new (set, "Papers");
  g_autofree char *folder = g_dir_make_tmp ("rimwright-print-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "export.pdf", NULL);
  g_autoptr (GError) error = NULL;
  char *text;
  gsize length;

  gtk_print_operation_set_export_filename (operation, path);
  gtk_print_operation_run (operation, GTK_PRINT_OPERATION_ACTION_EXPORT, NULL, &error);
  g_assert_no_error (error);
  g_assert_true (g_file_get_contents (path, &text, &length, NULL));
  g_remove (path);
  g_rmdir (folder);
  return g_bytes_new_take (text, length);
}

/* Is there a line, as the ticks of a check bar are, that has an end at x and y, mm from the upper left corner? */
static gboolean
has_tick (const GArray *lines, double x, double y)
{
  for (guint i = 0; i < lines->len; i++)
    {
      RwBox line = g_array_index (lines, RwBox, i);

      if (hypot (line.x0 - x, line.y0 - y) < NEAR || hypot (line.x1 - x, line.y1 - y) < NEAR)
        return TRUE;
    }
  return FALSE;
}

static GArray *
lines_of_first_page (GBytes *pdf)
{
  g_autofree char *svg = read_pdf (pdf, "pdftocairo", "-svg -noshrink -nocenter -f 1 -l 1");

  if (svg == NULL)
    return NULL;

  g_autoptr (SvgReader) reader = svg_reader_new (svg);
  return svg_lines (reader, MM_PER_POINT);
}

/* The general arrangement lies across on A4, 297 x 210.  The room begins 10 + 9 = 19 mm from the left and
 * 10 + 15 + 9 = 34 mm over the lower edge; the bars run through the middles of their bands, 9 mm wide
 * (io/page_frame.h), so from (19, 180.5) to the right and from (14.5, 176) up. */
static void
test_across (void)
{
  g_autoptr (GBytes) pdf = export (set_of ("general", "a4"));
  g_autoptr (GArray) lines = lines_of_first_page (pdf);

  if (lines == NULL)
    return;
  g_assert_true (has_tick (lines, 19, 180.5));
  g_assert_true (has_tick (lines, 119, 180.5));
  g_assert_true (has_tick (lines, 14.5, 176));
  g_assert_true (has_tick (lines, 14.5, 76));
}

/* Long by 100/98 along the paper's long edge, which is that of the page's width: 129.5 and 29.5 mm left of
 * the middle become so much more; the other way stays. */
static void
test_corrected (void)
{
  RwPaperSet *set = set_of ("general", "a4");

  rw_paper_set_correct (set, 0, 98);

  g_autoptr (GBytes) pdf = export (set);
  g_autoptr (GArray) lines = lines_of_first_page (pdf);

  if (lines == NULL)
    return;
  g_assert_true (has_tick (lines, 148.5 - 129.5 / 0.98, 180.5));
  g_assert_true (has_tick (lines, 148.5 - 29.5 / 0.98, 180.5));
}

/* Sizes of the pages as pdfinfo has them ("Page    1 size:  841.89 x 595.276 pts"), against those of the
 * set. */
static void
assert_sizes (const char *kind, const char *paper)
{
  g_autoptr (RwPaperSet) set = set_of (kind, paper);
  g_autoptr (GBytes) pdf = export (set_of (kind, paper));
  g_autofree char *info = read_pdf (pdf, "pdfinfo", "-f 1 -l 999");
  guint pages = 0;

  if (info == NULL)
    return;

  g_auto (GStrv) rows = g_strsplit (info, "\n", -1);
  for (int i = 0; rows[i] != NULL; i++)
    {
      double width, height;
      int number;

      if (sscanf (rows[i], "Page %d size: %lf x %lf", &number, &width, &height) != 3)
        continue;
      g_assert_cmpint (number, ==, (int) ++pages);
      g_assert_cmpuint (pages, <=, set->pages->len);

      const RwPaperPage *page = g_ptr_array_index (set->pages, pages - 1);
      g_assert_cmpfloat_with_epsilon (width * MM_PER_POINT, page->width, NEAR_EDGE);
      g_assert_cmpfloat_with_epsilon (height * MM_PER_POINT, page->height, NEAR_EDGE);
    }
  g_assert_cmpuint (pages, ==, set->pages->len);
}

static void
test_sizes (void)
{
  assert_sizes ("general", "a4");
  assert_sizes ("steps", "letter");
  assert_sizes ("rim-strip", "a4");
  assert_sizes ("fretboard", "ansi-c");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/print/bars/across", test_across);
  g_test_add_func ("/print/bars/corrected", test_corrected);
  g_test_add_func ("/print/sizes", test_sizes);
  return g_test_run ();
}
