#include "quick_line.h"

#include <math.h>

#include "sheet/layout.h"

/* Where a line turns by more than this (the cosine of 15 degrees) its pieces run past the corner. */
#define CORNER 0.966

/* Of so many dashes none can be seen: a line that runs far beyond any screen. */
#define DASHES_MAX 20000

guint32
rw_quick_pixel (const RwColour *colour)
{
  return 0xff000000 | (guint32) lround (colour->r * 255) << 16 | (guint32) lround (colour->g * 255) << 8
         | (guint32) lround (colour->b * 255);
}

RwQuickLine
rw_quick_line (RwPen pen, const RwPalette *palette, double scale)
{
  const RwPenStyle *style = rw_pen_style (pen);
  RwQuickLine line = { .style = style, .opacity = style->opacity };

  line.width = ceil (palette->weight * MAX (style->width > RW_NARROW_MM ? 2 : 1, round (style->width * scale)));
  line.colour = rw_quick_pixel (style->is_pale ? &palette->pale : &palette->ink);
  for (int i = 0; i < style->dashes; i++)
    line.dash[i] = MAX (style->dash[i] * scale, 1);
  return line;
}

/* ---- pieces ---- */

static double
length_of (RwPiece piece)
{
  double dx = piece.b.x - piece.a.x, dy = piece.b.y - piece.a.y;

  return sqrt (dx * dx + dy * dy);
}

static RwPoint
way_of (RwPiece piece)
{
  double length = length_of (piece);

  return length > 0 ? (RwPoint){ (piece.b.x - piece.a.x) / length, (piece.b.y - piece.a.y) / length }
                    : (RwPoint){ 0, 0 };
}

static gboolean
follows (RwPiece piece, RwPiece before)
{
  return before.b.x == piece.a.x && before.b.y == piece.a.y;
}

/* Is there a corner between two ways, or does the line from there on run more along the other axis? */
static gboolean
is_corner (RwPoint a, RwPoint b)
{
  return a.x * b.x + a.y * b.y < CORNER || (fabs (a.x) >= fabs (a.y)) != (fabs (b.x) >= fabs (b.y));
}

static double
on_pixel (double at, gboolean odd)
{
  return odd ? floor (at) + 0.5 : round (at);
}

/* Straight lines along an axis lie on whole pixels, as rw_paint() lays them. */
static RwPiece
snapped (const RwQuickLine *line, RwPiece piece)
{
  gboolean odd = (int) line->width % 2;

  if (piece.a.x == piece.b.x)
    piece.a.x = piece.b.x = on_pixel (piece.a.x, odd);
  else if (piece.a.y == piece.b.y)
    piece.a.y = piece.b.y = on_pixel (piece.a.y, odd);
  return piece;
}

/* ---- full lines ---- */

/* Adds the pieces; at a corner both run on by half of the line's width. */
static void
add_full (const RwQuickLine *line, const RwPiece *pieces, int count, GArray *lines)
{
  double by = line->width / 2;
  RwPoint last_way = way_of (pieces[count - 1]), way = way_of (pieces[0]);
  gboolean corner = follows (pieces[0], pieces[count - 1]) && is_corner (last_way, way);

  for (int i = 0; i < count; i++)
    {
      RwPiece piece = pieces[i], next = pieces[i + 1 < count ? i + 1 : 0];
      RwPoint next_way = way_of (next);

      if (corner)
        piece.a = (RwPoint){ piece.a.x - way.x * by, piece.a.y - way.y * by };
      corner = follows (next, pieces[i]) && is_corner (way, next_way);
      if (corner)
        piece.b = (RwPoint){ piece.b.x + way.x * by, piece.b.y + way.y * by };
      g_array_append_val (lines, piece);
      way = next_way;
    }
}

/* ---- dashes ---- */

/* Adds a piece's dashes, going on where the piece before it ended: walked so far along the run. */
static void
add_dashes (const RwQuickLine *line, RwPiece piece, double walked, GArray *lines)
{
  double length = length_of (piece), done = 0, whole = 0, phase;
  RwPoint way = way_of (piece);
  int i = 0;

  for (int k = 0; k < line->style->dashes; k++)
    whole += line->dash[k];
  if (length > DASHES_MAX * whole)
    {
      g_array_append_val (lines, piece);
      return;
    }
  phase = fmod (walked, whole);
  for (; phase >= line->dash[i]; i++)
    phase -= line->dash[i];
  while (done < length)
    {
      double end = MIN (done + line->dash[i] - phase, length);
      RwPiece dash = { { piece.a.x + way.x * done, piece.a.y + way.y * done },
                       { piece.a.x + way.x * end, piece.a.y + way.y * end } };

      if (i % 2 == 0)
        g_array_append_val (lines, dash);
      done = end;
      phase = 0;
      i = (i + 1) % line->style->dashes;
    }
}

static void
add_dashed (const RwQuickLine *line, const RwPiece *pieces, int count, GArray *lines)
{
  double walked = 0;

  for (int i = 0; i < count; i++)
    {
      if (i > 0 && !follows (pieces[i], pieces[i - 1]))
        walked = 0;
      add_dashes (line, pieces[i], walked, lines);
      walked += length_of (pieces[i]);
    }
}

void
rw_quick_line_cut (const RwQuickLine *line, const GArray *outline, gboolean is_single, GArray *lines)
{
  const RwPiece *pieces = (const RwPiece *) (gconstpointer) outline->data;
  int count = (int) outline->len;
  RwPiece one;

  if (count == 0)
    return;
  if (is_single && count == 1)
    {
      one = snapped (line, pieces[0]);
      pieces = &one;
    }
  if (line->style->dashes > 0)
    add_dashed (line, pieces, count, lines);
  else if (count == 1)
    g_array_append_vals (lines, pieces, 1);
  else
    add_full (line, pieces, count, lines);
}
