/* Papers as they leave: true to scale, whole, named, the same every time, or not there at all. */
#include "io/file_error.h"
#include "io/papers.h"
#include "read_back.h"

#include <glib/gstdio.h>
#include <signal.h>
#include <string.h>
#include <sys/resource.h>

#define MM_PER_POINT (25.4 / 72)
#define NEAR 0.02 /* mm: what poppler prints is good to 0.003 mm */

static const char *general_only[] = { "general", NULL };

static RwPapersOptions
options_for (const char *paper)
{
  return (RwPapersOptions){ .paper = rw_paper_find (paper),
                            .only = general_only,
                            .pdf = TRUE,
                            .style = RW_STYLE_FILE,
                            .date = "2026-05-04" };
}

/* A folder of its own for each case, and the built-in build. */
typedef struct
{
  char      *folder;
  RwProject *project;
  GPtrArray *files;
} Fixture;

static void
set_up (Fixture *f, gconstpointer data)
{
  f->folder = g_dir_make_tmp ("rimwright-papers-XXXXXX", NULL);
  f->project = rw_project_new ();
  f->files = g_ptr_array_new_with_free_func (g_free);
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  for (guint i = 0; i < f->files->len; i++)
    g_remove (g_ptr_array_index (f->files, i));
  g_rmdir (f->folder);
  g_free (f->folder);
  rw_project_free (f->project);
  g_ptr_array_unref (f->files);
}

static void
write_papers (Fixture *f, const RwPapersOptions *options)
{
  g_autoptr (GError) error = NULL;

  rw_papers_write (f->project, options, f->folder, f->files, &error);
  g_assert_no_error (error);
}

static GBytes *
written (const Fixture *f, guint i)
{
  char *text;
  gsize length;

  g_assert_cmpuint (i, <, f->files->len);
  g_assert_true (g_file_get_contents (g_ptr_array_index (f->files, i), &text, &length, NULL));
  return g_bytes_new_take (text, length);
}

static void
assert_line (const SvgReader *reader, double x0, double y0, double x1, double y1)
{
  g_assert_true (svg_has_line (reader, (RwBox){ x0, y0, x1, y1 }, MM_PER_POINT, NEAR));
}

/* On A4 across the room begins at 10 + 9 = 19 mm and ends 10 + 15 + 9 = 34 mm over the lower edge; the bars
 * run through the middles of their bands, with ticks of 3.2 mm at 0 and 100 mm. */
static void
test_bars (Fixture *f, gconstpointer data)
{
  RwPapersOptions options = options_for ("a4");

  write_papers (f, &options);

  g_autoptr (GBytes) pdf = written (f, 0);
  g_autofree char *svg = read_pdf (pdf, "pdftocairo", "-svg -noshrink -nocenter -f 1 -l 1");
  if (svg == NULL)
    return;

  g_autoptr (SvgReader) reader = svg_reader_new (svg);
  double level = 210 - 29.5, upright = 14.5;

  assert_line (reader, 19, level, 19, level - 3.2);
  assert_line (reader, 119, level, 119, level - 3.2);
  assert_line (reader, 19 + 101.6, level, 19 + 101.6, level + 3.2);
  assert_line (reader, upright, 176, upright - 3.2, 176);
  assert_line (reader, upright, 76, upright - 3.2, 76);
}

/* A printer that makes 99.5 of 100 mm along the paper and 100.4 across is given as much more and less, about
 * the middle of the page (148.5, 105), which lies across. */
static void
test_corrected_bars (Fixture *f, gconstpointer data)
{
  RwPapersOptions options = options_for ("a4");

  options.bar_long_mm = 99.5;
  options.bar_short_mm = 100.4;
  write_papers (f, &options);

  g_autoptr (GBytes) pdf = written (f, 0);
  g_autofree char *svg = read_pdf (pdf, "pdftocairo", "-svg -noshrink -nocenter -f 1 -l 1");
  if (svg == NULL)
    return;

  g_autoptr (SvgReader) reader = svg_reader_new (svg);
  double x = 100 / 99.5, y = 100 / 100.4;

  assert_line (reader, 148.5 - 129.5 * x, 105 + 75.5 * y, 148.5 - 129.5 * x, 105 + 72.3 * y);
  assert_line (reader, 148.5 - 29.5 * x, 105 + 75.5 * y, 148.5 - 29.5 * x, 105 + 72.3 * y);
  assert_line (reader, 148.5 - 134 * x, 105 - 29 * y, 148.5 - 137.2 * x, 105 - 29 * y);
}

