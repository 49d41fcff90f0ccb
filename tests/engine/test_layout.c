/* Laying out: where lines, heads and figures of dimensions stand, and that lettering keeps clear. */
#include "sheet/layout.h"

#include <math.h>
#include <string.h>

#define NEAR 1e-9 /* mm: rounding of doubles over some hundred mm */

static RwSheet *
new_sheet (void)
{
  return rw_sheet_new ("test", RW_STYLE_FILE);
}

static const RwPlacedText *
text_at (const RwLayout *layout, guint i)
{
  g_assert_cmpuint (i, <, layout->texts->len);
  return &g_array_index (layout->texts, RwPlacedText, i);
}

/* The n-th mark of a kind. */
static const RwPlacedMark *
mark_of (const RwLayout *layout, RwMarkKind kind, int n)
{
  for (guint i = 0; i < layout->marks->len; i++)
    {
      const RwPlacedMark *mark = &g_array_index (layout->marks, RwPlacedMark, i);

      if (mark->kind == kind && n-- == 0)
        return mark;
    }
  g_assert_not_reached ();
}

static void
assert_point (RwPoint p, double x, double y)
{
  g_assert_cmpfloat_with_epsilon (p.x, x, NEAR);
  g_assert_cmpfloat_with_epsilon (p.y, y, NEAR);
}

/* Lettering: DejaVu Sans's own tables say 1303 of 2048 for a figure and 1493 for the height of capitals. */
static void
test_lettering (void)
{
  g_assert_cmpfloat_with_epsilon (rw_lettering_width ("0"), 1303.0 / 1493, NEAR);
  for (char digit[] = "0"; digit[0] <= '9'; digit[0]++)
    g_assert_cmpfloat (rw_lettering_width (digit), ==, rw_lettering_width ("0"));
  g_assert_cmpfloat_with_epsilon (rw_lettering_width ("ø 11 3/8"),
                                  (1253 + 2 * 651 + 4 * 1303 + 690) / 1493.0, NEAR);
  g_assert_cmpfloat (rw_lettering_width (""), ==, 0);
  /* What the table does not know takes a whole em. */
  g_assert_cmpfloat_with_epsilon (rw_lettering_width ("漢"), 2048 / 1493.0, NEAR);
}

/* 100 mm at 1 : 2, 10 mm over the object: the line is 50 long, extension lines run from 1 to 12, heads are 3
 * by 1, the figure stands in the middle, 1 over the line. */
static void
test_horizontal (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  rw_sheet_dimension (sheet, RW_MEASURE_HORIZONTAL, (RwPoint){ 0, 0 }, (RwPoint){ 100, -20 }, 10,
                      RW_FIGURE_PLANNED, 100, NULL);

  g_autoptr (RwLayout) layout = rw_layout_new (sheet, 0.5, 0);
  const RwPlacedText *text = text_at (layout, 0);
  double width = 2.5 * rw_lettering_width ("100.0");

  g_assert_cmpuint (layout->marks->len, ==, 5);
  assert_point (mark_of (layout, RW_MARK_LINE, 0)->p[0], 0, 10);
  assert_point (mark_of (layout, RW_MARK_LINE, 0)->p[1], 50, 10);
  assert_point (mark_of (layout, RW_MARK_EXTENSION, 0)->p[0], 0, 1);
  assert_point (mark_of (layout, RW_MARK_EXTENSION, 0)->p[1], 0, 12);
  assert_point (mark_of (layout, RW_MARK_EXTENSION, 1)->p[0], 50, -9);
  assert_point (mark_of (layout, RW_MARK_EXTENSION, 1)->p[1], 50, 12);
  assert_point (mark_of (layout, RW_MARK_HEAD, 0)->p[0], 0, 10);
  assert_point (mark_of (layout, RW_MARK_HEAD, 0)->p[1], 3, 9.5);
  assert_point (mark_of (layout, RW_MARK_HEAD, 0)->p[2], 3, 10.5);
  assert_point (mark_of (layout, RW_MARK_HEAD, 1)->p[0], 50, 10);
  assert_point (text->at, 25 - width / 2, 11);
  g_assert_cmpstr (text->text, ==, "100.0");
  g_assert_cmpfloat (text->size, ==, 2.5);
  g_assert_cmpfloat_with_epsilon (text->turn, 0, NEAR);
}

