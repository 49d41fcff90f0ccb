#include "svg_group.h"

#include <math.h>

static void
group_free (gpointer data)
{
  RwSvgGroup *group = data;

  g_array_unref (group->elements);
  g_free (group);
}

/* May the two be painted in either order? */
static gboolean
free_to_swap (const RwSvgElement *a, const RwSvgElement *b)
{
  gboolean apart = a->box.x1 < b->box.x0 || b->box.x1 < a->box.x0 || a->box.y1 < b->box.y0
                   || b->box.y1 < a->box.y0;

  return apart || (!a->covers && !b->covers);
}

static gboolean
free_of_group (const RwSvgElement *element, const RwSvgGroup *group)
{
  for (guint i = 0; i < group->elements->len; i++)
    if (!free_to_swap (element, &g_array_index (group->elements, RwSvgElement, i)))
      return FALSE;
  return TRUE;
}

static void
add_element (GPtrArray *groups, RwLayer layer, RwSvgElement element)
{
  RwSvgGroup *home = NULL;
  int number = 1;
  gboolean reachable = TRUE;

  for (guint i = groups->len; i-- > 0 && home == NULL;)
    {
      RwSvgGroup *group = g_ptr_array_index (groups, i);

      if (group->layer == layer)
        home = group;
      else
        reachable = reachable && free_of_group (&element, group);
    }
  if (home == NULL || !reachable)
    {
      number = home != NULL ? home->number + 1 : 1;
      home = g_new0 (RwSvgGroup, 1);
      home->layer = layer;
      home->number = number;
      home->elements = g_array_new (FALSE, FALSE, sizeof (RwSvgElement));
      g_ptr_array_add (groups, home);
    }
  g_array_append_val (home->elements, element);
}

static void
widen (RwBox *box, RwPoint p, double by)
{
  box->x0 = MIN (box->x0, p.x - by);
  box->y0 = MIN (box->y0, p.y - by);
  box->x1 = MAX (box->x1, p.x + by);
  box->y1 = MAX (box->y1, p.y + by);
}

/* From the points of the path: curves lie within theirs, arcs in their circles. */
static RwBox
path_box (const RwPagePart *part, const RwItem *item)
{
  RwBox box = { HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL };
  double scale = part->layout->scale;

  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = &g_array_index (part->layout->sheet->ops, RwPathOp, item->op_first + i);
      int points = op->verb == RW_VERB_CLOSE ? 0 : op->verb == RW_VERB_CURVE ? 3 : 1;

      for (int k = 0; k < points; k++)
        widen (&box, (RwPoint){ op->p[k].x * scale, op->p[k].y * scale },
               RW_WIDE_MM + (op->verb == RW_VERB_ARC ? op->radius * scale : 0));
    }
  return box;
}

static RwBox
mark_box (const RwPlacedMark *mark)
{
  RwBox box = { HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL };
  int points = mark->kind == RW_MARK_ARC ? 1 : mark->kind == RW_MARK_HEAD ? 3 : 2;

  for (int k = 0; k < points; k++)
    widen (&box, mark->p[k], RW_WIDE_MM + mark->radius);
  return box;
}

static void
add (GPtrArray *groups, const RwPage *page, RwLayer layer, RwSvgElement element)
{
  RwPoint origin = page->parts[element.part].origin;

  element.box = (RwBox){ element.box.x0 + origin.x, element.box.y0 - origin.y, element.box.x1 + origin.x,
                         element.box.y1 - origin.y };
  add_element (groups, layer, element);
}

/* As painters paint them: paths, then dimensions, then lettering. */
static void
add_part (GPtrArray *groups, const RwPage *page, int number)
{
  const RwPagePart *part = &page->parts[number];
  const GArray *items = part->layout->sheet->items;
  const GArray *marks = part->layout->marks, *texts = part->layout->texts;

  for (guint i = 0; i < items->len; i++)
    {
      const RwItem *item = &g_array_index (items, RwItem, i);

      if (item->kind == RW_ITEM_PATH && (item->pen != RW_PEN_NONE || item->tint != RW_TINT_NONE))
        add (groups, page, item->layer, (RwSvgElement){ RW_SVG_PATH, number, (int) i, path_box (part, item),
                                                        item->tint != RW_TINT_NONE });
    }
  for (guint i = 0; i < marks->len; i++)
    {
      const RwPlacedMark *mark = &g_array_index (marks, RwPlacedMark, i);

      add (groups, page, g_array_index (items, RwItem, mark->item).layer,
           (RwSvgElement){ RW_SVG_MARK, number, (int) i, mark_box (mark), FALSE });
    }
  for (guint i = 0; i < texts->len; i++)
    {
      const RwPlacedText *text = &g_array_index (texts, RwPlacedText, i);

      add (groups, page, g_array_index (items, RwItem, text->item).layer,
           (RwSvgElement){ RW_SVG_TEXT, number, (int) i, text->box, FALSE });
    }
}

GPtrArray *
rw_svg_groups (const RwPage *page)
{
  GPtrArray *groups = g_ptr_array_new_with_free_func (group_free);

  for (int i = 0; i < page->count; i++)
    add_part (groups, page, i);
  return groups;
}
