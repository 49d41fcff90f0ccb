#include "paper/paper.h"
#include "sheet/layout.h"
#include "built.h"
#include "random_design.h"

#include <math.h>
#include <string.h>

/* Papers against the engine's numbers, and against what follows from the rim or the scale by hand. */

static RwSheet *
build_page (const Built *built, const char *id, int page)
{
  g_autoptr (RwProject) project = rw_project_new ();
  int kind = rw_paper_kind_find (id);
  RwPaperJob job = { .project = project,
                     .result = &built->result,
                     .planned = &built->result,
                     .measured = &built->measured,
                     .style = RW_STYLE_FILE,
                     .date = "2026-01-31",
                     .page = page,
                     .width = 180,
                     .height = 240 };

  g_assert_cmpint (kind, >=, 0);
  return rw_paper_kinds[kind].build (&job);
}

static RwSheet *
build_paper (const Built *built, const char *id)
{
  RwSheet *sheet = build_page (built, id, 0);

  g_assert_nonnull (sheet);
  return sheet;
}

static const RwItem *
find_item (const RwSheet *sheet, const char *name)
{
  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (g_strcmp0 (item->name, name) == 0)
        return item;
    }
  return NULL;
}

static const RwPathOp *
op_of (const RwSheet *sheet, const RwItem *item, int op)
{
  g_assert_nonnull (item);
  g_assert_cmpint (op, <, item->op_count);
  return &g_array_index (sheet->ops, RwPathOp, item->op_first + op);
}

/* Centre of a circle called name. */
static RwPoint
centre_of (const RwSheet *sheet, const char *name)
{
  const RwPathOp *op = op_of (sheet, find_item (sheet, name), 0);

  g_assert_cmpint (op->verb, ==, RW_VERB_ARC);
  return op->p[0];
}

static void
assert_point (RwPoint point, double x, double y)
{
  g_assert_cmpfloat_with_epsilon (point.x, x, 1e-9);
  g_assert_cmpfloat_with_epsilon (point.y, y, 1e-9);
}

/* ---- the strip round the rim ---- */

/* Seen from outside with the head side up, the way to the treble side runs to the left. */
static void
test_strip_holes (void)
{
  g_autoptr (Built) built = built_new ("");
  g_autoptr (RwSheet) sheet = build_paper (built, "rim-strip");

  for (int k = 1; k <= 18; k++)
    {
      g_autofree char *name = g_strdup_printf ("Shoe hole %d", k),
                      *arc = g_strdup_printf ("hooks.arc[%d]", k);

      assert_point (centre_of (sheet, name), -built_value (built, arc),
                    -built_value (built, "shoes.hole_below_edge"));
    }
}

/* Twenty hooks round 300 mm, half a step on each side of the neck. */
static void
test_strip_by_hand (void)
{
  g_autoptr (Built) built
      = built_new ("rim.outer_diameter=300|hooks.count=20|hooks.layout=even|hooks.first=straddle|"
                   "shoes.below_edge=30|rim.tone_ring_height=4|head.nominal=301");
  g_autoptr (RwSheet) sheet = build_paper (built, "rim-strip");

  for (int k = 1; k <= 20; k++)
    {
      g_autofree char *name = g_strdup_printf ("Shoe hole %d", k);

      assert_point (centre_of (sheet, name), -(k - 0.5) * G_PI * 15, -26);
    }
}

static void
test_strip_length (void)
{
  g_autoptr (Built) built = built_new ("rim.height=60");
  g_autoptr (RwSheet) sheet = build_paper (built, "rim-strip");
  const RwItem *edges = find_item (sheet, "Rim strip");
  RwPoint from = op_of (sheet, edges, 0)->p[0], to = op_of (sheet, edges, 2)->p[0];

  assert_point (from, -G_PI * 279, -60);
  assert_point (to, 0, 0);
  assert_point (op_of (sheet, find_item (sheet, "Tail mark"), 0)->p[0], -G_PI * 279 / 2, 9);
}

/* A tape that says more than the diameter stretches the strip and all that is on it alike. */
static void
test_strip_stretch (void)
{
  g_autoptr (Built) built = built_new ("@rim.circumference=880");
  g_autoptr (RwSheet) sheet = build_paper (built, "rim-strip");
  double stretch = 880 / (G_PI * 279), depth = -built_value (built, "shoes.hole_below_edge");

  g_assert_cmpfloat_with_epsilon (op_of (sheet, find_item (sheet, "Rim strip"), 0)->p[0].x, -880, 1e-9);
  assert_point (centre_of (sheet, "Shoe hole 7"), -built_value (built, "hooks.arc[7]") * stretch, depth);
}

