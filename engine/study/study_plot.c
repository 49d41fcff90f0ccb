/* The plots of a study, side by side, from its table. */
#include "study_parts.h"

#include <string.h>

#include "sheet/layout.h"
#include "sheet/plot.h"

#define BETWEEN 4.0
#define BAR_WIDTH 0.5   /* of the distance of two bars */
#define ABOVE_LOADS 0.35 /* of the range: room for the figures of loads */

typedef struct
{
  const RwStudy *study;
  RwSheet *sheet;
  RwStyle style;
  int panel;
  GArray *spots; /* NULL: nobody asks */
} Panel;

/* Lengths go by inches where the user does. */
static double
shown (const Panel *panel, const char *unit, double value)
{
  gboolean inches = panel->style.units != RW_UNITS_MM && unit != NULL && strcmp (unit, "mm") == 0;

  return inches ? value / RW_MM_PER_INCH : value;
}

static double
row_at (const Panel *panel, guint row)
{
  return shown (panel, panel->study->row_unit, g_array_index (panel->study->rows, RwStudyRow, row).at);
}

static const RwStudyColumn *
column_of (const Panel *panel, guint i)
{
  const RwStudyColumn *column = rw_study_column_at (panel->study, i);

  return column->panel == panel->panel ? column : NULL;
}

/* ---- ranges ---- */

static gboolean
has_role (const Panel *panel, RwColumnRole role)
{
  for (guint i = 0; i < panel->study->columns->len; i++)
    if (column_of (panel, i) != NULL && column_of (panel, i)->role == role)
      return TRUE;
  return FALSE;
}

static void
take_range (const Panel *panel, RwBox *range)
{
  for (guint i = 0; i < panel->study->columns->len; i++)
    {
      const RwStudyColumn *column = column_of (panel, i);

      for (guint row = 0; column != NULL && column->role != RW_COLUMN_LOAD && row < panel->study->rows->len; row++)
        if (isfinite (column->values[row]))
          {
            double value = shown (panel, column->unit, column->values[row]);

            range->y0 = fmin (range->y0, value);
            range->y1 = fmax (range->y1, value);
          }
    }
}

/* 0 is in it, unless the study says otherwise: heights and errors alike are read from there. */
static RwBox
range_of (const Panel *panel)
{
  const RwStudy *study = panel->study;
  gboolean along = study->row_unit != NULL && study->rows->len > 0, loose = study->free_range;
  RwBox range = { along ? row_at (panel, 0) : -0.5, loose ? INFINITY : 0, 0, loose ? -INFINITY : 0 };
  Panel other = *panel;

  range.x1 = along ? row_at (panel, study->rows->len - 1) : study->rows->len - 0.5;
  if (!(range.x1 > range.x0))
    range.x1 = range.x0 + 1;
  take_range (panel, &range);
  other.panel = 1 - panel->panel;
  if (study->same_range)
    take_range (&other, &range);
  if (!(range.y0 <= range.y1))
    range.y0 = range.y1 = 0;

  double high = range.y1 - range.y0;
  if (has_role (panel, RW_COLUMN_LOAD) || (study->same_range && has_role (&other, RW_COLUMN_LOAD)))
    range.y1 += ABOVE_LOADS * high;
  if (!along)
    {
      /* The figures over and under the bars. */
      range.y0 -= range.y0 < 0 ? 0.2 * high : 0;
      range.y1 += 0.12 * high;
    }
  return range;
}

/* What counts is named; of anything else the unit is enough, as the panel's title says what it is.  NULL: nothing goes
 * along the axis. */
static const char *
axis_title (const Panel *panel)
{
  const RwStudy *study = panel->study;

  if (study->row_unit == NULL)
    return NULL;
  if (*study->row_unit == '\0')
    return study->row_title;
  return rw_quantity_unit (study->row_unit, panel->style.units);
}

