/* Another tuning for the strings that are on: by name or note by note, what it changes, and a capo.
 *
 * Signal
 *   changed  ()   another tuning is asked for
 */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"
#include "study/tuning.h"

#define RW_TYPE_TUNING_BAR (rw_tuning_bar_get_type ())
G_DECLARE_FINAL_TYPE (RwTuningBar, rw_tuning_bar, RW, TUNING_BAR, GtkBox)

GtkWidget *rw_tuning_bar_new   (RwDocument *document);
/* The build as it is now beside the build retuned: a new study. */
RwStudy   *rw_tuning_bar_study (RwTuningBar *self, RwTranslate translate);
