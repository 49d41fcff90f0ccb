#include "feet.h"

double
rw_feet_influence (RwPoint2 p, RwPoint2 q, double radius, double tension)
{
  double r2 = radius * radius;
  double distance = hypot (p.x - q.x, p.y - q.y);
  /* |P - Q*| |Q|, written so that Q may be the centre. */
  double image = sqrt ((p.x * p.x + p.y * p.y) * (q.x * q.x + q.y * q.y) - 2 * r2 * (p.x * q.x + p.y * q.y) + r2 * r2);

  return log (image / (radius * distance)) / (2 * G_PI * tension * 1e-3);
}

/* A foot on itself: at the place of the foot, at the capacity radius from it. */
static double
own_influence (RwPoint2 p, double capacity, double radius, double tension)
{
  double room = radius * radius - p.x * p.x - p.y * p.y;

  return room > 0 ? log (room / (radius * capacity)) / (2 * G_PI * tension * 1e-3) : NAN;
}

double
rw_feet_sag (const RwDesign *d, double radius, double tension, double shares[3])
{
  double capacity = (d->bridge_foot_length + d->bridge_foot_width) / 4;
  double y = d->bridge_foot_spread / 2, x = d->bridge_offset;
  RwPoint2 middle = { x, 0 }, treble = { x, y }, bass = { x, -y };
  double outer = own_influence (treble, capacity, radius, tension) + rw_feet_influence (treble, bass, radius, tension);
  double s[3] = { 0.5, 0.5, 0 }, sag = outer / 2;

  if (d->bridge_feet >= 3)
    {
      /* Equal sinking of one foot in the middle (share p) and two alike (share q each), p + 2q = 1. */
      double own = own_influence (middle, capacity, radius, tension);
      double cross = rw_feet_influence (middle, treble, radius, tension);
      double p = (outer - 2 * cross) / (outer - 2 * cross + 2 * (own - cross));

      s[0] = p;
      s[1] = s[2] = (1 - p) / 2;
      sag = p * own + (1 - p) * cross;
    }
  if (shares != NULL)
    for (int i = 0; i < 3; i++)
      shares[i] = s[i];
  return isfinite (sag) ? sag : NAN;
}
