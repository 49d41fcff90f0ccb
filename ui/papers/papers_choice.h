/* What the sheets look like and what they are saved as: units, hand, revision, date; formats.
 *
 * Signals
 *   chosen   ()   the pages are others now; formats don't change them
 */
#pragma once

#include <gtk/gtk.h>

#include "papers_memory.h"

#define RW_TYPE_PAPERS_CHOICE (rw_papers_choice_get_type ())
G_DECLARE_FINAL_TYPE (RwPapersChoice, rw_papers_choice, RW, PAPERS_CHOICE, GtkBox)

/* memory is read and kept up to date, and must live as long as the widget. */
GtkWidget *rw_papers_choice_new (RwPapersMemory *memory);

/* The project whose revision is shown, by its name. */
void rw_papers_choice_set_project (RwPapersChoice *self, const char *name);

/* Fills in all that is chosen here, over options whose style is the window's; texts stay the widget's and are
 * good until it is asked again. */
void rw_papers_choice_fill (RwPapersChoice *self, RwPapersOptions *options);
