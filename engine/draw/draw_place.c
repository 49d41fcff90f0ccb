#include "draw_parts.h"

#include <math.h>

#include "model/feet.h"

/* Where things stand in plan and side view. */

static double
rim_radius (const RwResult *result)
{
  return result->used.rim_outer_diameter / 2;
}

RwPoint
rw_place_neck (const RwResult *result, double x, double over)
{
  double angle = result->side.angle, back = result->side.nut_to_rim - x;

  return (RwPoint){ -rim_radius (result) - back * cos (angle) - over * sin (angle),
                    result->used.neck_set_height - back * sin (angle) + over * cos (angle) };
}

/* The headstock's wood starts under the nut's back edge, where the fretboard's glue face ends. */
static void
head_to_neck (const RwDesign *design, double u, double over, double *x, double *neck_over)
{
  double tilt = design->headstock_angle * G_PI / 180;

  *x = -design->nut_thickness - u * cos (tilt) - over * sin (tilt);
  *neck_over = -design->fretboard_thickness - u * sin (tilt) + over * cos (tilt);
}

RwPoint
rw_place_head_side (const RwResult *result, double u, double over)
{
  double x, neck_over;

  head_to_neck (&result->used, u, over, &x, &neck_over);
  return rw_place_neck (result, x, neck_over);
}

RwPoint
rw_map_plan (const RwResult *result, double x, double y)
{
  return (RwPoint){ rw_place_neck (result, x, 0).x, y };
}

RwPoint
rw_place_board (const RwResult *result, double s, double v)
{
  double turn = atan (result->plan.centre_slope);

  return (RwPoint){ s * cos (turn) - v * sin (turn),
                    result->plan.nut_middle + s * sin (turn) + v * cos (turn) };
}

RwPoint
rw_map_board (const RwResult *result, double x, double y)
{
  double turn = atan (result->plan.centre_slope), rise = y - result->plan.nut_middle;

  return (RwPoint){ x * cos (turn) + rise * sin (turn), rise * cos (turn) - x * sin (turn) };
}

RwPoint
rw_map_head_plan (const RwResult *result, double u, double v)
{
  double s, over;
  RwPoint flat;

  head_to_neck (&result->used, u, result->used.headstock_overlay, &s, &over);
  flat = rw_place_board (result, s, v);
  return (RwPoint){ rw_place_neck (result, flat.x, over).x, flat.y };
}

RwPoint
rw_map_head_flat (const RwResult *result, double u, double v)
{
  return (RwPoint){ -u, v };
}

RwPoint
rw_place_round (double angle, double radius, double along)
{
  return (RwPoint){ -radius * cos (angle) + along * sin (angle), radius * sin (angle) + along * cos (angle) };
}

/* Follows a line across from the middle to an edge; both are so nearly straight that three steps settle. */
static RwPoint
edge_point (const RwResult *result, RwPoint middle, double slope, double (*edge) (const RwPlan *, double))
{
  RwPoint p = middle;

  for (int i = 0; i < 3; i++)
    {
      p.y = edge (&result->plan, p.x);
      p.x = middle.x - (p.y - middle.y) * slope;
    }
  return p;
}

void
rw_place_across (const RwResult *result, double place, double inset, RwPoint *bass, RwPoint *treble)
{
  gboolean skew = result->used.scale_square_to == RW_SQUARE_TO_NECK;
  double slope = skew ? result->plan.centre_slope : 0;
  RwPoint middle
      = skew ? rw_place_board (result, place, 0) : (RwPoint){ place, rw_plan_centre (&result->plan, place) };
  double reach;

  *bass = edge_point (result, middle, slope, rw_plan_bass);
  *treble = edge_point (result, middle, slope, rw_plan_treble);
  reach = hypot (treble->x - bass->x, treble->y - bass->y);
  if (reach > 0)
    {
      double dx = (treble->x - bass->x) * inset / reach, dy = (treble->y - bass->y) * inset / reach;

      *bass = (RwPoint){ bass->x + dx, bass->y + dy };
      *treble = (RwPoint){ treble->x - dx, treble->y - dy };
    }
}

