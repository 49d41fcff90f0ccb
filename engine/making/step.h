/* The steps of the making, from the first cut to the strings: what each needs to know, what is read off the parts
 * before, what it yields, and what can hurt.  The list follows the build: kind of rim, joint, short string, frets.
 *
 * Order and needs are common practice, no source.
 */
#pragma once

#include "project/made.h"
#include "model/solve.h"

#define RW_STEP_BIT(step) (1u << (step))

typedef struct
{
  RwStep      step;
  gboolean  (*when) (const RwDesign *used); /* NULL: in every build */
  const char *title;   /* NULL: rw_step_title() */
  guint       after;   /* RW_STEP_BITs: done before it can begin, as far as the build has them and does them earlier */
  const char *needs;   /* known first */
  const char *work;
  const char *caution; /* NULL: none */
  /* Ids with a space between them: parameters, dimensions, and families of either, as "joint.hole_on_rim[k]".  given is
   * read off what was made or bought before, yields off what this step makes.  A dimension of the step that has a
   * tolerance and no index is read off too, named or not. */
  const char *given, *yields;
} RwStepInfo;

/* All rows of the table, in order: a step that is done in one way or another has a row for each. */
extern const RwStepInfo rw_step_infos[];
extern const int        rw_step_infos_count;

/* The steps of a build in order; their number. */
int rw_steps_of (const RwDesign *used, const RwStepInfo *steps[RW_STEP_COUNT]);
/* NULL where the build has no such step. */
const RwStepInfo *rw_step_info (RwStep step, const RwDesign *used);
/* In English, marked for translation. */
const char *rw_step_info_title (const RwStepInfo *info);

typedef enum
{
  RW_STEP_DONE,
  RW_STEP_POSSIBLE, /* all that comes before it is done */
  RW_STEP_WAITING,
} RwStepState;

/* waits_for, which may be NULL, gets the RW_STEP_BITs of what is missing. */
RwStepState rw_step_state (const RwStepInfo *info, const RwMade *made, const RwDesign *used, guint *waits_for);
const char *rw_step_state_name (RwStepState state); /* "done", "possible", "waiting": for files */

/* What is to be read off before and after, as ids with indices written out, as far as the build has them; of families
 * only small ones.  New arrays that end with NULL. */
char **rw_step_given  (const RwStepInfo *info, const RwResult *result);
char **rw_step_yields (const RwStepInfo *info, const RwResult *result);

/* The parameters that belong to a step once it is made, and its dimensions: what marking it holds. */
gboolean rw_step_holds_param (RwStep step, RwParamId id, const RwDesign *used);
gboolean rw_step_holds_slot  (RwStep step, RwSlot slot, const RwDesign *used);
