#include "draw/drawing.h"

#include <math.h>
#include <string.h>

#include "built.h"
#include "random_design.h"

/* The views: whole and finite whatever the build, true in their places.  Expected places follow from the
 * frames that drawing.h states and from plane geometry; tolerances are rounding of doubles, 1e-6 mm, but
 * where said. */

#define CLOSE 1e-6

typedef struct
{
  RwDesign design;
  RwResult result;
} Build;

static void
solve (Build *build)
{
  rw_solve (&build->design, NULL, &build->result);
}

static void
make_default (Build *build)
{
  rw_design_init (&build->design);
  solve (build);
}

static RwSheet *
draw (const Build *build, RwView view)
{
  return rw_draw (view, &build->result, NULL, RW_STYLE_FILE);
}

static const RwItem *
item_at (const RwSheet *sheet, guint i)
{
  return &g_array_index (sheet->items, RwItem, i);
}

static const RwPathOp *
op_of (const RwSheet *sheet, const RwItem *item, int i)
{
  return &g_array_index (sheet->ops, RwPathOp, item->op_first + i);
}

/* The n-th path of a name, counted from 0. */
static const RwItem *
find (const RwSheet *sheet, const char *name, int n)
{
  for (guint i = 0; i < sheet->items->len; i++)
    if (g_strcmp0 (item_at (sheet, i)->name, name) == 0 && n-- == 0)
      return item_at (sheet, i);
  g_error ("nothing is called %s", name);
}

/* ---- any build ---- */

static void
check_point (RwPoint p)
{
  g_assert_true (isfinite (p.x) && isfinite (p.y));
  /* Nothing in the ranges of the parameters is larger than a few metres; leaders reach out a little. */
  g_assert_cmpfloat (fmax (fabs (p.x), fabs (p.y)), <=, 20000);
}

static void
check_item (const RwSheet *sheet, const RwItem *item)
{
  check_point (item->p[0]);
  check_point (item->p[1]);
  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = op_of (sheet, item, i);
      int points = op->verb == RW_VERB_CLOSE ? 0 : op->verb == RW_VERB_CURVE ? 3 : 1;

      for (int k = 0; k < points; k++)
        check_point (op->p[k]);
      g_assert_true (op->verb != RW_VERB_ARC || (op->radius >= 0 && isfinite (op->a0) && isfinite (op->a1)));
      g_assert_true (i > 0 || op->verb == RW_VERB_MOVE || op->verb == RW_VERB_ARC);
    }
  g_assert_cmpint (item->subject.param, >=, -1);
  g_assert_cmpint (item->subject.param, <, RW_PARAM_COUNT);
  g_assert_cmpint (item->subject.slot, >=, -1);
  g_assert_cmpint (item->subject.slot, <, RW_SLOT_COUNT);
  g_assert_true (item->subject.param < 0 || item->subject.slot < 0);
  if (item->kind != RW_ITEM_PATH)
    {
      g_assert_nonnull (item->text);
      g_assert_null (strstr (item->text, "nan"));
      g_assert_null (strstr (item->text, "inf"));
    }
}

static void
check_all_views (const Build *build)
{
  for (RwView view = 0; view < RW_VIEW_COUNT; view++)
    {
      g_autoptr (RwSheet) sheet = draw (build, view);

      for (guint i = 0; i < sheet->items->len; i++)
        check_item (sheet, item_at (sheet, i));
    }
}

static void
test_any_build (void)
{
  for (int i = 0; i < 150; i++)
    {
      Build build;

      random_design (&build.design);
      solve (&build);
      check_all_views (&build);
    }
}

static void
test_near_builds (void)
{
  for (int i = 0; i < 150; i++)
    {
      Build build;

      rw_design_init (&build.design);
      random_design_near (&build.design, 6);
      solve (&build);
      check_all_views (&build);
    }
}

