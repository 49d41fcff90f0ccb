#include "param_text.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#include "material.h"

/* Inches that six digits can't tell apart, up to a hundred of them. */
#define INCHES_CLOSE 0.00005

const RwRange rw_course_range = { RW_COURSE_MIN, RW_COURSE_MAX, "mm" };

char *
rw_number_in_style (double value, const char *unit, RwStyle style)
{
  double inches = value / RW_MM_PER_INCH;
  char   text[G_ASCII_DTOSTR_BUF_SIZE];
  int    parts = rw_units_parts (style.units);

  if (parts > 0 && strcmp (unit, "mm") == 0 && fabs (inches - round (inches * parts) / parts) < INCHES_CLOSE)
    return rw_quantity_write (value, unit, style.units, 0, style.decimal);
  if (style.units == RW_UNITS_MM || strcmp (unit, "mm") != 0)
    {
      g_autofree char *exact = rw_number_write (value);

      return g_strdelimit (g_steal_pointer (&exact), ".", style.decimal);
    }
  g_ascii_formatd (text, sizeof text, "%.6g", inches);
  return g_strdup (g_strdelimit (text, ".", style.decimal));
}

char *
rw_number_with_unit (double value, const char *unit, RwStyle style)
{
  g_autofree char *number = rw_number_in_style (value, unit, style);
  const char      *sign = rw_quantity_unit (unit, style.units);

  if (*sign == '\0' || strcmp (sign, "°") == 0)
    return g_strconcat (number, sign, NULL);
  return g_strconcat (number, " ", sign, NULL);
}

gboolean
rw_range_accepts (const RwRange *range, double value, RwStyle style, const char *label, GError **error)
{
  g_autofree char *shown = NULL, *low = NULL, *high = NULL;

  if (value >= range->min && value <= range->max)
    return TRUE;
  shown = rw_number_with_unit (value, range->unit, style);
  low = rw_number_in_style (range->min, range->unit, style);
  high = rw_number_with_unit (range->max, range->unit, style);
  g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_RANGE, _("%s: %s is outside %s to %s"), label, shown,
               low, high);
  return FALSE;
}

gboolean
rw_number_read (const char *text,
                const char *unit,
                RwStyle     style,
                const char *label,
                double     *value,
                GError    **error)
{
  const char        *bare = style.units != RW_UNITS_MM && strcmp (unit, "mm") == 0 ? "in" : NULL;
  g_autoptr (GError) reason = NULL;

  if (rw_quantity_read (text, unit, bare, style.decimal, value, &reason))
    return TRUE;
  g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE, "%s: %s", label, reason->message);
  return FALSE;
}

gboolean
rw_range_read (const RwRange *range,
               const char    *text,
               RwStyle        style,
               const char    *label,
               double        *value,
               GError       **error)
{
  const double close = style.units == RW_UNITS_MM ? 0 : INCHES_CLOSE * RW_MM_PER_INCH;

  if (!rw_number_read (text, range->unit, style, label, value, error))
    return FALSE;
  if (*value < range->min && *value >= range->min - close)
    *value = range->min;
  if (*value > range->max && *value <= range->max + close)
    *value = range->max;
  return rw_range_accepts (range, *value, style, label, error);
}

char **
rw_items_read (const char *text, const char *label, int min, int max, GError **error)
{
  g_auto (GStrv) items = g_strsplit (text, ";", -1);
  int            count = (int) g_strv_length (items);

  if (!g_utf8_validate (text, -1, NULL))
    g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE, _("%s: the text is not UTF-8"), label);
  else if (count < min || count > max)
    g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_RANGE, _("%s: %d items, but %d to %d are wanted"),
                 label, count, min, max);
  else
    {
      for (int i = 0; i < count; i++)
        if (*g_strstrip (items[i]) == '\0')
          {
            g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE, _("%s: item %d is empty"), label,
                         i + 1);
            return NULL;
          }
      return g_steal_pointer (&items);
    }
  return NULL;
}

typedef struct
{
  const char *id, *label;
} Names;

/* What a row of the kind's table is called; NULL beyond its end.  Threads go by their id alone. */
static Names
names_of (RwKind kind, int row)
{
  const Names none = { NULL, NULL };

  switch (kind)
    {
    case RW_KIND_WOOD:
      return row < rw_woods_count ? (Names){ rw_woods[row].id, rw_woods[row].label } : none;
    case RW_KIND_METAL:
      return row < rw_metals_count ? (Names){ rw_metals[row].id, rw_metals[row].label } : none;
    default:
      return row < rw_threads_count ? (Names){ rw_threads[row].id, rw_threads[row].id } : none;
    }
}

/* The row by its id, or by its label as people write it. */
static gboolean
read_material (const char *text, RwKind kind, const char *label, int *row, GError **error)
{
  g_autofree char *word = g_strstrip (g_strdup (text));
  Names            names;

  for (int i = 0; (names = names_of (kind, i)).id != NULL; i++)
    if (strcmp (names.id, word) == 0 || g_ascii_strcasecmp (names.label, word) == 0)
      {
        *row = i;
        return TRUE;
      }
  g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE,
               kind == RW_KIND_METAL    ? _("%s: “%s” is not in the table of metals")
               : kind == RW_KIND_THREAD ? _("%s: “%s” is not in the table of threads")
                                        : _("%s: “%s” is not in the table of woods"),
               label, word);
  return FALSE;
}

