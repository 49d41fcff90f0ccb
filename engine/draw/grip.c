#include "grip.h"

#include <math.h>
#include <string.h>

#define DEGREES (180.0 / G_PI)

/* Courses that are thinner or thicker than this are no wood to glue; the list itself has no range. */
#define COURSE_MIN_MM 3.0
#define COURSE_MAX_MM 80.0

gboolean
rw_grip_place (const RwGrip *grip, RwView view, const RwResult *result, RwPoint *place)
{
  RwPoint point;

  if ((grip->views & 1u << view) == 0)
    return FALSE;
  point = grip->point (result, grip->item);
  return isfinite (point.x) && isfinite (point.y) && rw_view_place (view, grip->frame, result, point, place)
         && isfinite (place->x) && isfinite (place->y);
}

RwParamId
rw_grip_drags (const RwGrip *grip, const RwResult *result)
{
  int worked_out = result->used.neck_solve_for;

  if (grip->param == RW_P_neck_angle && worked_out == RW_SOLVE_ANGLE)
    return RW_P_bridge_height;
  if (grip->param == RW_P_setup_action && worked_out == RW_SOLVE_ACTION)
    return RW_P_bridge_height;
  if (grip->param == RW_P_bridge_height && worked_out == RW_SOLVE_BRIDGE)
    return RW_P_neck_angle;
  return grip->param;
}

double
rw_grip_shown (const RwGrip *grip, const RwResult *result)
{
  if (grip->item > 0)
    return result->used.rim_course_thickness.at[grip->item - 1];
  switch (grip->param)
    {
    case RW_P_neck_angle:
      return result->side.angle * DEGREES;
    case RW_P_bridge_height:
      return result->side.bridge_height;
    case RW_P_setup_action:
      return result->side.action;
    default:
      return rw_design_get (&result->used, grip->param);
    }
}

double
rw_grip_get (const RwGrip *grip, const RwResult *result, const RwDesign *design)
{
  if (grip->item > 0)
    return design->rim_course_thickness.at[grip->item - 1];
  return rw_design_get (design, rw_grip_drags (grip, result));
}

void
rw_grip_put (const RwGrip *grip, const RwResult *result, RwDesign *design, double value)
{
  double held = CLAMP (value, rw_grip_min (grip, result), rw_grip_max (grip, result));
  RwParamId id = rw_grip_drags (grip, result);

  if (grip->item > 0)
    design->rim_course_thickness.at[grip->item - 1] = held;
  else
    rw_design_set (design, id, rw_param (id)->kind == RW_KIND_COUNT ? round (held) : held, NULL);
}

double
rw_grip_min (const RwGrip *grip, const RwResult *result)
{
  return grip->item > 0 ? COURSE_MIN_MM : rw_param (rw_grip_drags (grip, result))->min;
}

double
rw_grip_max (const RwGrip *grip, const RwResult *result)
{
  return grip->item > 0 ? COURSE_MAX_MM : rw_param (rw_grip_drags (grip, result))->max;
}

gboolean
rw_grip_is_fact (const RwGrip *grip, const RwGripScene *scene)
{
  if (scene->measured == NULL)
    return FALSE;
  if (grip->item > 0)
    return !isnan (scene->measured->course_thickness[grip->item - 1]);
  return !isnan (scene->measured->param[rw_grip_drags (grip, scene->result)]);
}

/* ---- from a place to a value ---- */

/* One grip's way: the trial design, and how far its place is from where it should be. */
typedef struct
{
  const RwGrip      *grip;
  const RwGripScene *scene;
  RwPoint            wanted;
  double             min, max;
  RwDesign           design;
  RwResult           result;
} Trial;

static void
trial_init (Trial *trial, const RwGrip *grip, const RwGripScene *scene, RwPoint wanted)
{
  trial->grip = grip;
  trial->scene = scene;
  trial->wanted = wanted;
  trial->min = rw_grip_min (grip, scene->result);
  trial->max = rw_grip_max (grip, scene->result);
  trial->design = *scene->design;
}

/* The grip's place in a build, as seen from where it is wanted. */
static gboolean
trial_place (Trial *trial, const RwResult *result, RwPoint *gap)
{
  if (!rw_grip_place (trial->grip, trial->scene->view, result, gap))
    return FALSE;
  gap->x -= trial->wanted.x;
  gap->y -= trial->wanted.y;
  return TRUE;
}

/* The same with another value. */
static gboolean
trial_gap (Trial *trial, double value, RwPoint *gap)
{
  rw_grip_put (trial->grip, trial->scene->result, &trial->design, value);
  rw_solve (&trial->design, trial->scene->measured, &trial->result);
  return trial_place (trial, &trial->result, gap);
}

static double
square (RwPoint p)
{
  return p.x * p.x + p.y * p.y;
}

/* Movement of the place for one unit of the value, between two trials. */
static RwPoint
slope_between (RwPoint gap0, RwPoint gap1, double step)
{
  return (RwPoint){ (gap1.x - gap0.x) / step, (gap1.y - gap0.y) / step };
}

/* The slope at value, where gap is known; zeros where there is none to be had. */
static RwPoint
trial_slope (Trial *trial, double value, RwPoint gap)
{
  double step = 1e-4 * (trial->max - trial->min);
  RwPoint beside;

  if (value + step > trial->max)
    step = -step;
  if (!trial_gap (trial, value + step, &beside))
    {
      step = -step;
      if (!trial_gap (trial, value + step, &beside))
        return (RwPoint){ 0, 0 };
    }
  return slope_between (gap, beside, step);
}

static double
dot (RwPoint a, RwPoint b)
{
  return a.x * b.x + a.y * b.y;
}

static RwPoint
unit (RwPoint p)
{
  double length = sqrt (square (p));

  return (RwPoint){ p.x / length, p.y / length };
}

