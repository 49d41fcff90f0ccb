/* Pictures of all views against pictures that were looked at and found good: by light in millimetres, and by dark in
 * fractions of an inch.
 *
 * Pictures are compared in squares of 6 x 6 pixels by the mean of each channel: that a line has come, gone, moved by
 * some pixels or changed its weight shows, that edges are smoothed otherwise does not.  Where the desktop's Sans is
 * not DejaVu Sans, which Debian takes, letters look otherwise and nothing is compared.
 *
 * With RIMWRIGHT_PICTURES naming a folder they are written there, and not compared: so they are renewed, after they
 * have been looked at.  Those in tests/io/pictures have 64 colours each, to be small. */
#include "draw/drawing.h"
#include "io/paint_cairo.h"

#include <math.h>
#include <pango/pangocairo.h>

/* Painted at this size and halved. */
#define WIDE 960
#define HIGH 540

#define SQUARE 6
/* Of 255: what 64 colours for a picture make of it is less.  Four squares of 3600 may be out by more: a digit that
 * has become another is, a word that has moved is not. */
#define TOLERANCE 8
#define SQUARES_OUT 4

#define PIXEL (25.4 / 96) /* paper mm */
#define MARGIN 20

typedef struct
{
  const char      *name;
  const RwPalette *palette;
  RwStyle          style;
} Look;

static const Look looks[] = {
  { "light", &rw_palette_light, { RW_UNITS_MM, '.' } },
  { "dark", &rw_palette_dark, { RW_UNITS_FRACTION, '.' } },
};

typedef struct
{
  RwView      view;
  const Look *look;
} Case;

/* ---- painting ---- */

/* The largest layout that fits: what stands round a drawing keeps its size, so by trial. */
static RwLayout *
fitted (const RwSheet *sheet)
{
  const double room_x = (WIDE - 2 * MARGIN) * PIXEL, room_y = (HIGH - 2 * MARGIN) * PIXEL;
  RwBox box = rw_sheet_extent (sheet);
  double scale = MIN (room_x / (box.x1 - box.x0), room_y / (box.y1 - box.y0));

  for (;; scale *= 0.98)
    {
      RwLayout *layout = rw_layout_new (sheet, scale, 0);
      RwBox all = layout->extent;

      if (all.x1 - all.x0 <= room_x && all.y1 - all.y0 <= room_y)
        return layout;
      rw_layout_free (layout);
    }
}

static cairo_surface_t *
new_surface (int width, int height)
{
  return cairo_image_surface_create (CAIRO_FORMAT_RGB24, width, height);
}

static cairo_surface_t *
painted (const RwLayout *layout, const RwPalette *palette)
{
  cairo_surface_t *surface = new_surface (WIDE, HIGH);
  cairo_t *cr = cairo_create (surface);
  RwBox box = layout->extent;

  cairo_set_source_rgb (cr, palette->paper.r, palette->paper.g, palette->paper.b);
  cairo_paint (cr);
  cairo_translate (cr, round (WIDE / 2 - (box.x0 + box.x1) / 2 / PIXEL),
                   round (HIGH / 2 + (box.y0 + box.y1) / 2 / PIXEL));
  cairo_scale (cr, 1 / PIXEL, 1 / PIXEL);
  rw_paint (cr, layout, palette, PIXEL);
  cairo_destroy (cr);
  cairo_surface_flush (surface);
  return surface;
}

static guchar *
pixel (cairo_surface_t *surface, int x, int y)
{
  return cairo_image_surface_get_data (surface) + y * cairo_image_surface_get_stride (surface) + 4 * x;
}

static cairo_surface_t *
halved (cairo_surface_t *surface)
{
  cairo_surface_t *half = new_surface (WIDE / 2, HIGH / 2);

  for (int y = 0; y < HIGH / 2; y++)
    for (int x = 0; x < WIDE / 2; x++)
      for (int channel = 0; channel < 3; channel++)
        {
          const guchar *p = pixel (surface, 2 * x, 2 * y) + channel, *q = pixel (surface, 2 * x, 2 * y + 1) + channel;

          pixel (half, x, y)[channel] = (guchar) ((p[0] + p[4] + q[0] + q[4] + 2) / 4);
        }
  cairo_surface_mark_dirty (half);
  return half;
}

static cairo_surface_t *
picture_of (const Case *test)
{
  g_autofree RwResult *result = g_new (RwResult, 1);
  RwDesign design;
  cairo_surface_t *large, *small;

  rw_design_init (&design);
  rw_solve (&design, NULL, result);

  g_autoptr (RwSheet) sheet = rw_draw (test->view, result, NULL, test->look->style);
  g_autoptr (RwLayout) layout = fitted (sheet);

  large = painted (layout, test->look->palette);
  small = halved (large);
  cairo_surface_destroy (large);
  return small;
}

/* ---- comparing ---- */

