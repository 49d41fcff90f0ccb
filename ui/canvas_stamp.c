#include "canvas_stamp.h"

#include <math.h>

#include "canvas_view.h"

/* Half of the widest line, and what antialiasing adds, pixels. */
#define LINE_REACH 3.0

/* Boxes are put together where that adds less than a tenth, or as much as a small patch costs anyway.  On a large
 * screen pixels cost more than boxes: each goes through memory half a dozen times on its way to the eye. */
#define WASTE 1.1
#define SMALL_AREA 1000.0
#define BOXES_MAX 24

/* Less than a thousandth of a micrometre is noise. */
#define NOISE 1e-6

/* What a part is: a path, a mark or a text of an item, the n-th of its kind there. */
#define KEY(kind, item, n) ((guint64) (kind) << 48 | (guint64) (item) << 16 | (guint64) (n))

typedef enum
{
  PART_PATH,
  PART_MARK, /* + RwMarkKind */
  PART_TEXT = 16,
  PART_GHOST,
} Part;

typedef struct
{
  guint64 key;
  guint64 look;         /* all but its points */
  guint   first, count; /* of points, pixels */
  RwBox   box;          /* pixels, y up */
} Stamp;

struct _RwStamps
{
  GArray *stamps;
  GArray *points;
};

/* ---- hashes (FNV-1a, 64 bit) ---- */

#define HASH_START G_GUINT64_CONSTANT (0xcbf29ce484222325)
#define HASH_STEP G_GUINT64_CONSTANT (0x100000001b3)

static guint64
mix (guint64 hash, guint64 word)
{
  return (hash ^ word) * HASH_STEP ^ hash >> 29;
}

static guint64
mix_number (guint64 hash, double number)
{
  return mix (hash, (guint64) llround (number / NOISE));
}

static int
points_of (const RwPathOp *op)
{
  return op->verb == RW_VERB_CLOSE ? 0 : op->verb == RW_VERB_CURVE ? 3 : 1;
}

guint64
rw_path_hash (const RwSheet *sheet, const RwItem *item)
{
  guint64 hash = HASH_START;

  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = &g_array_index (sheet->ops, RwPathOp, item->op_first + i);

      hash = mix (hash, op->verb);
      for (int k = 0; k < points_of (op); k++)
        hash = mix_number (mix_number (hash, op->p[k].x), op->p[k].y);
      if (op->verb == RW_VERB_ARC)
        hash = mix_number (mix_number (mix_number (hash, op->radius), op->a0), op->a1);
    }
  return hash;
}

/* ---- boxes ---- */

static RwBox
no_box (void)
{
  return (RwBox){ HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL };
}

static RwBox
both (RwBox a, RwBox b)
{
  return (RwBox){ MIN (a.x0, b.x0), MIN (a.y0, b.y0), MAX (a.x1, b.x1), MAX (a.y1, b.y1) };
}

static void
include (RwBox *box, RwPoint p)
{
  *box = both (*box, (RwBox){ p.x, p.y, p.x, p.y });
}

static RwPoint
on_circle (RwPoint centre, double radius, double angle)
{
  return (RwPoint){ centre.x + radius * cos (angle), centre.y + radius * sin (angle) };
}

/* Its ends, and where it turns round at a quarter of the circle. */
static void
include_arc (RwBox *box, RwPoint centre, double radius, double a0, double a1)
{
  double low = MIN (a0, a1), high = MAX (a0, a1);

  include (box, on_circle (centre, radius, low));
  include (box, on_circle (centre, radius, high));
  for (double quarter = ceil (low / G_PI_2); quarter * G_PI_2 < high; quarter++)
    include (box, on_circle (centre, radius, quarter * G_PI_2));
}

RwBox
rw_path_box (const RwSheet *sheet, const RwItem *item)
{
  RwBox box = no_box ();

  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = &g_array_index (sheet->ops, RwPathOp, item->op_first + i);

      if (op->verb == RW_VERB_ARC)
        include_arc (&box, op->p[0], op->radius, op->a0, op->a1);
      else
        for (int k = 0; k < points_of (op); k++)
          include (&box, op->p[k]);
    }
  return box;
}

/* ---- stamps ---- */

