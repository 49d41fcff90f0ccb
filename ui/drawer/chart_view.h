/* Shows a chart that is as high as its rows: a sheet drawn anew for the width there is. */
#pragma once

#include <gtk/gtk.h>

#include "sheet/sheet.h"

#define RW_TYPE_CHART_VIEW (rw_chart_view_get_type ())
G_DECLARE_FINAL_TYPE (RwChartView, rw_chart_view, RW, CHART_VIEW, GtkWidget)

/* A new sheet for a width in mm. */
typedef RwSheet *(*RwChartDraw) (double width, gpointer user_data);

GtkWidget *rw_chart_view_new  (void);
/* Shows what draw draws, at least so wide and so high (mm); draw NULL: nothing. */
void       rw_chart_view_show (RwChartView *self, double width, double height, RwChartDraw draw, gpointer user_data);
