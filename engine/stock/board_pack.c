#include "board_pack.h"

#include <math.h>

#define CLOSE 1e-6
/* Mitred pieces fill their strip. */
#define SAME_WIDTH 0.05

typedef struct
{
  double  width;
  double *used;   /* along each zone, kerfs included */
  double *row;    /* what the row of nested pieces in each zone takes at its ends; 0: no such row */
  GArray *zone;   /* of int: of each cut */
  GArray *cuts;   /* of RwBoardCut, without places */
} Strip;

typedef struct
{
  const RwPackTry *attempt;
  GPtrArray      **strips; /* of Strip, by board */
  double          *left;   /* width of each board, kerfs taken off */
} Pack;

/* Where a piece would go. */
typedef struct
{
  int      board;
  Strip   *strip; /* NULL: a new one */
  int      zone;
  gboolean on_edge;
  double   badness;
} Place;

static void
free_strip (gpointer data)
{
  Strip *strip = data;

  g_free (strip->used);
  g_free (strip->row);
  g_array_unref (strip->zone);
  g_array_unref (strip->cuts);
  g_free (strip);
}

static double
zone_room (const Pack *pack, int board, int zone)
{
  const RwStretch *stretch = &g_array_index (pack->attempt->boards[board].zones, RwStretch, zone);

  return stretch->to - stretch->from + pack->attempt->task->cross_kerf;
}

/* What a piece takes of a zone that has used so much, its row's ends included; a row is begun where there is none. */
static double
takes (const RwBoardTask *task, const RwBoardPiece *piece, double row)
{
  double ends = piece->run > 0 && !(row > 0) ? piece->run + task->cross_kerf : 0;

  return piece->length + task->cross_kerf + ends;
}

static void
consider (Place *best, Place place)
{
  if (place.badness < best->badness)
    *best = place;
}

static void
look_in_strips (const Pack *pack, int board, const RwBoardPiece *piece, gboolean on_edge, Place *best)
{
  double width = on_edge ? piece->thickness : piece->width;

  for (guint s = 0; s < pack->strips[board]->len; s++)
    {
      Strip *strip = g_ptr_array_index (pack->strips[board], s);
      double wasted = strip->width - width;

      if (wasted < -CLOSE || (piece->run > 0 && wasted > SAME_WIDTH))
        continue;
      for (guint z = 0; z < pack->attempt->boards[board].zones->len; z++)
        {
          double room = zone_room (pack, board, (int) z) - strip->used[z];
          double need = takes (pack->attempt->task, piece, strip->row[z]);

          if (strip->row[z] > 0 && piece->run > 0 && fabs (strip->row[z] - piece->run) > CLOSE)
            continue;
          if (need <= room + CLOSE)
            consider (best, (Place){ board, strip, (int) z, on_edge,
                                     wasted * piece->length + (pack->attempt->spread ? 0 : (room - need) * 0.1) });
        }
    }
}

/* A new strip is worse than any old one, the worse the thicker the board is for the piece. */
static void
look_for_strip (const Pack *pack, int board, const RwBoardPiece *piece, gboolean on_edge, Place *best)
{
  const RwPackBoard *b = &pack->attempt->boards[board];
  double width = on_edge ? piece->thickness : piece->width;
  double planed = b->thickness - (on_edge ? piece->width : piece->thickness);

  if (width > pack->left[board] + CLOSE)
    return;
  for (guint z = 0; z < b->zones->len; z++)
    if (takes (pack->attempt->task, piece, 0) <= zone_room (pack, board, (int) z) + CLOSE)
      {
        double fresh = pack->strips[board]->len == 0 ? 1e9 : 0;

        consider (best, (Place){ board, NULL, (int) z, on_edge,
                                 1e7 + fresh + planed * 1e4 + width * 10 + (pack->left[board] - width) });
        return;
      }
}

static Strip *
new_strip (Pack *pack, int board, double width)
{
  Strip *strip = g_new0 (Strip, 1);
  guint zones = pack->attempt->boards[board].zones->len;

  strip->width = width;
  strip->used = g_new0 (double, zones);
  strip->row = g_new0 (double, zones);
  strip->zone = g_array_new (FALSE, FALSE, sizeof (int));
  strip->cuts = g_array_new (FALSE, FALSE, sizeof (RwBoardCut));
  g_ptr_array_add (pack->strips[board], strip);
  pack->left[board] -= width + pack->attempt->task->rip_kerf;
  return strip;
}

