/* Pitch of fretted notes against a worked example.
 *
 * Scale 666.75 mm, nut 0.5 mm and bridge 5.5 mm over the crowns, 60 mm behind the nut and 90 mm behind the bridge,
 * steel of 200 GPa and 7850 kg/m3.  Figures worked out apart from the program, with exact geometry, for strings
 * that slip: stretch as in G. Byers, "Classic guitar intonation", American Lutherie 47 (1996); stiffness by
 * H. Fletcher, JASA 36 (1964) 203, pinned ends. */
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
      example->model.fret_cents[n] = 100 * n;
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

/* A string that does not slip stretches over its scale alone; the flexible D string then errs by 5.69 cents, and
 * stiffness adds some 0.04, as it does where the string slips (4.648 for 4.61). */
static void
test_held (void)
{
  g_autofree Example *example = example_new (&rows[0]);

  example->design.strings_slip = RW_NO;
  expected_near ("cents at fret 12, held", rw_pitch_error (&example->model, 1, 12, 0), 5.69 + 4.648 - 4.61, 0.01);
}

/* A nut brought forward takes out what the first frets are sharp by, and more of it where the string is sharper:
 * G. Byers, "Classic guitar intonation", American Lutherie 47 (1996). */
static void
test_nut (void)
{
  g_autoptr (Built) built = built_new ("strings.set=D4 0.254 p; B3 0.3048 p; G3 0.4064 p; D3 0.559 w 0.305; G4 0.254 p short");
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
  g_autoptr (Built) pure = built_new ("frets.temperament=11.7; 3.9; 15.6; -13.7; -2; -9.8; 2; 13.7; -15.6; -3.9; -11.7");

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
  g_test_add_func ("/pitch/held", test_held);
  g_test_add_func ("/pitch/nut", test_nut);
  g_test_add_func ("/pitch/temperament", test_temperament);
  return g_test_run ();
}
