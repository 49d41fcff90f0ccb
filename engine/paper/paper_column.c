#include "paper_column.h"

#include "paper_parts.h"

#include <string.h>

#define LINE 4.6
#define HEADING_OVER 8.0
#define HEADING_UNDER 6.0

RwColumn
rw_column_begin (const RwPaperJob *job, const char *title)
{
  RwColumn column = { .job = job, .sheet = rw_sheet_new (title, job->style), .y = -LINE };

  rw_sheet_set (column.sheet, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  return column;
}

RwSheet *
rw_column_end (RwColumn *column)
{
  if (column->job->page <= column->page)
    return g_steal_pointer (&column->sheet);
  g_clear_pointer (&column->sheet, rw_sheet_free);
  return NULL;
}

void
rw_column_room (RwColumn *column, double height)
{
  if (column->y - height >= -column->job->height)
    return;
  column->page++;
  column->y = -LINE;
}

void
rw_column_down (RwColumn *column, double height)
{
  column->y -= height;
}

static gboolean
is_shown (const RwColumn *column)
{
  return column->page == column->job->page;
}

void
rw_column_text (RwColumn *column, double x, RwAlign align, const char *text)
{
  if (is_shown (column))
    rw_sheet_text (column->sheet, x, column->y, align, RW_LETTERS_SMALL, text);
}

void
rw_column_label (RwColumn *column, double x, double width, const char *text)
{
  gsize fit = rw_paper_fit (text, width);
  g_autofree char *whole = g_strndup (text, fit);
  g_autofree char *cut = text[fit] == '\0' ? g_strdup (text) : g_strconcat (whole, "…", NULL);

  rw_column_text (column, x, RW_ALIGN_START, cut);
}

void
rw_column_blank (RwColumn *column, double x, double to)
{
  if (is_shown (column))
    rw_sheet_line (column->sheet, RW_PEN_CONSTRUCTION, x, column->y - 0.8, to, column->y - 0.8);
}

void
rw_column_heading (RwColumn *column, double keep, const char *text)
{
  gboolean first = column->y > -LINE - 0.1;

  rw_column_room (column, HEADING_OVER + HEADING_UNDER + keep);
  if (!first && column->y < -LINE - 0.1)
    column->y -= HEADING_OVER - LINE;
  if (is_shown (column))
    rw_sheet_text (column->sheet, 0, column->y, RW_ALIGN_START, RW_LETTERS_LARGE, text);
  column->y -= HEADING_UNDER;
}

void
rw_column_words (RwColumn *column, double x, const char *words)
{
  double width = column->job->width - x;

  for (gsize fit = rw_paper_fit (words, width); fit > 0; fit = rw_paper_fit (words, width))
    {
      g_autofree char *line = g_strndup (words, fit);

      rw_column_room (column, 0);
      rw_column_text (column, x, RW_ALIGN_START, line);
      rw_column_down (column, LINE);
      words += fit;
      words += strspn (words, " ");
    }
}
