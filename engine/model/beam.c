#include "beam.h"

#include "plan.h"

typedef struct
{
  double string0, string1, rod0, rod1;
} Integrals;

static RwSection
section_at (const RwBeam *beam, double x, double width, gboolean channel)
{
  const RwDesign *d = beam->m->d;
  double neck = beam->m->guessed.wood * rw_woods[d->neck_wood].modulus_gpa * 1000;
  double board = beam->m->guessed.wood * rw_woods[d->neck_board_wood].modulus_gpa * 1000;
  double t = d->fretboard_thickness;
  double first = beam->m->r->plan.fret_x[1];
  double depth = d->neck_thickness_first - t
                 + (d->neck_thickness_last - d->neck_thickness_first) * (x - first) / (beam->heel_start - first);
  double cut_w = channel ? d->neck_rod_width : 0, cut_d = d->neck_rod_depth;

  /* Moments about the glue line, downwards positive. */
  double ea = board * width * t + neck * (width * depth * beam->quadrant.area - cut_w * cut_d);
  double es = -board * width * t * t / 2
              + neck * (width * depth * depth * beam->quadrant.first - cut_w * cut_d * cut_d / 2);
  double ei = board * width * t * t * t / 3
              + neck * (width * depth * depth * depth * beam->quadrant.second - cut_w * cut_d * cut_d * cut_d / 3);

  return (RwSection){ ei - es * es / ea, es / ea + t };
}

RwSection
rw_beam_section (const RwBeam *beam, double x, gboolean channel)
{
  return section_at (beam, x, rw_plan_width (&beam->m->r->plan, x), channel);
}

/* Sum of the pulls present at x times the height of the string line over the centroid, N mm. */
static double
string_moment (const RwBeam *beam, double x, double centroid)
{
  const RwModel *m = beam->m;
  const RwPlan *plan = &m->r->plan;
  double hn = m->d->nut_string_height;
  double height = m->crown + hn + (beam->bridge_plane - hn) * x / plan->length + centroid;

  return (beam->pull + (plan->has_short && x >= plan->short_x ? beam->pull_short : 0)) * height;
}

static void
find_widths (const RwBeam *beam, double a, double b, double widths[4])
{
  for (int i = 0; i < 4; i++)
    widths[i] = rw_plan_width (&beam->m->r->plan, (a + b) / 2 + (b - a) / 2 * rw_gauss_node[i]);
}

/* Integrals over a piece in which nothing jumps, of which the widths are known. */
static Integrals
integrate (const RwBeam *beam, double a, double b, const double widths[4])
{
  Integrals sum = { 0, 0, 0, 0 };
  double middle = (a + b) / 2, half = (b - a) / 2;
  gboolean channel = middle > beam->rod_from && middle < beam->rod_to;

  for (int i = 0; i < 4; i++)
    {
      double x = middle + half * rw_gauss_node[i];
      RwSection section = section_at (beam, x, widths[i], channel);
      double k = half * rw_gauss_weight[i] * string_moment (beam, x, section.centroid) / section.ei;
      double r = channel ? half * rw_gauss_weight[i] / section.ei : 0;

      sum.string0 += k;
      sum.string1 += k * x;
      sum.rod0 += r;
      sum.rod1 += r * x;
    }
  return sum;
}

/* The whole piece after place i. */
static Integrals
integrate_piece (RwBeam *beam, int i)
{
  double a = beam->x[i], b = beam->x[i + 1];

  if (a != beam->width_from[i] || b != beam->width_to[i])
    {
      find_widths (beam, a, b, beam->width[i]);
      beam->width_from[i] = a;
      beam->width_to[i] = b;
    }
  return integrate (beam, a, b, beam->width[i]);
}

static void
add_place (RwBeam *beam, double x)
{
  int at = beam->count;

  if (!(x > 0 && x < beam->heel_start))
    return;
  while (at > 0 && beam->x[at - 1] > x)
    {
      beam->x[at] = beam->x[at - 1];
      at--;
    }
  beam->x[at] = x;
  beam->count++;
}

/* Every place where the section or the moment jumps or bends, and every fret. */
static void
lay_out_places (RwBeam *beam)
{
  const RwPlan *plan = &beam->m->r->plan;

  beam->count = 1;
  beam->x[0] = 0;
  for (int n = 1; n <= RW_FRETS_MAX; n++)
    add_place (beam, plan->fret_x[n]);
  if (plan->has_short)
    {
      add_place (beam, plan->shoulder_from);
      add_place (beam, plan->shoulder_to);
      add_place (beam, plan->short_x);
    }
  add_place (beam, beam->rod_from);
  add_place (beam, beam->rod_to);
  beam->x[beam->count++] = beam->heel_start;
}

