#include "tiling.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define AIR 2.0        /* round the drawing */
#define CROSS 4.0      /* half the size of a register mark */
#define MAP_HEIGHT 7.0 /* of the map of pages */
#define MAP_WIDTH 40.0
#define MAP_BELOW 22.0 /* the words at the upper end of a cut */
#define BAR_WITH_LABEL 124.0

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

/* How many rooms in a row, each overlapping the one before, it takes to cover a length; one more can be had. */
static int
pages_for (double length, double room, double overlap)
{
  double more = ceil ((length - room) / (room - overlap) - 1e-9);

  return 1 + (int) CLAMP (more, 0, RW_SEAMS_MAX - 1);
}

/* A tiling that is looked at, and what lies in its bands. */
typedef struct
{
  RwTiling tiling;
  int      texts;
} Trial;

static gboolean
is_better (const Trial *a, const Trial *b)
{
  int pages_a = a->tiling.columns * a->tiling.rows, pages_b = b->tiling.columns * b->tiling.rows;

  if ((a->texts > 0) != (b->texts > 0))
    return a->texts == 0;
  if (pages_a != pages_b)
    return pages_a < pages_b;
  if (a->tiling.rows != b->tiling.rows)
    return a->tiling.rows < b->tiling.rows;
  return a->texts < b->texts;
}

/* Where each page of a run begins: at its seam, or in the case of the first as far before the first seam as it is
 * shown.  A drawing on a single page stands in its middle. */
static void
begin_pages (const RwRun *run, const double *seams, double *begin)
{
  begin[0] = run->pages > 1 ? seams[0] + run->overlap - run->room : (run->low + run->high - run->room) / 2;
  for (int page = 1; page < run->pages; page++)
    begin[page] = seams[page - 1];
}

static Trial
try_pages (const RwLayout *layout, RwPageShape shape, double overlap, int columns, int rows)
{
  const RwBox *extent = &layout->extent;
  const RwRun along = { FALSE, extent->x0 - AIR, extent->x1 + AIR, room_width (&shape), overlap, columns };
  const RwRun down = { TRUE, -extent->y1 - AIR, -extent->y0 + AIR, room_height (&shape), overlap, rows };
  Trial trial = { { .shape = shape, .overlap = overlap, .columns = columns, .rows = rows }, 0 };
  double seams[RW_SEAMS_MAX + 1];

  rw_seams_find (layout, &along, seams);
  begin_pages (&along, seams, trial.tiling.left);
  rw_seams_find (layout, &down, seams);
  begin_pages (&down, seams, trial.tiling.top);
  for (int row = 0; row < rows; row++)
    trial.tiling.top[row] = -trial.tiling.top[row];

  rw_layout_free (rw_tiling_settle (&trial.tiling, layout, &trial.texts));
  return trial;
}

/* With as few pages as there can be of this shape, and with a column or row more, or both. */
static void
try_shape (const RwLayout *layout, RwPageShape shape, double overlap, Trial *best)
{
  const RwBox *extent = &layout->extent;
  int columns = pages_for (extent->x1 - extent->x0 + 2 * AIR, room_width (&shape), overlap);
  int rows = pages_for (extent->y1 - extent->y0 + 2 * AIR, room_height (&shape), overlap);
  static const struct { int columns, rows; } more[] = { { 0, 0 }, { 1, 0 }, { 0, 1 }, { 1, 1 } };

  for (guint i = 0; i < G_N_ELEMENTS (more); i++)
    {
      Trial trial = try_pages (layout, shape, overlap, columns + more[i].columns, rows + more[i].rows);

      if (best->tiling.columns == 0 || is_better (&trial, best))
        *best = trial;
      if (trial.texts == 0)
        break;
    }
}

RwTiling
rw_tiling_fit (const RwLayout *layout, double width, double height, double margin, double overlap)
{
  Trial best = { { .columns = 0 }, 0 };

  try_shape (layout, rw_page_shape (width, height, margin, TRUE), overlap, &best);
  try_shape (layout, rw_page_shape (height, width, margin, TRUE), overlap, &best);
  return best.tiling;
}

RwPoint
rw_tiling_origin (const RwTiling *tiling, int column, int row)
{
  const RwPageShape *shape = &tiling->shape;

  return (RwPoint){ shape->room.x0 - tiling->left[column], shape->room.y1 - tiling->top[row] };
}

RwBox
rw_tiling_window (const RwTiling *tiling, int column, int row)
{
  double left = tiling->left[column], top = tiling->top[row];
  double right = column < tiling->columns - 1 ? tiling->left[column + 1] + tiling->overlap
                                              : left + room_width (&tiling->shape);
  double foot = row < tiling->rows - 1 ? tiling->top[row + 1] - tiling->overlap
                                       : top - room_height (&tiling->shape);

  return (RwBox){ left, foot, right, top };
}

