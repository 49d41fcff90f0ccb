#include "paint_quick.h"

#include <math.h>

#include "sheet/trace.h"

/* How far a piece may stray from a curve, pixels. */
#define STRAY 0.15

/* Where a line turns by more than this (the cosine of 15 degrees) its pieces run past the corner. */
#define CORNER 0.966

/* A shape of the sheet, in pieces. */
typedef struct
{
  const RwItem *item;
  int           first, count; /* of the pieces */
  RwBox         box;          /* round them, pixels */
} Shape;

struct _RwQuick
{
  const RwPalette *palette;
  double           scale;
  GArray          *shapes; /* of Shape, in order of painting */
  GArray          *pieces; /* of RwPiece */
};

/* ---- getting ready ---- */

typedef struct
{
  RwQuick *quick;
  RwPoint  origin;
  double   zoom; /* pixels per mm of the sheet */
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
  g_array_append_val (gathering->quick->pieces, piece);
}

static void
gather_shape (Gathering *gathering, const RwSheet *sheet, const RwItem *item)
{
  RwQuick *quick = gathering->quick;
  Shape shape = { .item = item, .first = (int) quick->pieces->len };

  gathering->box = (RwBox){ HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL };
  rw_trace (sheet, item, STRAY / gathering->zoom, FALSE, gather_piece, gathering);
  shape.count = (int) quick->pieces->len - shape.first;
  shape.box = gathering->box;
  if (shape.count > 0)
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
  Gathering gathering = { quick, origin, layout->scale * scale, { 0, 0, 0, 0 } };

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

/* ---- strokes ---- */

typedef struct
{
  const RwPixels   *pixels;
  const RwPenStyle *style;
  double            width;
  guint32           colour;
  double            dash[6]; /* pixels */
  double            walked;  /* along the run, for the dashes */
} Stroke;

static guint32
pixel_of (const RwColour *colour)
{
  return 0xff000000 | (guint32) lround (colour->r * 255) << 16 | (guint32) lround (colour->g * 255) << 8
         | (guint32) lround (colour->b * 255);
}

/* The same widths as rw_paint() gives lines on a screen. */
static Stroke
stroke_of (const RwQuick *quick, const RwPixels *pixels, RwPen pen)
{
  const RwPenStyle *style = rw_pen_style (pen);
  Stroke stroke = { .pixels = pixels, .style = style };

  stroke.width = quick->palette->weight
                 * MAX (style->width > RW_NARROW_MM ? 2 : 1, round (style->width * quick->scale));
  stroke.colour = pixel_of (style->is_pale ? &quick->palette->pale : &quick->palette->ink);
  for (int i = 0; i < style->dashes; i++)
    stroke.dash[i] = MAX (style->dash[i] * quick->scale, 1);
  return stroke;
}

static void
stroke_piece (const Stroke *stroke, RwPiece piece)
{
  rw_scan_line (stroke->pixels, piece, stroke->width, stroke->colour, stroke->style->opacity);
}

static RwPoint
way_of (RwPiece piece)
{
  double dx = piece.b.x - piece.a.x, dy = piece.b.y - piece.a.y, length = hypot (dx, dy);

  return length > 0 ? (RwPoint){ dx / length, dy / length } : (RwPoint){ 0, 0 };
}

/* Is there a corner from one piece to the next, or does the line from there on run more along the other axis? */
static gboolean
is_corner (RwPiece before, RwPiece after)
{
  RwPoint a = way_of (before), b = way_of (after);

  if (before.b.x != after.a.x || before.b.y != after.a.y)
    return FALSE;
  return a.x * b.x + a.y * b.y < CORNER || (fabs (a.x) >= fabs (a.y)) != (fabs (b.x) >= fabs (b.y));
}

/* A piece that runs past its corners by half of the line's width. */
static RwPiece
past_corners (const Stroke *stroke, const RwPiece *pieces, int count, int i)
{
  RwPiece piece = pieces[i];
  RwPoint way = way_of (piece);
  double by = stroke->width / 2;
  const RwPiece *before = &pieces[i > 0 ? i - 1 : count - 1], *after = &pieces[i + 1 < count ? i + 1 : 0];

  if (is_corner (*before, piece))
    piece.a = (RwPoint){ piece.a.x - way.x * by, piece.a.y - way.y * by };
  if (is_corner (pieces[i], *after))
    piece.b = (RwPoint){ piece.b.x + way.x * by, piece.b.y + way.y * by };
  return piece;
}

/* Cuts a piece into dashes, going on where the piece before it ended. */
static void
dash_piece (Stroke *stroke, RwPiece piece)
{
  double length = hypot (piece.b.x - piece.a.x, piece.b.y - piece.a.y), done = 0, whole = 0, phase;
  RwPoint way = way_of (piece);
  int i = 0;

  for (int k = 0; k < stroke->style->dashes; k++)
    whole += stroke->dash[k];
  phase = fmod (stroke->walked, whole);
  for (; phase >= stroke->dash[i]; i++)
    phase -= stroke->dash[i];
  while (done < length)
    {
      double end = MIN (done + stroke->dash[i] - phase, length);

      if (i % 2 == 0)
        stroke_piece (stroke, (RwPiece){ { piece.a.x + way.x * done, piece.a.y + way.y * done },
                                         { piece.a.x + way.x * end, piece.a.y + way.y * end } });
      done = end;
      phase = 0;
      i = (i + 1) % stroke->style->dashes;
    }
  stroke->walked += length;
}

static double
on_pixel (double at, gboolean odd)
{
  return odd ? floor (at) + 0.5 : round (at);
}

/* Straight lines along an axis lie on whole pixels, as rw_paint() lays them. */
static RwPiece
snapped (const Stroke *stroke, RwPiece piece)
{
  gboolean odd = (int) stroke->width % 2;

  if (piece.a.x == piece.b.x)
    piece.a.x = piece.b.x = on_pixel (piece.a.x, odd);
  else if (piece.a.y == piece.b.y)
    piece.a.y = piece.b.y = on_pixel (piece.a.y, odd);
  return piece;
}

static void
stroke_shape (const RwQuick *quick, const RwPixels *pixels, const Shape *shape)
{
  const RwPiece *pieces = &g_array_index (quick->pieces, RwPiece, shape->first);
  Stroke stroke = stroke_of (quick, pixels, shape->item->pen);
  gboolean single = shape->item->op_count == 2 && shape->count == 1;

  for (int i = 0; i < shape->count; i++)
    {
      RwPiece piece = single ? snapped (&stroke, pieces[i]) : pieces[i];

      if (i > 0 && (pieces[i - 1].b.x != piece.a.x || pieces[i - 1].b.y != piece.a.y))
        stroke.walked = 0;
      if (stroke.style->dashes > 0)
        dash_piece (&stroke, piece);
      else
        stroke_piece (&stroke, single ? piece : past_corners (&stroke, pieces, shape->count, i));
    }
}

/* ---- all of it ---- */

static gboolean
in_sight (const Shape *shape, const RwPixels *pixels, double reach)
{
  return shape->box.x0 - reach < pixels->x1 && shape->box.x1 + reach > pixels->x0
         && shape->box.y0 - reach < pixels->y1 && shape->box.y1 + reach > pixels->y0;
}

void
rw_quick_paint (const RwQuick *quick, const RwPixels *pixels)
{
  double reach = 2 * RW_WIDE_MM * quick->scale + 1;

  rw_scan_clear (pixels, pixel_of (&quick->palette->paper));
  for (guint i = 0; i < quick->shapes->len; i++)
    {
      const Shape *shape = &g_array_index (quick->shapes, Shape, i);
      const RwPiece *pieces = &g_array_index (quick->pieces, RwPiece, shape->first);

      if (!in_sight (shape, pixels, reach))
        continue;
      if (shape->item->tint != RW_TINT_NONE)
        rw_scan_fill (pixels, pieces, shape->count, pixel_of (&quick->palette->tint[shape->item->tint]));
      if (shape->item->pen != RW_PEN_NONE)
        stroke_shape (quick, pixels, shape);
    }
}
