/* What is asked of a what if: a result, a parameter that is to give it, and the value wanted; and the answer,
 * which can be put into the build as one step of undo.
 *
 * Signal
 *   changed  ()   another question is asked
 */
#pragma once

#include "document/document.h"
#include "study/what_if.h"

#include <gtk/gtk.h>

#define RW_TYPE_WHAT_IF_BAR (rw_what_if_bar_get_type ())
G_DECLARE_FINAL_TYPE (RwWhatIfBar, rw_what_if_bar, RW, WHAT_IF_BAR, GtkBox)

GtkWidget *rw_what_if_bar_new   (RwDocument *document);
/* Answers the question for the build as it is now: a new study; what can be asked follows the build too. */
RwStudy   *rw_what_if_bar_study (RwWhatIfBar *self, RwTranslate translate);
