#include "paint_quick.h"

#include <math.h>

#include "quick_line.h"
#include "sheet/trace.h"

/* How far a piece may stray from a curve, pixels. */
#define STRAY 0.15

/* A run of pieces. */
typedef struct
{
  int first, count;
} Run;

/* A shape of the sheet. */
typedef struct
{
  RwTint      tint;
  RwPen       pen;
  Run         area;  /* its outline, where it has a tint */
  Run         lines; /* what a pen paints of it */
  RwQuickLine line;
  RwBox       box;   /* round its outline, pixels */
} Shape;

struct _RwQuick
{
  const RwPalette *palette;
  double           scale;
  GArray          *shapes; /* of Shape, in order of painting */
  GArray          *pieces; /* of RwPiece: areas and lines */
};

/* ---- getting ready ---- */

typedef struct
{
  RwQuick *quick;
  RwPoint  origin;
  double   zoom;    /* pixels per mm of the sheet */
  GArray  *outline; /* of RwPiece: of the shape that is being gathered */
  RwBox    box;
} Gathering;

static RwPoint
to_pixels (const Gathering *gathering, RwPoint p)
{
  return (RwPoint){ gathering->origin.x + p.x * gathering->zoom, gathering->origin.y - p.y * gathering->zoom };
}

static void
include (RwBox *box, RwPoint p)
{
  *box = (RwBox){ MIN (box->x0, p.x), MIN (box->y0, p.y), MAX (box->x1, p.x), MAX (box->y1, p.y) };
}

static void
gather_piece (RwPoint a, RwPoint b, gpointer data)
{
  Gathering *gathering = data;
  RwPiece piece = { to_pixels (gathering, a), to_pixels (gathering, b) };

  include (&gathering->box, piece.a);
  include (&gathering->box, piece.b);
  g_array_append_val (gathering->outline, piece);
}

static Run
keep (RwQuick *quick, const GArray *pieces)
{
  Run run = { (int) quick->pieces->len, (int) pieces->len };

  g_array_append_vals (quick->pieces, pieces->data, pieces->len);
  return run;
}

static void
gather_shape (Gathering *gathering, const RwSheet *sheet, const RwItem *item)
{
  RwQuick *quick = gathering->quick;
  const GArray *outline = gathering->outline;
  Shape shape = { .tint = item->tint, .pen = item->pen };

  gathering->box = (RwBox){ HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL };
  g_array_set_size (gathering->outline, 0);
  rw_trace (sheet, item, STRAY / gathering->zoom, FALSE, gather_piece, gathering);
  if (outline->len == 0)
    return;
  shape.box = gathering->box;
  if (item->tint != RW_TINT_NONE)
    shape.area = keep (quick, outline);
  if (item->pen != RW_PEN_NONE)
    {
      shape.line = rw_quick_line (item->pen, quick->palette, quick->scale);
      shape.lines.first = (int) quick->pieces->len;
      rw_quick_line_cut (&shape.line, outline, item->op_count == 2, quick->pieces);
      shape.lines.count = (int) quick->pieces->len - shape.lines.first;
    }
  g_array_append_val (quick->shapes, shape);
}

static void
gather_sheet (Gathering *gathering, const RwSheet *sheet)
{
  for (guint i = 0; i < sheet->items->len; i++)
    if (g_array_index (sheet->items, RwItem, i).kind == RW_ITEM_PATH)
      gather_shape (gathering, sheet, &g_array_index (sheet->items, RwItem, i));
}

RwQuick *
rw_quick_new (const RwLayout *layout, const RwSheet *ghost, const RwPalette *palette, RwPoint origin,
              double scale)
{
  RwQuick *quick = g_new (RwQuick, 1);
  g_autoptr (GArray) outline = g_array_new (FALSE, FALSE, sizeof (RwPiece));
  Gathering gathering = { quick, origin, layout->scale * scale, outline, { 0, 0, 0, 0 } };

  quick->palette = palette;
  quick->scale = scale;
  quick->shapes = g_array_new (FALSE, FALSE, sizeof (Shape));
  quick->pieces = g_array_sized_new (FALSE, FALSE, sizeof (RwPiece), 4096);
  gather_sheet (&gathering, layout->sheet);
  if (ghost != NULL)
    gather_sheet (&gathering, ghost);
  return quick;
}

void
rw_quick_free (RwQuick *quick)
{
  if (quick == NULL)
    return;
  g_array_unref (quick->shapes);
  g_array_unref (quick->pieces);
  g_free (quick);
}

/* ---- all of it ---- */

static gboolean
in_sight (RwBox box, const RwPixels *pixels, double reach)
{
  return box.x0 - reach < pixels->x1 && box.x1 + reach > pixels->x0 && box.y0 - reach < pixels->y1
         && box.y1 + reach > pixels->y0;
}

static void
paint_lines (const RwQuick *quick, const Shape *shape, const RwPixels *pixels)
{
  const RwPiece *pieces = &g_array_index (quick->pieces, RwPiece, shape->lines.first);

  for (int i = 0; i < shape->lines.count; i++)
    {
      RwPiece piece = pieces[i];
      RwBox box = { MIN (piece.a.x, piece.b.x), MIN (piece.a.y, piece.b.y), MAX (piece.a.x, piece.b.x),
                    MAX (piece.a.y, piece.b.y) };

      if (in_sight (box, pixels, shape->line.width))
        rw_scan_line (pixels, piece, shape->line.width, shape->line.colour, shape->line.opacity);
    }
}

void
rw_quick_paint (const RwQuick *quick, const RwPixels *pixels)
{
  double reach = 2 * RW_WIDE_MM * quick->scale + 1;

  rw_scan_clear (pixels, rw_quick_pixel (&quick->palette->paper));
  for (guint i = 0; i < quick->shapes->len; i++)
    {
      const Shape *shape = &g_array_index (quick->shapes, Shape, i);

      if (!in_sight (shape->box, pixels, reach))
        continue;
      if (shape->tint != RW_TINT_NONE)
        rw_scan_fill (pixels, &g_array_index (quick->pieces, RwPiece, shape->area.first), shape->area.count,
                      rw_quick_pixel (&quick->palette->tint[shape->tint]));
      if (shape->pen != RW_PEN_NONE)
        paint_lines (quick, shape, pixels);
    }
}
