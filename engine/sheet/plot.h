/* Plots on a sheet: axes, lines, bars and limits, read in black and white.
 *
 * A plot takes a box of a sheet that is meant to be laid out at a scale of 1: its millimetres are those of the
 * paper.  Lines are told apart by line type and by the shape of their marks, and carry their names at their
 * right ends, so that no key is needed.  Ticks stand at 1, 2 or 5 times a power of ten.
 */
#pragma once

#include "sheet.h"

#define RW_PLOT_LINES_MAX 16

typedef struct
{
  RwPoint     at; /* mm of the sheet */
  const char *text;
} RwPlotLabel;

typedef struct
{
  RwSheet    *sheet;
  RwBox       frame; /* within the axes, mm of the sheet */
  RwBox       range; /* of the data */
  int         lines;
  RwPlotLabel labels[RW_PLOT_LINES_MAX]; /* of the lines so far */
  int         points; /* that are named so far */
  int         loads;
  double      load_end; /* right end of the last one's figure, mm of the sheet */
} RwPlot;

/* What a plot starts from.  Texts must outlive it. */
typedef struct
{
  RwBox       place;   /* of all of it, mm of the sheet */
  RwBox       range;   /* of the data; y0 and y1 get some room beyond */
  const char *title;
  int         title_lines; /* that there is room for: of all plots that stand side by side */
  const char *across;  /* what the ticks along the bottom say; NULL: no ticks there */
  gboolean    whole;   /* they count: no ticks between whole numbers */
  double      room;    /* for the names at the right ends, mm */
} RwPlotJob;

/* rw_plot_tick: the distance of ticks, 1, 2 or 5 times a power of ten, that divides span (> 0) into at most so
 * many pieces (>= 1). */
double rw_plot_tick (double span, double pieces);

/* How many lines a title needs over a plot so wide, mm. */
int rw_plot_title_lines (const char *title, double width);

/* Frame, ticks and their figures, title. */
RwPlot rw_plot_begin (RwSheet *sheet, const RwPlotJob *job);

/* A line through data points, left to right; where y is NaN it is interrupted.  label (NULL: none) is at its end. */
void rw_plot_line (RwPlot *plot, const RwPoint *points, int count, const char *label);

/* A place on a line, in the data's units, called by a word over it; the next one's word stands under it, as they may
 * be near each other. */
void rw_plot_point (RwPlot *plot, double x, double y, const char *word);

/* An arrow down that ends at a place, with a figure at its start.  From left to right. */
void rw_plot_load (RwPlot *plot, double x, double y, const char *figure);

/* Where a place in the data's units stands on the sheet. */
RwPoint rw_plot_place (const RwPlot *plot, double x, double y);

/* A bar over span: x0 < x1 its sides, drawn narrower where that is wide, and y0 < y1.  figure, which may be NULL,
 * stands beyond the end that is farther from 0, and beyond a limit (NaN: none) that would run through it. */
void rw_plot_bar (RwPlot *plot, RwBox span, double limit, const char *figure);

/* A level that something should not pass, between two places. */
void rw_plot_limit (RwPlot *plot, double y, double from, double to, const char *label);

/* A word under the axis at x. */
void rw_plot_word (RwPlot *plot, double x, const char *word);

/* The names of the lines, kept clear of one another. */
void rw_plot_end (RwPlot *plot);
