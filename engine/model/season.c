#include "season.h"

#include "moisture.h"
#include "movement.h"

#define FLAT_SAWN 1.0

/* What holds the heel, on an average: mm under the wood's top edge, and under the board's surface. */
typedef struct
{
  double on_rim, on_heel;
} Hold;

static Hold
find_hold (const RwResult *now)
{
  const double *value = now->value;
  int count = (int) now->used.joint_rod_count;
  Hold hold = { 0, 0 };

  if (now->used.joint_kind == RW_JOINT_STICK)
    return (Hold){ value[RW_JOINT_STICK_ON_RIM], value[RW_JOINT_STICK_ON_HEEL] };
  for (int k = 1; k <= count; k++)
    {
      hold.on_rim += value[RW_JOINT_HOLE_ON_RIM + k] / count;
      hold.on_heel += value[RW_JOINT_HOLE_ON_HEEL + k] / count;
    }
  return hold;
}

/* The rim's outside diameter, mm per % of moisture. */
static double
diameter_rate (const RwDesign *d)
{
  double wall = rw_move_wall (d, FLAT_SAWN);

  return d->rim_construction == RW_RIM_STAVES ? wall * d->rim_outer_diameter / d->rim_wall : wall;
}

/* The build with its wood wetter by so many %.  The bridge stays on its line, which is told from the nut. */
static RwDesign
swollen (const RwResult *now, double wetter)
{
  RwDesign d = rw_as_it_stands (now);
  Hold hold = find_hold (now);
  double board = d.fretboard_thickness, across_neck = rw_move_across (d.neck_wood, FLAT_SAWN);
  double rise = board * rw_move_across (d.neck_board_wood, FLAT_SAWN) + (hold.on_heel - board) * across_neck;
  double wider = wetter * diameter_rate (&d);

  d.neck_set_height += wetter * (rise - rw_move_height (&d, hold.on_rim, FLAT_SAWN));
  d.neck_angle = atan (tan (d.neck_angle * RW_RAD) / (1 + wetter * across_neck)) / RW_RAD;
  d.bridge_height *= 1 + wetter * rw_move_across (d.stock_bridge_wood, FLAT_SAWN);
  d.rim_outer_diameter += wider;
  d.bridge_offset -= wider / 2;
  return d;
}

/* Strings over the frets with the wood wetter by so many %; the rod stays as it is set. */
static void
solve_wetter (const RwResult *now, double wetter, RwResult *out)
{
  g_autofree RwMeasured *set = g_new (RwMeasured, 1);
  RwDesign design = swollen (now, wetter);

  rw_measured_init (set);
  if (now->used.neck_rod_present == RW_YES)
    set->slot[RW_NECK_ROD_MOMENT] = now->side.rod_moment;
  rw_solve (&design, set, out);
}

/* What a string's action differs by between two builds, put on what it is now, measured or not. */
static double
action_then (const RwResult *now, const RwResult *dry, const RwResult *wet, int string)
{
  int fret = (int) now->used.setup_action_fret;
  double measured = string <= now->plan.full ? now->value[RW_SETUP_ACTION + fret] : NAN;
  double here = isfinite (measured) ? measured : rw_action (now, string, fret);

  return here + rw_action (wet, string, fret) - rw_action (dry, string, fret);
}

/* The heel's face keeps its depth and grows wider, so its curve grows flatter; the rim's with its diameter. */
static double
heel_gap (const RwResult *now, double wetter)
{
  const RwDesign *d = &now->used;
  double half = now->value[RW_JOINT_HEEL_WIDTH] / 2, radius = d->rim_outer_diameter / 2;
  double wide = half * (1 + wetter * rw_move_across (d->neck_wood, FLAT_SAWN));
  double round = radius + wetter * diameter_rate (d) / 2;

  return round - sqrt (round * round - wide * wide) - (radius - sqrt (radius * radius - half * half));
}

static void
fill_fits (const RwResult *now, double wetter, RwSeason *season)
{
  const RwDesign *d = &now->used;
  double board = now->value[RW_NECK_WIDTH_AT_RIM] * rw_move_across (d->neck_board_wood, FLAT_SAWN);
  double wider = wetter * diameter_rate (d);
  gboolean staves = d->rim_construction == RW_RIM_STAVES;

  season->board_width = wetter * board;
  season->rim_wall = wetter * rw_move_wall (d, FLAT_SAWN);
  season->rim_height = staves ? NAN : wetter * rw_move_height (d, d->rim_height, FLAT_SAWN);
  season->fret_end = d->frets_count >= 1 ? -season->board_width / 2 - d->frets_end_inset : NAN;
  season->head_room = d->head_nominal - d->rim_outer_diameter - wider;
  season->heel_gap = heel_gap (now, wetter);
  season->head_drawn = wetter * rw_move_height (d, now->value[RW_SHOES_HOLE_BELOW_EDGE], FLAT_SAWN) + wider / 2;
}

void
rw_seasons (const RwResult *now, const double *humidities, guint count, RwSeason *seasons)
{
  const RwDesign *d = &now->used;
  double shop = rw_moisture_at (d->setup_temperature, d->setup_humidity_shop);
  g_autofree RwResult *dry = g_new (RwResult, 1), *wet = g_new (RwResult, 1);

  solve_wetter (now, 0, dry);
  for (guint i = 0; i < count; i++)
    {
      RwSeason *season = &seasons[i];

      season->moisture = rw_moisture_at (d->setup_temperature, humidities[i]);
      solve_wetter (now, season->moisture - shop, wet);
      season->action = action_then (now, dry, wet, 1);
      season->action_short = now->plan.has_short ? action_then (now, dry, wet, now->plan.strings) : NAN;
      fill_fits (now, season->moisture - shop, season);
    }
}
