/* Temperaments, and slots of each string's own for them. */
#include "study/temperament.h"

#include <math.h>

#include "model/slots.h"
#include "study/study.h"
#include "expected.h"

#define STANDS "scale.length=666.75|strings.set=D4 0.254 p; B3 0.305 p; G3 0.33 p; D3 0.559 w 0.305; G4 0.254 p short|"
#define JUST "frets.temperament=11.73; 3.91; 15.64; -13.69; -1.96; -9.78; 1.96; 13.69; -15.64; 17.6; -11.73|"

static const char *
in_english (const char *english)
{
  return english;
}

/* Meantone has pure thirds and fifths of 696.578 cents; Pythagorean thirds stand 21.506 cents over pure
 * ones: the comma 81/80. */
static void
test_named (void)
{
  RwCentsList equal = rw_temperament_steps (&rw_temperaments[0]);
  RwCentsList meantone = rw_temperament_steps (&rw_temperaments[2]);
  RwCentsList pythagorean = rw_temperament_steps (&rw_temperaments[3]);

  for (int i = 0; i < equal.count; i++)
    expected_near ("equal", equal.at[i], 0, 0);
  expected_near ("meantone third", meantone.at[3], -13.686, 0.006);
  expected_near ("meantone fifth", meantone.at[6], -3.422, 0.006);
  expected_near ("Pythagorean third", pythagorean.at[3], -13.686 + 21.506, 0.006);
  for (int t = 0; t < rw_temperaments_count; t++)
    for (int tone = 1; tone < RW_TONES; tone++)
      g_assert_cmpfloat (rw_temperaments[t].ratios[tone], >, rw_temperaments[t].ratios[tone - 1]);
}

/* A list knows which temperament it was filled from. */
static void
test_known_again (void)
{
  RwCentsList none = { .count = 1 };

  g_assert_cmpint (rw_temperament_of (&none), ==, 0);
  for (int t = 0; t < rw_temperaments_count; t++)
    {
      RwCentsList steps = rw_temperament_steps (&rw_temperaments[t]);

      g_assert_cmpint (rw_temperament_of (&steps), ==, t);
      steps.at[4] += 0.5;
      g_assert_cmpint (rw_temperament_of (&steps), ==, -1);
    }
}

/* In equal steps every string has its slot at the fret, in one piece. */
static void
test_equal_slots (void)
{
  g_autoptr (Built) built = built_new (STANDS "frets.slots=own");
  RwSlotPiece pieces[RW_STRINGS_MAX];

  for (int n = 1; n <= 19; n++)
    {
      g_assert_cmpint (rw_slot_pieces (&built->result, n, pieces), ==, 1);
      for (int i = 1; i <= (n > 5 ? 5 : 4); i++)
        expected_near ("slot", rw_slot_place (&built->result, i, n), 666.75 * (1 - exp2 (-n / 12.0)), 1e-9);
    }
}

/* A just scale in G on 666.75 mm.  The third string is the keynote: fret 4 is a pure third, fret 7 a pure
 * fifth.  The second string is a pure third already: its fret 3, the fifth, is 6/5 above it.  The list has
 * hundredths of a cent: 0.002 mm. */
static void
test_just_slots (void)
{
  g_autoptr (Built) built = built_new (STANDS JUST "frets.slots=own|frets.key=G");
  double start = built->result.plan.fret_x[5];

  expected_near ("third", built_value (built, "frets.slot[3][4]"), 666.75 * (1 - 4.0 / 5), 0.003);
  expected_near ("fifth", built_value (built, "frets.slot[3][7]"), 666.75 * (1 - 2.0 / 3), 0.003);
  expected_near ("over the third", built_value (built, "frets.slot[2][3]"), 666.75 * (1 - 5.0 / 6), 0.005);
  expected_near ("octave", built_value (built, "frets.slot[1][12]"), 666.75 / 2, 1e-9);
  /* The short string sounds the keynote from fret 5; its fret 9 is a pure third over that. */
  expected_near ("short", built_value (built, "frets.slot[5][9]"), start + (666.75 - start) / 5, 0.003);
  g_assert_true (isnan (built->result.value[RW_FRETS_POSITION + 4]));
}

