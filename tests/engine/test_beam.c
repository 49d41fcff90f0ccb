/* Sections of the neck against closed forms. */
#include "model/beam.h"

#include "expected.h"

/* Closed form of a half ellipse, half width 23 mm and depth 20 mm, flat side up: area pi a h/2, centroid
 * 4h/(3 pi) under the flat, second moment about it a h^3 (pi/8 - 8/(9 pi)).  W. Young & R. Budynas,
 * Roark's Formulas for Stress and Strain, properties of sections. */
#define AREA 722.57     /* mm2 */
#define CENTROID 8.488  /* mm */
#define INERTIA 20195.3 /* mm4 */

static void
test_half_ellipse (void)
{
  RwQuadrant quadrant = rw_profile_quadrant (2);
  double area = 46 * 20 * quadrant.area, first = 46 * 20.0 * 20 * quadrant.first;
  double second = 46 * 20.0 * 20 * 20 * quadrant.second;

  expected_near ("area", area, AREA, 0.005);
  expected_near ("centroid", first / area, CENTROID, 0.0005);
  expected_near ("second moment", second - first * first / area, INERTIA, 0.1);
}

/* An exponent of 1 gives a triangle: area 1/2, first moment 1/6, second 1/12. */
static void
test_triangle (void)
{
  RwQuadrant quadrant = rw_profile_quadrant (1);

  expected_near ("area", quadrant.area, 1.0 / 2, 1e-12);
  expected_near ("first moment", quadrant.first, 1.0 / 6, 1e-12);
  expected_near ("second moment", quadrant.second, 1.0 / 12, 1e-12);
}

typedef struct
{
  RwDesign design;
  RwResult result;
  RwModel  model;
  RwBeam   beam;
} Neck;

/* As wide and as thick everywhere: wood 20 mm deep, board 5 mm. */
static Neck *
neck_new (const char *board, double width, RwQuadrant quadrant)
{
  Neck *neck = g_new0 (Neck, 1);

  rw_design_init (&neck->design);
  g_assert_true (rw_design_read (&neck->design, RW_P_neck_wood, "maple_hard", RW_STYLE_FILE, NULL));
  g_assert_true (rw_design_read (&neck->design, RW_P_neck_board_wood, board, RW_STYLE_FILE, NULL));
  neck->design.fretboard_thickness = 5;
  neck->design.neck_thickness_first = neck->design.neck_thickness_last = 25;
  neck->result.plan = (RwPlan){ .strings = 1, .full = 1, .length = 650, .edge_margin = width / 2 };
  neck->model = (RwModel){ .d = &neck->design, .r = &neck->result, .guessed = RW_GUESSED };
  neck->beam = (RwBeam){ .m = &neck->model, .quadrant = quadrant, .heel_start = 400 };
  return neck;
}

/* Steiner's theorem for wood under a board, EI in kN mm2; centroid under the board's surface. */
static RwSection
two_parts (double wood, double area, double centroid, double inertia, double board, double width)
{
  double ea = wood * area, eb = board * width * 5;
  double middle = (ea * (centroid + 5) + eb * 2.5) / (ea + eb);
  double lower = centroid + 5 - middle, upper = middle - 2.5;

  return (RwSection){ wood * inertia + ea * lower * lower + board * width * 125 / 12 + eb * upper * upper, middle };
}

static void
assert_section (const Neck *neck, RwSection wanted, double tolerance)
{
  RwSection section = rw_beam_section (&neck->beam, 200, FALSE);

  expected_near ("centroid", section.centroid, wanted.centroid, tolerance * wanted.centroid);
  expected_near ("EI", section.ei, wanted.ei * 1000, tolerance * wanted.ei * 1000);
}

/* Wood and board of one kind, 45 by 25 mm: EI = E b h^3/12, centroid in the middle. */
static void
test_solid (void)
{
  g_autofree Neck *neck = neck_new ("maple_hard", 45, (RwQuadrant){ 1, 1.0 / 2, 1.0 / 3 });

  assert_section (neck, (RwSection){ 12.6 * 45 * 25 * 25 * 25 / 12, 12.5 }, 1e-9);
}

/* Moduli: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190, 2010: sugar maple 12.6, African ebony
 * 17.7 GPa. */
static void
test_boards (void)
{
  g_autofree Neck *box = neck_new ("ebony_african", 45, (RwQuadrant){ 1, 1.0 / 2, 1.0 / 3 });
  g_autofree Neck *round = neck_new ("ebony_african", 46, rw_profile_quadrant (2));

  assert_section (box, two_parts (12.6, 45 * 20, 10, 45 * 20 * 20 * 20 / 12.0, 17.7, 45), 1e-9);
  assert_section (round, two_parts (12.6, AREA, CENTROID, INERTIA, 17.7, 46), 1e-4);
}

