#include "dimension_item.h"

#include <math.h>

#include "base/words.h"

struct _RwDimensionItem
{
  GObject parent;

  char       *title;
  GListStore *children;  /* NULL for a dimension */
  GPtrArray  *collected; /* of RwDimensionItem, not owned: what the children are to be */
  RwRow       row;
};

G_DEFINE_FINAL_TYPE (RwDimensionItem, rw_dimension_item, G_TYPE_OBJECT)

static guint changed_signal;

static void
rw_dimension_item_finalize (GObject *object)
{
  RwDimensionItem *self = RW_DIMENSION_ITEM (object);

  g_free (self->title);
  g_clear_object (&self->children);
  g_clear_pointer (&self->collected, g_ptr_array_unref);
  G_OBJECT_CLASS (rw_dimension_item_parent_class)->finalize (object);
}

static void
rw_dimension_item_class_init (RwDimensionItemClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = rw_dimension_item_finalize;
  changed_signal = g_signal_new ("changed", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                 G_TYPE_NONE, 0);
}

static void
rw_dimension_item_init (RwDimensionItem *self)
{
}

RwDimensionItem *
rw_dimension_item_new_heading (const char *title)
{
  RwDimensionItem *self = g_object_new (RW_TYPE_DIMENSION_ITEM, NULL);

  self->title = g_strdup (title);
  self->children = g_list_store_new (RW_TYPE_DIMENSION_ITEM);
  self->collected = g_ptr_array_new ();
  return self;
}

RwDimensionItem *
rw_dimension_item_new (RwSlot slot)
{
  RwDimensionItem *self = g_object_new (RW_TYPE_DIMENSION_ITEM, NULL);

  self->title = rw_slot_words (slot);
  self->row = (RwRow){ slot, NAN, NAN, NAN, NAN, NAN };
  return self;
}

const char *
rw_dimension_item_title (RwDimensionItem *self)
{
  return self->title;
}

GListModel *
rw_dimension_item_children (RwDimensionItem *self)
{
  return self->children != NULL ? G_LIST_MODEL (self->children) : NULL;
}

const RwRow *
rw_dimension_item_row (RwDimensionItem *self)
{
  return self->children == NULL ? &self->row : NULL;
}

/* Not a number is the same as not a number here. */
static gboolean
same (double a, double b)
{
  return a == b || (isnan (a) && isnan (b));
}

void
rw_dimension_item_set_row (RwDimensionItem *self, const RwRow *row)
{
  if (same (row->value, self->row.value) && same (row->planned, self->row.planned)
      && same (row->measured, self->row.measured) && same (row->made, self->row.made)
      && same (row->asked, self->row.asked))
    return;
  self->row = *row;
  g_signal_emit (self, changed_signal, 0);
}

void
rw_dimension_item_collect (RwDimensionItem *heading, RwDimensionItem *child)
{
  g_ptr_array_add (heading->collected, child);
}

static gboolean
stands_at (GListModel *list, guint place, gpointer item)
{
  g_autoptr (GObject) present = g_list_model_get_item (list, place);

  return present == item;
}

void
rw_dimension_item_arrange (RwDimensionItem *heading)
{
  GPtrArray *wanted = heading->collected;
  GListModel *list = G_LIST_MODEL (heading->children);
  guint have = g_list_model_get_n_items (list), first = 0, last = 0, room = MIN (have, wanted->len);

  while (first < room && stands_at (list, first, wanted->pdata[first]))
    first++;
  while (last < room - first && stands_at (list, have - last - 1, wanted->pdata[wanted->len - last - 1]))
    last++;
  if (first + last < have || first + last < wanted->len)
    g_list_store_splice (heading->children, first, have - first - last, wanted->pdata + first,
                         wanted->len - first - last);
  g_ptr_array_set_size (wanted, 0);
}
