#include "tiling.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define AIR 2.0        /* round the drawing */
#define SHIFTS 20      /* places tried for the seams */
#define CROSS 4.0      /* half the size of a register mark */
#define MAP_HEIGHT 7.0 /* of the map of pages */
#define MAP_WIDTH 40.0

static double
room_width (const RwPageShape *shape)
{
  return shape->room.x1 - shape->room.x0;
}

static double
room_height (const RwPageShape *shape)
{
  return shape->room.y1 - shape->room.y0;
}

/* How many rooms in a row, each overlapping the one before, it takes to cover a length. */
static int
pages_for (double length, double room, double overlap)
{
  return length <= room ? 1 : 1 + (int) ceil ((length - room) / (room - overlap) - 1e-9);
}

static RwTiling
tiling_on (RwBox extent, RwPageShape shape, double overlap)
{
  return (RwTiling){ .shape = shape,
                     .overlap = overlap,
                     .columns = pages_for (extent.x1 - extent.x0 + 2 * AIR, room_width (&shape), overlap),
                     .rows = pages_for (extent.y1 - extent.y0 + 2 * AIR, room_height (&shape), overlap) };
}

static gboolean
is_better (const RwTiling *a, const RwTiling *b)
{
  int pages_a = a->columns * a->rows, pages_b = b->columns * b->rows;

  return pages_a != pages_b ? pages_a < pages_b : a->rows < b->rows;
}

/* Seams */

/* Along one axis: pages from start on, each `step` after the one before, sharing `overlap`. */
typedef struct
{
  double low, high; /* of the drawing, with air */
  double step, overlap;
  int    pages;
} Run;

/* A text that no page has whole is a greater evil than one that two pages have. */
#define CUT 1000

static int
evil_of_seams (const RwLayout *layout, const Run *run, double start, gboolean upright)
{
  int evil = 0;

  for (guint i = 0; i < layout->texts->len; i++)
    {
      const RwBox *box = &g_array_index (layout->texts, RwPlacedText, i).box;
      double low = upright ? box->y0 : box->x0, high = upright ? box->y1 : box->x1;

      for (int seam = 1; seam < run->pages; seam++)
        {
          double from = start + seam * run->step, to = from + run->overlap;

          if (low < to && high > from)
            evil += low < from && high > to ? CUT : 1;
        }
    }
  return evil;
}

/* Where the pages begin: centred on the drawing, or moved within what they have to spare so that less
 * lettering is cut or comes to stand on a seam. */
static double
best_start (const RwLayout *layout, const Run *run, gboolean upright)
{
  double covered = run->step * run->pages + run->overlap, spare = covered - (run->high - run->low);
  double best = run->low - spare / 2;
  int least = evil_of_seams (layout, run, best, upright);

  for (int shift = 1; shift <= SHIFTS && least > 0; shift++)
    for (int side = -1; side <= 1; side += 2)
      {
        double start = run->low - spare / 2 * (1 + (double) side * shift / SHIFTS);
        int evil = evil_of_seams (layout, run, start, upright);

        if (evil < least)
          {
            least = evil;
            best = start;
          }
      }
  return best;
}

RwTiling
rw_tiling_fit (const RwLayout *layout, double width, double height, double margin, double overlap)
{
  const RwBox *extent = &layout->extent;
  RwTiling tiling = tiling_on (*extent, rw_page_shape (width, height, margin, TRUE), overlap);
  RwTiling across = tiling_on (*extent, rw_page_shape (height, width, margin, TRUE), overlap);

  if (is_better (&across, &tiling))
    tiling = across;

  double step_x = room_width (&tiling.shape) - overlap, step_y = room_height (&tiling.shape) - overlap;
  Run along = { extent->x0 - AIR, extent->x1 + AIR, step_x, overlap, tiling.columns };
  Run up = { extent->y0 - AIR, extent->y1 + AIR, step_y, overlap, tiling.rows };

  /* Rows are counted from the top. */
  tiling.start.x = best_start (layout, &along, FALSE);
  tiling.start.y = best_start (layout, &up, TRUE) + up.step * up.pages + overlap;
  return tiling;
}

RwPoint
rw_tiling_origin (const RwTiling *tiling, int column, int row)
{
  const RwPageShape *shape = &tiling->shape;
  double x = tiling->start.x + column * (room_width (shape) - tiling->overlap);
  double y = tiling->start.y - row * (room_height (shape) - tiling->overlap);

  return (RwPoint){ shape->room.x0 - x, shape->room.y1 - y };
}

