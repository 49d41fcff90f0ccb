/* A menu of the sets of strings that have names; choosing one puts its strings into the build as one step of undo. */
#pragma once

#include "document/document.h"

#include <gtk/gtk.h>

GtkWidget *rw_string_set_choice_new (RwDocument *document);
