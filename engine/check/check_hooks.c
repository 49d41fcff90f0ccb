#include "check.h"

#include "table/material.h"

static double
seat_to_axis (const RwCheck *check)
{
  return check->at[RW_HOOKS_SEAT_OFFSET] + check->used->hooks_rod / 2.0;
}

/* Claw axis down to the shoe's underside, where the nut bears, at first contact. */
static double
claw_to_nut (const RwCheck *check)
{
  const RwDesign *used = check->used;

  return used->hoop_height - used->head_collar - used->hoop_notch_depth + seat_to_axis (check)
         + used->shoes_below_edge + used->shoes_height / 2.0;
}

static void
check_rod (RwCheck *check)
{
  const RwThread *thread = &rw_threads[check->used->hooks_thread];
  double rod = check->used->hooks_rod, major = thread->major_mm;
  double root = major - RW_THREAD_DEPTH * thread->pitch_mm;

  rw_check_add (check, rw_check_low (rod, root, major - RW_THREAD_FIT, RW_NEVER),
                "hooks.rod_thin", "hooks.rod hooks.thread",
                N_("The rod is {1 mm} thick and its thread {2 mm} over the crests and {3 mm} at the root, "
                   "so the die cuts a shallow thread or none. Take a thicker rod or a smaller thread."),
                rod, major, root);
  rw_check_add (check, rw_check_high (rod, RW_NEVER, major + RW_THREAD_FIT, RW_NEVER),
                "hooks.rod_thick", "hooks.rod hooks.thread",
                N_("The rod is {1 mm} thick and the die for its thread takes {2 mm}: it will jam and tear. "
                   "Turn or file the ends down, or choose the thread that fits."),
                rod, major);
}

static void
check_thread (RwCheck *check)
{
  const RwDesign *used = check->used;
  const RwThread *thread = &rw_threads[used->hooks_thread];
  double leg = check->at[RW_HOOKS_LEG], length = check->at[RW_HOOKS_THREAD_LENGTH];
  double past = leg - claw_to_nut (check);
  double engaged = fmin (past, used->hooks_nut_height) / thread->pitch_mm;
  double turns = used->hooks_nut_height / thread->pitch_mm;
  double left = length - past - used->hoop_travel, bend = used->hooks_bend_radius + used->hooks_rod / 2.0;

  rw_check_add (check, rw_check_low (used->hooks_nut_height, used->limits_turns * thread->pitch_mm,
                                     thread->major_mm, RW_BRASS_ENGAGEMENT * thread->major_mm),
                "hooks.nut_short", "hooks.nut_height hooks.thread",
                N_("A nut {1 mm} high holds {2} turns of thread. Rules of thumb want the thread's diameter "
                   "of {3 mm} in steel, half as much again in brass, and never under {4} turns."),
                used->hooks_nut_height, turns, thread->major_mm, used->limits_turns);
  rw_check_add (check, rw_check_low (engaged, used->limits_turns, turns, RW_NEVER),
                "hooks.leg_short", "hooks.leg hooks.spare",
                N_("At first contact {1 mm} of the leg reach past the shoe, which is {2} turns in the nut; "
                   "{3} is the least that holds. Lower hoop seat or shorter shoes save the hooks; else bend "
                   "longer ones."),
                past, fmax (engaged, 0.0), used->limits_turns);
  rw_check_add (check, rw_check_low (left, 0.0, used->hooks_reserve, RW_NEVER),
                "hooks.thread_runs_out", "hooks.thread_length hooks.leg hoop.travel hooks.reserve",
                left < 0.0 ? N_("The nut runs out of thread {1 mm} before the hoop is down. Cut the thread "
                                "longer.")
                           : N_("With the hoop down the nut has {1 mm} of thread left above it, and {2 mm} "
                                "are to be in reserve. Cut the thread longer."),
                fabs (left), used->hooks_reserve);
  rw_check_add (check, rw_check_low (leg - length, bend, RW_NEVER, RW_NEVER),
                "hooks.thread_in_bend", "hooks.reserve hooks.leg hooks.thread_length",
                N_("{1 mm} of thread on a leg of {2 mm} run into the bend, where the hook would crack. "
                   "Allow less travel in reserve, or set the shoes lower."),
                length, leg);
}

