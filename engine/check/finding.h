/* Findings: what does not fit, as it arises. */
#pragma once

#include "model/solve.h"

typedef enum
{
  RW_STOP,    /* can't be built, or will not play */
  RW_CAUTION, /* can be built, and is likely to be regretted */
  RW_NOTE,    /* worth knowing */
} RwSeverity;

/* A finding is kept in two ways: as English text with its numbers in mm, for files and the command line; and
 * as a pattern with the numbers apart, so that it can be said in another language and in inches. */
typedef struct
{
  RwSeverity  severity;
  char       *rule;    /* a stable name: "hooks.clear_heel" */
  char       *text;    /* what, how much, why, what helps: one or two sentences with the numbers in mm */
  char      **ids;     /* parameters and dimensions concerned, the one to look at first in front */
  const char *pattern; /* the text with marks for its numbers, to be translated; never freed */
  double     *values;  /* what stands for the marks */
  int         value_count;
  char       *reason;      /* why the maker accepts it; NULL: is not accepted */
  char       *accepted_on; /* ISO 8601, or empty; NULL where reason is */
} RwFinding;

void rw_finding_free (RwFinding *finding);

/* rw_finding_words: the finding in other words.
 *
 * Given     pattern  finding->pattern or its translation: "{1 mm}" is the first of the values as a length,
 *                    "{2 deg}" the second as an angle, "{3}" the third as a bare number, "{id}" the first of
 *                    the ids, "{name}" what that is called, in English: who shows it in another language puts the
 *                    name in first.  A translation may put them in any order
 *           style    units and decimal mark
 * Returned  a new string.
 */
char *rw_finding_words (const RwFinding *finding, const char *pattern, RwStyle style);

/* rw_check: all findings for a solved build, worst first, in an array that frees its elements.  measured may
 * be NULL, and is what result was solved with. */
GPtrArray *rw_check (const RwDesign *design, const RwMeasured *measured, const RwResult *result);

const char *rw_severity_name (RwSeverity severity); /* "stop", "caution", "note" */
