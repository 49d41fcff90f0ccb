/* A small picture of what the selected number measures, in the form beside its meaning. */
#pragma once

#include "document/document.h"

#include <gtk/gtk.h>

#define RW_TYPE_HELP_PICTURE (rw_help_picture_get_type ())
G_DECLARE_FINAL_TYPE (RwHelpPicture, rw_help_picture, RW, HELP_PICTURE, GtkWidget)

GtkWidget *rw_help_picture_new  (RwDocument *document);
/* Shows what a subject measures; hidden where no drawing shows it. */
void       rw_help_picture_show (RwHelpPicture *self, RwSubject subject);
