#include "layout.h"

#include "clash.h"
#include "trace.h"
#include "trial.h"

#include <math.h>

/* Paper mm at small letters of 2.5 mm. */
#define CELL 8.0    /* of the search for obstacles */
#define BORDER 40.0 /* round the drawing, in which dimensions are expected */

#define TRACE_TOLERANCE 0.25 /* paper mm */

typedef struct
{
  RwLayout *layout;
  RwClash   clash;
} Layouter;

/* Taking places */

static void
include (RwBox *box, RwBox more)
{
  box->x0 = MIN (box->x0, more.x0);
  box->y0 = MIN (box->y0, more.y0);
  box->x1 = MAX (box->x1, more.x1);
  box->y1 = MAX (box->y1, more.y1);
}

static void
keep_piece (RwPoint a, RwPoint b, gpointer data)
{
  Layouter *layouter = data;
  RwBox box = { MIN (a.x, b.x), MIN (a.y, b.y), MAX (a.x, b.x), MAX (a.y, b.y) };

  rw_obstacles_add_line (layouter->clash.placed, RW_OBSTACLE_DIMENSION, a, b);
  include (&layouter->layout->extent, box);
}

static void
take_place (Layouter *layouter, const RwTrial *trial)
{
  RwLayout *layout = layouter->layout;

  g_array_append_val (layout->texts, trial->text);
  rw_obstacles_add_text (layouter->clash.placed, trial->text.box);
  include (&layout->extent, trial->text.box);

  g_array_append_vals (layout->marks, trial->marks, trial->count);
  for (int i = 0; i < trial->count; i++)
    if (trial->marks[i].kind != RW_MARK_HEAD)
      rw_mark_walk (&trial->marks[i], keep_piece, layouter);
}

static void
place_item (Layouter *layouter, int index)
{
  const RwItem *item = &g_array_index (layouter->layout->sheet->items, RwItem, index);
  RwTrialJob job = { item, index, layouter->layout->scale, layouter->clash.unit };
  RwTrial best, trial;
  const double limit = item->rank > 0 ? RW_CLASH : HUGE_VAL;
  double least = limit;

  for (int place = 0; place < rw_trial_places (item) && least > 0; place++)
    {
      double cost = limit;

      if (rw_trial_make (&job, place, &trial))
        cost = rw_clash_cost (&layouter->clash, &trial, least);
      if (cost < least)
        {
          least = cost;
          best = trial;
        }
    }
  if (least < limit)
    take_place (layouter, &best);
}

/* By rank; within a rank texts that can't move first; else as they come. */
static int
compare_order (gconstpointer a, gconstpointer b, gpointer data)
{
  const RwSheet *sheet = data;
  int first = *(const int *) a, second = *(const int *) b;
  const RwItem *x = &g_array_index (sheet->items, RwItem, first);
  const RwItem *y = &g_array_index (sheet->items, RwItem, second);

  if (x->rank != y->rank)
    return x->rank < y->rank ? -1 : 1;
  if ((x->kind == RW_ITEM_TEXT) != (y->kind == RW_ITEM_TEXT))
    return x->kind == RW_ITEM_TEXT ? -1 : 1;
  return first < second ? -1 : 1;
}

static void
place_items (Layouter *layouter)
{
  const RwSheet *sheet = layouter->layout->sheet;
  g_autoptr (GArray) order = g_array_new (FALSE, FALSE, sizeof (int));

  for (int i = 0; i < (int) sheet->items->len; i++)
    if (g_array_index (sheet->items, RwItem, i).kind != RW_ITEM_PATH)
      g_array_append_val (order, i);
  g_array_sort_with_data (order, compare_order, (gpointer) sheet);

  for (guint i = 0; i < order->len; i++)
    place_item (layouter, g_array_index (order, int, i));
}

/* The drawing as an obstacle */

typedef struct
{
  Layouter      *layouter;
  RwObstacleKind kind;
} DrawnLine;

static void
keep_drawn (RwPoint a, RwPoint b, gpointer data)
{
  DrawnLine *line = data;
  double scale = line->layouter->layout->scale;

  rw_obstacles_add_line (line->layouter->clash.drawing, line->kind, (RwPoint){ a.x * scale, a.y * scale },
                         (RwPoint){ b.x * scale, b.y * scale });
}

static void
keep_drawing (Layouter *layouter)
{
  const RwSheet *sheet = layouter->layout->sheet;

  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);
      gboolean wide = item->pen == RW_PEN_OUTLINE || item->pen == RW_PEN_CUT;
      DrawnLine line = { layouter, wide ? RW_OBSTACLE_WIDE : RW_OBSTACLE_NARROW };

      if (item->kind == RW_ITEM_PATH && item->pen != RW_PEN_NONE && item->pen != RW_PEN_GRAIN)
        rw_trace (sheet, item, TRACE_TOLERANCE / layouter->layout->scale, FALSE, keep_drawn, &line);
    }
}

static void
begin (Layouter *layouter)
{
  double scale = layouter->layout->scale, unit = layouter->clash.unit, border = BORDER * unit;
  RwBox paths = rw_sheet_extent (layouter->layout->sheet);
  RwBox drawing = { paths.x0 * scale, paths.y0 * scale, paths.x1 * scale, paths.y1 * scale };
  RwBox room = { drawing.x0 - border, drawing.y0 - border, drawing.x1 + border, drawing.y1 + border };

  if (drawing.x0 < drawing.x1 || drawing.y0 < drawing.y1)
    layouter->layout->extent = drawing;
  layouter->clash.drawing = rw_obstacles_new (room, CELL * unit);
  layouter->clash.placed = rw_obstacles_new (room, CELL * unit);
}

RwLayout *
rw_layout_new (const RwSheet *sheet, double scale, double letters)
{
  RwLayout *layout = g_new0 (RwLayout, 1);
  Layouter layouter = { .layout = layout, .clash = { .unit = letters > 0 ? letters / 2.5 : 1 } };

  layout->sheet = sheet;
  layout->scale = scale;
  layout->texts = g_array_new (FALSE, FALSE, sizeof (RwPlacedText));
  layout->marks = g_array_new (FALSE, FALSE, sizeof (RwPlacedMark));
  layout->extent = (RwBox){ HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL };

  begin (&layouter);
  keep_drawing (&layouter);
  place_items (&layouter);
  rw_obstacles_free (layouter.clash.drawing);
  rw_obstacles_free (layouter.clash.placed);
  if (layout->extent.x0 > layout->extent.x1)
    layout->extent = (RwBox){ 0, 0, 0, 0 };
  return layout;
}

void
rw_layout_free (RwLayout *layout)
{
  if (layout == NULL)
    return;

  g_array_unref (layout->texts);
  g_array_unref (layout->marks);
  g_free (layout);
}
