/* Stress, stiffness and tightening: strings and hooks against published figures. */
#include <math.h>

#include "table/wire.h"

#include "expected.h"

#define SCALE "scale.length=666.75|strings.modulus=200|strings.set="
#define OTHERS "; B3 0.3048 p; G3 0.4064 p; G4 0.254 p short"
#define FIVE SCALE "D4 0.254 p" OTHERS

static const Expected rows[] = {
  /* sigma = rho (2 f L)^2 of steel at 7850 kg/m3, whatever the gauge; by hand, to 0.1 MPa. */
  { "stress/d4", FIVE, "strings.stress[1]", 1203.8, 0.06 },
  { "stress/b3", FIVE, "strings.stress[2]", 851.2, 0.06 },
  { "stress/g3", FIVE, "strings.stress[3]", 536.2, 0.06 },
  { "stress/d4-light", SCALE "D4 0.2286 p" OTHERS, "strings.stress[1]", 1203.8, 0.06 },
  /* B = pi^2 E I/(T L^2) by hand, to 0.1 %; formula of H. Fletcher, JASA 36 (1964) 203. */
  { "stiffness/d4", FIVE, "strings.stiffness[1]", 14.873, 0.015 },
  { "stiffness/b3", FIVE, "strings.stiffness[2]", 30.288, 0.03 },
  { "stiffness/g3", FIVE, "strings.stiffness[3]", 85.474, 0.085 },
  { "stiffness/g3-light", SCALE "G3 0.3302 p" OTHERS, "strings.stiffness[1]", 56.426, 0.056 },
  { "stiffness/g4-short", FIVE, "strings.stiffness[4]", 26.500, 0.026 },
  /* Partial 10 of that D string. */
  { "partial/d4", FIVE, "strings.partial_10[1]", 1.27, 0.006 },

  /* Least strength of music wire at .010 in, near 2.7 GPa: ASTM A228, from memory.  1203.8 MPa of it. */
  { "strength/d4", FIVE, "strings.strength_share[1]", 100 * 1203.8 / 2700, 0.5 },

  /* 219.4 N on an 8-32 nut with K = 0.2: 0.183 N m; 0.30 black and 0.12 greased, Shigley's Mechanical
   * Engineering Design, table 8-15.  Load of the 24 hooks of an 11 in head at 6000 N/m. */
  { "torque/plain", "rim.outer_diameter=279.4|rim.crest_inset=0|hooks.count=24", "hooks.torque", 183, 1.8 },
  { "torque/black", "rim.outer_diameter=279.4|rim.crest_inset=0|hooks.count=24", "hooks.torque_high", 274, 2.7 },
  { "torque/greased", "rim.outer_diameter=279.4|rim.crest_inset=0|hooks.count=24", "hooks.torque_low", 109.7, 1.1 },
};

/* What a clamped end takes off a string, sqrt (E I/T): 0.818, 1.168 and 1.962 mm by hand, to 0.001 mm.  B is its square
 * over that of the length, times pi^2. */
static void
test_ends (void)
{
  static const double ends[] = { 0.818, 1.168, 1.962 };
  g_autoptr (Built) built = built_new (FIVE);

  for (int i = 1; i <= 3; i++)
    expected_near ("end", sqrt (1e-6 * built->result.value[RW_STRINGS_STIFFNESS + i]) / G_PI * 666.75, ends[i - 1], 0.001);
}

/* R. W. Young, JASA 24 (1952) 267: a partial is sharp by 3.4e13 n^2 d^2/(f^2 l^4) cents, d and l in cm,
 * with E/rho of 25.5e10 cm2/s2; 0.5 %.  In inches the constant is 5.3e12, 1 %. */
