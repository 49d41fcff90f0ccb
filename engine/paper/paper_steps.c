#include "paper_column.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#include "check/listing.h"
#include "making/step.h"

/* The steps of the making in order (making/step.h): what has to be known first, what to do, what can hurt, and blanks
 * for what came out. */

#define LINE 5.2
#define INDENT 8.0
#define KEPT_TOGETHER 24.0

static const char *
in_own_language (const char *english)
{
  return _(english);
}

static char *
amount (const RwPaperJob *job, double value, const char *unit)
{
  gboolean fine = g_str_equal (unit, "mm") || g_str_equal (unit, "deg");
  /* A fraction that is not near enough gives way to decimals. */
  gboolean far = g_str_equal (unit, "mm")
                 && fabs (rw_fraction_error (value, job->style.units)) > RW_FRACTION_ERROR_TOLD;
  g_autofree char *figure = rw_quantity_write (value, unit, far ? RW_UNITS_INCH : job->style.units, fine ? 2 : 1,
                                               job->style.decimal);

  return g_strdup_printf ("%s%s%s", figure, g_str_equal (unit, "deg") ? "" : " ",
                          rw_quantity_unit (unit, job->style.units));
}

static gboolean
find_row (const RwPaperJob *job, const char *id, RwReadingRow *row)
{
  return rw_listing_find (id, job->project, job->result, job->planned, row) && isfinite (row->value);
}

static double
tolerance_of (const char *id)
{
  int slot = rw_slot_find (id);

  return slot >= 0 ? rw_slot_dim ((RwSlot) slot)->tolerance : 0;
}

/* A line with what is expected, and a place to write down what came out; or what came out already. */
static void
set_reading (RwColumn *column, const char *id)
{
  const RwPaperJob *job = column->job;
  double w = job->width, tolerance = tolerance_of (id);
  RwReadingRow row;

  if (!find_row (job, id, &row))
    return;

  g_autofree char *label = rw_reading_label (id, in_own_language), *expected = amount (job, row.value, row.unit),
                  *room = amount (job, tolerance, row.unit), *within = g_strconcat ("± ", room, NULL);

  rw_column_room (column, 0);
  rw_column_text (column, INDENT, RW_ALIGN_START, label);
  rw_column_text (column, w * 0.62, RW_ALIGN_END, expected);
  if (tolerance > 0)
    rw_column_text (column, w * 0.63, RW_ALIGN_START, within);
  if (isfinite (row.measured))
    rw_column_text (column, w * 0.78, RW_ALIGN_START, C_ ("number", "measured"));
  else if (isfinite (row.made))
    rw_column_text (column, w * 0.78, RW_ALIGN_START, C_ ("number", "made"));
  else
    rw_column_blank (column, w * 0.78, w);
  rw_column_down (column, LINE);
}

static void
set_readings (RwColumn *column, char **ids)
{
  for (int i = 0; ids[i] != NULL; i++)
    set_reading (column, ids[i]);
}

/* What is read off the parts before, in a sentence: "Rim outside diameter 279.20 mm". */
static void
set_given (RwColumn *column, const RwStepInfo *info)
{
  const RwPaperJob *job = column->job;
  g_auto (GStrv) ids = rw_step_given (info, job->result);
  g_autoptr (GStrvBuilder) items = g_strv_builder_new ();
  g_auto (GStrv) all = NULL;
  g_autofree char *list = NULL, *line = NULL;

  for (int i = 0; ids[i] != NULL; i++)
    {
      RwReadingRow row;

      if (!find_row (job, ids[i], &row))
        continue;

      g_autofree char *label = rw_reading_label (ids[i], in_own_language), *value = amount (job, row.value, row.unit),
                      *item = g_strdup_printf ("%s: %s", label, value);

      g_strv_builder_add (items, item);
    }
  all = g_strv_builder_end (items);
  if (all[0] == NULL)
    return;
  list = g_strjoinv ("; ", all);
  line = g_strdup_printf (_("From the parts before: %s."), list);
  rw_column_words (column, INDENT, line);
}

/* format has one %s for the words. */
static void
set_words (RwColumn *column, const char *format, const char *words)
{
  g_autofree char *line = g_strdup_printf (format, _(words));

  rw_column_words (column, INDENT, line);
}

static void
set_step (RwColumn *column, const RwStepInfo *info, int number)
{
  const RwMadeStep *made = rw_made_find (column->job->project->made, info->step);
  g_auto (GStrv) yields = rw_step_yields (info, column->job->result);
  g_autofree char *title = g_strdup_printf ("%d   %s", number, _(rw_step_info_title (info)));
  g_autofree char *done = made == NULL           ? NULL
                          : made->date[0] != '\0' ? g_strdup_printf (_("Made on %s."), made->date)
                                                  : g_strdup (_("Made."));

  rw_column_heading (column, KEPT_TOGETHER, title);
  if (done != NULL)
    rw_column_words (column, INDENT, done);
  set_words (column, _("Known first: %s"), info->needs);
  set_given (column, info);
  set_words (column, _("Do: %s"), info->work);
  if (info->caution != NULL)
    set_words (column, _("Take care: %s"), info->caution);
  rw_column_down (column, 1);
  set_readings (column, yields);
}

RwSheet *
rw_paper_steps (const RwPaperJob *job)
{
  RwColumn column = rw_column_begin (job, _("Steps"));
  const RwStepInfo *steps[RW_STEP_COUNT];
  int count = rw_steps_of (&job->result->used, steps);

  rw_column_words (&column, 0,
                   _("Cautions here are reminders. Tool makers' manuals, local codes and licensed practice "
                     "come first; no number on these papers says that a thing is safe."));
  for (int i = 0; i < count; i++)
    set_step (&column, steps[i], i + 1);
  return rw_column_end (&column);
}
