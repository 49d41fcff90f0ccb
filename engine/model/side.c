/* The side view: neck angle, bridge, action, sag and force, which all depend on each other.
 *
 * Frame of the pot: origin at the rim's centre in the head plane, x along the axis to the tail, z up.  P = (xb,
 * h - sag) is the bridge top, J = (-Ro, s) the fretboard's surface at the rim's face.  With B = xb + Ro and
 * C = h - sag - s:
 *   bridge top over the fret plane   Hb = C cos A - B sin A - crown
 *   nut to the rim's face            L - (B cos A + C sin A)
 *   action at fret n                 (hn + v(0))(1 - t) + Hb t - v(xn), t = xn/L
 *   slopes to the head plane         b1 = A + atan((Hb - hn - v(0))/L), b2 = atan((h - sag - zt)/anchor)
 *   down force                       sum T (sin b1 + sin b2)
 *
 * Neglects  the bridge's set-back from the theoretical line, head bending, tension gained by the dip.
 * Source    worked out from the geometry; membrane in feet.h, bending in beam.h.
 */
#include "model.h"

#include "beam.h"
#include "feet.h"

/* mm by which a round of bending may still change the neck: the next would change it by a twentieth of that. */
#define NEAR_ENOUGH 1e-10

/* What stays the same while the sag is sought. */
typedef struct
{
  const RwModel *m;
  RwSide        *side; /* the trial */
  double         compliance; /* mm of sag per N */
  double         arm;        /* B */
  double         lift_action;
} Trial;

static double
action_at (const RwDesign *d, const RwSide *side, double t, double lift)
{
  return (d->nut_string_height + side->pull_up) * (1 - t) + side->fret_plane * t - lift;
}

/* Action over fret place n, mm. */
static double
action_over (const RwModel *m, const RwSide *side, int n)
{
  return action_at (m->d, side, m->r->plan.fret_x[n] / m->r->plan.length, side->lift[n]);
}

double
rw_action (const RwResult *result, int string, int fret)
{
  const RwDesign *d = &result->used;
  const RwPlan *plan = &result->plan;
  const RwSide *side = &result->side;
  gboolean is_short = string > plan->full;
  double from = is_short ? plan->short_x : 0, t = (plan->fret_x[fret] - from) / (plan->length - from);
  double start = is_short ? d->fifth_start_height + side->lift_short : d->nut_string_height + side->pull_up;

  if (side->outcome != RW_SIDE_SOLVED || !(t > 0))
    return NAN;
  return start * (1 - t) + side->fret_plane * t - side->lift[fret];
}

/* How far a shim in the joint turns the neck beyond the angle that it is cut to. */
static double
shim_turn (const RwDesign *d)
{
  return atan (d->joint_shim / d->joint_heel_depth);
}

/* The two of angle, bridge and action that are known give the third, for the sag of the trial. */
static void
close_triangle (Trial *trial)
{
  const RwModel *m = trial->m;
  const RwDesign *d = m->d;
  RwSide *side = trial->side;
  double s = d->neck_set_height, b = trial->arm;
  double t = m->r->plan.fret_x[(int) d->setup_action_fret] / m->r->plan.length;

  side->angle = d->neck_angle * RW_RAD + shim_turn (d);
  side->bridge_height = d->bridge_height;
  if (d->neck_solve_for != RW_SOLVE_ACTION)
    {
      double at_nut = (d->nut_string_height + side->pull_up) * (1 - t);

      side->fret_plane = (d->setup_action + trial->lift_action - at_nut) / t;
    }
  if (d->neck_solve_for == RW_SOLVE_BRIDGE)
    side->bridge_height = (side->fret_plane + m->crown + b * sin (side->angle)) / cos (side->angle) + side->sag + s;

  double c = side->bridge_height - side->sag - s;
  if (d->neck_solve_for == RW_SOLVE_ANGLE)
    side->angle = acos ((side->fret_plane + m->crown) / hypot (b, c)) - atan2 (b, c);
  if (d->neck_solve_for == RW_SOLVE_ACTION)
    side->fret_plane = c * cos (side->angle) - b * sin (side->angle) - m->crown;
  side->bridge_top = side->bridge_height - side->sag;
  side->nut_to_rim = m->r->plan.length - (b * cos (side->angle) + c * sin (side->angle));
  side->action = action_at (d, side, t, trial->lift_action);
}