/* Lettering on a page */

static gboolean
is_whole (const RwTiling *tiling, int column, int row, const RwBox *box)
{
  const RwBox *room = &tiling->shape.room;
  RwPoint origin = rw_tiling_origin (tiling, column, row);

  return box->x0 + origin.x >= room->x0 && box->x1 + origin.x <= room->x1 && box->y0 + origin.y >= room->y0
         && box->y1 + origin.y <= room->y1;
}

static gboolean
is_whole_somewhere (const RwTiling *tiling, const RwBox *box)
{
  for (int row = 0; row < tiling->rows; row++)
    for (int column = 0; column < tiling->columns; column++)
      if (is_whole (tiling, column, row, box))
        return TRUE;
  return FALSE;
}

RwLayout *
rw_tiling_page (const RwTiling *tiling, const RwLayout *layout, int column, int row)
{
  RwLayout *page = g_new (RwLayout, 1);

  *page = *layout;
  page->marks = g_array_copy (layout->marks);
  page->texts = g_array_new (FALSE, FALSE, sizeof (RwPlacedText));
  for (guint i = 0; i < layout->texts->len; i++)
    {
      const RwPlacedText *text = &g_array_index (layout->texts, RwPlacedText, i);

      if (is_whole (tiling, column, row, &text->box) || !is_whole_somewhere (tiling, &text->box))
        g_array_append_val (page->texts, *text);
    }
  return page;
}

/* Marks on a page */

static void
put_cross (RwSheet *frame, double x, double y)
{
  rw_sheet_line (frame, RW_PEN_EDGE, x - CROSS, y, x + CROSS, y);
  rw_sheet_line (frame, RW_PEN_EDGE, x, y - CROSS, x, y + CROSS);
  rw_sheet_circle (frame, RW_PEN_EDGE, RW_TINT_NONE, x, y, CROSS / 2);
}

static void
put_crosses_at_column (RwSheet *frame, const RwBox *room, double x)
{
  put_cross (frame, x, room->y0 + 0.3 * (room->y1 - room->y0));
  put_cross (frame, x, room->y0 + 0.7 * (room->y1 - room->y0));
}

static void
put_crosses_at_row (RwSheet *frame, const RwBox *room, double y)
{
  put_cross (frame, room->x0 + 0.3 * (room->x1 - room->x0), y);
  put_cross (frame, room->x0 + 0.7 * (room->x1 - room->x0), y);
}

/* What the words on a page's edges have to keep clear of. */
typedef struct
{
  RwSheet        *frame;
  const RwBox    *room;
  double          overlap;
  const RwLayout *page;  /* may be NULL */
  RwPoint         origin; /* of the layout on the page */
} Edges;

#define WORDS_AIR 1.0
#define WORDS_STEP 6.0

static gboolean
is_free (const Edges *edges, RwBox box)
{
  for (guint i = 0; edges->page != NULL && i < edges->page->texts->len; i++)
    {
      const RwBox *text = &g_array_index (edges->page->texts, RwPlacedText, i).box;

      if (text->x0 + edges->origin.x < box.x1 + WORDS_AIR && text->x1 + edges->origin.x > box.x0 - WORDS_AIR
          && text->y0 + edges->origin.y < box.y1 + WORDS_AIR
          && text->y1 + edges->origin.y > box.y0 - WORDS_AIR)
        return FALSE;
    }
  return TRUE;
}

/* Upright words that end under a height, lowered until they are free; in the band between x - their size and
 * x. */
static void
put_upright_words (const Edges *edges, double x, const char *words)
{
  double size = rw_letters_size (RW_LETTERS_SMALL), length = size * rw_lettering_width (words);
  double top = edges->room->y1 - 2, y = top;

  while (y - length > edges->room->y0 && !is_free (edges, (RwBox){ x - size, y - length, x, y }))
    y -= WORDS_STEP;
  if (y - length <= edges->room->y0)
    y = top;
  rw_sheet_text (edges->frame, x, y, RW_ALIGN_END, RW_LETTERS_SMALL, words)->turn = G_PI_2;
}