/* Constructions and routes that random numbers alone may miss. */
static void
test_choices (void)
{
  static const struct
  {
    RwParamId id;
    const char *value;
  } choices[] = {
    { RW_P_rim_construction, "staves" }, { RW_P_rim_construction, "plies" },
    { RW_P_joint_kind, "stick" },        { RW_P_fifth_route, "tunnel" },
    { RW_P_frets_count, "0" },           { RW_P_hoop_seat, "groove" },
    { RW_P_hooks_layout, "even" },       { RW_P_bridge_feet, "2" },
    { RW_P_scale_square_to, "strings" }, { RW_P_neck_rod_present, "no" },
    { RW_P_build_handed, "left" },       { RW_P_strings_set, "A4 0.5 p; D4 0.6 p; A3 0.7 p; D3 0.8 p" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (choices); i++)
    {
      Build build;

      rw_design_init (&build.design);
      g_assert_true (rw_design_read (&build.design, choices[i].id, choices[i].value, RW_STYLE_FILE, NULL));
      solve (&build);
      check_all_views (&build);
    }
}

static void
test_unsolved (void)
{
  Build build;
  g_autoptr (RwSheet) sheet = NULL;

  /* A head too slack to carry the bridge: the neck is left out, the pot stays. */
  make_default (&build);
  build.result.side = (RwSide){ .outcome = RW_SIDE_NO_BALANCE,
                                .angle = NAN,
                                .nut_to_rim = NAN,
                                .bridge_top = NAN,
                                .sag = NAN,
                                .heel_start = NAN,
                                .action = NAN };
  check_all_views (&build);
  sheet = draw (&build, RW_VIEW_WHOLE);
  find (sheet, "Tension hoop", 0);
  for (guint i = 0; i < sheet->items->len; i++)
    g_assert_cmpstr (item_at (sheet, i)->name, !=, "Fretboard");
}

/* ---- plan ---- */

static void
test_rim_circle (void)
{
  Build build;
  g_autoptr (RwSheet) sheet = NULL;
  const RwPathOp *outer, *inner;

  make_default (&build);
  sheet = draw (&build, RW_VIEW_PLAN);
  outer = op_of (sheet, find (sheet, "Rim", 0), 0);
  inner = op_of (sheet, find (sheet, "Inside of the rim", 0), 0);
  g_assert_cmpfloat_with_epsilon (outer->radius, build.design.rim_outer_diameter / 2, CLOSE);
  g_assert_cmpfloat_with_epsilon (inner->radius, build.design.rim_outer_diameter / 2 - build.design.rim_wall,
                                  CLOSE);
  g_assert_cmpfloat_with_epsilon (hypot (outer->p[0].x, outer->p[0].y), 0, CLOSE);
}

/* The middle string of five is the axis: level from the nut's back face to the bridge; and from the nut line
 * to the bridge it is the scale length long, the board's part of it seen tilted by the neck angle.  Over the
 * pot the model has the bridge's place in the head plane, so the sum is exact: L = Ro + xb in projection +
 * board. */
static void
test_middle_string (void)
{
  Build build;
  g_autoptr (RwSheet) sheet = NULL;
  const RwItem *string;
  RwPoint nut, bridge;
  double tilt, over_bridge;

  make_default (&build);
  sheet = draw (&build, RW_VIEW_PLAN);
  string = find (sheet, "String 3", 0);
  nut = op_of (sheet, string, 1)->p[0];
  bridge = op_of (sheet, string, 2)->p[0];
  tilt = build.result.side.angle;
  over_bridge = build.result.side.bridge_top - build.design.neck_set_height;

  g_assert_cmpfloat_with_epsilon (nut.y, 0, CLOSE);
  g_assert_cmpfloat_with_epsilon (bridge.y, 0, CLOSE);
  g_assert_cmpfloat_with_epsilon (bridge.x, build.design.bridge_offset, CLOSE);
  /* From the bridge's top back along the board: (xb + Ro, h - s) has (xb + Ro) cos A + (h - s) sin A along
   * it. */
  g_assert_cmpfloat_with_epsilon ((-build.design.rim_outer_diameter / 2 - nut.x) / cos (tilt)
                                      + (bridge.x + build.design.rim_outer_diameter / 2) * cos (tilt)
                                      + over_bridge * sin (tilt),
                                  build.design.scale_length + build.design.nut_thickness, 1e-4);
}

/* A tailpiece set over takes its screw and the strings' ends with it, and leaves them where they are on the bridge.
 * The 1st string, on the treble side, is at +y. */
static void
test_tail_set_over (void)
{
  Build build;
  g_autoptr (RwSheet) before = NULL, sheet = NULL;
  const RwItem *string, *was;

  make_default (&build);
  before = draw (&build, RW_VIEW_PLAN);
  build.design.tailpiece_offset = 7;
  solve (&build);
  sheet = draw (&build, RW_VIEW_PLAN);
  string = find (sheet, "String 1", 0);
  was = find (before, "String 1", 0);

  g_assert_cmpfloat (op_of (before, was, 2)->p[0].y, >, 0);
  g_assert_cmpfloat_with_epsilon (op_of (sheet, string, 2)->p[0].y, op_of (before, was, 2)->p[0].y, CLOSE);
  g_assert_cmpfloat_with_epsilon (op_of (sheet, string, 3)->p[0].y, op_of (before, was, 3)->p[0].y + 7, CLOSE);
  for (int i = 0; i < 4; i++)
    g_assert_cmpfloat_with_epsilon (op_of (sheet, find (sheet, "Tailpiece screw", 0), i)->p[0].y,
                                    op_of (before, find (before, "Tailpiece screw", 0), i)->p[0].y + 7, CLOSE);
}

/* Notches, hooks and shoes stand at the hooks' angles: a shoe's middle lies on the ray of its hook. */
static void
test_hooks_round (void)
{
  Build build;
  g_autoptr (RwSheet) sheet = NULL;

  make_default (&build);
  sheet = draw (&build, RW_VIEW_PLAN);
  for (int k = 1; k <= (int)build.design.hooks_count; k++)
    {
      g_autofree char *name = g_strdup_printf ("Shoe %d", k);
      const RwItem *shoe = find (sheet, name, 0);
      RwPoint sum = { 0, 0 };
      double angle = build.result.value[RW_HOOKS_ANGLE + k] * G_PI / 180;

      for (int i = 0; i < shoe->op_count; i++)
        if (op_of (sheet, shoe, i)->verb != RW_VERB_CLOSE)
          {
            sum.x += op_of (sheet, shoe, i)->p[0].x;
            sum.y += op_of (sheet, shoe, i)->p[0].y;
          }
      /* From the neck side towards the treble side, which is up. */
      g_assert_cmpfloat_with_epsilon (remainder (atan2 (sum.y, -sum.x) - angle, 2 * G_PI), 0, CLOSE);
    }
}

static void
check_mirrored_item (const RwSheet *a, const RwItem *p, const RwSheet *b, const RwItem *q)
{
  g_assert_cmpint (p->op_count, ==, q->op_count);
  for (int i = 0; i < p->op_count; i++)
    {
      const RwPathOp *from = op_of (a, p, i), *to = op_of (b, q, i);

      g_assert_cmpint (from->verb, ==, to->verb);
      g_assert_cmpfloat_with_epsilon (from->p[0].x, to->p[0].x, CLOSE);
      g_assert_cmpfloat_with_epsilon (from->p[0].y, -to->p[0].y, CLOSE);
    }
}

static void
test_mirrored (void)
{
  Build right, left;
  g_autoptr (RwSheet) a = NULL;
  g_autoptr (RwSheet) b = NULL;

  make_default (&right);
  left = right;
  left.design.build_handed = RW_HANDED_LEFT;
  solve (&left);
  a = draw (&right, RW_VIEW_PLAN);
  b = draw (&left, RW_VIEW_PLAN);
  g_assert_cmpuint (a->items->len, ==, b->items->len);
  for (guint i = 0; i < a->items->len; i++)
    check_mirrored_item (a, item_at (a, i), b, item_at (b, i));
}

/* ---- plan and side in one ---- */

/* What stands in both views stands on one vertical line. */
static void
test_aligned (void)
{
  Build build;
  g_autoptr (RwSheet) sheet = NULL;
  RwBox whole, plan, side;
  g_autoptr (RwSheet) above = NULL;
  g_autoptr (RwSheet) below = NULL;
  const RwItem *fret;
  double middle;

  make_default (&build);
  above = draw (&build, RW_VIEW_PLAN);
  below = draw (&build, RW_VIEW_SIDE);
  sheet = draw (&build, RW_VIEW_WHOLE);
  whole = rw_sheet_extent (sheet);
  plan = rw_sheet_extent (above);
  side = rw_sheet_extent (below);

  /* The side stands clear below the plan. */
  g_assert_cmpfloat (whole.y1 - whole.y0, >, plan.y1 - plan.y0 + side.y1 - side.y0);

  /* The seventh fret's edge to the nut: the middle of a skew line above, a foot of the crown below.  That the
   * side knows nothing of the skew is under 0.05 mm. */
  fret = find (sheet, "Fret 7", 0);
  middle = (op_of (sheet, fret, 0)->p[0].x + op_of (sheet, fret, 1)->p[0].x) / 2;
  g_assert_cmpfloat_with_epsilon (middle, op_of (sheet, find (sheet, "Fret 7", 1), 0)->p[0].x, 0.05);
}

/* ---- details ---- */

/* A segment closes the ring: N of them, each with its long edge on the circle's tangent polygon. */
static void
test_segment (void)
{
  Build build;
  g_autoptr (RwSheet) sheet = NULL;
  const RwItem *segment;
  RwPoint a, b;
  double apothem;

  make_default (&build);
  sheet = draw (&build, RW_VIEW_COURSES);
  segment = find (sheet, "Segment 1", 0);
  a = op_of (sheet, segment, 1)->p[0];
  b = op_of (sheet, segment, 2)->p[0];
  apothem = build.design.rim_outer_diameter / 2 + build.design.rim_turning_allowance;
  g_assert_cmpfloat_with_epsilon (hypot (a.x + b.x, a.y + b.y) / 2, apothem, CLOSE);
  g_assert_cmpfloat_with_epsilon (hypot (b.x - a.x, b.y - a.y),
                                  2 * apothem * tan (G_PI / build.design.rim_segments), CLOSE);
}

/* The section's deepest point is as deep as the wood under the board, and the first facet touches the curve
 * and does not cut it: an ellipse (e = 2) is touched at u = v = 1/sqrt 2 by u + v = sqrt 2. */
static void
test_section (void)
{
  Build build;
  g_autoptr (RwSheet) sheet = NULL;
  const RwItem *neck, *facet;
  double deepest = 0, wood;
  RwPoint a, b;

  make_default (&build);
  build.design.neck_section = 2;
  solve (&build);
  sheet = draw (&build, RW_VIEW_SECTIONS);
  neck = find (sheet, "Neck at fret 1", 0);
  for (int i = 0; i < neck->op_count; i++)
    if (op_of (sheet, neck, i)->verb != RW_VERB_CLOSE)
      deepest = fmin (deepest, op_of (sheet, neck, i)->p[0].y);
  wood = build.design.neck_thickness_first - build.design.fretboard_thickness;
  g_assert_cmpfloat_with_epsilon (deepest, -wood, CLOSE);

  facet = find (sheet, "First facet", 0);
  a = op_of (sheet, facet, 0)->p[0];
  b = op_of (sheet, facet, 1)->p[0];
  g_assert_cmpfloat_with_epsilon (a.y, -(G_SQRT2 - 1) * wood, CLOSE);
  g_assert_cmpfloat_with_epsilon (b.y, -wood, CLOSE);
  g_assert_cmpfloat_with_epsilon (b.x / a.x, G_SQRT2 - 1, CLOSE);
}

/* ---- figures ---- */

static const RwItem *
find_dimension (const RwSheet *sheet, RwSubject subject)
{
  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = item_at (sheet, i);

      if (item->kind != RW_ITEM_PATH && item->subject.param == subject.param
          && item->subject.slot == subject.slot)
        return item;
    }
  g_error ("no such dimension");
}

