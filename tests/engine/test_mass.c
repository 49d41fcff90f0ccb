/* What the parts weigh, against sums by hand. */
#include "model/mass.h"

#include "built.h"
#include "expected.h"

static RwMass
part (const Built *built, RwMassPart which)
{
  RwMass parts[RW_MASS_COUNT];

  rw_masses (&built->result, parts);
  return parts[which];
}

/* Volumes by hand, mm3, times the densities of steel 7850, free-cutting brass 8490 and sugar maple 1120 x 0.63 =
 * 705.6 kg/m3 (USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190, 2010, table 5-3). */
static void
test_parts (void)
{
  g_autoptr (Built) rods = built_new ("rim.outer_diameter=280|joint.rod_diameter=6|joint.rod_count=2|bridge.mass=2.5|"
                                      "hooks.count=10|hooks.rod=4|hooks.nut_height=10|@hooks.leg=50|hooks.claw=8|"
                                      "hooks.bend_radius=2|hooks.k_factor=0.5");
  g_autoptr (Built) stick = built_new ("rim.outer_diameter=280|joint.kind=stick|joint.stick_section=20");
  /* Straights 50 - 4 and 8 - 4, a quarter turn of the middle line at 2 + 2: 46 + 4 + 2 pi = 56.2832 mm. */
  double hook = 7850e-6 * G_PI * 4 * 56.28318530718, nut = 8490e-6 * G_PI * (16 - 4) * 10;

  expected_near ("rods", part (rods, RW_MASS_JOINT).grams, 2 * G_PI * 9 * 280 * 7850e-6, 1e-9);
  expected_near ("stick", part (stick, RW_MASS_JOINT).grams, 20 * 20 * 280 * 705.6e-6, 1e-9);
  expected_near ("hooks", part (rods, RW_MASS_HOOKS).grams, 10 * (hook + nut), 1e-6);
  expected_near ("bridge", part (rods, RW_MASS_BRIDGE).grams, 2.5, 1e-12);
}

/* A board as wide at its end as at the nut, 40 by 5 mm of pear, 690 kg/m3; a head of 0.25 mm film in a band of
 * 4 by 4 mm aluminium. */
static void
test_board_and_head (void)
{
  g_autoptr (Built) built = built_new ("strings.set=D4 0.25 p; B3 0.3 p; G3 0.33 p; D3 0.56 w 0.3|nut.width=40|"
                                       "nut.edge_margin=2|bridge.spread=36|fretboard.thickness=5|"
                                       "rim.outer_diameter=278|rim.crest_inset=0|head.collar=10|head.nominal=280");
  double length = built_value (built, "neck.board_length");
  double film = G_PI * 139 * 139 + 2 * G_PI * 139 * 10;
  RwMass board = part (built, RW_MASS_BOARD);

  expected_near ("board", board.grams, 40 * 5 * length * 690e-6, 1e-9);
  expected_near ("its middle", board.x, length / 2, 1e-9);
  expected_near ("head", part (built, RW_MASS_HEAD).grams,
                 film * 0.25 * 1390e-6 + G_PI * 284 * 16 * 2710e-6, 1e-9);
}

/* A cylinder of half an ellipse: the carved neck up to the heel, no rod.  Area pi w d/4 for the width w. */
static void
test_neck (void)
{
  g_autoptr (Built) built = built_new ("strings.set=D4 0.25 p; B3 0.3 p; G3 0.33 p; D3 0.56 w 0.3|nut.width=40|"
                                       "nut.edge_margin=2|bridge.spread=36|fretboard.thickness=5|neck.rod_present=no|"
                                       "neck.thickness_first=25|neck.thickness_last=25|neck.section=2|"
                                       "joint.heel_depth=65|joint.heel_cap_width=20");
  double to_rim = built_value (built, "neck.nut_to_rim"), start = to_rim - 55, heel = 0, moment = 0;
  double round = 40 * 20 * G_PI / 4;
  const int slices = 100000;

  /* Depth 20 + 40 t^2, filled pi/4 going over to (1 + 20/40)/2, by the midpoint rule. */
  for (int i = 0; i < slices; i++)
    {
      double t = (i + 0.5) / slices, slice = 55.0 / slices;
      double area = 40 * (20 + 40 * t * t) * (G_PI / 4 + t * (0.75 - G_PI / 4));

      heel += area * slice;
      moment += area * slice * (start + 55 * t);
    }
  RwMass neck = part (built, RW_MASS_NECK);
  expected_near ("neck", neck.grams, (round * start + heel) * 705.6e-6, 1e-5);
  expected_near ("its middle", neck.x, (round * start * start / 2 + moment) / (round * start + heel), 1e-5);
}

/* The whole is its parts and balances where their moments do. */
static void
test_whole (void)
{
  g_autoptr (Built) built = built_new ("rim.tone_ring_rod=6");
  RwMass parts[RW_MASS_COUNT];
  double sum = 0, moment = 0;

  rw_masses (&built->result, parts);
  for (int i = 0; i < RW_MASS_COUNT; i++)
    {
      g_assert_cmpfloat (parts[i].grams, >, 0);
      sum += parts[i].grams;
      moment += parts[i].grams * parts[i].x;
    }
  expected_near ("mass.total", built_value (built, "mass.total"), sum, 1e-9);
  expected_near ("mass.balance", built_value (built, "mass.balance"), moment / sum, 1e-9);
  expected_near ("pot and neck", built_value (built, "mass.pot") + built_value (built, "mass.neck"),
                 sum - parts[RW_MASS_STRINGS].grams, 1e-9);
  /* Home-made open backs weigh 1.8 to 3.2 kg and balance near the rim's face: common practice, no source. */
  expected_near ("kg", sum / 1000, 2.5, 0.7);
  expected_near ("from the rim's face", moment / sum - built_value (built, "neck.nut_to_rim"), 0, 60);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/mass/parts", test_parts);
  g_test_add_func ("/mass/board-and-head", test_board_and_head);
  g_test_add_func ("/mass/neck", test_neck);
  g_test_add_func ("/mass/whole", test_whole);
  return g_test_run ();
}