/* Half the letters, half of all that goes with them; the object stays. */
static void
test_letters (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  rw_sheet_dimension (sheet, RW_MEASURE_HORIZONTAL, (RwPoint){ 0, 0 }, (RwPoint){ 100, 0 }, 10,
                      RW_FIGURE_PLANNED, 100, NULL);

  g_autoptr (RwLayout) layout = rw_layout_new (sheet, 0.5, 1.25);

  assert_point (mark_of (layout, RW_MARK_LINE, 0)->p[1], 50, 5);
  assert_point (mark_of (layout, RW_MARK_EXTENSION, 0)->p[0], 0, 0.5);
  assert_point (mark_of (layout, RW_MARK_EXTENSION, 0)->p[1], 0, 6);
  assert_point (mark_of (layout, RW_MARK_HEAD, 0)->p[1], 1.5, 4.75);
  g_assert_cmpfloat (text_at (layout, 0)->size, ==, 1.25);
}

/* Under 7 mm the heads come from outside on lines 6 mm long, and a figure that is too wide stands beside. */
static void
test_short (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  rw_sheet_dimension (sheet, RW_MEASURE_HORIZONTAL, (RwPoint){ 0, 0 }, (RwPoint){ 5, 0 }, 10,
                      RW_FIGURE_PLANNED, 5, "5.0");

  g_autoptr (RwLayout) layout = rw_layout_new (sheet, 1, 0);
  double width = 2.5 * rw_lettering_width ("5.0");

  assert_point (mark_of (layout, RW_MARK_HEAD, 0)->p[0], 0, 10);
  assert_point (mark_of (layout, RW_MARK_HEAD, 0)->p[1], -3, 10.5);
  assert_point (mark_of (layout, RW_MARK_HEAD, 1)->p[0], 5, 10);
  assert_point (mark_of (layout, RW_MARK_HEAD, 1)->p[1], 8, 9.5);
  assert_point (text_at (layout, 0)->at, 9, 11);
  assert_point (mark_of (layout, RW_MARK_LINE, 0)->p[0], -6, 10);
  assert_point (mark_of (layout, RW_MARK_LINE, 0)->p[1], MAX (11, 9 + width), 10);
}

/* Read from the right: the figure runs upwards, left of its line. */
static void
test_vertical (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  rw_sheet_dimension (sheet, RW_MEASURE_VERTICAL, (RwPoint){ 0, 80 }, (RwPoint){ 4, 0 }, 10,
                      RW_FIGURE_PLANNED, 80, NULL);
  rw_sheet_dimension (sheet, RW_MEASURE_VERTICAL, (RwPoint){ 0, 80 }, (RwPoint){ 4, 0 }, -10,
                      RW_FIGURE_PLANNED, 80, NULL);

  g_autoptr (RwLayout) layout = rw_layout_new (sheet, 1, 0);
  double width = 2.5 * rw_lettering_width ("80.0");

  assert_point (mark_of (layout, RW_MARK_LINE, 0)->p[0], 14, 0);
  assert_point (mark_of (layout, RW_MARK_LINE, 0)->p[1], 14, 80);
  assert_point (text_at (layout, 0)->at, 13, 40 - width / 2);
  g_assert_cmpfloat_with_epsilon (text_at (layout, 0)->turn, G_PI_2, NEAR);
  assert_point (mark_of (layout, RW_MARK_LINE, 1)->p[0], -10, 0);
  assert_point (text_at (layout, 1)->at, -11, 40 - width / 2);
}

/* Whichever way it runs, no figure stands on its head: none leans left more than a tenth. */
static void
test_aligned (void)
{
  for (int degrees = 0; degrees < 360; degrees += 5)
    {
      g_autoptr (RwSheet) sheet = new_sheet ();
      double a = degrees * G_PI / 180;

      rw_sheet_dimension (sheet, RW_MEASURE_ALIGNED, (RwPoint){ 0, 0 },
                          (RwPoint){ 90 * cos (a), 90 * sin (a) }, 10, RW_FIGURE_PLANNED, 90, NULL);

      g_autoptr (RwLayout) layout = rw_layout_new (sheet, 1, 0);
      double turn = text_at (layout, 0)->turn;
      const RwPoint *line = mark_of (layout, RW_MARK_LINE, 0)->p;
      RwPoint middle = { (line[0].x + line[1].x) / 2, (line[0].y + line[1].y) / 2 };

      g_assert_cmpfloat (cos (turn), >=, -0.1 - NEAR);
      g_assert_cmpfloat (sin (turn), >, -0.996);
      g_assert_cmpfloat_with_epsilon (fabs (sin (turn - a)), 0, NEAR);
      /* To the left of the way from the first point to the second. */
      assert_point (middle, 45 * cos (a) - 10 * sin (a), 45 * sin (a) + 10 * cos (a));
    }
}

