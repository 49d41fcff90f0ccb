#include "clash.h"

#include <math.h>

#define CROSSING 4         /* lettering over a narrow line: rather move by a row (trial.c), not more */
#define CLASH_OF_TEXT 1000 /* lettering and lettering, or a line through lettering */
#define ARC_PIECES 16      /* straight ones, for the dimension line of an angle */

/* Paper mm at small letters of 2.5 mm. */
#define CLEARANCE 0.4  /* kept between lettering and lines */
#define WORD_SPACE 1.2 /* kept between figures, lest two be read as one */
#define SEPARATION 2.0 /* dimension lines closer than this look like one */

/* Does the piece from a to b touch the box?  Liang and Barsky, "A new concept and method for line clipping",
 * ACM Transactions on Graphics 3 (1984). */
static gboolean
piece_in_box (RwPoint a, RwPoint b, RwBox box)
{
  double enter = 0, leave = 1;
  const double way[] = { b.x - a.x, b.y - a.y }, from[] = { a.x, a.y };
  const double low[] = { box.x0, box.y0 }, high[] = { box.x1, box.y1 };

  for (int i = 0; i < 2; i++)
    {
      if (way[i] == 0)
        {
          if (from[i] < low[i] || from[i] > high[i])
            return FALSE;
          continue;
        }
      double t0 = (low[i] - from[i]) / way[i], t1 = (high[i] - from[i]) / way[i];

      enter = MAX (enter, MIN (t0, t1));
      leave = MIN (leave, MAX (t0, t1));
      if (enter > leave)
        return FALSE;
    }
  return TRUE;
}

static RwBox
widened (RwBox box, double by)
{
  return (RwBox){ box.x0 - by, box.y0 - by, box.x1 + by, box.y1 + by };
}

static RwBox
box_of (RwPoint a, RwPoint b)
{
  return (RwBox){ MIN (a.x, b.x), MIN (a.y, b.y), MAX (a.x, b.x), MAX (a.y, b.y) };
}

/* Lettering against what stands there */

typedef struct
{
  RwBox    box;       /* upright, with a word space: against other lettering */
  RwBox    own;       /* in the frame of the base line, with clearance: against lines */
  RwPoint  at;
  double   cosine, sine;
  gboolean met[4]; /* by kind of obstacle */
} TextTest;

static RwPoint
in_frame (const TextTest *test, RwPoint p)
{
  double x = p.x - test->at.x, y = p.y - test->at.y;

  return (RwPoint){ x * test->cosine + y * test->sine, y * test->cosine - x * test->sine };
}

static gboolean
test_text (const RwObstacle *obstacle, gpointer data)
{
  TextTest *test = data;

  if (test->met[obstacle->kind])
    return TRUE;
  if (obstacle->kind == RW_OBSTACLE_TEXT)
    test->met[RW_OBSTACLE_TEXT] = obstacle->a.x < test->box.x1 && obstacle->b.x > test->box.x0
                                  && obstacle->a.y < test->box.y1 && obstacle->b.y > test->box.y0;
  else
    test->met[obstacle->kind] = piece_in_box (in_frame (test, obstacle->a), in_frame (test, obstacle->b),
                                              test->own);
  return TRUE;
}

static double
cost_of_text (const RwObstacles *obstacles, const RwPlacedText *text, double unit)
{
  double clearance = CLEARANCE * unit;
  TextTest test = { .box = widened (text->box, WORD_SPACE * unit),
                    .own = widened ((RwBox){ 0, 0, text->width, text->size }, clearance),
                    .at = text->at,
                    .cosine = cos (text->turn),
                    .sine = sin (text->turn) };

  rw_obstacles_visit (obstacles, test.box, test_text, &test);
  return (test.met[RW_OBSTACLE_TEXT] ? CLASH_OF_TEXT : 0) + (test.met[RW_OBSTACLE_DIMENSION] ? RW_CLASH : 0)
         + (test.met[RW_OBSTACLE_WIDE] ? RW_CLASH : 0) + (test.met[RW_OBSTACLE_NARROW] ? CROSSING : 0);
}

/* Dimension lines against what stands there */

typedef struct
{
  const RwObstacles *obstacles;
  RwObstacleLine     line;
  RwPoint            along; /* unit vector of the line */
  double             length;
  gboolean           is_extension;
  gboolean           met_text, met_line;
} LineTest;

/* Do both lines run side by side for more than a touch? */
static gboolean
side_by_side (const LineTest *test, const RwObstacle *obstacle)
{
  const RwPoint ends[] = { obstacle->a, obstacle->b };
  double t[2];

  for (int i = 0; i < 2; i++)
    {
      double x = ends[i].x - test->line.a.x, y = ends[i].y - test->line.a.y;

      if (fabs (y * test->along.x - x * test->along.y) >= test->line.near)
        return FALSE;
      t[i] = x * test->along.x + y * test->along.y;
    }
  return MIN (MAX (t[0], t[1]), test->length) - MAX (MIN (t[0], t[1]), 0) > test->line.near / 4;
}

static gboolean
test_obstacle (const RwObstacle *obstacle, gpointer data)
{
  LineTest *test = data;

  if (obstacle->kind == RW_OBSTACLE_TEXT)
    test->met_text |= piece_in_box (test->line.a, test->line.b, box_of (obstacle->a, obstacle->b));
  else if (!test->is_extension)
    test->met_line |= side_by_side (test, obstacle);
  return !(test->met_text && test->met_line);
}

static void
test_line (RwPoint a, RwPoint b, gpointer data)
{
  LineTest *test = data;
  double length = hypot (b.x - a.x, b.y - a.y);

  if (length == 0)
    return;
  test->line.a = a;
  test->line.b = b;
  test->length = length;
  test->along = (RwPoint){ (b.x - a.x) / length, (b.y - a.y) / length };
  rw_obstacles_visit_line (test->obstacles, test->line, test_obstacle, test);
}

static double
cost_of_marks (const RwObstacles *obstacles, const RwTrial *trial, double unit)
{
  LineTest test = { .obstacles = obstacles, .line = { .near = SEPARATION * unit } };

  for (int i = 0; i < trial->count; i++)
    if (trial->marks[i].kind != RW_MARK_HEAD)
      {
        test.is_extension = trial->marks[i].kind == RW_MARK_EXTENSION;
        rw_mark_walk (&trial->marks[i], test_line, &test);
      }
  return (test.met_text ? CLASH_OF_TEXT : 0) + (test.met_line ? RW_CLASH : 0);
}

double
rw_clash_cost (const RwClash *clash, const RwTrial *trial, double limit)
{
  double cost = trial->cost;

  if (cost < limit)
    cost += cost_of_text (clash->placed, &trial->text, clash->unit);
  if (cost < limit)
    cost += cost_of_text (clash->drawing, &trial->text, clash->unit);
  if (cost < limit)
    cost += cost_of_marks (clash->placed, trial, clash->unit);
  return cost;
}

void
rw_mark_walk (const RwPlacedMark *mark, RwTraceFunc func, gpointer data)
{
  if (mark->kind != RW_MARK_ARC)
    {
      func (mark->p[0], mark->p[1], data);
      return;
    }

  RwPoint centre = mark->p[0], from = { 0, 0 };

  for (int i = 0; i <= ARC_PIECES; i++)
    {
      double angle = mark->a0 + (mark->a1 - mark->a0) * i / ARC_PIECES;
      RwPoint to = { centre.x + mark->radius * cos (angle), centre.y + mark->radius * sin (angle) };

      if (i > 0)
        func (from, to, data);
      from = to;
    }
}