static RwPoint
between (RwPoint from, RwPoint to, double share)
{
  return (RwPoint){ from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share };
}

void
rw_place_piece (const RwResult *result, const RwSlotPiece *piece, double by, double inset, RwPoint *bass,
                RwPoint *treble)
{
  RwPoint ends[2], edges[2];
  double low, high;

  rw_place_across (result, piece->place + by, inset, &ends[0], &ends[1]);
  rw_place_across (result, piece->place + by, 0, &edges[0], &edges[1]);
  rw_slot_shares (result, piece, &low, &high);
  *bass = low > 0 ? between (edges[0], edges[1], low) : ends[0];
  *treble = high < 1 ? between (edges[0], edges[1], high) : ends[1];
}

/* The sag of the side model, drawn along the axis; under a foot it is level over the foot's capacity radius.
 */
double
rw_head_dip (const RwResult *result, double x)
{
  const RwDesign *design = &result->used;
  double capacity = (design->bridge_foot_length + design->bridge_foot_width) / 4;
  double radius = result->value[RW_HEAD_RADIUS], half = design->bridge_foot_spread / 2, dip = 0;
  gboolean middle = design->bridge_feet > 2.5;
  const double across[2][3] = { { half, -half, 0 }, { 0, half, -half } };

  for (int i = 0; i < (middle ? 3 : 2); i++)
    {
      RwPoint2 foot = { design->bridge_offset, across[middle][i] };
      double beside = foot.x + copysign (fmax (fabs (x - foot.x), capacity), x - foot.x);
      RwPoint2 at = { foot.y < -1e-9 || foot.y > 1e-9 ? x : beside, 0 };

      dip += result->side.foot_share[i]
             * rw_feet_influence (at, foot, radius, result->value[RW_HEAD_TENSION]);
    }
  return dip;
}

double
rw_hoop_top (const RwResult *result)
{
  return result->used.hoop_height - result->used.head_collar - result->used.hoop_travel;
}

double
rw_hoop_bottom (const RwResult *result)
{
  return -result->used.head_collar - result->used.hoop_travel;
}

/* Wall of the shoe outside the hook. */
#define SHOE_WALL 2.5

RwHookPlace
rw_hook_place (const RwResult *result)
{
  const RwDesign *design = &result->used;
  double rod = design->hooks_rod / 2, seat = result->value[RW_HOOKS_SEAT_OFFSET];
  RwHookPlace place = {
    .top_radius = result->value[RW_HOOP_OUTER_DIAMETER] / 2 + seat + rod,
    .foot_radius = rim_radius (result) + design->shoes_stand_off,
    .claw = rw_hoop_top (result) - design->hoop_notch_depth + seat + rod,
    .shoe_top = -design->shoes_below_edge + design->shoes_height / 2,
    .shoe_bottom = -design->shoes_below_edge - design->shoes_height / 2,
  };

  place.end = place.claw - result->value[RW_HOOKS_LEG];
  place.nut_bottom = place.shoe_bottom - design->hooks_nut_height;
  place.shoe_radius = place.foot_radius + rod + SHOE_WALL;
  return place;
}

double
rw_pot_reach (const RwResult *result)
{
  RwHookPlace hook = rw_hook_place (result);

  return fmax (fmax (hook.shoe_radius, hook.top_radius + result->used.hooks_rod / 2), rim_radius (result));
}

/* The tailpiece takes hold of the strings nearer together than they stand on the bridge. */
#define TAIL_GATHER 0.6
#define TAIL_MARGIN 5.0
#define TAIL_LEAST 12.0