/* The load is that of a head that slides over its edge without friction: never less than the real one. */
static void
check_pull (RwCheck *check)
{
  double stress = check->at[RW_HOOKS_STRESS];

  rw_check_add (check, rw_check_high (stress, RW_NEVER, RW_ROD_YIELD_MPA, RW_ROD_YIELD_MPA / 2.0),
                "hooks.stress", "hooks.count hooks.thread head.tension hooks.stress",
                N_("Each hook carries up to {1 N}, {2 MPa} in its thread; soft stainless rod yields at "
                   "{3 MPa}. This is an upper bound, with no friction over the edge. More hooks or a larger "
                   "thread helps."),
                check->at[RW_HEAD_LOAD_PER_HOOK], stress, RW_ROD_YIELD_MPA);
}

static void
check_claw (RwCheck *check)
{
  const RwDesign *used = check->used;
  double bend = used->hooks_bend_radius + used->hooks_rod / 2.0;
  double reach = used->hooks_claw - seat_to_axis (check);
  double past = reach - used->hoop_thickness - used->hoop_clearance;
  double seat = check->at[RW_HOOP_TOP_OVER_HEAD] - used->hoop_notch_depth + check->at[RW_HOOKS_SEAT_OFFSET];

  rw_check_add (check, rw_check_low (used->hooks_claw, bend, RW_NEVER, RW_NEVER),
                "hooks.claw_in_bend", "hooks.claw hooks.bend_radius hooks.rod",
                N_("The claw of {1 mm} ends inside the bend, which takes {2 mm} by itself. Make the claw "
                   "longer or the bend tighter."),
                used->hooks_claw, bend);
  rw_check_add (check, rw_check_low (reach, 0.0, used->limits_claw_hold, RW_NEVER),
                "hooks.claw_short", "hooks.claw hoop.edge_round hooks.bend_radius",
                N_("The claw reaches {1 mm} over the hoop; under {2 mm} it can open and slip off. Make it "
                   "longer, or round the hoop's edge to the bend."),
                reach, used->limits_claw_hold);
  rw_check_add (check, seat < 0.0 ? rw_check_high (past, RW_NEVER, used->limits_tip_over_hoop, 0.0) : RW_FINE,
                "hooks.tip_on_head", "hooks.claw hoop.thickness hoop.clearance hoop.notch_depth",
                N_("Down in its notch, the hook's tip reaches {1 mm} past the hoop and its clearance, into "
                   "the head's collar. Make the claw that much shorter, or file the tip."),
                past);
  rw_check_add (check, rw_check_high (used->hoop_edge_round, RW_NEVER, used->hoop_thickness, RW_NEVER),
                "hoop.edge_round", "hoop.edge_round hoop.thickness",
                N_("An edge rounded to {1 mm} is more than the hoop's thickness of {2 mm}, and leaves the "
                   "claw nothing level to sit on."),
                used->hoop_edge_round, used->hoop_thickness);
}

