/* Shows the plots of a study, drawn anew for whatever size it has.
 *
 * Pointing at a plot, or walking through it with the arrow keys, tells one number: a crosshair with a short label,
 * which is also what a screen reader hears of the picture.
 */
#pragma once

#include <gtk/gtk.h>

#include "study/study.h"

#define RW_TYPE_PLOT_VIEW (rw_plot_view_get_type ())
G_DECLARE_FINAL_TYPE (RwPlotView, rw_plot_view, RW, PLOT_VIEW, GtkWidget)

GtkWidget *rw_plot_view_new  (void);
/* The study must stay until another is shown.  NULL: nothing.  summary is what is heard of the picture as long as no
 * single number is asked for. */
void       rw_plot_view_show (RwPlotView *self, const RwStudy *study, RwStyle style, const char *summary);
