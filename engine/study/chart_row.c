#include "chart_row.h"

#include <math.h>

#include "sheet/layout.h"

#define GAP 2.0
#define LEAST_AXIS 43.0
#define MOST_AXIS 130.0

double
rw_chart_text_width (const char *text)
{
  return rw_lettering_width (text) * rw_letters_size (RW_LETTERS_SMALL);
}

double
rw_chart_least_width (const RwChartRoom *room)
{
  return room->names + 2 * GAP + LEAST_AXIS + GAP + room->words;
}

double
rw_chart_height (const RwChartRoom *room)
{
  return RW_CHART_HEAD + room->rows * room->row + 1;
}

RwChart
rw_chart_begin (const char *title, RwStyle style, double width, const RwChartRoom *room)
{
  RwChart chart = { .sheet = rw_sheet_new (title, style), .row = room->row };

  chart.width = fmax (width, rw_chart_least_width (room));
  chart.height = rw_chart_height (room);
  chart.axis0 = room->names + 2 * GAP;
  chart.axis1 = fmin (chart.width - room->words - GAP, chart.axis0 + MOST_AXIS);
  rw_sheet_set (chart.sheet, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_sheet_line (chart.sheet, RW_PEN_EDGE, chart.axis0, 0, chart.axis0, chart.height - RW_CHART_HEAD);
  return chart;
}

double
rw_chart_across (const RwChart *chart, double value)
{
  return chart->axis0 + (value - chart->from) / (chart->to - chart->from) * (chart->axis1 - chart->axis0);
}

double
rw_chart_line (const RwChart *chart, guint row)
{
  return chart->height - RW_CHART_HEAD - row * chart->row - (chart->row + RW_CHART_CAPITAL) / 2;
}

void
rw_chart_tick (const RwChart *chart, double value, RwPen pen, const char *figure)
{
  double x = rw_chart_across (chart, value), top = chart->height - RW_CHART_HEAD;

  if (pen != RW_PEN_NONE)
    rw_sheet_line (chart->sheet, pen, x, 0, x, top);
  rw_sheet_line (chart->sheet, RW_PEN_EDGE, x, top, x, top + 1.2);
  rw_sheet_text (chart->sheet, x, top + 2.2, RW_ALIGN_MIDDLE, RW_LETTERS_SMALL, figure);
}

void
rw_chart_name (const RwChart *chart, double y, const char *name)
{
  rw_sheet_text (chart->sheet, chart->axis0 - GAP, y, RW_ALIGN_END, RW_LETTERS_SMALL, name);
}

void
rw_chart_words (const RwChart *chart, double y, double right, const char *words)
{
  rw_sheet_text (chart->sheet, chart->axis1 + GAP + right, y, RW_ALIGN_START, RW_LETTERS_SMALL, words);
}

void
rw_chart_figure (const RwChart *chart, double y, double right, const char *figure)
{
  rw_sheet_text (chart->sheet, chart->axis1 + GAP + right, y, RW_ALIGN_END, RW_LETTERS_SMALL, figure);
}
