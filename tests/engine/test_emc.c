/* Moisture of wood in air, and how far it moves. */
#include "expected.h"

/* The table of equilibrium moisture in the Wood Handbook (Forest Products Laboratory, FPL-GTR-190, 2010),
 * Table 4-2, which gives one decimal; the equation meets it to 0.06 in these rooms. */
#define AT(celsius, humidity) \
  "setup.temperature=" celsius "|setup.humidity_low=" humidity, "move.moisture_low"

/* 20 degrees, 35 to 65 % humidity: 6.96 to 12.00 % moisture. */
#define DAMPER "setup.humidity_shop=35|setup.humidity_high=65|"

static const Expected points[] = {
  { "50F-65", AT ("10", "65"), 12.3, 0.06 },
  { "70F-20", AT ("21.1111", "20"), 4.5, 0.06 },
  { "70F-30", AT ("21.1111", "30"), 6.2, 0.06 },
  { "70F-50", AT ("21.1111", "50"), 9.2, 0.06 },
  { "70F-65", AT ("21.1111", "65"), 12.0, 0.06 },
  { "70F-80", AT ("21.1111", "80"), 16.0, 0.06 },
  { "90F-80", AT ("32.2222", "80"), 15.4, 0.06 },
  { "65F-60", AT ("18.3333", "60"), 11.1, 0.06 },
  { "65F-30", AT ("18.3333", "30"), 6.2, 0.06 },
  { "20C-35", AT ("20", "35"), 6.96, 0.006 },
  { "20C-65", "setup.humidity_high=65", "move.moisture_high", 12.00, 0.006 },
  /* 45 mm of sugar maple, flat-sawn (0.00353 for each percent, Wood Handbook, Table 13-5). */
  { "board", DAMPER "neck.board_wood=maple_hard|@neck.width_at_rim=45",
    "move.board_width_high", 0.80, 0.006 },
  /* A wall of 20 mm of the same, across the grain, by the same change of 5.04 %. */
  { "wall", DAMPER "rim.wall=20|rim.course_wood=maple_hard; maple_hard; maple_hard", "move.rim_wall_high",
    20 * 0.00353 * 5.04, 0.001 },
  { "fret-ends", "setup.humidity_low=20|frets.end_inset=0|neck.board_wood=maple_hard|@neck.width_at_rim=45|"
                 "setup.temperature=21.1111|setup.humidity_shop=50",
    "move.fret_end", 45 * 0.00353 * (9.24 - 4.49) / 2, 0.002 },
};

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  expected_add ("/moisture", points, G_N_ELEMENTS (points));
  return g_test_run ();
}
