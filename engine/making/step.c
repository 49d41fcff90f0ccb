#include "step.h"

#include <math.h>
#include <string.h>

static gboolean
has_step (const RwStepInfo *info, const RwDesign *used)
{
  return info->when == NULL || info->when (used);
}

int
rw_steps_of (const RwDesign *used, const RwStepInfo *steps[RW_STEP_COUNT])
{
  int count = 0;

  for (int i = 0; i < rw_step_infos_count; i++)
    if (has_step (&rw_step_infos[i], used))
      steps[count++] = &rw_step_infos[i];
  return count;
}

const RwStepInfo *
rw_step_info (RwStep step, const RwDesign *used)
{
  for (int i = 0; i < rw_step_infos_count; i++)
    if (rw_step_infos[i].step == step && has_step (&rw_step_infos[i], used))
      return &rw_step_infos[i];
  return NULL;
}

const char *
rw_step_info_title (const RwStepInfo *info)
{
  return info->title != NULL ? info->title : rw_step_title (info->step);
}

/* ---- how far the work has come ---- */

RwStepState
rw_step_state (const RwStepInfo *info, const RwMade *made, const RwDesign *used, guint *waits_for)
{
  const RwStepInfo *steps[RW_STEP_COUNT];
  int count = rw_steps_of (used, steps);
  guint missing = 0;

  for (int i = 0; i < count && steps[i] != info; i++)
    if ((info->after & RW_STEP_BIT (steps[i]->step)) && rw_made_find (made, steps[i]->step) == NULL)
      missing |= RW_STEP_BIT (steps[i]->step);
  if (waits_for != NULL)
    *waits_for = missing;
  if (rw_made_find (made, info->step) != NULL)
    return RW_STEP_DONE;
  return missing == 0 ? RW_STEP_POSSIBLE : RW_STEP_WAITING;
}

const char *
rw_step_state_name (RwStepState state)
{
  static const char *const names[] = {
    [RW_STEP_DONE] = "done",
    [RW_STEP_POSSIBLE] = "possible",
    [RW_STEP_WAITING] = "waiting",
  };

  return names[state];
}

/* ---- what is read off ---- */

static void
add_once (GPtrArray *ids, char *id)
{
  if (g_ptr_array_find_with_equal_func (ids, id, g_str_equal, NULL))
    g_free (id);
  else
    g_ptr_array_add (ids, id);
}

static void
add_courses (GPtrArray *ids, const RwDesign *used)
{
  for (int k = 1; k <= used->rim_course_thickness.count; k++)
    add_once (ids, g_strdup_printf ("%s[%d]", rw_param (RW_P_rim_course_thickness)->id, k));
}

/* The row of dimensions with an id as in the table, index letters and all; or NULL. */
static const RwDim *
find_dim (const char *id)
{
  for (int i = 0; i < rw_dims_count; i++)
    if (strcmp (rw_dims[i].id, id) == 0)
      return &rw_dims[i];
  return NULL;
}

/* A family of more members, such as the frets, is left to the list of dimensions and to papers of its own. */
#define FEW 6

static int
members (const RwDim *dim, const RwResult *result)
{
  int count = 0;

  for (int i = 0; i < dim->span; i++)
    count += isfinite (result->value[dim->first + (RwSlot) i]);
  return count;
}

static void
add_dim (GPtrArray *ids, const RwDim *dim, const RwResult *result)
{
  if (members (dim, result) > FEW)
    return;
  for (int i = 0; i < dim->span; i++)
    {
      RwSlot slot = dim->first + (RwSlot) i;

      if (isfinite (result->value[slot]))
        add_once (ids, rw_slot_id (slot));
    }
}

static void
add_named (GPtrArray *ids, const char *words, const RwResult *result)
{
  g_auto (GStrv) names = g_strsplit (words, " ", -1);

  for (int i = 0; names[i] != NULL; i++)
    {
      const RwDim *dim = find_dim (names[i]);

      if (g_str_has_prefix (names[i], rw_param (RW_P_rim_course_thickness)->id))
        add_courses (ids, &result->used);
      else if (rw_param_find (names[i]) >= 0)
        add_once (ids, g_strdup (names[i]));
      else if (dim != NULL)
        add_dim (ids, dim, result);
    }
}

static char **
end_ids (GPtrArray *ids)
{
  g_ptr_array_add (ids, NULL);
  return (char **) g_ptr_array_free (ids, FALSE);
}

char **
rw_step_given (const RwStepInfo *info, const RwResult *result)
{
  GPtrArray *ids = g_ptr_array_new ();

  add_named (ids, info->given, result);
  return end_ids (ids);
}

char **
rw_step_yields (const RwStepInfo *info, const RwResult *result)
{
  GPtrArray *ids = g_ptr_array_new ();

  add_named (ids, info->yields, result);
  for (int i = 0; i < rw_dims_count; i++)
    if (rw_dims[i].step == info->step && rw_dims[i].span == RW_SPAN_ONE && rw_dims[i].tolerance > 0)
      add_dim (ids, &rw_dims[i], result);
  return end_ids (ids);
}