/* Lettering on a page */

/* When all is glued together a page is seen up to where the next begins. */
static gboolean
is_seen_on (const RwTiling *tiling, int column, int row, const RwBox *box)
{
  RwBox window = rw_tiling_window (tiling, column, row);

  if (column < tiling->columns - 1)
    window.x1 = tiling->left[column + 1];
  if (row < tiling->rows - 1)
    window.y0 = tiling->top[row + 1];
  return box->x0 < window.x1 && box->x1 > window.x0 && box->y0 < window.y1 && box->y1 > window.y0;
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

      if (is_seen_on (tiling, column, row, &text->box))
        g_array_append_val (page->texts, *text);
    }
  return page;
}

/* Marks on a page */

/* Where register marks stand along a band. */
static const double cross_shares[] = { 0.3, 0.7 };

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
  for (guint i = 0; i < G_N_ELEMENTS (cross_shares); i++)
    put_cross (frame, x, room->y0 + cross_shares[i] * (room->y1 - room->y0));
}

static void
put_crosses_at_row (RwSheet *frame, const RwBox *room, double y)
{
  for (guint i = 0; i < G_N_ELEMENTS (cross_shares); i++)
    put_cross (frame, room->x0 + cross_shares[i] * (room->x1 - room->x0), y);
}

/* What the words on a page's edges have to keep clear of. */
typedef struct
{
  RwSheet        *frame;
  RwBox           window; /* of the page: where the drawing is shown */
  double          overlap;
  const RwLayout *page;  /* may be NULL */
  RwPoint         origin; /* of the layout on the page */
} Edges;

#define WORDS_AIR 1.0
#define WORDS_STEP 6.0

static gboolean
lies_in (RwBox box, RwPoint origin, const RwBox *words)
{
  return box.x0 + origin.x < words->x1 + WORDS_AIR && box.x1 + origin.x > words->x0 - WORDS_AIR
         && box.y0 + origin.y < words->y1 + WORDS_AIR && box.y1 + origin.y > words->y0 - WORDS_AIR;
}

/* Filled shapes aside: words can be read on them. */
static gboolean
is_drawn_over (const Edges *edges, const RwBox *box)
{
  double scale = edges->page->scale, reach = MIN (box->x1 - box->x0, box->y1 - box->y0) / 2;

  for (double x = box->x0 + reach; x <= box->x1 - reach; x += reach)
    for (double y = box->y0 + reach; y <= box->y1 - reach; y += reach)
      if (rw_sheet_pick (edges->page->sheet, (x - edges->origin.x) / scale, (y - edges->origin.y) / scale,
                         (reach + WORDS_AIR) / scale)
          >= 0)
        return TRUE;
  return FALSE;
}

/* Register marks stand at the same shares of both bands. */
static gboolean
lies_on_cross (const Edges *edges, const RwBox *box)
{
  const RwBox *w = &edges->window;
  double band = edges->overlap / 2;

  for (guint i = 0; i < G_N_ELEMENTS (cross_shares); i++)
    {
      RwPoint in_column = { w->x1 - band, w->y0 + cross_shares[i] * (w->y1 - w->y0) };
      RwPoint in_row = { w->x0 + cross_shares[i] * (w->x1 - w->x0), w->y0 + band };

      if (lies_in ((RwBox){ -CROSS, -CROSS, CROSS, CROSS }, in_column, box)
          || lies_in ((RwBox){ -CROSS, -CROSS, CROSS, CROSS }, in_row, box))
        return TRUE;
    }
  return FALSE;
}

static gboolean
is_free (const Edges *edges, RwBox box)
{
  if (lies_on_cross (edges, &box))
    return FALSE;
  if (edges->page == NULL)
    return TRUE;

  for (guint i = 0; i < edges->page->texts->len; i++)
    if (lies_in (g_array_index (edges->page->texts, RwPlacedText, i).box, edges->origin, &box))
      return FALSE;
  for (guint i = 0; i < edges->page->marks->len; i++)
    {
      const RwPlacedMark *mark = &g_array_index (edges->page->marks, RwPlacedMark, i);
      const RwPoint *p = mark->p;

      if ((mark->kind == RW_MARK_LINE || mark->kind == RW_MARK_EXTENSION)
          && lies_in ((RwBox){ MIN (p[0].x, p[1].x), MIN (p[0].y, p[1].y), MAX (p[0].x, p[1].x),
                               MAX (p[0].y, p[1].y) },
                      edges->origin, &box))
        return FALSE;
    }
  return !is_drawn_over (edges, &box);
}

/* Upright words that end under a height, lowered until they are free; in the band between x - their size and
 * x. */