/* FALSE where no board has room. */
static gboolean
lay (Pack *pack, int kind)
{
  const RwPackTry *attempt = pack->attempt;
  const RwBoardPiece *piece = &attempt->task->pieces[kind];
  Place best = { -1, NULL, 0, FALSE, INFINITY };

  for (int b = 0; b < attempt->board_count; b++)
    for (int edge = 0; edge <= (piece->on_edge ? 1 : 0) && attempt->open[b]; edge++)
      if (attempt->boards[b].thickness >= (edge ? piece->width : piece->thickness) - CLOSE)
        {
          look_in_strips (pack, b, piece, edge, &best);
          look_for_strip (pack, b, piece, edge, &best);
        }
  if (best.board < 0)
    return FALSE;

  RwBoardCut cut = { kind, 0, 0, best.on_edge ? piece->thickness : piece->width, best.on_edge };
  Strip *strip = best.strip != NULL ? best.strip : new_strip (pack, best.board, cut.width);
  strip->used[best.zone] += takes (attempt->task, piece, strip->row[best.zone]);
  if (piece->run > 0)
    strip->row[best.zone] = piece->run;
  g_array_append_val (strip->zone, best.zone);
  g_array_append_val (strip->cuts, cut);
  return TRUE;
}

/* ---- the plan ---- */

/* The cuts of one zone: square ones first, then the nested row. */
static void
place_zone (const Pack *pack, const RwPackBoard *board, const Strip *strip, int zone, GArray *cuts)
{
  const RwBoardTask *task = pack->attempt->task;
  double at = g_array_index (board->zones, RwStretch, zone).from;

  for (int nested = 0; nested <= 1; nested++)
    {
      if (nested)
        at += strip->row[zone] / 2;
      for (guint c = 0; c < strip->cuts->len; c++)
        {
          RwBoardCut cut = g_array_index (strip->cuts, RwBoardCut, c);
          const RwBoardPiece *piece = &task->pieces[cut.piece];

          if (g_array_index (strip->zone, int, c) != zone || (piece->run > 0) != nested)
            continue;
          cut.from = at;
          cut.to = at + piece->length;
          at = cut.to + task->cross_kerf;
          g_array_append_val (cuts, cut);
        }
    }
}

static gint
wider_first (gconstpointer a, gconstpointer b)
{
  const Strip *p = *(Strip *const *) a, *q = *(Strip *const *) b;

  return p->width > q->width ? -1 : p->width < q->width;
}

static RwBoardPlanBoard *
plan_board (const Pack *pack, int b)
{
  const RwPackBoard *board = &pack->attempt->boards[b];
  const RwBoardTask *task = pack->attempt->task;
  RwBoardPlanBoard *plan = g_new0 (RwBoardPlanBoard, 1);
  double at = task->edge_trim;

  plan->stock = board->stock;
  plan->copy = board->copy;
  plan->strips = g_ptr_array_new_with_free_func ((GDestroyNotify) rw_board_strip_free);
  plan->offcuts = g_array_new (FALSE, FALSE, sizeof (RwOffcut));
  g_ptr_array_sort (pack->strips[b], wider_first);
  for (guint s = 0; s < pack->strips[b]->len; s++)
    {
      const Strip *strip = g_ptr_array_index (pack->strips[b], s);
      RwBoardStrip *out = g_new (RwBoardStrip, 1);

      out->from = at;
      out->to = at + strip->width;
      out->cuts = g_array_new (FALSE, FALSE, sizeof (RwBoardCut));
      for (guint z = 0; z < board->zones->len; z++)
        place_zone (pack, board, strip, (int) z, out->cuts);
      at = out->to + task->rip_kerf;
      g_ptr_array_add (plan->strips, out);
    }
  return plan;
}

static void
free_board (gpointer data)
{
  RwBoardPlanBoard *board = data;

  g_ptr_array_unref (board->strips);
  g_array_unref (board->offcuts);
  g_free (board);
}

RwBoardPlan *
rw_board_pack (const RwPackTry *attempt)
{
  const RwBoardTask *task = attempt->task;
  RwBoardPlan *plan = g_new0 (RwBoardPlan, 1);
  g_autofree GPtrArray **strips = g_new (GPtrArray *, attempt->board_count + 1);
  g_autofree double *left = g_new (double, attempt->board_count + 1);
  Pack pack = { attempt, strips, left };

  plan->boards = g_ptr_array_new_with_free_func (free_board);
  plan->left_out = g_new0 (int, task->piece_count + 1);
  for (int b = 0; b < attempt->board_count; b++)
    {
      strips[b] = g_ptr_array_new_with_free_func (free_strip);
      left[b] = attempt->boards[b].width;
    }
  for (int i = 0; i < task->piece_count; i++)
    {
      int kind = attempt->order[i], laid = 0;

      while (laid < task->pieces[kind].count && lay (&pack, kind))
        laid++;
      plan->left_out[kind] = task->pieces[kind].count - laid;
      plan->missing += plan->left_out[kind];
    }
  for (int b = 0; b < attempt->board_count; b++)
    {
      if (strips[b]->len > 0)
        g_ptr_array_add (plan->boards, plan_board (&pack, b));
      g_ptr_array_unref (strips[b]);
    }
  return plan;
}
