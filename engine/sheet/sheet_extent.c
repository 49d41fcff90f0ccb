#include "sheet.h"

#include <math.h>

/* The box of paths, exact for arcs and curves: papers are made to fit it. */

static void
include (RwBox *box, RwPoint p)
{
  box->x0 = MIN (box->x0, p.x);
  box->y0 = MIN (box->y0, p.y);
  box->x1 = MAX (box->x1, p.x);
  box->y1 = MAX (box->y1, p.y);
}

static RwPoint
on_circle (const RwPathOp *op, double angle)
{
  return (RwPoint){ op->p[0].x + op->radius * cos (angle), op->p[0].y + op->radius * sin (angle) };
}

/* Both ends, and each quarter turn between them. */
static void
include_arc (RwBox *box, const RwPathOp *op)
{
  double low = MIN (op->a0, op->a1), high = MAX (op->a0, op->a1);

  include (box, on_circle (op, op->a0));
  include (box, on_circle (op, op->a1));
  if (high - low >= 2 * G_PI)
    high = low + 2 * G_PI;
  for (double quarter = ceil (low / G_PI_2); quarter * G_PI_2 < high; quarter++)
    include (box, on_circle (op, quarter * G_PI_2));
}

static double
on_curve (double a, double b, double c, double d, double t)
{
  double s = 1 - t;

  return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
}

/* The parameters in 0..1 at which one coordinate of a Bezier curve turns back: roots of its derivative. */
static int
turning_points (double a, double b, double c, double d, double roots[2])
{
  double q2 = d - 3 * c + 3 * b - a, q1 = 2 * (c - 2 * b + a), q0 = b - a;
  double found[2];
  int count = 0, kept = 0;

  if (fabs (q2) > 1e-12)
    {
      double under = q1 * q1 - 4 * q2 * q0;

      if (under >= 0)
        {
          found[count++] = (-q1 + sqrt (under)) / (2 * q2);
          found[count++] = (-q1 - sqrt (under)) / (2 * q2);
        }
    }
  else if (fabs (q1) > 1e-12)
    found[count++] = -q0 / q1;

  for (int i = 0; i < count; i++)
    if (found[i] > 0 && found[i] < 1)
      roots[kept++] = found[i];
  return kept;
}

static void
include_curve (RwBox *box, RwPoint from, const RwPathOp *op)
{
  const RwPoint *p = op->p;
  double roots[4];
  int count = turning_points (from.x, p[0].x, p[1].x, p[2].x, roots);

  count += turning_points (from.y, p[0].y, p[1].y, p[2].y, roots + count);
  include (box, p[2]);
  for (int i = 0; i < count; i++)
    include (box, (RwPoint){ on_curve (from.x, p[0].x, p[1].x, p[2].x, roots[i]),
                             on_curve (from.y, p[0].y, p[1].y, p[2].y, roots[i]) });
}

static void
include_path (RwBox *box, const RwSheet *sheet, const RwItem *item)
{
  RwPoint here = { 0, 0 };

  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = &g_array_index (sheet->ops, RwPathOp, item->op_first + i);

      switch (op->verb)
        {
        case RW_VERB_MOVE:
        case RW_VERB_LINE:
          here = op->p[0];
          include (box, here);
          break;
        case RW_VERB_CURVE:
          include_curve (box, here, op);
          here = op->p[2];
          break;
        case RW_VERB_ARC:
          include_arc (box, op);
          here = on_circle (op, op->a1);
          break;
        case RW_VERB_CLOSE:
          break;
        }
    }
}

RwBox
rw_sheet_extent (const RwSheet *sheet)
{
  RwBox box = { HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL };

  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (item->kind == RW_ITEM_PATH)
        include_path (&box, sheet, item);
    }
  return box.x0 <= box.x1 ? box : (RwBox){ 0 };
}

RwBox
rw_item_extent (const RwSheet *sheet, const RwItem *item)
{
  RwBox box = { HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL };

  if (item->kind == RW_ITEM_PATH)
    include_path (&box, sheet, item);
  else
    include (&box, item->p[0]);
  if (item->kind == RW_ITEM_DIMENSION && item->measure == RW_MEASURE_ANGLE)
    {
      RwPathOp arc = { .verb = RW_VERB_ARC, .p = { item->p[0] }, .radius = item->radius, .a0 = item->a0,
                       .a1 = item->a1 };

      include_arc (&box, &arc);
    }
  else if (item->kind == RW_ITEM_DIMENSION)
    include (&box, item->p[1]);
  return box.x0 <= box.x1 ? box : (RwBox){ 0 };
}
