/* Work in a thread, for an object that lives on the main thread.
 *
 * A task of the toolkit's library lets go of its object in whichever thread comes last, and an object that is a widget,
 * or tells widgets that it goes, must not end in a thread of its own making.  Here everything but the work itself is
 * done on the thread that started it: telling, freeing the job, letting go of the owner.
 */
#pragma once

#include <gio/gio.h>

typedef struct
{
  void (*run) (gpointer job);                   /* in the thread; sees nothing but the job */
  void (*done) (GObject *owner, gpointer job);  /* on the main thread, when it has ended */
  GDestroyNotify free;                          /* of the job, after that */
} RwWorkKind;

/* Starts work; the owner is kept until it is done, and the job is taken over. */
void rw_work_start (const RwWorkKind *kind, GObject *owner, gpointer job);