static void
press_down (Trial *trial)
{
  const RwModel *m = trial->m;
  const RwDesign *d = m->d;
  const RwPlan *plan = &m->r->plan;
  RwSide *side = trial->side;

  side->slope_front = side->angle + atan ((side->fret_plane - d->nut_string_height - side->pull_up) / plan->length);
  side->slope_short = side->angle
                      + atan ((side->fret_plane - d->fifth_start_height - side->lift_short)
                              / (plan->length - plan->short_x));
  side->slope_tail = atan ((side->bridge_top - d->tailpiece_height) / d->tailpiece_anchor);
  side->force = 0;
  for (int i = 1; i <= plan->strings; i++)
    {
      double front = i <= plan->full ? side->slope_front : side->slope_short;

      side->force += m->tension[i] * (sin (front) + sin (side->slope_tail));
    }
  side->force = rw_measured_or (m, RW_BRIDGE_DOWN_FORCE, side->force);
}

/* Zero where the sag is the one that its own down force makes. */
static double
imbalance (double sag, void *data)
{
  Trial *trial = data;

  trial->side->sag = sag;
  close_triangle (trial);
  press_down (trial);
  return sag - trial->compliance * trial->side->force;
}

/* The force lies within twice the pull of all strings, either way, and so does the sag.  Where the whole range
 * can't be tried (no angle fits at its ends), the part that can is searched in steps from the middle. */
static double
find_sag (Trial *trial, double pull)
{
  double reach = 2 * trial->compliance * pull + 1e-6;
  double sag = rw_root (imbalance, trial, 0, reach);

  if (isnan (sag))
    sag = rw_root (imbalance, trial, -reach, reach);
  for (int i = 0; i < 64 && isnan (sag); i++)
    {
      sag = rw_root (imbalance, trial, reach * i / 64, reach * (i + 1) / 64);
      if (isnan (sag))
        sag = rw_root (imbalance, trial, -reach * (i + 1) / 64, -reach * i / 64);
    }
  return sag;
}

/* Bends the neck under the strings of the trial; returns by how much any lift or the heel's start changed. */
static double
bend_neck (const RwModel *m, RwSide *side, RwBeam *beam)
{
  const RwDesign *d = m->d;
  const RwPlan *plan = &m->r->plan;
  double to_rim = rw_measured_or (m, RW_NECK_NUT_TO_RIM, side->nut_to_rim);
  double change = fabs (to_rim - d->neck_heel_start - side->heel_start);

  side->heel_start = to_rim - d->neck_heel_start;
  rw_beam_bend (beam, m, side->heel_start, to_rim - d->neck_rod_end, side->fret_plane);
  side->relief_free = rw_beam_relief (beam, 0);
  side->rod_moment = 0;
  side->relief_reached = side->relief_free <= d->setup_relief;
  if (d->neck_rod_present == RW_YES)
    side->rod_moment = rw_measured_or (m, RW_NECK_ROD_MOMENT,
                                       rw_beam_rod (beam, d->setup_relief, &side->relief_reached));
  side->relief = rw_beam_relief (beam, side->rod_moment);

  for (int n = 0; n <= RW_FRETS_MAX; n++)
    {
      double lift = 0;

      if (d->setup_neck_flex == RW_YES)
        lift = rw_beam_lift (beam, n == 0 ? 0 : plan->fret_x[n], side->rod_moment);

      if (n == 0)
        lift = rw_measured_or (m, RW_NECK_PULL_UP, lift);
      change = MAX (change, fabs (lift - side->lift[n]));
      side->lift[n] = lift;
    }
  side->pull_up = side->lift[0];
  side->lift_short = plan->has_short ? side->lift[(int) d->fifth_start_fret] : 0;
  return change;
}

/* The side view with the head at a tension, N/m.  sag_measured: mm; NaN where the sag follows from the tension. */
static RwSide
solve_side (const RwModel *m, double head_tension, double sag_measured)
{
  RwSide side = { .outcome = RW_SIDE_SOLVED };
  RwBeam beam = { 0 };
  Trial trial = { .m = m, .side = &side, .arm = m->d->bridge_offset + m->ro };
  double pull = 0, change = INFINITY;

  trial.compliance = rw_feet_sag (m->d, m->rh, head_tension, side.foot_share);
  if (isnan (trial.compliance))
    {
      side.outcome = RW_SIDE_FOOT_OFF_HEAD;
      return side;
    }
  for (int i = 1; i <= m->r->plan.strings; i++)
    pull += m->tension[i];

  for (int round = 0; round < 60 && change > NEAR_ENOUGH; round++)
    {
      double sag = isfinite (sag_measured) ? sag_measured : find_sag (&trial, pull);

      if (isnan (sag) || isnan (imbalance (sag, &trial)))
        {
          imbalance (0, &trial);
          side.outcome = isnan (side.angle) ? RW_SIDE_NO_ANGLE : RW_SIDE_NO_BALANCE;
          return side;
        }
      change = bend_neck (m, &side, &beam);
      trial.lift_action = side.lift[(int) m->d->setup_action_fret];
    }
  if (!(change < 1e-6))
    side.outcome = RW_SIDE_NO_BALANCE;
  for (int i = 0; i < 3; i++)
    side.foot_share[i] *= side.force;
  return side;
}