RwTailPlace
rw_tail_place (const RwResult *result)
{
  const RwDesign *design = &result->used;
  RwTailPlace place = { .front = design->bridge_offset + design->tailpiece_anchor,
                        .back_half = design->tailpiece_width / 2 };

  place.back = fmax (result->value[RW_HOOP_OUTER_DIAMETER] / 2 + 2, place.front + TAIL_LEAST);
  place.string_half = fmin (TAIL_GATHER * place.back_half, design->bridge_spread / 2);
  place.front_half = place.string_half + TAIL_MARGIN;
  return place;
}

/* The heel's cap along the strings, as a share of the heel's length, and its bounds. */
#define CAP_SHARE 0.28
#define CAP_LEAST 6.0
#define CAP_MOST 17.0

RwHeelSweep
rw_heel_sweep (const RwResult *result)
{
  const RwDesign *design = &result->used;
  double from = result->side.heel_start;
  double cap = CLAMP (CAP_SHARE * design->neck_heel_start, CAP_LEAST, CAP_MOST);
  RwPoint end = rw_place_neck (result, from, -rw_neck_thickness (result, from));
  RwPoint corner = { -rim_radius (result) - cap, design->neck_set_height - design->joint_heel_depth };
  double along = corner.x - end.x, down = end.y - corner.y, on = from + 0.72 * along;

  return (RwHeelSweep){
    .corner = corner,
    .p = { { corner.x - 0.01 * along, corner.y + fmin (2.5, down / 8) },
           { corner.x - 0.10 * along, corner.y + 0.62 * down },
           rw_place_neck (result, on, -rw_neck_thickness (result, on)),
           end },
  };
}

/* From the rim's face out to the sweep, at a height below the head plane. */
static double
heel_reach (const RwResult *result, double below)
{
  RwHeelSweep sweep = rw_heel_sweep (result);
  double low = 0, high = 1, x = NAN;

  if (!(-below > sweep.p[0].y))
    return -rim_radius (result) - sweep.p[0].x;
  for (int i = 0; i < 24; i++)
    {
      double t = (low + high) / 2, s = 1 - t;
      double b[4] = { s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t };
      double z = b[0] * sweep.p[0].y + b[1] * sweep.p[1].y + b[2] * sweep.p[2].y + b[3] * sweep.p[3].y;

      x = b[0] * sweep.p[0].x + b[1] * sweep.p[1].x + b[2] * sweep.p[2].x + b[3] * sweep.p[3].x;
      if (z < -below)
        low = t;
      else
        high = t;
    }
  return -rim_radius (result) - x;
}

RwAcross
rw_across (const RwDesign *design)
{
  if (design->joint_kind == RW_JOINT_STICK)
    return (RwAcross){ 1, { design->joint_stick_below }, design->joint_stick_section / 2 };
  return (RwAcross){ (int)design->joint_rod_count,
                     { design->joint_rod_upper, design->joint_rod_upper + design->joint_rod_spacing },
                     design->joint_rod_diameter / 2 };
}

/* How far a rod or stick goes into the heel at most, and what it stops short of the outside. */
#define IN_HEEL 36.0
#define SHORT_OF_SWEEP 5.0

double
rw_across_reach (const RwResult *result, int k)
{
  RwAcross across = rw_across (&result->used);
  double reach = fmin (heel_reach (result, across.below[k] - across.half),
                       heel_reach (result, across.below[k] + across.half));

  return CLAMP (reach - SHORT_OF_SWEEP, 0, IN_HEEL);
}

int
rw_near_side (const RwDesign *design)
{
  return design->build_handed == RW_HANDED_LEFT ? 1 : -1;
}

/* Room between plan and side for the dimensions of both and for a tall bridge.  It does not follow the bridge
 * or the hoop: the side must not move under a hand that drags them. */
#define WHOLE_GAP 80.0

double
rw_side_drop (const RwResult *result)
{
  return rw_pot_reach (result) + WHOLE_GAP;
}