static void
test_figures (void)
{
  Build build;
  RwMeasured measured;
  g_autoptr (RwSheet) planned = NULL;
  g_autoptr (RwSheet) now = NULL;

  make_default (&build);
  planned = draw (&build, RW_VIEW_WHOLE);
  g_assert_cmpint (find_dimension (planned, RW_SUBJECT_PARAM (scale_length))->figure, ==, RW_FIGURE_PLANNED);
  g_assert_cmpint (find_dimension (planned, RW_SUBJECT_SLOT (RW_NECK_ANGLE))->figure, ==,
                   RW_FIGURE_WORKED_OUT);
  /* Given, while the angle is what is solved for. */
  g_assert_cmpint (find_dimension (planned, RW_SUBJECT_SLOT (RW_BRIDGE_HEIGHT))->figure, ==,
                   RW_FIGURE_PLANNED);

  rw_measured_init (&measured);
  g_assert_true (rw_measured_set (&measured, "rim.height", 63.2, NULL));
  rw_solve (&build.design, &measured, &build.result);
  now = rw_draw (RW_VIEW_WHOLE, &build.result, &measured, RW_STYLE_FILE);
  g_assert_cmpint (find_dimension (now, RW_SUBJECT_PARAM (rim_height))->figure, ==, RW_FIGURE_MEASURED);
  g_assert_cmpstr (find_dimension (now, RW_SUBJECT_PARAM (rim_height))->text, ==, "63.2");
}

