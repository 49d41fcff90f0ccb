/* Pitch of fretted notes against a worked example.
 *
 * Scale 666.75 mm, nut 0.5 mm and bridge 5.5 mm over the crowns, 60 mm behind the nut and 90 mm behind the
 * bridge, steel of 200 GPa and 7850 kg/m3.  Figures worked out apart from the program, with exact
 * geometry, for strings that slip: stretch as in G. Byers, "Classic guitar intonation", American Lutherie
 * 47 (1996); stiffness by H. Fletcher, JASA 36 (1964) 203, pinned ends. */
#include "model/pitch.h"
#include "expected.h"

typedef struct
{
  const char *name;
  double diameter, hertz;
  double cents[7]; /* at the frets below */
  double set_back; /* makes fret 12 true; NaN where it was not worked out */
} Row;

static const int frets[] = { 1, 2, 5, 7, 12, 17, 22 };

/* The set-backs take their length from what lies behind the bridge. */
static const Row rows[] = {
  { "d4", 0.254, 293.6648, { 1.520, 1.479, 2.139, 2.744, 4.648, 7.178, 10.487 }, 1.775 },
  { "b3", 0.3048, 246.9417, { 2.149, 2.096, 3.042, 3.909, 6.644, 10.298, 15.117 }, NAN },
  { "g3-heavy", 0.4064, 195.9977, { 3.413, 3.338, 4.867, 6.265, 10.693, 16.647, 24.566 }, 4.040 },
  { "g3-light", 0.3302, 195.9977, { 3.410, 3.332, 4.848, 6.234, 10.619, 16.496, 24.281 }, NAN },
};

typedef struct
{
  RwDesign design;
  RwResult result;
  RwModel  model;
} Example;

static Example *
example_new (const Row *row)
{
  Example *example = g_new0 (Example, 1);
  RwPlan *plan = &example->result.plan;

  rw_design_init (&example->design);
  example->design.nut_string_height = 0.5;
  example->design.strings_modulus = 200;
  example->design.strings_slip = RW_YES;
  example->design.tailpiece_anchor = 90;
  example->design.strings_set.at[0] = (RwString){ .outer_mm = row->diameter };
  plan->strings = plan->full = 1;
  plan->length = 666.75;
  example->result.side.fret_plane = 5.5;
  example->model = (RwModel){ .d = &example->design, .r = &example->result };
  for (int n = 0; n <= RW_FRETS_MAX; n++)
    {
      plan->fret_x[n] = plan->length * (1 - exp2 (-n / 12.0));
      example->model.wanted[1][n] = 100 * n;
    }
  example->model.mass[1] = 7850 * G_PI * row->diameter * row->diameter * 1e-6 / 4;
  example->model.frequency[1] = row->hertz;
  example->model.after[1] = 60;
  return example;
}

/* 0.002 cent: the figures have three decimals, and frequencies were taken to five digits. */
static void
test_example (gconstpointer data)
{
  const Row *row = data;
  g_autofree Example *example = example_new (row);

  for (gsize i = 0; i < G_N_ELEMENTS (frets); i++)
    {
      g_autofree char *what = g_strdup_printf ("cents at fret %d", frets[i]);

      expected_near (what, rw_pitch_error (&example->model, 1, frets[i], 0), row->cents[i], 0.002);
    }
}

/* A set-back 1 mm longer flattens fret 12 by some 2.6 cents: half of its last digit is 0.0013 cent. */
static void
test_set_back (gconstpointer data)
{
  const Row *row = data;
  g_autofree Example *example = example_new (row);

  expected_near ("cents at fret 12, set back", rw_pitch_error (&example->model, 1, 12, row->set_back), 0, 0.002);
}

/* Clamped ends, a G3 of .016 in at 69.56 N, 195.99875 Hz if it were flexible: d = sqrt (E I/T) is 1.962 mm, and the
 * exact root of k1 tan (k1 l/2) + k2 tanh (k2 l/2) = 0 is 197.16760 Hz, Morse's series 197.16749 Hz, a thousandth of
 * a cent apart (both worked out apart from the program).  By pinned ends 1 + B/2. */
static void
test_clamped (void)
{
  double end = 1.9623 / 666.75;

  expected_near ("clamped", 195.99875 * rw_pitch_stiffened (end, 1), 197.16755, 0.0002);
  expected_near ("pinned", 195.99875 * rw_pitch_stiffened (end, 0), 195.99875 * (1 + 8.5474e-5 / 2), 0.0002);
}

/* Ends that are clamped sharpen a fretted note against the open one by 2 d (1/(L - x) - 1/L), first order: G3 of
 * .016 in at fret 12 by 10.19 cents more; the next order, 4 d^2, adds 0.2. */
static void
test_clamped_fret (void)
{
  g_autofree Example *example = example_new (&rows[2]);
  double pinned = rw_pitch_error (&example->model, 1, 12, 0);

  example->model.guessed.ends = 1;
  expected_near ("cents at fret 12", rw_pitch_error (&example->model, 1, 12, 0) - pinned, 10.19 + 0.18, 0.05);
}

/* A string that does not slip stretches over its scale alone; the flexible D string then errs by 5.69 cents, and
 * stiffness adds some 0.04, as it does where the string slips (4.648 for 4.61). */