static void
settle_actions (RwModel *m)
{
  int places[] = { 1, 5, 7, 12, m->r->plan.last };

  for (guint i = 0; i < G_N_ELEMENTS (places); i++)
    rw_settle (m, RW_SETUP_ACTION + places[i], action_over (m, &m->r->side, places[i]));
}

/* What a search without a solution leaves behind means nothing, and may be of any size: only the reason is kept. */
static void
forget_trial (RwSide *side)
{
  double *const numbers[] = { &side->angle, &side->bridge_height, &side->sag, &side->bridge_top, &side->fret_plane,
                              &side->action, &side->slope_front, &side->slope_short, &side->slope_tail, &side->force,
                              &side->nut_to_rim, &side->heel_start, &side->pull_up, &side->lift_short,
                              &side->rod_moment, &side->relief, &side->relief_free };

  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    *numbers[i] = NAN;
  for (guint i = 0; i < G_N_ELEMENTS (side->foot_share); i++)
    side->foot_share[i] = NAN;
  for (guint i = 0; i < G_N_ELEMENTS (side->lift); i++)
    side->lift[i] = NAN;
}

void
rw_model_side (RwModel *m)
{
  RwSide *side = &m->r->side;

  *side = solve_side (m, rw_settled (m, RW_HEAD_TENSION), rw_measured_or (m, RW_BRIDGE_SAG, NAN));
  if (side->outcome != RW_SIDE_SOLVED)
    {
      forget_trial (side);
      return;
    }

  rw_settle (m, RW_NECK_ANGLE, (side->angle - shim_turn (m->d)) / RW_RAD);
  rw_settle (m, RW_BRIDGE_HEIGHT, side->bridge_height);
  rw_settle (m, RW_BRIDGE_SAG, side->sag);
  rw_settle (m, RW_BRIDGE_DOWN_FORCE, side->force);
  rw_settle (m, RW_BRIDGE_BREAK_ANGLE, (side->slope_front + side->slope_tail) / RW_RAD);
  rw_settle (m, RW_NECK_PULL_UP, side->pull_up);
  rw_settle (m, RW_NECK_RELIEF_UNRODDED, side->relief_free);
  gboolean no_moment_helps = m->d->neck_rod_present == RW_YES && !side->relief_reached;
  rw_settle (m, RW_NECK_ROD_MOMENT, no_moment_helps ? NAN : side->rod_moment);
  settle_actions (m);

  side->nut_to_rim = rw_settle (m, RW_NECK_NUT_TO_RIM, side->nut_to_rim);
  rw_settle (m, RW_NECK_RIM_FRET, -12 * log2 (1 - side->nut_to_rim / m->r->plan.length));
  double nose = m->hoop_ro - m->ro + m->d->fretboard_end_gap;
  rw_settle (m, RW_NECK_BOARD_LENGTH, side->nut_to_rim - nose / cos (side->angle));

  /* The strings' line where it passes the hoop on the neck side. */
  double run = m->d->bridge_offset + m->hoop_ro;
  rw_settle (m, RW_STRINGS_OVER_HOOP,
             side->bridge_top - run * tan (side->slope_front) - rw_settled (m, RW_HOOP_TOP_OVER_HEAD));

  if (m->d->head_tension_from == RW_TENSION_FROM_TAP)
    {
      RwSide tight = solve_side (m, rw_settled (m, RW_HEAD_TENSION_HIGH), NAN);
      RwSide slack = solve_side (m, rw_settled (m, RW_HEAD_TENSION_LOW), NAN);

      rw_settle (m, RW_BRIDGE_SAG_LOW, tight.outcome == RW_SIDE_SOLVED ? tight.sag : NAN);
      rw_settle (m, RW_BRIDGE_SAG_HIGH, slack.outcome == RW_SIDE_SOLVED ? slack.sag : NAN);
    }
}
