#include "canvas_stamp.h"

#include <math.h>

#include "base/canvas_view.h"
#include "sheet/trace.h"

/* Half of the widest line, and what antialiasing adds, pixels. */
#define LINE_REACH 3.0

/* How far a piece may stray from its curve, pixels: well within that reach. */
#define STRAY 0.5

/* A part on so few tiles is taken by its box. */
#define FEW_TILES 2

/* Radians to a piece of an angle's dimension line. */
#define ARC_STEP 0.1

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
  guint64  key;
  guint64  look;         /* all but where it is */
  guint    first, count; /* of pieces */
  RwBox    box;
  gboolean filled;
} Stamp;

/* Pixels from the sheet's origin, y down. */
struct _RwStamps
{
  GArray *stamps;
  GArray *pieces; /* of RwPiece: outlines, and what stands for a text's place */
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

typedef struct
{
  RwStamps *stamps;
  double    scale;
} Tracing;

static RwPoint
to_pixels (RwPoint p, double scale)
{
  return (RwPoint){ p.x * scale, -p.y * scale };
}

static void
add_piece (RwPoint a, RwPoint b, gpointer data)
{
  const Tracing *tracing = data;
  RwPiece piece = { to_pixels (a, tracing->scale), to_pixels (b, tracing->scale) };

  g_array_append_val (tracing->stamps->pieces, piece);
}

/* Ends a stamp whose pieces are those from first on. */
static void
add_stamp (RwStamps *self, Stamp stamp, RwBox box, double scale)
{
  stamp.count = self->pieces->len - stamp.first;
  stamp.box = (RwBox){ box.x0 * scale, -box.y1 * scale, box.x1 * scale, -box.y0 * scale };
  g_array_append_val (self->stamps, stamp);
}

static void
stamp_path (RwStamps *self, const RwSheet *sheet, const RwItem *item, double zoom, guint64 key)
{
  Tracing tracing = { self, zoom };
  Stamp stamp = { key, mix (mix (HASH_START, item->pen), item->tint), .first = self->pieces->len };

  stamp.filled = item->tint != RW_TINT_NONE;
  rw_trace (sheet, item, STRAY / zoom, stamp.filled, add_piece, &tracing);
  add_stamp (self, stamp, rw_path_box (sheet, item), zoom);
}

static void
add_arc (const Tracing *tracing, const RwPlacedMark *mark)
{
  int count = (int) ceil (fabs (mark->a1 - mark->a0) / ARC_STEP) + 1;
  RwPoint before = on_circle (mark->p[0], mark->radius, mark->a0);

  for (int i = 1; i <= count; i++)
    {
      RwPoint after = on_circle (mark->p[0], mark->radius, mark->a0 + (mark->a1 - mark->a0) * i / count);

      add_piece (before, after, (gpointer) tracing);
      before = after;
    }
}

static void
stamp_mark (RwStamps *self, const RwPlacedMark *mark, int n)
{
  Tracing tracing = { self, RW_PX_PER_PAPER_MM };
  Stamp stamp = { KEY (PART_MARK + mark->kind, mark->item, n), mark->kind, .first = self->pieces->len };
  RwBox box = no_box ();

  if (mark->kind == RW_MARK_ARC)
    {
      add_arc (&tracing, mark);
      include_arc (&box, mark->p[0], mark->radius, mark->a0, mark->a1);
    }
  else
    for (int i = 0, count = mark->kind == RW_MARK_HEAD ? 3 : 2; i < count; i++)
      {
        add_piece (mark->p[i], mark->p[(i + 1) % count], &tracing);
        include (&box, mark->p[i]);
      }
  add_stamp (self, stamp, box, tracing.scale);
}

/* Its box is touched, not its one piece. */
static void
stamp_text (RwStamps *self, const RwPlacedText *text)
{
  Tracing tracing = { self, RW_PX_PER_PAPER_MM };
  Stamp stamp = { KEY (PART_TEXT, text->item, 0), .first = self->pieces->len };

  stamp.look = mix (mix_number (mix_number (HASH_START, text->turn), text->size), text->figure);
  for (const char *p = text->text; *p != '\0'; p++)
    stamp.look = mix (stamp.look, (guchar) *p);
  add_piece (text->at, text->at, &tracing);
  add_stamp (self, stamp, text->box, tracing.scale);
}

RwStamps *
rw_stamps_new (const RwLayout *layout, const RwSheet *ghost)
{
  double zoom = layout->scale * RW_PX_PER_PAPER_MM;
  RwStamps *self = g_new (RwStamps, 1);
  int n = 0;

  self->stamps = g_array_sized_new (FALSE, FALSE, sizeof (Stamp), 2048);
  self->pieces = g_array_sized_new (FALSE, FALSE, sizeof (RwPiece), 8192);
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
    stamp_text (self, &g_array_index (layout->texts, RwPlacedText, i));
  return self;
}

void
rw_stamps_free (RwStamps *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->stamps);
  g_array_unref (self->pieces);
  g_free (self);
}