static double
mean (cairo_surface_t *surface, int left, int top, int channel)
{
  int sum = 0;

  for (int y = top; y < top + SQUARE; y++)
    for (int x = left; x < left + SQUARE; x++)
      sum += pixel (surface, x, y)[channel];
  return (double) sum / (SQUARE * SQUARE);
}

static gboolean
is_out (cairo_surface_t *a, cairo_surface_t *b, int x, int y)
{
  for (int channel = 0; channel < 3; channel++)
    if (fabs (mean (a, x, y, channel) - mean (b, x, y, channel)) > TOLERANCE)
      return TRUE;
  return FALSE;
}

static int
squares_out (cairo_surface_t *a, cairo_surface_t *b)
{
  int out = 0;

  for (int y = 0; y + SQUARE <= HIGH / 2; y += SQUARE)
    for (int x = 0; x + SQUARE <= WIDE / 2; x += SQUARE)
      out += is_out (a, b, x, y);
  return out;
}

static char *
file_name (const Case *test)
{
  return g_strdup_printf ("%s-%s.png", rw_view_id (test->view), test->look->name);
}

static cairo_surface_t *
found_good (const Case *test)
{
  g_autofree char *name = file_name (test);
  g_autofree char *path = g_test_build_filename (G_TEST_DIST, "io", "pictures", name, NULL);
  cairo_surface_t *surface = cairo_image_surface_create_from_png (path), *copy = new_surface (WIDE / 2, HIGH / 2);
  cairo_t *cr = cairo_create (copy);

  g_assert_cmpint (cairo_surface_status (surface), ==, CAIRO_STATUS_SUCCESS);
  g_assert_cmpint (cairo_image_surface_get_width (surface), ==, WIDE / 2);
  g_assert_cmpint (cairo_image_surface_get_height (surface), ==, HIGH / 2);
  cairo_set_source_surface (cr, surface, 0, 0);
  cairo_paint (cr);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  cairo_surface_flush (copy);
  return copy;
}

static void
write_picture (cairo_surface_t *picture, const Case *test, const char *folder)
{
  g_autofree char *name = file_name (test);
  g_autofree char *path = g_build_filename (folder, name, NULL);

  g_assert_cmpint (cairo_surface_write_to_png (picture, path), ==, CAIRO_STATUS_SUCCESS);
}

static gboolean
has_usual_letters (void)
{
  PangoContext *context = pango_font_map_create_context (pango_cairo_font_map_get_default ());
  PangoFontDescription *sans = pango_font_description_from_string ("Sans 10"), *found;
  PangoFont *font = pango_context_load_font (context, sans);
  gboolean usual;

  found = pango_font_describe (font);
  usual = g_strcmp0 (pango_font_description_get_family (found), "DejaVu Sans") == 0;
  pango_font_description_free (found);
  pango_font_description_free (sans);
  g_object_unref (font);
  g_object_unref (context);
  return usual;
}

static void
test_picture (gconstpointer data)
{
  const Case *test = data;
  const char *into = g_getenv ("RIMWRIGHT_PICTURES");
  cairo_surface_t *picture = picture_of (test), *good;

  if (into != NULL)
    write_picture (picture, test, into);
  else if (!has_usual_letters ())
    g_test_skip ("the letters here are others");
  else
    {
      good = found_good (test);
      g_assert_cmpint (squares_out (picture, good), <=, SQUARES_OUT);
      cairo_surface_destroy (good);
    }
  cairo_surface_destroy (picture);
}

/* The comparison itself: a picture is like itself, and not like one in which a line of the drawing is missing. */
static void
test_comparison (void)
{
  const Case whole = { RW_VIEW_WHOLE, &looks[0] };
  cairo_surface_t *a = picture_of (&whole), *b = picture_of (&whole);
  cairo_t *cr;

  g_assert_cmpint (squares_out (a, b), ==, 0);
  cr = cairo_create (b);
  cairo_set_source_rgb (cr, rw_palette_light.ink.r, rw_palette_light.ink.g, rw_palette_light.ink.b);
  cairo_rectangle (cr, 20, 20, 80, 1);
  cairo_fill (cr);
  cairo_destroy (cr);
  cairo_surface_flush (b);
  g_assert_cmpint (squares_out (a, b), >, SQUARES_OUT);
  cairo_surface_destroy (a);
  cairo_surface_destroy (b);
}

int
main (int argc, char **argv)
{
  static Case cases[RW_VIEW_COUNT * G_N_ELEMENTS (looks)];
  int count = 0;

  g_test_init (&argc, &argv, NULL);

  g_test_add_func ("/pictures/comparison", test_comparison);
  for (int view = 0; view < RW_VIEW_COUNT; view++)
    for (guint look = 0; look < G_N_ELEMENTS (looks); look++)
      {
        g_autofree char *path = g_strdup_printf ("/pictures/%s/%s", rw_view_id ((RwView) view), looks[look].name);

        cases[count] = (Case){ (RwView) view, &looks[look] };
        g_test_add_data_func (path, &cases[count], test_picture);
        count++;
      }
  return g_test_run ();
}
