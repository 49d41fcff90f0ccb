#include "care_chart.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#include "chart_row.h"

#define ROW 5.5
#define BAR 3.0
#define MOST 1.5     /* of a limit: longer bars are broken off */
#define BREAK 1.2    /* mm between the two strokes of a break */
#define BETWEEN 3.0  /* mm between columns of words */

static const char *
in_own_language (const char *english)
{
  return _(english);
}

static char *
number (double value, const char *unit, RwStyle style)
{
  return rw_quantity_show (value, unit, rw_units_parts (style.units) > 0 ? RW_UNITS_INCH : style.units,
                           style.decimal);
}

/* What stands beside a bar. */
typedef struct
{
  char *name;   /* "Neck angle as cut" */
  char *used;   /* "354 %" */
  char *result; /* "Action" */
  char *asked;  /* "±0.07°, fit, don't measure" */
} Words;

static Words
words_for (const RwCare *care, guint i, RwStyle style)
{
  const RwTolerance *tolerance = &care->tolerances[i];
  const RwCut *cut = rw_bench_cut (care->bench, i);
  const char *unit = rw_cut_unit (cut);
  g_autofree char *asked = number (tolerance->asked, unit, style);
  const char *space = g_str_equal (unit, "deg") ? "" : " ";

  return (Words){ rw_cut_label (cut, in_own_language), g_strdup_printf ("%.0f %%", 100 * tolerance->used),
                  g_strdup (_(rw_outcome (tolerance->used_of)->label)),
                  /* Translators: within what a size should stay, its unit, and what to do about it */
                  g_strdup_printf (C_("care", "±%s%s%s, %s"), asked, space, rw_quantity_unit (unit, style.units),
                                   _(rw_tolerance_advice (tolerance))) };
}

static void
clear (Words *words)
{
  g_free (words->name);
  g_free (words->used);
  g_free (words->result);
  g_free (words->asked);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Words, clear)

/* Widths of the columns of words, mm. */
typedef struct
{
  RwChartRoom room;
  double      used, result;
} Columns;

static Columns
measure (const RwCare *care, const GArray *ranked, RwStyle style)
{
  Columns columns = { { .row = ROW, .rows = ranked->len }, 0, 0 };
  double asked = 0;

  for (guint i = 0; i < ranked->len; i++)
    {
      g_auto (Words) words = words_for (care, g_array_index (ranked, guint, i), style);

      columns.room.names = fmax (columns.room.names, rw_chart_text_width (words.name));
      columns.used = fmax (columns.used, rw_chart_text_width (words.used));
      columns.result = fmax (columns.result, rw_chart_text_width (words.result));
      asked = fmax (asked, rw_chart_text_width (words.asked));
    }
  columns.room.words = columns.used + columns.result + asked + 2 * BETWEEN;
  return columns;
}

/* A bar that goes on beyond the axis ends with two slanted strokes. */
static void
draw_bar (const RwChart *chart, double y, const RwTolerance *tolerance)
{
  double end = fmin (tolerance->used, MOST), low = y + RW_CHART_CAPITAL / 2 - BAR / 2;
  double x0 = rw_chart_across (chart, 0), x1 = rw_chart_across (chart, end);
  RwTint tint = tolerance->by_fitting || tolerance->takes_care ? RW_TINT_DARK_WOOD : RW_TINT_METAL;

  rw_sheet_box (chart->sheet, RW_PEN_EDGE, tint, x0, low, x1, low + BAR);
  for (int i = 0; tolerance->used > MOST && i < 2; i++)
    {
      double x = x1 - 4 + i * BREAK;

      rw_sheet_line (chart->sheet, RW_PEN_OUTLINE, x - 0.8, low - 0.8, x + 0.8, low + BAR + 0.8);
    }
}

RwChartSize
rw_care_chart_least (const RwCare *care, RwStyle style)
{
  g_autoptr (GArray) ranked = rw_tolerances_ranked (care->bench, care->tolerances);
  Columns columns = measure (care, ranked, style);

  return (RwChartSize){ rw_chart_least_width (&columns.room), rw_chart_height (&columns.room) };
}

static void
draw_row (const RwChart *chart, const Columns *columns, const RwCare *care, guint row, guint cut)
{
  double y = rw_chart_line (chart, row), result = columns->used + BETWEEN;
  g_auto (Words) words = words_for (care, cut, chart->sheet->style);

  rw_sheet_set (chart->sheet, RW_LAYER_STRINGS,
                (RwSubject){ rw_bench_cut (care->bench, cut)->param, rw_bench_cut (care->bench, cut)->slot });
  rw_chart_name (chart, y, words.name);
  draw_bar (chart, y, &care->tolerances[cut]);
  rw_chart_figure (chart, y, columns->used, words.used);
  rw_chart_words (chart, y, result, words.result);
  rw_chart_words (chart, y, result + columns->result + BETWEEN, words.asked);
}

RwSheet *
rw_care_chart (const RwCare *care, double width, RwStyle style)
{
  g_autoptr (GArray) ranked = rw_tolerances_ranked (care->bench, care->tolerances);
  Columns columns = measure (care, ranked, style);
  RwChart chart = rw_chart_begin (_("Where care pays"), style, width, &columns.room);

  chart.to = MOST;
  rw_chart_tick (&chart, 0.5, RW_PEN_GRAIN, "50 %");
  for (guint i = 0; i < ranked->len; i++)
    draw_row (&chart, &columns, care, i, g_array_index (ranked, guint, i));
  rw_sheet_set (chart.sheet, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_chart_tick (&chart, 1, RW_PEN_HIDDEN, C_("axis", "limit"));
  return chart.sheet;
}
