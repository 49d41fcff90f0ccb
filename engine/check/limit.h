/* Which limit a finding comes from, so that the maker who knows better may go to it. */
#pragma once

#include "finding.h"

/* rw_finding_limits: the parameters rw_param_is_limit() that the finding rests on.
 *
 * Given     finding   one of rw_check()
 *           design, measured, result   what it was found for
 * Returned  an array of RwParamId in the order of the table; empty where the finding is one of physics.
 *
 * Asked of the checks themselves: a limit counts where the finding is another, or is gone, once that limit alone stands
 * at an end of its range.  Takes some hundred runs of the checks, and no solving.
 */
GArray *rw_finding_limits (const RwFinding *finding, const RwDesign *design, const RwMeasured *measured,
                           const RwResult *result);
