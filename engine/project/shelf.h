/* The shelf: what there is to build from.  Plain data, kept in a project or shared between projects. */
#pragma once

#include <glib.h>

typedef enum
{
  RW_STOCK_BOARD,
  RW_STOCK_SHEET,
  RW_STOCK_BAR,  /* of metal, rectangular */
  RW_STOCK_ROD,  /* round */
  RW_STOCK_TUBE,
  RW_STOCK_WIRE, /* also fret wire */
  RW_STOCK_KIND_COUNT,
} RwStockKind;

/* Part of a board's length that is no good: a split end, a knot. */
typedef struct
{
  double from, to; /* mm from the marked end */
} RwStretch;

typedef struct
{
  char       *name;     /* the maker's own: "Off-cut by the door" */
  RwStockKind kind;
  char       *material; /* id of a wood or of a metal */
  double      length;   /* mm; the grain of a board runs along it */
  double      width;    /* board, sheet, bar: the larger side; rod, tube, wire: diameter; fret wire: of its crown */
  double      thickness; /* board, sheet, bar: the smaller side; tube: wall; else 0 */
  int         count;
  double      price;    /* of one, in the maker's currency; 0: not known */
  double      mass_g;   /* of one, weighed; 0: worked out */
  GArray     *avoid;    /* of RwStretch */
} RwStockItem;

#define RW_STOCK_LENGTH_MAX 20000.0
#define RW_STOCK_COUNT_MAX 999
#define RW_SHELF_MAX 500 /* rows */

typedef struct
{
  GPtrArray *items; /* of RwStockItem */
} RwShelf;

RwStockItem *rw_stock_item_new   (RwStockKind kind); /* one, without a name or sizes */
RwStockItem *rw_stock_item_copy  (const RwStockItem *item);
gboolean     rw_stock_item_equal (const RwStockItem *a, const RwStockItem *b);
void         rw_stock_item_free  (RwStockItem *item);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwStockItem, rw_stock_item_free)

/* Weighed, or from its volume and the density of its material; g of one. */
double       rw_stock_item_mass   (const RwStockItem *item);
gboolean     rw_stock_is_wood     (const RwStockItem *item);
const char  *rw_stock_kind_id     (RwStockKind kind); /* "board" ... */
const char  *rw_stock_kind_label  (RwStockKind kind);
/* Whether the kind has a thickness (or, a tube, a wall). */
gboolean     rw_stock_kind_is_thick (RwStockKind kind);

RwShelf *rw_shelf_new   (void);
RwShelf *rw_shelf_copy  (const RwShelf *shelf);
gboolean rw_shelf_equal (const RwShelf *a, const RwShelf *b);
void     rw_shelf_free  (RwShelf *shelf);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwShelf, rw_shelf_free)
