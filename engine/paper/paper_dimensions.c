#include "paper_column.h"

#include "check/listing.h"
#include "making/care.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* The list of dimensions in the order of the making, with what a shop holds and what the build asks for, and room to
 * write down what came out.  What there is many of, as hooks and frets, stands side by side under one name.  The pitch
 * of every string at every fret is left to files: it is not cut or measured. */

#define LINE 4.0
#define HEAD_OVER 6.0
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

  return (Places){ w * 0.50, w * 0.51, w * 0.60, w * 0.697, w * 0.86, w * 0.87, w };
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

/* On the line of the step's heading. */
static void
set_head (RwColumn *column, const Places *at)
{
  rw_column_down (column, -HEAD_OVER);
  rw_column_text (column, at->value, RW_ALIGN_END, _("now"));
  rw_column_text (column, at->tolerance, RW_ALIGN_START, "±");
  rw_column_text (column, at->asked, RW_ALIGN_START, C_("tolerance", "asked"));
  rw_column_text (column, at->planned, RW_ALIGN_END, _("planned"));
  rw_column_text (column, at->measured, RW_ALIGN_START, _("measured"));
  rw_column_down (column, HEAD_OVER);
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

/* ---- families: rows of one dimension, side by side ---- */

#define FAMILY_LEAST 3
#define CELLS_WRITTEN 5 /* in a line, with room to write */
#define CELLS_READ 8
#define CELLS_FRACTION 3 /* of either: "10 31/32 (+0.4)" */
#define CELL_NUMBER 5.5
#define FAMILY_APART 1.0
#define CELL_VALUE 0.6 /* of the cell's width: where its figure ends */

typedef struct
{
  const RwRow *rows;
  int          count;
  double       asked; /* what serves all of them; NaN: nothing is asked */
} Family;

static int
index_of (const RwRow *row)
{
  return (int) (row->slot - rw_slot_dim (row->slot)->first);
}

/* As many rows from here on as are of one dimension and as planned: what came out otherwise has a line of its own. */
static Family
family_at (const GArray *rows, guint from, const RwCare *care)
{
  Family family = { &g_array_index (rows, RwRow, from), 0, (double) NAN };
  const RwDim *dim = rw_slot_dim (family.rows->slot);

  for (guint i = from; i < rows->len && dim->span != RW_SPAN_ONE; i++)
    {
      const RwRow *row = &g_array_index (rows, RwRow, i);
      const RwTolerance *asked = rw_care_of_slot (care, row->slot);

      if (rw_slot_dim (row->slot) != dim)
        break;
      if (isfinite (row->planned) && fabs (row->planned - row->value) > 1e-9)
        return (Family){ family.rows, 0, (double) NAN };
      if (asked != NULL)
        family.asked = fmin (family.asked, asked->asked); /* fmin passes over NaN */
      family.count++;
    }
  return family;
}

/* "Notch 1 round the hoop" becomes "Notch 1–18 round the hoop". */
static char *
family_label (const Family *family)
{
  g_autofree char *label = rw_slot_label_in (family->rows->slot, translated);
  g_autofree char *pattern = g_strdup_printf ("(?<![0-9.,])%d(?![0-9]|th)", index_of (family->rows));
  g_autofree char *range
      = g_strdup_printf ("%d–%d", index_of (family->rows), index_of (&family->rows[family->count - 1]));
  g_autoptr (GRegex) number = g_regex_new (pattern, 0, 0, NULL);

  return g_regex_replace_literal (number, label, -1, 0, range, 0, NULL);
}

static void
set_family_head (RwColumn *column, const Places *at, const Family *family, double keep)
{
  const RwDim *dim = rw_slot_dim (family->rows->slot);
  g_autofree char *label = family_label (family);

  rw_column_room (column, keep);
  rw_column_label (column, 0, at->value, label);
  rw_column_text (column, at->unit, RW_ALIGN_START, rw_quantity_unit (dim->unit, column->job->style.units));
  if (dim->tolerance > 0)
    set_tolerance (column, at->tolerance, dim->tolerance, dim->unit);
  if (isfinite (family->asked))
    set_tolerance (column, at->asked, family->asked, dim->unit);
  rw_column_down (column, LINE);
}

static void
set_cell (RwColumn *column, const RwRow *row, double x, double width)
{
  const RwDim *dim = rw_slot_dim (row->slot);
  g_autofree char *number = g_strdup_printf ("%d:", index_of (row)), *now = figure (column->job, row->value, dim->unit);
  double written = x + CELL_VALUE * width + 1.5;

  rw_column_text (column, x + CELL_NUMBER, RW_ALIGN_END, number);
  rw_column_text (column, x + CELL_VALUE * width, RW_ALIGN_END, now);
  if (isfinite (row->measured))
    {
      g_autofree char *measured = figure (column->job, row->measured, dim->unit);

      rw_column_text (column, written, RW_ALIGN_START, measured);
    }
  else if (dim->tolerance > 0)
    rw_column_blank (column, written, x + width - 1.5);
}

static void
set_family (RwColumn *column, const Places *at, const Family *family)
{
  gboolean is_written = rw_slot_dim (family->rows->slot)->tolerance > 0;
  gboolean in_fractions = rw_units_parts (column->job->style.units) > 0;
  int across = in_fractions ? CELLS_FRACTION : is_written ? CELLS_WRITTEN : CELLS_READ;
  double width = at->end / across;

  set_family_head (column, at, family, (family->count + across - 1) / across * LINE);
  for (int i = 0; i < family->count; i++)
    {
      set_cell (column, &family->rows[i], i % across * width, is_written || in_fractions ? width : width * 1.5);
      if (i % across == across - 1 || i == family->count - 1)
        rw_column_down (column, LINE);
    }
  if (family->count > across)
    rw_column_down (column, FAMILY_APART);
}

/* ---- the list ---- */

static gboolean
is_listed (const RwRow *row, int step)
{
  const RwDim *dim = rw_slot_dim (row->slot);

  return (int) dim->step == step && dim->span != RW_SPAN_STRING_FRET;
}

static void
set_step (RwColumn *column, const Places *at, int step, const GArray *rows, const RwCare *care)
{
  gboolean begun = FALSE;

  for (guint i = 0; i < rows->len; i++)
    {
      const RwRow *row = &g_array_index (rows, RwRow, i);
      Family family;

      if (!is_listed (row, step))
        continue;
      if (!begun)
        {
          rw_column_heading (column, 3 * LINE, _(rw_step_title ((RwStep) step)));
          set_head (column, at);
        }
      begun = TRUE;
      family = family_at (rows, i, care);
      if (family.count < FAMILY_LEAST)
        {
          set_row (column, at, row, rw_care_of_slot (care, row->slot));
          continue;
        }
      set_family (column, at, &family);
      i += (guint) family.count - 1;
    }
}

RwSheet *
rw_paper_dimensions (const RwPaperJob *job)
{
  g_autoptr (GArray) rows = rw_listing_rows (job->project, job->result, job->planned);
  g_autoptr (RwCare) care = rw_care_new (&job->project->design, job->measured);
  RwColumn column = rw_column_begin (job, _("Dimensions"));
  Places at = places_of (job);

  for (int step = 0; step < RW_STEP_COUNT; step++)
    set_step (&column, &at, step, rows, care);
  return rw_column_end (&column);
}
