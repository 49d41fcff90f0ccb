#include "spread_file.h"

#include <math.h>
#include <string.h>

#include "csv_text.h"
#include "json_writer.h"
#include "text_table.h"

static const char *
in_english (const char *english)
{
  return english;
}

/* ---- text ---- */

static char *
shown (double value, const char *unit, RwUnits units)
{
  gboolean length = strcmp (unit, "mm") == 0;

  /* Spreads are finer than the fractions on a rule. */
  return rw_quantity_write (value, unit, length && units != RW_UNITS_MM ? RW_UNITS_INCH : RW_UNITS_MM, 2, '.');
}

static char *
percent (RwEstimate share)
{
  return g_strdup_printf ("%.1f ± %.1f %%", 100 * share.value, 100 * share.error);
}

static void
add_result (RwTextTable *table, int outcome, const RwScattered *scattered, RwUnits units)
{
  const RwOutcome *what = rw_outcome (outcome);
  const RwSummary *summary = &scattered->summary;
  g_autofree char *planned = shown (scattered->planned, what->unit, units);
  g_autofree char *mean = shown (summary->mean.value, what->unit, units);
  g_autofree char *deviation = shown (summary->deviation.value, what->unit, units);
  g_autofree char *low = shown (summary->low.value, what->unit, units);
  g_autofree char *high = shown (summary->high.value, what->unit, units);
  g_autofree char *limit = shown (scattered->limit, what->unit, units);
  g_autofree char *outside = percent (scattered->outside);
  const char *const fields[] = { what->label, planned, mean, deviation, low, high, limit,
                                 rw_quantity_unit (what->unit, units), outside, NULL };

  rw_text_table_add (table, fields);
}

static char *
results_text (const RwSpread *spread, RwUnits units)
{
  static const char *const header[] = { "Result", "planned", "mean", "s.d.", "2.5 %", "97.5 %", "limit ±", "",
                                        "outside", NULL };
  RwTextTable table = rw_text_table_new (0x17e);

  rw_text_table_add (&table, header);
  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    if (spread->outcome[outcome].summary.count > 0)
      add_result (&table, outcome, &spread->outcome[outcome], units);
  return rw_text_table_end (&table);
}

/* The largest shares come first; shares too small to tell from chance are left out. */
static void
append_shares (GString *out, int outcome, const RwScattered *scattered)
{
  gboolean done[RW_OPERATIONS] = { FALSE };

  g_string_append_printf (out, "  %s:", rw_outcome (outcome)->label);
  for (int turn = 0; turn < RW_OPERATIONS; turn++)
    {
      int largest = -1;

      for (int k = 0; k < RW_OPERATIONS; k++)
        if (!done[k] && scattered->share[k].value > 3 * scattered->share[k].error
            && (largest < 0 || scattered->share[k].value > scattered->share[largest].value))
          largest = k;
      if (largest < 0)
        break;
      done[largest] = TRUE;
      g_string_append_printf (out, "%s %s %.0f %%", turn > 0 ? "," : "", rw_param (RW_OPERATION (largest))->label,
                              100 * scattered->share[largest].value);
    }
  g_string_append_c (out, '\n');
}

static void
add_cut (RwTextTable *table, const RwCare *care, guint i, RwUnits units)
{
  const RwCut *cut = rw_bench_cut (care->bench, i);
  const RwTolerance *tolerance = &care->tolerances[i];
  g_autofree char *label = rw_cut_label (cut, in_english);
  g_autofree char *id = rw_cut_id (cut);
  g_autofree char *used = g_strdup_printf ("%.0f %%", 100 * tolerance->used);
  g_autofree char *held = shown (tolerance->held, rw_cut_unit (cut), units);
  g_autofree char *asked = shown (tolerance->asked, rw_cut_unit (cut), units);
  const char *const fields[] = { label, used, rw_outcome (tolerance->used_of)->label, held, asked,
                                 rw_quantity_unit (rw_cut_unit (cut), units),
                                 rw_tolerance_advice (tolerance), id, NULL };

  rw_text_table_add (table, fields);
}

static char *
cuts_text (const RwCare *care, RwUnits units)
{
  static const char *const header[] = { "Size", "uses up", "of the limit of", "held ±", "asked ±", "", "", "", NULL };
  g_autoptr (GArray) ranked = rw_tolerances_ranked (care->bench, care->tolerances);
  RwTextTable table = rw_text_table_new (0x1a);

  rw_text_table_add (&table, header);
  for (guint i = 0; i < ranked->len; i++)
    add_cut (&table, care, g_array_index (ranked, guint, i), units);
  return rw_text_table_end (&table);
}