/* A line that is alone needs no name. */
static gboolean
has_lines (const Panel *panel)
{
  int lines = 0;

  for (guint i = 0; i < panel->study->columns->len; i++)
    if (column_of (panel, i) != NULL && column_of (panel, i)->role == RW_COLUMN_LINE)
      lines++;
  return lines > 1;
}

static double
room_for_labels (const Panel *panel)
{
  double widest = 0;

  for (guint i = 0; i < panel->study->columns->len && has_lines (panel); i++)
    {
      const RwStudyColumn *column = column_of (panel, i);

      if (column != NULL && column->role == RW_COLUMN_LINE)
        widest = fmax (widest, rw_lettering_width (column->label));
    }
  widest += widest > 0 ? 2 : 0; /* the leader */
  if (axis_title (panel) != NULL)
    widest = fmax (widest, rw_lettering_width (axis_title (panel)));
  return widest * rw_letters_size (RW_LETTERS_SMALL) + 2;
}

/* ---- columns ---- */

static void
add_line (const Panel *panel, RwPlot *plot, const RwStudyColumn *column)
{
  guint count = panel->study->rows->len;
  g_autofree RwPoint *points = g_new (RwPoint, count);

  for (guint row = 0; row < count; row++)
    points[row] = (RwPoint){ row_at (panel, row), shown (panel, column->unit, column->values[row]) };
  rw_plot_line (plot, points, (int) count, has_lines (panel) ? column->label : NULL);
}

static void
add_points (const Panel *panel, RwPlot *plot, const RwStudyColumn *column)
{
  for (guint row = 0; row < panel->study->rows->len; row++)
    if (isfinite (column->values[row]))
      rw_plot_point (plot, row_at (panel, row), shown (panel, column->unit, column->values[row]), column->label);
}

/* The line that loads stand on: the first of the panel. */
static const RwStudyColumn *
ground (const Panel *panel)
{
  for (guint i = 0; i < panel->study->columns->len; i++)
    if (column_of (panel, i) != NULL && column_of (panel, i)->role == RW_COLUMN_LINE)
      return column_of (panel, i);
  return NULL;
}

/* How high a number stands in its plot, in the units of the axis. */
static double
height_of (const Panel *panel, const RwStudyColumn *column, guint row)
{
  const RwStudyColumn *under = column->role == RW_COLUMN_LOAD ? ground (panel) : column;

  return isfinite (column->values[row]) && under != NULL ? shown (panel, under->unit, under->values[row]) : NAN;
}

static void
add_loads (const Panel *panel, RwPlot *plot, const RwStudyColumn *column)
{
  for (guint row = 0; row < panel->study->rows->len; row++)
    {
      double y = height_of (panel, column, row);
      g_autofree char *figure = NULL;

      if (!isfinite (y))
        continue;
      figure = rw_quantity_show (column->values[row], column->unit, panel->style.units, panel->style.decimal);
      rw_plot_load (plot, row_at (panel, row), y, figure);
    }
}

/* The level in the same row; NaN: none. */
static double
limit_of (const Panel *panel, guint row)
{
  for (guint i = 0; i < panel->study->columns->len; i++)
    if (column_of (panel, i) != NULL && column_of (panel, i)->role == RW_COLUMN_LIMIT)
      return shown (panel, column_of (panel, i)->unit, column_of (panel, i)->values[row]);
  return NAN;
}

static void
add_bars (const Panel *panel, RwPlot *plot, const RwStudyColumn *column)
{
  gboolean is_length = strcmp (column->unit, "mm") == 0, inches = panel->style.units != RW_UNITS_MM;
  int decimals = !is_length ? 0 : inches ? 4 : 2;

  for (guint row = 0; row < panel->study->rows->len; row++)
    {
      double value = shown (panel, column->unit, column->values[row]);
      RwBox span = { row - BAR_WIDTH / 2, fmin (value, 0), row + BAR_WIDTH / 2, fmax (value, 0) };
      g_autofree char *text = NULL;

      if (!isfinite (value))
        continue;
      text = rw_quantity_write (value, "", RW_UNITS_MM, decimals, panel->style.decimal);
      rw_plot_bar (plot, span, limit_of (panel, row), text);
    }
}

