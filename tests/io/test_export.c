/* Pages written as PDF, SVG and PNG, read back by other programs: poppler, and GLib's reader of XML. */
#include "io/export_pdf.h"
#include "io/export_png.h"
#include "io/export_svg.h"
#include "io/file_error.h"
#include "read_back.h"

#include <locale.h>
#include <math.h>
#include <string.h>

#define MM_PER_POINT (25.4 / 72)
#define PDF_NEAR 0.02 /* mm: the format's numbers as poppler prints them are good to 0.003 mm */
#define SVG_NEAR 6e-5 /* mm: half of the fourth decimal, and a little */

/* A page with level and upright bars of 100 mm, a filled ring, a dimension and texts of all three figures. */
typedef struct
{
  RwSheet   *sheet;
  RwLayout  *layout;
  RwPagePart part;
  RwPage     page;
} Fixture;

static void
set_up (Fixture *f, gconstpointer data)
{
  f->sheet = rw_sheet_new ("bars", RW_STYLE_FILE);
  rw_sheet_set (f->sheet, RW_LAYER_FRAME, RW_SUBJECT_NONE);
  rw_item_name (rw_sheet_line (f->sheet, RW_PEN_EDGE, 0, 0, 200, 0), "level & bar");
  rw_sheet_line (f->sheet, RW_PEN_HIDDEN, 0, 0, 0, 200);
  rw_sheet_set (f->sheet, RW_LAYER_RIM, RW_SUBJECT_NONE);
  rw_sheet_circle (f->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, 150, 80, 60);
  rw_sheet_set (f->sheet, RW_LAYER_DIMENSIONS, RW_SUBJECT_NONE);
  rw_sheet_dimension (f->sheet, RW_MEASURE_HORIZONTAL, (RwPoint){ 90, 80 }, (RwPoint){ 210, 80 }, 40,
                      RW_FIGURE_WORKED_OUT, 120, NULL);
  rw_sheet_set (f->sheet, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  rw_sheet_text (f->sheet, 20, 180, RW_ALIGN_START, RW_LETTERS_LARGE, "Größe ½ < ø 3")->figure
      = RW_FIGURE_MEASURED;
  f->layout = rw_layout_new (f->sheet, 0.5, 0);
  f->part = (RwPagePart){ f->layout, { 20, 150 } };
  f->page = (RwPage){ 210, 160, "Bars & ring", &f->part, 1 };
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  rw_layout_free (f->layout);
  rw_sheet_free (f->sheet);
}

static GBytes *
make_pdf (const Fixture *f)
{
  g_autoptr (RwPdf) pdf = rw_pdf_new ("Größe ø", "2026-05-04");
  g_autoptr (GError) error = NULL;
  GBytes *bytes;

  for (int i = 0; i < 2; i++)
    {
      cairo_t *cr = rw_pdf_begin_page (pdf, 210 + 87 * i, 297, i == 0 ? "first" : "second", i == 0);

      cairo_translate (cr, f->part.origin.x, f->part.origin.y);
      rw_paint (cr, f->layout, &rw_palette_print, 0);
    }
  bytes = rw_pdf_finish (pdf, &error);
  g_assert_no_error (error);
  return bytes;
}

static char *
ask (const Fixture *f, const char *program, const char *options)
{
  g_autoptr (GBytes) bytes = make_pdf (f);

  return read_pdf (bytes, program, options);
}

static void
test_pdf_info (Fixture *f, gconstpointer data)
{
  g_autofree char *info = ask (f, "pdfinfo", "-f 1 -l 2");

  if (info == NULL)
    return;
  g_assert_true (g_regex_match_simple ("Title: +Größe ø\n", info, 0, 0));
  g_assert_true (g_regex_match_simple ("CreationDate: .*May +4 .*2026", info, 0, 0));
  g_assert_true (g_regex_match_simple ("Pages: +2\n", info, 0, 0));
  g_assert_true (g_regex_match_simple ("Page +1 size: +595\\.27\\d* x 841\\.8\\d* pts", info, 0, 0));
  g_assert_true (g_regex_match_simple ("Page +2 size: +841\\.8\\d* x 841\\.8\\d* pts", info, 0, 0));
}

static void
test_pdf_fonts (Fixture *f, gconstpointer data)
{
  g_autofree char *fonts = ask (f, "pdffonts", "");

  if (fonts == NULL)
    return;

  g_auto (GStrv) lines = g_strsplit (g_strstrip (fonts), "\n", -1);

  g_assert_cmpuint (g_strv_length (lines), >, 2);
  for (int i = 2; lines[i] != NULL; i++) /* embedded, a subset, with a way back to Unicode */
    g_assert_true (g_regex_match_simple (" yes +yes +yes +\\d+ +\\d+$", lines[i], 0, 0));
}

static void
test_pdf_text (Fixture *f, gconstpointer data)
{
  g_autofree char *text = ask (f, "pdftotext", "");

  if (text == NULL)
    return;
  g_assert_nonnull (strstr (text, "Größe ½ < ø 3"));
  g_assert_nonnull (strstr (text, "120.0"));
}

/* The bars of 200 mm at 1 : 2, from (20, 150) on the page. */
static const RwBox level_bar = { 20, 150, 120, 150 }, upright_bar = { 20, 150, 20, 50 };

static void
test_pdf_scale (Fixture *f, gconstpointer data)
{
  g_autofree char *svg = ask (f, "pdftocairo", "-svg -noshrink -nocenter -f 2 -l 2");

  if (svg == NULL)
    return;

  g_autoptr (SvgReader) reader = svg_reader_new (svg);

  g_assert_true (svg_has_line (reader, level_bar, MM_PER_POINT, PDF_NEAR));
  g_assert_true (svg_has_line (reader, upright_bar, MM_PER_POINT, PDF_NEAR));
}

static void
test_pdf_same_twice (Fixture *f, gconstpointer data)
{
  g_autoptr (GBytes) first = make_pdf (f);

  g_usleep (1100 * 1000); /* so that a clock in the file would show */

  g_autoptr (GBytes) second = make_pdf (f);
  g_assert_true (g_bytes_equal (first, second));
}

static void
test_svg_units (Fixture *f, gconstpointer data)
{
  g_autofree char *svg = rw_svg_write (&f->page, &rw_palette_print);
  g_autoptr (SvgReader) reader = svg_reader_new (svg);

  g_assert_cmpstr (reader->width, ==, "210mm");
  g_assert_cmpstr (reader->height, ==, "160mm");
  g_assert_cmpstr (reader->view, ==, "0 0 210 160");
  g_assert_true (svg_has_line (reader, level_bar, 1, SVG_NEAR));
  g_assert_true (svg_has_line (reader, upright_bar, 1, SVG_NEAR));
  g_assert_cmpstr (reader->texts->str, ==, "120.0\nGröße ½ < ø 3\n");
}

/* Which group it is, in the order of painting; -1: there is none. */
static int
place_of_group (const SvgReader *reader, const char *group)
{
  for (guint i = 0; i < reader->groups->len; i++)
    if (g_str_equal (g_ptr_array_index (reader->groups, i), group))
      return (int) i;
  return -1;
}

static void
test_svg_groups (Fixture *f, gconstpointer data)
{
  g_autofree char *svg = rw_svg_write (&f->page, &rw_palette_print);
  g_autoptr (SvgReader) reader = svg_reader_new (svg);
  static const char *const wanted[] = { "frame:Frame", "rim:Rim", "dimensions:Dimensions", "text:Lettering" };

  g_assert_cmpuint (reader->groups->len, ==, G_N_ELEMENTS (wanted));
  for (guint i = 0; i < G_N_ELEMENTS (wanted); i++)
    g_assert_cmpint (place_of_group (reader, wanted[i]), >=, 0);
  g_assert_nonnull (strstr (svg, "<title>level &amp; bar</title>"));
}

/* A filled box over the ring, then more of the rim over that box: the hoop comes after the rim, which comes once, and
 * is masked where the second part of the rim is. */
static void
test_svg_order (Fixture *f, gconstpointer data)
{
  rw_sheet_set (f->sheet, RW_LAYER_HOOP, RW_SUBJECT_NONE);
  rw_sheet_box (f->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, 140, 60, 160, 100);
  rw_sheet_set (f->sheet, RW_LAYER_RIM, RW_SUBJECT_NONE);
  rw_sheet_box (f->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, 0, 100, 20, 120); /* on nothing */
  rw_sheet_box (f->sheet, RW_PEN_OUTLINE, RW_TINT_BONE, 145, 70, 155, 90);

  g_autofree char *svg = rw_svg_write (&f->page, &rw_palette_print);
  g_autoptr (SvgReader) reader = svg_reader_new (svg);
  g_auto (GStrv) masks = g_strsplit (svg, "<mask ", -1), masked = g_strsplit (svg, "mask=\"url(#", -1);

  g_assert_cmpuint (reader->groups->len, ==, 5);
  g_assert_cmpint (place_of_group (reader, "rim:Rim"), >=, 0);
  g_assert_cmpint (place_of_group (reader, "hoop:Hoop"), >=, 0);
  g_assert_cmpuint (g_strv_length (masks), ==, 2);
  g_assert_cmpuint (g_strv_length (masked), ==, 2);
}

static void
test_svg_locale (Fixture *f, gconstpointer data)
{
  g_autofree char *plain = rw_svg_write (&f->page, &rw_palette_print);

  if (setlocale (LC_NUMERIC, "de_DE.UTF-8") == NULL)
    {
      g_test_skip ("no locale with decimal commas");
      return;
    }

  g_autofree char *comma = rw_svg_write (&f->page, &rw_palette_print);
  g_autoptr (GBytes) pdf_comma = make_pdf (f);

  setlocale (LC_NUMERIC, "C");

  g_autoptr (GBytes) pdf_plain = make_pdf (f);

  g_assert_cmpstr (comma, ==, plain);
  g_assert_true (g_bytes_equal (pdf_comma, pdf_plain));
}

/* PNG: the header chunk has width and height at 16 and 20, and pHYs follows with dots per metre. */

static guint32
number_at (const guint8 *data, int offset)
{
  guint32 number;

  memcpy (&number, data + offset, sizeof number);
  return GUINT32_FROM_BE (number);
}

static void
test_png (Fixture *f, gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = rw_png_write (&f->page, &rw_palette_print, 254, &error);
  const guint8 *png;

  g_assert_no_error (error);
  png = g_bytes_get_data (bytes, NULL);
  g_assert_cmpmem (png, 8, "\211PNG\r\n\032\n", 8);
  g_assert_cmpuint (number_at (png, 16), ==, 2100);
  g_assert_cmpuint (number_at (png, 20), ==, 1600);
  g_assert_cmpmem (png + 37, 4, "pHYs", 4);
  g_assert_cmpuint (number_at (png, 41), ==, 10000);
  g_assert_cmpuint (number_at (png, 45), ==, 10000);
  g_assert_cmpuint (png[49], ==, 1);
}

typedef struct
{
  const guint8 *data;
  gsize         length, at;
} Source;

static cairo_status_t
feed (void *closure, unsigned char *to, unsigned int length)
{
  Source *source = closure;

  if (source->at + length > source->length)
    return CAIRO_STATUS_READ_ERROR;
  memcpy (to, source->data + source->at, length);
  source->at += length;
  return CAIRO_STATUS_SUCCESS;
}

/* At 10 dots a mm the level bar, 0.25 mm wide at y = 150, is dark from dot 200 to dot 1199 of row 1500, and
 * not beyond.  libpng checks the chunks' sums as it reads. */
static void
test_png_scale (Fixture *f, gconstpointer data)
{
  g_autoptr (GBytes) bytes = rw_png_write (&f->page, &rw_palette_print, 254, NULL);
  Source source = { 0 };
  cairo_surface_t *picture;
  const guint32 *row;

  source.data = g_bytes_get_data (bytes, &source.length);
  picture = cairo_image_surface_create_from_png_stream (feed, &source);
  g_assert_cmpint (cairo_surface_status (picture), ==, CAIRO_STATUS_SUCCESS);
  row = (const guint32 *) (const void *) (cairo_image_surface_get_data (picture)
                                          + 1500 * cairo_image_surface_get_stride (picture));
  for (int x = 196; x < 1204; x++)
    g_assert_cmpint ((row[x] & 0xff) < 0x80, ==, x >= 200 && x < 1200);
  cairo_surface_destroy (picture);
}

static void
test_png_too_large (Fixture *f, gconstpointer data)
{
  g_autoptr (GError) error = NULL;

  g_assert_null (rw_png_write (&f->page, &rw_palette_print, 3000, &error));
  g_assert_error (error, RW_FILE_ERROR, RW_FILE_ERROR_TOO_BIG);
}

int
main (int argc, char **argv)
{
  static const struct
  {
    const char *name;
    void (*func) (Fixture *f, gconstpointer data);
  } tests[] = {
    { "/export/pdf/info", test_pdf_info },
    { "/export/pdf/fonts", test_pdf_fonts },
    { "/export/pdf/text", test_pdf_text },
    { "/export/pdf/scale", test_pdf_scale },
    { "/export/pdf/same-twice", test_pdf_same_twice },
    { "/export/svg/units", test_svg_units },
    { "/export/svg/groups", test_svg_groups },
    { "/export/svg/order", test_svg_order },
    { "/export/svg/locale", test_svg_locale },
    { "/export/png/header", test_png },
    { "/export/png/scale", test_png_scale },
    { "/export/png/too-large", test_png_too_large },
  };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (tests); i++)
    g_test_add (tests[i].name, Fixture, NULL, set_up, tests[i].func, tear_down);
  return g_test_run ();
}
