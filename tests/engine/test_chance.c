/* Random numbers by counting, and what is told of sets of them. */
#include "making/chance.h"

#include <math.h>

#include "expected.h"
#include "making/summary.h"

/* Known answers of Philox 4x32-10, from the test vectors that go with Salmon et al., SC'11 (2011), from memory. */
static void
test_known_answers (void)
{
  static const struct
  {
    guint32 counter[4], key[2], words[4];
  } known[] = {
    { { 0, 0, 0, 0 }, { 0, 0 }, { 0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8 } },
    { { 0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff }, { 0xffffffff, 0xffffffff },
      { 0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd } },
    { { 0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344 }, { 0xa4093822, 0x299f31d0 },
      { 0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1 } },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (known); i++)
    {
      guint32 words[4];

      rw_chance_words (known[i].counter, known[i].key, words);
      for (int k = 0; k < 4; k++)
        g_assert_cmphex (words[k], ==, known[i].words[k]);
    }
}

/* The additive model Y = X1 + X2 + X3 + X4 of JCGM 101:2008, 9.2, as many trials as there. */
#define TRIALS 1000000

typedef double (*Draw) (guint64 seed, guint32 stream, guint32 number);

static double
even_of_unit_deviation (guint64 seed, guint32 stream, guint32 number)
{
  return sqrt (12) * (rw_chance_even (seed, stream, number) - 0.5);
}

static RwSummary
add_up (Draw draw, double fourth)
{
  g_autofree double *values = g_new (double, TRIALS);

  for (guint k = 0; k < TRIALS; k++)
    {
      values[k] = fourth * draw (101, 4, k);
      for (guint32 stream = 1; stream <= 3; stream++)
        values[k] += draw (101, stream, k);
    }
  return rw_summary (values, TRIALS);
}

/* Printed with two decimals; four standard errors besides. */
static void
near_printed (const char *what, RwEstimate estimate, double printed, double rounding)
{
  expected_near (what, estimate.value, printed, rounding + 4 * estimate.error);
}

/* 9.2.2: four normal quantities of unit uncertainty: u = 2.00, interval [-3.92, 3.92]. */
static void
test_four_normals (void)
{
  RwSummary y = add_up (rw_chance_normal, 1);

  near_printed ("estimate", y.mean, 0, 0);
  near_printed ("u(y)", y.deviation, 2, 0);
  near_printed ("low end", y.low, -3.92, 0.005);
  near_printed ("high end", y.high, 3.92, 0.005);
}

/* 9.2.3: four rectangular ones of unit uncertainty: u = 2.00, interval [-3.88, 3.88]. */
static void
test_four_rectangular (void)
{
  RwSummary y = add_up (even_of_unit_deviation, 1);

  near_printed ("estimate", y.mean, 0, 0);
  near_printed ("u(y)", y.deviation, 2, 0);
  near_printed ("low end", y.low, -3.88, 0.005);
  near_printed ("high end", y.high, 3.88, 0.005);
}

/* 9.2.4: the fourth ten times as wide: u = 10.1, interval [-17.0, 17.0]. */
static void
test_one_dominates (void)
{
  RwSummary y = add_up (even_of_unit_deviation, 10);

  near_printed ("u(y)", y.deviation, 10.1, 0.05);
  near_printed ("low end", y.low, -17.0, 0.05);
  near_printed ("high end", y.high, 17.0, 0.05);
}

/* By hand: 1, 2, 3, 4, 10 have the mean 4 and the deviation sqrt (50/4); what is not finite is left out. */
static void
test_summary (void)
{
  double values[] = { 10, NAN, 1, 3, INFINITY, 2, 4 };
  RwSummary summary = rw_summary (values, G_N_ELEMENTS (values));

  g_assert_cmpuint (summary.count, ==, 5);
  expected_near ("mean", summary.mean.value, 4, 1e-12);
  expected_near ("its error", summary.mean.error, sqrt (50.0 / 4 / 5), 1e-12);
  expected_near ("deviation", summary.deviation.value, sqrt (50.0 / 4), 1e-12);
  expected_near ("median", summary.middle.value, 3, 1e-12);
}

/* The errors told are those that repeated studies show: 200 of 1000 normal numbers each, so their own deviation is
 * known to 5 %; four times that. */
static void
test_errors (void)
{
  enum { STUDIES = 200, NUMBERS = 1000 };
  double deviations[STUDIES], highs[STUDIES], values[NUMBERS];
  RwSummary one = { 0 };

  for (guint32 study = 0; study < STUDIES; study++)
    {
      for (guint32 k = 0; k < NUMBERS; k++)
        values[k] = rw_chance_normal (7, study, k);
      one = rw_summary (values, NUMBERS);
      deviations[study] = one.deviation.value;
      highs[study] = one.high.value;
    }

  RwSummary of_deviations = rw_summary (deviations, STUDIES), of_highs = rw_summary (highs, STUDIES);
  /* s/sqrt(2n) for normal numbers; sqrt(p(1 - p)/n)/f with f the density at 1.96, 0.05845. */
  expected_near ("s.e. of s.d.", of_deviations.deviation.value, 1 / sqrt (2.0 * NUMBERS), 0.2 / sqrt (2.0 * NUMBERS));
  expected_near ("as told", one.deviation.error, 1 / sqrt (2.0 * NUMBERS), 0.2 / sqrt (2.0 * NUMBERS));
  double high_error = sqrt (0.025 * 0.975 / NUMBERS) / 0.05845;
  expected_near ("s.e. of 97.5 %", of_highs.deviation.value, high_error, 0.2 * high_error);
}

/* Never without an error, and the binomial one for many trials. */
static void
test_chances (void)
{
  RwEstimate never = rw_chance_of (0, 1000), often = rw_chance_of (2500, 10000);

  expected_near ("never", never.value, 0, 0);
  g_assert_cmpfloat (never.error, >, 0.0005);
  expected_near ("often", often.value, 0.25, 0);
  expected_near ("its error", often.error, sqrt (0.25 * 0.75 / 10000), 1e-5);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/chance/known-answers", test_known_answers);
  g_test_add_func ("/chance/additive/normal", test_four_normals);
  g_test_add_func ("/chance/additive/rectangular", test_four_rectangular);
  g_test_add_func ("/chance/additive/one-dominates", test_one_dominates);
  g_test_add_func ("/chance/summary", test_summary);
  g_test_add_func ("/chance/errors", test_errors);
  g_test_add_func ("/chance/chances", test_chances);
  return g_test_run ();
}
