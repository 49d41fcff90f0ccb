#include "care_tables.h"

#include <glib/gi18n.h>
#include <string.h>

#include "base/words.h"

static const char *
translate (const char *english)
{
  return _(english);
}

static char **
translated (const char *const *english)
{
  g_autoptr (GStrvBuilder) titles = g_strv_builder_new ();

  for (int k = 0; english[k] != NULL; k++)
    g_strv_builder_add (titles, _(english[k]));
  return g_strv_builder_end (titles);
}

static GPtrArray *
rows_new (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) g_strfreev);
}

static void
add_row (GPtrArray *rows, const char *const *fields)
{
  g_ptr_array_add (rows, g_strdupv ((char **) fields));
}

/* "18.0 ± 0.4". */
static char *
percent (RwEstimate share, RwStyle style)
{
  g_autofree char *value = rw_quantity_write (100 * share.value, "%", RW_UNITS_MM, 1, style.decimal);
  g_autofree char *error = rw_quantity_write (100 * share.error, "%", RW_UNITS_MM, 1, style.decimal);

  return g_strdup_printf ("%s ± %s", value, error);
}

/* ---- where care pays ---- */

static void
add_cut (GPtrArray *rows, const RwCare *care, guint i, RwStyle style)
{
  const RwCut *cut = rw_bench_cut (care->bench, i);
  const RwTolerance *tolerance = &care->tolerances[i];
  g_autofree char *label = rw_cut_label (cut, translate);
  g_autofree char *used = g_strdup_printf ("%.0f", 100 * tolerance->used);
  g_autofree char *held = rw_number_words (tolerance->held, rw_cut_unit (cut), style);
  g_autofree char *asked = rw_number_words (tolerance->asked, rw_cut_unit (cut), style);
  const char *const fields[] = { label, used, _(rw_outcome (tolerance->used_of)->label), held, asked,
                                 _(rw_tolerance_advice (tolerance)), NULL };

  add_row (rows, fields);
}

GPtrArray *
rw_care_rows (const RwCare *care, RwStyle style, GStrv *titles)
{
  static const char *const english[] = { N_("Size"), N_("Uses up, %"), N_("Of the limit of"), N_("Held, ±"),
                                         N_("Asked, ±"), N_("How"), NULL };
  g_autoptr (GArray) ranked = rw_tolerances_ranked (care->bench, care->tolerances);
  GPtrArray *rows = rows_new ();

  *titles = translated (english);
  for (guint i = 0; i < ranked->len; i++)
    add_cut (rows, care, g_array_index (ranked, guint, i), style);
  return rows;
}

/* ---- what comes out ---- */

/* "2.394 ± 0.005 mm": a figure and its own error, which is finer than a hand measures. */
static char *
figure (RwEstimate estimate, const char *unit, RwStyle style)
{
  RwUnits units = rw_units_parts (style.units) > 0 ? RW_UNITS_INCH : style.units;
  int decimals = strcmp (unit, "cent") == 0 ? 2 : 3;
  g_autofree char *value = rw_quantity_write (estimate.value, unit, units, decimals, style.decimal);
  g_autofree char *error = rw_quantity_write (estimate.error, unit, units, decimals, style.decimal);

  return g_strdup_printf ("%s ± %s %s", value, error, rw_quantity_unit (unit, units));
}

static void
add_result (GPtrArray *rows, int outcome, const RwScattered *scattered, RwStyle style)
{
  const RwOutcome *what = rw_outcome (outcome);
  const RwSummary *summary = &scattered->summary;
  g_autofree char *planned = rw_number_words (scattered->planned, what->unit, style);
  g_autofree char *mean = figure (summary->mean, what->unit, style);
  g_autofree char *deviation = figure (summary->deviation, what->unit, style);
  g_autofree char *low = figure (summary->low, what->unit, style);
  g_autofree char *high = figure (summary->high, what->unit, style);
  g_autofree char *limit = rw_number_words (scattered->limit, what->unit, style);
  g_autofree char *outside = percent (scattered->outside, style);
  const char *const fields[] = { _(what->label), planned, mean, deviation, low, high, limit, outside, NULL };

  add_row (rows, fields);
}

GPtrArray *
rw_spread_rows (const RwSpread *spread, RwStyle style, GStrv *titles)
{
  static const char *const english[] = { N_("Result"), N_("Planned"), N_("Mean"), N_("Standard deviation"),
                                         N_("One in 40 under"), N_("One in 40 over"), N_("Limit, ±"),
                                         N_("Past the limit, %"), NULL };
  GPtrArray *rows = rows_new ();

  *titles = translated (english);
  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    if (spread->outcome[outcome].summary.count > 2)
      add_result (rows, outcome, &spread->outcome[outcome], style);
  return rows;
}

/* ---- shares ---- */

static void
add_share (GPtrArray *rows, int outcome, int operation, RwEstimate share, RwStyle style)
{
  g_autofree char *part = percent (share, style);
  const char *const fields[] = { _(rw_outcome (outcome)->label), _(rw_param (RW_OPERATION (operation))->label), part,
                                 NULL };

  if (share.value > 0)
    add_row (rows, fields);
}

GPtrArray *
rw_share_rows (const RwSpread *spread, RwStyle style, GStrv *titles)
{
  static const char *const english[] = { N_("Result"), N_("Operation"), N_("Share of the spread, %"), NULL };
  GPtrArray *rows = rows_new ();

  *titles = translated (english);
  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    for (int k = 0; k < RW_OPERATIONS; k++)
      add_share (rows, outcome, k, spread->outcome[outcome].share[k], style);
  return rows;
}

/* ---- in a sentence ---- */

char *
rw_spread_words (const RwSpread *spread, RwStyle style)
{
  g_autofree char *shim = percent (spread->shim, style);
  g_autofree char *note = percent (spread->any_note, style);

  /* Translators: chances, each with its own error */
  return g_strdup_printf (ngettext ("Of %u build, %s %% want a shim or an eased heel; in %s %% some note is off.",
                                    "Of %u builds, %s %% want a shim or an eased heel; in %s %% some note is off.",
                                    spread->builds),
                          spread->builds, shim, note);
}
