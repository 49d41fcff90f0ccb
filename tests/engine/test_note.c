#include <math.h>

#include "table/note.h"

/* Worked out from the definition, f = 440 * 2^(n/12), to four digits after the point: half of the last one. */
#define HERTZ 0.00005

static const struct
{
  const char *note;
  double      hertz;
} notes[] = {
  { "C3", 130.8128 }, { "D3", 146.8324 },  { "F#3", 184.9972 }, { "G3", 195.9977 },  { "A3", 220 },
  { "B3", 246.9417 }, { "C4", 261.6256 },  { "D4", 293.6648 },  { "F#4", 369.9944 }, { "G4", 391.9954 },
  { "A4", 440 },      { "Gb4", 369.9944 }, { "F♯4", 369.9944 }, { "G♭4", 369.9944 }, { "d4", 293.6648 },
};

static void
test_frequencies (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (notes); i++)
    g_assert_cmpfloat_with_epsilon (rw_note_frequency (notes[i].note, 440), notes[i].hertz, HERTZ);
}

static void
test_octaves (void)
{
  g_assert_cmpfloat_with_epsilon (rw_note_frequency ("A0", 440), 27.5, 1e-12);
  g_assert_cmpfloat_with_epsilon (rw_note_frequency ("A8", 440), 7040, 1e-9);
  g_assert_cmpfloat (rw_note_frequency ("B#3", 440), ==, rw_note_frequency ("C4", 440));
  g_assert_cmpfloat (rw_note_frequency ("Cb4", 440), ==, rw_note_frequency ("B3", 440));
}

static void
test_reference (void)
{
  g_assert_cmpfloat_with_epsilon (rw_note_frequency ("A3", 432), 216, 1e-12);
  g_assert_cmpfloat (rw_note_frequency ("146.83", 432), ==, 146.83);
}

static void
test_refused (void)
{
  static const char *const bad[] = {
    "", "H4", "D", "D9", "D44", "D#b4", "D##4", "4D", "-5", "0x10", "1e", "nan", "D4 ",
  };

  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    g_assert_true (isnan (rw_note_frequency (bad[i], 440)));
}

static void
test_names (void)
{
  static const struct
  {
    const char *note, *name;
  } cases[] = {
    { "d4", "D4" },   { "f♯3", "F#3" },   { "B♭3", "Bb3" },
    { "bb3", "Bb3" }, { "146.83", NULL }, { "x", NULL },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *name = rw_note_name (cases[i].note);

      g_assert_cmpstr (name, ==, cases[i].name);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/note/frequencies", test_frequencies);
  g_test_add_func ("/note/octaves", test_octaves);
  g_test_add_func ("/note/reference", test_reference);
  g_test_add_func ("/note/refused", test_refused);
  g_test_add_func ("/note/names", test_names);
  return g_test_run ();
}
