/* Lists for people, on a terminal or on paper. */
#include "list_formats.h"

#include <math.h>

#include "model/band.h"
#include "making/care.h"
#include "making/remedy.h"
#include "text_table.h"

static char *
number (double value, const char *unit, RwUnits units)
{
  return rw_quantity_show (value, unit, units, '.');
}

/* ---- dimensions ---- */

/* A line of the list; tolerance 0 is left blank. */
typedef struct
{
  const char  *id, *label;
  double       tolerance;
  RwReadingRow numbers;
  const RwTolerance *care; /* what is close enough; NULL: nothing depends on it */
  RwAllowance  allowance;  /* what it may be off by */
  double       low, high;  /* NaN where it does not rest on guesses */
} Line;

/* What the list is made of, worked out once. */
typedef struct
{
  RwTextTable columns;
  RwCare     *care;
  RwBands    *bands;
  RwUnits     units;
} Dimensions;

/* "close enough ± 0.07: fit, don't measure". */
static char *
care_words (const Line *line, RwUnits units)
{
  g_autofree char *asked = NULL;

  if (line->care == NULL || !isfinite (line->care->asked))
    return g_strdup ("");
  asked = number (line->care->asked, line->numbers.unit, units);
  return g_strdup_printf ("close enough ± %s: %s", asked, rw_tolerance_advice (line->care));
}

/* "guessed, 3.10 to 4.25"; nothing where both are shown alike. */
static char *
band_words (const Line *line, RwUnits units)
{
  g_autofree char *low = NULL, *high = NULL;

  if (!rw_shown_differ (line->low, line->high, line->numbers.unit))
    return g_strdup ("");
  low = number (line->low, line->numbers.unit, units);
  high = number (line->high, line->numbers.unit, units);
  return g_strdup_printf ("guessed, %s to %s", low, high);
}

/* How a value came out against what is asked of it now: "off by 0.60, out of the ± 0.25 that ..."; NULL where there is
 * nothing to tell. */
static char *
deviation_words (const Line *line, RwUnits units)
{
  const RwReadingRow *n = &line->numbers;
  double off = (isfinite (n->measured) ? n->measured : n->made) - n->asked;
  g_autofree char *digits = NULL, *within = NULL;

  if (!isfinite (off) || !rw_shown_differ (off, 0, n->unit))
    return NULL;
  digits = number (off, n->unit, units);
  if (line->allowance.within == 0)
    return g_strdup_printf ("off by %s", digits);
  within = number (line->allowance.within, n->unit, units);
  return g_strdup_printf ("off by %s, %s the ± %s that %s", digits,
                          rw_allowance_passed (line->allowance, off) ? "out of" : "within", within,
                          line->allowance.asked ? "this build asks for" : "a careful shop holds");
}

/* Where a number comes from that is not simply as planned. */
static char *
origin_words (const Line *line, RwUnits units)
{
  const RwReadingRow *n = &line->numbers;
  g_autofree char *planned = isfinite (n->planned) ? number (n->planned, n->unit, units) : g_strdup ("none");
  g_autofree char *deviation = deviation_words (line, units);
  const char *what = isfinite (n->measured) ? "measured"
                     : isfinite (n->made)   ? "made"
                     : !rw_shown_differ (n->value, n->planned, n->unit) ? NULL
                     : line->tolerance > 0                              ? "now needed"
                                                                        : "changed";

  if (what == NULL)
    return g_strdup ("");
  return g_strdup_printf ("%s; planned %s%s%s", what, planned, deviation != NULL ? "; " : "",
                          deviation != NULL ? deviation : "");
}

static void
add_line (Dimensions *list, const Line *line)
{
  const RwReadingRow *n = &line->numbers;
  g_autofree char *value = number (n->value, n->unit, list->units);
  /* A tolerance is finer than the fractions on a rule. */
  RwUnits fine = rw_units_parts (list->units) > 0 ? RW_UNITS_INCH : list->units;
  g_autofree char *tolerance = number (line->tolerance, n->unit, fine);
  g_autofree char *within = g_strconcat ("± ", tolerance, NULL);
  g_autofree char *close = care_words (line, fine);
  g_autofree char *band = band_words (line, list->units);
  g_autofree char *origin = origin_words (line, fine);
  const char *const fields[] = { line->label, value, rw_quantity_unit (n->unit, list->units),
                                 line->tolerance > 0 ? within : "", line->id, close, band, origin, NULL };

  rw_text_table_add (&list->columns, fields);
}

