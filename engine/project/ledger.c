#include "ledger.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#include "table/param_text.h"
#include "date.h"

static void
entry_free (RwEntry *entry)
{
  g_free (entry->id);
  g_array_unref (entry->readings);
  g_free (entry->date);
  g_free (entry->note);
  g_free (entry);
}

static RwEntry *
entry_new (const char *id, const double *readings, guint count, const char *date, const char *note)
{
  RwEntry *entry = g_new (RwEntry, 1);

  entry->id = g_strdup (id);
  entry->readings = g_array_sized_new (FALSE, FALSE, sizeof (double), count);
  g_array_append_vals (entry->readings, readings, count);
  entry->date = g_strdup (date != NULL ? date : "");
  entry->note = g_strdup (note != NULL ? note : "");
  return entry;
}

static RwEntry *
entry_at (const RwLedger *ledger, guint i)
{
  return g_ptr_array_index (ledger->entries, i);
}

static gboolean
entry_equal (const RwEntry *a, const RwEntry *b)
{
  if (a->readings->len != b->readings->len)
    return FALSE;
  for (guint i = 0; i < a->readings->len; i++)
    if (g_array_index (a->readings, double, i) != g_array_index (b->readings, double, i))
      return FALSE;
  return strcmp (a->id, b->id) == 0 && strcmp (a->date, b->date) == 0 && strcmp (a->note, b->note) == 0;
}

RwLedger *
rw_ledger_new (void)
{
  RwLedger *ledger = g_new (RwLedger, 1);

  ledger->entries = g_ptr_array_new_with_free_func ((GDestroyNotify) entry_free);
  return ledger;
}

RwLedger *
rw_ledger_copy (const RwLedger *ledger)
{
  RwLedger *copy = rw_ledger_new ();

  for (guint i = 0; i < ledger->entries->len; i++)
    {
      const RwEntry *e = entry_at (ledger, i);

      g_ptr_array_add (copy->entries, entry_new (e->id, (const double *) (const void *) e->readings->data,
                                                 e->readings->len, e->date, e->note));
    }
  return copy;
}

void
rw_ledger_free (RwLedger *ledger)
{
  if (ledger == NULL)
    return;
  g_ptr_array_unref (ledger->entries);
  g_free (ledger);
}

gboolean
rw_ledger_equal (const RwLedger *a, const RwLedger *b)
{
  if (a->entries->len != b->entries->len)
    return FALSE;
  for (guint i = 0; i < a->entries->len; i++)
    if (!entry_equal (entry_at (a, i), entry_at (b, i)))
      return FALSE;
  return TRUE;
}

/* The place of id among the entries, or -1. */
static int
find_entry (const RwLedger *ledger, const char *id)
{
  for (guint i = 0; i < ledger->entries->len; i++)
    if (strcmp (entry_at (ledger, i)->id, id) == 0)
      return (int) i;
  return -1;
}

const RwEntry *
rw_ledger_find (const RwLedger *ledger, const char *id)
{
  int i = find_entry (ledger, id);

  return i >= 0 ? entry_at (ledger, (guint) i) : NULL;
}

static double
mean (const double *readings, guint count)
{
  double sum = 0, least = INFINITY, most = -INFINITY;

  for (guint i = 0; i < count; i++)
    {
      sum += readings[i];
      least = fmin (least, readings[i]);
      most = fmax (most, readings[i]);
    }
  /* Rounding may carry the mean of equal readings past them, and so out of a range that they keep. */
  return CLAMP (sum / count, least, most);
}

double
rw_entry_mean (const RwEntry *entry)
{
  return mean ((const double *) (const void *) entry->readings->data, entry->readings->len);
}

double
rw_entry_spread (const RwEntry *entry)
{
  double least = INFINITY, most = -INFINITY;

  for (guint i = 0; i < entry->readings->len; i++)
    {
      least = fmin (least, g_array_index (entry->readings, double, i));
      most = fmax (most, g_array_index (entry->readings, double, i));
    }
  return most - least;
}

/* ---- as text ---- */

#define READINGS_MOST 99

GArray *
rw_readings_read (const char *id, const char *text, RwStyle style, GError **error)
{
  const char *unit = rw_measurable_unit (id);
  g_auto (GStrv) items = NULL;
  g_autoptr (GArray) readings = g_array_new (FALSE, FALSE, sizeof (double));

  if (unit == NULL)
    {
      g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_UNKNOWN, _("“%s” can’t be measured"), id);
      return NULL;
    }
  items = rw_items_read (text, id, 1, READINGS_MOST, error);
  for (int i = 0; items != NULL && items[i] != NULL; i++)
    {
      double value;

      if (!rw_number_read (items[i], unit, style, id, &value, error))
        return NULL;
      g_array_append_val (readings, value);
    }
  return items != NULL ? g_steal_pointer (&readings) : NULL;
}

char *
rw_readings_write (const RwEntry *entry, RwStyle style)
{
  const char *unit = rw_measurable_unit (entry->id);
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < entry->readings->len; i++)
    {
      g_autofree char *number = rw_number_in_style (g_array_index (entry->readings, double, i), unit, style);

      g_string_append_printf (text, "%s%s", i > 0 ? "; " : "", number);
    }
  return g_string_free (text, FALSE);
}

static gboolean
check_entry (const char *id, const double *readings, guint count, const char *date, GError **error)
{
  g_autofree RwMeasured *scratch = g_new (RwMeasured, 1);

  rw_measured_init (scratch);
  for (guint i = 0; i < count; i++)
    if (!rw_measured_set (scratch, id, readings[i], error))
      return FALSE;
  if (count == 0)
    {
      g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE, _("There is no reading for “%s”"), id);
      return FALSE;
    }
  if (date != NULL && *date != '\0' && !rw_is_date (date))
    {
      g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE,
                   _("The date of “%s” is not written as in 2026-05-04"), id);
      return FALSE;
    }
  return TRUE;
}

gboolean
rw_ledger_put (RwLedger   *ledger,
               const char *id,
               const double *readings,
               guint       count,
               const char *date,
               const char *note,
               GError    **error)
{
  int i = find_entry (ledger, id);
  RwEntry *entry;

  if (!check_entry (id, readings, count, date, error))
    return FALSE;
  entry = entry_new (id, readings, count, date, note);
  if (i < 0)
    g_ptr_array_add (ledger->entries, entry);
  else
    {
      entry_free (entry_at (ledger, (guint) i));
      g_ptr_array_index (ledger->entries, i) = entry;
    }
  return TRUE;
}

gboolean
rw_ledger_remove (RwLedger *ledger, const char *id)
{
  int i = find_entry (ledger, id);

  if (i < 0)
    return FALSE;
  g_ptr_array_remove_index (ledger->entries, (guint) i);
  return TRUE;
}

void
rw_ledger_fill (const RwLedger *ledger, RwMeasured *measured)
{
  for (guint i = 0; i < ledger->entries->len; i++)
    {
      const RwEntry *entry = entry_at (ledger, i);
      gboolean set = rw_measured_set (measured, entry->id, rw_entry_mean (entry), NULL);

      g_assert (set); /* rw_ledger_put() let it in */
      if (strcmp (entry->id, "rim.outer_diameter") == 0 && entry->readings->len > 1)
        measured->rim_out_of_round = rw_entry_spread (entry);
    }
}
