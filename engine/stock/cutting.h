/* A whole build cut from a shelf: which board and which bar every piece comes from, and what is short. */
#pragma once

#include "cut_board.h"
#include "demand.h"

/* One board of the shelf with its cuts. */
typedef struct
{
  int     item;    /* of the shelf */
  int     copy;    /* of those alike, from 0 */
  const RwBoardPlanBoard *plan; /* cuts name pieces by the place in RwCutting.pieces */
} RwCutBoard;

typedef struct
{
  int piece; /* in RwCutting.pieces */
  int count;
} RwBarCut;

/* times bars of the shelf that are cut alike. */
typedef struct
{
  int     item, times;
  GArray *cuts; /* of RwBarCut, the longest first */
  double  rest; /* mm left in one piece */
} RwCutBar;

/* What was worked out for pieces of one wood, or of one section of metal. */
typedef struct
{
  const char *material;  /* NULL: any metal */
  gboolean    wood;
  int         touched;   /* boards or bars */
  int         bound;     /* any plan for all of them touches as many; -1: there certainly is none */
  gboolean    proved;    /* that no plan leaves out less, or touches fewer */
  double      offcut;    /* the largest: mm2 of boards, mm of bars */
  double      offcut_bound; /* of bars: no plan that touches as few leaves a longer one; NAN: not known */
} RwCutGroup;

typedef struct
{
  GArray    *pieces;   /* of RwPiece */
  RwShelf   *shelf;
  int       *missing;  /* of each piece */
  int        missing_total;
  GArray    *boards;   /* of RwCutBoard */
  GPtrArray *bars;     /* of RwCutBar */
  GArray    *groups;   /* of RwCutGroup */
  GPtrArray *plans;    /* what the boards point into */
  double     price;    /* of all that is touched, as far as prices are known */
  double     mass_g;   /* likewise: of all that is touched */
  gboolean   whole;    /* not given up half-way */

  /* As the plan was made. */
  double     rip_kerf, cross_kerf, metal_kerf, end_trim, edge_trim, bar_trim, least_offcut;
} RwCutting;

/* rw_cutting_new: plans a solved build.  quick tries less, to ask whether it will do; go_on (may be NULL) is asked now
 * and then, and FALSE ends the work with what there is. */
RwCutting *rw_cutting_new  (const RwResult *result, const RwShelf *shelf, gboolean quick, RwCutGoOn go_on,
                            gpointer data);
void       rw_cutting_free (RwCutting *cutting);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwCutting, rw_cutting_free)

/* Whether a piece can be cut from such stock at all, its length left aside. */
gboolean rw_piece_suits (const RwPiece *piece, const RwStockItem *item);
