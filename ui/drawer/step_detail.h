/* One step of the making in full: what is known first, what to do, what can hurt, entries for what came out, and the
 * button that marks it as made. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"
#include "making/step.h"

#define RW_TYPE_STEP_DETAIL (rw_step_detail_get_type ())
G_DECLARE_FINAL_TYPE (RwStepDetail, rw_step_detail, RW, STEP_DETAIL, GtkBox)

GtkWidget *rw_step_detail_new  (RwDocument *document);
/* Shows a step as it stands now, anew or again after a change. */
void       rw_step_detail_show (RwStepDetail *self, const RwStepInfo *info);