static void
test_strip_left (void)
{
  g_autoptr (Built) built = built_new ("build.handed=left");
  g_autoptr (RwSheet) sheet = build_paper (built, "rim-strip");

  assert_point (centre_of (sheet, "Shoe hole 3"), built_value (built, "hooks.arc[3]"),
                -built_value (built, "shoes.hole_below_edge"));
}

static void
test_strip_rods (void)
{
  g_autoptr (Built) built = built_new ("rim.tone_ring_height=3|joint.rod_upper=28|joint.rod_spacing=24");
  g_autoptr (RwSheet) sheet = build_paper (built, "rim-strip");

  assert_point (centre_of (sheet, "Rod hole 1"), 0, -25);
  assert_point (centre_of (sheet, "Rod hole 2"), 0, -49);
}

/* ---- frets ---- */

static void
check_slots (const char *changes, const char *id)
{
  g_autoptr (Built) built = built_new (changes);
  g_autoptr (RwSheet) sheet = build_paper (built, id);

  for (int n = 1; n <= 19; n++)
    {
      g_autofree char *name = g_strdup_printf ("Fret %d", n),
                      *position = g_strdup_printf ("frets.position[%d]", n);
      const RwItem *slot = find_item (sheet, name);

      for (int end = 0; end < 2; end++)
        {
          double x = op_of (sheet, slot, end)->p[0].x;

          g_assert_cmpfloat_with_epsilon (x, built_value (built, position), 1e-9);
          g_assert_cmpfloat_with_epsilon (x, 650 * (1 - exp2 (-n / 12.0)), 1e-9); /* equal temperament */
        }
    }
}

static void
test_slots (void)
{
  check_slots ("", "fretboard");
  check_slots ("scale.square_to=strings", "fretboard");
  check_slots ("build.handed=left", "fretboard");
  check_slots ("", "scale-stick");
}

/* A fret measured elsewhere is drawn where it is. */
static void
test_measured_slot (void)
{
  g_autoptr (Built) built = built_new ("@frets.position[9]=264");
  g_autoptr (RwSheet) sheet = build_paper (built, "fretboard");

  g_assert_cmpfloat_with_epsilon (op_of (sheet, find_item (sheet, "Fret 9"), 0)->p[0].x, 264, 1e-9);
}

/* ---- other templates ---- */

static void
test_plan_holes (void)
{
  g_autoptr (Built) built = built_new ("");
  g_autoptr (RwSheet) sheet = build_paper (built, "rim-plan");

  for (int k = 1; k <= 18; k++)
    {
      g_autofree char *name = g_strdup_printf ("Shoe hole %d", k), *x = g_strdup_printf ("hooks.x[%d]", k);
      g_autofree char *y = g_strdup_printf ("hooks.y[%d]", k);
      RwPoint at = centre_of (sheet, name);

      assert_point (at, built_value (built, x), built_value (built, y));
      g_assert_cmpfloat_with_epsilon (hypot (at.x, at.y), 279 / 2.0, 1e-9);
    }
}

static void
test_posts (void)
{
  g_autoptr (Built) built = built_new ("");
  g_autoptr (RwSheet) sheet = build_paper (built, "headstock");

  for (int i = 1; i <= 4; i++)
    {
      g_autofree char *name = g_strdup_printf ("Post hole %d", i),
                      *x = g_strdup_printf ("headstock.post_x[%d]", i);
      g_autofree char *y = g_strdup_printf ("headstock.post_y[%d]", i);

      assert_point (centre_of (sheet, name), -built_value (built, x), built_value (built, y));
    }
}

/* The wedge rises as the neck tilts: here 140 tan 3. */
static void
test_wedge (void)
{
  g_autoptr (Built) built = built_new ("neck.solve_for=action|neck.angle=3");
  g_autoptr (RwSheet) sheet = build_paper (built, "heel");
  const RwItem *wedge = find_item (sheet, "Wedge for the saw");
  double thick = op_of (sheet, wedge, 3)->p[0].y - op_of (sheet, wedge, 0)->p[0].y;
  double thin = op_of (sheet, wedge, 2)->p[0].y - op_of (sheet, wedge, 1)->p[0].y;

  g_assert_cmpfloat_with_epsilon (thick - thin, 140 * tan (3 * G_PI / 180), 1e-9);
}

