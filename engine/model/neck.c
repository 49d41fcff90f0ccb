/* Neck and fretboard: widths, lengths, thicknesses, facets, blank.  Lengths mm; geometry alone, in the frame of the
 * axis (solve.h), with the back's curve of profile.h. */
#include "plan.h"
#include "slots.h"
#include "profile.h"
#include "rim.h"

double
rw_neck_thickness (const RwResult *result, double x)
{
  const RwDesign *d = &result->used;
  double first = result->plan.fret_x[1];

  return d->neck_thickness_first
         + (d->neck_thickness_last - d->neck_thickness_first) * (x - first) / (result->side.heel_start - first);
}

/* Half widths square to the axis, from the neck's centre line. */
static double
half_treble (const RwPlan *plan, double x)
{
  return rw_plan_treble (plan, x) - rw_plan_centre (plan, x);
}

static double
half_bass (const RwPlan *plan, double x)
{
  return rw_plan_centre (plan, x) - rw_plan_bass (plan, x);
}

/* Widths at frets, which hang on nothing in the side view. */
static void
widths_at_frets (RwModel *m)
{
  const RwPlan *plan = &m->r->plan;
  int start = plan->has_short ? (int) m->d->fifth_start_fret : 0;
  int places[] = { 0, 1, start, 12, plan->last };

  for (guint i = 0; i < G_N_ELEMENTS (places); i++)
    rw_settle (m, RW_NECK_WIDTH + places[i], rw_plan_width (plan, plan->fret_x[places[i]]));
}

static void
widths_at_body (RwModel *m)
{
  RwPlan *plan = &m->r->plan;
  double to_rim = m->r->side.nut_to_rim;

  rw_settle (m, RW_NECK_WIDTH_AT_RIM, rw_plan_width (plan, to_rim));
  rw_settle (m, RW_NECK_WIDTH_AT_END, rw_plan_width (plan, rw_settled (m, RW_NECK_BOARD_LENGTH)));

  double slope = (rw_plan_middle (plan, to_rim) - plan->nut_middle) / to_rim;
  double angle = rw_settle (m, RW_NECK_SIDE_ANGLE, -atan (slope) / RW_RAD);
  plan->centre_slope = -tan (angle * RW_RAD);
}

/* Width of the board at fret n as it counts: measured or worked out. */
static double
width_at_fret (const RwModel *m, int n)
{
  double settled = rw_settled (m, RW_NECK_WIDTH + n);

  return isfinite (settled) ? settled : rw_plan_width (&m->r->plan, m->r->plan.fret_x[n]);
}

static void
frets (RwModel *m)
{
  const RwDesign *d = m->d;
  double lean = d->scale_square_to == RW_SQUARE_TO_NECK ? rw_settled (m, RW_NECK_SIDE_ANGLE) * RW_RAD : 0;
  double wire = 0;

  if (d->frets_count < 1)
    return;
  for (int n = 1; n <= d->frets_count; n++)
    {
      double across = width_at_fret (m, n) / cos (lean);
      double length = rw_settle (m, RW_FRETS_LENGTH + n, across - 2 * d->frets_end_inset);
      double tang = across - 2 * (d->fretboard_binding + d->fretboard_tang_clear);
      RwSlotPiece pieces[RW_STRINGS_MAX];

      rw_settle (m, RW_FRETS_TANG + n, d->fretboard_binding > 0 ? tang : length);
      wire += length + 6 * rw_slot_pieces (m->r, n, pieces);
    }
  rw_settle (m, RW_FRETS_WIRE_TOTAL, wire);
  double slot = rw_settle (m, RW_FRETS_SLOT_DEPTH, d->frets_tang_depth + 0.3);
  rw_settle (m, RW_FRETS_FLOOR, d->fretboard_thickness - slot);
}

static void
facets (RwModel *m, int n, double thickness)
{
  const RwPlan *plan = &m->r->plan;
  double e = m->d->neck_section, x = plan->fret_x[n];
  double depth = thickness - m->d->fretboard_thickness;
  double one = rw_profile_facet1 (e), two = rw_profile_facet2 (e);

  rw_settle (m, RW_NECK_FACET_SIDE + n, one * depth);
  rw_settle (m, RW_NECK_FACET_BACK_TREBLE + n, one * half_treble (plan, x));
  rw_settle (m, RW_NECK_FACET_BACK_BASS + n, one * half_bass (plan, x));
  rw_settle (m, RW_NECK_FACET2_SIDE + n, two * depth);
  rw_settle (m, RW_NECK_FACET2_BACK_TREBLE + n, two * half_treble (plan, x));
  rw_settle (m, RW_NECK_FACET2_BACK_BASS + n, two * half_bass (plan, x));
}

static void
thicknesses (RwModel *m)
{
  static const int places[] = { 1, 5, 7, 12 };

  for (guint i = 0; i < G_N_ELEMENTS (places); i++)
    {
      int n = places[i];
      double x = m->r->plan.fret_x[n];
      double thickness = rw_settle (m, RW_NECK_THICKNESS + n, rw_neck_thickness (m->r, x));

      if (x <= m->r->side.heel_start)
        facets (m, n, thickness);
    }
}

/* Wood left under an edge of the rod channel at x: the lesser of the two sides. */
static double
wood_under_rod (double x, const void *data)
{
  const RwModel *m = data;
  const RwDesign *d = m->d;
  double depth = rw_neck_thickness (m->r, x) - d->fretboard_thickness;
  double narrow = MIN (half_treble (&m->r->plan, x), half_bass (&m->r->plan, x));
  double curve = rw_profile_depth (d->neck_section, narrow, depth, d->neck_rod_width / 2);

  return (isfinite (curve) ? curve : 0) - d->neck_rod_depth;
}

static void
under_rod (RwModel *m)
{
  double from = MAX (m->d->neck_rod_start, 0);
  double to = MIN (m->r->side.nut_to_rim - m->d->neck_rod_end, m->r->side.heel_start);

  if (m->d->neck_rod_present == RW_YES && to >= from)
    rw_settle (m, RW_NECK_UNDER_ROD, rw_least (wood_under_rod, m, from, to, NULL));
}

void
rw_model_neck (RwModel *m)
{
  widths_at_frets (m);
  if (m->r->side.outcome == RW_SIDE_SOLVED)
    {
      widths_at_body (m);
      thicknesses (m);
      under_rod (m);
    }
  frets (m);
}

static double
minus_half_width (double x, const void *plan)
{
  return -MAX (half_treble (plan, x), half_bass (plan, x));
}

void
rw_model_blank (RwModel *m)
{
  const RwDesign *d = m->d;
  double tilt = d->headstock_angle * RW_RAD, allowance = d->neck_blank_allowance;
  double face = d->headstock_thickness - d->headstock_overlay;
  double drop = d->headstock_length * sin (tilt) + face * cos (tilt);

  rw_settle (m, RW_NECK_BLANK_DEPTH, MAX (drop, d->joint_heel_depth - d->fretboard_thickness) + allowance);
  if (m->r->side.outcome != RW_SIDE_SOLVED)
    return;

  double to_rim = m->r->side.nut_to_rim;
  rw_settle (m, RW_NECK_BLANK_LENGTH,
             to_rim + d->nut_thickness + d->headstock_length * cos (tilt) + rw_settled (m, RW_JOINT_HOLLOW)
               + allowance);
  double half = -rw_least (minus_half_width, &m->r->plan, 0, to_rim, NULL);
  double head = d->headstock_ears == RW_YES ? 0 : d->headstock_width / 2;
  rw_settle (m, RW_NECK_BLANK_WIDTH, 2 * MAX (half, head) + allowance);
}
