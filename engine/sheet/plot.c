#include "plot.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "layout.h"

/* Paper mm. */
#define TITLE_ROOM 6.0
#define TITLE_LINE 3.8   /* from line to line */
#define FRAME_LEAST 5.0  /* high */
#define FIGURES_ROOM 11.0 /* left of the frame */
#define WORDS_ROOM 5.0    /* under it */
#define TICK 1.2
#define TICKS_APART 6.0   /* up */
#define FIGURES_APART 7.0 /* across */
#define LABELS_APART 3.8
#define LABEL_GAP 2.0
#define MARK 0.9     /* half its size */
#define POINT 1.3    /* half the size of a place that is named */
#define ARROW_LONG 2.2
#define ARROW_WIDE 1.4
#define ARROW_GAP 0.6 /* from its tip to the line */
#define MARKS_APART 5.0
#define BAR_MOST 14.0
#define BEYOND 0.05 /* of the data's range */
#define CAPITAL 2.5  /* of small lettering */

/* Five line types by five marks: twenty-five lines differ. */
static const RwPen pens[] = { RW_PEN_OUTLINE, RW_PEN_HIDDEN, RW_PEN_EDGE, RW_PEN_PHANTOM, RW_PEN_CENTRE };
#define MARKS 5

double
rw_plot_tick (double span, double pieces)
{
  double least = span / pieces, power = pow (10, floor (log10 (least)));

  /* Rounding may leave it a hair over what was meant. */
  least *= 1 - 1e-9;
  if (least <= power)
    return power;
  if (least <= 2 * power)
    return 2 * power;
  return least <= 5 * power ? 5 * power : 10 * power;
}

static double
across (const RwPlot *plot, double x)
{
  double share = (x - plot->range.x0) / (plot->range.x1 - plot->range.x0);

  return plot->frame.x0 + share * (plot->frame.x1 - plot->frame.x0);
}

static double
up (const RwPlot *plot, double y)
{
  double share = (y - plot->range.y0) / (plot->range.y1 - plot->range.y0);

  return plot->frame.y0 + share * (plot->frame.y1 - plot->frame.y0);
}

/* ---- frame and ticks ---- */

static char *
figure (const RwPlot *plot, double value, double tick)
{
  int decimals = (int) fmax (0, -floor (log10 (tick) + 1e-9));

  return rw_quantity_write (value, "", RW_UNITS_MM, decimals, plot->sheet->style.decimal);
}

static void
ticks_up (RwPlot *plot)
{
  const RwBox *frame = &plot->frame, *range = &plot->range;
  double tick = rw_plot_tick (range->y1 - range->y0, fmax (1.5, (frame->y1 - frame->y0) / TICKS_APART));

  for (double i = ceil (range->y0 / tick - 1e-9); i * tick <= range->y1; i++)
    {
      double y = up (plot, i * tick);
      gboolean is_zero = fabs (i) < 0.5;
      g_autofree char *text = figure (plot, i * tick, tick);

      rw_sheet_line (plot->sheet, is_zero ? RW_PEN_EDGE : RW_PEN_GRAIN, frame->x0, y, frame->x1, y);
      rw_sheet_line (plot->sheet, RW_PEN_EDGE, frame->x0 - TICK, y, frame->x0, y);
      rw_sheet_text (plot->sheet, frame->x0 - LABEL_GAP, y - CAPITAL / 2, RW_ALIGN_END, RW_LETTERS_SMALL, text);
    }
}

/* The distance of ticks across at which the figures, which get longer with finer ticks, keep apart: once too near,
 * never as near again. */
static double
tick_across (const RwPlot *plot, gboolean whole)
{
  const RwBox *frame = &plot->frame, *range = &plot->range;
  double span = range->x1 - range->x0, apart = FIGURES_APART, tick = 1;

  for (int round = 0; round < 3; round++)
    {
      tick = rw_plot_tick (span, fmax (1, (frame->x1 - frame->x0) / apart));
      if (whole)
        tick = fmax (1, tick);
      g_autofree char *first = figure (plot, ceil (range->x0 / tick) * tick, tick);
      g_autofree char *last = figure (plot, floor (range->x1 / tick) * tick, tick);
      double widest = fmax (rw_lettering_width (first), rw_lettering_width (last));

      apart = fmax (apart, widest * rw_letters_size (RW_LETTERS_SMALL) + LABEL_GAP);
    }
  return tick;
}