static void
add_dimension (Dimensions *list, const RwRow *row)
{
  const RwDim *dim = rw_slot_dim (row->slot);
  g_autofree char *id = rw_slot_id (row->slot);
  g_autofree char *label = rw_slot_label (row->slot);
  const Line line = { id, label, dim->tolerance,
                      { dim->unit, row->value, row->planned, row->measured, row->made, row->asked },
                      rw_care_of_slot (list->care, row->slot), rw_care_allowance (list->care, id),
                      list->bands->low[row->slot], list->bands->high[row->slot] };

  add_line (list, &line);
}

static void
add_fact (Dimensions *list, const RwProject *project, const RwAnswer *answer, const char *id, const char *label)
{
  Line line = { id, label, 0, { 0 }, NULL, rw_care_allowance (list->care, id), NAN, NAN };

  if (rw_listing_find (id, project, &answer->now, &answer->planned, &line.numbers)
      && (isfinite (line.numbers.measured) || isfinite (line.numbers.made)))
    add_line (list, &line);
}

/* What was measured and made of parameters: they have no row among the dimensions, or one of the same id that
 * shows it. */
static void
add_facts (Dimensions *list, const RwProject *project, const RwAnswer *answer)
{
  static const char *const heading[] = { "Measured and made parameters", NULL };
  guint before = list->columns.rows->len;

  rw_text_table_add (&list->columns, heading);
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    if (rw_slot_find (rw_param (id)->id) < 0)
      add_fact (list, project, answer, rw_param (id)->id, rw_param (id)->label);
  for (int i = 1; i <= answer->now.used.rim_course_thickness.count; i++)
    {
      const RwParam *param = rw_param (RW_P_rim_course_thickness);
      g_autofree char *id = g_strdup_printf ("%s[%d]", param->id, i);
      g_autofree char *label = g_strdup_printf ("%s %d", param->label, i);

      add_fact (list, project, answer, id, label);
    }
  if (list->columns.rows->len == before + 1)
    g_ptr_array_set_size (list->columns.rows, (int) before);
}

static void
add_step (Dimensions *list, RwStep step, const GArray *rows)
{
  const char *const heading[] = { rw_step_title (step), NULL };
  gboolean headed = FALSE;

  for (guint i = 0; i < rows->len; i++)
    {
      const RwRow *row = &g_array_index (rows, RwRow, i);

      if (rw_slot_dim (row->slot)->step != step)
        continue;
      if (!headed)
        rw_text_table_add (&list->columns, heading);
      headed = TRUE;
      add_dimension (list, row);
    }
}

/* By the steps of the making, in each as the table has them. */
static char *
dimensions (const RwProject *project, const RwAnswer *answer, RwUnits units)
{
  g_autoptr (GArray) rows = rw_listing_rows (project, &answer->now, &answer->planned);
  g_autoptr (RwCare) care = rw_care_new (&project->design, &answer->measured);
  g_autofree RwBands *bands = rw_bands_new (&answer->now, &answer->measured);
  Dimensions list = { rw_text_table_new (1u << 1), care, bands, units };

  for (RwStep step = 0; step < RW_STEP_COUNT; step++)
    add_step (&list, step, rows);
  add_facts (&list, project, answer);
  return rw_text_table_end (&list.columns);
}

/* On what grounds something is a guess: "guessed" in the list rests on these. */
static void
append_guesses (GString *out, const RwAnswer *answer)
{
  g_string_append (out, "\nGuessed, low to high\n");
  for (RwGuess guess = 0; guess < RW_GUESS_COUNT; guess++)
    if (rw_is_guess (guess, &answer->now, &answer->measured))
      g_string_append_printf (out, "  %s\n", rw_guess_label (guess));
}

