#include "shortage.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#include "table/material.h"

static const RwPiece *
piece_of (const RwCutting *cutting, const RwShortage *shortage)
{
  return &g_array_index (cutting->pieces, RwPiece, shortage->piece);
}

/* What the stock that suits has at most: thickness; width, where it is thick enough; length, where it is both. */
typedef struct
{
  gboolean any;
  double   thickness, width, length;
} Most;

static double
longest_zone (const RwCutting *cutting, const RwStockItem *item)
{
  RwBoardTask task = { .end_trim = cutting->end_trim };
  RwBoardStock stock = { item->length, item->width, item->thickness, 1, item->avoid };
  g_autoptr (GArray) zones = rw_board_zones (&task, &stock);
  double longest = 0;

  for (guint z = 0; z < zones->len; z++)
    {
      const RwStretch *zone = &g_array_index (zones, RwStretch, z);

      longest = MAX (longest, zone->to - zone->from);
    }
  return longest;
}

static void
look_at (const RwCutting *cutting, const RwPiece *piece, const RwStockItem *item, Most *most)
{
  gboolean wood = piece->kind == RW_STOCK_BOARD;
  double length = wood ? longest_zone (cutting, item) : item->length - 2 * cutting->bar_trim;
  double width = wood ? item->width - 2 * cutting->edge_trim : item->width;

  most->any = TRUE;
  if (!wood)
    {
      most->length = MAX (most->length, length);
      return;
    }
  for (int edge = 0; edge <= (piece->on_edge ? 1 : 0); edge++)
    {
      double thick = edge ? piece->width : piece->thickness, wide = edge ? piece->thickness : piece->width;

      /* Lying, unless only on edge it is thick enough. */
      if (!edge)
        most->thickness = MAX (most->thickness, item->thickness);
      if (item->thickness < thick - 1e-6)
        continue;
      most->width = MAX (most->width, edge ? width + (piece->width - piece->thickness) : width);
      if (width >= wide - 1e-6)
        most->length = MAX (most->length, length);
    }
}

/* Of one kind of piece, its kerfs included but for the last one. */
static double
stock_length (const RwCutting *cutting, const RwPiece *piece, int count)
{
  double kerf = piece->kind == RW_STOCK_BOARD ? cutting->cross_kerf : cutting->metal_kerf;
  double trim = piece->kind == RW_STOCK_BOARD ? cutting->end_trim : cutting->bar_trim;

  if (piece->kind == RW_STOCK_WIRE)
    kerf = 0;
  return count * (piece->length + kerf) - kerf + 2 * trim + piece->run;
}

static RwShortage
find_reason (const RwCutting *cutting, int at)
{
  const RwPiece *piece = &g_array_index (cutting->pieces, RwPiece, at);
  int count = cutting->missing[at];
  RwShortage s = { at, at, count, RW_SHORT_AMOUNT, 0, stock_length (cutting, piece, count) };
  double length = piece->length + piece->run;
  Most most = { FALSE, 0, 0, 0 };

  for (guint k = 0; k < cutting->shelf->items->len; k++)
    {
      const RwStockItem *item = g_ptr_array_index (cutting->shelf->items, k);

      if (item->count > 0 && rw_piece_suits (piece, item))
        look_at (cutting, piece, item, &most);
    }
  if (!most.any)
    s.reason = RW_SHORT_NONE_THERE;
  else if (piece->kind == RW_STOCK_BOARD && !(most.width > 0))
    s = (RwShortage){ at, at, count, RW_SHORT_THICKNESS, most.thickness, piece->thickness };
  else if (piece->kind == RW_STOCK_BOARD && !(most.length > 0))
    s = (RwShortage){ at, at, count, RW_SHORT_WIDTH, most.width, piece->width };
  else if (most.length < length - 1e-6)
    s = (RwShortage){ at, at, count, RW_SHORT_LENGTH, most.length, length };
  return s;
}

/* Whether one bar or wire, of which there is none, would do for both. */
static gboolean
is_one_buy (const RwCutting *cutting, const RwShortage *before, const RwShortage *s)
{
  const RwPiece *a = piece_of (cutting, before), *b = piece_of (cutting, s);

  return before->reason == RW_SHORT_NONE_THERE && s->reason == RW_SHORT_NONE_THERE && a->kind != RW_STOCK_BOARD
         && a->use == b->use && a->kind == b->kind && g_strcmp0 (a->material, b->material) == 0
         && fabs (a->width - b->width) < 1e-6 && fabs (a->thickness - b->thickness) < 1e-6;
}

GArray *
rw_shortages (const RwCutting *cutting)
{
  GArray *shortages = g_array_new (FALSE, FALSE, sizeof (RwShortage));

  for (guint i = 0; i < cutting->pieces->len; i++)
    if (cutting->missing[i] > 0)
      {
        RwShortage shortage = find_reason (cutting, (int) i);
        RwShortage *before
            = shortages->len > 0 ? &g_array_index (shortages, RwShortage, shortages->len - 1) : NULL;

        if (before == NULL || !is_one_buy (cutting, before, &shortage))
          {
            g_array_append_val (shortages, shortage);
            continue;
          }
        before->last = shortage.piece;
        before->count += shortage.count;
        before->needed += shortage.needed;
      }
  return shortages;
}

