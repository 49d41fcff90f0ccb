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
                                                       item->tint != RW_TINT_NONE, -1 });
    }
  for (guint i = 0; i < marks->len; i++)
    {
      const RwPlacedMark *mark = &g_array_index (marks, RwPlacedMark, i);

      add (stack, page, layer_of (&g_array_index (items, RwItem, mark->item)),
           (RwSvgElement){ RW_SVG_MARK, number, (int) i, mark_box (mark), FALSE, -1 });
    }
  for (guint i = 0; i < texts->len; i++)
    {
      const RwPlacedText *text = &g_array_index (texts, RwPlacedText, i);

      add (stack, page, layer_of (&g_array_index (items, RwItem, text->item)),
           (RwSvgElement){ RW_SVG_TEXT, number, (int) i, text->box, FALSE, -1 });
    }
}

/* ---- what lies on what ---- */

static const RwSvgElement *
element_at (const Stack *stack, guint i)
{
  return &g_array_index (stack->elements, RwSvgElement, i);
}

static RwLayer
layer_at (const Stack *stack, guint i)
{
  return g_array_index (stack->layers, RwLayer, i);
}

/* Does it matter which of the two is painted first? */
static gboolean
meet (const RwSvgElement *a, const RwSvgElement *b)
{
  gboolean apart = a->box.x1 < b->box.x0 || b->box.x1 < a->box.x0 || a->box.y1 < b->box.y0
                   || b->box.y1 < a->box.y0;

  return !apart && (a->covers || b->covers);
}

/* What masks cleanly counts once.  Lettering and lines that let something through mask badly. */
#define BADLY 1000

static int
weight (const RwPage *page, const RwSvgElement *over)
{
  const GArray *items = page->parts[over->part].layout->sheet->items;
  RwPen pen;

  if (over->kind != RW_SVG_PATH)
    return BADLY;
  pen = g_array_index (items, RwItem, over->index).pen;
  return pen != RW_PEN_NONE && rw_pen_style (pen)->opacity < 1 ? BADLY : 1;
}

/* How much speaks for painting a layer before another one: [first][second]. */
typedef int Votes[RW_LAYER_COUNT][RW_LAYER_COUNT];

static void
count_votes (const RwPage *page, const Stack *stack, Votes votes)
{
  for (guint over = 0; over < stack->elements->len; over++)
    for (guint under = 0; under < over; under++)
      if (layer_at (stack, under) != layer_at (stack, over)
          && meet (element_at (stack, under), element_at (stack, over)))
        votes[layer_at (stack, under)][layer_at (stack, over)] += weight (page, element_at (stack, over));
}

/* ---- the order of layers ---- */

static int
cost_of_order (const RwLayer *order, Votes votes)
{
  int cost = 0;

  for (int i = 0; i < RW_LAYER_COUNT; i++)
    for (int k = i + 1; k < RW_LAYER_COUNT; k++)
      cost += votes[order[k]][order[i]];
  return cost;
}

static void
move_layer (RwLayer *order, int from, int to)
{
  RwLayer layer = order[from];

  if (from < to)
    memmove (order + from, order + from + 1, (gsize) (to - from) * sizeof *order);
  else
    memmove (order + to + 1, order + to, (gsize) (from - to) * sizeof *order);
  order[to] = layer;
}

/* From the order in which layers are listed, moving one at a time for as long as that helps. */
static void
find_order (Votes votes, RwLayer *order)
{
  int least;
  gboolean better;

  for (int i = 0; i < RW_LAYER_COUNT; i++)
    order[i] = (RwLayer) i;
  least = cost_of_order (order, votes);
  do
    {
      better = FALSE;
      for (int from = 0; from < RW_LAYER_COUNT; from++)
        for (int to = 0; to < RW_LAYER_COUNT; to++)
          {
            move_layer (order, from, to);
            int cost = cost_of_order (order, votes);

            if (cost < least)
              {
                least = cost;
                better = TRUE;
              }
            else
              move_layer (order, to, from);
          }
    }
  while (better);
}

