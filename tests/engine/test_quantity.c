#include <locale.h>
#include <math.h>
#include <string.h>

#include "table/quantity.h"

/* One rounding of a conversion; values are definitions (inch and pound of 1959, US gallon of 231 cubic
 * inches, zero of Celsius) worked out by hand. */
#define RELATIVE 4e-16

typedef struct
{
  const char *text;
  const char *unit;
  double      value;
} Good;

static const Good good[] = {
  /* What a maker types. */
  { "11 3/8 in", "mm", 288.925 },
  { "5/8\"", "mm", 15.875 },
  { "280 + 2*1.5", "mm", 283 },
  { "27,5 mm", "mm", 27.5 },
  { "27.5", "mm", 27.5 },
  { "1' 2 3/8\"", "mm", 365.125 },
  { "-1 3/8 in", "mm", -34.925 },
  { "  12\t", "mm", 12 },

  /* Fractions. */
  { "11 3/8\"", "mm", 288.925 },
  { "11⅜″", "mm", 288.925 },
  { "11 ⅜″", "mm", 288.925 },
  { "¾ in", "mm", 19.05 },
  { "3⁄8 in", "mm", 9.525 },
  { "5/64in", "mm", 1.984375 },
  { "7/2", "mm", 3.5 },
  { "11 3/8 in / 2", "mm", 144.4625 },
  { "(1 + 2)/4 in", "mm", 19.05 },
  { "1/2 in + 1/4 in", "mm", 19.05 },
  { "1-1/2\"", "mm", 1 - 12.7 },
  { "1/2/2 in", "mm", 6.35 },

  /* Feet and inches. */
  { "2 ft", "mm", 609.6 },
  { "2 ft 6 in", "mm", 762 },
  { "2' 6''", "mm", 762 },
  { "2’6”", "mm", 762 },
  { "2′ 5/8″", "mm", 625.475 },
  { "-1' 2\"", "mm", -355.6 },
  { "2 * 1' 2\"", "mm", 711.2 },
  { "1' + 2\"", "mm", 355.6 },
  { "1' 2\" - 2\"", "mm", 304.8 },

  /* Arithmetic. */
  { "2+3*4", "mm", 14 },
  { "(2+3)*4", "mm", 20 },
  { "2*(3+4)*5", "mm", 70 },
  { "12/4/3", "mm", 1 },
  { "10 - 4 - 3", "mm", 3 },
  { "10 − 4 × 2 ÷ 4", "mm", 8 },
  { "2*-3", "mm", -6 },
  { "+5", "mm", 5 },
  { "-(2+3)", "mm", -5 },
  { "1e3", "mm", 1000 },
  { "1.5E-2", "mm", 0.015 },
  { ".5", "mm", 0.5 },
  { "5.", "mm", 5 },
  { ",5", "mm", 0.5 },
  { "0.1 + 0.2", "mm", 0.1 + 0.2 },

  /* Units beside bare numbers: those are in the bare unit. */
  { "1 in + 2", "mm", 27.4 },
  { "2 + 1 in", "mm", 27.4 },
  { "(1 + 2) in", "mm", 76.2 },
  { "(1 in + 2 in) * 2", "mm", 152.4 },
  { "2 * 1.5 in", "mm", 76.2 },
  { "1 cm + 1 mm", "mm", 11 },
  { "10 in/2", "mm", 127 },
  { "1 m - 1 ft", "mm", 695.2 },
  { "12 MM", "mm", 12 },
  { "1 Inch", "mm", 25.4 },

  /* Other kinds. */
  { "2.5", "deg", 2.5 },
  { "2.5°", "deg", 2.5 },
  { "1 rad", "deg", 57.295779513082321 },
  { "12,5%", "%", 12.5 },
  { "0.5", "%", 0.5 },
  { "50 %", "", 0.5 },
  { "1 oz", "g", 28.349523125 },
  { "2 kg", "g", 2000 },
  { "7.85 g/cm3", "kg/m3", 7850 },
  { "7.85 g/ml", "kg/m3", 7850 },
  { "1390 kg/m³", "kg/m3", 1390 },
  { "1 lb/in3", "kg/m3", 27679.904710203125 },
  { "1 lbf", "N", 4.4482216152605 },
  { "2 kN", "N", 2000 },
  { "34 lbf/in", "N/m", 34 * 4.4482216152605 / 0.0254 },
  { "6 N/mm", "N/m", 6000 },
  { "1 N m", "N mm", 1000 },
  { "29e6 psi", "GPa", 29e-3 * 4.4482216152605 / 0.00064516 },
  { "200000 MPa", "GPa", 200 },
  { "250 N/mm2", "N/mm2", 250 },
  { "0.5 kHz", "Hz", 500 },
  { "20 °C", "degC", 20 },
  { "68 °F", "degC", 20 },
  { "-40 degF", "degC", -40 },
  { "(50) F", "degC", 10 },
  { "293.15 K", "degC", 20 },
  { "600 m/min", "m/s", 10 },
  { "1000 ft/min", "m/s", 5.08 },
  { "0.25 l", "ml", 250 },
  { "1 gal", "ml", 3785.411784 },
  { "8 fl oz", "ml", 236.5882365 },
  { "119.826427316897 g/l", "lb/gal", 1 },
  { "0.39 g/m", "kg/m", 0.00039 },
  { "3 cents", "cent", 3 },
  { "900 rpm", "1/min", 900 },
};

