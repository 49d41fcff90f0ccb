/* Remedies: changes of the design that set a finding right.
 *
 * Which changes may help is a table for each part, remedy_*.c; how far to go is found by trying.  A remedy is
 * offered only where it is proven: the changed design, solved with everything that is measured or made in its
 * place, has the finding no more, or in a lesser severity, and no stop and no caution that was not there
 * before.  Where the side view has no solution its cautions can't have been there, and to solve it may bring some.
 * What is measured, and what is made, no remedy changes.
 *
 * A search takes some ten milliseconds: it is for a finding that somebody looks at, not for every frame of a
 * drag.
 */
#pragma once

#include "check/finding.h"

#define RW_REMEDY_VALUES 3

typedef struct
{
  RwParamId   param;   /* the parameter that is changed, or the first of them */
  RwDesign    design;  /* the whole design with the change */
  char       *text;    /* "Use 20 hooks": English, numbers in mm */
  const char *pattern; /* the text with marks for its numbers, to be translated; never freed */
  char       *word;    /* what "{id}" stands for in it: the name of a thread; NULL where there is none */
  double      values[RW_REMEDY_VALUES];
  int         value_count;
  double      effort;  /* how much it changes, and how well that suits what is made: the less the better */
} RwRemedy;

void rw_remedy_free (RwRemedy *remedy);

/* rw_remedies: the proven remedies for a finding, those first that change least and leave what is made fitting; what
 * would be another instrument is offered only where nothing nearer helps.  Perhaps none.
 *
 * Given     design    as planned
 *           measured  what is measured and made; NULL: nothing
 *           finding   one of rw_check() for these two
 * Returned  an array of RwRemedy that frees its elements.
 */
GPtrArray *rw_remedies (const RwDesign *design, const RwMeasured *measured, const RwFinding *finding);

/* The remedy in other words: see rw_finding_words().  A new string. */
char *rw_remedy_words (const RwRemedy *remedy, const char *pattern, RwStyle style);
