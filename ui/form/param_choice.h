/* The drop-downs of parameters that are chosen: choices, woods, metals, threads, and the list of woods,
 * which is one drop-down for each course. */
#pragma once

#include <gtk/gtk.h>

#include "document/document.h"

/* A GtkDropDown that follows the document by itself. */
GtkWidget *rw_param_choice_new (RwDocument *document, RwParamId id);

/* Whether a parameter is chosen by rw_param_choice_new(). */
gboolean rw_param_is_choice (const RwParam *param);

/* A GtkBox of drop-downs, one for each course of a segmented rim, else one. */
GtkWidget *rw_wood_list_new (RwDocument *document, RwParamId id);
