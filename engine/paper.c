#include "paper.h"

const RwPaperKind rw_paper_kinds[] = {
  { "general", N_ ("General arrangement"), N_ ("seen from the head side, and from the bass side"),
    RW_PAPER_FITTED, rw_paper_general },
};

const int rw_paper_kinds_count = G_N_ELEMENTS (rw_paper_kinds);

int
rw_paper_kind_find (const char *id)
{
  for (int i = 0; i < rw_paper_kinds_count; i++)
    if (g_str_equal (rw_paper_kinds[i].id, id))
      return i;
  return -1;
}

RwSheet *
rw_paper_general (const RwPaperJob *job)
{
  if (job->page > 0)
    return NULL;
  return rw_draw (RW_VIEW_WHOLE, job->result, job->measured, job->style);
}