static void
put_upright_words (const Edges *edges, double x, const char *words)
{
  double size = rw_letters_size (RW_LETTERS_SMALL), length = size * rw_lettering_width (words);
  double top = edges->window.y1 - 2, y = top;

  while (y - length > edges->window.y0 && !is_free (edges, (RwBox){ x - size, y - length, x, y }))
    y -= WORDS_STEP;
  if (y - length <= edges->window.y0)
    y = top;
  rw_sheet_text (edges->frame, x, y, RW_ALIGN_END, RW_LETTERS_SMALL, words)->turn = G_PI_2;
}

/* Level words that start at the left of the room, moved to the right until they are free. */
static void
put_level_words (const Edges *edges, double y, const char *words)
{
  double size = rw_letters_size (RW_LETTERS_SMALL), length = size * rw_lettering_width (words);
  double left = edges->window.x0 + 2, x = left;

  while (x + length < edges->window.x1 && !is_free (edges, (RwBox){ x, y, x + length, y + size }))
    x += WORDS_STEP;
  if (x + length >= edges->window.x1)
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
  const RwBox *room = &edges->window;

  rw_sheet_line (edges->frame, RW_PEN_HIDDEN, room->x0, room->y0, room->x0, room->y1);
  put_crosses_at_column (edges->frame, room, room->x0 + edges->overlap / 2);
  rw_sheet_text (edges->frame, room->x0 - 1, room->y1 - 2, RW_ALIGN_END, RW_LETTERS_SMALL, _("cut here"))
      ->turn
      = G_PI_2;
}

static void
put_cut_top (const Edges *edges)
{
  const RwBox *room = &edges->window;

  rw_sheet_line (edges->frame, RW_PEN_HIDDEN, room->x0, room->y1, room->x1, room->y1);
  put_crosses_at_row (edges->frame, room, room->y1 - edges->overlap / 2);
  rw_sheet_text (edges->frame, (room->x0 + room->x1) / 2, room->y1 + 1, RW_ALIGN_MIDDLE, RW_LETTERS_SMALL,
                 _("cut here"));
}

static void
put_glue_right (const Edges *edges, int page)
{
  const RwBox *room = &edges->window;
  g_autofree char *words = glue_text (page);
  double line = room->x1 - edges->overlap;

  rw_sheet_line (edges->frame, RW_PEN_PHANTOM, line, room->y0, line, room->y1);
  put_crosses_at_column (edges->frame, room, room->x1 - edges->overlap / 2);
  put_upright_words (edges, room->x1 - 1, words);
}

static void
put_glue_below (const Edges *edges, int page)
{
  const RwBox *room = &edges->window;
  g_autofree char *words = glue_text (page);
  double line = room->y0 + edges->overlap;

  rw_sheet_line (edges->frame, RW_PEN_PHANTOM, room->x0, line, room->x1, line);
  put_crosses_at_row (edges->frame, room, room->y0 + edges->overlap / 2);
  put_level_words (edges, room->y0 + 1, words);
}

/* At the right end of the band under the room, or on small paper, where the bar has all of it, over the upright bar:
 * all pages as they lie, this one filled. */
static void
put_map (const RwTiling *tiling, int column, int row, RwSheet *frame)
{
  const RwPageShape *shape = &tiling->shape;
  gboolean small = room_width (shape) < BAR_WITH_LABEL + MAP_WIDTH;
  double shape_ratio = room_width (shape) / room_height (shape), wide = small ? MAP_HEIGHT : MAP_WIDTH;
  double cell_height = MIN (MAP_HEIGHT / tiling->rows, wide / tiling->columns / shape_ratio);
  double cell_width = cell_height * shape_ratio;
  double x0 = small ? shape->frame.x0 : shape->room.x1 - cell_width * tiling->columns;
  double y1 = small ? shape->room.y1 - MAP_BELOW
                    : shape->room.y0 - (RW_BAR_BAND - cell_height * tiling->rows) / 2;

  for (int r = 0; r < tiling->rows; r++)
    for (int c = 0; c < tiling->columns; c++)
      rw_sheet_box (frame, RW_PEN_EDGE, r == row && c == column ? RW_TINT_METAL : RW_TINT_NONE,
                    x0 + c * cell_width, y1 - (r + 1) * cell_height, x0 + (c + 1) * cell_width,
                    y1 - r * cell_height);
}

void
rw_tiling_draw (const RwTiling *tiling, const RwLayout *layout, int column, int row, RwSheet *frame)
{
  RwPoint origin = rw_tiling_origin (tiling, column, row);
  RwBox window = rw_tiling_window (tiling, column, row);
  const Edges edges = { frame,
                        { window.x0 + origin.x, window.y0 + origin.y, window.x1 + origin.x, window.y1 + origin.y },
                        tiling->overlap,
                        layout,
                        origin };
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
