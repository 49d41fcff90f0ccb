#include "ring.h"

#include <glib.h>
#include <math.h>

double
rw_ring_along (double load, double radius, double ei)
{
  return (G_PI / 4 - 2 / G_PI) * load * radius * radius * radius / ei;
}

double
rw_ring_shrink (double q, double radius, double ea)
{
  return q * radius * radius / ea;
}

double
rw_ring_buckling (double radius, double ei)
{
  return 3 * ei / (radius * radius * radius);
}

double
rw_ring_roll (double m, double radius, double ei)
{
  return m * radius * radius / ei;
}
