#include "canvas_stamp.h"

#include <math.h>
#include <string.h>

#include "canvas_view.h"

/* Half of the widest line, and what antialiasing adds, pixels. */
#define LINE_REACH 3.0

/* Boxes are put together where that adds less than a third, or as much as a small patch costs anyway. */
#define WASTE 1.33
#define SMALL_AREA 4000.0
#define BOXES_MAX 8

/* ---- hashes (FNV-1a, 64 bit) ---- */

#define HASH_START G_GUINT64_CONSTANT (0xcbf29ce484222325)
#define HASH_STEP G_GUINT64_CONSTANT (0x100000001b3)

static guint64
mix_int (guint64 hash, guint64 word)
{
  return (hash ^ word) * HASH_STEP;
}

/* To a thousandth of a micrometre: less is noise. */
static guint64
mix (guint64 hash, double number)
{
  return mix_int (hash, (guint64) llround (number * 1e6)) ^ hash >> 29;
}

static guint64
mix_point (guint64 hash, RwPoint p)
{
  return mix (mix (hash, p.x), p.y);
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

      hash = mix_int (hash, op->verb);
      for (int k = 0; k < points_of (op); k++)
        hash = mix_point (hash, op->p[k]);
      if (op->verb == RW_VERB_ARC)
        hash = mix (mix (mix (hash, op->radius), op->a0), op->a1);
    }
  return hash;
}

/* ---- boxes ---- */

static RwBox
no_box (void)
{
  return (RwBox){ HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL };
}

static void
include (RwBox *box, RwPoint p, double reach)
{
  box->x0 = MIN (box->x0, p.x - reach);
  box->y0 = MIN (box->y0, p.y - reach);
  box->x1 = MAX (box->x1, p.x + reach);
  box->y1 = MAX (box->y1, p.y + reach);
}

RwBox
rw_path_box (const RwSheet *sheet, const RwItem *item)
{
  RwBox box = no_box ();

  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = &g_array_index (sheet->ops, RwPathOp, item->op_first + i);

      for (int k = 0; k < points_of (op); k++)
        include (&box, op->p[k], op->verb == RW_VERB_ARC ? op->radius : 0);
    }
  return box;
}

/* From y up to y down, in pixels, with room for the lines. */
static RwBox
on_screen (RwBox box, double scale)
{
  return (RwBox){ floor (box.x0 * scale - LINE_REACH), floor (-box.y1 * scale - LINE_REACH),
                  ceil (box.x1 * scale + LINE_REACH), ceil (-box.y0 * scale + LINE_REACH) };
}

static double
area (RwBox box)
{
  return (box.x1 - box.x0) * (box.y1 - box.y0);
}

static RwBox
both (RwBox a, RwBox b)
{
  return (RwBox){ MIN (a.x0, b.x0), MIN (a.y0, b.y0), MAX (a.x1, b.x1), MAX (a.y1, b.y1) };
}

/* ---- stamps ---- */

static void
add (GArray *stamps, guint64 hash, RwBox box)
{
  RwStamp stamp = { hash, box };

  if (box.x1 > box.x0)
    g_array_append_val (stamps, stamp);
}

static void
stamp_paths (GArray *stamps, const RwLayout *layout)
{
  const RwSheet *sheet = layout->sheet;

  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (item->kind == RW_ITEM_PATH)
        add (stamps, mix_int (mix_int (rw_path_hash (sheet, item), item->pen), 64 + item->tint),
             on_screen (rw_path_box (sheet, item), layout->scale * RW_PX_PER_PAPER_MM));
    }
}

static void
stamp_mark (GArray *stamps, const RwPlacedMark *mark)
{
  RwBox box = no_box ();
  guint64 hash = mix_int (HASH_START, 128 + mark->kind);
  int points = mark->kind == RW_MARK_HEAD ? 3 : mark->kind == RW_MARK_ARC ? 1 : 2;

  for (int i = 0; i < points; i++)
    {
      hash = mix_point (hash, mark->p[i]);
      include (&box, mark->p[i], mark->kind == RW_MARK_ARC ? mark->radius : 0);
    }
  if (mark->kind == RW_MARK_ARC)
    hash = mix (mix (mix (hash, mark->radius), mark->a0), mark->a1);
  add (stamps, hash, on_screen (box, RW_PX_PER_PAPER_MM));
}

static void
stamp_text (GArray *stamps, const RwPlacedText *text)
{
  guint64 hash = mix_int (HASH_START, 256 + text->figure);

  for (const char *p = text->text; *p != '\0'; p++)
    hash = mix_int (hash, (guchar) *p);
  hash = mix (mix (mix_point (hash, text->at), text->turn), text->size);
  add (stamps, hash, on_screen (text->box, RW_PX_PER_PAPER_MM));
}

static int
compare_stamps (gconstpointer a, gconstpointer b)
{
  const RwStamp *x = a, *y = b;

  return (x->hash > y->hash) - (x->hash < y->hash);
}

GArray *
rw_stamps_new (const RwLayout *layout)
{
  GArray *stamps = g_array_new (FALSE, FALSE, sizeof (RwStamp));

  stamp_paths (stamps, layout);
  for (guint i = 0; i < layout->marks->len; i++)
    stamp_mark (stamps, &g_array_index (layout->marks, RwPlacedMark, i));
  for (guint i = 0; i < layout->texts->len; i++)
    stamp_text (stamps, &g_array_index (layout->texts, RwPlacedText, i));
  g_array_sort (stamps, compare_stamps);
  return stamps;
}

/* ---- differences ---- */

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

static void
add_box (GArray *boxes, RwBox box)
{
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

GArray *
rw_stamps_diff (const GArray *a, const GArray *b)
{
  GArray *boxes = g_array_new (FALSE, FALSE, sizeof (RwBox));
  guint i = 0, j = 0;

  while (i < a->len || j < b->len)
    {
      const RwStamp *x = i < a->len ? &g_array_index (a, RwStamp, i) : NULL;
      const RwStamp *y = j < b->len ? &g_array_index (b, RwStamp, j) : NULL;

      if (x != NULL && y != NULL && x->hash == y->hash)
        {
          i++;
          j++;
        }
      else if (y == NULL || (x != NULL && x->hash < y->hash))
        {
          add_box (boxes, x->box);
          i++;
        }
      else
        {
          add_box (boxes, y->box);
          j++;
        }
    }
  while (merge_best (boxes, boxes->len > BOXES_MAX))
    ;
  return boxes;
}