static void
test_held (void)
{
  g_autofree Example *example = example_new (&rows[0]);

  example->design.strings_slip = RW_NO;
  expected_near ("cents at fret 12, held", rw_pitch_error (&example->model, 1, 12, 0), 5.69 + 4.648 - 4.61, 0.01);
}

/* What is left once fret 12 is true, to the hundredth; the set-backs here are up to 0.02 mm longer, which
 * is 0.05 cent. */
static void
test_left_over (void)
{
  static const double d4[] = { 1.23, 0.90, 0.58, 0.42, 0, -0.58, -1.43 };
  static const double g3[] = { 2.72, 1.99, 1.26, 0.92, 0, -1.20, -2.86 };
  g_autofree Example *thin = example_new (&rows[0]), *thick = example_new (&rows[2]);

  for (gsize i = 0; i < G_N_ELEMENTS (frets); i++)
    {
      expected_near ("d4", rw_pitch_error (&thin->model, 1, frets[i], rows[0].set_back), d4[i], 0.02);
      expected_near ("g3", rw_pitch_error (&thick->model, 1, frets[i], rows[2].set_back), g3[i], 0.07);
    }
}

/* Stretch puts plain strings of one note out alike, whatever their gauge; what differs is stiffness, which
 * gains from B to 4 B on the way to fret 12: 1731.234 x 3/2 x B cents, B of 8.5474e-5 and 5.6426e-5. */
static void
test_gauge (void)
{
  g_autofree Example *thick = example_new (&rows[2]), *thin = example_new (&rows[3]);
  double more = rw_pitch_error (&thick->model, 1, 12, 0) - rw_pitch_error (&thin->model, 1, 12, 0);

  expected_near ("between gauges", more, 1731.234 * 1.5 * (8.5474e-5 - 5.6426e-5), 0.003);
}

/* Most modern banjos of 26 1/4 in have the bridge 13 3/16 in from fret 12, 1.59 mm beyond half the scale
 * (a set-up guide): string 1 within a factor of 1.5.  The third string is the sharp one, and a wound
 * fourth falls back since its core alone stretches: three set-up guides. */
static void
test_observed (void)
{
  g_autoptr (Built) built = built_new ("scale.length=666.75|strings.set=D4 0.254 p; B3 0.3048 p; G3 0.4064 p; "
                                       "D3 0.559 w 0.305; G4 0.254 p short");
  double d4 = built_value (built, "bridge.compensation[1]"), b3 = built_value (built, "bridge.compensation[2]");
  double g3 = built_value (built, "bridge.compensation[3]"), d3 = built_value (built, "bridge.compensation[4]");

  g_assert_cmpfloat (d4, >, 1.59 / 1.5);
  g_assert_cmpfloat (d4, <, 1.59 * 1.5);
  g_assert_true (d4 < b3 && b3 < g3 && d3 < g3);
}

/* A nut brought forward takes out what the first frets are sharp by, and more of it where the string is sharper:
 * G. Byers, "Classic guitar intonation", American Lutherie 47 (1996). */
static void
test_nut (void)
{
  g_autoptr (Built) built = built_new ("strings.set=D4 0.254 p; B3 0.3048 p; G3 0.4064 p; D3 0.559 w 0.305; "
                                       "G4 0.254 p short");
  double d4 = built_value (built, "nut.forward[1]"), b3 = built_value (built, "nut.forward[2]");
  double g3 = built_value (built, "nut.forward[3]");

  g_assert_cmpfloat (d4, >, 0);
  g_assert_cmpfloat (b3, >, d4);
  g_assert_cmpfloat (g3, >, b3);
}

/* Frets that stand where a temperament wants them sound no better and no worse for it: by definition. */
static void
test_temperament (void)
{
  g_autoptr (Built) equal = built_new ("");
  g_autoptr (Built) pure = built_new ("frets.temperament=11.7; 3.9; 15.6; -13.7; -2; -9.8; 2; 13.7; -15.6; -3.9; "
                                      "-11.7");

  expected_near ("fret 4", built_value (pure, "setup.cents[1][4]"), built_value (equal, "setup.cents[1][4]"), 0.1);
  expected_near ("fret 7 of the short string", built_value (pure, "setup.cents[5][7]"),
                 built_value (equal, "setup.cents[5][7]"), 0.1);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *example = g_strconcat ("/pitch/example/", rows[i].name, NULL);
      g_autofree char *set_back = g_strconcat ("/pitch/set-back/", rows[i].name, NULL);

      g_test_add_data_func (example, &rows[i], test_example);
      if (isfinite (rows[i].set_back))
        g_test_add_data_func (set_back, &rows[i], test_set_back);
    }
  g_test_add_func ("/pitch/clamped", test_clamped);
  g_test_add_func ("/pitch/clamped-fret", test_clamped_fret);
  g_test_add_func ("/pitch/held", test_held);
  g_test_add_func ("/pitch/left-over", test_left_over);
  g_test_add_func ("/pitch/gauge", test_gauge);
  g_test_add_func ("/pitch/observed", test_observed);
  g_test_add_func ("/pitch/nut", test_nut);
  g_test_add_func ("/pitch/temperament", test_temperament);
  return g_test_run ();
}
