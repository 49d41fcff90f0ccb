#include "param.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#include "param_text.h"

G_DEFINE_QUARK (rw-param-error-quark, rw_param_error)

void
rw_design_init (RwDesign *design)
{
  memset (design, 0, sizeof *design);
  for (int i = 0; i < RW_PARAM_COUNT; i++)
    {
      g_autoptr (GError) error = NULL;

      if (!rw_design_read (design, (RwParamId) i, rw_param ((RwParamId) i)->initial, RW_STYLE_FILE, &error))
        g_error ("Table of parameters: %s", error->message);
    }
}

gboolean
rw_design_equal (const RwDesign *a, const RwDesign *b)
{
  for (int i = 0; i < RW_PARAM_COUNT; i++)
    if (!rw_design_same (a, b, (RwParamId) i))
      return FALSE;
  return TRUE;
}

double
rw_design_get (const RwDesign *design, RwParamId id)
{
  const RwParam *param = rw_param (id);

  g_return_val_if_fail (rw_param_is_number (param), 0);
  return G_STRUCT_MEMBER (double, design, param->offset);
}

gboolean
rw_param_accepts (const RwParam *param, double value, RwStyle style, GError **error)
{
  const RwRange    range = { param->min, param->max, param->unit };
  g_autofree char *shown = NULL;

  if (!rw_range_accepts (&range, value, style, _(param->label), error))
    return FALSE;
  if (param->kind != RW_KIND_COUNT || value == floor (value))
    return TRUE;
  shown = rw_number_in_style (value, param->unit, style);
  g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_RANGE, _("%s: %s is not a whole number"),
               _(param->label), shown);
  return FALSE;
}

gboolean
rw_design_set (RwDesign *design, RwParamId id, double value, GError **error)
{
  const RwParam *param = rw_param (id);

  g_return_val_if_fail (rw_param_is_number (param), FALSE);
  if (!rw_param_accepts (param, value, RW_STYLE_FILE, error))
    return FALSE;
  G_STRUCT_MEMBER (double, design, param->offset) = value + 0.0; /* -0 is 0 */
  return TRUE;
}

static gboolean
numbers_same (const double *a, int count_a, const double *b, int count_b)
{
  if (count_a != count_b)
    return FALSE;
  for (int i = 0; i < count_a; i++)
    if (a[i] != b[i])
      return FALSE;
  return TRUE;
}

static gboolean
length_lists_same (const RwLengthList *a, const RwLengthList *b)
{
  return numbers_same (a->at, a->count, b->at, b->count);
}

static gboolean
cents_lists_same (const RwCentsList *a, const RwCentsList *b)
{
  return numbers_same (a->at, a->count, b->at, b->count);
}

static gboolean
wood_lists_same (const RwWoodList *a, const RwWoodList *b)
{
  return a->count == b->count && memcmp (a->at, b->at, sizeof a->at[0] * (size_t) a->count) == 0;
}

static gboolean
string_sets_same (const RwStringSet *a, const RwStringSet *b)
{
  if (a->count != b->count)
    return FALSE;
  for (int i = 0; i < a->count; i++)
    {
      const RwString *s = &a->at[i], *t = &b->at[i];

      if (strcmp (s->note, t->note) != 0 || s->outer_mm != t->outer_mm || s->core_mm != t->core_mm
          || s->wrap_kg_m3 != t->wrap_kg_m3 || s->mass_kg_m != t->mass_kg_m || s->is_short != t->is_short
          || s->wire != t->wire)
        return FALSE;
    }
  return TRUE;
}

gboolean
rw_design_same (const RwDesign *a, const RwDesign *b, RwParamId id)
{
  const RwParam *param = rw_param (id);
  const void    *x = G_STRUCT_MEMBER_P (a, param->offset);
  const void    *y = G_STRUCT_MEMBER_P (b, param->offset);

  switch (param->kind)
    {
    case RW_KIND_LENGTH_LIST:
      return length_lists_same (x, y);
    case RW_KIND_CENTS_LIST:
      return cents_lists_same (x, y);
    case RW_KIND_WOOD_LIST:
      return wood_lists_same (x, y);
    case RW_KIND_STRING_SET:
      return string_sets_same (x, y);
    case RW_KIND_CHOICE:
    case RW_KIND_WOOD:
    case RW_KIND_METAL:
    case RW_KIND_THREAD:
      return *(const int *) x == *(const int *) y;
    default:
      return *(const double *) x == *(const double *) y;
    }
}

static size_t
size_of_kind (RwKind kind)
{
  switch (kind)
    {
    case RW_KIND_LENGTH_LIST:
      return sizeof (RwLengthList);
    case RW_KIND_CENTS_LIST:
      return sizeof (RwCentsList);
    case RW_KIND_WOOD_LIST:
      return sizeof (RwWoodList);
    case RW_KIND_STRING_SET:
      return sizeof (RwStringSet);
    case RW_KIND_CHOICE:
    case RW_KIND_WOOD:
    case RW_KIND_METAL:
    case RW_KIND_THREAD:
      return sizeof (int);
    default:
      return sizeof (double);
    }
}

void
rw_design_copy (RwDesign *to, const RwDesign *from, RwParamId id)
{
  const RwParam *param = rw_param (id);

  memcpy (G_STRUCT_MEMBER_P (to, param->offset), G_STRUCT_MEMBER_P (from, param->offset),
          size_of_kind (param->kind));
}
