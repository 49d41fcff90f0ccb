#include "care_chart.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#include "chart_row.h"

#define ROW 9.5
#define LINE 4.0     /* from a row's first line of text to its second */
#define MOST 2.5     /* limits to either side */
#define HEAP 6.5     /* mm, of the highest bin */
#define CAUSES 2

/* ---- words ---- */

/* "Cutting the heel 92 %, Setting the neck's height 7 %": the operations with the largest shares in an outcome, two at
 * most; those that can't be told from chance are left out.  A new string, empty where there are none. */
static char *
causes_of (const RwScattered *scattered)
{
  g_autoptr (GPtrArray) causes = g_ptr_array_new_with_free_func (g_free);
  gboolean told[RW_OPERATIONS] = { FALSE };

  for (int turn = 0; turn < CAUSES; turn++)
    {
      int largest = -1;

      for (int k = 0; k < RW_OPERATIONS; k++)
        if (!told[k] && scattered->share[k].value > fmax (0.005, 3 * scattered->share[k].error)
            && (largest < 0 || scattered->share[k].value > scattered->share[largest].value))
          largest = k;
      if (largest < 0)
        break;
      told[largest] = TRUE;
      /* Translators: an operation of the shop, and its share in a spread */
      g_ptr_array_add (causes, g_strdup_printf (C_("share", "%s %.0f %%"), _(rw_param (RW_OPERATION (largest))->label),
                                                100 * scattered->share[largest].value));
    }
  g_ptr_array_add (causes, NULL);
  return g_strjoinv (", ", (char **) causes->pdata);
}

static char *
number (double value, const char *unit, RwStyle style)
{
  return rw_quantity_show (value, unit, rw_units_parts (style.units) > 0 ? RW_UNITS_INCH : style.units,
                           style.decimal);
}

/* "1.46 to 3.32 mm;  59.5 % are off by over 0.25 mm". */
static char *
words_for (int outcome, const RwScattered *scattered, RwStyle style)
{
  const char *unit = rw_outcome (outcome)->unit, *shown = rw_quantity_unit (unit, style.units);
  g_autofree char *low = number (scattered->summary.low.value, unit, style);
  g_autofree char *high = number (scattered->summary.high.value, unit, style);
  g_autofree char *limit = number (scattered->limit, unit, style);
  g_autofree char *outside = rw_quantity_write (100 * scattered->outside.value, "%", RW_UNITS_MM, 1, style.decimal);

  /* Translators: the range of 19 builds in 20, its unit; how many builds miss the plan by more than a limit */
  return g_strdup_printf (C_("spread", "%s to %s %s;  %s %% are off by over %s %s"), low, high, shown, outside, limit,
                          shown);
}

/* ---- drawing ---- */

typedef struct
{
  const RwChart     *chart;
  const RwScattered *scattered;
  double             base; /* y of the row's own axis */
} Heap;

/* In limits off the plan. */
static double
across (const Heap *heap, double value)
{
  double off = (value - heap->scattered->planned) / heap->scattered->limit;

  return rw_chart_across (heap->chart, CLAMP (off, -MOST, MOST));
}

/* Bins as a stepped outline; what lies beyond the axis is left out. */
static void
draw_heap (const Heap *heap)
{
  const RwScattered *scattered = heap->scattered;
  double bin = (scattered->to - scattered->from) / RW_SPREAD_BINS;
  guint highest = 1;

  for (int i = 0; i < RW_SPREAD_BINS; i++)
    highest = MAX (highest, scattered->bins[i]);
  rw_path_begin (heap->chart->sheet, RW_PEN_EDGE, RW_TINT_METAL);
  rw_path_move (heap->chart->sheet, across (heap, scattered->from), heap->base);
  for (int i = 0; i < RW_SPREAD_BINS; i++)
    {
      double y = heap->base + HEAP * scattered->bins[i] / highest;

      rw_path_line (heap->chart->sheet, across (heap, scattered->from + i * bin), y);
      rw_path_line (heap->chart->sheet, across (heap, scattered->from + (i + 1) * bin), y);
    }
  rw_path_line (heap->chart->sheet, across (heap, scattered->to), heap->base);
  rw_path_close (heap->chart->sheet);
  rw_path_end (heap->chart->sheet);
}

/* Nineteen of twenty builds lie over the wide line. */
static void
draw_interval (const Heap *heap)
{
  double low = across (heap, heap->scattered->summary.low.value);
  double high = across (heap, heap->scattered->summary.high.value);

  rw_sheet_line (heap->chart->sheet, RW_PEN_EDGE, heap->chart->axis0, heap->base, heap->chart->axis1, heap->base);
  rw_sheet_line (heap->chart->sheet, RW_PEN_OUTLINE, low, heap->base, high, heap->base);
}

static gboolean
is_shown (const RwScattered *scattered)
{
  return scattered->summary.count > 2;
}

static RwChartRoom
measure (const RwSpread *spread, RwStyle style)
{
  RwChartRoom room = { .row = ROW };

  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    if (is_shown (&spread->outcome[outcome]))
      {
        g_autofree char *words = words_for (outcome, &spread->outcome[outcome], style);
        g_autofree char *causes = causes_of (&spread->outcome[outcome]);

        room.rows++;
        room.names = fmax (room.names, rw_chart_text_width (_(rw_outcome (outcome)->label)));
        room.words = fmax (room.words, fmax (rw_chart_text_width (words), rw_chart_text_width (causes)));
      }
  return room;
}

RwChartSize
rw_spread_chart_least (const RwSpread *spread, RwStyle style)
{
  RwChartRoom room = measure (spread, style);

  return (RwChartSize){ rw_chart_least_width (&room), rw_chart_height (&room) };
}

static void
draw_row (const RwChart *chart, guint row, int outcome, const RwScattered *scattered)
{
  double y = rw_chart_line (chart, row) + LINE / 2;
  Heap heap = { chart, scattered, chart->height - RW_CHART_HEAD - (row + 1) * ROW + 1 };
  g_autofree char *words = words_for (outcome, scattered, chart->sheet->style);
  g_autofree char *causes = causes_of (scattered);

  rw_chart_name (chart, y - LINE / 2, _(rw_outcome (outcome)->label));
  if (scattered->summary.deviation.value > 1e-9)
    draw_heap (&heap);
  draw_interval (&heap);
  rw_chart_words (chart, y, 0, words);
  rw_chart_words (chart, y - LINE, 0, causes);
}

RwSheet *
rw_spread_chart (const RwSpread *spread, double width, RwStyle style)
{
  RwChartRoom room = measure (spread, style);
  RwChart chart = rw_chart_begin (_("What comes out"), style, width, &room);
  guint row = 0;

  chart.from = -MOST;
  chart.to = MOST;
  rw_chart_tick (&chart, 0, RW_PEN_CENTRE, C_("axis", "plan"));
  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    if (is_shown (&spread->outcome[outcome]))
      draw_row (&chart, row++, outcome, &spread->outcome[outcome]);
  rw_chart_tick (&chart, -1, RW_PEN_HIDDEN, C_("axis", "limit"));
  rw_chart_tick (&chart, 1, RW_PEN_HIDDEN, C_("axis", "limit"));
  return chart.sheet;
}
