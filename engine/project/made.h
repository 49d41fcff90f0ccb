/* What is made: the steps of the making that are done, each with what it holds.
 *
 * A step that is marked as made holds the sizes of its parts as they were at that moment: its parameters, of any
 * kind, and its dimensions.  They go to the solver as facts, like measured values, so that no later change of
 * the design alters a part that lies finished on the bench.  A reading (ledger.h) wins over what is held.
 *
 * Which parameters and dimensions a step holds is not known here: making/making.h marks and unmarks.
 */
#pragma once

#include "snapshot.h"

typedef struct
{
  RwStep      step;
  char       *date; /* ISO 8601, or empty */
  RwSnapshot *held;
} RwMadeStep;

typedef struct
{
  GPtrArray *steps; /* of RwMadeStep, by step */
} RwMade;

RwMade  *rw_made_new   (void);
RwMade  *rw_made_copy  (const RwMade *made);
void     rw_made_free  (RwMade *made);
gboolean rw_made_equal (const RwMade *a, const RwMade *b);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwMade, rw_made_free)

/* NULL: not made. */
RwMadeStep *rw_made_find   (const RwMade *made, RwStep step);
/* Marks a step, which holds nothing yet; one that was marked before is begun anew.  date may be NULL. */
RwMadeStep *rw_made_add    (RwMade *made, RwStep step, const char *date);
gboolean    rw_made_remove (RwMade *made, RwStep step);

/* The made step that holds a parameter or a slot; NULL where none does. */
const RwMadeStep *rw_made_holder_of_param (const RwMade *made, RwParamId id);
const RwMadeStep *rw_made_holder_of_slot  (const RwMade *made, RwSlot slot);

/* All that is held, as facts. */
void rw_made_fill (const RwMade *made, RwMeasured *measured);
