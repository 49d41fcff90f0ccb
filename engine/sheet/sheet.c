#include "sheet.h"

#include <math.h>

static const struct
{
  const char *id;
  const char *title;
} layers[RW_LAYER_COUNT] = {
  [RW_LAYER_RIM]        = { "rim", N_ ("Rim") },
  [RW_LAYER_HEAD]       = { "head", N_ ("Head") },
  [RW_LAYER_HOOP]       = { "hoop", N_ ("Hoop") },
  [RW_LAYER_HOOKS]      = { "hooks", N_ ("Hooks and shoes") },
  [RW_LAYER_JOINT]      = { "joint", N_ ("Neck joint") },
  [RW_LAYER_NECK]       = { "neck", N_ ("Neck") },
  [RW_LAYER_FRETBOARD]  = { "fretboard", N_ ("Fretboard") },
  [RW_LAYER_HEADSTOCK]  = { "headstock", N_ ("Headstock") },
  [RW_LAYER_BRIDGE]     = { "bridge", N_ ("Bridge and tailpiece") },
  [RW_LAYER_STRINGS]    = { "strings", N_ ("Strings") },
  [RW_LAYER_AXES]       = { "axes", N_ ("Axes") },
  [RW_LAYER_DIMENSIONS] = { "dimensions", N_ ("Dimensions") },
  [RW_LAYER_TEXT]       = { "text", N_ ("Lettering") },
  [RW_LAYER_FRAME]      = { "frame", N_ ("Frame") },
};

const char *
rw_layer_id (RwLayer layer)
{
  return layers[layer].id;
}

const char *
rw_layer_title (RwLayer layer)
{
  return layers[layer].title;
}

static void
item_clear (gpointer data)
{
  RwItem *item = data;

  g_free (item->name);
  g_free (item->text);
}

RwSheet *
rw_sheet_new (const char *title, RwStyle style)
{
  RwSheet *sheet = g_new0 (RwSheet, 1);

  sheet->items = g_array_new (FALSE, TRUE, sizeof (RwItem));
  g_array_set_clear_func (sheet->items, item_clear);
  sheet->ops = g_array_new (FALSE, FALSE, sizeof (RwPathOp));
  sheet->title = g_strdup (title);
  sheet->style = style;
  sheet->layer = RW_LAYER_FRAME;
  sheet->subject = RW_SUBJECT_NONE;
  return sheet;
}

void
rw_sheet_free (RwSheet *sheet)
{
  if (sheet == NULL)
    return;

  g_array_unref (sheet->items);
  g_array_unref (sheet->ops);
  g_free (sheet->title);
  g_free (sheet);
}

gboolean
rw_subject_same (RwSubject a, RwSubject b)
{
  if (a.param >= 0 && b.param >= 0)
    return a.param == b.param;
  if (a.slot >= 0 && b.slot >= 0)
    return a.slot == b.slot;
  if (a.param < 0 && b.param >= 0)
    return rw_subject_same (b, a);
  return a.param >= 0 && b.slot >= 0
         && g_strcmp0 (rw_param ((RwParamId) a.param)->id, rw_slot_dim ((RwSlot) b.slot)->id) == 0;
}

void
rw_sheet_set (RwSheet *sheet, RwLayer layer, RwSubject subject)
{
  sheet->layer = layer;
  sheet->subject = subject;
}

static RwItem *
last_item (RwSheet *sheet)
{
  return &g_array_index (sheet->items, RwItem, sheet->items->len - 1);
}

static RwItem *
add_item (RwSheet *sheet, RwItemKind kind)
{
  RwItem item = {
    .kind = kind,
    .layer = sheet->layer,
    .subject = sheet->subject,
    .op_first = (int) sheet->ops->len,
  };

  g_array_append_val (sheet->items, item);
  return last_item (sheet);
}

/* Paths */

void
rw_path_begin (RwSheet *sheet, RwPen pen, RwTint tint)
{
  RwItem *item = add_item (sheet, RW_ITEM_PATH);

  item->pen = pen;
  item->tint = tint;
}

static void
add_op (RwSheet *sheet, RwPathOp op)
{
  RwItem *item = last_item (sheet);

  g_assert (item->kind == RW_ITEM_PATH);
  g_array_append_val (sheet->ops, op);
  item->op_count++;
}

void
rw_path_move (RwSheet *sheet, double x, double y)
{
  add_op (sheet, (RwPathOp){ .verb = RW_VERB_MOVE, .p = { { x, y } } });
}

