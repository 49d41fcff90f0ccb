#include "paint_cairo.h"

#include "letter_cairo.h"

#include <math.h>

typedef struct
{
  cairo_t         *cr;
  const RwSheet   *sheet;
  double           scale;
  const RwPalette *palette;
  double           weight; /* of lines on a screen */
  double           pixel; /* paper mm; 0 on paper */
  double           x0, y0, x1, y1; /* what can be seen, paper mm with y down */
} Painter;

static Painter
painter_new (cairo_t *cr, const RwSheet *sheet, double scale, const RwPalette *palette, double pixel)
{
  Painter painter = { .cr = cr, .sheet = sheet, .scale = scale, .palette = palette, .weight = 1, .pixel = pixel };

  if (palette != NULL)
    painter.weight = palette->weight;
  cairo_clip_extents (cr, &painter.x0, &painter.y0, &painter.x1, &painter.y1);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_BUTT);
  return painter;
}

static void
set_colour (cairo_t *cr, const RwColour *colour, double opacity)
{
  if (opacity < 1)
    cairo_set_source_rgba (cr, colour->r, colour->g, colour->b, opacity);
  else
    cairo_set_source_rgb (cr, colour->r, colour->g, colour->b);
}

/* A width in whole pixels, on paper as it is. */
static double
line_width (const Painter *painter, double width)
{
  double least = width > RW_NARROW_MM ? 2 : 1;

  if (painter->pixel <= 0)
    return width;
  return ceil (painter->weight * MAX (least, round (width / painter->pixel))) * painter->pixel;
}

static void
set_pen (const Painter *painter, const RwPenStyle *style)
{
  double dash[G_N_ELEMENTS (style->dash)];

  cairo_set_line_width (painter->cr, line_width (painter, style->width));
  for (int i = 0; i < style->dashes; i++)
    dash[i] = MAX (style->dash[i], painter->pixel);
  cairo_set_dash (painter->cr, dash, style->dashes, 0);
}

static void
set_ink (const Painter *painter, const RwPenStyle *style)
{
  set_colour (painter->cr, style->is_pale ? &painter->palette->pale : &painter->palette->ink, style->opacity);
}

/* Straight lines along the axes, set on pixels */

/* Shifts a device coordinate so that a line of this many pixels fills them: an even number lies between two
 * pixels, an odd one on the middle of one. */
static double
on_pixel (double at, gboolean odd)
{
  return odd ? floor (at) + 0.5 : round (at);
}

/* Lays a line that runs along an axis on whole pixels; others stay.  Points are paper mm, y down. */
static void
snap_line (const Painter *painter, double width, RwPoint *a, RwPoint *b)
{
  double x0 = a->x, y0 = a->y, x1 = b->x, y1 = b->y, unit = 1, none = 0;

  if (painter->pixel <= 0 || (a->x != b->x && a->y != b->y))
    return;
  cairo_user_to_device_distance (painter->cr, &unit, &none);
  if (none != 0) /* turned: pixels lie across */
    return;

  double device = painter->pixel * unit; /* of a pixel */
  gboolean odd = (int) round (width / painter->pixel) % 2;

  cairo_user_to_device (painter->cr, &x0, &y0);
  cairo_user_to_device (painter->cr, &x1, &y1);
  if (a->x == b->x)
    x0 = x1 = on_pixel (x0 / device, odd) * device;
  else
    y0 = y1 = on_pixel (y0 / device, odd) * device;
  cairo_device_to_user (painter->cr, &x0, &y0);
  cairo_device_to_user (painter->cr, &x1, &y1);
  *a = (RwPoint){ x0, y0 };
  *b = (RwPoint){ x1, y1 };
}

static void
stroke_line (const Painter *painter, double width, RwPoint a, RwPoint b)
{
  RwPoint from = { a.x, -a.y }, to = { b.x, -b.y };

  snap_line (painter, line_width (painter, width), &from, &to);
  cairo_move_to (painter->cr, from.x, from.y);
  cairo_line_to (painter->cr, to.x, to.y);
  cairo_stroke (painter->cr);
}

/* Paths */

static const RwPathOp *
op_of (const Painter *painter, const RwItem *item, int i)
{
  return &g_array_index (painter->sheet->ops, RwPathOp, item->op_first + i);
}

