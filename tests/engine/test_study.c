/* Tables and plots of the studies. */
#include "study/study.h"

#include <math.h>
#include <string.h>

#include "model/retune.h"
#include "sheet/layout.h"
#include "sheet/plot.h"
#include "study/tuning.h"
#include "table/note.h"
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

/* A head that turns square over its edge pulls 2 pi R T: 219.4 N on each of 24 hooks for 6000 N/m and 139.7 mm; the
 * nut of a plain 8-32 thread, 4.166 mm, wants 0.2 P D = 0.183 N m then.  Worked out by hand. */
static void
test_hooks (void)
{
  g_autoptr (Built) built = built_new ("rim.outer_diameter=281.4|rim.crest_inset=1|hooks.count=24|head.tension=6000");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_HOOKS, &built->result, in_english);

  for (guint row = 0; row < study->rows->len; row++)
    {
      double tension = g_array_index (study->rows, RwStudyRow, row).at;

      expected_near ("pull", value_at (study, 0, row), 219.44 * tension / 6000, 0.01);
      expected_near ("torque", value_at (study, 3, row), 0.1828 * tension / 6000, 0.0005);
      expected_near ("black over plain", value_at (study, 5, row), 1.5 * value_at (study, 3, row), 1e-12);
      g_assert_true (isfinite (value_at (study, 2, row)) == (tension == 6000));
    }
}

/* Row of a study along an axis. */
static guint
row_at (const RwStudy *study, double at)
{
  for (guint row = 0; row < study->rows->len; row++)
    if (fabs (g_array_index (study->rows, RwStudyRow, row).at - at) < 1e-9)
      return row;
  g_assert_not_reached ();
}

/* Two feet at +-y on a head of radius R, each with half of the load: by the influence of a point on a disc, over
 * F/(2 pi T), the middle sinks by ln (R/y), and the feet by half of ln ((R^2 - y^2)/(R c)) + ln ((R^2 + y^2)/(2 y R)),
 * c = (9 + 3)/4 mm.  At the edge it does not sink. */
static void
test_head (void)
{
  g_autoptr (Built) built = built_new ("bridge.feet=2|bridge.offset=0|bridge.foot_spread=60|rim.outer_diameter=280");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_HEAD, &built->result, in_english);
  double r = 139, y = 30, c = 3, sag = built_value (built, "bridge.sag");
  double feet = (log ((r * r - y * y) / (r * c)) + log ((r * r + y * y) / (2 * y * r))) / 2;
  double force = built_value (built, "bridge.down_force");

  expected_near ("middle", value_at (study, 0, row_at (study, 0)), -sag * log (r / y) / feet, 1e-9);
  expected_near ("same along", value_at (study, 2, row_at (study, 0)), value_at (study, 0, row_at (study, 0)), 1e-12);
  expected_near ("foot", value_at (study, 0, row_at (study, 30)), -sag, 1e-3 * sag);
  expected_near ("edge", value_at (study, 0, row_at (study, -139)), 0, 1e-9);
  expected_near ("load", value_at (study, 1, row_at (study, -30)), force / 2, 1e-9);
}

/* Three feet carry all of the load, the outer ones alike. */
static void
test_head_loads (void)
{
  g_autoptr (Built) built = built_new ("");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_HEAD, &built->result, in_english);
  double sum = 0;
  int feet = 0;

  for (guint row = 0; row < study->rows->len; row++)
    if (isfinite (value_at (study, 1, row)))
      {
        sum += value_at (study, 1, row);
        feet++;
      }
  g_assert_cmpint (feet, ==, 3);
  expected_near ("all of it", sum, built_value (built, "bridge.down_force"), 1e-9);
  expected_near ("alike", value_at (study, 1, row_at (study, 29)), value_at (study, 1, row_at (study, -29)), 1e-9);
}

/* All of one wood, so all swells by e = 0.00353 for each % of moisture (sugar maple, Wood Handbook, table 13-5): the
 * board rises over the head by e s, the bridge by e h, and the angle closes by e tan A cos2 A.  In C cos A - B sin A
 * those give the height of the strings at the bridge, of which half comes to fret 12.  A tight head gives way little
 * to what that adds to the down force: 5 %. */
