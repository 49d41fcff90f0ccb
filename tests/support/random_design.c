#include "random_design.h"

#include <math.h>

#include "table/material.h"

static gboolean
one_in (int n)
{
  return g_test_rand_int_range (0, n) == 0;
}

static double
random_number (const RwParam *param)
{
  double value;

  if (param->kind == RW_KIND_COUNT)
    return g_test_rand_int_range ((gint32) param->min, (gint32) param->max + 1);
  if (one_in (16))
    return one_in (2) ? param->min : param->max;
  value = g_test_rand_double_range (param->min, param->max);
  if (one_in (2)) /* as a hand sets it */
    value = CLAMP (round (value / param->step) * param->step, param->min, param->max);
  return value + 0.0; /* a design has no -0 */
}

static int
random_choice (const char *options)
{
  g_auto (GStrv) all = g_strsplit (options, "|", -1);

  return g_test_rand_int_range (0, (gint32) g_strv_length (all));
}

static void
random_string (RwString *string)
{
  static const char *const notes[] = { "C0", "F#3", "Bb3", "G4", "B8", "146.83", "1234.56789" };

  g_strlcpy (string->note, notes[g_test_rand_int_range (0, G_N_ELEMENTS (notes))], sizeof string->note);
  string->outer_mm = g_test_rand_double_range (0.15, 3);
  if (one_in (2))
    {
      string->core_mm = g_test_rand_double_range (0.05, string->outer_mm * 0.9);
      if (one_in (2))
        string->wrap_kg_m3 = g_test_rand_double_range (500, 23000);
    }
  if (one_in (4))
    string->mass_kg_m = g_test_rand_double_range (0.0001, 0.05);
}

static void
random_strings (RwStringSet *set)
{
  *set = (RwStringSet){ 0 };
  set->count = g_test_rand_int_range (3, RW_STRINGS_MAX + 1);
  for (int i = 0; i < set->count; i++)
    random_string (&set->at[i]);
  set->at[set->count - 1].is_short = one_in (2);
}

static void
random_lengths (RwLengthList *list)
{
  *list = (RwLengthList){ 0 };
  list->count = g_test_rand_int_range (1, RW_COURSES_MAX + 1);
  for (int i = 0; i < list->count; i++)
    list->at[i] = g_test_rand_double_range (RW_COURSE_MIN, RW_COURSE_MAX);
}

static void
random_cents (RwCentsList *list)
{
  list->count = g_test_rand_int_range (1, RW_TONES + 1);
  for (int i = 0; i < list->count; i++)
    list->at[i] = g_test_rand_double_range (-60, 60);
}

static void
random_woods (RwWoodList *list)
{
  *list = (RwWoodList){ 0 };
  list->count = g_test_rand_int_range (1, RW_COURSES_MAX + 1);
  for (int i = 0; i < list->count; i++)
    list->at[i] = g_test_rand_int_range (0, rw_woods_count);
}

static void
random_member (const RwParam *param, void *member)
{
  switch (param->kind)
    {
    case RW_KIND_CHOICE:
      *(int *) member = random_choice (param->options);
      break;
    case RW_KIND_WOOD:
      *(int *) member = g_test_rand_int_range (0, rw_woods_count);
      break;
    case RW_KIND_METAL:
      *(int *) member = g_test_rand_int_range (0, rw_metals_count);
      break;
    case RW_KIND_THREAD:
      *(int *) member = g_test_rand_int_range (0, rw_threads_count);
      break;
    case RW_KIND_LENGTH_LIST:
      random_lengths (member);
      break;
    case RW_KIND_CENTS_LIST:
      random_cents (member);
      break;
    case RW_KIND_WOOD_LIST:
      random_woods (member);
      break;
    case RW_KIND_STRING_SET:
      random_strings (member);
      break;
    default:
      *(double *) member = random_number (param);
    }
}

void
random_design (RwDesign *design)
{
  rw_design_init (design);
  for (int i = 0; i < RW_PARAM_COUNT; i++)
    {
      const RwParam *param = rw_param ((RwParamId) i);

      if (!rw_param_is_limit (param))
        random_member (param, G_STRUCT_MEMBER_P (design, param->offset));
    }
}

void
random_design_near (RwDesign *design, int changes)
{
  rw_design_init (design);
  for (int left = changes; left > 0;)
    {
      RwParamId      id = (RwParamId) g_test_rand_int_range (0, RW_PARAM_COUNT);
      const RwParam *param = rw_param (id);
      double         value;

      if (!rw_param_is_number (param) || rw_param_is_limit (param))
        continue;
      left--;
      value = rw_design_get (design, id) * g_test_rand_double_range (0.8, 1.2);
      if (param->kind == RW_KIND_COUNT)
        value = round (value);
      rw_design_set (design, id, CLAMP (value, param->min, param->max), NULL);
    }
}