/* ---- masks ---- */

/* What is painted before an element now and lies over it: indices of the stack. */
static GArray *
find_covers (const Stack *stack, const int *place, guint under)
{
  GArray *covers = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint over = under + 1; over < stack->elements->len; over++)
    if (place[layer_at (stack, over)] < place[layer_at (stack, under)]
        && meet (element_at (stack, under), element_at (stack, over)))
      g_array_append_val (covers, over);
  return covers;
}

static GArray *
mask_of (const Stack *stack, const GArray *covers)
{
  GArray *mask = g_array_new (FALSE, FALSE, sizeof (RwSvgElement));

  for (guint i = 0; i < covers->len; i++)
    g_array_append_val (mask, *element_at (stack, g_array_index (covers, guint, i)));
  return mask;
}

/* Elements with the same covers share a mask. */
static void
add_masks (const Stack *stack, const int *place, GPtrArray *masks)
{
  g_autoptr (GHashTable) known
      = g_hash_table_new_full (g_bytes_hash, g_bytes_equal, (GDestroyNotify) g_bytes_unref, NULL);

  for (guint i = 0; i < stack->elements->len; i++)
    {
      g_autoptr (GArray) covers = find_covers (stack, place, i);
      GBytes *key;
      gpointer number;

      if (covers->len == 0)
        continue;
      key = g_bytes_new (covers->data, covers->len * sizeof (guint));
      if (!g_hash_table_lookup_extended (known, key, NULL, &number))
        {
          number = GUINT_TO_POINTER (masks->len);
          g_ptr_array_add (masks, mask_of (stack, covers));
          g_hash_table_insert (known, g_bytes_ref (key), number);
        }
      g_bytes_unref (key);
      g_array_index (stack->elements, RwSvgElement, i).mask = (int) GPOINTER_TO_UINT (number);
    }
}

/* ---- groups ---- */

static void
add_group (const Stack *stack, RwLayer layer, GPtrArray *groups)
{
  RwSvgGroup *group = g_new0 (RwSvgGroup, 1);

  group->layer = layer;
  group->elements = g_array_new (FALSE, FALSE, sizeof (RwSvgElement));
  for (guint i = 0; i < stack->elements->len; i++)
    if (layer_at (stack, i) == layer)
      g_array_append_val (group->elements, *element_at (stack, i));
  if (group->elements->len > 0)
    g_ptr_array_add (groups, group);
  else
    group_free (group);
}

RwSvgPicture *
rw_svg_picture_new (const RwPage *page)
{
  g_autoptr (GArray) elements = g_array_new (FALSE, FALSE, sizeof (RwSvgElement));
  g_autoptr (GArray) layers = g_array_new (FALSE, FALSE, sizeof (RwLayer));
  Stack stack = { elements, layers };
  Votes votes = { { 0 } };
  RwLayer order[RW_LAYER_COUNT];
  int place[RW_LAYER_COUNT];
  RwSvgPicture *picture = g_new (RwSvgPicture, 1);

  picture->groups = g_ptr_array_new_with_free_func (group_free);
  picture->masks = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  for (int i = 0; i < page->count; i++)
    add_part (&stack, page, i);
  count_votes (page, &stack, votes);
  find_order (votes, order);
  for (int i = 0; i < RW_LAYER_COUNT; i++)
    place[order[i]] = i;
  add_masks (&stack, place, picture->masks);
  for (int i = 0; i < RW_LAYER_COUNT; i++)
    add_group (&stack, order[i], picture->groups);
  return picture;
}

void
rw_svg_picture_free (RwSvgPicture *picture)
{
  if (picture == NULL)
    return;

  g_ptr_array_unref (picture->groups);
  g_ptr_array_unref (picture->masks);
  g_free (picture);
}
