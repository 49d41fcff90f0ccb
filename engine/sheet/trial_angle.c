#include "trial.h"

#include <math.h>

/* Dimensions of angles: an arc between two legs, its figure level, outside the arc or in its opening, or at
 * an end where the angle is narrow. */

#define LEG 10.0 /* paper mm of leg shown inside the arc, at most: the rest is the drawing's */

typedef struct
{
  RwPoint apex;
  double  radius, low, high; /* paper mm, radians */
  gboolean outside;          /* heads stand outside the legs */
} Opening;

static RwPoint
around (const Opening *o, double angle, double radius)
{
  return (RwPoint){ o->apex.x + radius * cos (angle), o->apex.y + radius * sin (angle) };
}

static void
add_leg (const RwTrialJob *job, RwTrial *trial, const Opening *o, double angle)
{
  double inner = MAX (RW_TRIAL_GAP * job->unit, o->radius - LEG * job->unit);
  double outer = o->radius + RW_TRIAL_OVERSHOOT * job->unit;

  rw_trial_add_line (job, trial, RW_MARK_EXTENSION, around (o, angle, inner), around (o, angle, outer));
}

/* A head with its tip on the leg and its back on the arc, `way` radians away from it. */
static void
add_head (const RwTrialJob *job, RwTrial *trial, const Opening *o, double angle, double way)
{
  RwPoint tip = around (o, angle, o->radius), back = around (o, angle + way, o->radius);
  double length = hypot (tip.x - back.x, tip.y - back.y);

  rw_trial_add_head (job, trial, tip, (RwPoint){ (tip.x - back.x) / length, (tip.y - back.y) / length });
}

static void
add_arc (const RwTrialJob *job, RwTrial *trial, const Opening *o)
{
  double head = MIN (RW_TRIAL_HEAD * job->unit / o->radius, G_PI_2);
  double tail = o->outside ? MIN (RW_TRIAL_TAIL * job->unit / o->radius, G_PI_2) : 0;
  double way = o->outside ? -head : head;
  RwPlacedMark *arc = &trial->marks[trial->count++];

  *arc = (RwPlacedMark){ .item = job->index, .kind = RW_MARK_ARC, .p = { o->apex }, .radius = o->radius,
                         .a0 = o->low - tail, .a1 = o->high + tail };
  add_head (job, trial, o, o->low, way);
  add_head (job, trial, o, o->high, -way);
}

/* A level text whose box is one gap from a point on the side that `way` points to. */
static void
set_beside (const RwTrialJob *job, RwTrial *trial, RwPoint point, RwPoint way)
{
  double width = rw_trial_width (job), size = rw_trial_letters (job);
  double away = RW_TRIAL_GAP * job->unit + (fabs (way.x) * width + fabs (way.y) * size) / 2;
  RwPoint centre = { point.x + way.x * away, point.y + way.y * away };

  rw_trial_set_text (job, trial, (RwPoint){ centre.x - width / 2, centre.y - size / 2 }, 0);
}

/* The figure in the opening, over the arc or under it, where the legs leave room for it. */
static gboolean
set_in_opening (const RwTrialJob *job, RwTrial *trial, const Opening *o, gboolean under)
{
  double middle = (o->low + o->high) / 2, c = cos (middle), s = sin (middle);
  double across = fabs (s) * rw_trial_width (job) + fabs (c) * rw_trial_letters (job);
  double radius = o->radius - (under ? RW_TRIAL_SHORT * job->unit : 0);

  if (radius <= 0 || across + 2 * RW_TRIAL_GAP * job->unit > radius * (o->high - o->low))
    return FALSE;
  set_beside (job, trial, around (o, middle, o->radius), under ? (RwPoint){ -c, -s } : (RwPoint){ c, s });
  return TRUE;
}

/* The figure past the arc's end, going on the way that the arc goes. */
static void
set_past_end (const RwTrialJob *job, RwTrial *trial, const Opening *o, double angle, double sign)
{
  double tail = MIN ((o->outside ? RW_TRIAL_TAIL : RW_TRIAL_GAP) * job->unit / o->radius, G_PI_2);
  double end = angle + sign * tail;

  set_beside (job, trial, around (o, end, o->radius), (RwPoint){ -sign * sin (end), sign * cos (end) });
}

gboolean
rw_trial_angle (const RwTrialJob *job, int place, RwTrial *trial)
{
  const RwItem *item = job->item;
  Opening o = { .apex = { item->p[0].x * job->scale, item->p[0].y * job->scale },
                .radius = item->radius * job->scale,
                .low = MIN (item->a0, item->a1),
                .high = MAX (item->a0, item->a1) };

  if (o.radius <= 0)
    return FALSE;
  o.outside = o.radius * (o.high - o.low) < RW_TRIAL_SHORT * job->unit;
  add_leg (job, trial, &o, o.low);
  add_leg (job, trial, &o, o.high);
  add_arc (job, trial, &o);
  trial->cost = place;

  switch (place)
    {
    case 0:
      return set_in_opening (job, trial, &o, FALSE);
    case 1:
      return set_in_opening (job, trial, &o, TRUE);
    case 2:
      set_past_end (job, trial, &o, o.high, 1);
      return TRUE;
    default:
      set_past_end (job, trial, &o, o.low, -1);
      return TRUE;
    }
}