/* What the axis is called stands at the right end of all, in the row of the figures, and the figures make room. */
static void
ticks_across (RwPlot *plot, const RwPlotJob *job)
{
  double tick = tick_across (plot, job->whole), size = rw_letters_size (RW_LETTERS_SMALL);
  double title = job->place.x1 - rw_lettering_width (job->across) * size - LABEL_GAP;

  for (double i = ceil (plot->range.x0 / tick - 1e-9); i * tick <= plot->range.x1 + 1e-9 * tick; i++)
    {
      double x = across (plot, i * tick);
      g_autofree char *text = figure (plot, i * tick, tick);

      rw_sheet_line (plot->sheet, RW_PEN_EDGE, x, plot->frame.y0 - TICK, x, plot->frame.y0);
      if (x + rw_lettering_width (text) * size / 2 < title)
        rw_plot_word (plot, i * tick, text);
    }
  rw_sheet_text (plot->sheet, job->place.x1, plot->frame.y0 - WORDS_ROOM + 0.5, RW_ALIGN_END, RW_LETTERS_SMALL,
                 job->across);
}

/* Room beyond the data, but for an end at 0, and for a plot where all is the same. */
static void
widen (RwBox *range)
{
  double span = range->y1 - range->y0;

  if (!(span > 1e-9 * fmax (1, fabs (range->y1))))
    {
      range->y0 -= 1;
      range->y1 += 1;
      return;
    }
  range->y0 -= range->y0 < 0 || range->y0 > 0 ? BEYOND * span : 0;
  range->y1 += range->y1 < 0 || range->y1 > 0 ? BEYOND * span : 0;
}

/* Where the first line of a text ends that may be so wide: at the last space that fits, else at the first. */
static const char *
line_end (const char *text, double width)
{
  const char *end = NULL;

  for (const char *space = strchr (text, ' '); space != NULL; space = strchr (space + 1, ' '))
    {
      g_autofree char *line = g_strndup (text, (gsize) (space - text));

      if (end != NULL && rw_lettering_width (line) * rw_letters_size (RW_LETTERS_SMALL) > width)
        break;
      end = space;
    }
  if (end == NULL || rw_lettering_width (text) * rw_letters_size (RW_LETTERS_SMALL) <= width)
    end = text + strlen (text);
  return end;
}

static double
title_width (double width)
{
  return width - LABEL_GAP;
}

int
rw_plot_title_lines (const char *title, double width)
{
  int lines = 1;

  for (const char *end = line_end (title, title_width (width)); *end != '\0';
       end = line_end (end + 1, title_width (width)))
    lines++;
  return lines;
}

static void
put_title (RwSheet *sheet, const RwPlotJob *job)
{
  double width = title_width (job->place.x1 - job->place.x0), y = job->place.y1 - CAPITAL;
  const char *text = job->title;

  while (*text != '\0')
    {
      const char *end = line_end (text, width);
      g_autofree char *line = g_strndup (text, (gsize) (end - text));

      rw_sheet_text (sheet, job->place.x0 + LABEL_GAP, y, RW_ALIGN_START, RW_LETTERS_SMALL, line);
      y -= TITLE_LINE;
      text = *end != '\0' ? end + 1 : end;
    }
}

RwPlot
rw_plot_begin (RwSheet *sheet, const RwPlotJob *job)
{
  const RwBox *place = &job->place;
  RwPlot plot = { .sheet = sheet, .range = job->range };

  plot.frame = (RwBox){ place->x0 + FIGURES_ROOM, place->y0 + WORDS_ROOM, place->x1 - job->room,
                        place->y1 - TITLE_ROOM - (MAX (job->title_lines, 1) - 1) * TITLE_LINE };
  plot.frame.y1 = MAX (plot.frame.y1, plot.frame.y0 + FRAME_LEAST);
  widen (&plot.range);
  rw_sheet_set (sheet, RW_LAYER_AXES, RW_SUBJECT_NONE);
  ticks_up (&plot);
  rw_sheet_line (sheet, RW_PEN_EDGE, plot.frame.x0, plot.frame.y0, plot.frame.x0, plot.frame.y1);
  rw_sheet_line (sheet, RW_PEN_EDGE, plot.frame.x0, plot.frame.y0, plot.frame.x1, plot.frame.y0);
  if (job->across != NULL)
    ticks_across (&plot, job);
  put_title (sheet, job);
  rw_sheet_set (sheet, RW_LAYER_STRINGS, RW_SUBJECT_NONE);
  return plot;
}

/* ---- lines ---- */

