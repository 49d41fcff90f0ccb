/* How a parameter stands in a build: whether the maker sets it, whether it follows from others, or
 * whether the build as chosen has no use for it; and why, in words. */
#pragma once

#include "solve.h"

typedef enum
{
  RW_STANDING_SET,        /* the maker's to set */
  RW_STANDING_WORKED_OUT, /* follows from others: value holds it, NaN where it can't be worked out */
  RW_STANDING_IDLE,       /* no use in this build */
} RwStandingKind;

typedef struct
{
  RwStandingKind kind;
  const char    *why;   /* untranslated; NULL when it is set */
  double         value; /* worked out, in the parameter's unit */
} RwStanding;

RwStanding rw_standing (RwParamId id, const RwResult *result);
