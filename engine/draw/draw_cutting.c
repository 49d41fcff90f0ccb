#include "draw_cutting.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#include "draw_parts.h"
#include "project/stock_field.h"
#include "sheet/layout.h"

#define LINE 4.4          /* from one line of words to the next */
#define ACROSS (1 / 3.0)  /* scale across the grain */
#define BAND 5.0          /* a bar's height on paper */
#define DIMENSIONS 17.0   /* room for the widths of strips */
#define GAP 7.0           /* under a row */
#define HATCH 1.6
#define DEGREE (G_PI / 180)

typedef struct
{
  RwDraft          draft;
  const RwCutting *cutting;
  const RwDesign  *build;
  RwStyle          style;
  double           width, along; /* scale along the grain */
  double           y;            /* the next line stands under it */
} Page;

static const RwPiece *
piece_at (const Page *page, int i)
{
  return &g_array_index (page->cutting->pieces, RwPiece, i);
}

static const RwStockItem *
item_at (const Page *page, int k)
{
  return g_ptr_array_index (page->cutting->shelf->items, k);
}

/* ---- words ---- */

static char *
figure (const Page *page, double length)
{
  return rw_quantity_write (length, "mm", page->style.units, 1, page->style.decimal);
}

static void
line_of_words (Page *page, double x, RwLetters letters, const char *words)
{
  page->y -= LINE;
  rw_draft_set (&page->draft, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  rw_sheet_text (page->draft.sheet, x, page->y, RW_ALIGN_START, letters, words);
}

static void
title (Page *page, int item, int times)
{
  const RwStockItem *stock = item_at (page, item);
  g_autofree char *words = rw_stock_item_words (stock, page->style);
  g_autofree char *named = *stock->name != '\0' ? g_strdup_printf ("%s: %s", stock->name, words) : g_strdup (words);
  g_autofree char *many = times > 1 ? g_strdup_printf (_("%s; %d alike"), named, times) : g_strdup (named);

  page->y -= 1;
  line_of_words (page, 0, RW_LETTERS_LARGE, many);
  page->y -= 2.5;
}

/* The cuts of one piece after another in a strip, that are alike. */
static guint
run_length (const GArray *cuts, guint from)
{
  const RwBoardCut *first = &g_array_index (cuts, RwBoardCut, from);
  guint count = 1;

  for (guint i = from + 1; i < cuts->len; i++, count++)
    {
      const RwBoardCut *cut = &g_array_index (cuts, RwBoardCut, i), *before = &g_array_index (cuts, RwBoardCut, i - 1);

      if (cut->piece != first->piece || cut->on_edge != first->on_edge || cut->from - before->to > 12)
        break;
    }
  return count;
}

static char *
run_words (const Page *page, const RwBoardStrip *strip, const RwBoardCut *cut, guint count)
{
  const RwPiece *piece = piece_at (page, cut->piece);
  g_autofree char *letters = rw_piece_mark (piece), *name = rw_piece_words (piece), *from = figure (page, cut->from);
  g_autofree char *length = figure (page, piece->length), *across = figure (page, cut->width);
  g_autofree char *text = NULL;

  if (piece->mitre > 0)
    {
      g_autofree char *feed = figure (page, piece->length + page->cutting->cross_kerf);
      g_autofree char *stop = figure (page, piece->finished_length);
      g_autofree char *mitre = rw_quantity_show (piece->mitre, "deg", page->style.units, page->style.decimal);

      text = g_strdup_printf (_("%u × %s (%s): saw at %s°, stop at %s, feed %s, the first from %s"), count, letters,
                              name, mitre, stop, feed, from);
    }
  else
    text = g_strdup_printf (_("%u × %s (%s): %s long, the first from %s"), count, letters, name, length, from);
  if (strip->to - strip->from > cut->width + 0.05)
    return g_strdup_printf (_("%s, then ripped to %s"), text, across);
  return cut->on_edge ? g_strdup_printf (_("%s, on edge"), text) : g_steal_pointer (&text);
}

static void
strip_words (Page *page, const RwBoardStrip *strip, guint number)
{
  g_autofree char *wide = figure (page, strip->to - strip->from);
  g_autofree char *rip = g_strdup_printf (_("%u. Rip to %s"), number, wide);

  line_of_words (page, 0, RW_LETTERS_SMALL, rip);
  page->y += LINE;
  for (guint i = 0; i < strip->cuts->len;)
    {
      guint count = run_length (strip->cuts, i);
      g_autofree char *words = run_words (page, strip, &g_array_index (strip->cuts, RwBoardCut, i), count);

      line_of_words (page, 30, RW_LETTERS_SMALL, words);
      i += count;
    }
}

/* ---- boards ---- */

/* From the board to the sheet: foot is where its lower edge lies. */
static RwPoint
place (const Page *page, double foot, double x, double y)
{
  return (RwPoint){ x * page->along, foot + y * ACROSS };
}

static void
box (Page *page, RwPen pen, RwTint tint, RwPoint a, RwPoint b)
{
  rw_sheet_box (page->draft.sheet, pen, tint, a.x, a.y, b.x, b.y);
}

static void
hatched (Page *page, RwPoint a, RwPoint b, int lean)
{
  const RwPoint corners[] = { a, { b.x, a.y }, b, { a.x, b.y } };

  rw_hatch (&page->draft, corners, 4, HATCH, lean);
}

/* Segments stand on their long and their short edge by turns, as they are sawn from a strip that is turned over. */
static void
draw_piece (Page *page, double foot, const RwBoardStrip *strip, const RwBoardCut *cut, guint nth)
{
  const RwPiece *piece = piece_at (page, cut->piece);
  double slant = piece->mitre > 0 ? (strip->to - strip->from) / 2 * tan (piece->mitre * DEGREE) : 0;
  double kerf = page->cutting->cross_kerf;
  double from = cut->from, to = cut->to - (slant > 0 ? kerf / cos (piece->mitre * DEGREE) - kerf : 0);
  double top = strip->from + cut->width;

  if (nth % 2 == 1)
    slant = -slant;
  const RwPoint corners[]
      = { place (page, foot, from - slant, strip->from), place (page, foot, to + slant, strip->from),
          place (page, foot, to - slant, top), place (page, foot, from + slant, top) };
  rw_sheet_polygon (page->draft.sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, corners, 4);
}

static gboolean
has_room (double width, const char *words)
{
  return width > rw_lettering_width (words) * rw_letters_size (RW_LETTERS_SMALL) + 1;
}

/* Lettering in the middle of a shape; covered is for what would run over lines. */
static void
mark (Page *page, RwPoint middle, const char *words, gboolean covered)
{
  double half = (rw_lettering_width (words) * rw_letters_size (RW_LETTERS_SMALL) + 1) / 2;

  rw_draft_set (&page->draft, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  if (covered)
    rw_sheet_box (page->draft.sheet, RW_PEN_NONE, RW_TINT_PAPER, middle.x - half, middle.y - 1.6, middle.x + half,
                  middle.y + 1.6);
  rw_sheet_text (page->draft.sheet, middle.x, middle.y - 1.1, RW_ALIGN_MIDDLE, RW_LETTERS_SMALL, words);
}

/* Each piece has its mark, or where they are too small the row of them one together. */
static void
draw_marks (Page *page, double foot, const RwBoardStrip *strip)
{
  for (guint i = 0; i < strip->cuts->len;)
    {
      guint count = run_length (strip->cuts, i);
      const RwBoardCut *first = &g_array_index (strip->cuts, RwBoardCut, i);
      const RwBoardCut *last = &g_array_index (strip->cuts, RwBoardCut, i + count - 1);
      g_autofree char *each = rw_piece_mark (piece_at (page, first->piece));
      g_autofree char *row = g_strdup_printf ("%u × %s", count, each);
      double middle = strip->from + first->width / 2;
      gboolean roomy = has_room ((first->to - first->from) * page->along, each);

      for (guint n = 0; n < count && roomy; n++)
        {
          const RwBoardCut *cut = first + n;

          mark (page, place (page, foot, (cut->from + cut->to) / 2, middle), each, FALSE);
        }
      if (!roomy)
        mark (page, place (page, foot, (first->from + last->to) / 2, middle), count > 1 ? row : each, count > 1);
      i += count;
    }
}

static void
draw_strip (Page *page, double foot, double length, const RwBoardStrip *strip)
{
  RwPoint a = place (page, foot, 0, strip->from), b = place (page, foot, length, strip->to);
  double wide = strip->to - strip->from;

  rw_draft_set (&page->draft, RW_LAYER_RIM, RW_SUBJECT_NONE);
  rw_sheet_line (page->draft.sheet, RW_PEN_EDGE, a.x, a.y, b.x, a.y);
  rw_sheet_line (page->draft.sheet, RW_PEN_EDGE, a.x, b.y, b.x, b.y);
  for (guint i = 0, nth = 0; i < strip->cuts->len; i++, nth++)
    draw_piece (page, foot, strip, &g_array_index (strip->cuts, RwBoardCut, i), nth);
  rw_draft_set (&page->draft, RW_LAYER_DIMENSIONS, RW_SUBJECT_NONE);
  rw_sheet_dimension (page->draft.sheet, RW_MEASURE_VERTICAL, (RwPoint){ b.x, a.y }, b, 6, RW_FIGURE_WORKED_OUT, wide,
                      NULL);
}

/* Stretches to avoid are hatched the other way. */
static void
draw_waste (Page *page, double foot, const RwStockItem *item, const RwBoardPlanBoard *plan)
{
  for (guint i = 0; i < plan->offcuts->len; i++)
    {
      const RwOffcut *offcut = &g_array_index (plan->offcuts, RwOffcut, i);

      hatched (page, place (page, foot, offcut->x0, offcut->y0), place (page, foot, offcut->x1, offcut->y1), 1);
    }
  for (guint i = 0; i < item->avoid->len; i++)
    {
      const RwStretch *bad = &g_array_index (item->avoid, RwStretch, i);
      RwPoint a = place (page, foot, bad->from, 0), b = place (page, foot, MIN (bad->to, item->length), item->width);

      hatched (page, a, b, -1);
      hatched (page, a, b, 1);
    }
}

static void
offcut_words (Page *page, const RwBoardPlanBoard *plan)
{
  GString *all = g_string_new (NULL);

  for (guint i = 0; i < plan->offcuts->len; i++)
    {
      const RwOffcut *offcut = &g_array_index (plan->offcuts, RwOffcut, i);
      g_autofree char *length = figure (page, offcut->x1 - offcut->x0), *width = figure (page, offcut->y1 - offcut->y0);

      g_string_append_printf (all, "%s%s × %s", i > 0 ? "; " : "", length, width);
    }
  if (all->len > 0)
    {
      g_autofree char *words = g_strdup_printf (_("Left to keep: %s"), all->str);

      line_of_words (page, 30, RW_LETTERS_SMALL, words);
    }
  g_string_free (all, TRUE);
}

static void
draw_board (Page *page, const RwCutBoard *board)
{
  const RwStockItem *item = item_at (page, board->item);
  double foot;

  title (page, board->item, 1);
  foot = page->y - item->width * ACROSS;
  rw_draft_set (&page->draft, RW_LAYER_RIM, RW_SUBJECT_NONE);
  box (page, RW_PEN_EDGE, RW_TINT_PAPER, place (page, foot, 0, 0), place (page, foot, item->length, item->width));
  draw_waste (page, foot, item, board->plan);
  for (guint s = 0; s < board->plan->strips->len; s++)
    draw_strip (page, foot, item->length, g_ptr_array_index (board->plan->strips, s));
  for (guint s = 0; s < board->plan->strips->len; s++)
    draw_marks (page, foot, g_ptr_array_index (board->plan->strips, s));
  rw_draft_set (&page->draft, RW_LAYER_RIM, RW_SUBJECT_NONE);
  box (page, RW_PEN_OUTLINE, RW_TINT_NONE, place (page, foot, 0, 0), place (page, foot, item->length, item->width));
  page->y = foot - 1;
  for (guint s = 0; s < board->plan->strips->len; s++)
    strip_words (page, g_ptr_array_index (board->plan->strips, s), s + 1);
  offcut_words (page, board->plan);
  page->y -= GAP - LINE;
}

/* ---- bars ---- */

/* Puts words down where one more would not go on the line. */
static void
flow (Page *page, GString *line, const char *words, const char *between)
{
  double size = rw_letters_size (RW_LETTERS_SMALL);

  if (line->len > 0 && (rw_lettering_width (line->str) + rw_lettering_width (words) + 2) * size > page->width)
    {
      line_of_words (page, 0, RW_LETTERS_SMALL, line->str);
      g_string_truncate (line, 0);
    }
  g_string_append_printf (line, "%s%s", line->len > 0 ? between : "", words);
}

static void
bar_words (Page *page, const RwCutBar *bar)
{
  g_autofree char *rest = figure (page, bar->rest);
  g_autofree char *left = g_strdup_printf (_("Left: %s"), rest);
  GString *line = g_string_new (NULL);

  for (guint c = 0; c < bar->cuts->len; c++)
    {
      const RwBarCut *cut = &g_array_index (bar->cuts, RwBarCut, c);
      const RwPiece *piece = piece_at (page, cut->piece);
      g_autofree char *letters = rw_piece_mark (piece), *length = figure (page, piece->length), *words = NULL;

      /* Of frets there are as many lengths as frets. */
      if (piece->use == RW_PIECE_FRET)
        words = g_strdup_printf ("%s %s", letters, length);
      else
        words = g_strdup_printf (_("%d × %s (%s): %s"), cut->count, letters, _(rw_piece_label (piece->use)), length);
      flow (page, line, words, "; ");
    }
  flow (page, line, left, "; ");
  line_of_words (page, 0, RW_LETTERS_SMALL, line->str);
  g_string_free (line, TRUE);
}

static void
draw_bar (Page *page, const RwCutBar *bar)
{
  const RwStockItem *item = item_at (page, bar->item);
  RwTint tint = item->kind == RW_STOCK_BOARD ? RW_TINT_LIGHT_WOOD : RW_TINT_METAL;
  double kerf = item->kind == RW_STOCK_WIRE ? 0 : page->cutting->metal_kerf, at = page->cutting->bar_trim, foot;

  title (page, bar->item, bar->times);
  foot = page->y - BAND;
  rw_draft_set (&page->draft, RW_LAYER_HOOKS, RW_SUBJECT_NONE);
  box (page, RW_PEN_OUTLINE, RW_TINT_PAPER, (RwPoint){ 0, foot }, (RwPoint){ item->length * page->along, foot + BAND });
  for (guint c = 0; c < bar->cuts->len; c++)
    {
      const RwBarCut *cut = &g_array_index (bar->cuts, RwBarCut, c);
      const RwPiece *piece = piece_at (page, cut->piece);
      double length = piece->length, from = at;

      rw_draft_set (&page->draft, RW_LAYER_HOOKS, RW_SUBJECT_NONE);
      for (int n = 0; n < cut->count; n++, at += length + kerf)
        box (page, RW_PEN_OUTLINE, tint, (RwPoint){ at * page->along, foot },
             (RwPoint){ (at + length) * page->along, foot + BAND });
      g_autofree char *each = rw_piece_mark (piece);
      g_autofree char *row = cut->count > 1 ? g_strdup_printf ("%d × %s", cut->count, each) : g_strdup (each);
      double middle = (from + at - kerf) / 2 * page->along;
      if (cut->count > 1 || has_room (length * page->along, each))
        mark (page, (RwPoint){ middle, foot + BAND / 2 }, row, cut->count > 1);
    }
  if (at < item->length - page->cutting->bar_trim)
    hatched (page, (RwPoint){ at * page->along, foot }, (RwPoint){ item->length * page->along, foot + BAND }, 1);
  page->y = foot - 1;
  bar_words (page, bar);
  page->y -= GAP - LINE;
}

/* ---- what is missing ---- */

static void
draw_missing (Page *page)
{
  g_autoptr (GArray) shortages = rw_shortages (page->cutting);

  if (shortages->len == 0)
    return;
  line_of_words (page, 0, RW_LETTERS_LARGE, _("Missing"));
  for (guint i = 0; i < shortages->len; i++)
    {
      g_autofree char *words
          = rw_shortage_words (page->cutting, &g_array_index (shortages, RwShortage, i), page->style);

      line_of_words (page, 0, RW_LETTERS_SMALL, words);
    }
  page->y -= 2;
  line_of_words (page, 0, RW_LETTERS_LARGE, _("To buy, with spare"));
  for (guint i = 0; i < shortages->len; i++)
    {
      g_autofree char *words
          = rw_shortage_buy_words (page->cutting, &g_array_index (shortages, RwShortage, i), page->build, page->style);

      line_of_words (page, 0, RW_LETTERS_SMALL, words);
    }
  page->y -= GAP;
}

/* ---- pages ---- */

static double
longest (const RwCutting *cutting)
{
  double length = 1;

  for (guint k = 0; k < cutting->shelf->items->len; k++)
    length = MAX (length, ((const RwStockItem *) g_ptr_array_index (cutting->shelf->items, k))->length);
  return length;
}

static Page
page_begin (const RwCutting *cutting, const RwDesign *design, RwStyle style, double width)
{
  return (Page){ .draft = { .sheet = rw_sheet_new (_("Cutting plan"), style), .design = design },
                 .cutting = cutting, .build = design, .style = style, .width = width,
                 .along = (width - DIMENSIONS) / longest (cutting) };
}

/* Row n: what is missing, then boards, then bars; FALSE where there is no such row. */
static gboolean
draw_row (Page *page, guint n)
{
  guint boards = page->cutting->boards->len;

  if (n == 0)
    draw_missing (page);
  else if (n <= boards)
    draw_board (page, &g_array_index (page->cutting->boards, RwCutBoard, n - 1));
  else if (n <= boards + page->cutting->bars->len)
    draw_bar (page, g_ptr_array_index (page->cutting->bars, n - 1 - boards));
  else
    return FALSE;
  return TRUE;
}

static gboolean
row_height (const Page *like, guint n, double *height)
{
  Page trial = *like;
  gboolean there;

  trial.draft.sheet = rw_sheet_new ("", like->style);
  trial.y = 0;
  there = draw_row (&trial, n);
  *height = -trial.y;
  rw_sheet_free (trial.draft.sheet);
  return there;
}

RwSheet *
rw_draw_cutting (const RwCutting *cutting, const RwDesign *design, RwStyle style, double width, double height, int page)
{
  Page p = page_begin (cutting, design, style, width);
  int at = 0, drawn = 0;
  double tall;

  for (guint n = 0; at <= page && row_height (&p, n, &tall); n++)
    {
      if (height > 0 && -p.y + tall > height && -p.y > 0)
        {
          at++;
          p.y = 0;
        }
      if (at == page)
        drawn += draw_row (&p, n) && tall > 0;
      else
        p.y -= tall;
    }
  if (drawn > 0)
    return p.draft.sheet;
  rw_sheet_free (p.draft.sheet);
  return NULL;
}

double
rw_cutting_height (const RwSheet *sheet)
{
  double low = rw_sheet_extent (sheet).y0;

  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (item->kind == RW_ITEM_TEXT)
        low = MIN (low, item->p[0].y);
    }
  return -low + LINE;
}
