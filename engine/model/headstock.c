/* The headstock unfolded into the board's plane.
 *
 * Frame: origin where the neck's centre line meets the nut's back face, x along the centre line away from the
 * nut, y to the treble side.  Lengths mm.  Strings are straight lines between the points that they touch; geometry
 * alone. */
#include "model.h"

/* How many pairs of posts are used: full-length strings two by two from the outside, a middle one alone, a short
 * string that comes through the tunnel in the pair after them. */
static int
pairs_used (const RwModel *m)
{
  const RwPlan *plan = &m->r->plan;
  gboolean tunnel = plan->has_short && m->d->fifth_route == RW_ROUTE_TUNNEL;

  return (plan->full + 1) / 2 + (tunnel ? 1 : 0);
}

/* The pair of a string, from 1 at the nut, and its side: +1 treble, -1 bass.  0 where it has no post. */
static int
pair_of (const RwModel *m, int string, int *side)
{
  const RwPlan *plan = &m->r->plan;
  int half = plan->full / 2;

  *side = string > plan->full - half ? -1 : 1;
  if (string > plan->full)
    return m->d->fifth_route == RW_ROUTE_TUNNEL ? pairs_used (m) : 0;
  if (string <= half)
    return string;
  if (string > plan->full - half)
    return plan->full + 1 - string;
  return half + 1;
}

/* Where a string, straight on in plan, crosses the nut's back face, which stands parallel to the frets: in the
 * frame of the headstock. */
static RwPoint2
back_point (const RwModel *m, int string)
{
  const RwPlan *plan = &m->r->plan;
  double centre = atan (plan->centre_slope), behind = m->d->nut_thickness;
  double normal = m->d->scale_square_to == RW_SQUARE_TO_NECK ? centre : 0; /* direction square to the back face */
  double slope = (plan->bridge_y[string] - plan->nut_y[string]) / plan->length;

  /* From the middle of the nut: way along the normal is -behind. */
  double off = plan->nut_y[string] - plan->nut_middle;
  double x = (-behind - off * sin (normal)) / (cos (normal) + slope * sin (normal));
  double y = off + slope * x;

  /* Turn into the frame of the headstock; its origin lies on the centre line. */
  double along = x * cos (centre) + y * sin (centre);
  double across = y * cos (centre) - x * sin (centre);
  return (RwPoint2){ -along - behind / cos (centre - normal), across };
}

typedef struct
{
  RwPoint2 nut;  /* where the string leaves the nut's back face */
  RwPoint2 post; /* NaN where the string has none */
  double   bend; /* radians, unsigned: between its run on the board and its run to the post */
} Run;

static Run
run_of (const RwModel *m, int string)
{
  const RwDesign *d = m->d;
  const RwPlan *plan = &m->r->plan;
  Run run = { { NAN, NAN }, { NAN, NAN }, NAN };
  int side, pair = pair_of (m, string, &side), pairs = pairs_used (m);

  if (pair == 0)
    return run;
  double share = pairs > 1 ? (pair - 1.0) / (pairs - 1.0) : 0;
  double across = d->headstock_post_across_first
                  + (d->headstock_post_across_last - d->headstock_post_across_first) * share;
  run.post.x = rw_measured_or (m, RW_HEADSTOCK_POST_X + string,
                               d->headstock_post_first + (pair - 1) * d->headstock_post_pitch);
  run.post.y = rw_measured_or (m, RW_HEADSTOCK_POST_Y + string, side * across / 2);
  if (string > plan->full)
    return run;

  run.nut = back_point (m, string);
  /* Directions away from the body; the centre line runs along x. */
  double ahead = atan ((plan->bridge_y[string] - plan->nut_y[string]) / plan->length) - atan (plan->centre_slope);
  run.bend = fabs (atan2 (run.post.y - run.nut.y, run.post.x - run.nut.x) + ahead);
  return run;
}

/* From the short string's start straight to its post, in the unfolded plane. */
static double
tunnel_run (const RwModel *m, RwPoint2 post)
{
  const RwPlan *plan = &m->r->plan;
  double centre = atan (plan->centre_slope);
  double normal = m->d->scale_square_to == RW_SQUARE_TO_NECK ? centre : 0;
  double x = plan->short_x, y = plan->short_y - plan->nut_middle;
  double along = x * cos (centre) + y * sin (centre);
  double across = y * cos (centre) - x * sin (centre);

  return hypot (along + m->d->nut_thickness / cos (centre - normal) + post.x, across - post.y);
}

void
rw_model_headstock (RwModel *m)
{
  RwPlan *plan = &m->r->plan;
  const RwSide *side = &m->r->side;

  for (int i = 1; i <= plan->strings; i++)
    {
      Run run = run_of (m, i);

      rw_settle (m, RW_HEADSTOCK_POST_X + i, run.post.x);
      rw_settle (m, RW_HEADSTOCK_POST_Y + i, run.post.y);
      if (i <= plan->full && side->outcome == RW_SIDE_SOLVED)
        rw_settle (m, RW_HEADSTOCK_BEND + i, run.bend / RW_RAD);

      /* After-lengths at the head end, straight in the unfolded plane. */
      if (i <= plan->full)
        m->after[i] = m->d->nut_thickness + hypot (run.post.x - run.nut.x, run.post.y - run.nut.y);
      else if (m->d->fifth_route == RW_ROUTE_SIDE_PEG)
        m->after[i] = m->d->fifth_peg_distance;
      else
        m->after[i] = tunnel_run (m, run.post);
    }
}