/* A channel 6 by 10 mm under the glue line takes away what a solid bar of the wood would add. */
static void
test_channel (void)
{
  g_autofree Neck *neck = neck_new ("maple_hard", 45, (RwQuadrant){ 1, 1.0 / 2, 1.0 / 3 });
  RwSection section;
  double area = 45 * 25 - 60, middle = (45 * 25 * 12.5 - 60 * 10) / area;
  double inertia = 45 * 25 * 25 * 25 / 12.0 + 45 * 25 * (12.5 - middle) * (12.5 - middle)
                   - 6 * 10 * 10 * 10 / 12.0 - 60 * (10 - middle) * (10 - middle);

  neck->design.neck_rod_width = 6;
  neck->design.neck_rod_depth = 10;
  section = rw_beam_section (&neck->beam, 200, TRUE);
  expected_near ("centroid", section.centroid, middle, 1e-9);
  expected_near ("EI", section.ei, 12600 * inertia, 1e-9 * 12600 * inertia);
}

/* A constant moment M over a neck alike all along: relief M l^2/(8 EI).  J. Gere & B. Goodno, Mechanics of
 * Materials, deflection of beams.  What is neglected, the pull's own bending of the bent neck, is sec(l/2
 * sqrt(P/EI)) - 1 over (l/2)^2 P/(2 EI) - 1: about one per cent for 300 N over 480 mm. */
static void
test_relief (void)
{
  g_autofree Neck *neck = neck_new ("ebony_african", 46, rw_profile_quadrant (2));
  double length = 480;

  neck->design.neck_rod_present = RW_NO;
  neck->design.neck_section = 2;
  neck->design.nut_string_height = 3;
  neck->model.tension[1] = 300;
  for (int n = 0; n <= RW_FRETS_MAX; n++)
    neck->result.plan.fret_x[n] = 650 * (1 - exp2 (-n / 12.0));
  rw_beam_bend (&neck->beam, &neck->model, length, 0, 3);
  RwSection section = rw_beam_section (&neck->beam, 200, FALSE);
  double moment = 300 * (3 + section.centroid), relief = moment * length * length / (8 * section.ei);
  double half = length / 2 * sqrt (300 / section.ei);

  expected_near ("relief", rw_beam_relief (&neck->beam, 0), relief, 1e-6 * relief);
  expected_near ("neck's end", rw_beam_lift (&neck->beam, 0, 0), 4 * relief, 1e-6 * relief);
  expected_near ("neglected", (1 / cos (half) - 1) / (half * half / 2), 1.012, 0.003);
}

/* A neck that tapers: 30 to 46 mm wide, wood 15 to 20 mm deep under half an ellipse over 480 mm, board 5 mm, pull of
 * 300 N 3 mm over it.  In maple of 12.6 GPa with a board of 15 it bends by 0.3225 mm (worked by strips apart from
 * the program), in cherry of 10.3 with one of 12.3 by 12.6/10.3 as much: the boards' shares of the wood differ by
 * 0.3 %, so 0.5 %. */
static void
test_taper (void)
{
  g_autofree Neck *neck = neck_new ("oak_white", 30, rw_profile_quadrant (2));
  RwPlan *plan = &neck->result.plan;
  double length = 480, spread = (46 - 30) / length * 650 / 2;

  g_assert_true (rw_design_read (&neck->design, RW_P_neck_wood, "cherry_black", RW_STYLE_FILE, NULL));
  *plan = (RwPlan){ .strings = 2, .full = 2, .length = 650, .edge_margin = 5 };
  for (int i = 1; i <= 2; i++)
    {
      plan->nut_y[i] = i == 1 ? 10 : -10;
      plan->bridge_y[i] = i == 1 ? 10 + spread : -10 - spread;
      neck->model.tension[i] = 150;
    }
  for (int n = 0; n <= RW_FRETS_MAX; n++)
    plan->fret_x[n] = 650 * (1 - exp2 (-n / 12.0));
  neck->design.neck_rod_present = RW_NO;
  neck->design.neck_section = 2;
  neck->design.nut_string_height = 3;
  neck->design.neck_thickness_first = 20 + 5 * plan->fret_x[1] / length;
  neck->design.neck_thickness_last = 25;
  rw_beam_bend (&neck->beam, &neck->model, length, 0, 3);
  expected_near ("relief", rw_beam_relief (&neck->beam, 0), 0.3225 * 12.6 / 10.3, 0.005 * 0.3225);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/beam/half-ellipse", test_half_ellipse);
  g_test_add_func ("/beam/triangle", test_triangle);
  g_test_add_func ("/beam/solid", test_solid);
  g_test_add_func ("/beam/boards", test_boards);
  g_test_add_func ("/beam/channel", test_channel);
  g_test_add_func ("/beam/relief", test_relief);
  g_test_add_func ("/beam/taper", test_taper);
  return g_test_run ();
}