/* A horizontal dimension that was turned by a right angle is the vertical one. */
static void
test_turned (void)
{
  g_autoptr (RwSheet) turned = new_sheet (), straight = new_sheet ();

  rw_sheet_dimension (turned, RW_MEASURE_HORIZONTAL, (RwPoint){ 0, 0 }, (RwPoint){ 60, 5 }, 8,
                      RW_FIGURE_PLANNED, 60, NULL);
  rw_sheet_turn (turned, 0, -G_PI_2);
  rw_sheet_dimension (straight, RW_MEASURE_VERTICAL, (RwPoint){ 0, 0 }, (RwPoint){ 5, -60 }, 8,
                      RW_FIGURE_PLANNED, 60, NULL);

  g_autoptr (RwLayout) a = rw_layout_new (turned, 1, 0), b = rw_layout_new (straight, 1, 0);
  RwPoint at = text_at (b, 0)->at;

  assert_point (text_at (a, 0)->at, at.x, at.y);
  g_assert_cmpfloat_with_epsilon (text_at (a, 0)->turn, G_PI_2, NEAR);
}

/* 40 mm round the apex, 60 degrees: both tips on the legs, both backs on the arc, the figure level outside
 * it. */
static void
test_angle (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();
  RwPoint apex = { 3, 4 };

  rw_sheet_angle (sheet, apex, 40, G_PI / 3, 0, RW_FIGURE_WORKED_OUT, 60);

  g_autoptr (RwLayout) layout = rw_layout_new (sheet, 1, 0);
  const RwPlacedMark *arc = mark_of (layout, RW_MARK_ARC, 0);
  const RwPlacedText *text = text_at (layout, 0);

  g_assert_cmpfloat (arc->radius, ==, 40);
  g_assert_cmpfloat_with_epsilon (arc->a0, 0, NEAR);
  g_assert_cmpfloat_with_epsilon (arc->a1, G_PI / 3, NEAR);
  assert_point (mark_of (layout, RW_MARK_HEAD, 0)->p[0], 43, 4);
  assert_point (mark_of (layout, RW_MARK_HEAD, 1)->p[0], 3 + 40 * cos (G_PI / 3), 4 + 40 * sin (G_PI / 3));
  for (int i = 0; i < 2; i++)
    {
      const RwPoint *p = mark_of (layout, RW_MARK_HEAD, i)->p;
      RwPoint back = { (p[1].x + p[2].x) / 2, (p[1].y + p[2].y) / 2 };

      /* A head of 3 mm is a chord but for its sagitta's share: 3^2 / (8 x 40) = 0.03. */
      g_assert_cmpfloat_with_epsilon (hypot (back.x - apex.x, back.y - apex.y), 40, 0.03);
      g_assert_cmpfloat_with_epsilon (hypot (p[1].x - p[2].x, p[1].y - p[2].y), 1, NEAR);
    }
  g_assert_cmpfloat (hypot (text->box.x0 - apex.x, text->box.y0 - apex.y), >, 40);
  g_assert_cmpfloat (text->turn, ==, 0);
  g_assert_cmpstr (text->text, ==, "60.00°");
}

static void
test_leader (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  rw_sheet_leader (sheet, (RwPoint){ 0, 0 }, (RwPoint){ -12, 16 }, RW_FIGURE_PLANNED, "18 hooks");

  g_autoptr (RwLayout) layout = rw_layout_new (sheet, 1, 0);
  double width = 2.5 * rw_lettering_width ("18 hooks");
  const RwPoint *head = mark_of (layout, RW_MARK_HEAD, 0)->p;

  assert_point (mark_of (layout, RW_MARK_LINE, 0)->p[1], -12, 16);
  assert_point (mark_of (layout, RW_MARK_LINE, 1)->p[0], -12, 16);
  assert_point (mark_of (layout, RW_MARK_LINE, 1)->p[1], -13 - width, 16);
  assert_point (head[0], 0, 0);
  assert_point ((RwPoint){ (head[1].x + head[2].x) / 2, (head[1].y + head[2].y) / 2 }, -1.8, 2.4);
  assert_point (text_at (layout, 0)->at, -12.5 - width, 17);
}

/* A wide line through the best place: the figure goes to another; with no place left it goes away with all
 * its lines, but not at rank 0. */
