/* What has changed of a drawing is found, tile by tile: the grid against geometry worked out point by point, the
 * stamps against two drawings painted whole. */
#include "base/canvas_view.h"
#include "canvas/canvas_stamp.h"
#include "draw/drawing.h"
#include "io/paint_quick.h"
#include "random_design.h"

#include <math.h>

#define WIDE 320
#define HIGH 240
#define TILE_WIDE 32
#define TILE_HIGH 20

static RwPoint
random_point (void)
{
  return (RwPoint){ g_test_rand_double_range (-60, WIDE + 60), g_test_rand_double_range (-60, HIGH + 60) };
}

static RwGrid *
grid_new (void)
{
  return rw_grid_new ((RwBox){ 0, 0, WIDE, HIGH }, TILE_WIDE, TILE_HIGH);
}

static double
distance (RwPoint p, RwBox box)
{
  return hypot (MAX (MAX (box.x0 - p.x, p.x - box.x1), 0), MAX (MAX (box.y0 - p.y, p.y - box.y1), 0));
}

/* Least distance of a line's points from a tile. */
static double
line_distance (RwPiece line, RwBox tile)
{
  double least = HUGE_VAL;

  for (int i = 0; i <= 2000; i++)
    {
      double t = i / 2000.0;

      least = MIN (least, distance ((RwPoint){ line.a.x + t * (line.b.x - line.a.x),
                                               line.a.y + t * (line.b.y - line.a.y) }, tile));
    }
  return least;
}

/* No tile within reach is missing; none is touched that is much further away. */
static void
test_line (void)
{
  const double reach = 3;

  for (int round = 0; round < 200; round++)
    {
      g_autoptr (RwGrid) grid = grid_new ();
      RwPiece line = { random_point (), random_point () };

      rw_grid_touch_line (grid, line, reach);
      for (int row = 0; row < grid->rows; row++)
        for (int i = 0; i < grid->columns; i++)
          {
            RwBox tile = { i * TILE_WIDE, row * TILE_HIGH, (i + 1) * TILE_WIDE, (row + 1) * TILE_HIGH };
            double away = line_distance (line, tile);

            if (away < reach - 0.5)
              g_assert_true (grid->touched[row * grid->columns + i]);
            if (away > 4 * reach)
              g_assert_false (grid->touched[row * grid->columns + i]);
          }
    }
}

