/* Which remedy a maker would take first: the one that changes least, and leaves what is made as it is. */
#include "remedy_cures.h"

#include <math.h>
#include <string.h>

#include "check/listing.h"

/* A number moved by more than this share of what it is or becomes, or of a third of its range, makes another design: it
 * is offered only where nothing nearer helps. */
#define FAR_AWAY 0.51
/* What anything counts for that is not one number moved. */
#define A_CHOICE 0.3
/* A made part that fits less well than before, and a note that was not there. */
#define A_MISFIT 1.0
#define A_NOTE 0.2

/* How far the number is moved, against itself. */
static double
distance (const RwDesign *design, const RwRemedy *remedy)
{
  const RwParam *param = rw_param (remedy->param);
  double before, after;

  /* One number moved has what it was and by how much it moves among its values; anything else has not. */
  if (remedy->value_count < RW_REMEDY_VALUES || param->max <= param->min)
    return A_CHOICE;
  before = rw_design_get (design, remedy->param);
  after = rw_design_get (&remedy->design, remedy->param);
  return fabs (after - before) / fmax (fmax (fabs (before), fabs (after)), (param->max - param->min) / 3);
}

/* A fact that is asked to be something else, further from what it is. */
static gboolean
misfits (const RwMeasured *measured, RwSlot slot, const RwResult *before, const RwResult *after)
{
  double fact = measured != NULL ? measured->slot[slot] : NAN;

  return fabs (after->asked[slot] - fact) > fabs (before->asked[slot] - fact)
         && rw_shown_differ (after->asked[slot], before->asked[slot], rw_slot_dim (slot)->unit);
}

/* Of the rows that are cut or measured the share that gets another number, each family counting once; and the misfits
 * that it makes. */
static double
upheaval (const RwMeasured *measured, const RwResult *before, const RwResult *after)
{
  int families = 0, changed = 0, wrong = 0;

  for (int i = 0; i < rw_dims_count; i++)
    {
      const RwDim *dim = &rw_dims[i];
      gboolean any = FALSE, any_wrong = FALSE;

      for (int slot = (int) dim->first; dim->tolerance > 0 && slot < (int) dim->first + dim->span; slot++)
        {
          any |= rw_shown_differ (before->value[slot], after->value[slot], dim->unit);
          any_wrong |= misfits (measured, (RwSlot) slot, before, after);
        }
      families += dim->tolerance > 0;
      changed += any;
      wrong += any_wrong;
    }
  return (double) changed / families + wrong * A_MISFIT;
}

static int
compare (gconstpointer a, gconstpointer b)
{
  const RwRemedy *one = *(RwRemedy *const *) a, *other = *(RwRemedy *const *) b;

  return (one->effort > other->effort) - (one->effort < other->effort);
}

static gboolean
is_far (const RwRemedy *remedy, const RwDesign *design)
{
  return distance (design, remedy) > FAR_AWAY;
}

/* What is far away goes; but for the first where all are. */
static void
drop_far (GPtrArray *remedies, const RwDesign *design)
{
  gboolean any_near = FALSE;

  for (guint i = 0; i < remedies->len; i++)
    any_near |= !is_far (g_ptr_array_index (remedies, i), design);
  for (guint i = remedies->len; i-- > (any_near ? 0 : 1);)
    if (is_far (g_ptr_array_index (remedies, i), design))
      g_ptr_array_remove_index (remedies, i);
}

void
rw_remedies_rank (GPtrArray *remedies, const RwDesign *design, const RwMeasured *measured, const GPtrArray *findings)
{
  g_autofree RwResult *before = g_new (RwResult, 1), *after = g_new (RwResult, 1);

  rw_solve (design, measured, before);
  for (guint i = 0; i < remedies->len; i++)
    {
      RwRemedy *remedy = g_ptr_array_index (remedies, i);

      rw_solve (&remedy->design, measured, after);
      g_autoptr (GPtrArray) then = rw_check (&remedy->design, measured, after);
      remedy->effort = distance (design, remedy) + upheaval (measured, before, after)
                       + A_NOTE * rw_remedy_new_notes (findings, then);
    }
  g_ptr_array_sort (remedies, compare);
  drop_far (remedies, design);
}
