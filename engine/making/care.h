/* Where care pays: a build on the bench, its sensitivities and the tolerances that it asks for, in one. */
#pragma once

#include "tolerance.h"

typedef struct
{
  RwBench       *bench;
  RwSensitivity *sensitivity;
  RwTolerance   *tolerances; /* one for each cut */
  RwTolerance   *rows;       /* one for each slot; asked is NaN where nothing is asked */
  RwTolerance   *params;     /* one for each parameter; likewise */
} RwCare;

/* NULL where rw_bench_new() gives NULL. */
RwCare *rw_care_new  (const RwDesign *design, const RwMeasured *measured);
void    rw_care_free (RwCare *care);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwCare, rw_care_free)

/* The tolerance asked of a dimension, also of one that says a cut in another way (other_way.h); of one that was
 * measured or made what the plan asked of it.  NULL where nothing is asked.  care may be NULL. */
const RwTolerance *rw_care_of_slot (const RwCare *care, RwSlot slot);

/* What a number may be off by: what the build asks, and only where it asks nothing the habit of the table (dim.h). */
typedef struct
{
  double   within; /* +-; 0: there is no such thing */
  gboolean asked;
} RwAllowance;

/* By the id of a parameter or a dimension.  care may be NULL. */
RwAllowance rw_care_allowance   (const RwCare *care, const char *id);
const char *rw_allowance_name   (RwAllowance allowance); /* "asked", "habit", or "": for files */
/* Whether a deviation is more than that, but for rounding. */
gboolean    rw_allowance_passed (RwAllowance allowance, double deviation);
