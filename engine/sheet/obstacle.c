#include "obstacle.h"

#include <math.h>

#define CELLS_MAX 96 /* along either side */
#define NO_LINK (-1)

typedef struct
{
  int obstacle;
  int next;
} Link;

struct _RwObstacles
{
  double  x0, y0, cell;
  int     columns, rows;
  int    *first; /* link of each cell, or NO_LINK */
  GArray *links;
  GArray *all;
};

RwObstacles *
rw_obstacles_new (RwBox box, double cell)
{
  RwObstacles *obstacles = g_new0 (RwObstacles, 1);
  double width = box.x1 - box.x0, height = box.y1 - box.y0;

  obstacles->x0 = box.x0;
  obstacles->y0 = box.y0;
  obstacles->cell = MAX (cell, MAX (width, height) / CELLS_MAX);
  obstacles->columns = 1 + (int) (width / obstacles->cell);
  obstacles->rows = 1 + (int) (height / obstacles->cell);
  obstacles->first = g_new (int, obstacles->columns * obstacles->rows);
  for (int i = 0; i < obstacles->columns * obstacles->rows; i++)
    obstacles->first[i] = NO_LINK;
  obstacles->links = g_array_sized_new (FALSE, FALSE, sizeof (Link), 4096);
  obstacles->all = g_array_sized_new (FALSE, FALSE, sizeof (RwObstacle), 2048);
  return obstacles;
}

void
rw_obstacles_free (RwObstacles *obstacles)
{
  g_free (obstacles->first);
  g_array_unref (obstacles->links);
  g_array_unref (obstacles->all);
  g_free (obstacles);
}

/* What lies outside counts to the cells along the border. */
static int
cell_at (double distance, double cell, int count)
{
  double place = distance / cell;

  return place > 0 ? (int) MIN (place, count - 1) : 0;
}

typedef struct
{
  int column0, row0, column1, row1;
} Range;

static Range
cells_of (const RwObstacles *obstacles, RwBox box)
{
  return (Range){ cell_at (box.x0 - obstacles->x0, obstacles->cell, obstacles->columns),
                  cell_at (box.y0 - obstacles->y0, obstacles->cell, obstacles->rows),
                  cell_at (box.x1 - obstacles->x0, obstacles->cell, obstacles->columns),
                  cell_at (box.y1 - obstacles->y0, obstacles->cell, obstacles->rows) };
}

static void
add (RwObstacles *obstacles, RwObstacle obstacle)
{
  RwBox box = { MIN (obstacle.a.x, obstacle.b.x), MIN (obstacle.a.y, obstacle.b.y),
                MAX (obstacle.a.x, obstacle.b.x), MAX (obstacle.a.y, obstacle.b.y) };
  Range range = cells_of (obstacles, box);

  g_array_append_val (obstacles->all, obstacle);
  for (int row = range.row0; row <= range.row1; row++)
    for (int column = range.column0; column <= range.column1; column++)
      {
        int *first = &obstacles->first[row * obstacles->columns + column];
        Link link = { (int) obstacles->all->len - 1, *first };

        *first = (int) obstacles->links->len;
        g_array_append_val (obstacles->links, link);
      }
}

/* Pieces of a line that are no longer than a cell: so few cells need to be looked at. */
static int
pieces_of (const RwObstacles *obstacles, RwPoint a, RwPoint b)
{
  double length = MAX (fabs (b.x - a.x), fabs (b.y - a.y));

  return 1 + (int) MIN (length / obstacles->cell, 4 * CELLS_MAX);
}

static RwPoint
between (RwPoint a, RwPoint b, double t)
{
  return (RwPoint){ a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t };
}

void
rw_obstacles_add_line (RwObstacles *obstacles, RwObstacleKind kind, RwPoint a, RwPoint b)
{
  int pieces = pieces_of (obstacles, a, b);
  RwPoint from = a;

  for (int i = 1; i <= pieces; i++)
    {
      RwPoint to = between (a, b, (double) i / pieces);

      add (obstacles, (RwObstacle){ kind, from, to });
      from = to;
    }
}

void
rw_obstacles_add_text (RwObstacles *obstacles, RwBox box)
{
  add (obstacles, (RwObstacle){ RW_OBSTACLE_TEXT, { box.x0, box.y0 }, { box.x1, box.y1 } });
}

static gboolean
visit_cell (const RwObstacles *obstacles, int cell, RwObstacleFunc func, gpointer data)
{
  for (int i = obstacles->first[cell]; i != NO_LINK; i = g_array_index (obstacles->links, Link, i).next)
    {
      int obstacle = g_array_index (obstacles->links, Link, i).obstacle;

      if (!func (&g_array_index (obstacles->all, RwObstacle, obstacle), data))
        return FALSE;
    }
  return TRUE;
}

void
rw_obstacles_visit (const RwObstacles *obstacles, RwBox box, RwObstacleFunc func, gpointer data)
{
  Range range = cells_of (obstacles, box);

  for (int row = range.row0; row <= range.row1; row++)
    for (int column = range.column0; column <= range.column1; column++)
      if (!visit_cell (obstacles, row * obstacles->columns + column, func, data))
        return;
}

void
rw_obstacles_visit_line (const RwObstacles *obstacles,
                         RwObstacleLine     line,
                         RwObstacleFunc     func,
                         gpointer           data)
{
  int pieces = pieces_of (obstacles, line.a, line.b);
  RwPoint from = line.a;

  for (int i = 1; i <= pieces; i++)
    {
      RwPoint to = between (line.a, line.b, (double) i / pieces);
      RwBox box = { MIN (from.x, to.x) - line.near, MIN (from.y, to.y) - line.near,
                    MAX (from.x, to.x) + line.near, MAX (from.y, to.y) + line.near };

      rw_obstacles_visit (obstacles, box, func, data);
      from = to;
    }
}