/* Level words that start at the left of the room, moved to the right until they are free. */
static void
put_level_words (const Edges *edges, double y, const char *words)
{
  double size = rw_letters_size (RW_LETTERS_SMALL), length = size * rw_lettering_width (words);
  double left = edges->room->x0 + 2, x = left;

  while (x + length < edges->room->x1 && !is_free (edges, (RwBox){ x, y, x + length, y + size }))
    x += WORDS_STEP;
  if (x + length >= edges->room->x1)
    x = left;
  rw_sheet_text (edges->frame, x, y, RW_ALIGN_START, RW_LETTERS_SMALL, words);
}

static char *
glue_text (int page)
{
  return g_strdup_printf (_("glue page %d on here"), page + 1);
}

/* "cut here" stands outside the room, where nothing of the drawing is. */
static void
put_cut_left (const Edges *edges)
{
  const RwBox *room = edges->room;

  rw_sheet_line (edges->frame, RW_PEN_HIDDEN, room->x0, room->y0, room->x0, room->y1);
  put_crosses_at_column (edges->frame, room, room->x0 + edges->overlap / 2);
  rw_sheet_text (edges->frame, room->x0 - 1, room->y1 - 2, RW_ALIGN_END, RW_LETTERS_SMALL, _("cut here"))
      ->turn
      = G_PI_2;
}

static void
put_cut_top (const Edges *edges)
{
  const RwBox *room = edges->room;

  rw_sheet_line (edges->frame, RW_PEN_HIDDEN, room->x0, room->y1, room->x1, room->y1);
  put_crosses_at_row (edges->frame, room, room->y1 - edges->overlap / 2);
  rw_sheet_text (edges->frame, (room->x0 + room->x1) / 2, room->y1 + 1, RW_ALIGN_MIDDLE, RW_LETTERS_SMALL,
                 _("cut here"));
}

static void
put_glue_right (const Edges *edges, int page)
{
  const RwBox *room = edges->room;
  g_autofree char *words = glue_text (page);
  double line = room->x1 - edges->overlap;

  rw_sheet_line (edges->frame, RW_PEN_PHANTOM, line, room->y0, line, room->y1);
  put_crosses_at_column (edges->frame, room, room->x1 - edges->overlap / 2);
  put_upright_words (edges, room->x1 - 1, words);
}

static void
put_glue_below (const Edges *edges, int page)
{
  const RwBox *room = edges->room;
  g_autofree char *words = glue_text (page);
  double line = room->y0 + edges->overlap;

  rw_sheet_line (edges->frame, RW_PEN_PHANTOM, room->x0, line, room->x1, line);
  put_crosses_at_row (edges->frame, room, room->y0 + edges->overlap / 2);
  put_level_words (edges, room->y0 + 1, words);
}

/* At the right end of the band under the room: all pages as they lie, this one filled. */
static void
put_map (const RwTiling *tiling, int column, int row, RwSheet *frame)
{
  const RwPageShape *shape = &tiling->shape;
  double shape_ratio = room_width (shape) / room_height (shape);
  double cell_height = MIN (MAP_HEIGHT / tiling->rows, MAP_WIDTH / tiling->columns / shape_ratio);
  double cell_width = cell_height * shape_ratio;
  double x0 = shape->room.x1 - cell_width * tiling->columns;
  double y1 = shape->room.y0 - (RW_BAR_BAND - cell_height * tiling->rows) / 2;

  for (int r = 0; r < tiling->rows; r++)
    for (int c = 0; c < tiling->columns; c++)
      rw_sheet_box (frame, RW_PEN_EDGE, r == row && c == column ? RW_TINT_METAL : RW_TINT_NONE,
                    x0 + c * cell_width, y1 - (r + 1) * cell_height, x0 + (c + 1) * cell_width,
                    y1 - r * cell_height);
}

void
rw_tiling_draw (const RwTiling *tiling, const RwLayout *layout, int column, int row, RwSheet *frame)
{
  const Edges edges = { frame, &tiling->shape.room, tiling->overlap, layout,
                        rw_tiling_origin (tiling, column, row) };
  int page = row * tiling->columns + column;

  if (tiling->columns * tiling->rows == 1)
    return;

  rw_sheet_set (frame, RW_LAYER_FRAME, RW_SUBJECT_NONE);
  if (column > 0)
    put_cut_left (&edges);
  if (row > 0)
    put_cut_top (&edges);
  if (column < tiling->columns - 1)
    put_glue_right (&edges, page + 1);
  if (row < tiling->rows - 1)
    put_glue_below (&edges, page + tiling->columns);
  put_map (tiling, column, row, frame);
}
