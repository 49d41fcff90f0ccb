/* The answer to a project: everything that follows from it, worked out once. */
#pragma once

#include "project/project.h"
#include "finding.h"

typedef struct
{
  RwMeasured measured; /* what was measured and what is made */
  RwResult   now;      /* measured values in their places */
  RwResult   planned;  /* as if nothing had been measured or made */
  GPtrArray *findings; /* of RwFinding, worst first, those that are accepted last */
} RwAnswer;

RwAnswer *rw_answer_new  (const RwProject *project);
void      rw_answer_free (RwAnswer *answer);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwAnswer, rw_answer_free)

/* Whether a finding that is not accepted says stop. */
gboolean rw_answer_stops (const RwAnswer *answer);
