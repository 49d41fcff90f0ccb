/* Parts that are made, and of which the rest of the design asks something else by now. */
#include "check.h"

#include <string.h>

/* Rings that are glued and turned have no segments and courses any more that something could be asked of. */
static gboolean
is_used_up (const RwCheck *check, RwStep step)
{
  return (step == RW_STEP_SEGMENTS || step == RW_STEP_COURSES || step == RW_STEP_STACK)
         && check->measured->holds_slot[RW_RIM_INNER_DIAMETER];
}

/* By how many of its tolerances something else is asked of a made size now.  That it came out otherwise than was asked
 * when it was made is no such thing: the list of dimensions tells that. */
static double
moved_away (const RwCheck *check, int slot, double tolerance)
{
  double asked = check->result->asked[slot];

  return fmin (fabs (check->measured->held_slot[slot] - asked), fabs (check->at[slot] - asked)) / tolerance;
}

/* Of one step the made size that is furthest from what is asked; -1 where all fit. */
static int
worst_of_step (const RwCheck *check, RwStep step)
{
  double most = 1.0 + RW_CHECK_SLACK;
  int worst = -1;

  for (int i = 0; i < rw_dims_count; i++)
    {
      const RwDim *dim = &rw_dims[i];

      if (dim->step != step || !(dim->tolerance > 0.0))
        continue;
      for (int slot = (int) dim->first; slot < (int) dim->first + dim->span; slot++)
        {
          double off = isfinite (check->measured->held_slot[slot]) ? moved_away (check, slot, dim->tolerance) : 0.0;

          if (off > most)
            {
              most = off;
              worst = slot;
            }
        }
    }
  return worst;
}

/* What is asked of it comes of the parts that are still to make, or of what has been measured since. */
void
rw_check_made (RwCheck *check)
{
  for (int step = 0; check->measured != NULL && step < RW_STEP_COUNT; step++)
    {
      int slot = is_used_up (check, (RwStep) step) ? -1 : worst_of_step (check, (RwStep) step);
      g_autofree char *id = slot >= 0 ? rw_slot_id ((RwSlot) slot) : NULL;
      double made = slot >= 0 ? check->at[slot] : NAN, asked = slot >= 0 ? check->result->asked[slot] : NAN;

      if (slot < 0)
        continue;
      rw_check_add (check, RW_CAUTION, "made.misfit", id,
                    strcmp (rw_slot_dim ((RwSlot) slot)->unit, "deg") == 0
                      ? N_("{name}: made to {1 deg}, and the rest of the design now asks for {2 deg}, {3 deg} away. "
                           "What is made stays: change the design back, or make the part anew.")
                      : N_("{name}: made to {1 mm}, and the rest of the design now asks for {2 mm}, {3 mm} away. "
                           "What is made stays: change the design back, or make the part anew."),
                    made, asked, fabs (made - asked));
    }
}
