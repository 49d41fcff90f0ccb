/* The plots of a study, side by side, from its table. */
#include "study_parts.h"

#include <string.h>

#include "sheet/layout.h"
#include "sheet/plot.h"

#define BETWEEN 4.0
#define BAR_WIDTH 0.5 /* of the distance of two bars */

typedef struct
{
  const RwStudy *study;
  RwSheet *sheet;
  RwStyle style;
  int panel;
} Panel;

/* Lengths go by inches where the user does. */
static double
shown (const Panel *panel, const RwStudyColumn *column, double value)
{
  gboolean inches = panel->style.units != RW_UNITS_MM && strcmp (column->unit, "mm") == 0;

  return inches ? value / RW_MM_PER_INCH : value;
}

static const RwStudyColumn *
column_of (const Panel *panel, guint i)
{
  const RwStudyColumn *column = &g_array_index (panel->study->columns, RwStudyColumn, i);

  return column->panel == panel->panel ? column : NULL;
}

static void
take_range (const Panel *panel, RwBox *range)
{
  for (guint i = 0; i < panel->study->columns->len; i++)
    {
      const RwStudyColumn *column = column_of (panel, i);

      for (guint row = 0; column != NULL && row < panel->study->rows->len; row++)
        if (isfinite (column->values[row]))
          {
            range->y0 = fmin (range->y0, shown (panel, column, column->values[row]));
            range->y1 = fmax (range->y1, shown (panel, column, column->values[row]));
          }
    }
}

/* 0 is always in it: heights and errors alike are read from there. */
static RwBox
range_of (const Panel *panel)
{
  const RwStudy *study = panel->study;
  RwBox range = { study->counted ? study->first_row : -0.5, 0, 0, 0 };
  Panel other = *panel;

  range.x1 = range.x0 + fmax (1, study->rows->len - (study->counted ? 1 : 0));
  take_range (panel, &range);
  other.panel = 1 - panel->panel;
  if (study->same_range)
    take_range (&other, &range);
  if (!study->counted)
    {
      /* The figures over and under the bars. */
      double high = range.y1 - range.y0;

      range.y0 -= range.y0 < 0 ? 0.2 * high : 0;
      range.y1 += 0.12 * high;
    }
  return range;
}

static double
room_for_labels (const Panel *panel)
{
  double widest = panel->study->counted ? rw_lettering_width (panel->study->row_title) - 1 : 0;

  for (guint i = 0; i < panel->study->columns->len; i++)
    {
      const RwStudyColumn *column = column_of (panel, i);

      if (column != NULL && column->label != NULL)
        widest = fmax (widest, rw_lettering_width (column->label));
    }
  return widest * rw_letters_size (RW_LETTERS_SMALL) + (widest > 0 ? 5 : 1);
}

static void
add_line (const Panel *panel, RwPlot *plot, const RwStudyColumn *column)
{
  guint count = panel->study->rows->len;
  g_autofree RwPoint *points = g_new (RwPoint, count);

  for (guint row = 0; row < count; row++)
    points[row] = (RwPoint){ panel->study->first_row + (int) row, shown (panel, column, column->values[row]) };
  rw_plot_line (plot, points, (int) count, column->label);
}

static void
add_bars (const Panel *panel, RwPlot *plot, const RwStudyColumn *column)
{
  gboolean is_length = strcmp (column->unit, "mm") == 0, inches = panel->style.units != RW_UNITS_MM;
  int decimals = !is_length ? 0 : inches ? 4 : 2;

  for (guint row = 0; row < panel->study->rows->len; row++)
    {
      double value = shown (panel, column, column->values[row]);
      RwBox span = { row - BAR_WIDTH / 2, fmin (value, 0), row + BAR_WIDTH / 2, fmax (value, 0) };
      g_autofree char *text = NULL;

      if (!isfinite (value))
        continue;
      text = rw_quantity_write (value, "", RW_UNITS_MM, decimals, panel->style.decimal);
      rw_plot_bar (plot, span, text);
    }
}

static void
add_limits (const Panel *panel, RwPlot *plot, const RwStudyColumn *column)
{
  for (guint row = 0; row < panel->study->rows->len; row++)
    if (isfinite (column->values[row]))
      rw_plot_limit (plot, shown (panel, column, column->values[row]), row - 0.4, row + 0.4, NULL);
}

static void
add_column (const Panel *panel, RwPlot *plot, const RwStudyColumn *column)
{
  switch (column->role)
    {
    case RW_COLUMN_LINE:
      add_line (panel, plot, column);
      break;
    case RW_COLUMN_BAR:
      add_bars (panel, plot, column);
      break;
    case RW_COLUMN_LIMIT:
      add_limits (panel, plot, column);
      break;
    }
}

static char *
title_of (const Panel *panel)
{
  const char *title = panel->study->panels[panel->panel];

  for (guint i = 0; i < panel->study->columns->len; i++)
    {
      const RwStudyColumn *column = column_of (panel, i);

      if (column != NULL && strcmp (column->unit, "mm") == 0)
        return g_strdup_printf ("%s, %s", title, panel->style.units == RW_UNITS_MM ? "mm" : "in");
    }
  return g_strdup (title);
}

static void
draw_panel (const Panel *panel, RwBox place)
{
  const RwStudy *study = panel->study;
  g_autofree char *title = title_of (panel);
  RwPlotJob job = { place, range_of (panel), title, study->counted ? study->row_title : NULL,
                    room_for_labels (panel) };
  RwPlot plot = rw_plot_begin (panel->sheet, &job);

  for (guint i = 0; i < study->columns->len; i++)
    if (column_of (panel, i) != NULL)
      add_column (panel, &plot, column_of (panel, i));
  for (guint row = 0; row < study->rows->len && !study->counted; row++)
    rw_plot_word (&plot, row, g_ptr_array_index (study->rows, row));
  rw_plot_end (&plot);
}

RwSheet *
rw_study_draw (const RwStudy *study, double width, double height, RwStyle style)
{
  RwSheet *sheet = rw_sheet_new (rw_study_title (study->kind), style);
  int count = study->panels[1] != NULL ? 2 : 1;
  double each = (width - (count - 1) * BETWEEN) / count;

  for (int i = 0; i < count; i++)
    {
      Panel panel = { study, sheet, style, i };
      double x0 = i * (each + BETWEEN);

      draw_panel (&panel, (RwBox){ x0, 0, x0 + each, height });
    }
  return sheet;
}
