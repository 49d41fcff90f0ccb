/* Private to the charts of care: rows under each other, a name at the left, an axis in the middle, words at the
 * right. */
#pragma once

#include "making/outcome.h"
#include "sheet/sheet.h"

#define RW_CHART_HEAD 9.0 /* mm, over the rows: what the axis says */
#define RW_CHART_CAPITAL 2.5

typedef struct
{
  RwSheet *sheet;
  double   width, height, row; /* mm */
  double   axis0, axis1;       /* left and right end of the axis, mm */
  double   from, to;           /* what stands there */
} RwChart;

/* The room that a chart needs, mm. */
typedef struct
{
  double names, words; /* widths of the columns beside the axis */
  double row;          /* height of a row */
  guint  rows;
} RwChartRoom;

double  rw_chart_least_width (const RwChartRoom *room);
double  rw_chart_height      (const RwChartRoom *room);
RwChart rw_chart_begin  (const char *title, RwStyle style, double width, const RwChartRoom *room);
double  rw_chart_across (const RwChart *chart, double value);
/* Base line of the first of a row's lines of text; rows count from the top. */
double  rw_chart_line   (const RwChart *chart, guint row);
/* A tick with its figure over the rows, and its line (RW_PEN_NONE: without) down through them. */
void    rw_chart_tick   (const RwChart *chart, double value, RwPen pen, const char *figure);
void    rw_chart_name   (const RwChart *chart, double y, const char *name);
/* So far right of the axis, mm. */
void    rw_chart_words  (const RwChart *chart, double y, double right, const char *words);
/* A figure that ends there. */
void    rw_chart_figure (const RwChart *chart, double y, double right, const char *figure);
/* Of small lettering, mm. */
double  rw_chart_text_width (const char *text);