static char *
write_text (const RwCare *care, const RwSpread *spread, RwUnits units)
{
  GString *out = g_string_new (NULL);
  g_autofree char *results = results_text (spread, units);
  g_autofree char *cuts = cuts_text (care, units);
  g_autofree char *shim = percent (spread->shim);
  g_autofree char *any_note = percent (spread->any_note);

  g_string_append_printf (out, "%u builds, seed %" G_GUINT64_FORMAT "\n\n%s\n", spread->builds, spread->seed, results);
  g_string_append_printf (out, "The neck wants a shim, or its heel eased: %s\n", shim);
  g_string_append_printf (out, "Some note is off by more than its limit: %s\n", any_note);
  g_string_append (out, "\nShares of the operations\n");
  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    if (spread->outcome[outcome].summary.count > 0)
      append_shares (out, outcome, &spread->outcome[outcome]);
  g_string_append_printf (out, "\nWhere care pays\n%s", cuts);
  return g_string_free (out, FALSE);
}

/* ---- CSV ---- */

static void
add_number (GPtrArray *fields, double value)
{
  g_ptr_array_add (fields, isfinite (value) ? rw_number_write (value) : g_strdup (""));
}

static void
end_row (GString *out, GPtrArray *fields)
{
  g_ptr_array_add (fields, NULL);
  rw_csv_row (out, (const char *const *) fields->pdata);
}

static void
csv_header (GString *out)
{
  static const char *const titles[] = { "result", "label", "unit", "planned", "mean", "mean_error", "deviation",
                                        "deviation_error", "low", "low_error", "middle", "middle_error", "high",
                                        "high_error", "limit", "outside", "outside_error", "straight_deviation" };
  g_autoptr (GPtrArray) fields = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; i < G_N_ELEMENTS (titles); i++)
    g_ptr_array_add (fields, g_strdup (titles[i]));
  for (int k = 0; k < RW_OPERATIONS; k++)
    g_ptr_array_add (fields, g_strdup (rw_param (RW_OPERATION (k))->id));
  end_row (out, fields);
}

static void
csv_result (GString *out, int outcome, const RwScattered *scattered)
{
  const RwOutcome *what = rw_outcome (outcome);
  const RwSummary *summary = &scattered->summary;
  const double numbers[] = { scattered->planned, summary->mean.value, summary->mean.error, summary->deviation.value,
                             summary->deviation.error, summary->low.value, summary->low.error, summary->middle.value,
                             summary->middle.error, summary->high.value, summary->high.error, scattered->limit,
                             scattered->outside.value, scattered->outside.error, scattered->straight };
  g_autoptr (GPtrArray) fields = g_ptr_array_new_with_free_func (g_free);

  g_ptr_array_add (fields, g_strdup (what->id));
  g_ptr_array_add (fields, g_strdup (what->label));
  g_ptr_array_add (fields, g_strdup (what->unit));
  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    add_number (fields, numbers[i]);
  for (int k = 0; k < RW_OPERATIONS; k++)
    add_number (fields, scattered->share[k].value);
  end_row (out, fields);
}

static char *
write_csv (const RwSpread *spread)
{
  GString *out = g_string_new (NULL);

  csv_header (out);
  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    if (spread->outcome[outcome].summary.count > 0)
      csv_result (out, outcome, &spread->outcome[outcome]);
  return g_string_free (out, FALSE);
}

static void
csv_cut (GString *out, const RwCare *care, guint i)
{
  const RwCut *cut = rw_bench_cut (care->bench, i);
  const RwTolerance *tolerance = &care->tolerances[i];
  g_autoptr (GPtrArray) fields = g_ptr_array_new_with_free_func (g_free);

  if (!isfinite (tolerance->used))
    return;
  g_ptr_array_add (fields, rw_cut_id (cut));
  g_ptr_array_add (fields, rw_cut_label (cut, in_english));
  g_ptr_array_add (fields, g_strdup (rw_cut_unit (cut)));
  add_number (fields, cut->planned);
  add_number (fields, tolerance->held);
  add_number (fields, tolerance->asked);
  g_ptr_array_add (fields, g_strdup (tolerance->by_fitting ? "yes" : "no"));
  add_number (fields, tolerance->used);
  g_ptr_array_add (fields, g_strdup (rw_outcome (tolerance->used_of)->id));
  end_row (out, fields);
}

char *
rw_care_csv (const RwCare *care)
{
  static const char *const header[] = { "id", "label", "unit", "planned", "held", "asked", "by_fitting", "uses_up",
                                        "limit_of", NULL };
  GString *out = g_string_new (NULL);

  rw_csv_row (out, header);
  for (guint i = 0; i < care->bench->cuts->len; i++)
    csv_cut (out, care, i);
  return g_string_free (out, FALSE);
}

