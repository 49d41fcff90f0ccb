/* Saving and printing of a study, from a menu of its pane. */
#pragma once

#include <gtk/gtk.h>

#include "io/study_file.h"

/* The study as it is now, and what stands over it; taken over. */
typedef struct
{
  RwStudy *study;
  RwStyle  style;
  char    *heading;
} RwStudyCopy;

typedef RwStudyCopy (*RwStudyCopyFunc) (gpointer user_data);

/* A button with the menu.  copy is asked each time something is chosen; user_data must outlive the button. */
GtkWidget *rw_study_output_button (RwStudyCopyFunc copy, gpointer user_data);
