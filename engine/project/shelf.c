#include "shelf.h"

#include <math.h>
#include <string.h>

#include "table/material.h"

static const struct
{
  const char *id;
  const char *label;
  gboolean    thick;
} kinds[RW_STOCK_KIND_COUNT] = {
  [RW_STOCK_BOARD] = { "board", N_("Board"), TRUE },
  [RW_STOCK_SHEET] = { "sheet", N_("Sheet"), TRUE },
  [RW_STOCK_BAR] = { "bar", N_("Bar"), TRUE },
  [RW_STOCK_ROD] = { "rod", N_("Rod"), FALSE },
  [RW_STOCK_TUBE] = { "tube", N_("Tube"), TRUE },
  [RW_STOCK_WIRE] = { "wire", N_("Wire"), FALSE },
};

const char *
rw_stock_kind_id (RwStockKind kind)
{
  return kinds[kind].id;
}

const char *
rw_stock_kind_label (RwStockKind kind)
{
  return kinds[kind].label;
}

gboolean
rw_stock_kind_is_thick (RwStockKind kind)
{
  return kinds[kind].thick;
}

/* ---- items ---- */

RwStockItem *
rw_stock_item_new (RwStockKind kind)
{
  RwStockItem *item = g_new0 (RwStockItem, 1);

  item->name = g_strdup ("");
  item->kind = kind;
  item->material = g_strdup (kind == RW_STOCK_BOARD || kind == RW_STOCK_SHEET ? rw_woods[0].id : rw_metals[0].id);
  item->count = 1;
  item->avoid = g_array_new (FALSE, FALSE, sizeof (RwStretch));
  return item;
}

RwStockItem *
rw_stock_item_copy (const RwStockItem *item)
{
  RwStockItem *copy = g_memdup2 (item, sizeof *item);

  copy->name = g_strdup (item->name);
  copy->material = g_strdup (item->material);
  copy->avoid = g_array_copy (item->avoid);
  return copy;
}

static gboolean
same_stretches (const GArray *a, const GArray *b)
{
  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    {
      const RwStretch *p = &g_array_index (a, RwStretch, i), *q = &g_array_index (b, RwStretch, i);

      if (fabs (p->from - q->from) > 0 || fabs (p->to - q->to) > 0)
        return FALSE;
    }
  return TRUE;
}

gboolean
rw_stock_item_equal (const RwStockItem *a, const RwStockItem *b)
{
  double apart = fabs (a->length - b->length) + fabs (a->width - b->width) + fabs (a->price - b->price)
                 + fabs (a->mass_g - b->mass_g);

  /* What is no size of the kind says nothing. */
  if (rw_stock_kind_is_thick (a->kind))
    apart += fabs (a->thickness - b->thickness);
  return a->kind == b->kind && a->count == b->count && !(apart > 0)
         && strcmp (a->name, b->name) == 0 && strcmp (a->material, b->material) == 0
         && same_stretches (a->avoid, b->avoid);
}

void
rw_stock_item_free (RwStockItem *item)
{
  if (item == NULL)
    return;
  g_free (item->name);
  g_free (item->material);
  g_array_unref (item->avoid);
  g_free (item);
}

gboolean
rw_stock_is_wood (const RwStockItem *item)
{
  return rw_wood_find (item->material) >= 0;
}

/* mm2 across. */
static double
section_of (const RwStockItem *item)
{
  switch (item->kind)
    {
    case RW_STOCK_ROD:
    case RW_STOCK_WIRE:
      return G_PI / 4 * item->width * item->width;
    case RW_STOCK_TUBE:
      return G_PI * (item->width - item->thickness) * item->thickness;
    default:
      return item->width * item->thickness;
    }
}

double
rw_stock_item_mass (const RwStockItem *item)
{
  int wood = rw_wood_find (item->material), metal = rw_metal_find (item->material);
  double density = wood >= 0 ? rw_woods[wood].density_kg_m3 : metal >= 0 ? rw_metals[metal].density_kg_m3 : 0;

  return item->mass_g > 0 ? item->mass_g : section_of (item) * item->length * density * 1e-6;
}

/* ---- the shelf ---- */

RwShelf *
rw_shelf_new (void)
{
  RwShelf *shelf = g_new (RwShelf, 1);

  shelf->items = g_ptr_array_new_with_free_func ((GDestroyNotify) rw_stock_item_free);
  return shelf;
}

RwShelf *
rw_shelf_copy (const RwShelf *shelf)
{
  RwShelf *copy = rw_shelf_new ();

  for (guint i = 0; i < shelf->items->len; i++)
    g_ptr_array_add (copy->items, rw_stock_item_copy (g_ptr_array_index (shelf->items, i)));
  return copy;
}

gboolean
rw_shelf_equal (const RwShelf *a, const RwShelf *b)
{
  if (a->items->len != b->items->len)
    return FALSE;
  for (guint i = 0; i < a->items->len; i++)
    if (!rw_stock_item_equal (g_ptr_array_index (a->items, i), g_ptr_array_index (b->items, i)))
      return FALSE;
  return TRUE;
}

void
rw_shelf_free (RwShelf *shelf)
{
  if (shelf == NULL)
    return;
  g_ptr_array_unref (shelf->items);
  g_free (shelf);
}
