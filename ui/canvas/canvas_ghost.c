#include "canvas_private.h"

#include "canvas_stamp.h"

/* Outlines smaller than this are lost in a ghost, pixels; where so many move that the whole build does, the
 * large ones tell it all. */
#define GHOST_LEAST 20.0
#define GHOST_MANY 24
#define GHOST_LARGE 80.0
#define GHOST_TRIED 4.0

static gboolean
is_outline (const RwItem *item)
{
  return item->kind == RW_ITEM_PATH && item->pen == RW_PEN_OUTLINE;
}

static GHashTable *
outline_hashes (const RwSheet *sheet)
{
  GHashTable *hashes = g_hash_table_new_full (g_int64_hash, g_int64_equal, g_free, NULL);

  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);
      guint64 hash = rw_path_hash (sheet, item);

      if (is_outline (item))
        g_hash_table_add (hashes, g_memdup2 (&hash, sizeof hash));
    }
  return hashes;
}

/* Only the outlines that have gone elsewhere: what stands still needs no ghost.  An array of RwItem. */
static GArray *
moved_outlines (const RwSheet *before, const RwSheet *now)
{
  g_autoptr (GHashTable) hashes = outline_hashes (now);
  GArray *moved = g_array_new (FALSE, FALSE, sizeof (RwItem));

  for (guint i = 0; i < before->items->len; i++)
    {
      const RwItem *item = &g_array_index (before->items, RwItem, i);
      guint64 hash = rw_path_hash (before, item);

      if (is_outline (item) && !g_hash_table_contains (hashes, &hash))
        g_array_append_vals (moved, item, 1);
    }
  return moved;
}

/* Drawn as neighbouring parts are, without fills; the small ones are left out. */
static void
make_ghostly (GArray *items, const RwSheet *sheet, double least)
{
  for (guint i = items->len; i-- > 0;)
    {
      RwItem *item = &g_array_index (items, RwItem, i);
      RwBox box = rw_path_box (sheet, item);

      item->pen = RW_PEN_PHANTOM;
      item->tint = RW_TINT_NONE;
      if (MAX (box.x1 - box.x0, box.y1 - box.y0) < least)
        g_array_remove_index (items, i);
    }
}

void
rw_canvas_drop_ghost (RwCanvas *self)
{
  rw_canvas_fade_ghost (self);
  g_clear_pointer (&self->ghost_sheet, rw_sheet_free);
}

void
rw_canvas_fade_ghost (RwCanvas *self)
{
  rw_raster_touch (self->raster);
  g_clear_pointer (&self->ghost.items, g_array_unref);
}

static const RwResult *
result_before (RwCanvas *self)
{
  const RwResult *start = rw_document_drag_start (self->document);
  const RwResult *preview = rw_document_preview_result (self->document);

  if (start != NULL)
    return start;
  return preview != NULL ? preview : rw_document_reference (self->document);
}

/* Pixels.  What is only tried stands still, and is shown in full. */
static double
least_size (RwCanvas *self)
{
  if (self->ghost_of == rw_document_preview_result (self->document))
    return GHOST_TRIED;
  return self->ghost.items->len > GHOST_MANY ? GHOST_LARGE : GHOST_LEAST;
}

const RwSheet *
rw_canvas_ghost (RwCanvas *self)
{
  const RwResult *before = result_before (self);

  if (before != self->ghost_of)
    rw_canvas_drop_ghost (self);
  self->ghost_of = before;
  if (before == NULL)
    return NULL;
  if (self->ghost.items == NULL)
    {
      g_clear_pointer (&self->ghost_sheet, rw_sheet_free);
      self->ghost_sheet = rw_draw_like (self->view, before, NULL, rw_document_style (self->document),
                                        rw_document_now (self->document));
      self->ghost.items = moved_outlines (self->ghost_sheet, rw_canvas_sheet (self));
      self->ghost.ops = self->ghost_sheet->ops;
      make_ghostly (self->ghost.items, self->ghost_sheet, least_size (self) / self->place.zoom);
    }
  return &self->ghost;
}
