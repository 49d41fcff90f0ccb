/* Findings: what does not fit, as it arises. */
#pragma once

#include "solve.h"

typedef enum
{
  RW_STOP,    /* can't be built, or will not play */
  RW_CAUTION, /* can be built, and is likely to be regretted */
  RW_NOTE,    /* worth knowing */
} RwSeverity;

typedef struct
{
  RwSeverity severity;
  char      *rule; /* a stable name: "hooks.clear_heel" */
  char      *text; /* what, how much, why, what helps: one or two sentences with the numbers in mm */
  char     **ids;  /* parameters and dimensions concerned, the one to look at first in front */
} RwFinding;

void rw_finding_free (RwFinding *finding);

/* rw_check: all findings for a solved build, worst first, in an array that frees its elements.  planned is
 * the result without measured values; measured may be NULL. */
GPtrArray *rw_check (const RwDesign *design, const RwMeasured *measured, const RwResult *result);

const char *rw_severity_name (RwSeverity severity); /* "stop", "caution", "note" */