/* ---- views by name, places on them ---- */

static void
test_names (void)
{
  for (RwView view = 0; view < RW_VIEW_COUNT; view++)
    g_assert_cmpint (rw_view_find (rw_view_id (view)), ==, (int)view);
  g_assert_cmpint (rw_view_find ("no such view"), ==, -1);
}

/* Where a frame is said to stand, the part is drawn. */
static void
test_places (void)
{
  static const int hands[] = { RW_HANDED_RIGHT, RW_HANDED_LEFT };

  for (guint i = 0; i < G_N_ELEMENTS (hands); i++)
    {
      Build build;
      g_autoptr (RwSheet) whole = NULL;
      g_autoptr (RwSheet) head = NULL;
      RwPoint place, post = { 0 };
      double hand = hands[i] == RW_HANDED_LEFT ? -1 : 1;

      rw_design_init (&build.design);
      build.design.build_handed = hands[i];
      solve (&build);
      whole = draw (&build, RW_VIEW_WHOLE);
      head = draw (&build, RW_VIEW_HEADSTOCK);

      /* A corner of the hoop from the side, and the first string's post on the unfolded face. */
      place = (RwPoint){ -build.result.value[RW_HOOP_OUTER_DIAMETER] / 2,
                         build.result.value[RW_HOOP_TOP_OVER_HEAD] };
      g_assert_true (rw_view_place (RW_VIEW_WHOLE, RW_FRAME_SIDE, &build.result, place, &place));
      g_assert_cmpfloat_with_epsilon (op_of (whole, find (whole, "Tension hoop", 1), 3)->p[0].x, place.x,
                                      CLOSE);
      g_assert_cmpfloat_with_epsilon (op_of (whole, find (whole, "Tension hoop", 1), 3)->p[0].y, place.y,
                                      CLOSE);

      post = (RwPoint){ build.result.value[RW_HEADSTOCK_POST_X + 1],
                        build.result.value[RW_HEADSTOCK_POST_Y + 1] };
      g_assert_true (rw_view_place (RW_VIEW_HEADSTOCK, RW_FRAME_HEADSTOCK, &build.result, post, &place));
      g_assert_cmpfloat_with_epsilon (op_of (head, find (head, "Post 1", 0), 0)->p[0].x, place.x, CLOSE);
      g_assert_cmpfloat_with_epsilon (op_of (head, find (head, "Post 1", 0), 0)->p[0].y, place.y, CLOSE);
      g_assert_cmpfloat (place.y * hand, >, 0);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/drawing/any-build", test_any_build);
  g_test_add_func ("/drawing/near-builds", test_near_builds);
  g_test_add_func ("/drawing/choices", test_choices);
  g_test_add_func ("/drawing/unsolved", test_unsolved);
  g_test_add_func ("/drawing/plan/rim", test_rim_circle);
  g_test_add_func ("/drawing/plan/middle-string", test_middle_string);
  g_test_add_func ("/drawing/plan/tail-set-over", test_tail_set_over);
  g_test_add_func ("/drawing/plan/hooks", test_hooks_round);
  g_test_add_func ("/drawing/plan/left-handed", test_mirrored);
  g_test_add_func ("/drawing/whole/aligned", test_aligned);
  g_test_add_func ("/drawing/courses/segment", test_segment);
  g_test_add_func ("/drawing/sections/facet", test_section);
  g_test_add_func ("/drawing/figures", test_figures);
  g_test_add_func ("/drawing/names", test_names);
  g_test_add_func ("/drawing/places", test_places);
  return g_test_run ();
}