static double
side (RwPoint a, RwPoint b, RwPoint p)
{
  return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

static gboolean
is_inside (const RwPoint corner[3], RwPoint p)
{
  double s0 = side (corner[0], corner[1], p), s1 = side (corner[1], corner[2], p), s2 = side (corner[2], corner[0], p);

  return (s0 > 0 && s1 > 0 && s2 > 0) || (s0 < 0 && s1 < 0 && s2 < 0);
}

/* A triangle, and its three sides. */
static void
random_triangle (RwPoint corner[3], RwPiece pieces[3])
{
  for (int i = 0; i < 3; i++)
    corner[i] = random_point ();
  for (int i = 0; i < 3; i++)
    pieces[i] = (RwPiece){ corner[i], corner[(i + 1) % 3] };
}

static void
test_difference (void)
{
  for (int round = 0; round < 200; round++)
    {
      g_autoptr (RwGrid) grid = grid_new ();
      RwPoint a[3], b[3];
      RwPiece a_pieces[3], b_pieces[3];

      random_triangle (a, a_pieces);
      random_triangle (b, b_pieces);
      rw_grid_touch_difference (grid, a_pieces, 3, b_pieces, round % 4 == 0 ? 0 : 3);
      for (int row = 0; row < grid->rows; row++)
        for (int i = 0; i < grid->columns; i++)
          {
            RwPoint middle = { (i + 0.5) * TILE_WIDE, (row + 0.5) * TILE_HIGH };
            gboolean in_b = round % 4 != 0 && is_inside (b, middle);

            g_assert_cmpint (grid->touched[row * grid->columns + i], ==, is_inside (a, middle) != in_b);
          }
    }
}

/* ---- drawings ---- */

typedef struct
{
  RwSheet  *sheet;
  RwLayout *layout;
} Drawing;

static void
draw (Drawing *drawing, const RwDesign *design, RwView view, double scale)
{
  g_autofree RwResult *result = g_new (RwResult, 1);

  rw_solve (design, NULL, result);
  drawing->sheet = rw_draw (view, result, NULL, RW_STYLE_FILE);
  drawing->layout = rw_layout_new (drawing->sheet, scale, 0);
}

static void
drop (Drawing *drawing)
{
  rw_layout_free (drawing->layout);
  rw_sheet_free (drawing->sheet);
}

/* Shapes quickly, dimensions and lettering as at rest, as the canvas does. */
static guint32 *
painted (const Drawing *drawing, RwPoint origin)
{
  guint32 *memory = g_new (guint32, WIDE * HIGH);
  double scale = RW_PX_PER_PAPER_MM;
  g_autoptr (RwQuick) quick = rw_quick_new (drawing->layout, NULL, &rw_palette_light, origin, scale);
  cairo_surface_t *surface;
  cairo_t *cr;

  rw_quick_paint (quick, &(RwPixels){ memory, WIDE, 0, 0, WIDE, HIGH });
  surface = cairo_image_surface_create_for_data ((guchar *) (gpointer) memory, CAIRO_FORMAT_ARGB32, WIDE, HIGH,
                                                 4 * WIDE);
  cr = cairo_create (surface);
  cairo_translate (cr, origin.x, origin.y);
  cairo_scale (cr, scale, scale);
  rw_paint_dimensions (cr, drawing->layout, &rw_palette_light, 1 / scale);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  return memory;
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

/* Where two pictures differ by more than what no eye sees, the tile is touched. */
static void
assert_found (const guint32 *a, const guint32 *b, const RwGrid *grid)
{
  for (int y = 0; y < HIGH; y++)
    for (int x = 0; x < WIDE; x++)
      if (difference (a[y * WIDE + x], b[y * WIDE + x]) > 8)
        g_assert_true (grid->touched[y / TILE_HIGH * grid->columns + x / TILE_WIDE]);
}

/* The built-in build, and the same but for a few things: further apart than a drag takes it. */
static void
test_drawings (void)
{
  for (int round = 0; round < 60; round++)
    {
      RwDesign one, other;
      RwView view = g_test_rand_int_range (0, RW_VIEW_COUNT);
      double scale = g_test_rand_double_range (0.1, 0.6);
      RwPoint origin = { g_test_rand_int_range (20, WIDE - 20), g_test_rand_int_range (20, HIGH - 20) };
      RwBox area = { -origin.x, -origin.y, WIDE - origin.x, HIGH - origin.y };
      g_autoptr (RwGrid) grid = rw_grid_new (area, TILE_WIDE, TILE_HIGH);
      Drawing a, b;

      rw_design_init (&one);
      random_design_near (&other, g_test_rand_int_range (1, 6));
      draw (&a, &one, view, scale);
      draw (&b, &other, view, scale);
      {
        g_autoptr (RwStamps) a_stamps = rw_stamps_new (a.layout, NULL), b_stamps = rw_stamps_new (b.layout, NULL);
        g_autofree guint32 *a_pixels = painted (&a, origin), *b_pixels = painted (&b, origin);

        rw_stamps_touch_changes (a_stamps, b_stamps, 0, grid);
        assert_found (a_pixels, b_pixels, grid);
      }
      drop (&a);
      drop (&b);
    }
}

/* Nothing has changed: nothing is touched. */
static void
test_same (void)
{
  g_autoptr (RwGrid) grid = grid_new ();
  RwDesign design;
  Drawing a, b;

  rw_design_init (&design);
  draw (&a, &design, RW_VIEW_WHOLE, 0.2);
  draw (&b, &design, RW_VIEW_WHOLE, 0.2);
  {
    g_autoptr (RwStamps) a_stamps = rw_stamps_new (a.layout, NULL), b_stamps = rw_stamps_new (b.layout, NULL);

    rw_stamps_touch_changes (a_stamps, b_stamps, 0, grid);
  }
  for (int i = 0; i < grid->rows * grid->columns; i++)
    g_assert_false (grid->touched[i]);
  drop (&a);
  drop (&b);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  g_test_add_func ("/changes/line", test_line);
  g_test_add_func ("/changes/difference", test_difference);
  g_test_add_func ("/changes/drawings", test_drawings);
  g_test_add_func ("/changes/same", test_same);
  return g_test_run ();
}
