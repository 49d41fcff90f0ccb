/* A group of the form, folded or open: a header with a one-line summary of the values and the mark of the
 * worst finding among them, and under it the rows, each made when it is first to be seen.
 *
 * Signal
 *   pressed  ()  the header has been pressed: whoever holds the groups decides which are open
 */
#pragma once

#include "form_row.h"

#define RW_TYPE_FORM_GROUP (rw_form_group_get_type ())
G_DECLARE_FINAL_TYPE (RwFormGroup, rw_form_group, RW, FORM_GROUP, GtkBox)

/* The group of count parameters from first on. */
GtkWidget *rw_form_group_new  (RwDocument *document, RwParamId first, int count);
gboolean   rw_form_group_owns (RwFormGroup *self, int param);

void     rw_form_group_set_open (RwFormGroup *self, gboolean open);
gboolean rw_form_group_is_open  (RwFormGroup *self);

void       rw_form_group_refresh (RwFormGroup *self, RwChange what);
GtkWidget *rw_form_group_header  (RwFormGroup *self);
/* The row of a parameter that the group owns; opens the group. */
RwFormRow *rw_form_group_row     (RwFormGroup *self, RwParamId id);
/* Marks the row of a parameter, if it is here, and no other. */
void       rw_form_group_mark    (RwFormGroup *self, int param);

/* Shows only the rows that hold words, which are casefolded, and opens; hides itself where there are none.
 * NULL ends it. */
void rw_form_group_filter (RwFormGroup *self, const char *words);
