#include "check.h"

/* A hole through the rim on the axis: a round rod hole is its radius about a point, the square hole of a
 * stick its half width each way. */
typedef struct
{
  double below_edge, half_width, radius;
} AxisHole;

static int
hook_count (const RwCheck *check)
{
  return (int) check->used->hooks_count;
}

static double
hook_angle (const RwCheck *check, int k)
{
  return check->at[RW_HOOKS_ANGLE + k];
}

static void
check_shoes_apart (RwCheck *check)
{
  int count = hook_count (check), worst = 1;
  double least = G_MAXDOUBLE;

  for (int k = 1; k <= count; k++)
    {
      gboolean in_order = k == count || hook_angle (check, k + 1) > hook_angle (check, k);
      double chord = check->at[RW_HOOKS_CHORD + k] * (in_order ? 1.0 : -1.0);

      if (chord < least)
        {
          least = chord;
          worst = k;
        }
    }
  rw_check_add (check, rw_check_low (least, check->used->shoes_width, RW_NEVER, RW_NEVER),
                "hooks.shoes_overlap",
                "hooks.count shoes.width hooks.heel_gap hooks.tail_gap hooks.chord[{3}]",
                least < 0.0 ? N_("The row of hooks runs back on itself: the last of a side would stand "
                                 "{1 mm} before the one ahead of it. Let the row begin nearer the heel and "
                                 "end nearer the tail.")
                            : N_("The hooks stand {1 mm} apart where they are closest, and a shoe is {2 mm} "
                                 "wide. Take fewer hooks or narrower shoes, or let the row begin nearer the "
                                 "heel and end nearer the tail."),
                fabs (least), check->used->shoes_width, worst);
}

/* Pitch along the sides, at the hooks' axes; the gaps over the neck and over the tail have rules of
 * their own. */
static void
check_pitch (RwCheck *check)
{
  const RwDesign *used = check->used;
  double radius = used->rim_outer_diameter / 2.0 + used->shoes_stand_off;
  double least = G_MAXDOUBLE, most = 0.0;

  for (int k = 1; k < hook_count (check); k++)
    {
      double from = hook_angle (check, k), to = hook_angle (check, k + 1);
      double pitch = radius * (to - from) * G_PI / 180.0;

      if (from < 180.0 && to > 180.0)
        continue;
      least = fmin (least, pitch);
      most = fmax (most, pitch);
    }
  rw_check_add (check, rw_check_high (most, RW_NEVER, used->limits_hook_pitch_most, used->limits_hook_pitch),
                "hooks.pitch_wide", "hooks.count",
                N_("The hooks stand {1 mm} apart; 40 to 50 mm is common and {2 mm} the most by a rule of "
                   "thumb, or the hoop sags between them. Take more hooks or a stiffer hoop."),
                most, used->limits_hook_pitch_most);
  rw_check_add (check, rw_check_low (least, RW_NEVER, used->limits_hook_pitch_least, RW_NEVER),
                "hooks.pitch_close", "hooks.count",
                N_("The hooks stand {1 mm} apart; under {2 mm} a wrench has no room between them. Take "
                   "fewer."),
                least, used->limits_hook_pitch_least);
}

static void
check_ends (RwCheck *check)
{
  const RwDesign *used = check->used;
  gboolean sides = used->hooks_layout == RW_LAYOUT_SIDES;
  const char *first = sides ? "hooks.heel_gap hooks.count hooks.heel_clearance"
                            : "hooks.count hooks.first hooks.heel_clearance";
  const char *last = sides ? "hooks.tail_gap hooks.count hooks.tail_clearance"
                           : "hooks.count hooks.first hooks.tail_clearance";
  double shoe = check->at[RW_HOOKS_HEEL_CLEARANCE], axis = shoe + used->shoes_width / 2.0;
  double edge = axis - used->hooks_rod / 2.0, tail = check->at[RW_HOOKS_TAIL_CLEARANCE];

  rw_check_add (check,
                shoe < 0.0 ? RW_STOP : rw_check_low (edge, RW_NEVER, used->limits_hook_to_heel, RW_NEVER),
                "hooks.clear_heel", first,
                shoe < 0.0 ? N_("The shoe nearest to the neck overlaps the heel by {1 mm}. Move the first "
                                "hook, or make shoes or heel narrower.")
                           : N_("The shoe nearest to the neck clears the heel by {1 mm} and its hook by "
                                "{2 mm}; common practice keeps {3 mm} from hook to heel for hand and "
                                "wrench. Move the first hook or narrow the heel."),
                fabs (shoe), edge, used->limits_hook_to_heel);
  rw_check_add (check, rw_check_high (axis, RW_NEVER, RW_NEVER, used->limits_hook_from_heel),
                "hooks.far_from_heel", first,
                N_("The first hook stands {1 mm} from the heel; 13 to 19 mm is usual, and beyond {2 mm} the "
                   "head pulls weakly beside the neck."),
                axis, used->limits_hook_from_heel);
  rw_check_add (check, rw_check_low (tail, 0.0, used->limits_shoe_to_tail, RW_NEVER),
                "hooks.clear_tail", last,
                tail < 0.0 ? N_("The shoe nearest to the tail overlaps the tailpiece by {1 mm}. Move the "
                                "last hook, or take a narrower tailpiece or another number of hooks.")
                           : N_("The shoe nearest to the tail clears the tailpiece by {1 mm}; {2 mm} is the "
                                "least. Move the last hook, or take a narrower tailpiece or another number "
                                "of hooks."),
                fabs (tail), used->limits_shoe_to_tail);
}