/* Can anything in a box be seen?  Paper mm, y up. */
static gboolean
sees (const Painter *painter, RwBox box)
{
  return box.x0 <= painter->x1 + RW_WIDE_MM && box.x1 >= painter->x0 - RW_WIDE_MM
         && -box.y1 <= painter->y1 + RW_WIDE_MM && -box.y0 >= painter->y0 - RW_WIDE_MM;
}

/* Can the item be seen?  By a box that is easily had: a curve lies within its points, an arc in its
 * circle. */
static gboolean
in_sight (const Painter *painter, const RwItem *item)
{
  double x0 = HUGE_VAL, y0 = HUGE_VAL, x1 = -HUGE_VAL, y1 = -HUGE_VAL;

  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = op_of (painter, item, i);
      int points = op->verb == RW_VERB_CLOSE ? 0 : op->verb == RW_VERB_CURVE ? 3 : 1;
      double reach = op->verb == RW_VERB_ARC ? op->radius : 0;

      for (int k = 0; k < points; k++)
        {
          x0 = MIN (x0, op->p[k].x - reach);
          y0 = MIN (y0, op->p[k].y - reach);
          x1 = MAX (x1, op->p[k].x + reach);
          y1 = MAX (y1, op->p[k].y + reach);
        }
    }

  double scale = painter->scale;

  return sees (painter, (RwBox){ x0 * scale, y0 * scale, x1 * scale, y1 * scale });
}

static void
trace_path (const Painter *painter, const RwItem *item)
{
  cairo_t *cr = painter->cr;

  cairo_save (cr);
  cairo_scale (cr, painter->scale, -painter->scale);
  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = op_of (painter, item, i);
      const RwPoint *p = op->p;

      if (op->verb == RW_VERB_MOVE)
        cairo_move_to (cr, p[0].x, p[0].y);
      else if (op->verb == RW_VERB_LINE)
        cairo_line_to (cr, p[0].x, p[0].y);
      else if (op->verb == RW_VERB_CURVE)
        cairo_curve_to (cr, p[0].x, p[0].y, p[1].x, p[1].y, p[2].x, p[2].y);
      else if (op->verb == RW_VERB_CLOSE)
        cairo_close_path (cr);
      else if (op->a1 >= op->a0)
        cairo_arc (cr, p[0].x, p[0].y, op->radius, op->a0, op->a1);
      else
        cairo_arc_negative (cr, p[0].x, p[0].y, op->radius, op->a0, op->a1);
    }
  cairo_restore (cr);
}

static gboolean
is_single_line (const Painter *painter, const RwItem *item)
{
  return item->op_count == 2 && op_of (painter, item, 0)->verb == RW_VERB_MOVE
         && op_of (painter, item, 1)->verb == RW_VERB_LINE;
}

static RwPoint
on_paper (const Painter *painter, RwPoint p)
{
  return (RwPoint){ p.x * painter->scale, p.y * painter->scale };
}

/* Strokes a path in the colour that is set. */
static void
stroke_path (const Painter *painter, const RwItem *item, const RwPenStyle *style)
{
  set_pen (painter, style);
  if (is_single_line (painter, item))
    {
      stroke_line (painter, style->width, on_paper (painter, op_of (painter, item, 0)->p[0]),
                   on_paper (painter, op_of (painter, item, 1)->p[0]));
      return;
    }
  trace_path (painter, item);
  cairo_stroke (painter->cr);
}

static void
fill_path (const Painter *painter, const RwItem *item)
{
  set_colour (painter->cr, &painter->palette->tint[item->tint], 1);
  trace_path (painter, item);
  cairo_fill (painter->cr);
}

static void
paint_path (const Painter *painter, const RwItem *item)
{
  if (!in_sight (painter, item))
    return;

  if (item->tint != RW_TINT_NONE)
    fill_path (painter, item);
  if (item->pen != RW_PEN_NONE)
    {
      set_ink (painter, rw_pen_style (item->pen));
      stroke_path (painter, item, rw_pen_style (item->pen));
    }
}

static void
paint_paths (const Painter *painter)
{
  for (guint i = 0; i < painter->sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (painter->sheet->items, RwItem, i);

      if (item->kind == RW_ITEM_PATH)
        paint_path (painter, item);
    }
}

/* Dimensions, in the colour that is set, with a continuous narrow pen. */