/* Nothing is drawn where a build has no such thing. */
static void
test_no_ring_of_plies (void)
{
  g_autoptr (Built) built = built_new ("rim.construction=plies");

  g_assert_null (build_page (built, "ring", 0));
}

/* ---- lists ---- */

static gboolean
has_text (const RwSheet *sheet, const char *words)
{
  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (item->text != NULL && strstr (item->text, words) != NULL)
        return TRUE;
    }
  return FALSE;
}

static gboolean
list_has (const Built *built, const char *id, const char *words)
{
  gboolean found = FALSE;

  for (int page = 0; !found; page++)
    {
      g_autoptr (RwSheet) sheet = build_page (built, id, page);

      if (sheet == NULL)
        break;
      found = has_text (sheet, words);
    }
  return found;
}

static void
test_lists (void)
{
  g_autoptr (Built) built = built_new ("rim.outer_diameter=300|head.nominal=301|@rim.circumference=943");
  g_autoptr (Built) staves = built_new ("rim.construction=staves");

  g_assert_true (list_has (built, "steps", "Saw the segments"));
  g_assert_true (list_has (staves, "steps", "Saw the staves"));
  g_assert_false (list_has (staves, "steps", "Saw the segments"));
  g_assert_true (list_has (built, "dimensions", "943.00"));
  g_assert_true (list_has (built, "dimensions", "asked"));
  g_assert_true (list_has (built, "shopping", "20 of 8-32")); /* 18 hooks and two to spare */
}

/* ---- any build ---- */

static void
assert_finite (const RwSheet *sheet)
{
  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      g_assert_true (isfinite (item->p[0].x) && isfinite (item->p[0].y));
      g_assert_true (isfinite (item->p[1].x) && isfinite (item->p[1].y));
      for (int k = 0; k < item->op_count; k++)
        {
          const RwPathOp *op = op_of (sheet, item, k);

          for (int p = 0; p < 3; p++)
            g_assert_true (isfinite (op->p[p].x) && isfinite (op->p[p].y));
        }
    }
}

/* Every page that there is of every kind; lists end. */
#define PAGES_MOST 60

static void
check_all_papers (const Built *built)
{
  for (int kind = 0; kind < rw_paper_kinds_count; kind++)
    for (int page = 0; page < PAGES_MOST; page++)
      {
        g_autoptr (RwSheet) sheet = build_page (built, rw_paper_kinds[kind].id, page);

        if (sheet == NULL)
          {
            g_assert_true (page > 0 || g_str_equal (rw_paper_kinds[kind].id, "ring")
                           || g_str_equal (rw_paper_kinds[kind].id, "cutting")); /* for which there must be stock */
            break;
          }
        assert_finite (sheet);
        g_assert_cmpint (page, <, PAGES_MOST - 1);
        if (rw_paper_kinds[kind].fit != RW_PAPER_LIST)
          break;
      }
}

static void
test_any_build (void)
{
  for (int i = 0; i < 40; i++)
    {
      g_autoptr (Built) built = built_new ("");

      if (i % 2 == 0)
        random_design (&built->design);
      else
        random_design_near (&built->design, 12);
      rw_solve (&built->design, NULL, &built->result);
      check_all_papers (built);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/paper/rim-strip/holes", test_strip_holes);
  g_test_add_func ("/paper/rim-strip/by-hand", test_strip_by_hand);
  g_test_add_func ("/paper/rim-strip/length", test_strip_length);
  g_test_add_func ("/paper/rim-strip/stretch", test_strip_stretch);
  g_test_add_func ("/paper/rim-strip/left-handed", test_strip_left);
  g_test_add_func ("/paper/rim-strip/rods", test_strip_rods);
  g_test_add_func ("/paper/fretboard/slots", test_slots);
  g_test_add_func ("/paper/fretboard/measured-slot", test_measured_slot);
  g_test_add_func ("/paper/rim-plan/holes", test_plan_holes);
  g_test_add_func ("/paper/headstock/posts", test_posts);
  g_test_add_func ("/paper/heel/wedge", test_wedge);
  g_test_add_func ("/paper/ring/plies", test_no_ring_of_plies);
  g_test_add_func ("/paper/lists", test_lists);
  g_test_add_func ("/paper/any-build", test_any_build);
  return g_test_run ();
}