static gboolean
read_choice (const RwParam *param, const char *text, int *place, GError **error)
{
  g_auto (GStrv)   options = g_strsplit (param->options, "|", -1);
  g_autofree char *word = g_strstrip (g_strdup (text));
  g_autofree char *all = NULL;

  for (int i = 0; options[i] != NULL; i++)
    if (strcmp (options[i], word) == 0)
      {
        *place = i;
        return TRUE;
      }
  all = g_strjoinv (", ", options);
  g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE, _("%s: “%s” is none of %s"), _(param->label),
               word, all);
  return FALSE;
}

static gboolean
read_lengths (const RwParam *param, const char *text, RwStyle style, RwLengthList *list, GError **error)
{
  const char    *label = _(param->label);
  g_auto (GStrv) items = rw_items_read (text, label, 1, RW_COURSES_MAX, error);
  RwLengthList   read = { 0 };

  if (items == NULL)
    return FALSE;
  for (; items[read.count] != NULL; read.count++)
    if (!rw_range_read (&rw_course_range, items[read.count], style, label, &read.at[read.count], error))
      return FALSE;
  *list = read;
  return TRUE;
}

static gboolean
read_cents (const RwParam *param, const char *text, RwStyle style, RwCentsList *list, GError **error)
{
  static const RwRange range = { -60, 60, "cent" };
  const char *label = _(param->label);
  g_auto (GStrv) items = rw_items_read (text, label, 1, RW_TONES, error);
  RwCentsList read = { 0 };

  if (items == NULL)
    return FALSE;
  for (; items[read.count] != NULL; read.count++)
    if (!rw_range_read (&range, items[read.count], style, label, &read.at[read.count], error))
      return FALSE;
  *list = read;
  return TRUE;
}

static gboolean
read_woods (const RwParam *param, const char *text, RwWoodList *list, GError **error)
{
  g_auto (GStrv) items = rw_items_read (text, _(param->label), 1, RW_COURSES_MAX, error);
  RwWoodList     read = { 0 };

  if (items == NULL)
    return FALSE;
  for (; items[read.count] != NULL; read.count++)
    if (!read_material (items[read.count], RW_KIND_WOOD, _(param->label), &read.at[read.count], error))
      return FALSE;
  *list = read;
  return TRUE;
}

static gboolean
read_number (const RwParam *param, const char *text, RwStyle style, double *number, GError **error)
{
  const RwRange range = { param->min, param->max, param->unit };
  double        value;

  if (!rw_range_read (&range, text, style, _(param->label), &value, error)
      || !rw_param_accepts (param, value, style, error))
    return FALSE;
  *number = value;
  return TRUE;
}

gboolean
rw_design_read (RwDesign *design, RwParamId id, const char *text, RwStyle style, GError **error)
{
  const RwParam *param = rw_param (id);
  void          *member = G_STRUCT_MEMBER_P (design, param->offset);

  if (!g_utf8_validate (text, -1, NULL))
    {
      g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE, _("%s: the text is not UTF-8"),
                   _(param->label));
      return FALSE;
    }
  switch (param->kind)
    {
    case RW_KIND_CHOICE:
      return read_choice (param, text, member, error);
    case RW_KIND_WOOD:
    case RW_KIND_METAL:
    case RW_KIND_THREAD:
      return read_material (text, param->kind, _(param->label), member, error);
    case RW_KIND_LENGTH_LIST:
      return read_lengths (param, text, style, member, error);
    case RW_KIND_CENTS_LIST:
      return read_cents (param, text, style, member, error);
    case RW_KIND_WOOD_LIST:
      return read_woods (param, text, member, error);
    case RW_KIND_STRING_SET:
      return rw_string_set_read (member, text, style, _(param->label), error);
    default:
      return read_number (param, text, style, member, error);
    }
}

static char *
write_numbers (const double *at, int count, const char *unit, RwStyle style)
{
  g_autoptr (GStrvBuilder) items = g_strv_builder_new ();
  g_auto (GStrv)           all = NULL;

  for (int i = 0; i < count; i++)
    {
      g_autofree char *item = rw_number_in_style (at[i], unit, style);

      g_strv_builder_add (items, item);
    }
  all = g_strv_builder_end (items);
  return g_strjoinv ("; ", all);
}

static char *
write_woods (const RwWoodList *list)
{
  const char *ids[RW_COURSES_MAX + 1] = { NULL };

  for (int i = 0; i < list->count; i++)
    ids[i] = rw_woods[list->at[i]].id;
  return g_strjoinv ("; ", (char **) ids);
}

static char *
write_choice (const char *options, int place)
{
  g_auto (GStrv) all = g_strsplit (options, "|", -1);

  return g_strdup (all[place]);
}

char *
rw_design_write (const RwDesign *design, RwParamId id, RwStyle style)
{
  const RwParam *param = rw_param (id);
  const void    *member = G_STRUCT_MEMBER_P (design, param->offset);
  const RwLengthList *lengths = member;
  const RwCentsList *cents = member;

  switch (param->kind)
    {
    case RW_KIND_CHOICE:
      return write_choice (param->options, *(const int *) member);
    case RW_KIND_WOOD:
    case RW_KIND_METAL:
    case RW_KIND_THREAD:
      return g_strdup (names_of (param->kind, *(const int *) member).id);
    case RW_KIND_LENGTH_LIST:
      return write_numbers (lengths->at, lengths->count, param->unit, style);
    case RW_KIND_CENTS_LIST:
      return write_numbers (cents->at, cents->count, param->unit, style);
    case RW_KIND_WOOD_LIST:
      return write_woods (member);
    case RW_KIND_STRING_SET:
      return rw_string_set_write (member, style);
    default:
      return rw_number_in_style (*(const double *) member, param->unit, style);
    }
}