/* The same interval stands at the same fret of the keynote's string, whichever the keynote. */
static void
test_keynote (void)
{
  g_autoptr (Built) d = built_new (STANDS JUST "frets.slots=own|frets.key=D");

  expected_near ("third on D", built_value (d, "frets.slot[1][4]"), 666.75 * (1 - 4.0 / 5), 0.003);
  expected_near ("third an octave down", built_value (d, "frets.slot[4][4]"), 666.75 * (1 - 4.0 / 5), 0.003);
}

/* Fret 2 in G: from D to E, a pure fifth to a pure sixth, 10/9; from B to C sharp, 5/4 to 45/32, and from G to A,
 * 9/8: three pieces from treble to bass, the outer two alike.  They meet halfway between strings and end at the
 * edges. */
static void
test_pieces (void)
{
  g_autoptr (Built) built = built_new (STANDS JUST "frets.slots=own|frets.key=G");
  RwSlotPiece pieces[RW_STRINGS_MAX];
  double bass, treble, under;

  g_assert_cmpint (rw_slot_pieces (&built->result, 2, pieces), ==, 3);
  expected_near ("first", pieces[0].place, 666.75 / 10, 0.005);
  expected_near ("second", pieces[1].place, 666.75 / 9, 0.005);
  g_assert_true (pieces[1].first == 2 && pieces[1].last == 3);
  rw_slot_shares (&built->result, &pieces[0], &bass, &treble);
  rw_slot_shares (&built->result, &pieces[1], &under, &treble);
  expected_near ("they meet", treble, bass, 0.01); /* the strings fan a little from one place to the other */
  rw_slot_shares (&built->result, &pieces[2], &bass, &treble);
  expected_near ("edge", bass, 0, 0);
}

/* Notes that stand where they are wanted sound no better and no worse for it: by definition. */
static void
test_pitch (void)
{
  g_autoptr (Built) equal = built_new (STANDS);
  g_autoptr (Built) own = built_new (STANDS JUST "frets.slots=own");

  expected_near ("string 3, fret 4", built_value (own, "setup.cents[3][4]"),
                 built_value (equal, "setup.cents[3][4]"), 0.1);
  expected_near ("string 2, fret 3", built_value (own, "setup.cents[2][3]"),
                 built_value (equal, "setup.cents[2][3]"), 0.1);
}

/* Against equal steps: a pure third 13.69 cents low, so nearer the nut by the difference of two lengths. */
static void
test_study (void)
{
  g_autoptr (Built) across = built_new (STANDS JUST);
  g_autoptr (Built) own = built_new (STANDS JUST "frets.slots=own");
  g_autoptr (RwStudy) one = rw_study_new (RW_STUDY_TEMPERAMENT, &across->result, in_english);
  g_autoptr (RwStudy) each = rw_study_new (RW_STUDY_TEMPERAMENT, &own->result, in_english);

  g_assert_cmpuint (one->columns->len, ==, 3);
  g_assert_cmpuint (each->columns->len, ==, 12); /* the first and the fourth are alike */
  expected_near ("cents", rw_study_column_at (one, 0)->values[3], -13.69, 1e-9);
  expected_near ("mm", rw_study_column_at (one, 1)->values[3], 666.75 * (exp2 (-4 / 12.0) - 4.0 / 5), 0.003);
  expected_near ("third string", rw_study_column_at (each, 6)->values[3], -13.69, 1e-9);
  g_assert_true (isnan (rw_study_column_at (each, 9)->values[4]));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/temperament/named", test_named);
  g_test_add_func ("/temperament/known-again", test_known_again);
  g_test_add_func ("/temperament/equal-slots", test_equal_slots);
  g_test_add_func ("/temperament/just-slots", test_just_slots);
  g_test_add_func ("/temperament/keynote", test_keynote);
  g_test_add_func ("/temperament/pieces", test_pieces);
  g_test_add_func ("/temperament/pitch", test_pitch);
  g_test_add_func ("/temperament/study", test_study);
  return g_test_run ();
}
