/* Fret places against equal temperament worked out another way. */
#include <math.h>

#include "expected.h"

#define SCALE "scale.length=666.75|frets.count=24"

/* 26 1/4 in scale, worked from the law in G. Byers, "Classic guitar intonation", American Lutherie 47 (1996),
 * to 0.001 mm. */
static const Expected places[] = {
  { "1", SCALE, "frets.position[1]", 37.422, 0.0006 },
  { "2", SCALE, "frets.position[2]", 72.743, 0.0006 },
  { "3", SCALE, "frets.position[3]", 106.082, 0.0006 },
  { "4", SCALE, "frets.position[4]", 137.550, 0.0006 },
  { "5", SCALE, "frets.position[5]", 167.252, 0.0006 },
  { "7", SCALE, "frets.position[7]", 221.748, 0.0006 },
  { "10", SCALE, "frets.position[10]", 292.549, 0.0006 },
  { "12", SCALE, "frets.position[12]", 333.375, 1e-9 },
  { "15", SCALE, "frets.position[15]", 386.416, 0.0006 },
  { "17", SCALE, "frets.position[17]", 417.001, 0.0006 },
  { "19", SCALE, "frets.position[19]", 444.249, 0.0006 },
  { "22", SCALE, "frets.position[22]", 479.650, 0.0006 },
  { "24", SCALE, "frets.position[24]", 500.0625, 1e-9 },
  { "line-of-fretless", "scale.length=666.75|frets.count=0", "frets.position[24]", 500.0625, 1e-9 },
  /* Pure intervals on the same scale: the 4th step 5/4 of the nut's note, L/5, and the 7th 3/2, L/3;
   * 13.686 and 1.955 cents off equal temperament by definition. */
  { "pure-third", SCALE "|frets.temperament=0; 0; 0; -13.68628613516517; 0; 0; 1.955000865387433",
    "frets.position[4]", 133.350, 1e-9 },
  { "pure-fifth", SCALE "|frets.temperament=0; 0; 0; -13.68628613516517; 0; 0; 1.955000865387433",
    "frets.position[7]", 222.250, 1e-9 },
  { "pure-fifth-an-octave-up", SCALE "|frets.temperament=0; 0; 0; 0; 0; 0; 1.955000865387433",
    "frets.position[19]", 666.75 * 2 / 3, 1e-9 },
  { "rule-of-18", SCALE "|frets.temperament=-1.0454", "frets.position[1]", 666.75 / 18, 0.0001 },
  /* The slot is 0.3 mm deeper than the tang; what is left of the board. */
  { "slot-depth", "frets.tang_depth=1.5", "frets.slot_depth", 1.8, 1e-12 },
  { "floor", "frets.tang_depth=1.5|fretboard.thickness=4.8", "frets.floor", 3.0, 1e-12 },
};

/* The divider of the shop: each step is what is left of the scale over 17.8171537451. */
static void
test_divider (void)
{
  const double lengths[] = { 330, 584, 650, 666.75, 818.5 };

  for (gsize i = 0; i < G_N_ELEMENTS (lengths); i++)
    {
      g_autofree char *changes = g_strdup_printf ("scale.length=%.2f|frets.count=30", lengths[i]);
      g_autoptr (Built) built = built_new (changes);
      double left = lengths[i];

      for (int n = 1; n <= 30; n++)
        {
          g_autofree char *id = g_strdup_printf ("frets.position[%d]", n);

          left -= left / 17.8171537451;
          expected_near (id, built_value (built, id), lengths[i] - left, 1e-7);
        }
    }
}

/* A board as wide at its end as at the nut has frets of one length, and wire for all of them and 6 mm
 * each. */
static void
test_wire (void)
{
  g_autoptr (Built) built = built_new ("strings.set=D4 0.25 p; B3 0.3 p; G3 0.33 p; D3 0.56 w 0.3|"
                                       "nut.width=40|nut.edge_margin=2|bridge.spread=36|frets.count=17|"
                                       "scale.square_to=strings");

  expected_near ("frets.length[1]", built_value (built, "frets.length[1]"), 39.4, 1e-9);
  expected_near ("frets.length[17]", built_value (built, "frets.length[17]"), 39.4, 1e-9);
  expected_near ("frets.wire_total", built_value (built, "frets.wire_total"), 17 * 45.4, 1e-8);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  expected_add ("/frets", places, G_N_ELEMENTS (places));
  g_test_add_func ("/frets/divider", test_divider);
  g_test_add_func ("/frets/wire", test_wire);
  return g_test_run ();
}
