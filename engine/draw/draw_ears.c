#include "draw_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* The ears of a headstock that is wider than its blank. */

#define CHORDS 24

/* Where an outline lies farther out than a line along it. */
typedef struct
{
  double line, from, to; /* x */
  RwPoint last;
} Reach;

static void
reach_to (Reach *reach, RwPoint p)
{
  double before = fabs (reach->last.y) - reach->line, now = fabs (p.y) - reach->line;

  if ((before < 0) != (now < 0))
    {
      double x = reach->last.x + (p.x - reach->last.x) * before / (before - now);

      reach->from = fmin (reach->from, x);
      reach->to = fmax (reach->to, x);
    }
  reach->last = p;
}

static void
reach_along (Reach *reach, const RwPathOp *op)
{
  RwPoint start = reach->last;

  for (int i = 1; i <= CHORDS; i++)
    {
      double t = (double) i / CHORDS, s = 1 - t;
      double b[4] = { s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t };

      reach_to (reach, (RwPoint){ b[0] * start.x + b[1] * op->p[0].x + b[2] * op->p[1].x + b[3] * op->p[2].x,
                                  b[0] * start.y + b[1] * op->p[0].y + b[2] * op->p[1].y + b[3] * op->p[2].y });
    }
}

static Reach
reach_of (const RwSheet *sheet, const RwItem *outline, double line)
{
  const RwPathOp *ops = &g_array_index (sheet->ops, RwPathOp, outline->op_first);
  Reach reach = { line, HUGE_VAL, -HUGE_VAL, ops[0].p[0] };

  for (int i = 1; i < outline->op_count; i++)
    {
      if (ops[i].verb == RW_VERB_CURVE)
        reach_along (&reach, &ops[i]);
      if (ops[i].verb == RW_VERB_LINE)
        reach_to (&reach, ops[i].p[0]);
    }
  return reach;
}

void
rw_draw_ears (RwDraft *draft)
{
  RwSheet *sheet = draft->sheet;
  const RwDesign *design = draft->design;
  double half = rw_draft_value (draft, RW_NECK_BLANK_WIDTH) / 2, out = (half + design->headstock_width / 2) / 2;
  Reach reach = reach_of (sheet, &g_array_index (sheet->items, RwItem, sheet->items->len - 1), half);
  double x;

  if (design->headstock_ears != RW_YES || !(reach.to > reach.from))
    return;
  x = reach.from + 0.2 * (reach.to - reach.from);
  for (int side = -1; side <= 1; side += 2)
    {
      rw_draft_param (draft, HEADSTOCK, headstock_ears);
      rw_name (rw_sheet_line (sheet, design->headstock_overlay > 0 ? RW_PEN_HIDDEN : RW_PEN_EDGE, reach.from,
                              side * half, reach.to, side * half),
               N_ ("Ear"), 0);
      rw_draft_param (draft, TEXT, headstock_ears);
      rw_sheet_leader (sheet, (RwPoint){ x, side * out },
                       (RwPoint){ x - 10, side * (design->headstock_width / 2 + 10) }, RW_FIGURE_PLANNED, _("Ear"))->rank = 2;
    }
  rw_span_slot (draft, RW_NECK_BLANK_WIDTH,
                (RwSpan){ RW_MEASURE_VERTICAL, { reach.from, -half }, { reach.from, half }, 8, 1, N_ ("blank %s") });
}
