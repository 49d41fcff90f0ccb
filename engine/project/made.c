#include "made.h"

#include <math.h>
#include <string.h>

static void
made_step_free (RwMadeStep *step)
{
  g_free (step->date);
  rw_snapshot_free (step->held);
  g_free (step);
}

/* Takes held over. */
static RwMadeStep *
made_step_new (RwStep step, const char *date, RwSnapshot *held)
{
  RwMadeStep *made = g_new (RwMadeStep, 1);

  made->step = step;
  made->date = g_strdup (date != NULL ? date : "");
  made->held = held;
  return made;
}

static RwMadeStep *
step_at (const RwMade *made, guint i)
{
  return g_ptr_array_index (made->steps, i);
}

RwMade *
rw_made_new (void)
{
  RwMade *made = g_new (RwMade, 1);

  made->steps = g_ptr_array_new_with_free_func ((GDestroyNotify) made_step_free);
  return made;
}

RwMade *
rw_made_copy (const RwMade *made)
{
  RwMade *copy = rw_made_new ();

  for (guint i = 0; i < made->steps->len; i++)
    {
      const RwMadeStep *step = step_at (made, i);

      g_ptr_array_add (copy->steps, made_step_new (step->step, step->date, rw_snapshot_copy (step->held)));
    }
  return copy;
}

void
rw_made_free (RwMade *made)
{
  if (made == NULL)
    return;
  g_ptr_array_unref (made->steps);
  g_free (made);
}

gboolean
rw_made_equal (const RwMade *a, const RwMade *b)
{
  if (a->steps->len != b->steps->len)
    return FALSE;
  for (guint i = 0; i < a->steps->len; i++)
    {
      const RwMadeStep *one = step_at (a, i), *other = step_at (b, i);

      if (one->step != other->step || strcmp (one->date, other->date) != 0
          || !rw_snapshot_equal (one->held, other->held))
        return FALSE;
    }
  return TRUE;
}

RwMadeStep *
rw_made_find (const RwMade *made, RwStep step)
{
  for (guint i = 0; i < made->steps->len; i++)
    if (step_at (made, i)->step == step)
      return step_at (made, i);
  return NULL;
}

RwMadeStep *
rw_made_add (RwMade *made, RwStep step, const char *date)
{
  RwMadeStep *added = made_step_new (step, date, rw_snapshot_new ());
  guint place = 0;

  rw_made_remove (made, step);
  while (place < made->steps->len && step_at (made, place)->step < step)
    place++;
  g_ptr_array_insert (made->steps, (int) place, added);
  return added;
}

gboolean
rw_made_remove (RwMade *made, RwStep step)
{
  RwMadeStep *found = rw_made_find (made, step);

  return found != NULL && g_ptr_array_remove (made->steps, found);
}

const RwMadeStep *
rw_made_holder_of_param (const RwMade *made, RwParamId id)
{
  for (guint i = 0; i < made->steps->len; i++)
    if (step_at (made, i)->held->has_param[id])
      return step_at (made, i);
  return NULL;
}

const RwMadeStep *
rw_made_holder_of_slot (const RwMade *made, RwSlot slot)
{
  for (guint i = 0; i < made->steps->len; i++)
    if (!isnan (rw_snapshot_slot (step_at (made, i)->held, slot)))
      return step_at (made, i);
  return NULL;
}

void
rw_made_fill (const RwMade *made, RwMeasured *measured)
{
  for (guint i = 0; i < made->steps->len; i++)
    rw_snapshot_hold (step_at (made, i)->held, measured);
}