/* ---- JSON ---- */

static void
name_estimate (RwJsonWriter *writer, const char *name, RwEstimate estimate)
{
  rw_json_name (writer, name);
  rw_json_begin_line (writer, '{');
  rw_json_value (writer, "value", estimate.value);
  rw_json_value (writer, "error", estimate.error);
  rw_json_end (writer, '}');
}

static void
json_result (RwJsonWriter *writer, int outcome, const RwScattered *scattered)
{
  rw_json_next (writer);
  rw_json_begin (writer, '{');
  rw_json_text (writer, "result", rw_outcome (outcome)->id);
  rw_json_text (writer, "label", rw_outcome (outcome)->label);
  rw_json_text (writer, "unit", rw_outcome (outcome)->unit);
  rw_json_value (writer, "planned", scattered->planned);
  rw_json_value (writer, "limit", scattered->limit);
  name_estimate (writer, "mean", scattered->summary.mean);
  name_estimate (writer, "deviation", scattered->summary.deviation);
  name_estimate (writer, "low", scattered->summary.low);
  name_estimate (writer, "middle", scattered->summary.middle);
  name_estimate (writer, "high", scattered->summary.high);
  name_estimate (writer, "outside", scattered->outside);
  rw_json_value (writer, "straight_deviation", scattered->straight);
  rw_json_name (writer, "shares");
  rw_json_begin (writer, '{');
  for (int k = 0; k < RW_OPERATIONS; k++)
    name_estimate (writer, rw_param (RW_OPERATION (k))->id, scattered->share[k]);
  rw_json_end (writer, '}');
  rw_json_end (writer, '}');
}

static void
json_cut (RwJsonWriter *writer, const RwCare *care, guint i)
{
  const RwCut *cut = rw_bench_cut (care->bench, i);
  const RwTolerance *tolerance = &care->tolerances[i];
  g_autofree char *id = rw_cut_id (cut);

  rw_json_next (writer);
  rw_json_begin (writer, '{');
  rw_json_text (writer, "id", id);
  rw_json_text (writer, "unit", rw_cut_unit (cut));
  rw_json_text (writer, "operation", rw_param (cut->operation)->id);
  rw_json_value (writer, "planned", cut->planned);
  rw_json_value (writer, "held", tolerance->held);
  rw_json_value (writer, "asked", tolerance->asked);
  rw_json_flag (writer, "by_fitting", tolerance->by_fitting);
  rw_json_value (writer, "uses_up", tolerance->used);
  rw_json_name (writer, "rates");
  rw_json_begin (writer, '{');
  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    rw_json_value (writer, rw_outcome (outcome)->id, rw_sensitivity_rate (care->sensitivity, i, outcome));
  rw_json_end (writer, '}');
  rw_json_end (writer, '}');
}

static char *
write_json (const RwCare *care, const RwSpread *spread)
{
  RwJsonWriter writer = rw_json_writer (g_string_new (NULL));

  rw_json_begin (&writer, '{');
  rw_json_value (&writer, "builds", spread->builds);
  rw_json_value (&writer, "solved", spread->solved);
  rw_json_name (&writer, "seed");
  g_string_append_printf (writer.out, "%" G_GUINT64_FORMAT, spread->seed);
  name_estimate (&writer, "shim", spread->shim);
  name_estimate (&writer, "any_note", spread->any_note);
  rw_json_name (&writer, "results");
  rw_json_begin (&writer, '[');
  for (int outcome = 0; outcome < RW_OUTCOME_COUNT; outcome++)
    if (spread->outcome[outcome].summary.count > 0)
      json_result (&writer, outcome, &spread->outcome[outcome]);
  rw_json_end (&writer, ']');
  rw_json_name (&writer, "cuts");
  rw_json_begin (&writer, '[');
  for (guint i = 0; i < care->bench->cuts->len; i++)
    json_cut (&writer, care, i);
  rw_json_end (&writer, ']');
  rw_json_end (&writer, '}');
  g_string_append_c (writer.out, '\n');
  return g_string_free (writer.out, FALSE);
}

char *
rw_spread_write (const RwCare *care, const RwSpread *spread, RwListFormat format, RwUnits units)
{
  switch (format)
    {
    case RW_LIST_CSV:
      return write_csv (spread);
    case RW_LIST_JSON:
      return write_json (care, spread);
    case RW_LIST_TEXT:
    default:
      return write_text (care, spread, units);
    }
}
