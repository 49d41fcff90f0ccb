#include "answer.h"

#include "acceptance.h"

RwAnswer *
rw_answer_new (const RwProject *project)
{
  RwAnswer *answer = g_new (RwAnswer, 1);

  rw_project_measured (project, &answer->measured);
  rw_solve (&project->design, &answer->measured, &answer->now);
  rw_solve (&project->design, NULL, &answer->planned);
  answer->findings = rw_check (&project->design, &answer->measured, &answer->now);
  rw_findings_accept (answer->findings, project->accepted);
  return answer;
}

void
rw_answer_free (RwAnswer *answer)
{
  if (answer == NULL)
    return;
  g_ptr_array_unref (answer->findings);
  g_free (answer);
}

gboolean
rw_answer_stops (const RwAnswer *answer)
{
  return rw_findings_open (answer->findings, RW_STOP) > 0;
}