/* ---- words ---- */

static const char *
material_label (const RwPiece *piece)
{
  int wood = piece->material != NULL ? rw_wood_find (piece->material) : -1;
  int metal = piece->material != NULL ? rw_metal_find (piece->material) : -1;

  return wood >= 0 ? _(rw_woods[wood].label) : metal >= 0 ? _(rw_metals[metal].label) : _("Any metal");
}

static char *
with_unit (double length, RwStyle style)
{
  g_autofree char *figure = rw_quantity_write (length, "mm", style.units, 1, style.decimal);

  return g_strdup_printf ("%s %s", figure, rw_quantity_unit ("mm", style.units));
}

/* "Fret 1", or "Fret 1 to Fret 19".  New. */
static char *
what_words (const RwCutting *cutting, const RwShortage *shortage)
{
  g_autofree char *first = rw_piece_words (piece_of (cutting, shortage));
  g_autofree char *last = rw_piece_words (&g_array_index (cutting->pieces, RwPiece, shortage->last));

  if (shortage->last == shortage->piece)
    return g_steal_pointer (&first);
  return g_strdup_printf (C_("pieces", "%s to %s"), first, last);
}

char *
rw_shortage_words (const RwCutting *cutting, const RwShortage *shortage, RwStyle style)
{
  const RwPiece *piece = piece_of (cutting, shortage);
  g_autofree char *what = what_words (cutting, shortage), *there = with_unit (shortage->there, style);
  g_autofree char *needed = with_unit (shortage->needed, style);
  g_autofree char *by = with_unit (shortage->needed - shortage->there, style);

  switch (shortage->reason)
    {
    case RW_SHORT_NONE_THERE:
      return g_strdup_printf (_("%s: %d missing; there is none of it: %s"), what, shortage->count,
                              material_label (piece));
    case RW_SHORT_THICKNESS:
      return g_strdup_printf (_("%s: %d missing; it asks for %s of thickness, and the thickest has %s: %s too little"),
                              what, shortage->count, needed, there, by);
    case RW_SHORT_WIDTH:
      return g_strdup_printf (_("%s: %d missing; it asks for %s of width, and the widest that is thick enough has %s: "
                                "%s too little"), what, shortage->count, needed, there, by);
    case RW_SHORT_LENGTH:
      return g_strdup_printf (_("%s: %d missing; it asks for %s of length, and the longest that will do has %s: %s too "
                                "little"), what, shortage->count, needed, there, by);
    default:
      return g_strdup_printf (_("%s: %d missing; there is no room left for them, and they take another %s"), what,
                              shortage->count, needed);
    }
}

/* How many to count on, with spare: what is one of its kind has none. */
static int
with_spare (int count, const RwDesign *design)
{
  return count > 1 ? (int) ceil (count * (1 + design->stock_spare / 100) - 1e-9) : 1;
}

/* Of all that a shortage tells together; the waste at the ends is there once. */
static double
length_to_buy (const RwCutting *cutting, const RwShortage *shortage, const RwDesign *design)
{
  const RwPiece *first = piece_of (cutting, shortage);
  double length = 0;

  if (shortage->last == shortage->piece)
    return stock_length (cutting, first, with_spare (shortage->count, design));
  for (int i = shortage->piece; i <= shortage->last; i++)
    {
      const RwPiece *piece = &g_array_index (cutting->pieces, RwPiece, i);
      double cut = piece->kind == RW_STOCK_WIRE ? 0 : cutting->metal_kerf;

      length += cutting->missing[i] * (piece->length + cut);
    }
  return length * (1 + design->stock_spare / 100) + 2 * cutting->bar_trim;
}

RwStockItem *
rw_shortage_buy (const RwCutting *cutting, const RwShortage *shortage, const RwDesign *design)
{
  const RwPiece *piece = piece_of (cutting, shortage);
  RwStockItem *item = rw_stock_item_new (piece->kind);
  double edges = piece->kind == RW_STOCK_BOARD ? 2 * cutting->edge_trim : 0;

  g_free (item->material);
  item->material = g_strdup (piece->material != NULL ? piece->material : rw_metals[0].id);
  item->length = ceil (length_to_buy (cutting, shortage, design) - 1e-9);
  item->width = piece->kind == RW_STOCK_BOARD ? ceil (piece->width + edges - 1e-9) : piece->width;
  item->thickness = piece->thickness;
  return item;
}

char *
rw_shortage_buy_words (const RwCutting *cutting, const RwShortage *shortage, const RwDesign *design, RwStyle style)
{
  const RwPiece *piece = piece_of (cutting, shortage);
  g_autoptr (RwStockItem) item = rw_shortage_buy (cutting, shortage, design);
  g_autofree char *what = what_words (cutting, shortage), *length = with_unit (item->length, style);
  g_autofree char *width = with_unit (item->width, style), *thickness = with_unit (item->thickness, style);

  if (rw_stock_kind_is_thick (item->kind))
    return g_strdup_printf (_("%s: %s, %s long, %s wide, %s thick"), what, material_label (piece), length, width,
                            thickness);
  return g_strdup_printf (_("%s: %s, %s long, %s in diameter"), what, material_label (piece), length, width);
}