static void
test_seasons (void)
{
  g_autoptr (Built) built = built_new ("setup.neck_flex=no|head.tension=15000|neck.wood=maple_hard|joint.kind=stick|"
                                       "neck.board_wood=maple_hard|rim.construction=plies|rim.course_wood=maple_hard");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_SEASONS, &built->result, in_english);
  const RwSide *side = &built->result.side;
  const RwDesign *d = &built->result.used;
  guint dry = row_at (study, 30), shop = row_at (study, 50);
  double e = 0.00353 * (built_value (built, "move.moisture_low") - value_at (study, 10, shop));
  double a = side->angle, b = d->bridge_offset + d->rim_outer_diameter / 2;
  double c = side->bridge_height - side->sag - d->neck_set_height;
  double turn = -e * tan (a) * cos (a) * cos (a);
  double rise = e * (side->bridge_height - d->neck_set_height) * cos (a) - (c * sin (a) + b * cos (a)) * turn;

  expected_near ("shop", value_at (study, 0, shop), built_value (built, "setup.action[12]"), 1e-9);
  expected_near ("driest", value_at (study, 0, dry) - value_at (study, 0, shop), rise / 2, 0.05 * fabs (rise));
  expected_near ("board, driest", value_at (study, 3, dry), built_value (built, "move.board_width_low"), 1e-9);
  expected_near ("fret ends", value_at (study, 5, dry), -value_at (study, 3, dry) / 2 - d->frets_end_inset, 1e-12);
  expected_near ("rim height, dampest", value_at (study, 4, row_at (study, 65)),
                 built_value (built, "move.rim_height_high"), 1e-9);
  /* The wall's swelling, half on each side of the rim. */
  expected_near ("head's play", value_at (study, 6, dry),
                 d->head_nominal - d->rim_outer_diameter - value_at (study, 7, dry),
                 1e-9);
}

/* A rim of staves has its grain upright: it keeps its height, and its diameter swells as a whole. */
static void
test_seasons_of_staves (void)
{
  g_autoptr (Built) built = built_new ("rim.construction=staves|rim.course_wood=maple_hard");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_SEASONS, &built->result, in_english);
  guint damp = row_at (study, 65), shop = row_at (study, 50);
  double wetter = value_at (study, 10, damp) - value_at (study, 10, shop);

  g_assert_true (isnan (value_at (study, 4, damp)));
  expected_near ("head's play", value_at (study, 6, damp) - value_at (study, 6, shop), -279 * 0.00353 * wetter, 1e-9);
}

/* A wood of which no movement is known leaves out what hangs on it, and no more. */
static void
test_seasons_unknown (void)
{
  g_autoptr (Built) built = built_new ("neck.board_wood=ebony_african");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_SEASONS, &built->result, in_english);

  g_assert_true (isnan (value_at (study, 0, row_at (study, 30))));
  g_assert_true (isnan (value_at (study, 5, row_at (study, 30))));
  g_assert_true (isfinite (value_at (study, 4, row_at (study, 30))));
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

/* At usual widths no text lies over another: long titles are broken. */
static void
test_titles (void)
{
  g_autoptr (Built) built = built_new ("");

  for (int kind = 0; kind < RW_STUDY_COUNT; kind++)
    for (double width = 150; width < 300; width += 15)
      {
        g_autoptr (RwStudy) study = rw_study_new ((RwStudyKind) kind, &built->result, in_english);
        g_autoptr (RwSheet) sheet = rw_study_draw (study, width, 80, RW_STYLE_FILE, NULL);
        g_autoptr (RwLayout) layout = rw_layout_new (sheet, 1, 0);

        for (guint i = 0; i < layout->texts->len; i++)
          {
            const RwPlacedText *a = &g_array_index (layout->texts, RwPlacedText, i);

            g_assert_cmpfloat (a->box.x1, <, width + 0.1);
            for (guint k = i + 1; k < layout->texts->len; k++)
              {
                const RwPlacedText *b = &g_array_index (layout->texts, RwPlacedText, k);

                if (a->box.x0 < b->box.x1 && b->box.x0 < a->box.x1 && a->box.y0 < b->box.y1 && b->box.y0 < a->box.y1)
                  g_error ("%s, %g mm: “%s” lies over “%s”", study->title, width, a->text, b->text);
              }
          }
      }
}

/* Pull goes by the square of the frequency: a semitone up is 2^(2/12), a whole tone down 2^(-4/12). */
static void
test_tuning (void)
{
  g_autoptr (Built) built = built_new ("");
  g_autoptr (GError) error = NULL;
  g_auto (GStrv) notes = rw_tuning_read ("D4, C4 G3;C3  G4", &built->design.strings_set, &error);
  g_autofree RwResult *then = g_new0 (RwResult, 1);
  g_autoptr (RwStudy) study = NULL;

  g_assert_no_error (error);
  g_assert_true (rw_retune (&built->result, NULL, (const char *const *) notes, then, &error));
  study = rw_study_tuning (&built->result, then, 0, in_english);
  g_assert_cmpstr (rw_study_column_at (study, 0)->title, ==, "Pull then");
  for (guint row = 0; row < 5; row++)
    {
      double ratio = row == 1 ? exp2 (2 / 12.0) : row == 3 ? exp2 (-4 / 12.0) : 1;
      double now = built->result.value[RW_STRINGS_TENSION + row + 1];

      expected_near ("now", value_at (study, 1, row), now, 0);
      expected_near ("then", value_at (study, 0, row), ratio * now, 1e-9 * now);
    }
}

