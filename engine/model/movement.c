/* Seasonal movement of board and rim. */
#include "movement.h"

#include "moisture.h"
#include "rim.h"

double
rw_move_across (int wood, double grain)
{
  const RwWood *w = &rw_woods[wood];
  double radial = w->cr > 0 ? w->cr : w->ct;

  return w->ct > 0 ? radial + grain * (w->ct - radial) : NAN;
}

double
rw_move_wall (const RwDesign *d, double grain)
{
  int courses = d->rim_construction == RW_RIM_SEGMENTS ? d->rim_course_thickness.count : 1;
  double largest = 0;

  for (int k = 1; k <= courses; k++)
    {
      double moves = rw_move_across (rw_rim_course_wood (d, k), grain);

      if (isnan (moves))
        return NAN;
      largest = MAX (largest, moves);
    }
  return d->rim_wall * largest;
}

double
rw_move_height (const RwDesign *d, double depth, double grain)
{
  double sum = 0;

  if (d->rim_construction == RW_RIM_STAVES)
    return 0;
  if (d->rim_construction == RW_RIM_PLIES)
    return depth * rw_move_across (rw_rim_course_wood (d, 1), grain);
  for (int k = 1; k <= d->rim_course_thickness.count; k++)
    {
      double top, kept = rw_rim_course_kept (d, k, &top), part = MIN (kept, depth - top);

      if (part > 0)
        sum += part * rw_move_across (rw_rim_course_wood (d, k), grain);
    }
  return sum;
}

void
rw_model_movement (RwModel *m)
{
  const RwDesign *d = m->d;
  double grain = m->guessed.grain, shop = rw_moisture_at (d->setup_temperature, d->setup_humidity_shop);
  double low = rw_settle (m, RW_MOVE_MOISTURE_LOW, rw_moisture_at (d->setup_temperature, d->setup_humidity_low));
  double high = rw_settle (m, RW_MOVE_MOISTURE_HIGH, rw_moisture_at (d->setup_temperature, d->setup_humidity_high));
  double dry = low - shop, damp = high - shop;
  double board = rw_settled (m, RW_NECK_WIDTH_AT_RIM) * rw_move_across (d->neck_board_wood, grain);
  double wall = rw_move_wall (d, grain);
  double height = d->rim_construction == RW_RIM_STAVES ? NAN : rw_move_height (d, d->rim_height, grain);

  double shrink = rw_settle (m, RW_MOVE_BOARD_WIDTH_LOW, board * dry);
  rw_settle (m, RW_MOVE_BOARD_WIDTH_HIGH, board * damp);
  rw_settle (m, RW_MOVE_RIM_WALL_LOW, wall * dry);
  rw_settle (m, RW_MOVE_RIM_WALL_HIGH, wall * damp);
  rw_settle (m, RW_MOVE_RIM_HEIGHT_LOW, height * dry);
  rw_settle (m, RW_MOVE_RIM_HEIGHT_HIGH, height * damp);
  if (d->frets_count >= 1 && isfinite (shrink))
    rw_settle (m, RW_MOVE_FRET_END, MAX (0, -shrink / 2 - d->frets_end_inset));
}
