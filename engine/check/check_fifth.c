#include "check.h"

static void
check_start (RwCheck *check)
{
  const RwDesign *used = check->used;
  const RwPlan *plan = &check->result->plan;
  double at = plan->short_x;
  double pitch = rw_plan_string_y (plan, plan->full - 1, at) - rw_plan_string_y (plan, plan->full, at);
  gboolean past_frets = used->frets_count > 0.0 && used->fifth_start_fret >= used->frets_count;

  rw_check_add (check, rw_check_low (used->fifth_spacing, RW_NEVER, pitch - RW_SPACING_ROOM, RW_NEVER),
                "fifth.spacing", "fifth.spacing",
                N_("The short string starts {1 mm} from its neighbour, where the other strings stand {2 mm} "
                   "apart. Give it at least as much room, or the finger behind it finds none."),
                used->fifth_spacing, pitch);
  rw_check_add (check, rw_check_high (used->fifth_start_height, RW_NEVER, used->limits_fifth_height,
                                      RW_NEVER),
                "fifth.start_height", "fifth.start_height",
                N_("The short string starts {1 mm} over the frets; above {2 mm} it sounds sharp when it is "
                   "fretted. Cut its rest lower."),
                used->fifth_start_height, used->limits_fifth_height);
  rw_check_add (check, past_frets ? RW_CAUTION : RW_FINE,
                "fifth.start_fret", "fifth.start_fret frets.count",
                N_("The short string starts at fret {1}, and the board has only {2}. Start it nearer the "
                   "nut."),
                used->fifth_start_fret, used->frets_count);
  rw_check_add (check, rw_check_low (plan->shoulder_from, RW_NEVER, 0.0, RW_NEVER),
                "fifth.shoulder", "fifth.shoulder_length fifth.shoulder fifth.start_fret",
                N_("The shoulder would begin {1 mm} behind the nut, and the nut comes out wider than it is "
                   "given. Make it shorter, or start the short string farther down."),
                -plan->shoulder_from);
}

static void
check_peg (RwCheck *check)
{
  const RwDesign *used = check->used;
  const RwPlan *plan = &check->result->plan;
  double at = plan->short_x - used->fifth_peg_distance, edge = rw_plan_bass (plan, at);
  double gap = rw_plan_string_y (plan, plan->full, at) - edge;
  double space = plan->short_x - plan->fret_x[(int) used->fifth_start_fret - 1];
  double hole = rw_plan_centre (plan, at) - edge - used->neck_rod_width / 2.0 - used->limits_to_channel;

  rw_check_add (check, rw_check_low (gap, RW_NEVER, used->limits_peg_gap, RW_NEVER),
                "fifth.peg_at_string", "fifth.peg_distance fifth.shoulder",
                N_("At the side peg the next string runs {1 mm} inside the neck's edge; under {2 mm} it "
                   "buzzes on the peg and on the end of the short string. Bring the peg nearer its start, "
                   "or the shoulder ahead."),
                gap, used->limits_peg_gap);
  if (used->neck_rod_present == RW_YES)
    rw_check_add (check, rw_check_low (hole, RW_NEVER, used->limits_peg_hole, used->limits_peg_hole_good),
                  "fifth.peg_at_rod", "fifth.peg_distance neck.rod_width",
                  N_("The hole for the side peg may be {1 mm} deep before it comes within {2 mm} of the "
                     "rod's channel; {3 mm} is a good depth for a peg. Set a stop on the drill, or drill below "
                     "the channel."),
                  hole, used->limits_to_channel, used->limits_peg_hole_good);
  rw_check_add (check, used->fifth_peg_distance > space ? RW_NOTE : RW_FINE,
                "fifth.peg_place", "fifth.peg_distance",
                N_("The peg stands {1 mm} ahead of the short string's start, beyond the fret before it at "
                   "{2 mm}. About the middle of that space is usual."),
                used->fifth_peg_distance, space);
}

/* The tube lies straight from the start to the post's line. Flattened it keeps its girth, so it grows
 * wider. */
static double
tube_to_channel (const RwCheck *check)
{
  const RwDesign *used = check->used;
  const RwPlan *plan = &check->result->plan;
  int last = plan->strings;
  double height = fmin (used->fifth_tube_flatten, used->fifth_tube_outer);
  double width = height + G_PI / 2.0 * (used->fifth_tube_outer - height);
  double post_x = -used->nut_thickness - check->at[RW_HEADSTOCK_POST_X + last];
  double post_y = rw_plan_centre (plan, post_x) + check->at[RW_HEADSTOCK_POST_Y + last];
  double slope = (plan->short_y - post_y) / (plan->short_x - post_x);
  double start = fmax (used->neck_rod_start, 0.0);
  double near = rw_plan_centre (plan, start) - (post_y + slope * (start - post_x));
  double far = rw_plan_centre (plan, plan->short_x) - plan->short_y;

  return fmin (near, far) - (width + used->neck_rod_width) / 2.0;
}

static void
check_tunnel (RwCheck *check)
{
  const RwDesign *used = check->used;
  double bore = used->fifth_tube_outer - 2.0 * used->fifth_tube_wall;
  double flat = used->fifth_tube_flatten - 2.0 * used->fifth_tube_wall;
  double string = used->strings_set.at[check->result->plan.strings - 1].outer_mm;
  double floor = check->at[RW_FRETS_FLOOR] - used->fifth_tube_flatten;

  rw_check_add (check, rw_check_low (bore, string, used->limits_tube_bore, RW_NEVER),
                "fifth.tube_bore", "fifth.tube_outer fifth.tube_wall",
                N_("The tube's bore is {1 mm}; under {2 mm} it closes when it is bent, even over a string."),
                bore, used->limits_tube_bore);
  rw_check_add (check, rw_check_low (flat, string, 2.0 * string, RW_NEVER),
                "fifth.tube_flat", "fifth.tube_flatten fifth.tube_wall",
                N_("Flattened, the tube leaves {1 mm} inside for a string of {2 mm}. Flatten it less or "
                   "take a thinner wall."),
                flat, string);
  if (used->frets_count > 0.0)
    rw_check_add (check, rw_check_low (floor, RW_NEVER, used->limits_to_channel, RW_NEVER),
                  "fifth.tube_at_tang", "fifth.tube_flatten fretboard.thickness frets.tang_depth frets.floor",
                  N_("A groove for the tube in the board's underside would leave {1 mm} under the fret "
                     "slots, and {2 mm} is the least. Cut the groove in the neck, flatten the tube more, or "
                     "take a thicker board."),
                  floor, used->limits_to_channel);
  if (used->neck_rod_present == RW_YES)
    rw_check_add (check, rw_check_low (tube_to_channel (check), RW_NEVER, used->limits_to_channel, RW_NEVER),
                  "fifth.tube_at_rod", "neck.rod_start neck.rod_width fifth.tube_outer",
                  N_("The tube passes the rod's channel at {1 mm}, and {2 mm} is the least. Start the "
                     "channel farther from the nut, or lead the string by a side peg."),
                  tube_to_channel (check), used->limits_to_channel);
}

void
rw_check_fifth (RwCheck *check)
{
  if (!check->result->plan.has_short)
    return;
  check_start (check);
  if (check->used->fifth_route == RW_ROUTE_TUNNEL)
    check_tunnel (check);
  else
    check_peg (check);
}
