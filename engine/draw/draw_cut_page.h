/* What the pictures of a cutting plan share: a page that is filled from the top, its words and its marks.
 *
 * Private to draw_cut*.c.  1 mm of the sheet is 1 mm of paper.
 */
#pragma once

#include "draw_parts.h"
#include "stock/shortage.h"

#define RW_CUT_LINE 4.4 /* from one line of words to the next */
#define RW_CUT_GAP 7.0  /* under a row */

typedef struct
{
  RwDraft          draft;
  const RwCutting *cutting;
  const RwDesign  *build;
  RwStyle          style;
  double           width, along; /* scale along the grain */
  double           y;            /* the next line stands under it */
} RwCutPage;

const RwPiece     *rw_cut_page_piece (const RwCutPage *page, int i);
const RwStockItem *rw_cut_page_item  (const RwCutPage *page, int k);

/* A length, mm, in the page's units, without them.  New. */
char *rw_cut_page_figure (const RwCutPage *page, double length);
/* The same of a rough length: fractions of an inch are rounded up, so that no piece comes out too short.  New. */
char *rw_cut_page_rough  (const RwCutPage *page, double length);
/* The next line of words, or as many as they take; all begin at x. */
void  rw_cut_page_words  (RwCutPage *page, double x, RwLetters letters, const char *words);
/* What is cut, and how many of it alike. */
void  rw_cut_page_title  (RwCutPage *page, int item, int times);

void rw_cut_page_box   (RwCutPage *page, RwPen pen, RwTint tint, RwPoint a, RwPoint b);
void rw_cut_page_hatch (RwCutPage *page, RwPoint a, RwPoint b, int lean);

/* Lettering in the middle of a shape, and whether a shape is wide enough for it; covered is for what would run over
 * lines. */
void     rw_cut_page_mark     (RwCutPage *page, RwPoint middle, const char *words, gboolean covered);
gboolean rw_cut_page_has_room (double width, const char *words);

/* Rows, each put down under what is there: draw_cut_board.c, draw_cut_bar.c. */
void rw_cut_page_board (RwCutPage *page, const RwCutBoard *board);
void rw_cut_page_bar   (RwCutPage *page, const RwCutBar *bar);
