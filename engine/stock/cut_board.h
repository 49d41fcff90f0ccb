/* Cutting boards: each is ripped along the grain into strips, and the strips are cross-cut into pieces, as a table saw
 * can do it; a piece narrower than its strip is then ripped down.  The grain of every piece runs along its board.
 *
 * A strip takes its width and one rip kerf; pieces in a strip, or between two stretches to avoid, take their lengths
 * and a cross-cut kerf each, where the last one may fall into what is waste anyhow.  Of every kind of piece as many are
 * cut as the boards are found to hold; among plans that hold as many the one that touches the fewest boards is taken,
 * and among those the one that leaves the largest off-cut.  The plan is good but not proved best; the bound says how
 * many boards any plan for all the pieces must touch.
 */
#pragma once

#include "cut_line.h"
#include "project/shelf.h"

typedef struct
{
  double   length, width, thickness; /* mm */
  int      count;
  gboolean on_edge; /* may be ripped with its thickness across the board */
  double   run;     /* of mitred pieces, which lie nested: see RwPiece; 0: square ends */
} RwBoardPiece;

typedef struct
{
  double        length, width, thickness;
  int           count;
  const GArray *avoid; /* of RwStretch; NULL: none */
} RwBoardStock;

typedef struct
{
  const RwBoardPiece *pieces;
  int                 piece_count;
  const RwBoardStock *stock;
  int                 stock_count;
  double              rip_kerf, cross_kerf, end_trim, edge_trim, least_offcut; /* mm */
  gboolean            quick; /* tries less: for asking whether something fits */
  RwCutGoOn           go_on;
  gpointer            data;
} RwBoardTask;

/* A piece in its strip. */
typedef struct
{
  int      piece;
  double   from, to;  /* along the board, from its marked end; nested pieces at half of their width */
  double   width;     /* across the board */
  gboolean on_edge;
} RwBoardCut;

typedef struct
{
  double  from, to; /* across the board, from its lower edge */
  GArray *cuts;     /* of RwBoardCut, from the marked end on */
} RwBoardStrip;

/* A rectangle that is left and long enough to keep. */
typedef struct
{
  double x0, y0, x1, y1;
} RwOffcut;

typedef struct
{
  int        stock, copy; /* copy from 0 */
  GPtrArray *strips;      /* of RwBoardStrip, from the lower edge up */
  GArray    *offcuts;     /* of RwOffcut */
} RwBoardPlanBoard;

typedef struct
{
  GPtrArray *boards;   /* of RwBoardPlanBoard; only those that are touched */
  int       *left_out; /* of each kind of piece */
  int        missing;
  int        bound;    /* of boards touched by any plan that leaves nothing out; -1: there certainly is none */
  double     offcut;   /* area of the largest, mm2 */
} RwBoardPlan;

RwBoardPlan *rw_cut_board       (const RwBoardTask *task);
void         rw_board_plan_free (RwBoardPlan *plan);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwBoardPlan, rw_board_plan_free)
void         rw_board_strip_free (RwBoardStrip *strip);

/* The parts of a board's length that are good, between its trimmed ends: an array of RwStretch. */
GArray *rw_board_zones (const RwBoardTask *task, const RwBoardStock *stock);
