/* The description of drawings: what items hold, how far they reach, how they move. */
#include "sheet/sheet.h"

#include <math.h>

#define EXACT 1e-12 /* mm: nothing but the rounding of doubles */

static RwSheet *
new_sheet (void)
{
  return rw_sheet_new ("test", RW_STYLE_FILE);
}

static RwItem *
item_at (RwSheet *sheet, guint i)
{
  g_assert_cmpuint (i, <, sheet->items->len);
  return &g_array_index (sheet->items, RwItem, i);
}

static void
assert_point (RwPoint p, double x, double y)
{
  g_assert_cmpfloat_with_epsilon (p.x, x, EXACT);
  g_assert_cmpfloat_with_epsilon (p.y, y, EXACT);
}

static void
assert_extent (const RwSheet *sheet, RwBox want)
{
  RwBox box = rw_sheet_extent (sheet);

  g_assert_cmpfloat_with_epsilon (box.x0, want.x0, EXACT);
  g_assert_cmpfloat_with_epsilon (box.y0, want.y0, EXACT);
  g_assert_cmpfloat_with_epsilon (box.x1, want.x1, EXACT);
  g_assert_cmpfloat_with_epsilon (box.y1, want.y1, EXACT);
}

static void
test_layers (void)
{
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  for (int layer = 0; layer < RW_LAYER_COUNT; layer++)
    {
      g_assert_nonnull (rw_layer_title (layer));
      g_assert_true (g_hash_table_add (seen, (char *) rw_layer_id (layer)));
    }
}

static void
test_items (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();
  RwSubject subject = RW_SUBJECT_PARAM (scale_length);

  rw_sheet_set (sheet, RW_LAYER_NECK, subject);
  rw_item_name (rw_sheet_box (sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, 0, 0, 10, 5), "neck");
  rw_sheet_text (sheet, 1, 2, RW_ALIGN_END, RW_LETTERS_LARGE, "head");
  rw_sheet_dimension (sheet, RW_MEASURE_HORIZONTAL, (RwPoint){ 0, 0 }, (RwPoint){ 10, 0 }, 8,
                      RW_FIGURE_MEASURED, 0, "650.0");

  const RwItem *box = item_at (sheet, 0), *text = item_at (sheet, 1), *dimension = item_at (sheet, 2);

  g_assert_cmpint (box->kind, ==, RW_ITEM_PATH);
  g_assert_cmpint (box->layer, ==, RW_LAYER_NECK);
  g_assert_cmpint (box->subject.param, ==, RW_P_scale_length);
  g_assert_cmpint (box->subject.slot, ==, -1);
  g_assert_cmpstr (box->name, ==, "neck");
  g_assert_cmpint (box->op_count, ==, 5);
  g_assert_cmpint (text->rank, ==, 0);
  g_assert_cmpstr (text->text, ==, "head");
  g_assert_cmpint (dimension->rank, ==, 1);
  g_assert_cmpstr (dimension->text, ==, "650.0");
  g_assert_cmpint (dimension->figure, ==, RW_FIGURE_MEASURED);
}

