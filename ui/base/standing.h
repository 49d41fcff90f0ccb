/* How a parameter stands in a build: whether the maker sets it, whether it follows from others, or
 * whether the build as chosen has no use for it; and why, in words. */
#pragma once

#include "model/solve.h"

typedef enum
{
  RW_STANDING_SET,        /* the maker's to set; where 0 leaves it to us, value is what comes of it */
  RW_STANDING_WORKED_OUT, /* follows from others; value is NaN where it can't be worked out */
  RW_STANDING_IDLE,       /* no use in this build */
} RwStandingKind;

typedef struct
{
  RwStandingKind kind;
  const char    *why;   /* untranslated; NULL when it is set */
  double         value; /* what comes of it, in the parameter's unit; NaN where it is the maker's own */
} RwStanding;

RwStanding rw_standing (RwParamId id, const RwResult *result);
