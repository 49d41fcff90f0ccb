/* Works out where care pays, what rests on guesses and what a shop's builds spread to, off the window's thread.
 *
 * Shared by all that show something of it: one for a document.  Nothing is worked out that nobody wants; of
 * requests that come while it is at work only the last counts, and what is no longer wanted is broken off.
 *
 * Signals
 *   changed  ()  there are new results, or work has begun or ended
 */
#pragma once

#include <gio/gio.h>

#include "model/band.h"
#include "making/care.h"
#include "making/spread.h"
#include "document.h"

#define RW_TYPE_CARE_WORK (rw_care_work_get_type ())
G_DECLARE_FINAL_TYPE (RwCareWork, rw_care_work, RW, CARE_WORK, GObject)

/* The document's; a reference for the caller. */
RwCareWork *rw_care_work_of (RwDocument *document);

/* Brings the results up to date with the build, the spread too if it is wanted; returns at once. */
void rw_care_work_want (RwCareWork *self, gboolean spread);
/* How many builds, and which luck they have. */
void rw_care_work_set  (RwCareWork *self, guint builds, guint64 seed);
/* Breaks the spread off; the results stay as they were. */
void rw_care_work_stop (RwCareWork *self);

/* The last results, until the next "changed"; NULL where there are none yet, or the build can't be strung up. */
const RwCare   *rw_care_work_care   (RwCareWork *self);
const RwSpread *rw_care_work_spread (RwCareWork *self);
const RwBands  *rw_care_work_bands  (RwCareWork *self); /* NULL where there are none yet */
gboolean        rw_care_work_failed (RwCareWork *self); /* the build can't be strung up */
/* The share of the builds that are done, or -1 while it is not at work on a spread. */
double          rw_care_work_progress (RwCareWork *self);
