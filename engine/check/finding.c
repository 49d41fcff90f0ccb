#include "finding.h"

#include <math.h>
#include <string.h>

#include "check.h"
#include "listing.h"

static const struct
{
  const char *unit;
  int         fine, coarse; /* decimals below and from this size on */
  double      size;
} rw_digits[] = {
  { "mm", 2, 1, 1.0 },
  { "deg", 2, 1, 1.0 },
  { "N", 1, 0, 100.0 },
  { "cent", 1, 0, 10.0 },
  { "%", 1, 0, 10.0 },
};

const char *
rw_severity_name (RwSeverity severity)
{
  static const char *const names[] = { "stop", "caution", "note" };

  return names[severity];
}

void
rw_finding_free (RwFinding *finding)
{
  if (finding == NULL)
    return;
  g_free (finding->rule);
  g_free (finding->text);
  g_strfreev (finding->ids);
  g_free (finding->values);
  g_free (finding->reason);
  g_free (finding->accepted_on);
  g_free (finding);
}

/* Bare numbers are counts or ratios; units without a row of their own are shown whole. */
static int
decimals_for (double value, const char *unit)
{
  for (gsize i = 0; i < G_N_ELEMENTS (rw_digits); i++)
    if (strcmp (unit, rw_digits[i].unit) == 0)
      return fabs (value) < rw_digits[i].size ? rw_digits[i].fine : rw_digits[i].coarse;
  return *unit == '\0' && fabs (value - nearbyint (value)) > 1e-9 ? 2 : 0;
}

static void
append_number (GString *out, double value, const char *unit, RwStyle style)
{
  int decimals = decimals_for (value, unit);
  g_autofree char *number = rw_quantity_write (value, unit, style.units, decimals, style.decimal);
  const char *sign = rw_quantity_unit (unit, style.units);

  g_string_append (out, number);
  if (*sign != '\0')
    g_string_append_printf (out, "%s%s", strcmp (unit, "deg") == 0 ? "" : " ", sign);
}

static const char *
in_english (const char *english)
{
  return english;
}

static void
append_name (GString *out, const char *id)
{
  g_autofree char *name = rw_reading_label (id, in_english);

  g_string_append (out, name != NULL ? name : id);
}

/* One mark, without its braces. */
static void
append_mark (GString *out, const RwFinding *finding, const char *mark, RwStyle style)
{
  char *unit = NULL;
  gint64 place = g_ascii_strtoll (mark, &unit, 10);

  if (strcmp (mark, "id") == 0)
    g_string_append (out, finding->ids[0]);
  else if (strcmp (mark, "name") == 0)
    append_name (out, finding->ids[0]);
  else if (place >= 1 && place <= finding->value_count)
    append_number (out, finding->values[place - 1], g_strchug (unit), style);
}

char *
rw_finding_words (const RwFinding *finding, const char *pattern, RwStyle style)
{
  GString *out = g_string_new (NULL);

  while (*pattern != '\0')
    {
      const char *open = strchr (pattern, '{');
      const char *close = open != NULL ? strchr (open, '}') : NULL;

      if (close == NULL)
        break;
      g_autofree char *mark = g_strndup (open + 1, (gsize) (close - open - 1));
      g_string_append_len (out, pattern, open - pattern);
      append_mark (out, finding, mark, style);
      pattern = close + 1;
    }
  g_string_append (out, pattern);
  return g_string_free (out, FALSE);
}

static gboolean
all_finite (const double *values, int count)
{
  for (int i = 0; i < count; i++)
    if (!isfinite (values[i]))
      return FALSE;
  return TRUE;
}

void
rw_check_add_values (RwCheck      *check,
                     int           severity,
                     const char   *rule,
                     const char   *ids,
                     const char   *pattern,
                     const double *values,
                     int           count)
{
  if (severity == RW_FINE || !all_finite (values, count))
    return;

  RwFinding *finding = g_new0 (RwFinding, 1);
  finding->severity = (RwSeverity) severity;
  finding->rule = g_strdup (rule);
  finding->pattern = pattern;
  finding->values = g_memdup2 (values, (gsize) count * sizeof (double));
  finding->value_count = count;
  /* Indices of ids are numbers of the finding too. */
  g_autofree char *written = rw_finding_words (finding, ids, RW_STYLE_FILE);
  finding->ids = g_strsplit (written, " ", -1);
  finding->text = rw_finding_words (finding, pattern, RW_STYLE_FILE);
  g_ptr_array_add (check->found, finding);
}

int
rw_check_low (double value, double stop, double caution, double note)
{
  if (value < stop - RW_CHECK_SLACK)
    return RW_STOP;
  if (value < caution - RW_CHECK_SLACK)
    return RW_CAUTION;
  return value < note - RW_CHECK_SLACK ? RW_NOTE : RW_FINE;
}

int
rw_check_high (double value, double stop, double caution, double note)
{
  return rw_check_low (-value, -stop, -caution, -note);
}

double
rw_check_measured (const RwCheck *check, RwSlot slot)
{
  if (check->measured == NULL)
    return (double) NAN;
  return check->measured->slot[slot];
}

/* Stable, so that within a severity findings stay in the order of the making. */
static int
compare (gconstpointer a, gconstpointer b)
{
  const RwFinding *one = *(RwFinding *const *) a, *other = *(RwFinding *const *) b;

  return (int) one->severity - (int) other->severity;
}

GPtrArray *
rw_check (const RwDesign *design, const RwMeasured *measured, const RwResult *result)
{
  RwCheck check = {
    .plan = design,
    .used = &result->used,
    .at = result->value,
    .result = result,
    .measured = measured,
    .found = g_ptr_array_new_with_free_func ((GDestroyNotify) rw_finding_free),
  };

  rw_check_side (&check);
  rw_check_rim (&check);
  rw_check_courses (&check);
  rw_check_head (&check);
  rw_check_hoop (&check);
  rw_check_hooks (&check);
  rw_check_layout (&check);
  rw_check_neck (&check);
  rw_check_fifth (&check);
  rw_check_headstock (&check);
  rw_check_joint (&check);
  rw_check_setup (&check);
  rw_check_strength (&check);
  rw_check_materials (&check);
  rw_check_made (&check);
  g_ptr_array_sort (check.found, compare);
  return check.found;
}