static void
add_point (RwStamps *self, RwPoint p, double scale)
{
  RwPoint pixels = { p.x * scale, p.y * scale };

  g_array_append_val (self->points, pixels);
}

static void
add_arc (RwStamps *self, RwPoint centre, double radius, double a0, double a1, double scale)
{
  add_point (self, centre, scale);
  add_point (self, (RwPoint){ radius, 0 }, scale);
  add_point (self, on_circle (centre, radius, a0), scale);
  add_point (self, on_circle (centre, radius, a1), scale);
}

/* Ends a stamp whose points are those from first on. */
static void
add_stamp (RwStamps *self, guint64 key, guint64 look, guint first, RwBox box, double scale)
{
  Stamp stamp = { key, look, first, self->points->len - first,
                  { box.x0 * scale, box.y0 * scale, box.x1 * scale, box.y1 * scale } };

  g_array_append_val (self->stamps, stamp);
}

static void
stamp_path (RwStamps *self, const RwSheet *sheet, const RwItem *item, double zoom, guint64 key)
{
  guint64 look = mix (mix (HASH_START, item->pen), item->tint);
  guint first = self->points->len;

  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = &g_array_index (sheet->ops, RwPathOp, item->op_first + i);

      look = mix (look, op->verb);
      if (op->verb == RW_VERB_ARC)
        add_arc (self, op->p[0], op->radius, op->a0, op->a1, zoom);
      else
        for (int k = 0; k < points_of (op); k++)
          add_point (self, op->p[k], zoom);
    }
  add_stamp (self, key, look, first, rw_path_box (sheet, item), zoom);
}

static void
stamp_mark (RwStamps *self, const RwPlacedMark *mark, int n)
{
  double scale = RW_PX_PER_PAPER_MM;
  guint first = self->points->len;
  RwBox box = no_box ();

  if (mark->kind == RW_MARK_ARC)
    {
      add_arc (self, mark->p[0], mark->radius, mark->a0, mark->a1, scale);
      include_arc (&box, mark->p[0], mark->radius, mark->a0, mark->a1);
    }
  else
    for (int i = 0; i < (mark->kind == RW_MARK_HEAD ? 3 : 2); i++)
      {
        add_point (self, mark->p[i], scale);
        include (&box, mark->p[i]);
      }
  add_stamp (self, KEY (PART_MARK + mark->kind, mark->item, n), mark->kind, first, box, scale);
}

static void
stamp_text (RwStamps *self, const RwPlacedText *text, int n)
{
  guint64 look = mix (mix_number (mix_number (HASH_START, text->turn), text->size), text->figure);
  guint first = self->points->len;

  for (const char *p = text->text; *p != '\0'; p++)
    look = mix (look, (guchar) *p);
  add_point (self, text->at, RW_PX_PER_PAPER_MM);
  add_stamp (self, KEY (PART_TEXT, text->item, n), look, first, text->box, RW_PX_PER_PAPER_MM);
}

RwStamps *
rw_stamps_new (const RwLayout *layout, const RwSheet *ghost)
{
  double zoom = layout->scale * RW_PX_PER_PAPER_MM;
  RwStamps *self = g_new (RwStamps, 1);
  int n = 0;

  self->stamps = g_array_new (FALSE, FALSE, sizeof (Stamp));
  self->points = g_array_new (FALSE, FALSE, sizeof (RwPoint));
  for (guint i = 0; i < layout->sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (layout->sheet->items, RwItem, i);

      if (item->kind == RW_ITEM_PATH)
        stamp_path (self, layout->sheet, item, zoom, KEY (PART_PATH, i, 0));
    }
  for (guint i = 0; ghost != NULL && i < ghost->items->len; i++)
    {
      const RwItem *item = &g_array_index (ghost->items, RwItem, i);

      stamp_path (self, ghost, item, zoom, KEY (PART_GHOST, item->op_first, 0));
    }
  for (guint i = 0; i < layout->marks->len; i++)
    {
      const RwPlacedMark *mark = &g_array_index (layout->marks, RwPlacedMark, i);

      n = i > 0 && mark[-1].item == mark->item ? n + 1 : 0;
      stamp_mark (self, mark, n);
    }
  for (guint i = 0; i < layout->texts->len; i++)
    stamp_text (self, &g_array_index (layout->texts, RwPlacedText, i), 0);
  return self;
}