char *
rw_list_text (const RwProject *project, const RwAnswer *answer, RwUnits units)
{
  g_autofree char *list = dimensions (project, answer, units);
  g_autofree char *findings = rw_findings_text (answer, NULL, units);
  GString *out = g_string_new (list);

  append_guesses (out, answer);
  g_string_append (out, "\nFindings\n");
  g_string_append (out, findings);
  return g_string_free (out, FALSE);
}

/* ---- findings ---- */

/* A line below a finding, under its text. */
static void
append_below (GString *out, const char *what, const char *text)
{
  g_string_append_printf (out, "  %-7s  %s: %s\n", "", what, text);
}

static void
append_acceptance (GString *out, const RwFinding *finding)
{
  g_autofree char *dated = g_strdup_printf ("%s (%s)", finding->reason, finding->accepted_on);

  append_below (out, "accepted", *finding->accepted_on != '\0' ? dated : finding->reason);
}

/* "Use 20 hooks [hooks.count=20]": what stands in brackets goes behind --set. */
static void
append_remedies (GString         *out,
                 const RwAnswer  *answer,
                 const RwDesign  *design,
                 const RwFinding *finding,
                 RwUnits          units)
{
  g_autoptr (GPtrArray) remedies = rw_remedies (design, &answer->measured, finding);

  for (guint i = 0; i < remedies->len; i++)
    {
      const RwRemedy *remedy = g_ptr_array_index (remedies, i);
      g_autofree char *words = rw_remedy_words (remedy, remedy->pattern, (RwStyle){ units, '.' });
      g_autoptr (GString) line = g_string_new (words);

      for (int id = 0; id < RW_PARAM_COUNT; id++)
        if (!rw_design_same (design, &remedy->design, (RwParamId) id))
          {
            g_autofree char *value = rw_design_write (&remedy->design, (RwParamId) id, RW_STYLE_FILE);

            g_string_append_printf (line, " [%s=%s]", rw_param ((RwParamId) id)->id, value);
          }
      append_below (out, "remedy", line->str);
    }
}

char *
rw_findings_text (const RwAnswer *answer, const RwDesign *design, RwUnits units)
{
  GString *out = g_string_new (NULL);

  for (guint i = 0; i < answer->findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (answer->findings, i);
      g_autofree char *text = rw_finding_words (finding, finding->pattern, (RwStyle){ units, '.' });
      g_autofree char *ids = g_strjoinv (", ", finding->ids);

      g_string_append_printf (out, "  %-7s  %s\n", rw_severity_name (finding->severity), text);
      g_string_append_printf (out, "  %-7s  %s: %s\n", "", finding->rule, ids);
      if (finding->reason != NULL)
        append_acceptance (out, finding);
      if (design != NULL)
        append_remedies (out, answer, design, finding, units);
    }
  if (answer->findings->len == 0)
    g_string_append (out, "  Nothing found\n");
  return g_string_free (out, FALSE);
}

/* ---- the table of parameters ---- */

static void
add_parameter (RwTextTable *columns, const RwParam *param)
{
  g_autofree char *min = rw_number_write (param->min);
  g_autofree char *max = rw_number_write (param->max);
  g_autofree char *range = rw_param_is_number (param) ? g_strdup_printf ("%s to %s", min, max) : NULL;
  const char *const fields[] = { param->id, param->label, range != NULL ? range : rw_param_kind_name (param),
                                 rw_quantity_unit (param->unit, RW_UNITS_MM), param->initial, NULL };

  rw_text_table_add (columns, fields);
}

char *
rw_parameters_text (void)
{
  RwTextTable columns = rw_text_table_new (0);

  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    {
      const char *const heading[] = { rw_param (id)->group, NULL };

      if (id == 0 || rw_param (id - 1)->group != rw_param (id)->group)
        rw_text_table_add (&columns, heading);
      add_parameter (&columns, rw_param (id));
    }
  return rw_text_table_end (&columns);
}