/* ---- differences ---- */

static const RwPiece *
pieces_of (const RwStamps *self, const Stamp *stamp)
{
  return &g_array_index (self->pieces, RwPiece, stamp->first);
}

static gboolean
is_near (RwPoint a, RwPoint b, double grain)
{
  return fabs (a.x - b.x) <= grain && fabs (a.y - b.y) <= grain;
}

static gboolean
same_pieces (const RwStamps *a, const Stamp *x, const RwStamps *b, const Stamp *y, double grain)
{
  const RwPiece *p = pieces_of (a, x), *q = pieces_of (b, y);

  for (guint i = 0; i < x->count; i++)
    if (!is_near (p[i].a, q[i].a, grain) || !is_near (p[i].b, q[i].b, grain))
      return FALSE;
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

static RwBox
reached (RwBox box)
{
  return (RwBox){ box.x0 - LINE_REACH, box.y0 - LINE_REACH, box.x1 + LINE_REACH, box.y1 + LINE_REACH };
}

static gboolean
is_small (const RwGrid *grid, const Stamp *stamp)
{
  return stamp->count < 2 || rw_grid_count (grid, reached (stamp->box)) <= FEW_TILES;
}

static void
touch_outline (const RwStamps *self, const Stamp *stamp, RwGrid *grid)
{
  if (is_small (grid, stamp))
    rw_grid_touch_box (grid, reached (stamp->box));
  else
    for (guint i = 0; i < stamp->count; i++)
      rw_grid_touch_line (grid, pieces_of (self, stamp)[i], LINE_REACH);
}

/* x or y is NULL where the part is missing. */
static void
touch_both (const RwStamps *a, const Stamp *x, const RwStamps *b, const Stamp *y, RwGrid *grid)
{
  gboolean filled = (x != NULL && x->filled) || (y != NULL && y->filled);
  gboolean repainted = x != NULL && y != NULL && x->look != y->look;

  if (x != NULL)
    touch_outline (a, x, grid);
  if (y != NULL)
    touch_outline (b, y, grid);
  if (filled && repainted)
    {
      rw_grid_touch_box (grid, x->box);
      rw_grid_touch_box (grid, y->box);
    }
  else if (filled && (x == NULL || y == NULL || !is_small (grid, x) || !is_small (grid, y)))
    rw_grid_touch_difference (grid, x != NULL ? pieces_of (a, x) : NULL, x != NULL ? (int) x->count : 0,
                              y != NULL ? pieces_of (b, y) : NULL, y != NULL ? (int) y->count : 0);
}

void
rw_stamps_touch_changes (const RwStamps *a, const RwStamps *b, double grain, RwGrid *grid)
{
  g_autoptr (GHashTable) others = by_key (b);
  GHashTableIter iter;
  gpointer left;

  for (guint i = 0; i < a->stamps->len; i++)
    {
      const Stamp *x = &g_array_index (a->stamps, Stamp, i);
      const Stamp *y = g_hash_table_lookup (others, &x->key);
      gboolean same = y != NULL && x->look == y->look && x->count == y->count
                      && same_pieces (a, x, b, y, MAX (grain, NOISE));

      if (!same)
        touch_both (a, x, b, y, grid);
      if (y != NULL)
        g_hash_table_remove (others, &x->key);
    }
  g_hash_table_iter_init (&iter, others);
  while (g_hash_table_iter_next (&iter, NULL, &left))
    touch_both (NULL, NULL, b, left, grid);
}