static void
test_rank (void)
{
  for (int rank = 0; rank <= 1; rank++)
    {
      g_autoptr (RwSheet) sheet = new_sheet ();

      rw_sheet_dimension (sheet, RW_MEASURE_HORIZONTAL, (RwPoint){ 0, 0 }, (RwPoint){ 80, 0 }, 10,
                          RW_FIGURE_PLANNED, 80, NULL)->rank = rank;
      rw_sheet_line (sheet, RW_PEN_OUTLINE, 40, 5, 40, 15);

      g_autoptr (RwLayout) moved = rw_layout_new (sheet, 1, 0);
      g_assert_cmpfloat_with_epsilon (text_at (moved, 0)->at.x, 4, NEAR);

      for (double x = -100; x < 200; x += 3)
        rw_sheet_line (sheet, RW_PEN_OUTLINE, x, -100, x, 100);

      g_autoptr (RwLayout) crowded = rw_layout_new (sheet, 1, 0);
      g_assert_cmpuint (crowded->texts->len, ==, rank == 0 ? 1 : 0);
      g_assert_cmpuint (crowded->marks->len, ==, rank == 0 ? 5 : 0);
    }
}

/* Two dimensions in the same row over the same feature: the second one takes the next row, 7 mm out. */
static void
test_rows (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  for (int i = 0; i < 2; i++)
    rw_sheet_dimension (sheet, RW_MEASURE_HORIZONTAL, (RwPoint){ 0, 0 }, (RwPoint){ 80 + 20 * i, 0 }, 10,
                        RW_FIGURE_PLANNED, 80, NULL);

  g_autoptr (RwLayout) layout = rw_layout_new (sheet, 1, 0);
  assert_point (mark_of (layout, RW_MARK_LINE, 0)->p[0], 0, 10);
  assert_point (mark_of (layout, RW_MARK_LINE, 1)->p[0], 0, 17);
}

/* Random sheets */

static RwPoint
random_point (GRand *random)
{
  double x = g_rand_double_range (random, -200, 200);

  return (RwPoint){ x, g_rand_double_range (random, -120, 120) };
}

static void
add_random_item (RwSheet *sheet, GRand *random)
{
  RwPoint a = random_point (random), b = random_point (random);
  double offset = g_rand_double_range (random, -15, 15);
  RwItem *item = NULL;

  switch (g_rand_int_range (random, 0, 7))
    {
    case 0:
      rw_sheet_line (sheet, RW_PEN_OUTLINE, a.x, a.y, a.x + b.x / 8, a.y + b.y / 8);
      return;
    case 1:
      rw_sheet_circle (sheet, RW_PEN_OUTLINE, RW_TINT_METAL, a.x, a.y, fabs (b.x) / 20 + 1);
      return;
    case 2:
      item = rw_sheet_text (sheet, a.x, a.y, RW_ALIGN_MIDDLE, RW_LETTERS_LARGE, "head side");
      item->turn = g_rand_double_range (random, -1.5, 1.5);
      break;
    case 3:
      item = rw_sheet_angle (sheet, a, fabs (b.x) / 4 + 1, offset, offset + b.y / 60, RW_FIGURE_PLANNED, 12);
      break;
    case 4:
      item = rw_sheet_leader (sheet, a, (RwPoint){ a.x + b.x / 10, a.y + b.y / 10 }, RW_FIGURE_PLANNED,
                              "hook");
      break;
    default:
      item = rw_sheet_dimension (sheet, (RwMeasure) g_rand_int_range (random, 0, 3), a, b, offset,
                                 RW_FIGURE_MEASURED, b.x, NULL);
      break;
    }
  item->rank = g_rand_int_range (random, 1, 4);
}

static RwSheet *
random_sheet (guint32 seed, int count)
{
  RwSheet *sheet = new_sheet ();
  GRand *random = g_rand_new_with_seed (seed);

  for (int i = 0; i < count; i++)
    add_random_item (sheet, random);
  g_rand_free (random);
  return sheet;
}

static void
assert_texts_apart (const RwLayout *layout)
{
  for (guint i = 0; i < layout->texts->len; i++)
    for (guint k = 0; k < i; k++)
      {
        const RwBox *a = &text_at (layout, i)->box, *b = &text_at (layout, k)->box;

        g_assert_true (a->x1 <= b->x0 || b->x1 <= a->x0 || a->y1 <= b->y0 || b->y1 <= a->y0);
      }
}

