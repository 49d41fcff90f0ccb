/* What can be chosen of papers: the sheets, their look and formats, the paper, and what the printer makes of
 * its measures.  All but sheets, hand and date is remembered from one time to the next.
 *
 * Signals
 *   chosen   ()   the pages are others now
 */
#pragma once

#include <gtk/gtk.h>

#include "io/paper_set.h"

#define RW_TYPE_PAPERS_FORM (rw_papers_form_get_type ())
G_DECLARE_FINAL_TYPE (RwPapersForm, rw_papers_form, RW, PAPERS_FORM, GtkBox)

GtkWidget *rw_papers_form_new (void);

/* How lengths are shown and read. */
void rw_papers_form_set_style (RwPapersForm *self, RwStyle style);

/* The project whose revision is shown, by its name. */
void rw_papers_form_set_project (RwPapersForm *self, const char *name);

/* Fills in all that is chosen here, over options whose style is the window's; only and texts stay the form's
 * and are good until it is asked again. */
void rw_papers_form_fill (RwPapersForm *self, RwPapersOptions *options);

/* Whether no sheet is chosen at all. */
gboolean rw_papers_form_is_empty (RwPapersForm *self);

/* Dims the chosen sheets of which a set has no page; set is NULL where it has none at all. */
void rw_papers_form_compare (RwPapersForm *self, const RwPaperSet *set);

/* The printer whose bars are shown; "" for any. */
const char *rw_papers_form_printer     (RwPapersForm *self);
void        rw_papers_form_set_printer (RwPapersForm *self, const char *printer);