static void
test_young (void)
{
  double rho = 7850, modulus = 25.5e6 * rho * 1e-9; /* GPa */
  g_autofree char *changes = g_strdup_printf ("scale.length=650|strings.modulus=%.12g|"
                                              "strings.set=220 0.5 p; B3 0.3 p; G3 0.3 p", modulus);
  g_autoptr (Built) built = built_new (changes);
  double b = built_value (built, "strings.stiffness[1]") * 1e-6;
  double cents = 1200 / log (2) / 2 * b; /* per n^2, small */
  double cm = 3.4e13 * 0.05 * 0.05 / (220.0 * 220 * pow (65, 4));
  double inches = 5.3e12 * pow (0.05 / 2.54, 2) / (220.0 * 220 * pow (65 / 2.54, 4));

  expected_near ("against centimetres", cents / cm, 1, 0.005);
  expected_near ("against inches", cents / inches, 1, 0.01);
}

/* A string shortened at its tension is stiffer by the square of the lengths: from fret 12 to fret 21,
 * 2^(18/12) = 2.83.  J. A. Kemp, SN Applied Sciences 2 (2020) 636, measured 100 cents at partial 10 and at
 * partial 6 of a bass string: 100/36 to 100/100 = 2.78; 5 %. */
static void
test_kemp (void)
{
  /* The short string of a set begins at the fret in question, in tune with the full string there. */
  g_autoptr (Built) low = built_new (SCALE "D4 0.254 p; D4 0.254 p; D5 0.254 p short|fifth.start_fret=12");
  g_autoptr (Built) third = built_new (SCALE "D4 0.254 p; D4 0.254 p; F4 0.254 p short|fifth.start_fret=3");
  double full = built_value (low, "strings.stiffness[1]");

  expected_near ("at the octave", built_value (low, "strings.stiffness[3]") / full, 4, 1e-9);
  expected_near ("three frets up", built_value (third, "strings.stiffness[3]") / full, sqrt (2), 1e-9);
  expected_near ("Kemp", pow (sqrt (2), 3), 2.78, 0.05 * 2.78);
}

/* Ten lubricated bolts tightened alike: Shigley's Mechanical Engineering Design, table 8-14, kN. */
static void
test_scatter (void)
{
  static const double loads[] = { 30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5 };
  g_autoptr (Built) built = built_new ("");
  double mean = 0, squares = 0;

  for (gsize i = 0; i < G_N_ELEMENTS (loads); i++)
    mean += loads[i] / 10;
  for (gsize i = 0; i < G_N_ELEMENTS (loads); i++)
    squares += (loads[i] - mean) * (loads[i] - mean);
  double share = sqrt (squares / 9) / mean, load = built_value (built, "head.load_per_hook");

  expected_near ("mean", mean, 34.18, 0.01);
  expected_near ("least", built_value (built, "hooks.load_low"), load * (1 - 2 * share), 0.001 * load);
  expected_near ("most", built_value (built, "hooks.load_high"), load * (1 + 2 * share), 0.001 * load);
}

/* Nylon and gut: by their density, modulus and strength. */
static void
test_nylon (void)
{
  g_autoptr (Built) built = built_new (SCALE "D4 0.48 p nylon; B3 0.6 p gut; G3 0.6 p gut");
  double speed = 2 * 293.6648 * 0.66675, stress = 1140 * speed * speed * 1e-6;

  expected_near ("stress", built_value (built, "strings.stress[1]"), stress, 1e-3);
  expected_near ("share", built_value (built, "strings.strength_share[1]"), stress / 500 * 100, 1e-3);
  expected_near ("modulus", rw_wire_modulus (RW_WIRE_NYLON, 200), 4, 0);
  expected_near ("gut", rw_wire_strength (RW_WIRE_GUT, 0.6), 350, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  expected_add ("/wire", rows, G_N_ELEMENTS (rows));
  g_test_add_func ("/wire/ends", test_ends);
  g_test_add_func ("/wire/young", test_young);
  g_test_add_func ("/wire/kemp", test_kemp);
  g_test_add_func ("/wire/scatter", test_scatter);
  g_test_add_func ("/wire/nylon", test_nylon);
  return g_test_run ();
}
