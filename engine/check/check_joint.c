#include "check.h"

/* A hole through rim and heel: its middle under the wood's top edge and under the fretboard, its half
 * height. */
typedef struct
{
  double on_rim, on_heel, half;
} JointHole;

static int
joint_holes (const RwCheck *check, JointHole holes[RW_HOLES_MAX])
{
  const RwDesign *used = check->used;
  const double *at = check->at;

  if (used->joint_kind == RW_JOINT_STICK)
    {
      holes[0] = (JointHole){ at[RW_JOINT_STICK_ON_RIM], at[RW_JOINT_STICK_ON_HEEL],
                              used->joint_stick_section / 2.0 };
      return 1;
    }
  for (int k = 0; k < (int) used->joint_rod_count; k++)
    holes[k] = (JointHole){ at[RW_JOINT_HOLE_ON_RIM + k + 1], at[RW_JOINT_HOLE_ON_HEEL + k + 1],
                            used->joint_rod_diameter / 2.0 };
  return (int) used->joint_rod_count;
}

/* Where to look, for a stick and for rods. */
static const char *
by_kind (const RwCheck *check, const char *stick, const char *rods)
{
  return check->used->joint_kind == RW_JOINT_STICK ? stick : rods;
}

static void
check_rim_wood (RwCheck *check)
{
  const RwDesign *used = check->used;
  JointHole holes[RW_HOLES_MAX];
  int count = joint_holes (check, holes);
  double least = G_MAXDOUBLE;

  for (int k = 0; k < count; k++)
    least = fmin (least, fmin (holes[k].on_rim, used->rim_height - holes[k].on_rim) - holes[k].half);
  rw_check_add (check, rw_check_low (least, 0.0, used->limits_rod_wood, used->limits_rod_wood_good),
                "joint.rim_wood",
                by_kind (check, "joint.stick_below joint.stick_section rim.height",
                         "joint.rod_upper joint.rod_spacing rim.height"),
                least < 0.0 ? N_("The hole for the neck's rod or stick breaks out of the rim by {1 mm}. "
                                 "Move it up or down, or make the rim higher.")
                            : N_("{1 mm} of rim are left over or under the hole for the neck's rod or "
                                 "stick; common practice keeps {2 mm}, and under {3 mm} the rim may split "
                                 "there."),
                fabs (least), used->limits_rod_wood_good, used->limits_rod_wood);
}

static void
check_heel_wood (RwCheck *check)
{
  const RwDesign *used = check->used;
  JointHole holes[RW_HOLES_MAX];
  int count = joint_holes (check, holes);
  double below = G_MAXDOUBLE, above = G_MAXDOUBLE, beside = G_MAXDOUBLE;

  for (int k = 0; k < count; k++)
    {
      below = fmin (below, used->joint_heel_depth - holes[k].on_heel - holes[k].half);
      above = fmin (above, holes[k].on_heel - holes[k].half - check->at[RW_JOINT_RELIEF_HEIGHT]);
      beside = fmin (beside, rw_heel_width (check->result, holes[k].on_heel) / 2.0 - holes[k].half);
    }
  rw_check_add (check, rw_check_low (fmin (below, beside), 0.0, used->limits_heel_wood, RW_NEVER),
                "joint.heel_wood",
                by_kind (check, "joint.heel_depth joint.stick_below joint.heel_cap_width",
                         "joint.heel_depth joint.rod_spacing joint.heel_cap_width"),
                fmin (below, beside) < 0.0 ? N_("The hole for the rod or stick breaks out of the heel by "
                                                "{1 mm}. A deeper heel, a wider cap or a higher hole helps.")
                                           : N_("{1 mm} of the heel are left round the hole for the rod or "
                                                "stick; under {2 mm} it splits when the rod goes in. A "
                                                "deeper heel, a wider cap or a higher hole helps."),
                fabs (fmin (below, beside)), used->limits_heel_wood);
  rw_check_add (check, rw_check_low (above, 0.0, used->limits_heel_wood, RW_NEVER),
                "joint.hole_in_relief",
                by_kind (check, "joint.stick_below joint.relief_height",
                         "joint.rod_upper joint.relief_height"),
                above < 0.0 ? N_("The hole in the heel runs {1 mm} into the relief for the hoop. Set the "
                                 "hole lower.")
                            : N_("Between the relief for the hoop and the hole below it {1 mm} of the heel "
                                 "are left; {2 mm} is the least. Set the hole lower."),
                fabs (above), used->limits_heel_wood);
}

static void
check_heel (RwCheck *check)
{
  const RwDesign *used = check->used;
  double back = used->neck_set_height + used->rim_tone_ring_height + used->rim_height;
  double width = check->at[RW_JOINT_HEEL_WIDTH];

  rw_check_add (check, rw_check_high (used->joint_heel_depth, RW_NEVER, RW_NEVER, back),
                "joint.heel_deep", "joint.heel_depth rim.height neck.set_height",
                N_("The heel is {1 mm} deep and passes the rim's back edge, which is {2 mm} under the "
                   "board. It has nothing to bear on there."),
                used->joint_heel_depth, back);
  rw_check_add (check, width >= used->rim_outer_diameter ? RW_STOP : RW_FINE,
                "joint.heel_wide", "rim.outer_diameter nut.width joint.heel_width",
                N_("A heel {1 mm} wide has no place on a rim {2 mm} across."),
                width, used->rim_outer_diameter);
  rw_check_add (check, rw_check_low (used->fretboard_end_gap, RW_NEVER, used->limits_end_gap, RW_NEVER),
                "joint.end_gap", "fretboard.end_gap",
                N_("The board ends {1 mm} from the hoop; {2 mm} is the least by common practice, for a hoop "
                   "that touches the board can split it."),
                used->fretboard_end_gap, used->limits_end_gap);
}

void
rw_check_joint (RwCheck *check)
{
  check_rim_wood (check);
  check_heel_wood (check);
  check_heel (check);
}
