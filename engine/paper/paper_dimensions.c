#include "paper_column.h"

#include "check/listing.h"
#include "making/care.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* The list of dimensions in the order of the making, with what a shop holds and what the build asks for, and room to
 * write down what came out.  The pitch of
 * every string at every fret is left to files: it is not cut or measured. */

#define LINE 4.3
#define BLANK_LEAST 12.0
#define FIGURE_ROOM 24.0

typedef struct
{
  double value, unit, tolerance, asked, planned, measured, end; /* places across the page */
} Places;

static Places
places_of (const RwPaperJob *job)
{
  double w = job->width;

  return (Places){ w * 0.50, w * 0.51, w * 0.60, w * 0.69, w * 0.85, w * 0.87, w };
}

static char *
figure (const RwPaperJob *job, double value, const char *unit)
{
  if (rw_units_parts (job->style.units) > 0 && g_str_equal (unit, "mm"))
    return rw_quantity_figure (value, unit, job->style.units, 2, job->style.decimal);
  return rw_quantity_show (value, unit, job->style.units, job->style.decimal);
}

/* A tolerance is finer than the fractions on a rule. */
static char *
tolerance_figure (const RwPaperJob *job, double value, const char *unit)
{
  RwUnits units = rw_units_parts (job->style.units) > 0 ? RW_UNITS_INCH : job->style.units;

  return rw_quantity_show (value, unit, units, job->style.decimal);
}

static const char *
translated (const char *english)
{
  return _(english);
}

static void
set_head (RwColumn *column, const Places *at)
{
  rw_column_text (column, at->value, RW_ALIGN_END, _("now"));
  rw_column_text (column, at->tolerance, RW_ALIGN_START, "±");
  rw_column_text (column, at->asked, RW_ALIGN_START, C_("tolerance", "asked"));
  rw_column_text (column, at->planned, RW_ALIGN_END, _("planned"));
  rw_column_text (column, at->measured, RW_ALIGN_START, _("measured"));
  rw_column_down (column, LINE);
}

static void
set_tolerance (RwColumn *column, double at, double tolerance, const char *unit)
{
  g_autofree char *figure = tolerance_figure (column->job, tolerance, unit), *words = g_strconcat ("± ", figure, NULL);

  rw_column_text (column, at, RW_ALIGN_START, words);
}

static void
set_row (RwColumn *column, const Places *at, const RwRow *row, const RwTolerance *asked)
{
  const RwPaperJob *job = column->job;
  const RwDim *dim = rw_slot_dim (row->slot);
  g_autofree char *label = rw_slot_label_in (row->slot, translated),
                  *now = figure (job, row->value, dim->unit);

  rw_column_room (column, 0);
  rw_column_label (column, 0, at->value - FIGURE_ROOM, label);
  rw_column_text (column, at->value, RW_ALIGN_END, now);
  rw_column_text (column, at->unit, RW_ALIGN_START, rw_quantity_unit (dim->unit, job->style.units));
  if (dim->tolerance > 0)
    set_tolerance (column, at->tolerance, dim->tolerance, dim->unit);
  if (asked != NULL && isfinite (asked->asked))
    set_tolerance (column, at->asked, asked->asked, dim->unit);
  if (isfinite (row->planned) && fabs (row->planned - row->value) > 1e-9)
    {
      g_autofree char *planned = figure (job, row->planned, dim->unit);

      rw_column_text (column, at->planned, RW_ALIGN_END, planned);
    }
  if (isfinite (row->measured))
    {
      g_autofree char *measured = figure (job, row->measured, dim->unit);

      rw_column_text (column, at->measured, RW_ALIGN_START, measured);
    }
  else if (dim->tolerance > 0 && at->end - at->measured > BLANK_LEAST)
    rw_column_blank (column, at->measured, at->end);
  rw_column_down (column, LINE);
}

RwSheet *
rw_paper_dimensions (const RwPaperJob *job)
{
  g_autoptr (GArray) rows = rw_listing_rows (job->project, job->result, job->planned);
  g_autoptr (RwCare) care = rw_care_new (&job->project->design, job->measured);
  RwColumn column = rw_column_begin (job, _("Dimensions"));
  Places at = places_of (job);

  for (int step = 0; step < RW_STEP_COUNT; step++)
    {
      gboolean begun = FALSE;

      for (guint i = 0; i < rows->len; i++)
        {
          const RwRow *row = &g_array_index (rows, RwRow, i);
          const RwDim *dim = rw_slot_dim (row->slot);

          if ((int)dim->step != step || dim->span == RW_SPAN_STRING_FRET)
            continue;
          if (!begun)
            {
              rw_column_heading (&column, 3 * LINE, _(rw_step_title ((RwStep)step)));
              set_head (&column, &at);
            }
          begun = TRUE;
          set_row (&column, &at, row, rw_care_of_slot (care, row->slot));
        }
    }
  return rw_column_end (&column);
}
