/* The quick painter: by areas worked out by hand, and against cairo, which paints the drawing at rest. */
#include "io/paint_quick.h"
#include "draw/drawing.h"

#include <math.h>

#define WIDE 160
#define HIGH 120
#define WHITE 0xffffffff
#define BLACK 0xff000000

typedef struct
{
  guint32  memory[WIDE * HIGH];
  RwPixels pixels;
} Canvas;

static void
set_up (Canvas *canvas, gconstpointer data)
{
  canvas->pixels = (RwPixels){ canvas->memory, WIDE, 0, 0, WIDE, HIGH };
  rw_scan_clear (&canvas->pixels, WHITE);
}

static void
tear_down (Canvas *canvas, gconstpointer data)
{
}

/* How much black there is, in whole pixels. */
static double
blackness (const Canvas *canvas)
{
  double sum = 0;

  for (int i = 0; i < WIDE * HIGH; i++)
    sum += 1 - (canvas->memory[i] & 0xff) / 255.0;
  return sum;
}

static guint32
pixel (const Canvas *canvas, int x, int y)
{
  return canvas->memory[y * WIDE + x];
}

/* ---- areas ---- */

static void
box_pieces (RwPiece *pieces, double x0, double y0, double x1, double y1)
{
  RwPoint p[] = { { x0, y0 }, { x1, y0 }, { x1, y1 }, { x0, y1 } };

  for (int i = 0; i < 4; i++)
    pieces[i] = (RwPiece){ p[i], p[(i + 1) % 4] };
}

/* From 10.2 to 20.6 lie the middles of the pixels 10 to 20, from 5.5 to 9.4 those of 5 to 8. */
static void
test_box (Canvas *canvas, gconstpointer data)
{
  RwPiece pieces[4];

  box_pieces (pieces, 10.2, 5.5, 20.6, 9.4);
  rw_scan_fill (&canvas->pixels, pieces, 4, BLACK);
  for (int y = 0; y < HIGH; y++)
    for (int x = 0; x < WIDE; x++)
      g_assert_cmphex (pixel (canvas, x, y), ==, x >= 10 && x <= 20 && y >= 5 && y <= 8 ? BLACK : WHITE);
}

/* A run left open is closed: three sides fill as four. */
static void
test_open (Canvas *canvas, gconstpointer data)
{
  RwPiece pieces[4];

  box_pieces (pieces, 10, 10, 30, 20);
  rw_scan_fill (&canvas->pixels, pieces, 3, BLACK);
  g_assert_cmpfloat (blackness (canvas), ==, 20 * 10);
}

/* A box within a box: a hole where it runs the other way round, none where it runs the same way. */
static void
test_winding (Canvas *canvas, gconstpointer data)
{
  RwPiece pieces[8];

  box_pieces (pieces, 10, 10, 50, 50);
  box_pieces (pieces + 4, 40, 20, 20, 40); /* both turned round: the same way */
  rw_scan_fill (&canvas->pixels, pieces, 8, BLACK);
  g_assert_cmpfloat (blackness (canvas), ==, 40 * 40 - 20 * 20);

  rw_scan_clear (&canvas->pixels, WHITE);
  box_pieces (pieces + 4, 20, 20, 40, 40);
  rw_scan_fill (&canvas->pixels, pieces, 8, BLACK);
  g_assert_cmpfloat (blackness (canvas), ==, 40 * 40);
}

static RwPoint
random_point (void)
{
  double x = g_test_rand_double_range (5, WIDE - 5);

  return (RwPoint){ x, g_test_rand_double_range (5, HIGH - 5) };
}

static double
distance (RwPoint a, RwPoint b)
{
  return hypot (b.x - a.x, b.y - a.y);
}

/* The pixels in a triangle are as many as its area says, but for those that its sides cut: at most two for each
 * pixel of their length. */
static void
test_triangles (Canvas *canvas, gconstpointer data)
{
  for (int round = 0; round < 200; round++)
    {
      RwPoint a = random_point (), b = random_point (), c = random_point ();
      RwPiece pieces[] = { { a, b }, { b, c }, { c, a } };
      double area = fabs ((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)) / 2;

      rw_scan_clear (&canvas->pixels, WHITE);
      rw_scan_fill (&canvas->pixels, pieces, 3, BLACK);
      g_assert_cmpfloat_with_epsilon (blackness (canvas), area,
                                      2 * (distance (a, b) + distance (b, c) + distance (c, a)) + 2);
    }
}

/* ---- lines ---- */

/* One pixel wide between two rows: half of each. */
static void
test_between (Canvas *canvas, gconstpointer data)
{
  rw_scan_line (&canvas->pixels, (RwPiece){ { 10, 20 }, { 30, 20 } }, 1, BLACK, 1);
  g_assert_cmpint (pixel (canvas, 15, 19) & 0xff, >=, 126);
  g_assert_cmpint (pixel (canvas, 15, 19) & 0xff, <=, 129);
  g_assert_cmphex (pixel (canvas, 15, 19), ==, pixel (canvas, 15, 20));
  g_assert_cmphex (pixel (canvas, 15, 18), ==, WHITE);
  g_assert_cmphex (pixel (canvas, 9, 19), ==, WHITE);
  g_assert_cmphex (pixel (canvas, 30, 19), ==, WHITE);
}

/* A line is as black as it is long times wide, whichever way it runs.  Its ends lie on whole pixels, so up to a
 * pixel of its length may be missing or too much, and a 256th of each pixel is lost to rounding. */
