/* Hooks and shoes: places round the rim, bent shape, lean, load. */
#include "hooks.h"

#include "model.h"

/* Half the angle that the heel takes on the rim at the height of the shoe bolts, radians. */
static double
heel_half_angle (const RwModel *m)
{
  double width = rw_heel_width (m->r, m->d->neck_set_height + m->bolt_depth);

  return asin (width / 2 / m->ro);
}

/* Angle of hook k from the neck, clockwise seen from the head side, degrees. */
static double
even_angle (const RwDesign *d, int k)
{
  if (d->hooks_first == RW_FIRST_STRADDLE)
    return (k - 0.5) * 360 / d->hooks_count;
  return k * 360 / (d->hooks_count + 1);
}

/* Equal steps on each side between first and last hook; an odd count puts one more at the tail. */
static double
sides_angle (const RwModel *m, int k)
{
  const RwDesign *d = m->d;
  int count = (int) d->hooks_count, side = count / 2;
  double first = (heel_half_angle (m) + d->hooks_heel_gap / m->ro) / RW_RAD;
  double last = 180 - d->hooks_tail_gap / m->ro / RW_RAD;
  double step = side > 1 ? (last - first) / (side - 1) : 0;

  if (k <= side)
    return first + (k - 1) * step;
  if (k > count - side)
    return 360 - first - (count - k) * step;
  return 180;
}

static void
places (RwModel *m)
{
  const RwDesign *d = m->d;
  int count = (int) d->hooks_count;

  for (int k = 1; k <= count; k++)
    {
      double angle = d->hooks_layout == RW_LAYOUT_EVEN ? even_angle (d, k) : sides_angle (m, k);

      angle = rw_settle (m, RW_HOOKS_ANGLE + k, angle) * RW_RAD;
      rw_settle (m, RW_HOOKS_ARC + k, m->ro * angle);
      rw_settle (m, RW_HOOKS_X + k, -m->ro * cos (angle));
      rw_settle (m, RW_HOOKS_Y + k, m->ro * sin (angle));
      if (d->hoop_seat == RW_SEAT_NOTCHES)
        rw_settle (m, RW_HOOP_NOTCH_ARC + k, m->hoop_ro * angle);
    }
  for (int k = 1; k <= count; k++)
    {
      int next = k < count ? k + 1 : 1;
      double gap = rw_settled (m, RW_HOOKS_ANGLE + next) - rw_settled (m, RW_HOOKS_ANGLE + k);

      rw_settle (m, RW_HOOKS_CHORD + k, 2 * m->ro * fabs (sin (gap * RW_RAD / 2)));
    }
}

static void
clearances (RwModel *m)
{
  const RwDesign *d = m->d;
  double neck = INFINITY, tail = INFINITY;

  for (int k = 1; k <= d->hooks_count; k++)
    {
      double angle = fmod (rw_settled (m, RW_HOOKS_ANGLE + k), 360);
      double from_neck = MIN (fabs (angle), 360 - fabs (angle)) * RW_RAD;

      if (isnan (from_neck))
        return;
      neck = MIN (neck, from_neck);
      tail = MIN (tail, G_PI - from_neck);
    }
  rw_settle (m, RW_HOOKS_HEEL_CLEARANCE, m->ro * neck - m->ro * heel_half_angle (m) - d->shoes_width / 2);
  /* Set over, the tailpiece comes as much nearer to the hooks of one side. */
  rw_settle (m, RW_HOOKS_TAIL_CLEARANCE,
             m->ro * tail - d->tailpiece_width / 2 - fabs (d->tailpiece_offset) - d->shoes_width / 2);
}

/* Rod length of a hook bent square: two straights and the arc of its neutral line.
 * Source: arc = angle (R + K T), Machinery's Handbook, 31st ed. (2020), bending of sheet metal. */
static double
blank_length (const RwDesign *d, double leg)
{
  double tangent = d->hooks_bend_radius + d->hooks_rod / 2;

  return leg - tangent + d->hooks_claw - tangent
         + G_PI / 2 * (d->hooks_bend_radius + d->hooks_k_factor * d->hooks_rod);
}

static void
shape (RwModel *m)
{
  const RwDesign *d = m->d;
  double seat = rw_settle (m, RW_HOOKS_SEAT_OFFSET,
                           MAX (0, d->hooks_bend_radius - d->hoop_edge_round) * (1 - G_SQRT2 / 2));
  /* Axis of the claw over the head plane, at first contact. */
  double claw = d->hoop_height - d->head_collar - d->hoop_notch_depth + seat + d->hooks_rod / 2;
  double leg = rw_settle (m, RW_HOOKS_LEG,
                          claw + m->bolt_depth + d->shoes_height / 2 + d->hooks_nut_height + d->hooks_spare);
  double blank = rw_settle (m, RW_HOOKS_BLANK, blank_length (d, leg));
  double cut = rw_settle (m, RW_HOOKS_CUT, blank + 2 * d->hooks_trim);

  rw_settle (m, RW_HOOKS_THREAD_LENGTH, d->hooks_nut_height + d->hooks_spare + d->hoop_travel + d->hooks_reserve);
  rw_settle (m, RW_HOOKS_ROD_TOTAL, d->hooks_count * (cut + d->shop_rod_kerf));

  double tightened = claw - d->hoop_travel;
  double out = m->ro + d->shoes_stand_off - (m->hoop_ro + seat + d->hooks_rod / 2);
  rw_settle (m, RW_HOOKS_LEAN, atan (out / (tightened + m->bolt_depth)) / RW_RAD);
  rw_settle (m, RW_HOOKS_TIP_OVER_BACK, tightened - leg + d->rim_tone_ring_height + d->rim_height);
}

/* Ten bolts turned alike to one torque scatter by 8.4 % in their loads: two such deviations each way.
 * Source: R. Budynas & J. Nisbett, Shigley's Mechanical Engineering Design, table 8-14. */
#define LOAD_SCATTER (2 * 0.084)

static void
tightening (RwModel *m)
{
  double load = rw_settled (m, RW_HEAD_LOAD_PER_HOOK);
  double arm = rw_threads[m->d->hooks_thread].major_mm;

  rw_settle (m, RW_HOOKS_STRESS, load / rw_threads[m->d->hooks_thread].stress_area_mm2);
  rw_settle (m, RW_HOOKS_LOAD_LOW, load * (1 - LOAD_SCATTER));
  rw_settle (m, RW_HOOKS_LOAD_HIGH, load * (1 + LOAD_SCATTER));
  rw_settle (m, RW_HOOKS_TORQUE, RW_NUT_FACTOR_PLAIN * load * arm);
  rw_settle (m, RW_HOOKS_TORQUE_LOW, RW_NUT_FACTOR_GREASED * load * arm);
  rw_settle (m, RW_HOOKS_TORQUE_HIGH, RW_NUT_FACTOR_BLACK * load * arm);
}

void
rw_model_hooks (RwModel *m)
{
  const RwDesign *d = m->d;
  double below = rw_settle (m, RW_SHOES_HOLE_BELOW_EDGE, d->shoes_below_edge - d->rim_tone_ring_height);

  m->bolt_depth = below + d->rim_tone_ring_height;
  places (m);
  clearances (m);
  shape (m);
  tightening (m);
  rw_settle (m, RW_SHOES_TAP_DRILL, rw_threads[d->shoes_thread].tap_drill_mm);
}
