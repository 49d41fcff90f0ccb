#include "profile.h"

#include <math.h>

double
rw_profile_facet1 (double e)
{
  return exp2 (1 - 1 / e) - 1;
}

double
rw_profile_facet2 (double e)
{
  double ratio = pow (tan (22.5 * G_PI / 180), 1 / (e - 1)); /* v/u */
  double u = pow (1 + pow (ratio, e), -1 / e);
  double v = ratio * u;

  return (1 - pow (u, e - 1)) / pow (v, e - 1);
}

double
rw_profile_depth (double e, double w, double d, double y)
{
  if (!(y >= 0 && y <= w))
    return NAN;
  return d * pow (1 - pow (y / w, e), 1 / e);
}

/* Integral over v from 0 to 1 of (1 - v^e)^(1/e) v^k = B((k+1)/e, 1 + 1/e)/e.
 * Source: beta function, Abramowitz & Stegun, Handbook of Mathematical Functions, 6.2.1. */
static double
quadrant_moment (double e, int k)
{
  double p = (k + 1) / e, q = 1 + 1 / e;
  int sign; /* lgamma() would leave it in a global, which threads share */

  return exp (lgamma_r (p, &sign) + lgamma_r (q, &sign) - lgamma_r (p + q, &sign)) / e;
}

RwQuadrant
rw_profile_quadrant (double e)
{
  return (RwQuadrant){ quadrant_moment (e, 0), quadrant_moment (e, 1), quadrant_moment (e, 2) };
}