static void
test_good (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (good); i++)
    {
      g_autoptr (GError) error = NULL;
      double             value = NAN;
      double             slack = 1 + fabs (good[i].value);

      rw_quantity_read (good[i].text, good[i].unit, NULL, ',', &value, &error);
      g_assert_no_error (error);
      if (!(fabs (value - good[i].value) <= 4 * RELATIVE * slack))
        g_error ("%s: %.17g, expected %.17g", good[i].text, value, good[i].value);
    }
}

typedef struct
{
  const char     *text;
  const char     *unit;
  RwQuantityError code;
  const char     *quoted; /* what the message must point at */
} Bad;

static const Bad bad[] = {
  { "", "mm", RW_QUANTITY_ERROR_SYNTAX, "missing" },
  { "   ", "mm", RW_QUANTITY_ERROR_SYNTAX, "missing" },
  { "5 +", "mm", RW_QUANTITY_ERROR_SYNTAX, "missing" },
  { "abc", "mm", RW_QUANTITY_ERROR_SYNTAX, "“abc”" },
  { "mm", "mm", RW_QUANTITY_ERROR_SYNTAX, "“mm”" },
  { "5 5", "mm", RW_QUANTITY_ERROR_SYNTAX, "“5”" },
  { "1 000", "mm", RW_QUANTITY_ERROR_SYNTAX, "“000”" },
  { "1,000.5", "mm", RW_QUANTITY_ERROR_SYNTAX, "“1,000.5”" },
  { "1.2.3", "mm", RW_QUANTITY_ERROR_SYNTAX, "“1.2.3”" },
  { ".", "mm", RW_QUANTITY_ERROR_SYNTAX, "“.”" },
  { "(1 + 2", "mm", RW_QUANTITY_ERROR_SYNTAX, "“(1”" },
  { "1 + 2)", "mm", RW_QUANTITY_ERROR_SYNTAX, "“)”" },
  { "()", "mm", RW_QUANTITY_ERROR_SYNTAX, "“)”" },
  { "2**3", "mm", RW_QUANTITY_ERROR_SYNTAX, "“*3”" },
  { "--3", "mm", RW_QUANTITY_ERROR_SYNTAX, "“-3”" },
  { "5 mm mm", "mm", RW_QUANTITY_ERROR_SYNTAX, "“mm”" },
  { "11 3/8.5", "mm", RW_QUANTITY_ERROR_SYNTAX, "“3/8.5”" },
  { "11.5 3/8", "mm", RW_QUANTITY_ERROR_SYNTAX, "“3/8”" },
  { "0x10", "mm", RW_QUANTITY_ERROR_UNIT, "“x10”" },
  { "5 mm;", "mm", RW_QUANTITY_ERROR_SYNTAX, "“;”" },
  { "nan", "mm", RW_QUANTITY_ERROR_SYNTAX, "“nan”" },
  { "inf", "mm", RW_QUANTITY_ERROR_SYNTAX, "“inf”" },

  { "5 kg", "mm", RW_QUANTITY_ERROR_UNIT, "“kg”" },
  { "5 mm", "", RW_QUANTITY_ERROR_UNIT, "“mm”" },
  { "5 mm", "deg", RW_QUANTITY_ERROR_UNIT, "“mm”" },
  { "5 furlongs", "mm", RW_QUANTITY_ERROR_UNIT, "“furlongs”" },
  { "5 mmm", "mm", RW_QUANTITY_ERROR_UNIT, "“mmm”" },
  { "2 in * 3 in", "mm", RW_QUANTITY_ERROR_UNIT, "“3”" },
  { "6 in / 2 in", "mm", RW_QUANTITY_ERROR_UNIT, "“2”" },
  { "6 / (2 in)", "mm", RW_QUANTITY_ERROR_UNIT, "“(2”" },
  { "6 / 1' 2\"", "mm", RW_QUANTITY_ERROR_UNIT, "“1'”" },
  { "(2 mm) in", "mm", RW_QUANTITY_ERROR_UNIT, "“(2”" },
  { "1' 2", "mm", RW_QUANTITY_ERROR_UNIT, "“2”" },
  { "1' 2 mm", "mm", RW_QUANTITY_ERROR_UNIT, "“2”" },
  { "68 °F + 1", "degC", RW_QUANTITY_ERROR_UNIT, "“68”" },
  { "2 * 68 °F", "degC", RW_QUANTITY_ERROR_UNIT, "“68”" },

  { "1/0", "mm", RW_QUANTITY_ERROR_VALUE, "“0”" },
  { "1/(2-2)", "mm", RW_QUANTITY_ERROR_VALUE, "“(2-2)”" },
  { "1e999", "mm", RW_QUANTITY_ERROR_VALUE, "“1e999”" },
  { "1e308*10", "mm", RW_QUANTITY_ERROR_VALUE, "“1e308*10”" },
  { "1/(1e308*10)", "mm", RW_QUANTITY_ERROR_VALUE, "“1e308*10)”" },
  { "1e308 + 1e308", "mm", RW_QUANTITY_ERROR_VALUE, "“1e308”" },
  { "1e308 in", "mm", RW_QUANTITY_ERROR_VALUE, "“1e308”" },
};