void
rw_beam_bend (RwBeam *beam, const RwModel *m, double heel_start, double channel_end, double bridge_plane)
{
  gboolean rod = m->d->neck_rod_present == RW_YES;

  beam->m = m;
  beam->quadrant = rw_profile_quadrant (m->d->neck_section);
  beam->heel_start = MAX (heel_start, 0);
  beam->rod_from = rod ? MAX (m->d->neck_rod_start, 0) : 0;
  beam->rod_to = rod ? MIN (channel_end, heel_start) : 0;
  beam->bridge_plane = bridge_plane;
  beam->pull = beam->pull_short = 0;
  for (int i = 1; i <= m->r->plan.full; i++)
    beam->pull += m->tension[i];
  if (m->r->plan.has_short)
    beam->pull_short = m->tension[m->r->plan.strings];
  lay_out_places (beam);

  int last = beam->count - 1;
  beam->string0[last] = beam->string1[last] = beam->rod0[last] = beam->rod1[last] = 0;
  for (int i = last - 1; i >= 0; i--)
    {
      Integrals piece = integrate_piece (beam, i);

      beam->string0[i] = beam->string0[i + 1] + piece.string0;
      beam->string1[i] = beam->string1[i + 1] + piece.string1;
      beam->rod0[i] = beam->rod0[i + 1] + piece.rod0;
      beam->rod1[i] = beam->rod1[i + 1] + piece.rod1;
    }
}

/* Integrals from x, between places i and i + 1, to xh. */
static Integrals
integrals_from (const RwBeam *beam, int i, double x)
{
  Integrals piece = { 0, 0, 0, 0 };

  if (x == beam->x[i])
    return (Integrals){ beam->string0[i], beam->string1[i], beam->rod0[i], beam->rod1[i] };
  if (x < beam->x[i + 1])
    {
      double widths[4];

      find_widths (beam, x, beam->x[i + 1], widths);
      piece = integrate (beam, x, beam->x[i + 1], widths);
    }
  piece.string0 += beam->string0[i + 1];
  piece.string1 += beam->string1[i + 1];
  piece.rod0 += beam->rod0[i + 1];
  piece.rod1 += beam->rod1[i + 1];
  return piece;
}

double
rw_beam_lift (const RwBeam *beam, double x, double rod)
{
  int i = 0;

  if (!(x < beam->heel_start))
    return 0;
  while (i + 2 < beam->count && beam->x[i + 1] <= x)
    i++;
  Integrals s = integrals_from (beam, i, x);
  return s.string1 - rod * s.rod1 - x * (s.string0 - rod * s.rod0);
}

/* The place between i and i + 1 where v runs parallel to its chord, by Newton's method on the slope. */
static double
parallel_place (const RwBeam *beam, int i, double rod, double chord)
{
  double a = beam->x[i], b = beam->x[i + 1];
  double ga = beam->string0[i] - rod * beam->rod0[i] - chord;
  double gb = beam->string0[i + 1] - rod * beam->rod0[i + 1] - chord;
  double x = a + (b - a) * ga / (ga - gb);

  for (int step = 0; step < 3; step++)
    {
      Integrals s = integrals_from (beam, i, x);
      double g = s.string0 - rod * s.rod0 - chord;

      x = CLAMP (x + g * (b - a) / (ga - gb), a, b);
    }
  return x;
}

/* Relief, and by how much a rod moment of 1 N mm takes it down. */
static double
relief_and_rate (const RwBeam *beam, double rod, double *rate)
{
  double v0 = rw_beam_lift (beam, 0, rod), r0 = beam->rod1[0];
  double xh = beam->heel_start, chord = v0 / xh, most = 0;

  *rate = 0;
  for (int i = 0; i + 1 < beam->count; i++)
    {
      double here = beam->string0[i] - rod * beam->rod0[i] - chord;
      double next = beam->string0[i + 1] - rod * beam->rod0[i + 1] - chord;

      if (!(here > 0 && next <= 0))
        continue;
      double x = parallel_place (beam, i, rod, chord);
      Integrals s = integrals_from (beam, i, x);
      double v = s.string1 - rod * s.rod1 - x * (s.string0 - rod * s.rod0);
      double under = v0 * (1 - x / xh) - v;
      if (under > most)
        {
          most = under;
          *rate = r0 * (1 - x / xh) - (s.rod1 - x * s.rod0);
        }
    }
  return most;
}

double
rw_beam_relief (const RwBeam *beam, double rod)
{
  double rate;

  return beam->heel_start > 0 ? relief_and_rate (beam, rod, &rate) : 0;
}

static double
relief_of_rod (double rod, const void *data)
{
  return rw_beam_relief (data, rod);
}

/* Relief is the largest of many lines in the rod moment, hence convex: Newton's method from a slack rod walks up
 * to the wanted relief from one side and never past it. */
double
rw_beam_rod (const RwBeam *beam, double wanted, gboolean *reached)
{
  double rod = 0, rate;

  *reached = TRUE;
  if (!(beam->heel_start > 0))
    return 0;
  for (int step = 0; step < 100; step++)
    {
      double excess = relief_and_rate (beam, rod, &rate) - wanted;

      if (!(excess > 1e-13))
        return rod;
      if (!(rate > 1e-12))
        break;
      rod += excess / rate;
    }
  *reached = FALSE;
  rw_least (relief_of_rod, beam, 0, rod, &rod);
  return rod;
}
