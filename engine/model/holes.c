/* Holes through a rim of segments: how near they come to glue lines and joints, mm.  Geometry alone. */
#include "rim.h"

typedef struct
{
  double depth;  /* of its axis under the wood's top edge, mm */
  double radius; /* half the section of a square stick */
  double angle;  /* from the neck, degrees */
} Hole;

/* Least wood between the hole's edge and the faces between courses. */
static double
to_glue_line (const RwDesign *d, const Hole *hole)
{
  double least = INFINITY, top;

  for (int k = 2; k <= d->rim_course_thickness.count; k++)
    if (rw_rim_course_kept (d, k, &top) > 0)
      least = MIN (least, fabs (hole->depth - top) - hole->radius);
  return least;
}

/* Least arc on the outer face between the hole's edge and a joint of the courses that it passes.  Course 1 has a
 * segment's middle on the neck's axis. */
static double
to_joint (const RwModel *m, const Hole *hole)
{
  double pitch = 360 / m->d->rim_segments, least = INFINITY, top;

  for (int k = 1; k <= m->d->rim_course_thickness.count; k++)
    {
      double kept = rw_rim_course_kept (m->d, k, &top);

      if (!(kept > 0 && hole->depth + hole->radius > top && hole->depth - hole->radius < top + kept))
        continue;
      double past = fmod (hole->angle - pitch / 2 - rw_settled (m, RW_RIM_COURSE_TURN + k), pitch);
      if (past < 0)
        past += pitch;
      least = MIN (least, m->ro * MIN (past, pitch - past) * RW_RAD - hole->radius);
    }
  return least;
}

typedef struct
{
  double glue, joint;
} Least;

static void
consider (const RwModel *m, Least *least, Hole hole)
{
  /* One hole of unknown place leaves the least unknown. */
  double glue = to_glue_line (m->d, &hole), joint = to_joint (m, &hole);

  least->glue = isnan (hole.depth) ? (double) NAN : glue < least->glue ? glue : least->glue;
  least->joint = isnan (hole.angle + hole.depth) ? (double) NAN : joint < least->joint ? joint : least->joint;
}

static void
consider_at_neck_and_tail (const RwModel *m, Least *least, double depth, double radius)
{
  consider (m, least, (Hole){ depth, radius, 0 });
  consider (m, least, (Hole){ depth, radius, 180 });
}

void
rw_model_holes (RwModel *m)
{
  const RwDesign *d = m->d;
  Least least = { INFINITY, INFINITY };
  double bolt = rw_settled (m, RW_SHOES_HOLE_BELOW_EDGE);

  if (d->rim_construction != RW_RIM_SEGMENTS)
    return;
  for (int k = 1; k <= d->hooks_count; k++)
    consider (m, &least, (Hole){ bolt, d->shoes_bolt_hole / 2, rw_settled (m, RW_HOOKS_ANGLE + k) });
  if (d->joint_kind == RW_JOINT_STICK)
    consider_at_neck_and_tail (m, &least, rw_settled (m, RW_JOINT_STICK_ON_RIM), d->joint_stick_section / 2);
  else
    for (int k = 1; k <= d->joint_rod_count; k++)
      consider_at_neck_and_tail (m, &least, rw_settled (m, RW_JOINT_HOLE_ON_RIM + k), d->joint_rod_diameter / 2);
  rw_settle (m, RW_RIM_HOLE_TO_GLUE_LINE, least.glue);
  rw_settle (m, RW_RIM_HOLE_TO_JOINT, least.joint);
}
