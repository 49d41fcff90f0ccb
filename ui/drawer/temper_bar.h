/* Another temperament for the frets: by name, with its keynote where each string has slots of its own.
 *
 * Signal
 *   changed  ()   another temperament is asked for
 */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"
#include "study/study.h"

#define RW_TYPE_TEMPER_BAR (rw_temper_bar_get_type ())
G_DECLARE_FINAL_TYPE (RwTemperBar, rw_temper_bar, RW, TEMPER_BAR, GtkBox)

GtkWidget *rw_temper_bar_new   (RwDocument *document);
/* What it does to notes and slots: a new study. */
RwStudy   *rw_temper_bar_study (RwTemperBar *self, RwTranslate translate);
