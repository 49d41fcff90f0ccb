#include "draw_parts.h"

#include <math.h>

/* The views by name, and where the frames of parts stand on them. */

static void
draw_whole (RwDraft *draft)
{
  guint first;

  rw_draw_plan (draft);
  if (draft->design->build_handed == RW_HANDED_LEFT)
    rw_sheet_mirror (draft->sheet, 0);
  first = draft->sheet->items->len;
  rw_draw_side (draft);
  rw_sheet_move (draft->sheet, first, 0, -rw_side_drop (draft->like != NULL ? draft->like : draft->result));
}

static void
draw_plan_alone (RwDraft *draft)
{
  rw_draw_plan (draft);
  rw_draw_diameter (draft);
}

static const struct
{
  const char *id, *title;
  void (*draw) (RwDraft *draft);
  gboolean mirrored; /* the whole sheet, in a left-handed build */
} views[RW_VIEW_COUNT] = {
  [RW_VIEW_WHOLE] = { "whole", N_ ("Whole build"), draw_whole, FALSE },
  [RW_VIEW_PLAN] = { "plan", N_ ("Plan"), draw_plan_alone, TRUE },
  [RW_VIEW_SIDE] = { "side", N_ ("Side"), rw_draw_side, FALSE },
  [RW_VIEW_COURSES] = { "courses", N_ ("Rim courses"), rw_draw_courses, FALSE },
  [RW_VIEW_POT] = { "pot", N_ ("Pot section"), rw_draw_pot, FALSE },
  [RW_VIEW_HEEL] = { "heel", N_ ("Heel joint"), rw_draw_heel, FALSE },
  [RW_VIEW_HEADSTOCK] = { "headstock", N_ ("Headstock"), rw_draw_headstock, FALSE },
  [RW_VIEW_SECTIONS] = { "sections", N_ ("Neck sections"), rw_draw_sections, FALSE },
  [RW_VIEW_FRETBOARD] = { "fretboard", N_ ("Fretboard"), rw_draw_fretboard, TRUE },
  [RW_VIEW_HOOK] = { "hook", N_ ("Hook and hoop"), rw_draw_hook, FALSE },
};

const char *
rw_view_id (RwView view)
{
  return views[view].id;
}

const char *
rw_view_title (RwView view)
{
  return views[view].title;
}

int
rw_view_find (const char *id)
{
  for (int i = 0; i < RW_VIEW_COUNT; i++)
    if (g_str_equal (views[i].id, id))
      return i;
  return -1;
}

/* Taking away what could not be worked out */

/* Mm.  Farther out lies only what a build without sense gives: a neck thickness produced from two places that
 * all but coincide, a hoop that springs back to nearly straight. */
#define FAR 20000.0

static gboolean
is_drawable_point (RwPoint p)
{
  return fabs (p.x) <= FAR && fabs (p.y) <= FAR;
}

static gboolean
is_drawable_op (const RwPathOp *op)
{
  int points = op->verb == RW_VERB_CLOSE ? 0 : op->verb == RW_VERB_CURVE ? 3 : 1;

  for (int i = 0; i < points; i++)
    if (!is_drawable_point (op->p[i]))
      return FALSE;
  return op->verb != RW_VERB_ARC
         || (op->radius >= 0 && op->radius <= FAR && isfinite (op->a0) && isfinite (op->a1));
}

static gboolean
is_drawable_item (const RwSheet *sheet, const RwItem *item)
{
  for (int i = 0; i < item->op_count; i++)
    if (!is_drawable_op (&g_array_index (sheet->ops, RwPathOp, item->op_first + i)))
      return FALSE;
  return is_drawable_point (item->p[0]) && is_drawable_point (item->p[1]) && isfinite (item->radius)
         && isfinite (item->a0) && isfinite (item->a1);
}

void
rw_draft_drop_unsolved (RwDraft *draft)
{
  RwSheet *sheet = draft->sheet;

  for (guint i = sheet->items->len; i-- > 0;)
    if (!is_drawable_item (sheet, &g_array_index (sheet->items, RwItem, i)))
      g_array_remove_index (sheet->items, i);
}

RwSheet *
rw_draw (RwView view, const RwResult *result, const RwMeasured *measured, RwStyle style)
{
  return rw_draw_like (view, result, measured, style, result);
}

RwSheet *
rw_draw_like (RwView view, const RwResult *result, const RwMeasured *measured, RwStyle style, const RwResult *like)
{
  RwDraft draft = {
    .sheet = rw_sheet_new (views[view].title, style),
    .result = result,
    .design = &result->used,
    .measured = measured,
    .like = like,
  };

  views[view].draw (&draft);
  if (views[view].mirrored && result->used.build_handed == RW_HANDED_LEFT)
    rw_sheet_mirror (draft.sheet, 0);
  rw_draft_drop_unsolved (&draft);
  return draft.sheet;
}
