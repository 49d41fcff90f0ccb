/* Where care pays: a build on the bench, its sensitivities and the tolerances that it asks for, in one. */
#pragma once

#include "tolerance.h"

typedef struct
{
  RwBench       *bench;
  RwSensitivity *sensitivity;
  RwTolerance   *tolerances; /* one for each cut */
} RwCare;

/* NULL where rw_bench_new() gives NULL. */
RwCare *rw_care_new  (const RwDesign *design, const RwMeasured *measured);
void    rw_care_free (RwCare *care);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwCare, rw_care_free)

/* The tolerance asked of a dimension; NULL where it is no cut.  care may be NULL. */
const RwTolerance *rw_care_of_slot (const RwCare *care, RwSlot slot);
