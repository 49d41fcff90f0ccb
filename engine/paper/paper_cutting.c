/* The cutting plan: boards and bars of the project's shelf with their cuts. */
#include "draw/draw_cutting.h"
#include "paper.h"

RwSheet *
rw_paper_cutting (const RwPaperJob *job)
{
  const RwShelf *shelf = job->project->shelf;
  g_autoptr (RwCutting) cutting = NULL;

  if (shelf->items->len == 0)
    return NULL;
  cutting = rw_cutting_new (job->result, shelf, FALSE, NULL, NULL);
  return rw_draw_cutting (cutting, &job->result->used, job->style, job->width, job->height, job->page);
}