/* Every named tuning is for some instrument: as many notes as strings, each a note. */
static void
test_tunings (void)
{
  g_autoptr (Built) built = built_new ("");
  const RwStringSet *set = &built->design.strings_set;
  int fit = 0;

  for (int i = 0; i < rw_tunings_count; i++)
    {
      g_auto (GStrv) notes = g_strsplit (rw_tunings[i].notes, " ", -1);

      for (int k = 0; notes[k] != NULL; k++)
        g_assert_true (rw_note_frequency (notes[k], 440) > 0);
      if (rw_tuning_fits (&rw_tunings[i], set))
        {
          g_assert_cmpuint (g_strv_length (notes), ==, 5);
          fit++;
        }
    }
  g_assert_cmpint (fit, >=, 5);
  g_assert_cmpint (fit, <, rw_tunings_count);
}

static void
test_tuning_refused (void)
{
  g_autoptr (Built) built = built_new ("");
  g_autoptr (GError) error = NULL;

  g_assert_null (rw_tuning_read ("D4 B3 G3 D3", &built->design.strings_set, &error));
  g_assert_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE);
  g_assert_nonnull (strstr (error->message, "5 notes"));
}

/* Pointing at a number finds it, in either plot; keys go through a column and over to the next, and stop at its
 * ends. */
static void
test_spots (void)
{
  g_autoptr (Built) built = built_new ("");
  g_autoptr (RwStudy) study = rw_study_new (RW_STUDY_PITCH, &built->result, in_english);
  g_autoptr (GArray) spots = g_array_new (FALSE, FALSE, sizeof (RwStudySpot));
  g_autoptr (RwSheet) sheet = rw_study_draw (study, 180, 60, RW_STYLE_FILE, spots);
  const RwStudySpot *all = (const RwStudySpot *) (gpointer) spots->data;
  int last = (int) spots->len - 1, fret = rw_study_step (spots, 0, 4, 0);

  g_assert_cmpuint (sheet->items->len, >, 0);
  /* Four strings with 19 frets and one with 14, twice. */
  g_assert_cmpuint (spots->len, ==, 2 * (4 * 19 + 14));
  for (guint i = 0; i < spots->len; i++)
    {
      RwPoint near = { all[i].at.x + 0.1, all[i].at.y };
      const RwStudySpot *found = &all[rw_study_nearest (spots, near)];

      g_assert_cmpuint (found->row, ==, all[i].row);
      g_assert_cmpfloat (fabs (found->at.y - all[i].at.y), <, 0.02);
    }
  g_assert_cmpint (rw_study_step (spots, -1, 1, 0), ==, 0);
  g_assert_cmpuint (all[fret].row, ==, 4);
  g_assert_cmpuint (all[rw_study_step (spots, fret, 0, 1)].column, ==, 1);
  g_assert_cmpuint (all[rw_study_step (spots, fret, 0, 1)].row, ==, 4);
  g_assert_cmpint (rw_study_step (spots, rw_study_step (spots, fret, 0, 1), 0, -1), ==, fret);
  g_assert_cmpuint (all[rw_study_step (spots, 0, 1000, 0)].row, ==, 18);
  g_assert_cmpuint (all[rw_study_step (spots, 0, 1000, 0)].column, ==, 0);
  g_assert_cmpint (rw_study_step (spots, 0, 0, -1), ==, 0);
  g_assert_cmpint (rw_study_step (spots, last, 0, 1), ==, last);
  g_assert_cmpint (rw_study_step (spots, last, 1, 0), ==, last);
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
  g_test_add_func ("/study/head", test_head);
  g_test_add_func ("/study/head/loads", test_head_loads);
  g_test_add_func ("/study/hooks", test_hooks);
  g_test_add_func ("/study/seasons", test_seasons);
  g_test_add_func ("/study/seasons/staves", test_seasons_of_staves);
  g_test_add_func ("/study/seasons/unknown", test_seasons_unknown);
  g_test_add_func ("/study/spots", test_spots);
  g_test_add_func ("/study/tuning", test_tuning);
  g_test_add_func ("/study/tuning/names", test_tunings);
  g_test_add_func ("/study/tuning/refused", test_tuning_refused);
  g_test_add_func ("/study/plots", test_plots);
  g_test_add_func ("/study/titles", test_titles);
  g_test_add_func ("/study/ticks", test_ticks);
  return g_test_run ();
}
