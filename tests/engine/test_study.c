/* Tables and plots of the studies. */
#include "study/study.h"

#include <math.h>

#include "sheet/plot.h"
#include "expected.h"
#include "random_design.h"

static const char *
in_english (const char *english)
{
  return english;
}

static double
value_at (const RwStudy *study, guint column, guint row)
{
  return g_array_index (study->columns, RwStudyColumn, column).values[row];
}

/* Columns go by strings, rows by frets from 1. */
static void
test_pitch (void)
{
  g_autoptr (Built) built = built_new ("");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_PITCH, &built->result, in_english);

  g_assert_cmpuint (study->columns->len, ==, 10);
  expected_near ("string 3, fret 7", value_at (study, 2, 6), built_value (built, "setup.cents[3][7]"), 0);
  expected_near ("string 5, fret 12", value_at (study, 4, 11), built_value (built, "setup.cents[5][12]"), 0);
  g_assert_true (isnan (value_at (study, 4, 4)));
}

/* The best straight bridge leaves less error than the theoretical line, over all strings and frets. */
static void
test_best_is_better (void)
{
  g_autoptr (Built) built = built_new ("");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_PITCH, &built->result, in_english);
  double sum[2] = { 0, 0 };

  for (guint column = 0; column < study->columns->len; column++)
    for (guint row = 0; row < study->rows->len; row++)
      {
        double cents = value_at (study, column, row);

        if (isfinite (cents))
          sum[column / 5] += cents * cents;
      }
  g_assert_cmpfloat (sum[1], >, 0);
  g_assert_cmpfloat (sum[1], <, sum[0]);
}

static void
test_action (void)
{
  static const int frets[] = { 1, 5, 7, 12 };
  g_autoptr (Built) built = built_new ("");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_ACTION, &built->result, in_english);

  for (gsize i = 0; i < G_N_ELEMENTS (frets); i++)
    {
      g_autofree char *id = g_strdup_printf ("setup.action[%d]", frets[i]);

      expected_near (id, value_at (study, 0, (guint) frets[i]), built_value (built, id), 1e-12);
    }
}

/* A stiff neck has the same action bent and unbent. */
static void
test_stiff_neck (void)
{
  g_autoptr (Built) built = built_new ("setup.neck_flex=no");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_ACTION, &built->result, in_english);

  for (guint row = 1; row < study->rows->len; row++)
    expected_near ("action unbent", value_at (study, 1, row), value_at (study, 0, row), 1e-12);
}

/* Stress is rho (2 f L)^2 whatever the gauge (7850 kg/m3, 666.75 mm): D4 1203.8, B3 851.2, G3 536.2 MPa.  Strength
 * of music wire of 0.254 mm: 2211/0.254^0.145 = 2697 MPa (ASTM A228 as in Shigley's Mechanical Engineering Design). */
static void
test_strings (void)
{
  g_autoptr (Built) built = built_new ("scale.length=666.75|strings.set=D4 0.254 p; B3 0.3 p; G3 0.33 p");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_STRINGS, &built->result, in_english);

  expected_near ("pull", value_at (study, 0, 0), built_value (built, "strings.tension[1]"), 0);
  expected_near ("stress of D4", value_at (study, 1, 0), 1203.8, 0.1);
  expected_near ("stress of B3", value_at (study, 1, 1), 851.2, 0.1);
  expected_near ("stress of G3", value_at (study, 1, 2), 536.2, 0.1);
  expected_near ("strength", value_at (study, 2, 0), 2697, 1);
}

static void
test_seasons (void)
{
  g_autoptr (Built) built = built_new ("");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_SEASONS, &built->result, in_english);

  expected_near ("board, driest", value_at (study, 0, 0), built_value (built, "move.board_width_low"), 0);
  expected_near ("rim height, dampest", value_at (study, 1, 2), built_value (built, "move.rim_height_high"), 0);
}

static void
assert_finite (const RwSheet *sheet)
{
  for (guint i = 0; i < sheet->ops->len; i++)
    {
      const RwPathOp *op = &g_array_index (sheet->ops, RwPathOp, i);

      if (op->verb != RW_VERB_CLOSE)
        g_assert_true (isfinite (op->p[0].x) && isfinite (op->p[0].y));
    }
  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (item->kind == RW_ITEM_TEXT)
        g_assert_true (isfinite (item->p[0].x) && isfinite (item->p[0].y));
    }
}

static void
test_plots (void)
{
  for (int round = 0; round < 400; round++)
    {
      RwDesign design;
      g_autofree RwResult *result = g_new0 (RwResult, 1);

      if (round % 2 == 0)
        random_design (&design);
      else
        random_design_near (&design, 1 + round % 15);
      rw_solve (&design, NULL, result);
      for (int kind = 0; kind < RW_STUDY_COUNT; kind++)
        {
          g_autoptr (RwStudy) study = rw_study_new ((RwStudyKind) kind, result, in_english);
          g_autoptr (RwSheet) sheet = rw_study_draw (study, g_test_rand_double_range (60, 400),
                                                     g_test_rand_double_range (20, 200), RW_STYLE_FILE, NULL);

          assert_finite (sheet);
        }
    }
}

/* At most so many pieces, and the next smaller nice number would give more: by hand. */
static void
test_ticks (void)
{
  static const struct
  {
    double span, pieces, tick;
  } rows[] = {
    { 10, 10, 1 }, { 10, 5, 2 }, { 10, 4, 5 }, { 10, 1, 10 }, { 0.3, 3, 0.1 }, { 24, 6, 5 }, { 2700, 6, 500 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    expected_near ("tick", rw_plot_tick (rows[i].span, rows[i].pieces), rows[i].tick, 1e-12 * rows[i].tick);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/study/pitch", test_pitch);
  g_test_add_func ("/study/pitch/best-is-better", test_best_is_better);
  g_test_add_func ("/study/action", test_action);
  g_test_add_func ("/study/action/stiff-neck", test_stiff_neck);
  g_test_add_func ("/study/strings", test_strings);
  g_test_add_func ("/study/seasons", test_seasons);
  g_test_add_func ("/study/plots", test_plots);
  g_test_add_func ("/study/ticks", test_ticks);
  return g_test_run ();
}
