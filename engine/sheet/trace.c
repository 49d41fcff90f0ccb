#include "trace.h"

#include <math.h>

#define PIECES_MAX 720

typedef struct
{
  double      tolerance;
  RwTraceFunc func;
  gpointer    data;
  RwPoint     start, here; /* of the run */
  gboolean    drawing;     /* a run has begun */
} Trace;

static void
go_to (Trace *trace, RwPoint p)
{
  if (trace->drawing)
    trace->func (trace->here, p, trace->data);
  else
    trace->start = p;
  trace->drawing = TRUE;
  trace->here = p;
}

static void
close_run (Trace *trace)
{
  if (trace->drawing && (trace->here.x != trace->start.x || trace->here.y != trace->start.y))
    go_to (trace, trace->start);
}

/* A chord that spans 2 arccos (1 - t / r) is t away from its arc in the middle. */
static int
arc_pieces (double radius, double span, double tolerance)
{
  double step = tolerance < radius ? 2 * acos (1 - tolerance / radius) : G_PI_2;
  double pieces = ceil (fabs (span) / MIN (step, G_PI_2));

  return (int) CLAMP (pieces, 1, PIECES_MAX);
}

static void
trace_arc (Trace *trace, const RwPathOp *op)
{
  int pieces = arc_pieces (op->radius, op->a1 - op->a0, trace->tolerance);

  for (int i = 0; i <= pieces; i++)
    {
      double angle = op->a0 + (op->a1 - op->a0) * i / pieces;
      RwPoint centre = op->p[0];

      go_to (trace, (RwPoint){ centre.x + op->radius * cos (angle), centre.y + op->radius * sin (angle) });
    }
}

/* A curve walked in n equal steps of its parameter stays within d / (8 n^2) of its chords, d the largest
 * second derivative: six times the larger second difference of a cubic's points. */
static int
curve_pieces (RwPoint a, const RwPoint p[3], double tolerance)
{
  double first = hypot (a.x - 2 * p[0].x + p[1].x, a.y - 2 * p[0].y + p[1].y);
  double second = hypot (p[0].x - 2 * p[1].x + p[2].x, p[0].y - 2 * p[1].y + p[2].y);
  double pieces = ceil (sqrt (6 * MAX (first, second) / (8 * tolerance)));

  return (int) CLAMP (pieces, 1, PIECES_MAX);
}

static void
trace_curve (Trace *trace, const RwPathOp *op)
{
  RwPoint a = trace->here;
  const RwPoint *p = op->p;
  int pieces = curve_pieces (a, p, trace->tolerance);

  for (int i = 1; i <= pieces; i++)
    {
      double t = (double) i / pieces, s = 1 - t;
      double w0 = s * s * s, w1 = 3 * s * s * t, w2 = 3 * s * t * t, w3 = t * t * t;

      go_to (trace, (RwPoint){ w0 * a.x + w1 * p[0].x + w2 * p[1].x + w3 * p[2].x,
                               w0 * a.y + w1 * p[0].y + w2 * p[1].y + w3 * p[2].y });
    }
}

void
rw_trace (const RwSheet *sheet,
          const RwItem  *item,
          double         tolerance,
          gboolean       as_area,
          RwTraceFunc    func,
          gpointer       data)
{
  Trace trace = { .tolerance = tolerance, .func = func, .data = data };

  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = &g_array_index (sheet->ops, RwPathOp, item->op_first + i);

      switch (op->verb)
        {
        case RW_VERB_MOVE:
          if (as_area)
            close_run (&trace);
          trace.drawing = FALSE;
          go_to (&trace, op->p[0]);
          break;
        case RW_VERB_LINE:
          go_to (&trace, op->p[0]);
          break;
        case RW_VERB_CURVE:
          trace_curve (&trace, op);
          break;
        case RW_VERB_ARC:
          trace_arc (&trace, op);
          break;
        case RW_VERB_CLOSE:
          close_run (&trace);
          break;
        }
    }
  if (as_area)
    close_run (&trace);
}