/* Goes from value towards the next, half as far each time that brings it no nearer along a direction.  The
 * gap is that of value and becomes that of what is returned. */
static double
trial_advance (Trial *trial, double value, double next, RwPoint along, RwPoint *gap)
{
  for (int halving = 0; halving < 8; halving++)
    {
      RwPoint there;

      if (trial_gap (trial, next, &there) && fabs (dot (there, along)) < fabs (dot (*gap, along)))
        {
          *gap = there;
          return next;
        }
      next = value + (next - value) / 2;
    }
  return value;
}

/* The value with which the place is abreast of the wanted one, as seen along the slope: secants, starting
 * from the slope.  Leaves the slope of the last secant. */
static double
abreast_value (Trial *trial, double value, RwPoint *gap, RwPoint *slope)
{
  RwPoint along = unit (*slope);
  double least = 1e-8 * (trial->max - trial->min);

  for (int round = 0; round < 12 && fabs (dot (*slope, along)) > 1e-9; round++)
    {
      double next = CLAMP (value - dot (*gap, along) / dot (*slope, along), trial->min, trial->max);
      RwPoint before = *gap;
      double reached;

      if (fabs (next - value) < least)
        break;
      reached = trial_advance (trial, value, next, along, gap);
      if (reached == value)
        break;
      *slope = slope_between (before, *gap, reached - value);
      value = reached;
    }
  return value;
}

/* Nearest to the wanted place is where the way on leads neither nearer nor away: abreast of it, seen along
 * the way there. */
static double
nearest_value (Trial *trial, double value)
{
  double range = trial->max - trial->min;
  RwPoint gap, slope;

  if (!trial_place (trial, trial->scene->result, &gap))
    return value;
  slope = trial_slope (trial, value, gap);

  for (int round = 0; round < 8 && square (slope) > 1e-18; round++)
    {
      if (fabs (dot (gap, slope)) / square (slope) < 1e-7 * range)
        break;
      value = abreast_value (trial, value, &gap, &slope);
    }
  return value;
}

/* Whole numbers: walks on as long as that, or a look past up to two neighbours that bring nothing, leads
 * nearer.  An even and the odd number of hooks after it can share their places. */
static double
nearest_count (Trial *trial, double value)
{
  RwPoint gap, there;
  gboolean found = TRUE;

  if (!trial_place (trial, trial->scene->result, &gap))
    return value;
  while (found)
    {
      static const int ways[] = { 1, -1, 2, -2, 3, -3 };
      double from = value;

      found = FALSE;
      for (guint i = 0; i < G_N_ELEMENTS (ways) && !found; i++)
        {
          double next = from + ways[i];

          if (next < trial->min || next > trial->max || !trial_gap (trial, next, &there))
            continue;
          found = square (there) < square (gap) - 1e-9;
          if (found)
            {
              gap = there;
              value = next;
            }
        }
    }
  return value;
}

static gboolean
is_count (const RwGrip *grip, const RwResult *result)
{
  return rw_param (rw_grip_drags (grip, result))->kind == RW_KIND_COUNT;
}

double
rw_grip_value_at (const RwGrip *grip, const RwGripScene *scene, RwPoint place)
{
  double value = rw_grip_get (grip, scene->result, scene->design);
  Trial trial;

  trial_init (&trial, grip, scene, place);
  if (is_count (grip, scene->result))
    return nearest_count (&trial, value);
  return nearest_value (&trial, value);
}

/* ---- steps ---- */

static double
length_step (double table_step, RwUnits units, gboolean fine)
{
  gboolean delicate = table_step > 0 && table_step < 0.075;

  if (units == RW_UNITS_MM)
    return delicate ? (fine ? 0.01 : 0.1) : (fine ? 0.1 : 0.5);
  if (delicate)
    return RW_MM_PER_INCH * (fine ? 0.001 : 0.005);
  if (!fine)
    return RW_MM_PER_INCH / 32;
  return units == RW_UNITS_FRACTION ? RW_MM_PER_INCH / 64 : RW_MM_PER_INCH * 0.005;
}

static double
step_of (const RwGrip *grip, const RwResult *result, RwUnits units, gboolean fine)
{
  const RwParam *param = rw_param (rw_grip_drags (grip, result));

  switch (param->kind)
    {
    case RW_KIND_LENGTH:
    case RW_KIND_LENGTH_LIST:
      return length_step (param->step, units, fine);
    case RW_KIND_ANGLE:
      return fine ? 0.01 : 0.1;
    case RW_KIND_COUNT:
      return 1;
    default:
      return fine ? param->step / 5 : param->step;
    }
}

/* A whole number of steps as the double nearest to it: 54.3, not 54.300000000000004. */
static double
whole_steps (double steps, double step)
{
  double per_unit = round (1 / step);

  return fabs (per_unit * step - 1) < 1e-9 ? steps / per_unit : steps * step;
}

static double
held (const RwGrip *grip, const RwResult *result, double value)
{
  return CLAMP (value, rw_grip_min (grip, result), rw_grip_max (grip, result));
}

double
rw_grip_snap (const RwGrip *grip, const RwResult *result, RwUnits units, gboolean fine, double value)
{
  double step = step_of (grip, result, units, fine);

  return held (grip, result, whole_steps (round (value / step), step));
}

double
rw_grip_nudge (const RwGrip *grip, const RwResult *result, RwUnits units, gboolean fine, double value, int by)
{
  double step = step_of (grip, result, units, fine);
  double steps = value / step;

  /* A value between two steps goes to the next one first. */
  if (by > 0)
    steps = floor (steps + 1e-6) + by;
  else
    steps = ceil (steps - 1e-6) + by;
  return held (grip, result, whole_steps (steps, step));
}
