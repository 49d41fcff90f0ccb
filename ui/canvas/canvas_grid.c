#include "canvas_grid.h"

#include <math.h>
#include <string.h>

/* Tiles from column x0 to before x1, row y0 to before y1. */
typedef struct
{
  int x0, y0, x1, y1;
} Span;

RwGrid *
rw_grid_new (RwBox area, double wide, double high)
{
  RwGrid *self = g_new (RwGrid, 1);

  self->corner = (RwPoint){ area.x0, area.y0 };
  self->wide = wide;
  self->high = high;
  self->columns = MAX ((int) ceil ((area.x1 - area.x0) / wide), 1);
  self->rows = MAX ((int) ceil ((area.y1 - area.y0) / high), 1);
  self->touched = g_malloc0 ((gsize) self->columns * (gsize) self->rows);
  return self;
}

void
rw_grid_free (RwGrid *self)
{
  g_free (self->touched);
  g_free (self);
}

/* ---- boxes ---- */

/* Of so many tiles of a length, those between low and high: the first, and the first after them. */
static void
tiles_along (double low, double high, double length, int count, int *first, int *end)
{
  *first = (int) CLAMP (floor (low / length), 0, count);
  *end = (int) CLAMP (floor (high / length) + 1, 0, count);
}

static Span
span_of (const RwGrid *self, RwBox box)
{
  Span span;

  tiles_along (box.x0 - self->corner.x, box.x1 - self->corner.x, self->wide, self->columns, &span.x0, &span.x1);
  tiles_along (box.y0 - self->corner.y, box.y1 - self->corner.y, self->high, self->rows, &span.y0, &span.y1);
  return span;
}

int
rw_grid_count (const RwGrid *self, RwBox box)
{
  Span span = span_of (self, box);

  return MAX (span.x1 - span.x0, 0) * MAX (span.y1 - span.y0, 0);
}

void
rw_grid_touch_box (RwGrid *self, RwBox box)
{
  Span span = span_of (self, box);

  for (int row = span.y0; row < span.y1 && span.x1 > span.x0; row++)
    memset (self->touched + row * self->columns + span.x0, TRUE, (gsize) (span.x1 - span.x0));
}

/* ---- lines ---- */

/* Where a line is at a height, kept to its ends. */
static double
x_at (RwPiece line, double y)
{
  double t = (y - line.a.y) / (line.b.y - line.a.y);

  return line.a.x + CLAMP (t, 0, 1) * (line.b.x - line.a.x);
}

void
rw_grid_touch_line (RwGrid *self, RwPiece line, double reach)
{
  RwBox all = { MIN (line.a.x, line.b.x) - reach, MIN (line.a.y, line.b.y) - reach,
                MAX (line.a.x, line.b.x) + reach, MAX (line.a.y, line.b.y) + reach };
  Span span = span_of (self, all);

  if (line.a.y == line.b.y)
    {
      rw_grid_touch_box (self, all);
      return;
    }
  for (int row = span.y0; row < span.y1; row++)
    {
      double top = self->corner.y + row * self->high, low = top + self->high, middle = (top + low) / 2;
      double x0 = x_at (line, top - reach), x1 = x_at (line, low + reach);

      rw_grid_touch_box (self, (RwBox){ MIN (x0, x1) - reach, middle, MAX (x0, x1) + reach, middle });
    }
}

/* ---- areas ---- */

/* Two outlines. */
typedef struct
{
  const RwPiece *pieces[2];
  int            count[2];
} Pair;

/* The rows that either reaches. */
static Span
rows_of (const RwGrid *self, const Pair *pair)
{
  RwBox box = { 0, HUGE_VAL, 0, -HUGE_VAL };

  for (int k = 0; k < 2; k++)
    for (int i = 0; i < pair->count[k]; i++)
      {
        box.y0 = MIN (box.y0, pair->pieces[k][i].a.y);
        box.y1 = MAX (box.y1, pair->pieces[k][i].a.y);
      }
  return span_of (self, box);
}

/* How often an outline winds round the middles of a row's tiles: turns[i] times more at tile i than before it. */
static void
add_turns (const RwGrid *self, double y, const RwPiece *pieces, int count, int *turns)
{
  for (int i = 0; i < count; i++)
    {
      RwPiece piece = pieces[i];
      double column;

      if ((piece.a.y <= y) == (piece.b.y <= y))
        continue;
      column = ceil ((x_at (piece, y) - self->corner.x) / self->wide - 0.5);
      turns[(int) CLAMP (column, 0, self->columns)] += piece.a.y <= y ? 1 : -1;
    }
}

static void
touch_row (RwGrid *self, const Pair *pair, int row, int *const turns[2])
{
  double y = self->corner.y + (row + 0.5) * self->high;
  int winds[2] = { 0, 0 };

  for (int k = 0; k < 2; k++)
    {
      memset (turns[k], 0, ((gsize) self->columns + 1) * sizeof (int));
      add_turns (self, y, pair->pieces[k], pair->count[k], turns[k]);
    }
  for (int i = 0; i < self->columns; i++)
    {
      winds[0] += turns[0][i];
      winds[1] += turns[1][i];
      if ((winds[0] != 0) != (winds[1] != 0))
        self->touched[row * self->columns + i] = TRUE;
    }
}

void
rw_grid_touch_difference (RwGrid *self, const RwPiece *a, int a_count, const RwPiece *b, int b_count)
{
  Pair pair = { { a, b }, { a_count, b_count } };
  Span span = rows_of (self, &pair);
  g_autofree int *a_turns = g_new (int, self->columns + 1), *b_turns = g_new (int, self->columns + 1);

  for (int row = span.y0; row < span.y1; row++)
    touch_row (self, &pair, row, (int *const[2]){ a_turns, b_turns });
}
