/* The making as it goes on: steps are marked as made, readings are entered.
 *
 * Marking a step holds the sizes that its parts have now (project/made.h), so that no later change of the design alters
 * them.  A reading of a part that is made already says better what it is: what belongs to the same step and follows
 * from the reading goes with it, all else that is made stays.
 */
#pragma once

#include "project/project.h"
#include "step.h"

/* Marks a step.  Refused, with one sentence, where the build has no such step, or where a size of its parts can't be
 * worked out.  A step that is made already keeps what it holds. */
gboolean rw_making_mark (RwProject *project, RwStep step, const char *date, GError **error);
/* Releases what the step held.  FALSE: it was not made. */
gboolean rw_making_unmark (RwProject *project, RwStep step);

/* As rw_ledger_put() and rw_ledger_remove(). */
gboolean rw_making_measure (RwProject *project, const char *id, const double *readings, guint count,
                            const char *date, const char *note, GError **error);
gboolean rw_making_forget  (RwProject *project, const char *id);

/* All values of a solved build, for the record of papers: every parameter that is a size or a choice, and every
 * dimension.  A new snapshot. */
RwSnapshot *rw_making_record (const RwResult *result);