void
rw_path_line (RwSheet *sheet, double x, double y)
{
  add_op (sheet, (RwPathOp){ .verb = RW_VERB_LINE, .p = { { x, y } } });
}

void
rw_path_curve (RwSheet *sheet, RwPoint c1, RwPoint c2, RwPoint end)
{
  add_op (sheet, (RwPathOp){ .verb = RW_VERB_CURVE, .p = { c1, c2, end } });
}

void
rw_path_arc (RwSheet *sheet, RwPoint centre, double radius, double a0, double a1)
{
  add_op (sheet, (RwPathOp){ .verb = RW_VERB_ARC, .p = { centre }, .radius = radius, .a0 = a0, .a1 = a1 });
}

void
rw_path_close (RwSheet *sheet)
{
  add_op (sheet, (RwPathOp){ .verb = RW_VERB_CLOSE });
}

RwItem *
rw_path_end (RwSheet *sheet)
{
  return last_item (sheet);
}

RwItem *
rw_sheet_line (RwSheet *sheet, RwPen pen, double x0, double y0, double x1, double y1)
{
  rw_path_begin (sheet, pen, RW_TINT_NONE);
  rw_path_move (sheet, x0, y0);
  rw_path_line (sheet, x1, y1);
  return rw_path_end (sheet);
}

static void
add_points (RwSheet *sheet, const RwPoint *points, int count)
{
  for (int i = 0; i < count; i++)
    if (i == 0)
      rw_path_move (sheet, points[i].x, points[i].y);
    else
      rw_path_line (sheet, points[i].x, points[i].y);
}

RwItem *
rw_sheet_polygon (RwSheet *sheet, RwPen pen, RwTint tint, const RwPoint *points, int count)
{
  rw_path_begin (sheet, pen, tint);
  add_points (sheet, points, count);
  rw_path_close (sheet);
  return rw_path_end (sheet);
}

RwItem *
rw_sheet_polyline (RwSheet *sheet, RwPen pen, const RwPoint *points, int count)
{
  rw_path_begin (sheet, pen, RW_TINT_NONE);
  add_points (sheet, points, count);
  return rw_path_end (sheet);
}

RwItem *
rw_sheet_box (RwSheet *sheet, RwPen pen, RwTint tint, double x0, double y0, double x1, double y1)
{
  const RwPoint corners[] = { { x0, y0 }, { x1, y0 }, { x1, y1 }, { x0, y1 } };

  return rw_sheet_polygon (sheet, pen, tint, corners, G_N_ELEMENTS (corners));
}

RwItem *
rw_sheet_circle (RwSheet *sheet, RwPen pen, RwTint tint, double x, double y, double radius)
{
  rw_path_begin (sheet, pen, tint);
  rw_path_arc (sheet, (RwPoint){ x, y }, radius, 0, 2 * G_PI);
  rw_path_close (sheet);
  return rw_path_end (sheet);
}

/* Lettering and dimensions */

RwItem *
rw_sheet_text (RwSheet *sheet, double x, double y, RwAlign align, RwLetters letters, const char *text)
{
  RwItem *item = add_item (sheet, RW_ITEM_TEXT);

  item->p[0] = (RwPoint){ x, y };
  item->align = align;
  item->letters = letters;
  item->text = g_strdup (text);
  return item;
}

RwItem *
rw_sheet_dimension (RwSheet   *sheet,
                    RwMeasure  measure,
                    RwPoint    from,
                    RwPoint    to,
                    double     offset_mm,
                    RwFigure   figure,
                    double     value,
                    const char *text)
{
  RwItem *item = add_item (sheet, RW_ITEM_DIMENSION);

  item->measure = measure;
  item->p[0] = from;
  item->p[1] = to;
  item->offset_mm = offset_mm;
  item->figure = figure;
  item->rank = 1;
  item->text = text != NULL ? g_strdup (text)
                            : rw_quantity_figure (value, "mm", sheet->style.units, 1, sheet->style.decimal);
  return item;
}

RwItem *
rw_sheet_angle (RwSheet *sheet,
                RwPoint  apex,
                double   radius,
                double   a0,
                double   a1,
                RwFigure figure,
                double   degrees)
{
  g_autofree char *number = rw_quantity_write (degrees, "deg", RW_UNITS_MM, 2, sheet->style.decimal);
  RwItem *item = add_item (sheet, RW_ITEM_DIMENSION);

  item->measure = RW_MEASURE_ANGLE;
  item->p[0] = apex;
  item->radius = radius;
  item->a0 = a0;
  item->a1 = a1;
  item->figure = figure;
  item->rank = 1;
  item->text = g_strconcat (number, "°", NULL);
  return item;
}

