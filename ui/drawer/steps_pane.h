/* The steps of the making: how far each has come, the one in hand in full, and what has changed since papers left. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_STEPS_PANE (rw_steps_pane_get_type ())
G_DECLARE_FINAL_TYPE (RwStepsPane, rw_steps_pane, RW, STEPS_PANE, GtkBox)

GtkWidget *rw_steps_pane_new   (RwDocument *document);
/* For the drawer's bar. */
GtkWidget *rw_steps_pane_tools (RwStepsPane *self);
