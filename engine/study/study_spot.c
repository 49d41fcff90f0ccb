/* Finding one's way among the numbers of a plot, by pointing and by arrow keys. */
#include "study_parts.h"

#define HAIR 1e-6 /* mm: nearer than that is the same place */

static const RwStudySpot *
spot_at (const GArray *spots, guint i)
{
  return &g_array_index (spots, RwStudySpot, i);
}

/* How far a place is beside a plot; 0 over, under and in it. */
static double
beside (const RwStudySpot *spot, RwPoint at)
{
  return fmax (0, fmax (spot->frame.x0 - at.x, at.x - spot->frame.x1));
}

/* Which of two spots is meant at a place: first the plot counts, then the distance across, then up. */
static gboolean
is_nearer (const RwStudySpot *spot, const RwStudySpot *best, RwPoint at)
{
  double plot = beside (spot, at) - beside (best, at);
  double over = fabs (spot->at.x - at.x) - fabs (best->at.x - at.x);
  double up = fabs (spot->at.y - at.y) - fabs (best->at.y - at.y);

  if (fabs (plot) > HAIR)
    return plot < 0;
  if (fabs (over) > HAIR)
    return over < 0;
  return up < 0;
}

int
rw_study_nearest (const GArray *spots, RwPoint at)
{
  int best = spots->len > 0 ? 0 : -1;

  for (guint i = 1; i < spots->len; i++)
    if (is_nearer (spot_at (spots, i), spot_at (spots, (guint) best), at))
      best = (int) i;
  return best;
}

/* In the order of the list, which goes column by column. */
static int
step_along (const GArray *spots, int from, int dx)
{
  int to = CLAMP (from + dx, 0, (int) spots->len - 1), step = dx > 0 ? -1 : 1;

  while (to != from && spot_at (spots, (guint) to)->column != spot_at (spots, (guint) from)->column)
    to += step;
  return to;
}

/* The spot of the next column that has any, in the row that is nearest. */
static int
step_over (const GArray *spots, int from, int dy)
{
  const RwStudySpot *start = spot_at (spots, (guint) from);
  int to = from, next = -1;

  for (int i = from; i >= 0 && i < (int) spots->len; i += dy)
    {
      const RwStudySpot *spot = spot_at (spots, (guint) i);

      if (spot->column == start->column)
        continue;
      if (next >= 0 && (int) spot->column != next)
        break;
      if (next < 0 || ABS ((int) spot->row - (int) start->row)
                        < ABS ((int) spot_at (spots, (guint) to)->row - (int) start->row))
        to = i;
      next = (int) spot->column;
    }
  return to;
}

int
rw_study_step (const GArray *spots, int from, int dx, int dy)
{
  if (spots->len == 0)
    return -1;
  if (from < 0 || from >= (int) spots->len)
    return 0;
  return dx != 0 ? step_along (spots, from, dx) : dy != 0 ? step_over (spots, from, dy) : from;
}
