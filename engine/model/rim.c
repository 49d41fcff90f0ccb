/* The rim: rings of mitred segments, staves, or bent plies; turned round. */
#include "rim.h"

/* Mitre, edges and strip of a segment, or of a stave, for the polygon that holds the turned wall with its
 * allowance: outer polygon tangent to the rough outside, inner polygon's corners on the rough inside.
 * Source: American Association of Woodturners, Segmenting 101, 2014. */
static void
segment_rows (RwModel *m, double outside, double inside)
{
  const RwDesign *d = m->d;
  double n = d->rim_segments;
  double half = G_PI / n; /* of a segment's share of the ring, which no cut changes */
  double mitre = rw_settle (m, RW_RIM_SEGMENT_MITRE, 180 / n) * RW_RAD;
  double error = d->rim_mitre_error * RW_RAD;
  double least = rw_settle (m, RW_RIM_SEGMENT_MIN_WIDTH, outside - inside * cos (half));

  m->strip_width = d->rim_strip_width > 0 ? d->rim_strip_width : least;
  double outer = rw_settle (m, RW_RIM_SEGMENT_OUTER_EDGE, 2 * outside * tan (half));
  double inner = rw_settle (m, RW_RIM_SEGMENT_INNER_EDGE, outer - 2 * m->strip_width * tan (half));

  if (d->rim_construction == RW_RIM_SEGMENTS)
    {
      double kerf = d->shop_kerf / cos (mitre), mean = (outer + inner) / 2;

      rw_settle (m, RW_RIM_SEGMENT_FEED, mean + kerf);
      rw_settle (m, RW_RIM_COURSE_STRIP, n * mean + (n + 1) * kerf + m->strip_width * tan (mitre));
    }
  rw_settle (m, RW_RIM_JOINT_GAP, 2 * outside * sin (n * error));
  if (fmod (n, 2) == 0)
    {
      double face = m->strip_width / cos (mitre);

      rw_settle (m, RW_RIM_HALF_TRIM, face * sin (n * error / 2));
      rw_settle (m, RW_RIM_HALF_OVAL, 2 * outside * sin (n * error / 2));
    }
}

static void
course_rows (RwModel *m)
{
  const RwLengthList *courses = &m->d->rim_course_thickness;
  double pitch = 360 / m->d->rim_segments, sum = 0;

  for (int k = 1; k <= courses->count; k++)
    {
      sum += courses->at[k - 1];
      rw_settle (m, RW_RIM_COURSE_ROUGH + k, courses->at[k - 1] + m->d->rim_flatten_allowance);
      rw_settle (m, RW_RIM_COURSE_TURN + k, fmod ((k - 1) * m->d->rim_course_turn * pitch, pitch));
    }
  rw_settle (m, RW_RIM_BLANK_HEIGHT, sum);
}

static void
ply_rows (RwModel *m, double inside)
{
  const RwDesign *d = m->d;
  /* A wall that is a whole number of plies needs no ply more for a rounding error. */
  double wanted = (d->rim_wall + 2 * d->rim_turning_allowance) / d->rim_ply_thickness;
  double count = rw_settle (m, RW_RIM_PLY_COUNT, ceil (wanted - 1e-9));

  for (int k = 1; k <= count && k <= RW_PLIES_MAX; k++)
    {
      double radius = inside + (k - 0.5) * d->rim_ply_thickness;

      rw_settle (m, RW_RIM_PLY_LENGTH + k, 2 * G_PI * radius + d->rim_ply_scarf);
    }
}

static double
density (int wood)
{
  return rw_woods[wood].density_kg_m3;
}

int
rw_rim_course_wood (const RwDesign *d, int course)
{
  /* A list of woods that is too short goes on with its last wood. */
  return d->rim_course_wood.at[MIN (course, d->rim_course_wood.count) - 1];
}

double
rw_rim_course_kept (const RwDesign *d, int course, double *top)
{
  double from = 0;

  for (int k = 1; k < course; k++)
    from += d->rim_course_thickness.at[k - 1];
  if (top != NULL)
    *top = from;
  return CLAMP (d->rim_height - from, 0, d->rim_course_thickness.at[course - 1]);
}

/* Holes and edge shaping are not taken off. */
static double
mass_g (const RwModel *m)
{
  const RwDesign *d = m->d;
  double area = G_PI * (m->ro * m->ro - m->ri * m->ri), weight = 0;

  if (d->rim_construction != RW_RIM_SEGMENTS)
    weight = d->rim_height * density (rw_rim_course_wood (d, 1));
  else
    for (int k = 1; k <= d->rim_course_thickness.count; k++)
      weight += rw_rim_course_kept (d, k, NULL) * density (rw_rim_course_wood (d, k));
  return area * weight * 1e-6; /* mm3 kg/m3 to g */
}

void
rw_model_rim (RwModel *m)
{
  const RwDesign *d = m->d;
  double a = d->rim_turning_allowance;

  m->ro = d->rim_outer_diameter / 2;
  m->ri = rw_settle (m, RW_RIM_INNER_DIAMETER, d->rim_outer_diameter - 2 * d->rim_wall) / 2;
  rw_settle (m, RW_RIM_CIRCUMFERENCE, G_PI * d->rim_outer_diameter);

  double corner = 2 * (m->ro + a);
  if (d->rim_construction == RW_RIM_PLIES)
    ply_rows (m, m->ri - a);
  else
    {
      segment_rows (m, m->ro + a, m->ri - a);
      corner /= cos (G_PI / d->rim_segments);
    }
  if (d->rim_construction == RW_RIM_SEGMENTS)
    course_rows (m);
  if (d->rim_construction == RW_RIM_STAVES)
    rw_settle (m, RW_RIM_STAVE_LENGTH, d->rim_height + 2 * a);

  corner = rw_settle (m, RW_RIM_CORNER_DIAMETER, corner);
  rw_settle (m, RW_RIM_SPINDLE_LIMIT, 60000 * d->shop_rim_speed / (G_PI * corner));
  rw_settle (m, RW_RIM_MASS, m->ri > 0 ? mass_g (m) : NAN);
}
