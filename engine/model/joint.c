/* Heel and what holds it to the rim.  Lengths mm, angles degrees; geometry alone. */
#include "model.h"

double
rw_heel_width (const RwResult *result, double depth)
{
  const RwDesign *d = &result->used;
  double top = result->value[RW_JOINT_HEEL_WIDTH];

  if (depth >= d->joint_heel_depth)
    return d->joint_heel_cap_width;
  return top + (d->joint_heel_cap_width - top) * depth / d->joint_heel_depth;
}

static void
rods (RwModel *m)
{
  const RwDesign *d = m->d;

  for (int k = 1; k <= d->joint_rod_count; k++)
    {
      double depth = d->joint_rod_upper + (k - 1) * d->joint_rod_spacing;

      rw_settle (m, RW_JOINT_HOLE_ON_HEEL + k, d->neck_set_height + depth);
      rw_settle (m, RW_JOINT_HOLE_ON_RIM + k, depth - d->rim_tone_ring_height);
    }
}

void
rw_model_joint (RwModel *m)
{
  const RwDesign *d = m->d;

  rw_settle (m, RW_JOINT_HEEL_ANGLE, 90 - rw_settled (m, RW_NECK_ANGLE));
  double half = rw_settle (m, RW_JOINT_HEEL_WIDTH, rw_settled (m, RW_NECK_WIDTH_AT_RIM)) / 2;
  /* Depth of the arc of the rim over the heel's width. */
  rw_settle (m, RW_JOINT_HOLLOW, m->ro - sqrt (m->ro * m->ro - half * half));

  if (d->joint_kind == RW_JOINT_RODS)
    rods (m);
  else
    {
      rw_settle (m, RW_JOINT_STICK_ON_HEEL, d->neck_set_height + d->joint_stick_below);
      rw_settle (m, RW_JOINT_STICK_ON_RIM, d->joint_stick_below - d->rim_tone_ring_height);
    }
  rw_settle (m, RW_JOINT_INSIDE_LENGTH, 2 * m->ri);
  rw_settle (m, RW_JOINT_RELIEF_DEPTH, m->hoop_ro + d->joint_hoop_relief - m->ro);
  rw_settle (m, RW_JOINT_RELIEF_HEIGHT,
             d->neck_set_height + d->head_collar + d->hoop_travel + d->joint_hoop_relief);
}