static void
add_limits (const Panel *panel, RwPlot *plot, const RwStudyColumn *column)
{
  for (guint row = 0; row < panel->study->rows->len; row++)
    if (isfinite (column->values[row]))
      rw_plot_limit (plot, shown (panel, column->unit, column->values[row]), row - 0.4, row + 0.4, NULL);
}

static void
add_column (const Panel *panel, RwPlot *plot, const RwStudyColumn *column)
{
  static void (*const draw[]) (const Panel *, RwPlot *, const RwStudyColumn *) = {
    [RW_COLUMN_LINE] = add_line,  [RW_COLUMN_POINT] = add_points,  [RW_COLUMN_LOAD] = add_loads,
    [RW_COLUMN_BAR] = add_bars,   [RW_COLUMN_LIMIT] = add_limits,
  };

  draw[column->role](panel, plot, column);
}

static void
add_spots (const Panel *panel, const RwPlot *plot, guint i)
{
  for (guint row = 0; panel->spots != NULL && row < panel->study->rows->len; row++)
    {
      double y = height_of (panel, rw_study_column_at (panel->study, i), row);
      RwStudySpot spot = { rw_plot_place (plot, row_at (panel, row), y), plot->frame, i, row };

      if (isfinite (y))
        g_array_append_val (panel->spots, spot);
    }
}

/* ---- panels ---- */

/* With the unit of its axis. */
static char *
title_of (const Panel *panel)
{
  const char *title = panel->study->panels[panel->panel];

  for (guint i = 0; i < panel->study->columns->len; i++)
    if (column_of (panel, i) != NULL && column_of (panel, i)->role != RW_COLUMN_LOAD)
      {
        const char *unit = column_of (panel, i)->unit;
        const char *shown_unit = rw_quantity_unit (unit, panel->style.units);

        return *unit != '\0' ? g_strdup_printf ("%s, %s", title, shown_unit) : g_strdup (title);
      }
  return g_strdup (title);
}

static void
draw_panel (const Panel *panel, RwBox place, int title_lines)
{
  const RwStudy *study = panel->study;
  g_autofree char *title = title_of (panel);
  const char *across = axis_title (panel);
  RwPlotJob job = { place, range_of (panel), title, title_lines, across, study->whole, room_for_labels (panel) };
  RwPlot plot = rw_plot_begin (panel->sheet, &job);

  /* Places that are named lie over all lines. */
  for (int named = 0; named <= 1; named++)
    for (guint i = 0; i < study->columns->len; i++)
      if (column_of (panel, i) != NULL && (column_of (panel, i)->role == RW_COLUMN_POINT) == named)
        add_column (panel, &plot, column_of (panel, i));
  for (guint i = 0; i < study->columns->len; i++)
    if (column_of (panel, i) != NULL)
      add_spots (panel, &plot, i);
  for (guint row = 0; row < study->rows->len && across == NULL; row++)
    rw_plot_word (&plot, row, g_array_index (study->rows, RwStudyRow, row).name);
  rw_plot_end (&plot);
}

RwSheet *
rw_study_draw (const RwStudy *study, double width, double height, RwStyle style, GArray *spots)
{
  RwSheet *sheet = rw_sheet_new (study->title, style);
  int count = study->panels[1] != NULL ? 2 : 1;
  double each = (width - (count - 1) * BETWEEN) / count;
  int title_lines = 1;

  for (int i = 0; i < count; i++)
    {
      Panel panel = { study, sheet, style, i, spots };
      g_autofree char *title = title_of (&panel);

      title_lines = MAX (title_lines, rw_plot_title_lines (title, each));
    }
  for (int i = 0; i < count; i++)
    {
      Panel panel = { study, sheet, style, i, spots };
      double x0 = i * (each + BETWEEN);

      draw_panel (&panel, (RwBox){ x0, 0, x0 + each, height }, title_lines);
    }
  return sheet;
}