static void
test_title (Fixture *f, gconstpointer data)
{
  RwPapersOptions options = options_for ("letter");

  g_free (f->project->name);
  f->project->name = g_strdup ("Kirschholz, fünf Saiten");
  write_papers (f, &options);

  g_autoptr (GBytes) pdf = written (f, 0);
  g_autofree char *text = read_pdf (pdf, "pdftotext", "-layout"), *info = read_pdf (pdf, "pdfinfo", "");
  if (text == NULL || info == NULL)
    return;

  static const char *const wanted[] = { "Kirschholz, fünf Saiten", "General arrangement", "Letter",
                                        "2026-05-04", "sheet 1 of 1", "all in millimetres" };

  for (guint i = 0; i < G_N_ELEMENTS (wanted); i++)
    g_assert_nonnull (strstr (text, wanted[i]));
  g_assert_true (g_regex_match_simple ("Title: +Kirschholz, fünf Saiten\n", info, 0, 0));
  g_assert_true (g_regex_match_simple ("Page size: +792 x 612 pts", info, 0, 0));
}

/* What every page of every paper has to keep */

static RwBox
on_page (const RwPagePart *part, RwBox box)
{
  return (RwBox){ part->origin.x + box.x0, part->origin.y - box.y1, part->origin.x + box.x1,
                  part->origin.y - box.y0 };
}

static gboolean
is_inside (RwBox inner, RwBox outer)
{
  return inner.x0 >= outer.x0 && inner.y0 >= outer.y0 && inner.x1 <= outer.x1 && inner.y1 <= outer.y1;
}

static gboolean
touch (RwBox a, RwBox b)
{
  return a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;
}

/* Title strip and bars lie within the page, clear of each other and of the drawing's lettering. */
static void
assert_frame_readable (const RwPaperPage *page)
{
  const RwPagePart *frame = &page->parts[1], *drawing = &page->parts[0];
  const GArray *texts = frame->layout->texts, *drawn = drawing->layout->texts;

  for (guint i = 0; i < texts->len; i++)
    {
      RwBox box = on_page (frame, g_array_index (texts, RwPlacedText, i).box);

      g_assert_true (is_inside (box, (RwBox){ 0, 0, page->width, page->height }));
      for (guint k = 0; k < i; k++)
        g_assert_false (touch (box, on_page (frame, g_array_index (texts, RwPlacedText, k).box)));
      for (guint k = 0; k < drawn->len && page->kind->fit != RW_PAPER_FULL_SIZE; k++)
        g_assert_false (touch (box, on_page (drawing, g_array_index (drawn, RwPlacedText, k).box)));
    }
}

static void
assert_drawing_whole (const RwPaperPage *page)
{
  g_assert_true (is_inside (on_page (&page->parts[0], page->parts[0].layout->extent), page->clip));
}

static void
test_every_paper (Fixture *f, gconstpointer data)
{
  for (int i = 0; i < rw_papers_count; i++)
    {
      RwPapersOptions options = options_for (rw_papers[i].id);

      options.only = NULL;

      g_autoptr (RwPaperSet) set = rw_paper_set_new (f->project, &options, NULL);

      g_test_message ("%s", rw_papers[i].id);
      g_assert_nonnull (set);
      for (guint k = 0; k < set->pages->len; k++)
        {
          const RwPaperPage *page = g_ptr_array_index (set->pages, k);

          g_test_message ("%s, %s", page->kind->id, page->label);
          assert_frame_readable (page);
          if (page->kind->fit != RW_PAPER_FULL_SIZE)
            assert_drawing_whole (page);
        }
      for (guint k = 0; k < set->pieces->len; k++)
        assert_drawing_whole (g_ptr_array_index (set->pieces, k));
    }
}

/* Files */

