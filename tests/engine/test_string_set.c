#include <string.h>

#include "table/param.h"

static gboolean
read_set (RwDesign *design, const char *text, RwStyle style, GError **error)
{
  rw_design_init (design);
  return rw_design_read (design, RW_P_strings_set, text, style, error);
}

static void
test_initial (void)
{
  RwDesign           design;
  const RwStringSet *set = &design.strings_set;

  rw_design_init (&design);
  g_assert_cmpint (set->count, ==, 5);
  g_assert_cmpstr (set->at[0].note, ==, "D4");
  g_assert_cmpfloat (set->at[0].outer_mm, ==, 0.254);
  g_assert_cmpfloat (set->at[0].core_mm, ==, 0);
  g_assert_cmpfloat (set->at[3].core_mm, ==, 0.305);
  g_assert_false (set->at[3].is_short);
  g_assert_true (set->at[4].is_short);
}

/* What is typed, and what it is written as. */
static void
test_written (void)
{
  static const struct
  {
    const char *typed, *written;
  } cases[] = {
    { "D4 0.254 p;B3 0.305 p;G3 0.33 p", "D4 0.254 p; B3 0.305 p; G3 0.33 p" },
    { "  d4   0.254 p ;\tb3 0.305 p;g3 0.33 p short", "D4 0.254 p; B3 0.305 p; G3 0.33 p short" },
    { "F♯4 0.254 p; B♭3 0.305 p; Eb3 0.33 p", "F#4 0.254 p; Bb3 0.305 p; Eb3 0.33 p" },
    { "D4 0.01in p; B3 0.02 in p; G3 0.04\" w 0.02 \"", "D4 0.254 p; B3 0.508 p; G3 1.016 w 0.508" },
    { "293.66 0.254 p; 246.94Hz 0.305 p; 196 0.33 p", "293.66 0.254 p; 246.94 0.305 p; 196 0.33 p" },
    { "D4 0.254 p; B3 0.305 p; G3 0.559 w 0.305 mass=1.5g/m rho=8.9g/cm3 short",
      "D4 0.254 p; B3 0.305 p; G3 0.559 w 0.305 short rho=8900 mass=0.0015" },
    { "D4 0.48 p nylon; B3 0.56 p gut; G3 0.6 w 0.4 rho=8900 nylon short",
      "D4 0.48 p nylon; B3 0.56 p gut; G3 0.6 w 0.4 short nylon rho=8900" },
    { "D4 0.254 p steel; B3 0.305 p; G3 0.33 p", "D4 0.254 p; B3 0.305 p; G3 0.33 p" },
    { " uke_nylon ", "A4 0.6096 p nylon; E4 0.8128 p nylon; C4 0.9144 p nylon; G4 0.6604 p nylon" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *text = NULL;
      RwDesign         design;

      g_assert_true (read_set (&design, cases[i].typed, RW_STYLE_FILE, NULL));
      text = rw_design_write (&design, RW_P_strings_set, RW_STYLE_FILE);
      g_assert_cmpstr (text, ==, cases[i].written);
    }
}

static void
test_unknown_name (void)
{
  g_autoptr (GError) error = NULL;
  RwDesign design;

  g_assert_false (read_set (&design, "five_ligth", RW_STYLE_FILE, &error));
  g_assert_true (g_str_has_prefix (error->message, "String set: “five_ligth” is none of the sets five_light, five_"));
}

static void
test_inches (void)
{
  const RwStyle    style = { RW_UNITS_FRACTION, '.' };
  RwDesign         design;
  g_autofree char *text = NULL;

  g_assert_true (read_set (&design, "D4 0.01 p; B3 0.012 p; G3 0.022 w 0.013", style, NULL));
  g_assert_cmpfloat_with_epsilon (design.strings_set.at[0].outer_mm, 0.254, 1e-12);
  g_assert_cmpfloat_with_epsilon (design.strings_set.at[2].core_mm, 0.3302, 1e-12);
  text = rw_design_write (&design, RW_P_strings_set, style);
  g_assert_cmpstr (text, ==, "D4 0.01 p; B3 0.012 p; G3 0.022 w 0.013");
}

/* Nothing of a longer note stays behind a shorter one. */
static void
test_memory (void)
{
  RwDesign one, other;

  g_assert_true (read_set (&one, "123.456789 0.2 p; F#4 0.2 p; C4 0.2 p", RW_STYLE_FILE, NULL));
  g_assert_true (rw_design_read (&one, RW_P_strings_set, "A4 0.2 p; B4 0.2 p; C4 0.2 p", RW_STYLE_FILE, NULL));
  g_assert_true (read_set (&other, "A4 0.2 p; B4 0.2 p; C4 0.2 p", RW_STYLE_FILE, NULL));
  g_assert_cmpmem (&one, sizeof one, &other, sizeof other);
}

static void
test_refused (void)
{
  static const struct
  {
    const char *text, *message;
  } cases[] = {
    { "", "String set: 0 items, but 3 to 8 are wanted" },
    { "D4 0.2 p; B3 0.2 p", "String set: 2 items, but 3 to 8 are wanted" },
    { "A4 1 p;A4 1 p;A4 1 p;A4 1 p;A4 1 p;A4 1 p;A4 1 p;A4 1 p;A4 1 p",
      "String set: 9 items, but 3 to 8 are wanted" },
    { "D4 0.2 p; ; G3 0.2 p", "String set: item 2 is empty" },
    { "D4 0.2 p; B3 0.2 p short; G3 0.2 p", "String set: string 2 is short, but only the last may be" },
    { "H4 0.2 p; B3 0.2 p; G3 0.2 p",
      "String set, string 1: “H4” is no note like D4, F#3 or Bb3, and no frequency" },
    { "D4 0.2 p; D9 0.2 p; G3 0.2 p",
      "String set, string 2: “D9” is no note like D4, F#3 or Bb3, and no frequency" },
    { "3 0.2 p; B3 0.2 p; G3 0.2 p", "String set, string 1: 3 Hz is outside 20 to 2000 Hz" },
    { "D4; B3 0.2 p; G3 0.2 p", "String set, string 1: a diameter is missing after “D4”" },
    { "D4 0.2 p; B3 0.2 p; G3 9 p", "String set, string 3: 9 mm is outside 0.1 to 3 mm" },
    { "D4 0.2 p; B3 x p; G3 0.2 p", "String set, string 2: “x” is not a number" },
    { "D4 0.2; B3 0.2 p; G3 0.2 p",
      "String set, string 1: after the diameter comes p for plain or w and the core, not “”" },
    { "D4 0.2 q; B3 0.2 p; G3 0.2 p",
      "String set, string 1: after the diameter comes p for plain or w and the core, not “q”" },
    { "D4 0.5 w; B3 0.2 p; G3 0.2 p", "String set, string 1: a diameter is missing after “w”" },
    { "D4 0.5 w 0.5; B3 0.2 p; G3 0.2 p", "String set, string 1: the core of “D4” is as thick as the string" },
    { "D4 0.5 w 0; B3 0.2 p; G3 0.2 p", "String set, string 1: 0 mm is outside 0.05 to 3 mm" },
    { "D4 0.2 p long; B3 0.2 p; G3 0.2 p",
      "String set, string 1: “long” is none of short, nylon, gut, rho= and mass=" },
    { "D4 0.2 p rho=8000; B3 0.2 p; G3 0.2 p",
      "String set, string 1: “rho=8000” is for the wrap of a wound string" },
    { "D4 0.2 p mass=1; B3 0.2 p; G3 0.2 p", "String set, string 1: 1 kg/m is outside 1e-05 to 0.05 kg/m" },
    { "D4 0.2 p mass=; B3 0.2 p; G3 0.2 p", "String set, string 1: A number is missing at the end" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GError) error = NULL;
      RwDesign           design, initial;

      rw_design_init (&initial);
      g_assert_false (read_set (&design, cases[i].text, RW_STYLE_FILE, &error));
      g_assert_cmpstr (error->message, ==, cases[i].message);
      g_assert_true (rw_design_same (&design, &initial, RW_P_strings_set));
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/string-set/initial", test_initial);
  g_test_add_func ("/string-set/written", test_written);
  g_test_add_func ("/string-set/inches", test_inches);
  g_test_add_func ("/string-set/memory", test_memory);
  g_test_add_func ("/string-set/refused", test_refused);
  g_test_add_func ("/string-set/unknown-name", test_unknown_name);
  return g_test_run ();
}
