#include "check.h"

static void
check_action (RwCheck *check)
{
  const RwDesign *used = check->used;
  const RwPlan *plan = &check->result->plan;
  const int places[] = { 1, 5, 7, 12, plan->last };
  double least = G_MAXDOUBLE, middle = check->at[RW_SETUP_ACTION + 12];
  int worst = 1;

  for (gsize i = 0; i < G_N_ELEMENTS (places); i++)
    if (check->at[RW_SETUP_ACTION + places[i]] < least)
      {
        least = check->at[RW_SETUP_ACTION + places[i]];
        worst = places[i];
      }
  rw_check_add (check, least <= 0.0 ? RW_STOP : RW_FINE,
                "setup.string_on_fret", "setup.action setup.relief nut.string_height setup.action[{2}]",
                N_("The strings come to {1 mm} over fret {2}: they lie on it and give no note. Raise the "
                   "action or the nut, or take out of the neck's bow."),
                least, worst);
  if (used->frets_count > 0.0 && least > 0.0
      && (middle < used->limits_low_action - RW_CHECK_SLACK || middle > used->limits_high_action + RW_CHECK_SLACK))
    rw_check_add (check, RW_NOTE,
                  "setup.action_unusual", "setup.action setup.action[12]",
                  N_("The action at fret 12 is {1 mm}; players call {2 mm} low and {3 mm} high."),
                  middle, used->limits_low_action, used->limits_high_action);
}

static void
check_angle (RwCheck *check)
{
  double angle = check->at[RW_NECK_ANGLE];

  rw_check_add (check, angle < 0.0 || angle > check->used->limits_angle ? RW_CAUTION : RW_FINE,
                "neck.angle_unusual", "bridge.height neck.set_height setup.action neck.angle",
                N_("The neck is cut at {1 deg}, and 1 to 3 degrees is usual. A bridge 1.6 mm lower takes "
                   "about half a degree off, and so does a board set higher over the head."),
                angle);
}

/* The head is stiffest at its edge: near it brighter, near the middle rounder with more sag. */
static void
check_landing (RwCheck *check)
{
  const RwDesign *used = check->used;
  double place = check->at[RW_BRIDGE_LANDING];
  int low = rw_check_low (place, RW_NEVER, used->limits_landing_least, used->limits_landing_low);
  int high = rw_check_high (place, RW_NEVER, used->limits_landing_most, used->limits_landing_high);

  rw_check_add (check, low != RW_FINE ? low : high,
                "bridge.landing", "bridge.offset scale.length rim.outer_diameter bridge.landing",
                N_("The bridge lands at {1} of the way over the head; {2} to {3} is usual, and outside {4} "
                   "to {5} the head is slack under it or the tailpiece crowds it. Change the scale, the "
                   "frets or the rim."),
                place, used->limits_landing_low, used->limits_landing_high, used->limits_landing_least,
                used->limits_landing_most);
}

static void
check_bridge_feet (RwCheck *check)
{
  const RwDesign *used = check->used;
  double edge = check->at[RW_HEAD_RADIUS] - hypot (used->bridge_offset, used->bridge_foot_spread / 2.0);
  double sag = check->at[RW_BRIDGE_SAG];

  if (edge > 0.0)
    rw_check_add (check, rw_check_low (edge, RW_NEVER, used->limits_foot_to_edge, RW_NEVER),
                  "bridge.foot_at_edge", "bridge.offset bridge.foot_spread head.radius",
                  N_("The bridge's outer feet stand {1 mm} from the bearing edge; common practice keeps "
                     "{2 mm}, or the rim and not the head carries them."),
                  edge, used->limits_foot_to_edge);
  rw_check_add (check, used->bridge_foot_spread < used->bridge_spread ? RW_NOTE : RW_FINE,
                "bridge.feet_narrow", "bridge.foot_spread bridge.spread",
                N_("The feet stand {1 mm} apart and the strings {2 mm}: the outer strings hang over the "
                   "feet and may tip the bridge."),
                used->bridge_foot_spread, used->bridge_spread);
  rw_check_add (check, rw_check_high (sag, RW_NEVER, used->limits_sag_most, used->limits_sag),
                "bridge.sag", "head.tension bridge.down_force bridge.sag",
                N_("The head sinks by {1 mm} under the bridge. Set-up guides say to tighten it above "
                   "{2 mm}, and open backs are seen up to {3 mm}; the sag depends on a tension that is "
                   "known roughly at best."),
                sag, used->limits_sag, used->limits_sag_most);
}

static void
check_break (RwCheck *check)
{
  const RwDesign *used = check->used;
  double angle = check->at[RW_BRIDGE_BREAK_ANGLE], front = used->bridge_offset + used->tailpiece_anchor;
  double rim = used->rim_outer_diameter / 2.0;

  rw_check_add (check,
                angle < used->limits_break_least || angle > used->limits_break_most ? RW_CAUTION : RW_FINE,
                "bridge.break_angle", "tailpiece.height tailpiece.anchor bridge.height bridge.break_angle",
                N_("The strings break over the bridge by {1 deg} in all. Under {2 deg} the bridge shifts "
                   "and buzzes, over {3 deg} it presses the head down and dulls it: rules of thumb. Raise "
                   "or lower the tailpiece."),
                angle, used->limits_break_least, used->limits_break_most);
  rw_check_add (check, rw_check_low (used->tailpiece_anchor, RW_NEVER, used->limits_tail_length, RW_NEVER),
                "tailpiece.near", "tailpiece.anchor",
                N_("The strings leave the tailpiece {1 mm} behind the bridge; 40 to 90 mm is usual, and "
                   "under {2 mm} the tailpiece crowds it."),
                used->tailpiece_anchor, used->limits_tail_length);
  rw_check_add (check, rw_check_high (front, RW_NEVER, rim, RW_NEVER),
                "tailpiece.off_rim", "tailpiece.anchor bridge.offset rim.outer_diameter",
                N_("The tailpiece's front edge would be {1 mm} from the rim's centre, outside the rim at "
                   "{2 mm}. Bring it nearer to the bridge."),
                front, rim);
}

static void
check_over_hoop (RwCheck *check)
{
  double room = check->at[RW_STRINGS_OVER_HOOP];

  rw_check_add (check, rw_check_low (room, 0.0, check->used->limits_over_hoop, RW_NEVER),
                "strings.over_hoop", "neck.set_height hoop.height head.collar strings.over_hoop",
                room < 0.0 ? N_("The strings would have to pass {1 mm} under the hoop's top. Set the board "
                                "higher over the head, or take a lower hoop.")
                           : N_("The strings pass the hoop with {1 mm} to spare; {2 mm} keeps them clear of "
                                "hoop and hooks. Set the board higher over the head, or take a lower hoop."),
                fabs (room), check->used->limits_over_hoop);
}

void
rw_check_setup (RwCheck *check)
{
  check_action (check);
  check_angle (check);
  check_landing (check);
  check_bridge_feet (check);
  check_break (check);
  check_over_hoop (check);
}
