/* The set-up page of the drawer: a study of the build at a time, as plots or as a table. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

#define RW_TYPE_STUDY_PANE (rw_study_pane_get_type ())
G_DECLARE_FINAL_TYPE (RwStudyPane, rw_study_pane, RW, STUDY_PANE, GtkBox)

GtkWidget *rw_study_pane_new   (RwDocument *document);
/* The choice of the study, and of plot or table; to stand wherever there is room. */
GtkWidget *rw_study_pane_tools (RwStudyPane *self);
