#include "svg_group.h"

#include <math.h>
#include <string.h>

static void
group_free (gpointer data)
{
  RwSvgGroup *group = data;

  g_array_unref (group->elements);
  g_free (group);
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

/* ---- what stands on the page ---- */

/* Elements in order of painting, and the layer of each. */
typedef struct
{
  GArray *elements; /* of RwSvgElement */
  GArray *layers;   /* of RwLayer */
} Stack;

static void
add (Stack *stack, const RwPage *page, RwLayer layer, RwSvgElement element)
{
  RwPoint origin = page->parts[element.part].origin;

  element.box = (RwBox){ element.box.x0 + origin.x, element.box.y0 - origin.y, element.box.x1 + origin.x,
                         element.box.y1 - origin.y };
  g_array_append_val (stack->elements, element);
  g_array_append_val (stack->layers, layer);
}

/* Dimensions and leaders are one layer, whatever they measure. */
static RwLayer
layer_of (const RwItem *item)
{
  return item->kind == RW_ITEM_DIMENSION || item->kind == RW_ITEM_LEADER ? RW_LAYER_DIMENSIONS : item->layer;
}

/* As painters paint them: paths, then dimensions, then lettering. */
static void
add_part (Stack *stack, const RwPage *page, int number)
{
  const RwPagePart *part = &page->parts[number];
  const GArray *items = part->layout->sheet->items;
  const GArray *marks = part->layout->marks, *texts = part->layout->texts;

  for (guint i = 0; i < items->len; i++)
    {
      const RwItem *item = &g_array_index (items, RwItem, i);

      if (item->kind == RW_ITEM_PATH && (item->pen != RW_PEN_NONE || item->tint != RW_TINT_NONE))
        add (stack, page, item->layer, (RwSvgElement){ RW_SVG_PATH, number, (int) i, path_box (part, item),
                                                       item->tint != RW_TINT_NONE });
    }
  for (guint i = 0; i < marks->len; i++)
    {
      const RwPlacedMark *mark = &g_array_index (marks, RwPlacedMark, i);

      add (stack, page, layer_of (&g_array_index (items, RwItem, mark->item)),
           (RwSvgElement){ RW_SVG_MARK, number, (int) i, mark_box (mark), FALSE });
    }
  for (guint i = 0; i < texts->len; i++)
    {
      const RwPlacedText *text = &g_array_index (texts, RwPlacedText, i);

      add (stack, page, layer_of (&g_array_index (items, RwItem, text->item)),
           (RwSvgElement){ RW_SVG_TEXT, number, (int) i, text->box, FALSE });
    }
}

/* ---- groups ---- */

/* Must the first be painted before the second? */
static gboolean
is_under (const RwSvgElement *a, const RwSvgElement *b)
{
  gboolean apart = a->box.x1 < b->box.x0 || b->box.x1 < a->box.x0 || a->box.y1 < b->box.y0
                   || b->box.y1 < a->box.y0;

  return !apart && (a->covers || b->covers);
}

/* What has been painted, and what lies directly under each element: indices, ended by its own. */
typedef struct
{
  const Stack *stack;
  guint        count;
  GArray      *under;    /* of guint, one run after the other */
  guint       *run;      /* where each begins */
  guint8      *painted, *ready;
} Painting;

static void
find_under (Painting *painting)
{
  const RwSvgElement *elements = (const RwSvgElement *) (gpointer) painting->stack->elements->data;

  for (guint i = 0; i < painting->count; i++)
    {
      painting->run[i] = painting->under->len;
      for (guint k = 0; k < i; k++)
        if (is_under (&elements[k], &elements[i]))
          g_array_append_val (painting->under, k);
      g_array_append_val (painting->under, i);
    }
}

static RwLayer
layer_at (const Painting *painting, guint i)
{
  return g_array_index (painting->stack->layers, RwLayer, i);
}

static gboolean
can_be_painted (const Painting *painting, guint i, RwLayer layer)
{
  const guint *under = &g_array_index (painting->under, guint, painting->run[i]);

  for (; *under != i; under++)
    if (!painting->painted[*under] && !(layer_at (painting, *under) == layer && painting->ready[*under]))
      return FALSE;
  return TRUE;
}

/* Marks as ready all of a layer that could be painted next; how many, and whether that is all of it. */
static guint
make_ready (Painting *painting, RwLayer layer, gboolean *all)
{
  guint ready = 0;

  memset (painting->ready, 0, painting->count);
  *all = TRUE;
  for (guint i = 0; i < painting->count; i++)
    if (!painting->painted[i] && layer_at (painting, i) == layer)
      {
        painting->ready[i] = can_be_painted (painting, i, layer);
        ready += painting->ready[i];
        *all = *all && painting->ready[i];
      }
  return ready;
}

/* What is written on a drawing can wait for all of it. */
static gboolean
can_wait (RwLayer layer)
{
  return layer >= RW_LAYER_AXES;
}

/* A layer that can be painted to its end; else the part of the drawing of which most can be painted. */
static RwLayer
next_layer (Painting *painting)
{
  RwLayer best = RW_LAYER_COUNT;
  guint most = 0;

  for (int layer = 0; layer < RW_LAYER_COUNT; layer++)
    {
      gboolean all;
      guint ready = make_ready (painting, (RwLayer) layer, &all);

      if (ready > 0 && all)
        return (RwLayer) layer;
      if (ready > 0 && (best == RW_LAYER_COUNT || (ready > most && !can_wait ((RwLayer) layer))))
        {
          most = ready;
          best = (RwLayer) layer;
        }
    }
  return best;
}

static void
paint_group (Painting *painting, RwLayer layer, GPtrArray *groups)
{
  RwSvgGroup *group = g_new0 (RwSvgGroup, 1);
  gboolean all;

  make_ready (painting, layer, &all);
  group->layer = layer;
  group->elements = g_array_new (FALSE, FALSE, sizeof (RwSvgElement));
  for (guint i = 0; i < painting->count; i++)
    if (painting->ready[i])
      {
        painting->painted[i] = TRUE;
        g_array_append_val (group->elements, g_array_index (painting->stack->elements, RwSvgElement, i));
      }
  g_ptr_array_add (groups, group);
}

/* "2 of 3". */
static void
number_groups (GPtrArray *groups)
{
  int count[RW_LAYER_COUNT] = { 0 };

  for (guint i = 0; i < groups->len; i++)
    {
      RwSvgGroup *group = g_ptr_array_index (groups, i);

      group->number = ++count[group->layer];
    }
  for (guint i = 0; i < groups->len; i++)
    {
      RwSvgGroup *group = g_ptr_array_index (groups, i);

      group->of = count[group->layer];
    }
}

static GPtrArray *
group_stack (const Stack *stack)
{
  guint count = stack->elements->len;
  GPtrArray *groups = g_ptr_array_new_with_free_func (group_free);
  g_autoptr (GArray) under = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autofree guint *run = g_new (guint, count);
  g_autofree guint8 *painted = g_new0 (guint8, count), *ready = g_new0 (guint8, count);
  Painting painting = { stack, count, under, run, painted, ready };
  RwLayer layer;

  find_under (&painting);
  while ((layer = next_layer (&painting)) != RW_LAYER_COUNT)
    paint_group (&painting, layer, groups);
  number_groups (groups);
  return groups;
}

GPtrArray *
rw_svg_groups (const RwPage *page)
{
  Stack stack
      = { g_array_new (FALSE, FALSE, sizeof (RwSvgElement)), g_array_new (FALSE, FALSE, sizeof (RwLayer)) };
  GPtrArray *groups;

  for (int i = 0; i < page->count; i++)
    add_part (&stack, page, i);
  groups = group_stack (&stack);
  g_array_unref (stack.elements);
  g_array_unref (stack.layers);
  return groups;
}