void
rw_stamps_free (RwStamps *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->stamps);
  g_array_unref (self->points);
  g_free (self);
}

/* ---- few boxes out of many ---- */

static double
area (RwBox box)
{
  return (box.x1 - box.x0) * (box.y1 - box.y0);
}

/* What two boxes cost more as one than each by itself. */
static double
waste (RwBox a, RwBox b)
{
  return area (both (a, b)) - WASTE * (area (a) + area (b)) - SMALL_AREA;
}

/* Puts the two together that suit each other best, if they suit each other or must. */
static gboolean
merge_best (GArray *boxes, gboolean must)
{
  double least = must ? HUGE_VAL : 0;
  guint first = 0, second = 0;

  for (guint i = 0; i < boxes->len; i++)
    for (guint j = i + 1; j < boxes->len; j++)
      {
        double w = waste (g_array_index (boxes, RwBox, i), g_array_index (boxes, RwBox, j));

        if (w < least)
          {
            least = w;
            first = i;
            second = j;
          }
      }
  if (first == second)
    return FALSE;
  g_array_index (boxes, RwBox, first) = both (g_array_index (boxes, RwBox, first),
                                              g_array_index (boxes, RwBox, second));
  g_array_remove_index_fast (boxes, second);
  return TRUE;
}

/* From y up to y down, on whole pixels, with room for the lines. */
static void
add_box (GArray *boxes, RwBox up)
{
  RwBox box = { floor (up.x0 - LINE_REACH), floor (-up.y1 - LINE_REACH), ceil (up.x1 + LINE_REACH),
                ceil (-up.y0 + LINE_REACH) };

  for (guint i = 0; i < boxes->len; i++)
    {
      RwBox *other = &g_array_index (boxes, RwBox, i);

      if (waste (*other, box) <= 0)
        {
          *other = both (*other, box);
          return;
        }
    }
  g_array_append_val (boxes, box);
  if (boxes->len > 2 * BOXES_MAX)
    merge_best (boxes, TRUE);
}

/* ---- differences ---- */

static gboolean
same_points (const RwStamps *a, const Stamp *x, const RwStamps *b, const Stamp *y, double grain)
{
  for (guint i = 0; i < x->count; i++)
    {
      RwPoint p = g_array_index (a->points, RwPoint, x->first + i);
      RwPoint q = g_array_index (b->points, RwPoint, y->first + i);

      if (fabs (p.x - q.x) > grain || fabs (p.y - q.y) > grain)
        return FALSE;
    }
  return TRUE;
}

static GHashTable *
by_key (const RwStamps *self)
{
  GHashTable *table = g_hash_table_new (g_int64_hash, g_int64_equal);

  for (guint i = 0; i < self->stamps->len; i++)
    {
      Stamp *stamp = &g_array_index (self->stamps, Stamp, i);

      g_hash_table_insert (table, &stamp->key, stamp);
    }
  return table;
}

GArray *
rw_stamps_diff (const RwStamps *a, const RwStamps *b, double grain)
{
  GArray *boxes = g_array_new (FALSE, FALSE, sizeof (RwBox));
  g_autoptr (GHashTable) others = by_key (b);
  GHashTableIter iter;
  gpointer left;

  for (guint i = 0; i < a->stamps->len; i++)
    {
      const Stamp *x = &g_array_index (a->stamps, Stamp, i);
      const Stamp *y = g_hash_table_lookup (others, &x->key);
      gboolean same = y != NULL && x->look == y->look && x->count == y->count
                      && same_points (a, x, b, y, MAX (grain, NOISE));

      if (!same)
        add_box (boxes, x->box);
      if (!same && y != NULL)
        add_box (boxes, y->box);
      if (y != NULL)
        g_hash_table_remove (others, &x->key);
    }
  g_hash_table_iter_init (&iter, others);
  while (g_hash_table_iter_next (&iter, NULL, &left))
    add_box (boxes, ((const Stamp *) left)->box);

  while (merge_best (boxes, boxes->len > BOXES_MAX))
    ;
  return boxes;
}
