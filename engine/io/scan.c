#include "scan.h"

#include <math.h>
#include <wchar.h>

/* ---- areas ---- */

G_STATIC_ASSERT (sizeof (wchar_t) == sizeof (guint32)); /* so that the C library sets pixels */

static void
set_pixels (const RwPixels *pixels, int row, int x0, int x1, guint32 colour)
{
  if (x0 < x1)
    wmemset ((wchar_t *) pixels->first + (gsize) row * pixels->stride + x0, (wchar_t) colour, (gsize) (x1 - x0));
}

void
rw_scan_clear (const RwPixels *pixels, guint32 colour)
{
  for (int row = pixels->y0; row < pixels->y1; row++)
    set_pixels (pixels, row, pixels->x0, pixels->x1, colour);
}

typedef struct
{
  int    row, end; /* rows whose middles it crosses: row <= y < end */
  double x;        /* where it crosses the middle of `row` */
  double step;     /* from row to row */
  int    winding;  /* 1 down, -1 up */
} Edge;

/* The first pixel whose middle is not before a place. */
static int
first_from (double place)
{
  return (int) ceil (place - 0.5);
}

static void
add_edge (const RwPixels *pixels, GArray *edges, RwPoint a, RwPoint b)
{
  RwPoint top = a.y < b.y ? a : b, bottom = a.y < b.y ? b : a;
  Edge edge = { .winding = a.y < b.y ? 1 : -1 };

  if (bottom.y < pixels->y0 || top.y > pixels->y1)
    return;
  edge.row = MAX (first_from (top.y), pixels->y0);
  edge.end = MIN (first_from (bottom.y), pixels->y1);
  if (edge.row >= edge.end)
    return;
  edge.step = (bottom.x - top.x) / (bottom.y - top.y);
  edge.x = top.x + (edge.row + 0.5 - top.y) * edge.step;
  g_array_append_val (edges, edge);
}

static gboolean
same_point (RwPoint a, RwPoint b)
{
  return a.x == b.x && a.y == b.y;
}

/* The edges of all runs, each run closed. */
static GArray *
edges_of (const RwPixels *pixels, const RwPiece *pieces, int count)
{
  GArray *edges = g_array_sized_new (FALSE, FALSE, sizeof (Edge), (guint) count + 1);
  int start = 0;

  for (int i = 0; i < count; i++)
    {
      add_edge (pixels, edges, pieces[i].a, pieces[i].b);
      if (i + 1 == count || !same_point (pieces[i].b, pieces[i + 1].a))
        {
          add_edge (pixels, edges, pieces[i].b, pieces[start].a);
          start = i + 1;
        }
    }
  return edges;
}

static int
compare_rows (gconstpointer a, gconstpointer b)
{
  return ((const Edge *) a)->row - ((const Edge *) b)->row;
}

static void
fill_span (const RwPixels *pixels, int row, double from, double to, guint32 colour)
{
  set_pixels (pixels, row, first_from (MAX (from, pixels->x0 + 0.5)), first_from (MIN (to, pixels->x1 + 0.5)),
              colour);
}

/* The edges that cross a row, in the order of their crossings; they were nearly so in the row before. */
static void
sort_crossings (Edge **active, int count)
{
  for (int i = 1; i < count; i++)
    {
      Edge *edge = active[i];
      int k = i;

      for (; k > 0 && active[k - 1]->x > edge->x; k--)
        active[k] = active[k - 1];
      active[k] = edge;
    }
}

static void
fill_row (const RwPixels *pixels, int row, Edge **active, int count, guint32 colour)
{
  int winding = 0;

  for (int i = 0; i < count; i++)
    {
      int before = winding;

      winding += active[i]->winding;
      if (before != 0)
        fill_span (pixels, row, active[i - 1]->x, active[i]->x, colour);
    }
}

/* Leaves out the edges that end at a row, and brings the others down to it. */
static int
go_down (Edge **active, int count, int row)
{
  int left = 0;

  for (int i = 0; i < count; i++)
    if (active[i]->end > row)
      {
        active[i]->x += active[i]->step;
        active[left++] = active[i];
      }
  return left;
}

void
rw_scan_fill (const RwPixels *pixels, const RwPiece *pieces, int count, guint32 colour)
{
  g_autoptr (GArray) edges = edges_of (pixels, pieces, count);
  g_autofree Edge **active = g_new (Edge *, edges->len + 1);
  guint next = 0;
  int crossing = 0;

  g_array_sort (edges, compare_rows);
  for (int row = pixels->y0; row < pixels->y1 && (crossing > 0 || next < edges->len); row++)
    {
      for (; next < edges->len && g_array_index (edges, Edge, next).row == row; next++)
        active[crossing++] = &g_array_index (edges, Edge, next);
      if (crossing == 0)
        continue;
      sort_crossings (active, crossing);
      fill_row (pixels, row, active, crossing, colour);
      crossing = go_down (active, crossing, row + 1);
    }
}