static void
test_files (Fixture *f, gconstpointer data)
{
  RwPapersOptions options = options_for ("a4");
  static const char *const names[]
      = { "papers.pdf", "general.svg", "general.png", "dimensions.csv", "dimensions.json" };
  static const char *const starts[] = { "%PDF-", "<?xml version", "\211PNG", "id,", "{" };

  options.svg = options.png = options.csv = options.json = TRUE;
  write_papers (f, &options);
  g_assert_cmpuint (f->files->len, ==, G_N_ELEMENTS (names));
  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      g_autofree char *name = g_path_get_basename (g_ptr_array_index (f->files, i));
      g_autoptr (GBytes) bytes = written (f, i);

      g_assert_cmpstr (name, ==, names[i]);
      g_assert_cmpmem (g_bytes_get_data (bytes, NULL), strlen (starts[i]), starts[i], strlen (starts[i]));
    }
}

static void
test_same_twice (Fixture *f, gconstpointer data)
{
  RwPapersOptions options = options_for ("a4");
  guint count;

  options.only = NULL; /* all */
  options.svg = options.png = TRUE;
  options.dpi = 60;
  write_papers (f, &options);
  count = f->files->len;

  g_autoptr (GPtrArray) first = g_ptr_array_new_with_free_func ((GDestroyNotify) g_bytes_unref);
  for (guint i = 0; i < count; i++)
    g_ptr_array_add (first, written (f, i));

  write_papers (f, &options);
  g_assert_cmpuint (f->files->len, ==, 2 * count);
  for (guint i = 0; i < count; i++)
    {
      g_autoptr (GBytes) again = written (f, count + i);

      g_assert_true (g_bytes_equal (g_ptr_array_index (first, i), again));
    }
}

static void
test_unknown_kind (Fixture *f, gconstpointer data)
{
  RwPapersOptions options = options_for ("a4");
  static const char *only[] = { "general", "nonsense", NULL };
  g_autoptr (GError) error = NULL;

  options.only = only;
  g_assert_false (rw_papers_write (f->project, &options, f->folder, f->files, &error));
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_VALUE);
  g_assert_nonnull (strstr (error->message, "nonsense"));
  g_assert_cmpuint (f->files->len, ==, 0);
}

/* Where the folder should be, there is a file. */
static void
test_no_folder (Fixture *f, gconstpointer data)
{
  RwPapersOptions options = options_for ("a4");
  g_autofree char *file = g_build_filename (f->folder, "taken", NULL);
  g_autofree char *folder = g_build_filename (file, "papers", NULL);
  g_autoptr (GError) error = NULL;

  g_assert_true (g_file_set_contents (file, "x", 1, NULL));
  g_assert_false (rw_papers_write (f->project, &options, folder, f->files, &error));
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS);
  g_assert_cmpuint (f->files->len, ==, 0);
  g_remove (file);
}

static guint
files_in (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  guint count = 0;

  g_assert_nonnull (dir);
  while (g_dir_read_name (dir) != NULL)
    count++;
  return count;
}

/* A disk that is full after so many bytes, as far as this process can tell; the limit that was. */
static rlim_t
limit_files (rlim_t bytes)
{
  struct rlimit limit;
  rlim_t before;

  g_assert_cmpint (getrlimit (RLIMIT_FSIZE, &limit), ==, 0);
  before = limit.rlim_cur;
  limit.rlim_cur = bytes;
  g_assert_cmpint (setrlimit (RLIMIT_FSIZE, &limit), ==, 0);
  return before;
}

/* The PDF does not fit: nothing is there, not even a half file, and it is said. */
static void
test_no_room (Fixture *f, gconstpointer data)
{
  RwPapersOptions options = options_for ("a4");
  g_autofree char *folder = g_build_filename (f->folder, "papers", NULL);
  g_autoptr (GError) error = NULL;
  rlim_t before;
  gboolean good;

  signal (SIGXFSZ, SIG_IGN);
  before = limit_files (2000);
  good = rw_papers_write (f->project, &options, folder, f->files, &error);
  limit_files (before);
  g_assert_false (good);
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS);
  g_assert_nonnull (strstr (error->message, "papers.pdf"));
  g_assert_nonnull (strstr (error->message, g_strerror (EFBIG)));
  g_assert_cmpuint (f->files->len, ==, 0);
  g_assert_false (g_file_test (folder, G_FILE_TEST_EXISTS)); /* it was made for them */
}