RwItem *
rw_sheet_leader (RwSheet *sheet, RwPoint arrow, RwPoint text_at, RwFigure figure, const char *text)
{
  RwItem *item = add_item (sheet, RW_ITEM_LEADER);

  item->p[0] = arrow;
  item->p[1] = text_at;
  item->align = text_at.x < arrow.x ? RW_ALIGN_END : RW_ALIGN_START;
  item->figure = figure;
  item->rank = 1;
  item->text = g_strdup (text);
  return item;
}

void
rw_item_name (RwItem *item, const char *name)
{
  g_free (item->name);
  item->name = g_strdup (name);
}

/* Moving, turning, mirroring */

typedef struct
{
  double cosine, sine; /* turn, after the mirror */
  double dx, dy;
  double angle;
  gboolean mirror; /* in y */
} Motion;

static RwPoint
moved (const Motion *m, RwPoint p)
{
  double y = m->mirror ? -p.y : p.y;

  return (RwPoint){ p.x * m->cosine - y * m->sine + m->dx, p.x * m->sine + y * m->cosine + m->dy };
}

static double
turned (const Motion *m, double angle)
{
  return (m->mirror ? -angle : angle) + m->angle;
}

double
rw_letters_size (RwLetters letters)
{
  switch (letters)
    {
    case RW_LETTERS_LARGE:
      return 3.5;
    case RW_LETTERS_TITLE:
      return 5;
    default:
      return 2.5;
    }
}

/* Lettering keeps to its side of its base line's two ends when that line is walked the other way: the
 * letters then stand on the other side of the line, one height further. */
static void
flip_side (RwItem *item)
{
  item->offset_mm = -item->offset_mm - rw_letters_size (item->letters);
}

static void
move_text (const Motion *m, RwItem *item)
{
  item->turn = remainder (turned (m, item->turn), 2 * G_PI);
  if (m->mirror)
    flip_side (item);

  /* Read from below or from the right: over -90 degrees, up to +90 (a hair more for rounding). */
  if (item->turn > G_PI_2 + 1e-9 || item->turn < -G_PI_2 + 1e-9)
    {
      item->turn = remainder (item->turn + G_PI, 2 * G_PI);
      item->align = (RwAlign) (RW_ALIGN_END - item->align);
      flip_side (item);
    }
}

static void
move_dimension (const Motion *m, RwItem *item)
{
  item->a0 = turned (m, item->a0);
  item->a1 = turned (m, item->a1);
  item->turn = remainder (turned (m, item->turn), 2 * G_PI);
  if (m->mirror && item->measure != RW_MEASURE_VERTICAL)
    item->offset_mm = -item->offset_mm;
}

static void
move_item (const Motion *m, RwSheet *sheet, RwItem *item)
{
  item->p[0] = moved (m, item->p[0]);
  item->p[1] = moved (m, item->p[1]);

  for (int i = 0; i < item->op_count; i++)
    {
      RwPathOp *op = &g_array_index (sheet->ops, RwPathOp, item->op_first + i);

      for (int k = 0; k < 3; k++)
        op->p[k] = moved (m, op->p[k]);
      op->a0 = turned (m, op->a0);
      op->a1 = turned (m, op->a1);
    }

  if (item->kind == RW_ITEM_TEXT)
    move_text (m, item);
  else if (item->kind == RW_ITEM_DIMENSION)
    move_dimension (m, item);
  else if (item->kind == RW_ITEM_LEADER)
    item->align = item->p[1].x < item->p[0].x ? RW_ALIGN_END : RW_ALIGN_START;
}

static void
move_items (const Motion *m, RwSheet *sheet, guint first)
{
  for (guint i = first; i < sheet->items->len; i++)
    move_item (m, sheet, &g_array_index (sheet->items, RwItem, i));
}

void
rw_sheet_move (RwSheet *sheet, guint first, double dx, double dy)
{
  move_items (&(Motion){ .cosine = 1, .dx = dx, .dy = dy }, sheet, first);
}

void
rw_sheet_turn (RwSheet *sheet, guint first, double angle)
{
  move_items (&(Motion){ .cosine = cos (angle), .sine = sin (angle), .angle = angle }, sheet, first);
}

void
rw_sheet_mirror (RwSheet *sheet, guint first)
{
  move_items (&(Motion){ .cosine = 1, .mirror = TRUE }, sheet, first);
}