static gboolean
mark_in_sight (const Painter *painter, const RwPlacedMark *mark)
{
  double reach = mark->kind == RW_MARK_ARC ? mark->radius : 0;
  RwBox box = { mark->p[0].x - reach, mark->p[0].y - reach, mark->p[0].x + reach, mark->p[0].y + reach };
  int points = mark->kind == RW_MARK_HEAD ? 3 : mark->kind == RW_MARK_ARC ? 1 : 2;

  for (int i = 1; i < points; i++)
    box = (RwBox){ MIN (box.x0, mark->p[i].x), MIN (box.y0, mark->p[i].y), MAX (box.x1, mark->p[i].x),
                   MAX (box.y1, mark->p[i].y) };
  return sees (painter, box);
}

static void
paint_mark (const Painter *painter, const RwPlacedMark *mark)
{
  const RwPoint *p = mark->p;
  cairo_t *cr = painter->cr;

  switch (mark->kind)
    {
    case RW_MARK_LINE:
    case RW_MARK_EXTENSION:
      stroke_line (painter, RW_NARROW_MM, p[0], p[1]);
      break;
    case RW_MARK_ARC:
      cairo_arc_negative (cr, p[0].x, -p[0].y, mark->radius, -mark->a0, -mark->a1);
      cairo_stroke (cr);
      break;
    case RW_MARK_HEAD:
      for (int i = 0; i < 3; i++)
        cairo_line_to (cr, p[i].x, -p[i].y);
      cairo_close_path (cr);
      cairo_fill (cr);
      break;
    }
}

/* With their lettering. */
static void
paint_dimensions (const Painter *painter, const RwLayout *layout)
{
  g_autoptr (RwLetterer) letterer = NULL; /* costs more than many a part of a drawing: only where needed */

  set_pen (painter, rw_pen_style (RW_PEN_CONSTRUCTION));
  set_ink (painter, rw_pen_style (RW_PEN_CONSTRUCTION));
  for (guint i = 0; i < layout->marks->len; i++)
    if (mark_in_sight (painter, &g_array_index (layout->marks, RwPlacedMark, i)))
      paint_mark (painter, &g_array_index (layout->marks, RwPlacedMark, i));

  set_colour (painter->cr, &painter->palette->ink, 1);
  for (guint i = 0; i < layout->texts->len; i++)
    {
      const RwPlacedText *text = &g_array_index (layout->texts, RwPlacedText, i);

      if (!sees (painter, text->box))
        continue;
      if (letterer == NULL)
        letterer = rw_letterer_new (painter->cr);
      rw_letterer_show (letterer, text);
    }
}

void
rw_paint_with_ghost (cairo_t *cr, const RwLayout *layout, const RwSheet *ghost, const RwPalette *palette,
                     double min_line)
{
  Painter painter = painter_new (cr, layout->sheet, layout->scale, palette, min_line);

  paint_paths (&painter);
  if (ghost != NULL)
    {
      painter.sheet = ghost;
      paint_paths (&painter);
      painter.sheet = layout->sheet;
    }
  paint_dimensions (&painter, layout);
}

void
rw_paint (cairo_t *cr, const RwLayout *layout, const RwPalette *palette, double min_line)
{
  rw_paint_with_ghost (cr, layout, NULL, palette, min_line);
}

void
rw_paint_dimensions (cairo_t *cr, const RwLayout *layout, const RwPalette *palette, double min_line)
{
  Painter painter = painter_new (cr, layout->sheet, layout->scale, palette, min_line);

  paint_dimensions (&painter, layout);
}

void
rw_paint_item (cairo_t *cr, const RwLayout *layout, int item, const RwColour *ink, double min_line)
{
  g_autoptr (RwLetterer) letterer = rw_letterer_new (cr);
  const RwItem *shown = &g_array_index (layout->sheet->items, RwItem, item);
  Painter painter = painter_new (cr, layout->sheet, layout->scale, NULL, min_line);

  set_colour (cr, ink, 1);
  if (shown->kind == RW_ITEM_PATH && shown->pen != RW_PEN_NONE)
    stroke_path (&painter, shown, rw_pen_style (shown->pen));

  set_pen (&painter, rw_pen_style (RW_PEN_CONSTRUCTION));
  for (guint i = 0; i < layout->marks->len; i++)
    if (g_array_index (layout->marks, RwPlacedMark, i).item == item)
      paint_mark (&painter, &g_array_index (layout->marks, RwPlacedMark, i));
  for (guint i = 0; i < layout->texts->len; i++)
    if (g_array_index (layout->texts, RwPlacedText, i).item == item)
      rw_letterer_show (letterer, &g_array_index (layout->texts, RwPlacedText, i));
}
