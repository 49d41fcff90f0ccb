#include "check.h"

static void
check_ring (RwCheck *check)
{
  const RwDesign *used = check->used;
  double inner = check->at[RW_RIM_INNER_DIAMETER];
  double beyond = used->rim_crest_inset - used->rim_wall;

  rw_check_add (check, inner <= 0.0 ? RW_STOP : RW_FINE,
                "rim.hollow", "rim.wall rim.outer_diameter rim.inner_diameter",
                N_("A wall of {1 mm} leaves no hollow in a rim {2 mm} across. Make the wall thinner."),
                used->rim_wall, used->rim_outer_diameter);
  rw_check_add (check, rw_check_low (used->rim_wall, RW_NEVER, used->limits_rim_wall, RW_NEVER),
                "rim.wall_thin", "rim.wall",
                N_("The wall is {1 mm} thick; by common practice a wooden rim with hooks has at least "
                   "{2 mm}, or it goes out of round under them."),
                used->rim_wall, used->limits_rim_wall);
  rw_check_add (check, beyond <= 0.0 ? RW_FINE : used->rim_tone_ring_height > 0.0 ? RW_CAUTION : RW_STOP,
                "rim.crest_on_wall", "rim.crest_inset rim.wall",
                N_("The bearing crest stands {1 mm} inside the outer face, {2 mm} beyond the wall, with no "
                   "wood below it. Bring the crest out or make the wall thicker."),
                used->rim_crest_inset, beyond);
}

static void
check_strip (RwCheck *check)
{
  double width = check->used->rim_strip_width, least = check->at[RW_RIM_SEGMENT_MIN_WIDTH];

  if (check->used->rim_construction == RW_RIM_PLIES)
    return;
  if (width > 0.0)
    rw_check_add (check, rw_check_low (width, least, RW_NEVER, RW_NEVER),
                  "rim.strip_width", "rim.strip_width rim.segment.min_width",
                  N_("The strip is {1 mm} wide and {2 mm} is the least that covers the turned wall: flat "
                     "spots would be left. Take a wider strip, more segments or a thinner wall; 0 means the "
                     "least that serves."),
                  width, least);
  rw_check_add (check, check->at[RW_RIM_SEGMENT_INNER_EDGE] <= 0.0 ? RW_STOP : RW_FINE,
                "rim.short_edge", "rim.strip_width rim.segments rim.segment.inner_edge",
                N_("The mitres meet before the short edge: it comes out at {1 mm}. Take a narrower strip or "
                   "fewer segments."),
                check->at[RW_RIM_SEGMENT_INNER_EDGE]);
}

/* A saw error e at each cut opens the last joint by 2 N e. Gluing two half rings and truing their ends
 * closes it at the price of an oval that the turning allowance must hold: segmented turning practice. */
static void
check_closing (RwCheck *check)
{
  const double *at = check->at;
  const RwDesign *used = check->used;
  double oval = at[RW_RIM_HALF_OVAL];

  if (!(at[RW_RIM_JOINT_GAP] > RW_MOST_GLUE_GAP))
    return;
  rw_check_add (check, RW_NOTE,
                "rim.closing_halves", "rim.mitre_error rim.joint_gap rim.half_trim",
                N_("A saw that is {1 deg} out at each cut leaves {2 mm} open at the last joint. Glue two "
                   "half rings and sand {3 mm} off their ends on a flat plate; no saw is set well enough to "
                   "do without."),
                used->rim_mitre_error, at[RW_RIM_JOINT_GAP], at[RW_RIM_HALF_TRIM]);
  rw_check_add (check, rw_check_high (oval / 2.0, RW_NEVER, used->rim_turning_allowance, RW_NEVER),
                "rim.closing_oval", "rim.turning_allowance rim.half_oval rim.mitre_error",
                N_("Trued half rings make a ring {1 mm} narrower one way, more than the turning allowance "
                   "of {2 mm} on each face can hold. Allow more for turning, or set the saw closer than "
                   "{3 deg}."),
                oval, used->rim_turning_allowance, used->rim_mitre_error);
  if (!isfinite (oval))
    rw_check_add (check, RW_NOTE,
                  "rim.closing_odd", "rim.segments rim.mitre_error rim.joint_gap",
                  N_("{1} segments make no two equal halves, and a saw {2 deg} out leaves {3 mm} open at "
                     "the last joint. Leave one segment long and fit it to the gap, or take an even number."),
                  used->rim_segments, used->rim_mitre_error, at[RW_RIM_JOINT_GAP]);
}