/* Figures follow the units and the decimal mark of the sheet. */
static void
test_figures (void)
{
  static const struct
  {
    RwStyle     style;
    const char *length, *angle;
  } cases[] = {
    { { RW_UNITS_MM, '.' }, "279.4", "1.92°" },
    { { RW_UNITS_MM, ',' }, "279,4", "1,92°" },
    { { RW_UNITS_INCH, '.' }, "11.000", "1.92°" },
    { { RW_UNITS_FRACTION, '.' }, "11", "1.92°" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (RwSheet) sheet = rw_sheet_new ("test", cases[i].style);
      RwPoint p = { 0, 0 };

      rw_sheet_dimension (sheet, RW_MEASURE_ALIGNED, p, p, 0, RW_FIGURE_PLANNED, 279.4, NULL);
      rw_sheet_angle (sheet, p, 10, 0, 1, RW_FIGURE_PLANNED, 1.92);
      g_assert_cmpstr (item_at (sheet, 0)->text, ==, cases[i].length);
      g_assert_cmpstr (item_at (sheet, 1)->text, ==, cases[i].angle);
    }
}

/* Extents, worked out by hand. */

static void
test_extent_straight (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  assert_extent (sheet, (RwBox){ 0, 0, 0, 0 });
  rw_sheet_line (sheet, RW_PEN_EDGE, 3, -2, -5, 7);
  assert_extent (sheet, (RwBox){ -5, -2, 3, 7 });
  rw_sheet_text (sheet, 100, 100, RW_ALIGN_START, RW_LETTERS_SMALL, "not counted");
  assert_extent (sheet, (RwBox){ -5, -2, 3, 7 });
}

static void
test_extent_arcs (void)
{
  double half = sqrt (0.5);
  const struct
  {
    double a0, a1;
    RwBox  want; /* of the unit circle */
  } cases[] = {
    { 0, 2 * G_PI, { -1, -1, 1, 1 } },
    { 0, G_PI_2, { 0, 0, 1, 1 } },
    { G_PI_4, 3 * G_PI_4, { -half, half, half, 1 } },
    { 3 * G_PI_4, G_PI_4, { -half, half, half, 1 } },
    { -G_PI_4, -3 * G_PI_4, { -half, -1, half, -half } },
    { 7 * G_PI_4, 9 * G_PI_4, { half, -half, 1, half } },
    { 0.25, 0.25 + 8 * G_PI, { -1, -1, 1, 1 } },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (RwSheet) sheet = new_sheet ();

      rw_path_begin (sheet, RW_PEN_EDGE, RW_TINT_NONE);
      rw_path_arc (sheet, (RwPoint){ 0, 0 }, 1, cases[i].a0, cases[i].a1);
      rw_path_end (sheet);
      assert_extent (sheet, cases[i].want);
    }
}

/* A curve from (0,0) by (0,1) and (1,1) to (1,0) is 3/4 high; one with its controls at (-1,0) and (2,0) turns
 * back where its derivative 3 (-1 + 8 t - 8 t^2) is 0, at t = (2 -+ sqrt 2) / 4. */
static void
test_extent_curves (void)
{
  g_autoptr (RwSheet) arch = new_sheet (), loop = new_sheet ();
  double t = (2 - sqrt (2)) / 4, x = 3 * t * (1 - t) * (1 - t) * -1 + 3 * t * t * (1 - t) * 2 + t * t * t;

  rw_path_begin (arch, RW_PEN_EDGE, RW_TINT_NONE);
  rw_path_move (arch, 0, 0);
  rw_path_curve (arch, (RwPoint){ 0, 1 }, (RwPoint){ 1, 1 }, (RwPoint){ 1, 0 });
  rw_path_end (arch);
  assert_extent (arch, (RwBox){ 0, 0, 1, 0.75 });

  rw_path_begin (loop, RW_PEN_EDGE, RW_TINT_NONE);
  rw_path_move (loop, 0, 0);
  rw_path_curve (loop, (RwPoint){ -1, 0 }, (RwPoint){ 2, 0 }, (RwPoint){ 1, 0 });
  rw_path_end (loop);
  assert_extent (loop, (RwBox){ x, 0, 1 - x, 0 });
}

/* Motions */

static void
test_move_and_turn (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  rw_sheet_line (sheet, RW_PEN_EDGE, 1, 0, 2, 0);
  rw_sheet_line (sheet, RW_PEN_EDGE, 1, 0, 2, 0);
  rw_sheet_turn (sheet, 1, G_PI_2);
  rw_sheet_move (sheet, 1, 10, 20);

  const RwPathOp *ops = (const RwPathOp *) (void *) sheet->ops->data;
  assert_point (ops[0].p[0], 1, 0);
  assert_point (ops[2].p[0], 10, 21);
  assert_point (ops[3].p[0], 10, 22);
}

static void
test_turned_arc (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  rw_path_begin (sheet, RW_PEN_EDGE, RW_TINT_NONE);
  rw_path_arc (sheet, (RwPoint){ 5, 0 }, 1, 0, G_PI_2);
  rw_path_end (sheet);
  rw_sheet_turn (sheet, 0, G_PI);
  assert_extent (sheet, (RwBox){ -6, -1, -5, 0 });
  rw_sheet_mirror (sheet, 0);
  assert_extent (sheet, (RwBox){ -6, 0, -5, 1 });
}

/* A text is read from below or from the right, whichever way it is turned. */
static void
test_turned_text (void)
{
  static const struct
  {
    double  degrees, want;
    RwAlign align;
  } cases[] = {
    { 0, 0, RW_ALIGN_START },    { 45, 45, RW_ALIGN_START },   { 90, 90, RW_ALIGN_START },
    { 135, -45, RW_ALIGN_END },  { 180, 0, RW_ALIGN_END },     { -45, -45, RW_ALIGN_START },
    { -90, 90, RW_ALIGN_END },   { 270, 90, RW_ALIGN_END },    { 360, 0, RW_ALIGN_START },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (RwSheet) sheet = new_sheet ();

      rw_sheet_text (sheet, 0, 0, RW_ALIGN_START, RW_LETTERS_SMALL, "A");
      rw_sheet_turn (sheet, 0, cases[i].degrees * G_PI / 180);
      g_assert_cmpfloat_with_epsilon (item_at (sheet, 0)->turn, cases[i].want * G_PI / 180, 1e-9);
      g_assert_cmpint (item_at (sheet, 0)->align, ==, cases[i].align);
    }
}

/* What stood over a line stands under it in the mirror, at the same distance, and comes back. */
static void
test_mirrored_text (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();
  RwItem *text = rw_sheet_text (sheet, 3, 4, RW_ALIGN_MIDDLE, RW_LETTERS_LARGE, "A");

  text->offset_mm = 1;
  rw_sheet_mirror (sheet, 0);
  text = item_at (sheet, 0);
  assert_point (text->p[0], 3, -4);
  g_assert_cmpfloat_with_epsilon (text->turn, 0, EXACT);
  g_assert_cmpint (text->align, ==, RW_ALIGN_MIDDLE);
  g_assert_cmpfloat_with_epsilon (text->offset_mm, -1 - 3.5, EXACT);
  rw_sheet_mirror (sheet, 0);
  g_assert_cmpfloat_with_epsilon (item_at (sheet, 0)->offset_mm, 1, EXACT);
}

/* Upright text that ran up from its point runs down to it in the mirror, on the same side of it. */
static void
test_mirrored_upright_text (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();
  RwItem *text = rw_sheet_text (sheet, 0, 0, RW_ALIGN_START, RW_LETTERS_SMALL, "A");

  text->turn = G_PI_2;
  text->offset_mm = 2;
  rw_sheet_mirror (sheet, 0);
  text = item_at (sheet, 0);
  g_assert_cmpfloat_with_epsilon (text->turn, G_PI_2, 1e-9);
  g_assert_cmpint (text->align, ==, RW_ALIGN_END);
  g_assert_cmpfloat_with_epsilon (text->offset_mm, 2, EXACT);
}

static void
test_mirrored_dimensions (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();
  RwPoint a = { 0, 1 }, b = { 10, 2 };
  static const RwMeasure measures[] = { RW_MEASURE_HORIZONTAL, RW_MEASURE_VERTICAL, RW_MEASURE_ALIGNED };
  static const double offsets[] = { -8, 8, -8 };

  for (guint i = 0; i < G_N_ELEMENTS (measures); i++)
    rw_sheet_dimension (sheet, measures[i], a, b, 8, RW_FIGURE_PLANNED, 10, "10");
  rw_sheet_angle (sheet, a, 5, 0.1, 0.4, RW_FIGURE_PLANNED, 17.2);
  rw_sheet_mirror (sheet, 0);
  for (guint i = 0; i < G_N_ELEMENTS (measures); i++)
    {
      g_assert_cmpfloat (item_at (sheet, i)->offset_mm, ==, offsets[i]);
      assert_point (item_at (sheet, i)->p[1], 10, -2);
    }
  g_assert_cmpfloat_with_epsilon (item_at (sheet, 3)->a0, -0.1, EXACT);
  g_assert_cmpfloat_with_epsilon (item_at (sheet, 3)->a1, -0.4, EXACT);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/sheet/layers", test_layers);
  g_test_add_func ("/sheet/items", test_items);
  g_test_add_func ("/sheet/figures", test_figures);
  g_test_add_func ("/sheet/extent/straight", test_extent_straight);
  g_test_add_func ("/sheet/extent/arcs", test_extent_arcs);
  g_test_add_func ("/sheet/extent/curves", test_extent_curves);
  g_test_add_func ("/sheet/motion/move-and-turn", test_move_and_turn);
  g_test_add_func ("/sheet/motion/turned-arc", test_turned_arc);
  g_test_add_func ("/sheet/motion/turned-text", test_turned_text);
  g_test_add_func ("/sheet/motion/mirrored-text", test_mirrored_text);
  g_test_add_func ("/sheet/motion/mirrored-upright-text", test_mirrored_upright_text);
  g_test_add_func ("/sheet/motion/mirrored-dimensions", test_mirrored_dimensions);
  return g_test_run ();
}