/* ---- lines ---- */

/* share: of colour, 0..256. */
static void
blend (guint32 *pixel, guint32 colour, guint share)
{
  guint32 rest = 256 - share;
  guint32 odd = ((colour & 0xff00ff) * share + (*pixel & 0xff00ff) * rest) >> 8 & 0xff00ff;
  guint32 even = (colour >> 8 & 0xff00ff) * share + (*pixel >> 8 & 0xff00ff) * rest;

  *pixel = odd | (even & 0xff00ff00);
}

/* A line as steps along the axis that it runs along more than across. */
typedef struct
{
  guint32 *first;
  gsize    along, across;        /* from pixel to pixel */
  int      a0, a1, c0, c1;       /* what may be painted */
  double   from, to;             /* along */
  double   at, slope, half;      /* across, at from; per pixel along; half of the width across */
} Sweep;

static Sweep
sweep_of (const RwPixels *pixels, RwPiece piece, double width)
{
  double dx = piece.b.x - piece.a.x, dy = piece.b.y - piece.a.y;
  gboolean level = fabs (dx) >= fabs (dy);
  gboolean onwards = level ? dx >= 0 : dy >= 0;
  RwPoint from = onwards ? piece.a : piece.b, to = onwards ? piece.b : piece.a;
  Sweep sweep = { .first = pixels->first };
  double length = sqrt (dx * dx + dy * dy), far = MAX (fabs (dx), fabs (dy));

  sweep.along = level ? 1 : pixels->stride;
  sweep.across = level ? pixels->stride : 1;
  sweep.a0 = level ? pixels->x0 : pixels->y0;
  sweep.a1 = level ? pixels->x1 : pixels->y1;
  sweep.c0 = level ? pixels->y0 : pixels->x0;
  sweep.c1 = level ? pixels->y1 : pixels->x1;
  sweep.from = level ? from.x : from.y;
  sweep.to = level ? to.x : to.y;
  sweep.at = level ? from.y : from.x;
  sweep.slope = level ? (to.y - from.y) / far : (to.x - from.x) / far;
  sweep.half = width / 2 * length / far;
  return sweep;
}

/* The steps at which the line is between the bounds across: low <= step < high. */
static void
steps_in_sight (const Sweep *sweep, int *low, int *high)
{
  double from = MAX (sweep->from, sweep->a0), to = MIN (sweep->to, sweep->a1);
  double near = sweep->c0 - sweep->half - 1 - sweep->at, far = sweep->c1 + sweep->half + 1 - sweep->at;

  if (sweep->slope != 0)
    {
      double enter = sweep->from + MIN (near / sweep->slope, far / sweep->slope);
      double leave = sweep->from + MAX (near / sweep->slope, far / sweep->slope);

      from = MAX (from, enter);
      to = MIN (to, leave);
    }
  else if (near > 0 || far < 0)
    to = from;
  *low = MAX (first_from (from), sweep->a0);
  *high = MIN (first_from (MAX (from, to)), sweep->a1);
}

/* Places across, in fixed point: pixels are told apart by a shift then. */
#define POINT 16
#define ONE (1 << POINT)

/* The pixels across the line at one step, each with the share of it that the line covers; share: of the
 * colour, 0..256. */
static void
paint_step (const Sweep *sweep, int step, guint32 colour, int share)
{
  double middle = sweep->at + (step + 0.5 - sweep->from) * sweep->slope;
  gint64 low = (gint64) ((middle - sweep->half) * ONE), high = (gint64) ((middle + sweep->half) * ONE);
  int first = MAX ((int) (low >> POINT), sweep->c0), last = MIN ((int) ((high + ONE - 1) >> POINT), sweep->c1);
  guint32 *pixel = sweep->first + (gsize) step * sweep->along + (gsize) first * sweep->across;

  for (int c = first; c < last; c++, pixel += sweep->across)
    {
      gint64 covered = MIN (high, (gint64) (c + 1) * ONE) - MAX (low, (gint64) c * ONE);

      blend (pixel, colour, (guint32) (covered * share >> POINT));
    }
}

void
rw_scan_line (const RwPixels *pixels, RwPiece piece, double width, guint32 colour, double opacity)
{
  Sweep sweep;
  int low, high;

  if (same_point (piece.a, piece.b))
    return;
  sweep = sweep_of (pixels, piece, width);
  steps_in_sight (&sweep, &low, &high);
  for (int step = low; step < high; step++)
    paint_step (&sweep, step, colour, (int) (opacity * 256));
}