/* What a trial ring and the first segments off the saw tell. */
static void
check_sawn (RwCheck *check)
{
  const RwDesign *used = check->used;
  double allowance = used->rim_turning_allowance, count = used->rim_segments;
  double closing = 2.0 * count * rw_check_measured (check, RW_RIM_SEGMENT_MITRE) - 360.0;
  double reach = used->rim_outer_diameter + 2.0 * allowance;
  double edge = rw_check_measured (check, RW_RIM_SEGMENT_OUTER_EDGE);
  double growth = count / G_PI * (edge - reach * tan (G_PI / count));

  rw_check_add (check, rw_check_high (fabs (closing), RW_NEVER, used->limits_closing, RW_NEVER),
                "rim.mitre_sum", "rim.segment.mitre rim.segments",
                N_("{1} segments with the mitre as measured add up to {2 deg} beside a full ring; up to "
                   "{3 deg} can be taken up by trueing. Set the saw anew and try it in scrap."),
                count, closing, used->limits_closing);
  rw_check_add (check, rw_check_high (fabs (growth) / 2.0, RW_NEVER, allowance, RW_NEVER),
                "rim.segment_length", "rim.segment.outer_edge rim.turning_allowance",
                N_("Segments {1 mm} long change the ring's diameter by {2 mm}, more than {3 mm} of "
                   "allowance on each face can make good. Saw new ones, or build to the rim they make."),
                edge, growth, allowance);
}

/* As its diameter was read, across several ways. */
static void
check_round (RwCheck *check)
{
  const RwDesign *used = check->used;
  double out = check->measured != NULL ? check->measured->rim_out_of_round : (double) NAN;

  rw_check_add (check, rw_check_high (out, used->limits_round_most, used->limits_round, RW_NEVER),
                "rim.out_of_round", "rim.outer_diameter",
                N_("The rim's diameters as read differ by {1 mm}; more than {2 mm} and the head sits askew, "
                   "more than {3 mm} and hoop and head bind. Turn it once more, or pull it round and let it "
                   "rest."),
                out, used->limits_round, used->limits_round_most);
}

static void
check_turning (RwCheck *check)
{
  const RwDesign *used = check->used;
  double speed = used->shop_rim_speed;

  if (used->rim_construction != RW_RIM_PLIES)
    rw_check_add (check, rw_check_low (used->rim_turning_allowance, RW_NEVER, used->limits_turning, RW_NEVER),
                  "rim.turning_allowance", "rim.turning_allowance",
                  N_("{1 mm} are left for turning on each face. Pieces slip by up to {2 mm} in gluing even "
                     "in careful work, and the ring may not clean up."),
                  used->rim_turning_allowance, used->limits_turning);
  rw_check_add (check, rw_check_high (speed, RW_NEVER, used->limits_rim_speed_most, used->limits_rim_speed),
                "rim.speed", "shop.rim_speed rim.spindle_limit",
                N_("{1 m/s} at the rim is {2 1/min} for this blank. Turners keep to {3 m/s} for a blank out "
                   "of round and {4 m/s} at most; no limit for glued rings is published, so begin slowly."),
                speed, check->at[RW_RIM_SPINDLE_LIMIT], used->limits_rim_speed, used->limits_rim_speed_most);
}

static void
check_plies (RwCheck *check)
{
  const RwDesign *used = check->used;
  double ply = used->rim_ply_thickness, slope = used->rim_ply_scarf / ply;

  if (used->rim_construction != RW_RIM_PLIES)
    return;
  rw_check_add (check, rw_check_high (ply, RW_NEVER, RW_NEVER, used->limits_ply),
                "rim.ply_thick", "rim.ply_thickness",
                N_("Plies of {1 mm} are hard to bend to this rim; up to {2 mm} goes more easily. Allow "
                   "rejects."),
                ply, used->limits_ply);
  if (used->rim_ply_scarf > 0.0)
    rw_check_add (check, rw_check_low (slope, RW_NEVER, used->limits_scarf, RW_NEVER),
                  "rim.ply_scarf", "rim.ply_scarf rim.ply_thickness",
                  N_("The scarf is {1} times as long as the ply is thick; common practice has at least {2}, "
                     "or it is little better than a butt joint. Make it {3 mm} or longer."),
                  slope, used->limits_scarf, used->limits_scarf * ply);
  rw_check_add (check, check->at[RW_RIM_PLY_COUNT] >= 2.0 ? RW_NOTE : RW_FINE,
                "rim.ply_seams", "rim.ply.count",
                N_("{1} plies have as many seams: set neighbouring seams at least 60° apart, better 120°, "
                   "and the outermost under the heel."),
                check->at[RW_RIM_PLY_COUNT]);
}

static void
check_tone_ring (RwCheck *check)
{
  double rod = check->used->rim_tone_ring_rod;
  double length = G_PI * (check->used->rim_outer_diameter - rod);

  if (rod > 0.0)
    rw_check_add (check, rw_check_high (length, RW_NEVER, RW_NEVER, check->used->limits_bar_length),
                  "rim.ring_rod_short", "rim.tone_ring_rod rim.outer_diameter",
                  N_("A ring of {1 mm} rod takes {2 mm} of it before trimming, and rod is often sold in "
                     "pieces of {3 mm}. Buy a longer piece."),
                  rod, length, check->used->limits_bar_length);
}

void
rw_check_rim (RwCheck *check)
{
  check_ring (check);
  check_strip (check);
  check_closing (check);
  check_sawn (check);
  check_round (check);
  check_turning (check);
  check_plies (check);
  check_tone_ring (check);
}