/* Circle, square, triangle, diamond, upturned triangle. */
static void
add_mark (RwPlot *plot, double x, double y, int shape)
{
  static const RwPoint corners[MARKS][4] = {
    { { 0, 0 } },
    { { -1, -1 }, { 1, -1 }, { 1, 1 }, { -1, 1 } },
    { { -1.1, -0.8 }, { 1.1, -0.8 }, { 0, 1.2 }, { 0, 1.2 } },
    { { 0, -1.3 }, { 1.3, 0 }, { 0, 1.3 }, { -1.3, 0 } },
    { { -1.1, 0.8 }, { 1.1, 0.8 }, { 0, -1.2 }, { 0, -1.2 } },
  };
  RwPoint at[4];

  if (shape == 0)
    {
      rw_sheet_circle (plot->sheet, RW_PEN_EDGE, RW_TINT_PAPER, x, y, MARK);
      return;
    }
  for (int i = 0; i < 4; i++)
    at[i] = (RwPoint){ x + MARK * corners[shape][i].x, y + MARK * corners[shape][i].y };
  rw_sheet_polygon (plot->sheet, RW_PEN_EDGE, RW_TINT_PAPER, at, 4);
}

static void
draw_runs (RwPlot *plot, const RwPoint *points, int count, RwPen pen)
{
  gboolean down = FALSE;

  rw_path_begin (plot->sheet, pen, RW_TINT_NONE);
  for (int i = 0; i < count; i++)
    {
      double x = across (plot, points[i].x), y = up (plot, points[i].y);

      if (!isfinite (y))
        down = FALSE;
      else if (!down)
        {
          rw_path_move (plot->sheet, x, y);
          down = TRUE;
        }
      else
        rw_path_line (plot->sheet, x, y);
    }
  rw_path_end (plot->sheet);
}

/* Marks far enough apart to leave the line type to be seen; each line starts at another place. */
static RwPoint
draw_marks (RwPlot *plot, const RwPoint *points, int count)
{
  double next = plot->frame.x0 + plot->lines % 3 * MARKS_APART / 3;
  RwPoint end = { NAN, NAN };

  for (int i = 0; i < count; i++)
    {
      RwPoint at = { across (plot, points[i].x), up (plot, points[i].y) };

      if (!isfinite (at.y))
        continue;
      end = at;
      if (at.x < next)
        continue;
      add_mark (plot, at.x, at.y, plot->lines % MARKS);
      next = at.x + MARKS_APART;
    }
  return end;
}

void
rw_plot_line (RwPlot *plot, const RwPoint *points, int count, const char *label)
{
  RwPoint end;
  int any = 0;

  for (int i = 0; i < count; i++)
    any += isfinite (points[i].y) ? 1 : 0;
  if (any == 0 || plot->lines == RW_PLOT_LINES_MAX)
    return;
  draw_runs (plot, points, count, pens[plot->lines % (int) G_N_ELEMENTS (pens)]);
  end = draw_marks (plot, points, count);
  plot->labels[plot->lines++] = (RwPlotLabel){ end, label };
}

/* ---- places on lines ---- */

RwPoint
rw_plot_place (const RwPlot *plot, double x, double y)
{
  return (RwPoint){ across (plot, x), up (plot, y) };
}

/* Small lettering on a ground of paper, so that no line of the plot runs through it. */
static void
add_figure (RwPlot *plot, double x, double y, RwAlign align, const char *text)
{
  double wide = rw_lettering_width (text) * rw_letters_size (RW_LETTERS_SMALL);
  double left = align == RW_ALIGN_START ? x : align == RW_ALIGN_MIDDLE ? x - wide / 2 : x - wide;

  rw_sheet_box (plot->sheet, RW_PEN_NONE, RW_TINT_PAPER, left - 0.4, y - 0.4, left + wide + 0.4, y + CAPITAL + 0.4);
  rw_sheet_text (plot->sheet, x, y, align, RW_LETTERS_SMALL, text);
}

/* The word stands over the place, towards the middle of the plot. */
void
rw_plot_point (RwPlot *plot, double x, double y, const char *word)
{
  RwPoint at = rw_plot_place (plot, x, y);
  gboolean right = at.x < (plot->frame.x0 + plot->frame.x1) / 2;
  gboolean fits_over = at.y + 2 * POINT + CAPITAL < plot->frame.y1;
  gboolean fits_under = at.y - 2 * POINT - CAPITAL > plot->frame.y0;
  gboolean over = plot->points++ % 2 == 0 ? fits_over : !fits_under;

  rw_sheet_circle (plot->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, at.x, at.y, POINT);
  add_figure (plot, at.x + (right ? 1.5 : -1.5) * POINT, over ? at.y + 1.5 * POINT : at.y - 1.5 * POINT - CAPITAL,
              right ? RW_ALIGN_START : RW_ALIGN_END, word);
}

