/* The look: style sheet, light or dark, accent.  The only place that knows of style contexts. */
#pragma once

#include <gtk/gtk.h>

#include "check/finding.h"
#include "io/paint_cairo.h"

/* Loads the style sheet and the accent of the drawing for everything on a display, and keeps the accent
 * in step with the desktop's light or dark setting. */
void rw_theme_install (GdkDisplay *display);

/* Whether a widget's text is light on dark. */
gboolean rw_theme_is_dark (GtkWidget *widget);

/* The inks and tints for a widget: light or dark, and of high contrast where the desktop asks for that. */
const RwPalette *rw_theme_palette (GtkWidget *widget);

/* How much larger than usual the desktop wants text: 1 as usual, 2 twice as large. */
double rw_theme_text_scale (GtkWidget *widget);

/* Pixels to a millimetre of paper for a picture that grows with the text. */
double rw_theme_paper_scale (GtkWidget *widget);

/* The colour of a finding's mark on a widget: at least 4.5 : 1 against the background in either look. */
const GdkRGBA *rw_theme_severity (GtkWidget *widget, RwSeverity severity);