static void
test_blackness (Canvas *canvas, gconstpointer data)
{
  for (int round = 0; round < 500; round++)
    {
      RwPoint a = random_point (), b = random_point ();
      double width = 1 + g_test_rand_int_range (0, 4), length = distance (a, b);

      rw_scan_clear (&canvas->pixels, WHITE);
      rw_scan_line (&canvas->pixels, (RwPiece){ a, b }, width, BLACK, 1);
      g_assert_cmpfloat_with_epsilon (blackness (canvas), length * width,
                                      1.5 * width + length * (width + 2) / 256);
    }
}

/* ---- drawings ---- */

static RwLayout *
layout_of (RwSheet *sheet, int width, RwPoint *origin)
{
  RwBox box = rw_sheet_extent (sheet);
  RwLayout *layout = rw_layout_new (sheet, (width - 40) / (box.x1 - box.x0), 0);

  *origin = (RwPoint){ 20 - box.x0 * layout->scale, 20 + box.y1 * layout->scale };
  return layout;
}

static RwSheet *
sheet_of (RwView view)
{
  g_autofree RwResult *result = g_new (RwResult, 1);
  RwDesign design;

  rw_design_init (&design);
  rw_solve (&design, NULL, result);
  return rw_draw (view, result, NULL, RW_STYLE_FILE);
}

/* Cut anyhow into four, a drawing comes out the same to the last bit. */
static void
test_parts (void)
{
  for (int view = 0; view < RW_VIEW_COUNT; view++)
    {
      g_autoptr (RwSheet) sheet = sheet_of (view);
      RwPoint origin;
      g_autoptr (RwLayout) layout = layout_of (sheet, 640, &origin);
      g_autoptr (RwQuick) quick = rw_quick_new (layout, NULL, &rw_palette_light, origin, 1);
      g_autofree guint32 *whole = g_new (guint32, 640 * 480), *parts = g_new (guint32, 640 * 480);
      int x = g_test_rand_int_range (1, 640), y = g_test_rand_int_range (1, 480);

      rw_quick_paint (quick, &(RwPixels){ whole, 640, 0, 0, 640, 480 });
      rw_quick_paint (quick, &(RwPixels){ parts, 640, 0, 0, x, y });
      rw_quick_paint (quick, &(RwPixels){ parts, 640, x, 0, 640, y });
      rw_quick_paint (quick, &(RwPixels){ parts, 640, 0, y, x, 480 });
      rw_quick_paint (quick, &(RwPixels){ parts, 640, x, y, 640, 480 });
      g_assert_cmpmem (parts, 640 * 480 * sizeof (guint32), whole, 640 * 480 * sizeof (guint32));
    }
}

static cairo_surface_t *
painted_by_cairo (const RwLayout *layout, RwPoint origin, int width, int height)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, width, height);
  cairo_t *cr = cairo_create (surface);
  const RwColour *paper = &rw_palette_light.paper;
  RwLayout shapes = *layout;

  shapes.texts = g_array_new (FALSE, FALSE, sizeof (RwPlacedText));
  shapes.marks = g_array_new (FALSE, FALSE, sizeof (RwPlacedMark));
  cairo_set_source_rgb (cr, paper->r, paper->g, paper->b);
  cairo_paint (cr);
  cairo_translate (cr, origin.x, origin.y);
  rw_paint (cr, &shapes, &rw_palette_light, 1);
  cairo_destroy (cr);
  cairo_surface_flush (surface);
  g_array_unref (shapes.texts);
  g_array_unref (shapes.marks);
  return surface;
}

/* Greatest difference of the three channels. */
static int
difference (guint32 a, guint32 b)
{
  int greatest = 0;

  for (int shift = 0; shift < 24; shift += 8)
    greatest = MAX (greatest, ABS ((int) (a >> shift & 0xff) - (int) (b >> shift & 0xff)));
  return greatest;
}

/* No more than one pixel in three hundred looks plainly otherwise than as cairo paints it: hard edges of areas without
 * a line, ends of lines. */
static void
test_like_cairo (void)
{
  const int width = 900, height = 600, plainly = 64;

  for (int view = 0; view < RW_VIEW_COUNT; view++)
    {
      g_autoptr (RwSheet) sheet = sheet_of (view);
      RwPoint origin;
      g_autoptr (RwLayout) layout = layout_of (sheet, width, &origin);
      g_autoptr (RwQuick) quick = rw_quick_new (layout, NULL, &rw_palette_light, origin, 1);
      g_autofree guint32 *pixels = g_new (guint32, width * height);
      cairo_surface_t *surface = painted_by_cairo (layout, origin, width, height);
      const guint32 *expected = (const guint32 *) (gpointer) cairo_image_surface_get_data (surface);
      int others = 0;

      rw_quick_paint (quick, &(RwPixels){ pixels, width, 0, 0, width, height });
      for (int i = 0; i < width * height; i++)
        others += difference (pixels[i], expected[i]) > plainly;
      g_test_message ("%s: %d pixels of %d", rw_view_id (view), others, width * height);
      g_assert_cmpint (others, <, width * height / 300);
      cairo_surface_destroy (surface);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  g_test_add ("/scan/fill/box", Canvas, NULL, set_up, test_box, tear_down);
  g_test_add ("/scan/fill/open", Canvas, NULL, set_up, test_open, tear_down);
  g_test_add ("/scan/fill/winding", Canvas, NULL, set_up, test_winding, tear_down);
  g_test_add ("/scan/fill/triangles", Canvas, NULL, set_up, test_triangles, tear_down);
  g_test_add ("/scan/line/between", Canvas, NULL, set_up, test_between, tear_down);
  g_test_add ("/scan/line/blackness", Canvas, NULL, set_up, test_blackness, tear_down);
  g_test_add_func ("/quick/parts", test_parts);
  g_test_add_func ("/quick/like-cairo", test_like_cairo);
  return g_test_run ();
}