static void
test_bad (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autoptr (GError) error = NULL;
      double             value = 42;

      g_test_message ("“%s” in %s", bad[i].text, bad[i].unit);
      g_assert_false (rw_quantity_read (bad[i].text, bad[i].unit, NULL, ',', &value, &error));
      g_assert_error (error, RW_QUANTITY_ERROR, (int) bad[i].code);
      g_assert_nonnull (strstr (error->message, bad[i].quoted));
      g_assert_cmpfloat (value, ==, 42);
    }
}

static void
test_point_only (void)
{
  g_autoptr (GError) error = NULL;
  double             value;

  g_assert_false (rw_quantity_read ("27,5", "mm", NULL, '.', &value, &error));
  g_assert_error (error, RW_QUANTITY_ERROR, RW_QUANTITY_ERROR_SYNTAX);
  g_assert_true (rw_quantity_read ("27.5", "mm", NULL, '.', &value, NULL));
  g_assert_cmpfloat (value, ==, 27.5);
}

static void
test_not_utf8 (void)
{
  g_autoptr (GError) error = NULL;
  double             value;

  g_assert_false (rw_quantity_read ("5 \xff", "mm", NULL, '.', &value, &error));
  g_assert_error (error, RW_QUANTITY_ERROR, RW_QUANTITY_ERROR_SYNTAX);
  g_assert_true (g_utf8_validate (error->message, -1, NULL));
}

