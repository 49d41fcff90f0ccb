#include "draw_parts.h"
#include "grip.h"

#include <math.h>

#define RADIANS (G_PI / 180.0)
#define NOWHERE ((RwPoint){ NAN, NAN })
#define POINT(x, y) ((RwPoint){ x, y })

/* ---- helpers of grips.def: points in the frames of drawing.h ---- */

static RwPoint
on_back (const RwResult *r, double x)
{
  return rw_place_neck (r, x, -rw_neck_thickness (r, x));
}

/* The headstock's outline is widest there, as a share of its length. */
#define WIDEST 0.89

static double
crown (const RwDesign *d)
{
  return d->frets_count > 0 ? d->frets_crown_height : 0;
}

static RwPoint
board_end (const RwResult *r, RwMap map)
{
  double x = r->value[RW_NECK_BOARD_LENGTH];

  return map (r, x, rw_plan_centre (&r->plan, x));
}

static RwPoint
last_fret (const RwResult *r, RwMap map)
{
  double x = r->plan.fret_x[r->plan.last];

  return r->used.frets_count > 0 ? map (r, x, rw_plan_treble (&r->plan, x)) : NOWHERE;
}

/* Counted from the nut, the twelfth fret moves with the scale length alone. */
static RwPoint
twelfth_fret (const RwResult *r)
{
  double x = r->plan.fret_x[12];

  return rw_map_board (r, x, rw_plan_treble (&r->plan, x));
}

static RwPoint
short_start (const RwResult *r, RwMap map)
{
  return r->plan.has_short ? map (r, r->plan.short_x, r->plan.short_y) : NOWHERE;
}

static RwPoint
bass_edge (const RwResult *r, double x, RwMap map)
{
  return r->plan.has_short ? map (r, x, rw_plan_bass (&r->plan, x)) : NOWHERE;
}

/* degrees as hooks count: from the neck towards the treble side. */
static RwPoint
round_rim (double radius, double degrees)
{
  return rw_place_round (degrees * RADIANS, radius, 0);
}

static RwPoint
hook (const RwResult *r, int k)
{
  return round_rim (r->used.rim_outer_diameter / 2 + r->used.shoes_stand_off, r->value[RW_HOOKS_ANGLE + k]);
}

static RwPoint
hook_of_sides (const RwResult *r, int k)
{
  return r->used.hooks_layout == RW_LAYOUT_SIDES ? hook (r, k) : NOWHERE;
}

/* The shoe that is seen most nearly from the front: the one farthest to the bass side. */
static RwPoint
bolt_at_side (const RwResult *r)
{
  int count = (int) r->used.hooks_count, nearest = 1;

  for (int k = 2; k <= count; k++)
    if (r->value[RW_HOOKS_Y + k] < r->value[RW_HOOKS_Y + nearest] - 1e-6)
      nearest = k;
  return POINT (r->value[RW_HOOKS_X + nearest], -r->used.shoes_below_edge);
}

static RwPoint
if_rods (const RwResult *r, RwPoint point)
{
  return r->used.joint_kind == RW_JOINT_RODS ? point : NOWHERE;
}

static RwPoint
if_two_rods (const RwResult *r, RwPoint point)
{
  return r->used.joint_rod_count > 1 ? if_rods (r, point) : NOWHERE;
}

static RwPoint
if_stick (const RwResult *r, RwPoint point)
{
  return r->used.joint_kind == RW_JOINT_STICK ? point : NOWHERE;
}

static RwPoint
if_truss_rod (const RwResult *r, RwPoint point)
{
  return r->used.neck_rod_present == RW_YES ? point : NOWHERE;
}

/* Pair m of the posts: side 0 is the centre line between them, 1 the treble post, -1 the bass post; out is
 * how far outwards of its middle, in diameters of the hole. */
static RwPoint
post (const RwResult *r, int m, int side, double out)
{
  int string = m; /* the m-th from the treble edge goes to pair m */
  double y;

  if (m < 1 || m > r->plan.full / 2)
    return NOWHERE;
  y = r->value[RW_HEADSTOCK_POST_Y + string] + out * r->used.headstock_post_hole;
  return POINT (r->value[RW_HEADSTOCK_POST_X + string], side * y);
}

/* Where the profile's tangent has the normalised slope -1, at the twelfth fret on the treble side. */
static RwPoint
haunch (const RwResult *r)
{
  double x = r->plan.fret_x[12], share = exp2 (-1 / r->used.neck_section);

  return POINT (share * (rw_plan_treble (&r->plan, x) - rw_plan_centre (&r->plan, x)),
                share * (r->used.fretboard_thickness - rw_neck_thickness (r, x)));
}

/* A height of the rim's wood, as a share from its top edge down. */
static double
wood_at (const RwDesign *d, double share)
{
  return -d->rim_tone_ring_height - share * d->rim_height;
}

/* The lower face of course k; what is turned away under the back edge has no grip. */
static double
course_z (const RwResult *r, int k)
{
  const RwLengthList *courses = &r->used.rim_course_thickness;
  double depth = 0;

  if (r->used.rim_construction != RW_RIM_SEGMENTS || k > courses->count)
    return NAN;
  for (int i = 0; i < k; i++)
    depth += courses->at[i];
  return depth < r->used.rim_height ? -r->used.rim_tone_ring_height - depth : (double) NAN;
}

static RwPoint
course_face (const RwResult *r, int k)
{
  return POINT (r->used.rim_outer_diameter / 2 - 0.3 * r->used.rim_wall, course_z (r, k));
}

static RwPoint
course_face_at_side (const RwResult *r, int k)
{
  return POINT (0.42 * r->used.rim_outer_diameter, course_z (r, k));
}

/* ---- the table ---- */

#define IN(view) (1u << RW_VIEW_##view)
#define IN_PLAN (IN (WHOLE) | IN (PLAN))
#define IN_SIDE (IN (WHOLE) | IN (SIDE))

/* GRIP (bridge, ...)  becomes  static RwPoint bridge_point (const RwResult *r, int item) { return ...; } */
#define GRIP(name, id, parameter, item_, frame, views, expression) \
  static RwPoint name##_point (const RwResult *r, int item) \
  { \
    const RwDesign *d G_GNUC_UNUSED = &r->used; \
    return expression; \
  }
#include "grips.def"
#undef GRIP

/* and  { "bridge.offset", RW_P_bridge_offset, 0, IN_PLAN, RW_FRAME_PLAN, bridge_point }, */
#define GRIP(name, id, parameter, item, frame, views, expression) \
  { id, RW_P_##parameter, item, views, RW_FRAME_##frame, name##_point },
const RwGrip rw_grips[] = {
#include "grips.def"
};
#undef GRIP

const int rw_grips_count = G_N_ELEMENTS (rw_grips);
