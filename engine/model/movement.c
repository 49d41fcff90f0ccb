/* Seasonal movement of board and rim: size x coefficient x change of moisture from the shop's.
 * Source: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190, 2010, eq. 13-2; the plain coefficient is
 * used outside 6 to 14 % too. */
#include "moisture.h"
#include "rim.h"

/* Change per size and per % of moisture across the grain: tangential for flat-sawn wood, which moves most.  NaN where it
 * is not known. */
static double
across_grain (const RwModel *m, int wood)
{
  const RwWood *w = &rw_woods[wood];
  double radial = w->cr > 0 ? w->cr : w->ct;

  return w->ct > 0 ? radial + m->guessed.grain * (w->ct - radial) : NAN;
}

/* Of the woods used, the largest: the rim moves at least that much somewhere. */
static double
largest_of_rim (const RwModel *m)
{
  const RwDesign *d = m->d;
  int courses = d->rim_construction == RW_RIM_SEGMENTS ? d->rim_course_thickness.count : 1;
  double largest = 0;

  for (int k = 1; k <= courses; k++)
    {
      double moves = across_grain (m, rw_rim_course_wood (d, k));

      if (isnan (moves))
        return NAN;
      largest = MAX (largest, moves);
    }
  return largest;
}

/* Change of rim height per % of moisture, mm.  Staves stand with the grain upright: no row. */
static double
height_rate (const RwModel *m)
{
  const RwDesign *d = m->d;
  double sum = 0;

  if (d->rim_construction == RW_RIM_STAVES)
    return NAN;
  if (d->rim_construction == RW_RIM_PLIES)
    return d->rim_height * across_grain (m, rw_rim_course_wood (d, 1));
  for (int k = 1; k <= d->rim_course_thickness.count; k++)
    {
      double kept = rw_rim_course_kept (d, k, NULL);

      if (kept > 0)
        sum += kept * across_grain (m, rw_rim_course_wood (d, k));
    }
  return sum;
}

void
rw_model_movement (RwModel *m)
{
  const RwDesign *d = m->d;
  double shop = rw_moisture_at (d->setup_temperature, d->setup_humidity_shop);
  double low = rw_settle (m, RW_MOVE_MOISTURE_LOW, rw_moisture_at (d->setup_temperature, d->setup_humidity_low));
  double high = rw_settle (m, RW_MOVE_MOISTURE_HIGH, rw_moisture_at (d->setup_temperature, d->setup_humidity_high));
  double dry = low - shop, damp = high - shop;
  double board = rw_settled (m, RW_NECK_WIDTH_AT_RIM) * across_grain (m, d->neck_board_wood);
  double wall = d->rim_wall * largest_of_rim (m), height = height_rate (m);

  double shrink = rw_settle (m, RW_MOVE_BOARD_WIDTH_LOW, board * dry);
  rw_settle (m, RW_MOVE_BOARD_WIDTH_HIGH, board * damp);
  rw_settle (m, RW_MOVE_RIM_WALL_LOW, wall * dry);
  rw_settle (m, RW_MOVE_RIM_WALL_HIGH, wall * damp);
  rw_settle (m, RW_MOVE_RIM_HEIGHT_LOW, height * dry);
  rw_settle (m, RW_MOVE_RIM_HEIGHT_HIGH, height * damp);
  if (d->frets_count >= 1 && isfinite (shrink))
    rw_settle (m, RW_MOVE_FRET_END, MAX (0, -shrink / 2 - d->frets_end_inset));
}
