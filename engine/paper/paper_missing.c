#include "paper_missing.h"

#include <glib/gi18n-lib.h>

#include "stock/shortage.h"

#define LINE 5.4

static void
line (RwColumn *column, const RwCutting *cutting, const RwShortage *shortage)
{
  const RwPaperJob *job = column->job;
  g_autofree char *words = rw_shortage_buy_words (cutting, shortage, &job->result->used, job->style);

  rw_column_room (column, LINE);
  if (column->page == job->page)
    rw_sheet_box (column->sheet, RW_PEN_CONSTRUCTION, RW_TINT_NONE, 0, column->y, 2.5, column->y + 2.5);
  rw_column_words (column, 6, words);
  rw_column_down (column, 0.8);
}

void
rw_paper_missing (RwColumn *column)
{
  const RwPaperJob *job = column->job;
  g_autoptr (RwCutting) cutting = NULL;
  g_autoptr (GArray) shortages = NULL;

  if (job->project->shelf->items->len == 0)
    return;
  cutting = rw_cutting_new (job->result, job->project->shelf, FALSE, NULL, NULL);
  shortages = rw_shortages (cutting);
  if (shortages->len == 0)
    return;
  rw_column_heading (column, 2 * LINE, _("Missing from the shelf, with spare"));
  for (guint i = 0; i < shortages->len; i++)
    line (column, cutting, &g_array_index (shortages, RwShortage, i));
}