/* Figures stand in a row on top; one that would touch the one before stands a row lower. */
void
rw_plot_load (RwPlot *plot, double x, double y, const char *figure)
{
  RwPoint at = rw_plot_place (plot, x, y), head[4];
  double half = rw_lettering_width (figure) * rw_letters_size (RW_LETTERS_SMALL) / 2;
  gboolean lower = plot->loads % 2 == 1 && at.x - half < plot->load_end;
  double top = plot->frame.y1 - CAPITAL - (lower ? CAPITAL + 1 : 0);

  at.y += ARROW_GAP;
  rw_sheet_line (plot->sheet, RW_PEN_EDGE, at.x, at.y, at.x, fmax (at.y + ARROW_LONG, top - 0.8));
  head[0] = head[3] = at;
  head[1] = (RwPoint){ at.x - ARROW_WIDE / 2, at.y + ARROW_LONG };
  head[2] = (RwPoint){ at.x + ARROW_WIDE / 2, at.y + ARROW_LONG };
  rw_sheet_polygon (plot->sheet, RW_PEN_EDGE, RW_TINT_METAL, head, 4);
  add_figure (plot, at.x, top, RW_ALIGN_MIDDLE, figure);
  plot->loads++;
  plot->load_end = at.x + half + 1;
}

/* ---- bars and limits ---- */

void
rw_plot_bar (RwPlot *plot, RwBox span, double limit, const char *text)
{
  double x0 = across (plot, span.x0), x1 = across (plot, span.x1);
  double y0 = up (plot, span.y0), y1 = up (plot, span.y1);
  gboolean above = fabs (span.y1) >= fabs (span.y0);
  double over = fmax (0, x1 - x0 - BAR_MOST) / 2, end = above ? y1 : y0;

  if (isfinite (limit) && fabs (up (plot, limit) - end) < CAPITAL + 2)
    end = above ? fmax (end, up (plot, limit)) : fmin (end, up (plot, limit));
  x0 += over;
  x1 -= over;
  rw_sheet_box (plot->sheet, RW_PEN_EDGE, RW_TINT_METAL, x0, y0, x1, y1);
  if (text != NULL)
    add_figure (plot, (x0 + x1) / 2, above ? end + 1 : end - CAPITAL - 1, RW_ALIGN_MIDDLE, text);
}

void
rw_plot_limit (RwPlot *plot, double y, double from, double to, const char *label)
{
  double x0 = across (plot, from), x1 = across (plot, to), at = up (plot, y);

  rw_sheet_line (plot->sheet, RW_PEN_OUTLINE, x0, at, x1, at);
  if (label != NULL)
    rw_sheet_text (plot->sheet, x1 + LABEL_GAP, at - CAPITAL / 2, RW_ALIGN_START, RW_LETTERS_SMALL, label);
}

void
rw_plot_word (RwPlot *plot, double x, const char *word)
{
  rw_sheet_text (plot->sheet, across (plot, x), plot->frame.y0 - WORDS_ROOM + 0.5, RW_ALIGN_MIDDLE,
                 RW_LETTERS_SMALL, word);
}

/* ---- names at the ends ---- */

static int
compare_labels (const void *a, const void *b)
{
  const RwPlotLabel *one = a, *other = b;

  return one->at.y < other->at.y ? -1 : one->at.y > other->at.y;
}

/* From the lowest up each keeps its distance from the one under it; then the heap slides down so that it lies
 * about its lines, and stays on the frame. */
static void
spread (const RwPlot *plot, const RwPlotLabel *labels, double *y)
{
  double above = 0, least = plot->frame.y0 + 1;

  for (int i = 0; i < plot->lines; i++)
    {
      y[i] = i > 0 ? fmax (labels[i].at.y, y[i - 1] + LABELS_APART) : fmax (labels[i].at.y, least);
      above += (y[i] - labels[i].at.y) / plot->lines;
    }
  for (int i = 0; i < plot->lines; i++)
    y[i] = fmax (y[i] - above / 2, least + i * LABELS_APART);
  for (int i = plot->lines - 1; i > 0; i--)
    y[i - 1] = fmin (y[i - 1], y[i] - LABELS_APART);
}

void
rw_plot_end (RwPlot *plot)
{
  double y[RW_PLOT_LINES_MAX];

  qsort (plot->labels, (gsize) plot->lines, sizeof plot->labels[0], compare_labels);
  spread (plot, plot->labels, y);
  for (int i = 0; i < plot->lines; i++)
    {
      const RwPlotLabel *label = &plot->labels[i];
      double x = plot->frame.x1 + LABEL_GAP;

      if (label->text == NULL)
        continue;
      rw_sheet_line (plot->sheet, RW_PEN_CONSTRUCTION, label->at.x + MARK, label->at.y, x + LABEL_GAP / 2, y[i]);
      rw_sheet_text (plot->sheet, x + LABEL_GAP, y[i] - CAPITAL / 2, RW_ALIGN_START, RW_LETTERS_SMALL, label->text);
    }
}
