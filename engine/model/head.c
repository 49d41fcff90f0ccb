/* The head as a membrane of a circular frame, with the air that moves with it: tension, tap note, load on the hooks.
 *
 * Radii mm, tension N/m, frequencies Hz; a mode is RW_MODE_01, RW_MODE_11 or RW_MODE_21, by nodal diameters and
 * circles.
 * Neglects  bending stiffness of the film; bridge and strings on the head, which move its modes apart; what the
 *           pot's air does to them.  The rear face of an open back looks into the pot, which is neither the wide
 *           baffle of the air loading nor closed, and no figure for it is in print: (0,1), which moves the most air,
 *           is the least sure. A closed back would raise it.  The band of the tension stands for all of these.
 * Source    membrane modes: P. M. Morse, Vibration and Sound, 1948 (from memory); air: below.
 */
#include "model.h"

/* Zeros j_m1 of the Bessel functions J_m, and the air-loading factor beta_m of mode (m,1), per face, baffled,
 * quasi-static.  Zeros: Abramowitz & Stegun, Handbook of Mathematical Functions, table 9.5.  beta: integral
 * (1/N) int W(k)^2 dk, worked out for the incompressible case; checked with a rigid piston, 8/(3 pi). */
static const double bessel_zero[] = { 2.404826, 3.831706, 5.135622 };
static const double air_factor[] = { 0.7464, 0.3301, 0.2258 };

#define AIR_KG_M3 1.2

/* f/sqrt(T): f = j/(2 pi Rh) sqrt(T/(sigma + 2 beta rho_air Rh)), Hz and N/m. */
static double
frequency_per_root_tension (const RwDesign *d, double radius_mm, int mode)
{
  double radius = radius_mm * 1e-3;
  double film = d->head_density * d->head_thickness * 1e-3;
  double moved = film + 2 * air_factor[mode] * AIR_KG_M3 * radius;

  return bessel_zero[mode] / (2 * G_PI * radius) / sqrt (moved);
}

static double
frequency_of (const RwDesign *d, double radius_mm, double tension, int mode)
{
  return frequency_per_root_tension (d, radius_mm, mode) * sqrt (tension);
}

static double
tension_of (const RwDesign *d, double radius_mm, double frequency, int mode)
{
  double root = frequency / frequency_per_root_tension (d, radius_mm, mode);

  return root * root;
}

/* The tension if another of the three modes was heard: one tap note fixes it to about a factor of two. */
static void
tension_band (RwModel *m, double frequency)
{
  double low = INFINITY, high = 0;

  for (int mode = RW_MODE_01; mode <= RW_MODE_21; mode++)
    {
      double tension = tension_of (m->d, m->rh, frequency, mode);

      low = MIN (low, tension);
      high = MAX (high, tension);
    }
  rw_settle (m, RW_HEAD_TENSION_LOW, low);
  rw_settle (m, RW_HEAD_TENSION_HIGH, high);
}

void
rw_model_head (RwModel *m)
{
  const RwDesign *d = m->d;
  double tension;

  m->rh = rw_settle (m, RW_HEAD_RADIUS, d->rim_outer_diameter / 2 - d->rim_crest_inset);
  if (!(m->rh > 0))
    m->rh = NAN;
  if (d->head_tension_from == RW_TENSION_FROM_TAP)
    {
      double tap = rw_settle (m, RW_HEAD_TAP_FREQUENCY, d->head_tap_frequency);

      tension = rw_settle (m, RW_HEAD_TENSION, tension_of (d, m->rh, tap, d->head_tap_mode));
      tension_band (m, tap);
    }
  else
    {
      tension = rw_settle (m, RW_HEAD_TENSION, d->head_tension);
      rw_settle (m, RW_HEAD_TAP_FREQUENCY, frequency_of (d, m->rh, tension, d->head_tap_mode));
    }

  /* Frictionless full turn over the edge: an upper bound. */
  double load = rw_settle (m, RW_HEAD_LOAD, 2 * G_PI * m->rh * 1e-3 * tension);
  rw_settle (m, RW_HEAD_LOAD_PER_HOOK, load / d->hooks_count);
}

/* The lowest mode of the air in the pot that goes from side to side: 1.841184, the first zero of J_1', over 2 pi Ri.
 * Source: D. Politzer, arXiv 1608.04620, who measured close to it on an open back.  Speed of sound: 331.3 m/s at 0
 * degC, with the root of the absolute temperature (from memory).  Neglects what moves in and out under the back
 * edge, and the head, which this mode leaves at rest as a whole. */
void
rw_model_air (RwModel *m)
{
  double inside = 2e-3 * m->ri;
  double speed = 331.3 * sqrt (1 + m->d->setup_temperature / 273.15);

  if (inside > 0)
    rw_settle (m, RW_HEAD_AIR, 1.841183781 * speed / (G_PI * inside));
}
