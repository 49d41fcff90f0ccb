/* Printing: the same pages as in the PDF, at exactly 1 : 1, each on paper of its own size and direction. */
#pragma once

#include <gtk/gtk.h>

#include "io/paper_set.h"

/* An operation that paints the pages of a set, one when it is asked for it; it takes the set over. */
GtkPrintOperation *rw_print_new (RwPaperSet *set, const char *job_name);

/* Printing has come to its end: printer is the one chosen, NULL where the maker went back or where it failed,
 * the latter with the reason in error. */
typedef void (*RwPrintedFunc) (const char *printer, const GError *error, gpointer user_data);

typedef struct
{
  const char *name;    /* of the job */
  const char *printer; /* to be suggested; "" for none */
  int         page;    /* the one that is looked at, from 0 */
} RwPrintJob;

/* Shows the system's dialog with the settings of last time and prints, with the correction kept for the
 * printer that is chosen in the end.  Takes the set over; does not block.  data, an object, is kept until done
 * has been called. */
void rw_print_run (GtkWindow        *parent,
                   RwPaperSet       *set,
                   const RwPrintJob *job,
                   RwPrintedFunc     done,
                   GObject          *data);
