/* The rim under the head's tension and the strings' pull.  Lengths mm, forces N, stress N/mm2.  Formulas and their
 * source in ring.h; the stress adds direct compression and the bending of the roll. */
#include "rim.h"
#include "ring.h"

/* Staves have their grain upright: round the rim the wood is bent across the grain, where it has 0.132 of its
 * modulus radially and 0.065 tangentially (sugar maple, USDA Forest Products Laboratory, Wood Handbook). */
#define ACROSS_GRAIN ((0.132 + 0.065) / 2)

/* N/mm2 round the rim.  Segments are taken as one with their neighbours, courses as lying side by side. */
static double
modulus (const RwDesign *d)
{
  double sum = 0, height = 0;

  if (d->rim_construction != RW_RIM_SEGMENTS)
    {
      double along = 1000 * rw_woods[rw_rim_course_wood (d, 1)].modulus_gpa;

      return d->rim_construction == RW_RIM_STAVES ? ACROSS_GRAIN * along : along;
    }
  for (int k = 1; k <= d->rim_course_thickness.count; k++)
    {
      double kept = rw_rim_course_kept (d, k, NULL);

      sum += kept * 1000 * rw_woods[rw_rim_course_wood (d, k)].modulus_gpa;
      height += kept;
    }
  return sum / height;
}

void
rw_model_rim_load (RwModel *m)
{
  const RwDesign *d = m->d;
  double wall = m->ro - m->ri, height = d->rim_height, radius = (m->ro + m->ri) / 2;
  double area = wall * height, e = modulus (d);
  double upright = wall * height * height * height / 12, flat = height * wall * wall * wall / 12;
  /* Frictionless full turn over the edge: the line load is the tension. */
  double q = rw_settled (m, RW_HEAD_TENSION) * 1e-3, arm = height / 2 + d->rim_tone_ring_height;

  if (!(wall > 0 && m->ri > 0))
    return;
  rw_settle (m, RW_RIM_HEAD_SQUEEZE, rw_ring_shrink (q, m->rh, e * area));
  rw_settle (m, RW_RIM_HEAD_ROLL, arm * rw_ring_roll (q * arm, radius, e * upright));
  rw_settle (m, RW_RIM_LOAD_STRESS, q * m->rh / area + q * arm * radius * (height / 2) / upright);
  rw_settle (m, RW_RIM_BUCKLING, rw_ring_buckling (radius, e * flat) / q);
  rw_settle (m, RW_RIM_STRING_OVAL, rw_ring_along (rw_settled (m, RW_STRINGS_TENSION_TOTAL), radius, e * flat));
}
