/* The numbers of a study, for reading one by one and for screen readers. */
#pragma once

#include <gtk/gtk.h>

#include "study/study.h"

#define RW_TYPE_STUDY_TABLE (rw_study_table_get_type ())
G_DECLARE_FINAL_TYPE (RwStudyTable, rw_study_table, RW, STUDY_TABLE, GtkBox)

GtkWidget *rw_study_table_new  (void);
/* The study must stay until another is shown.  NULL: nothing. */
void       rw_study_table_show (RwStudyTable *self, const RwStudy *study, RwStyle style);