/* A file that was there before is as it was. */
static void
test_no_room_over_old (Fixture *f, gconstpointer data)
{
  RwPapersOptions options = options_for ("a4");
  g_autofree char *path = g_build_filename (f->folder, "papers.pdf", NULL), *kept = NULL;
  g_autoptr (GError) error = NULL;
  rlim_t before;
  int pages;

  signal (SIGXFSZ, SIG_IGN);
  g_assert_true (g_file_set_contents (path, "old", 3, NULL));
  before = limit_files (2000);
  g_assert_false (rw_papers_write_pdf (f->project, &options, path, &pages, &error));
  limit_files (before);
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS);
  g_assert_true (g_file_get_contents (path, &kept, NULL, NULL));
  g_assert_cmpstr (kept, ==, "old");
  g_assert_cmpuint (files_in (f->folder), ==, 1);
  g_remove (path);
}

static void
test_device_full (Fixture *f, gconstpointer data)
{
  RwPapersOptions options = options_for ("a4");
  g_autoptr (GError) error = NULL;
  int pages;

  if (!g_file_test ("/dev/full", G_FILE_TEST_EXISTS))
    {
      g_test_skip ("this system has no /dev/full");
      return;
    }
  g_assert_false (rw_papers_write_pdf (f->project, &options, "/dev/full", &pages, &error));
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS);
  g_assert_nonnull (strstr (error->message, g_strerror (ENOSPC)));
}

/* A folder of the kernel's, which no one may write to. */
static void
test_unwritable (Fixture *f, gconstpointer data)
{
  RwPapersOptions options = options_for ("a4");
  g_autoptr (GError) error = NULL;

  g_assert_false (rw_papers_write (f->project, &options, "/proc/self", f->files, &error));
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS);
  g_assert_nonnull (strstr (error->message, "papers.pdf"));
  g_assert_cmpuint (f->files->len, ==, 0);
}

/* Progress */

typedef struct
{
  int last, of, calls, stop_at; /* stop_at 0: never */
} Progress;

static gboolean
follow (int done, int of, gpointer data)
{
  Progress *progress = data;

  if (of > 1) /* writing; before, the pages are made */
    {
      g_assert_cmpint (done, >=, progress->last);
      g_assert_cmpint (done, <=, of);
      progress->last = done;
      progress->of = of;
      progress->calls++;
    }
  return progress->stop_at == 0 || progress->calls < progress->stop_at;
}

static void
test_progress (Fixture *f, gconstpointer data)
{
  static const char *only[] = { "general", "pot", "rim-strip", NULL };
  RwPapersOptions options = options_for ("a4");
  Progress progress = { 0 };

  options.only = only;
  options.svg = TRUE;
  options.progress = follow;
  options.progress_data = &progress;
  write_papers (f, &options);
  g_assert_cmpint (progress.calls, >, 5);
  g_assert_cmpint (progress.last, ==, progress.of);
}

/* Stopped while the PDF is painted: no file is there, and the error says so. */
static void
test_stopped (Fixture *f, gconstpointer data)
{
  static const char *only[] = { "rim-strip", NULL };
  RwPapersOptions options = options_for ("a4");
  Progress progress = { .stop_at = 2 };
  g_autoptr (GError) error = NULL;

  options.only = only;
  options.progress = follow;
  options.progress_data = &progress;
  g_assert_false (rw_papers_write (f->project, &options, f->folder, f->files, &error));
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_STOPPED);
  g_assert_cmpint (progress.calls, ==, 2);
  g_assert_cmpuint (files_in (f->folder), ==, 0);
}

int
main (int argc, char **argv)
{
  static const struct
  {
    const char *name;
    void (*func) (Fixture *f, gconstpointer data);
  } tests[] = {
    { "/papers/bars", test_bars },
    { "/papers/corrected-bars", test_corrected_bars },
    { "/papers/title", test_title },
    { "/papers/every-paper", test_every_paper },
    { "/papers/files", test_files },
    { "/papers/same-twice", test_same_twice },
    { "/papers/unknown-kind", test_unknown_kind },
    { "/papers/no-folder", test_no_folder },
    { "/papers/no-room", test_no_room },
    { "/papers/no-room-over-old", test_no_room_over_old },
    { "/papers/device-full", test_device_full },
    { "/papers/unwritable", test_unwritable },
    { "/papers/progress", test_progress },
    { "/papers/stopped", test_stopped },
  };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (tests); i++)
    g_test_add (tests[i].name, Fixture, NULL, set_up, tests[i].func, tear_down);
  return g_test_run ();
}