/* Walks along what is wide in small steps and asks each text whether the place is on its letters. */
static void
assert_not_on_letters (const RwLayout *layout, RwPoint p)
{
  for (guint i = 0; i < layout->texts->len; i++)
    {
      const RwPlacedText *text = text_at (layout, i);
      double x = p.x - text->at.x, y = p.y - text->at.y;
      double along = x * cos (text->turn) + y * sin (text->turn);
      double up = y * cos (text->turn) - x * sin (text->turn);

      g_assert_false (along > 0 && along < text->width && up > 0 && up < text->size);
    }
}

static void
assert_wide_lines_clear (const RwLayout *layout)
{
  for (guint i = 0; i < layout->sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (layout->sheet->items, RwItem, i);
      const RwPathOp *op = &g_array_index (layout->sheet->ops, RwPathOp, item->op_first);
      double s = layout->scale;

      for (double t = 0; item->kind == RW_ITEM_PATH && t <= 1; t += 1 / 256.0)
        if (op->verb == RW_VERB_ARC)
          assert_not_on_letters (layout, (RwPoint){ s * (op->p[0].x + op->radius * cos (t * 2 * G_PI)),
                                                    s * (op->p[0].y + op->radius * sin (t * 2 * G_PI)) });
        else
          assert_not_on_letters (layout, (RwPoint){ s * (op[0].p[0].x + t * (op[1].p[0].x - op[0].p[0].x)),
                                                    s * (op[0].p[0].y + t * (op[1].p[0].y - op[0].p[0].y)) });
    }
}

static void
assert_dimension_lines_clear (const RwLayout *layout)
{
  for (guint i = 0; i < layout->marks->len; i++)
    {
      const RwPlacedMark *mark = &g_array_index (layout->marks, RwPlacedMark, i);

      if (mark->kind != RW_MARK_LINE && mark->kind != RW_MARK_EXTENSION)
        continue;
      for (double t = 0; t <= 1; t += 1 / 256.0)
        assert_not_on_letters (layout, (RwPoint){ mark->p[0].x + t * (mark->p[1].x - mark->p[0].x),
                                                  mark->p[0].y + t * (mark->p[1].y - mark->p[0].y) });
    }
}

static void
test_random (void)
{
  static const double scales[] = { 0.2, 0.5, 2 };
  guint placed = 0, left_out = 0;

  for (guint32 seed = 1; seed <= 40; seed++)
    for (guint i = 0; i < G_N_ELEMENTS (scales); i++)
      {
        g_autoptr (RwSheet) sheet = random_sheet (seed, 30 + (int) seed);
        g_autoptr (RwLayout) layout = rw_layout_new (sheet, scales[i], 0);
        guint lettered = 0;

        for (guint k = 0; k < sheet->items->len; k++)
          lettered += g_array_index (sheet->items, RwItem, k).kind != RW_ITEM_PATH;
        assert_texts_apart (layout);
        assert_wide_lines_clear (layout);
        assert_dimension_lines_clear (layout);
        placed += layout->texts->len;
        left_out += lettered - layout->texts->len;
      }
  /* The test tests something: both happen often. */
  g_assert_cmpuint (placed, >, 1000);
  g_assert_cmpuint (left_out, >, 500);
}

static void
test_same_twice (void)
{
  g_autoptr (RwSheet) sheet = random_sheet (7, 120);
  g_autoptr (RwLayout) a = rw_layout_new (sheet, 0.7, 0), b = rw_layout_new (sheet, 0.7, 0);

  g_assert_cmpuint (a->texts->len, ==, b->texts->len);
  g_assert_cmpuint (a->marks->len, ==, b->marks->len);
  for (guint i = 0; i < a->texts->len; i++)
    {
      g_assert_cmpint (text_at (a, i)->item, ==, text_at (b, i)->item);
      g_assert_cmpfloat (text_at (a, i)->at.x, ==, text_at (b, i)->at.x);
      g_assert_cmpfloat (text_at (a, i)->at.y, ==, text_at (b, i)->at.y);
    }
}