static double
wood_to_hole (const RwCheck *check, AxisHole hole)
{
  const RwDesign *used = check->used;
  double down = fmax (fabs (check->at[RW_SHOES_HOLE_BELOW_EDGE] - hole.below_edge) - hole.half_width, 0.0);
  double least = G_MAXDOUBLE;

  for (int k = 1; k <= hook_count (check); k++)
    {
      double turn = fabs (remainder (hook_angle (check, k), 180.0)) * G_PI / 180.0;
      double along = fmax (turn * used->rim_outer_diameter / 2.0 - hole.half_width, 0.0);

      least = fmin (least, hypot (along, down) - hole.radius - used->shoes_bolt_hole / 2.0);
    }
  return least;
}

static double
wood_to_joint (const RwCheck *check)
{
  const RwDesign *used = check->used;
  double radius = used->joint_rod_diameter / 2.0, least = G_MAXDOUBLE;

  if (used->joint_kind == RW_JOINT_STICK)
    return wood_to_hole (check, (AxisHole){ .below_edge = check->at[RW_JOINT_STICK_ON_RIM],
                                            .half_width = used->joint_stick_section / 2.0 });
  for (int k = 1; k <= (int) used->joint_rod_count; k++)
    least = fmin (least, wood_to_hole (check, (AxisHole){ .below_edge = check->at[RW_JOINT_HOLE_ON_RIM + k],
                                                          .radius = radius }));
  return least;
}

static void
check_axis_holes (RwCheck *check)
{
  gboolean stick = check->used->joint_kind == RW_JOINT_STICK;
  double wood = wood_to_joint (check);

  rw_check_add (check, rw_check_low (wood, 0.0, check->used->limits_hole_to_hole, RW_NEVER),
                "hooks.clear_rods",
                stick ? "shoes.below_edge joint.stick_below hooks.count"
                      : "shoes.below_edge joint.rod_upper joint.rod_spacing hooks.count",
                wood < 0.0 ? N_("A shoe's bolt hole runs {1 mm} into the hole of the rod or stick. Move the "
                                "shoes up or down, or the hooks along.")
                           : N_("Between a shoe's bolt hole and the hole of the rod or stick {1 mm} of wood "
                                "are left; common practice keeps {2 mm}. Move the shoes up or down, or the "
                                "hooks along."),
                fabs (wood), check->used->limits_hole_to_hole);
}

/* A bought or finished hoop dictates the places of the hooks. */
static void
check_notches (RwCheck *check)
{
  const RwDesign *used = check->used;
  double hoop = check->at[RW_HOOP_OUTER_DIAMETER] / 2.0, rim = used->rim_outer_diameter / 2.0;
  double most = 0.0;
  int worst = 1;

  for (int k = 1; k <= hook_count (check); k++)
    {
      double turn = check->at[RW_HOOP_NOTCH_ARC + k] / hoop - check->at[RW_HOOKS_ARC + k] / rim;
      double miss = fabs (turn) * (rim + used->shoes_stand_off);

      if (miss > most)
        {
          most = miss;
          worst = k;
        }
    }
  rw_check_add (check, rw_check_high (most, RW_NEVER, used->limits_notch_miss, RW_NEVER),
                "hooks.notch_miss", "hoop.notch_arc[{2}] hooks.arc[{2}]",
                N_("Notch {2} and its shoe stand {1 mm} apart round the rim; beyond {3 mm} the hook leans. "
                   "Drill the shoes to the hoop's notches, not to equal steps."),
                most, worst, used->limits_notch_miss);
}

void
rw_check_layout (RwCheck *check)
{
  check_shoes_apart (check);
  check_pitch (check);
  check_ends (check);
  check_axis_holes (check);
  check_notches (check);
}