static void
test_bare_inches (void)
{
  static const Good cases[] = {
    { "11", NULL, 279.4 }, { "11 3/8", NULL, 288.925 }, { "11 + 3 mm", NULL, 282.4 }, { "3 mm", NULL, 3 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      double value = NAN;

      g_assert_true (rw_quantity_read (cases[i].text, "mm", "in", '.', &value, NULL));
      g_assert_cmpfloat_with_epsilon (value, cases[i].value, 1e-12);
    }
}

static void
test_depth (void)
{
  g_autoptr (GError) error = NULL;
  g_autofree char   *deep = g_strnfill (100000, '(');
  double             value;

  g_assert_false (rw_quantity_read (deep, "mm", NULL, '.', &value, &error));
  g_assert_error (error, RW_QUANTITY_ERROR, RW_QUANTITY_ERROR_SYNTAX);
  g_assert_cmpuint (strlen (error->message), <, 200);
  g_assert_true (rw_quantity_read ("((((((((7))))))))", "mm", NULL, '.', &value, NULL));
  g_assert_cmpfloat (value, ==, 7);
}

static void
test_no_negative_zero (void)
{
  double value = 1;

  g_assert_true (rw_quantity_read ("-0", "mm", NULL, '.', &value, NULL));
  g_assert_false (signbit (value));
}

typedef struct
{
  double      value;
  const char *unit;
  RwUnits     units;
  int         decimals;
  char        decimal;
  const char *text;
} Written;

static const Written written[] = {
  { 279, "mm", RW_UNITS_MM, 1, '.', "279.0" },
  { 279, "mm", RW_UNITS_MM, 0, '.', "279" },
  { 27.55, "mm", RW_UNITS_MM, 2, ',', "27,55" },
  { -0.04, "mm", RW_UNITS_MM, 1, '.', "0.0" },
  { -0.4, "mm", RW_UNITS_MM, 0, '.', "0" },
  { -0.06, "mm", RW_UNITS_MM, 1, '.', "-0.1" },
  { 279.4, "mm", RW_UNITS_INCH, 1, '.', "11.000" },
  { 288.925, "mm", RW_UNITS_INCH, 1, ',', "11,375" },
  { -0.001, "mm", RW_UNITS_INCH, 0, '.', "0.00" },
  { 288.925, "mm", RW_UNITS_FRACTION, 1, '.', "11 3/8" },
  { 279.4, "mm", RW_UNITS_FRACTION, 1, '.', "11" },
  { 15.875, "mm", RW_UNITS_FRACTION, 1, '.', "5/8" },
  { -1.984375, "mm", RW_UNITS_FRACTION, 1, '.', "-5/64" },
  { -34.925, "mm", RW_UNITS_FRACTION, 1, '.', "-1 3/8" },
  { 0, "mm", RW_UNITS_FRACTION, 1, '.', "0" },
  { -0.1, "mm", RW_UNITS_FRACTION, 1, '.', "0" },
  { 25.3, "mm", RW_UNITS_FRACTION, 1, '.', "1" },
  { 25.3, "mm", RW_UNITS_FRACTION_16, 1, '.', "1" },
  { 288.925, "mm", RW_UNITS_FRACTION_16, 1, '.', "11 3/8" },
  { 1.984375, "mm", RW_UNITS_FRACTION_32, 1, '.', "3/32" }, /* 5/64, a tie, goes away from nought */
  { 1.984375, "mm", RW_UNITS_FRACTION_16, 1, '.', "1/16" }, /* 1.25 sixteenths */
  { 2.5, "deg", RW_UNITS_INCH, 2, '.', "2.50" },
  { 6000, "N/m", RW_UNITS_FRACTION, 0, '.', "6000" },
};

static void
test_write (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (written); i++)
    {
      const Written   *w = &written[i];
      g_autofree char *text = rw_quantity_write (w->value, w->unit, w->units, w->decimals, w->decimal);

      g_assert_cmpstr (text, ==, w->text);
    }
}

/* Every sixty-fourth up to two feet is written as what it is, and reads back. */
static void
test_write_fractions (void)
{
  for (int parts = -24 * 64; parts <= 24 * 64; parts++)
    {
      double           inches = parts / 64.0;
      g_autofree char *text = rw_quantity_write (inches * 25.4, "mm", RW_UNITS_FRACTION, 0, '.');
      double           value = NAN;

      g_assert_true (rw_quantity_read (text, "mm", "in", '.', &value, NULL));
      g_assert_cmpfloat_with_epsilon (value, inches * 25.4, 1e-12);
    }
}

/* By hand: 64 mm are 2.51969 in; 2 33/64 in = 63.8969 mm, 2 1/2 in = 63.5 mm.  10 mm are 0.3937 in; 25/64 in
 * = 9.9219 mm is near enough to say nothing; 3/8 in = 9.525 mm, and 13/32 in = 10.3188 mm is too long. */
