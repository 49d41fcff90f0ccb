#include "check.h"

static void
check_outcome (RwCheck *check)
{
  const RwDesign *used = check->used;

  switch (check->result->side.outcome)
    {
    case RW_SIDE_FOOT_OFF_HEAD:
      rw_check_add (check, RW_STOP,
                    "side.foot_off_head", "bridge.offset bridge.foot_spread head.radius",
                    N_("The bridge's outer feet stand {1 mm} from the rim's centre and the head only "
                       "reaches {2 mm}. Move the bridge toward the centre or take a narrower one."),
                    hypot (used->bridge_offset, used->bridge_foot_spread / 2.0), check->at[RW_HEAD_RADIUS]);
      break;
    case RW_SIDE_NO_ANGLE:
      rw_check_add (check, RW_STOP,
                    "side.no_angle", "setup.action bridge.height neck.set_height bridge.offset",
                    N_("No neck angle gives {1 mm} of action at fret {2} with a bridge {3 mm} high. Change "
                       "the action, the bridge or the height of the board over the head."),
                    used->setup_action, used->setup_action_fret, used->bridge_height);
      break;
    case RW_SIDE_NO_BALANCE:
      rw_check_add (check, RW_STOP,
                    "side.no_balance", "strings.set head.tension neck.thickness_first",
                    N_("Strings that pull with {1 N} and a head at {2 N/m} find no balance: head or neck "
                       "gives way as far as it can. Take lighter strings, tighten the head, or make the "
                       "neck stiffer."),
                    check->at[RW_STRINGS_TENSION_TOTAL], check->at[RW_HEAD_TENSION]);
      break;
    case RW_SIDE_SOLVED:
      break;
    }
}

static void
check_force (RwCheck *check)
{
  const RwSide *side = &check->result->side;
  double force = check->at[RW_BRIDGE_DOWN_FORCE], nut = check->used->nut_string_height;

  rw_check_add (check, force <= 0.0 ? RW_STOP : RW_FINE,
                "side.no_force", "tailpiece.height bridge.height neck.set_height bridge.down_force",
                N_("The strings lift the bridge off the head with {1 N}. A higher bridge, a lower tailpiece "
                   "or more neck angle is needed."),
                -force);
  if (side->outcome == RW_SIDE_SOLVED)
    rw_check_add (check, rw_check_low (side->fret_plane, nut, RW_NEVER, RW_NEVER),
                  "side.bridge_under_nut", "bridge.height neck.angle setup.action nut.string_height",
                  N_("Over the plane of the frets the strings come to {1 mm} at the bridge and stand at "
                     "{2 mm} at the nut: they run down to the bridge and buzz. Raise the bridge or lessen "
                     "the neck angle."),
                  side->fret_plane, nut);
}

/* Angle and bridge are both given, or both are cut already: what would bring back the action that is
 * wanted. */
static void
check_angle_meets_action (RwCheck *check)
{
  const RwDesign *used = check->used;
  const RwPlan *plan = &check->result->plan;
  const RwSide *side = &check->result->side;

  if (side->outcome != RW_SIDE_SOLVED)
    return;

  double share = plan->fret_x[(int) used->setup_action_fret] / plan->length;
  double bridge = (side->action - used->setup_action) / share;
  double turn = atan (bridge / (used->bridge_offset + used->rim_outer_diameter / 2.0));
  double degrees = fabs (turn) * 180.0 / G_PI;

  rw_check_add (check, rw_check_high (degrees, used->limits_angle_far_out, used->limits_angle_out, RW_NEVER),
                "neck.angle_misses", "neck.angle bridge.height setup.action",
                bridge > 0.0 ? N_("With this neck angle and bridge the action comes to {1 mm} at fret {2}, "
                                  "and {3 mm} is wanted: the neck is {4 deg} out. A bridge {5 mm} lower "
                                  "would set it right, or a shim of {6 mm} at the head end of the heel that "
                                  "tilts the neck back.")
                             : N_("With this neck angle and bridge the action comes to {1 mm} at fret {2}, "
                                  "and {3 mm} is wanted: the neck is {4 deg} out. A bridge {5 mm} higher "
                                  "would set it right, or a shim of {6 mm} at the cap end of the heel that "
                                  "tilts the neck forward."),
                side->action, used->setup_action_fret, used->setup_action, degrees, fabs (bridge),
                used->joint_heel_depth * tan (fabs (turn)));
}

/* A neck cut to another sideways angle than the strings ask for: the line of the third string, carried
 * on over the pot, misses the middle of the tail. */
static void
check_string_line (RwCheck *check)
{
  const RwDesign *used = check->used;
  const RwPlan *plan = &check->result->plan;
  double rim = check->at[RW_NECK_NUT_TO_RIM], measured = rw_check_measured (check, RW_NECK_SIDE_ANGLE);
  double middle = (rw_plan_treble (plan, rim) + rw_plan_bass (plan, rim)) / 2.0;
  double wanted = -atan ((middle - plan->nut_middle) / rim);
  double run = used->rim_outer_diameter * tan (wanted - measured * G_PI / 180.0); /* to the treble side */
  double miss = fabs (run - used->tailpiece_offset);

  rw_check_add (check, rw_check_high (miss, used->limits_tail_miss_far, used->limits_tail_miss, RW_NEVER),
                "neck.string_line", "neck.side_angle tailpiece.width",
                N_("Cut to {1 deg} sideways where {2 deg} is wanted, the neck sends its middle string past "
                   "the tail's centre by {3 mm}, and the strings drag the bridge aside. Ease the heel, or "
                   "set the tail over."),
                measured, wanted * 180.0 / G_PI, miss);
}

void
rw_check_side (RwCheck *check)
{
  check_outcome (check);
  check_force (check);
  check_angle_meets_action (check);
  check_string_line (check);
}
