/* Rows of the list that say a cut in another way: a tape round the rim its diameter, the rod's length before bending
 * the leg of a hook, dividers the places of the holes.  A maker goes by one of them, so they share out no limit among
 * themselves: each may be off by as much as it takes to throw the cut itself off by what is asked of that.
 */
#pragma once

#include "tolerance.h"

/* FALSE where a row says no cut of the bench in another way; else tolerance says what is asked of it. */
gboolean rw_other_way (const RwBench *bench, const RwTolerance *tolerances, RwSlot slot, RwTolerance *tolerance);

/* Why nothing is asked of a row that is cut all the same: English, marked for translation; NULL where there is no such
 * reason. */
const char *rw_why_not_asked (RwSlot slot, const RwResult *result);