static void
test_figures (void)
{
  static const struct
  {
    double      value;
    const char *unit;
    RwUnits     units;
    const char *figure;
  } rows[] = {
    { 64, "mm", RW_UNITS_FRACTION, "2 33/64 (+0.1)" }, { 64, "mm", RW_UNITS_FRACTION_16, "2 1/2 (+0.5)" },
    { 10, "mm", RW_UNITS_FRACTION, "25/64" },          { 10, "mm", RW_UNITS_FRACTION_16, "3/8 (+0.5)" },
    { 10, "mm", RW_UNITS_FRACTION_32, "13/32 (−0.3)" }, { 25.4, "mm", RW_UNITS_FRACTION_16, "1" },
    { 64, "mm", RW_UNITS_MM, "64.0" },                 { 64, "mm", RW_UNITS_INCH, "2.520" },
    { 1.92, "deg", RW_UNITS_FRACTION_16, "1.9" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *figure = rw_quantity_figure (rows[i].value, rows[i].unit, rows[i].units, 1, '.');

      g_assert_cmpstr (figure, ==, rows[i].figure);
    }
  g_assert_cmpfloat (rw_fraction_error (64, RW_UNITS_MM), ==, 0);
  g_assert_cmpfloat_with_epsilon (rw_fraction_error (64, RW_UNITS_FRACTION_16), 0.5, 1e-12);
}

static void
test_units_shown (void)
{
  g_assert_cmpstr (rw_quantity_unit ("mm", RW_UNITS_MM), ==, "mm");
  g_assert_cmpstr (rw_quantity_unit ("mm", RW_UNITS_INCH), ==, "in");
  g_assert_cmpstr (rw_quantity_unit ("mm", RW_UNITS_FRACTION), ==, "in");
  g_assert_cmpstr (rw_quantity_unit ("deg", RW_UNITS_MM), ==, "°");
  g_assert_cmpstr (rw_quantity_unit ("degC", RW_UNITS_MM), ==, "°C");
  g_assert_cmpstr (rw_quantity_unit ("kg/m3", RW_UNITS_MM), ==, "kg/m³");
  g_assert_cmpstr (rw_quantity_unit ("N/m", RW_UNITS_INCH), ==, "N/m");
}

/* What is shown after a number can be typed after one. */
static void
test_shown_units_read (void)
{
  static const char *const units[] = { "mm", "deg", "degC", "kg/m3", "N/mm2", "N mm", "N/m", "%", "lb/gal" };

  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    {
      g_autofree char *text = g_strconcat ("7 ", rw_quantity_unit (units[i], RW_UNITS_MM), NULL);
      double           value = NAN;

      g_assert_true (rw_quantity_read (text, units[i], NULL, '.', &value, NULL));
      g_assert_cmpfloat (value, ==, 7);
    }
}

static void
test_shortest (void)
{
  static const struct
  {
    double      value;
    const char *text;
  } cases[] = {
    { 650, "650" }, { 0.1, "0.1" }, { 0.3333, "0.3333" }, { 1e-7, "1e-07" }, { -2.5, "-2.5" },
    { 0.1 + 0.2, "0.30000000000000004" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *text = rw_number_write (cases[i].value);

      g_assert_cmpstr (text, ==, cases[i].text);
    }
}

/* To the last bit, for doubles of any size, through the reader of files. */
static void
test_shortest_reads_back (void)
{
  for (int i = 0; i < 20000; i++)
    {
      double           value = ldexp (g_test_rand_double_range (-1, 1), g_test_rand_int_range (-60, 60));
      g_autofree char *text = rw_number_write (value);
      double           read = NAN;

      g_assert_true (rw_quantity_read (text, "mm", NULL, '.', &read, NULL));
      g_assert_cmpfloat (read, ==, value);
    }
}

static void
test_comma_locale (void)
{
  static const char *const locales[] = { "de_DE.UTF-8", "fr_FR.UTF-8", "de_DE.utf8" };
  guint                    i = 0;

  while (i < G_N_ELEMENTS (locales) && setlocale (LC_NUMERIC, locales[i]) == NULL)
    i++;
  if (i == G_N_ELEMENTS (locales))
    {
      g_test_skip ("no locale with a decimal comma is installed");
      return;
    }
  test_good ();
  test_write ();
  test_shortest ();
  setlocale (LC_NUMERIC, "C");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/quantity/read/good", test_good);
  g_test_add_func ("/quantity/read/bad", test_bad);
  g_test_add_func ("/quantity/read/point-only", test_point_only);
  g_test_add_func ("/quantity/read/not-utf8", test_not_utf8);
  g_test_add_func ("/quantity/read/bare-inches", test_bare_inches);
  g_test_add_func ("/quantity/read/depth", test_depth);
  g_test_add_func ("/quantity/read/no-negative-zero", test_no_negative_zero);
  g_test_add_func ("/quantity/write/table", test_write);
  g_test_add_func ("/quantity/write/fractions", test_write_fractions);
  g_test_add_func ("/quantity/write/figures", test_figures);
  g_test_add_func ("/quantity/unit/shown", test_units_shown);
  g_test_add_func ("/quantity/unit/shown-reads", test_shown_units_read);
  g_test_add_func ("/quantity/number/shortest", test_shortest);
  g_test_add_func ("/quantity/number/reads-back", test_shortest_reads_back);
  g_test_add_func ("/quantity/locale/comma", test_comma_locale);
  return g_test_run ();
}
