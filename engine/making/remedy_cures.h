/* What may help against which finding.  Private to remedy.c and remedy_*.c. */
#pragma once

#include "remedy.h"

typedef enum
{
  RW_RAISE = 1 << 0,
  RW_LOWER = 1 << 1,
  RW_EITHER = RW_RAISE | RW_LOWER,
  RW_AIM = 1 << 2, /* not just far enough, but to the middle of what is right */
} RwWay;

/* One number moved, by its own step or another.  The patterns have its new value as {1}, the change as {2},
 * the old value as {3}; NULL where it is not moved that way. */
typedef struct
{
  const char *rule;
  RwParamId   param;
  int         way; /* of RwWay */
  double      step; /* 0: as the form steps it */
  const char *more, *less;
} RwCure;

/* Anything else.  Makes the attempt's change in the remedy's design and says it: param, pattern, values,
 * word.  FALSE when there are no more attempts; an attempt that changes nothing is passed over. */
typedef gboolean (*RwAttempt) (RwRemedy *remedy, int attempt);

typedef struct
{
  const char *rule;
  RwAttempt   attempt;
} RwSpecialCure;

extern const RwCure rw_cures_rim[], rw_cures_pot[], rw_cures_neck[], rw_cures_setup[];
extern const int    rw_cures_rim_count, rw_cures_pot_count, rw_cures_neck_count, rw_cures_setup_count;

extern const RwSpecialCure rw_special_cures[];
extern const int           rw_special_cures_count;

/* For "made.misfit": the changes that make the design ask for what is made, as yet unproven.  measured may not be
 * NULL. */
GPtrArray *rw_remedies_for_made (const RwDesign *design, const RwMeasured *measured, const RwFinding *finding);

/* How many notes there are of rules that had no finding before. */
int rw_remedy_new_notes (const GPtrArray *before, const GPtrArray *after);

/* Works out what each changes, sorts them by that and takes out those that are far away.  findings: of the design as it
 * is. */
void rw_remedies_rank (GPtrArray *remedies, const RwDesign *design, const RwMeasured *measured,
                       const GPtrArray *findings);