static void
test_extent (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();
  double width = 5 * rw_lettering_width ("plan");

  rw_sheet_text (sheet, 10, 20, RW_ALIGN_START, RW_LETTERS_TITLE, "plan");

  g_autoptr (RwLayout) text = rw_layout_new (sheet, 2, 0);
  g_assert_cmpfloat_with_epsilon (text->extent.x0, 20, NEAR);
  g_assert_cmpfloat_with_epsilon (text->extent.x1, 20 + width, NEAR);

  rw_sheet_box (sheet, RW_PEN_EDGE, RW_TINT_NONE, 0, 0, 5, 5);

  g_autoptr (RwLayout) both = rw_layout_new (sheet, 2, 0);
  g_assert_cmpfloat_with_epsilon (both->extent.x0, 0, NEAR);
  g_assert_cmpfloat_with_epsilon (both->extent.x1, 20 + width, NEAR);
}

/* Picking */

static void
test_pick (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  rw_sheet_box (sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, 0, 0, 100, 50);
  rw_sheet_circle (sheet, RW_PEN_EDGE, RW_TINT_NONE, 50, 25, 20);
  rw_sheet_line (sheet, RW_PEN_GRAIN, 0, 10, 100, 10);
  rw_sheet_line (sheet, RW_PEN_EDGE, 10, 0, 10, 50);

  g_assert_cmpint (rw_sheet_pick (sheet, 10.5, 30, 1), ==, 3);
  g_assert_cmpint (rw_sheet_pick (sheet, 12, 30, 1), ==, 0);
  g_assert_cmpint (rw_sheet_pick (sheet, 70.4, 25, 1), ==, 1);
  g_assert_cmpint (rw_sheet_pick (sheet, 50, 25, 1), ==, 0);
  g_assert_cmpint (rw_sheet_pick (sheet, 90, 10, 1), ==, 0);
  g_assert_cmpint (rw_sheet_pick (sheet, 100.9, 25, 1), ==, 0);
  g_assert_cmpint (rw_sheet_pick (sheet, 101.1, 25, 1), ==, -1);
}

/* A ring's hole is outside where its circles run opposite ways, as fills are painted. */
static void
test_pick_ring (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  rw_path_begin (sheet, RW_PEN_NONE, RW_TINT_METAL);
  rw_path_move (sheet, 50, 0);
  rw_path_arc (sheet, (RwPoint){ 0, 0 }, 50, 0, 2 * G_PI);
  rw_path_close (sheet);
  rw_path_move (sheet, 30, 0);
  rw_path_arc (sheet, (RwPoint){ 0, 0 }, 30, 0, -2 * G_PI);
  rw_path_close (sheet);
  rw_path_end (sheet);

  g_assert_cmpint (rw_sheet_pick (sheet, 28, 28, 0.1), ==, 0);
  g_assert_cmpint (rw_sheet_pick (sheet, 10, 10, 0.1), ==, -1);
  g_assert_cmpint (rw_sheet_pick (sheet, 36, 36, 0.1), ==, -1);
}

static void
test_pick_text (void)
{
  g_autoptr (RwSheet) sheet = new_sheet ();

  rw_sheet_dimension (sheet, RW_MEASURE_HORIZONTAL, (RwPoint){ 0, 0 }, (RwPoint){ 100, 0 }, 10,
                      RW_FIGURE_PLANNED, 100, NULL);

  g_autoptr (RwLayout) layout = rw_layout_new (sheet, 1, 0);
  g_assert_cmpint (rw_layout_text_at (layout, 50, 12, 0), ==, 0);
  g_assert_cmpint (rw_layout_text_at (layout, 50, 14.5, 0), ==, -1);
  g_assert_cmpint (rw_layout_text_at (layout, 50, 14.5, 1.5), ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/lettering", test_lettering);
  g_test_add_func ("/layout/dimension/horizontal", test_horizontal);
  g_test_add_func ("/layout/dimension/letters", test_letters);
  g_test_add_func ("/layout/dimension/short", test_short);
  g_test_add_func ("/layout/dimension/vertical", test_vertical);
  g_test_add_func ("/layout/dimension/aligned", test_aligned);
  g_test_add_func ("/layout/dimension/turned", test_turned);
  g_test_add_func ("/layout/dimension/angle", test_angle);
  g_test_add_func ("/layout/leader", test_leader);
  g_test_add_func ("/layout/places/rank", test_rank);
  g_test_add_func ("/layout/places/rows", test_rows);
  g_test_add_func ("/layout/places/random", test_random);
  g_test_add_func ("/layout/same-twice", test_same_twice);
  g_test_add_func ("/layout/extent", test_extent);
  g_test_add_func ("/layout/pick/paths", test_pick);
  g_test_add_func ("/layout/pick/ring", test_pick_ring);
  g_test_add_func ("/layout/pick/text", test_pick_text);
  return g_test_run ();
}