static void
check_stand (RwCheck *check)
{
  const RwDesign *used = check->used;
  double seat = check->at[RW_HOOP_OUTER_DIAMETER] / 2.0 + seat_to_axis (check);
  double off = used->rim_outer_diameter / 2.0 + used->shoes_stand_off - seat;
  double lean = check->at[RW_HOOKS_LEAN], tip = check->at[RW_HOOKS_TIP_OVER_BACK];
  double most = fmax (fabs (off), fabs (lean));

  rw_check_add (check, rw_check_high (most, RW_NEVER, used->limits_lean, RW_NEVER),
                "hooks.lean", "shoes.stand_off hoop.thickness hoop.clearance hooks.lean",
                off < 0.0 ? N_("The shoes hold the hooks {1 mm} too near to the rim, so they lean by "
                               "{2 deg}; beyond {3 mm} they bend and pull the hoop askew. A stand-off of "
                               "{4 mm} sets them upright.")
                          : N_("The shoes hold the hooks {1 mm} too far from the rim, so they lean by "
                               "{2 deg}; beyond {3 mm} they bend and pull the hoop askew. A stand-off of "
                               "{4 mm} sets them upright."),
                fabs (off), fabs (lean), used->limits_lean, used->shoes_stand_off - off);
  rw_check_add (check, rw_check_low (tip, RW_NEVER, used->limits_tip_over_back, RW_NEVER),
                "hooks.past_back", "shoes.below_edge rim.height hooks.tip_over_back",
                tip < 0.0 ? N_("Tightened, the hook sticks out {1 mm} past the rim's back edge and "
                               "scratches whatever the pot is laid on. Set the shoes higher, or take "
                               "shorter nuts or less spare thread.")
                          : N_("Tightened, the hook ends {1 mm} above the rim's back edge; under {2 mm} it "
                               "scratches whatever the pot is laid on. Set the shoes higher, or take "
                               "shorter nuts or less spare thread."),
                fabs (tip), used->limits_tip_over_back);
}

static void
check_bolt (RwCheck *check)
{
  const RwDesign *used = check->used;
  double hole = used->shoes_bolt_hole, major = rw_threads[used->shoes_thread].major_mm;
  double below = check->at[RW_SHOES_HOLE_BELOW_EDGE];
  double wood = fmin (below, used->rim_height - below) - hole / 2.0;

  rw_check_add (check, rw_check_low (hole, major, RW_NEVER, RW_NEVER),
                "shoes.bolt_hole", "shoes.bolt_hole shoes.thread",
                N_("A hole of {1 mm} does not let the bolt of {2 mm} through. Drill it larger or take a "
                   "smaller bolt."),
                hole, major);
  rw_check_add (check, rw_check_low (wood, 0.0, used->limits_bolt_wood, RW_NEVER),
                "shoes.hole_near_edge", "shoes.below_edge rim.height shoes.hole_below_edge",
                wood < 0.0 ? N_("The bolt holes break out of the rim's edge by {1 mm}. Move the shoes.")
                           : N_("{1 mm} of wood are left from the bolt holes to the rim's edge; common "
                                "practice keeps {2 mm}, or it splits when drilled or under load. Move the "
                                "shoes."),
                fabs (wood), used->limits_bolt_wood);
}

/* A bolt goes through washer and wall into the shoe, its head inside the rim. */
static void
check_bolt_length (RwCheck *check)
{
  const RwDesign *used = check->used;
  double through = used->rim_wall + used->shoes_washer, length = used->shoes_bolt_length;
  double inside = length - through, most = through + used->shoes_thread_depth;
  double major = rw_threads[used->shoes_thread].major_mm;

  if (length <= 0.0)
    return;
  rw_check_add (check, rw_check_high (length, RW_NEVER, most, RW_NEVER),
                "shoes.bolt_long", "shoes.bolt_length shoes.thread_depth rim.wall",
                N_("The shoe bolt of {1 mm} strikes the end of its thread {2 mm} before the shoe is tight. "
                   "Grind it to {3 mm}, or take a thicker washer."),
                length, length - most, most);
  rw_check_add (check, rw_check_low (inside, 0.0, fmin (major, used->shoes_thread_depth), RW_NEVER),
                "shoes.bolt_short", "shoes.bolt_length shoes.washer rim.wall",
                N_("The shoe bolt of {1 mm} has {2 mm} of thread in the shoe; a rule of thumb wants its "
                   "diameter of {3 mm}. Take a longer one."),
                length, fmax (inside, 0.0), major);
}

void
rw_check_hooks (RwCheck *check)
{
  check_rod (check);
  check_thread (check);
  check_pull (check);
  check_claw (check);
  check_stand (check);
  check_bolt (check);
  check_bolt_length (check);
}
