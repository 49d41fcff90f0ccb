/* One attempt at laying pieces on boards; private to cut_board.c and board_pack.c. */
#pragma once

#include "cut_board.h"

/* One board, not one kind of board. */
typedef struct
{
  int           stock, copy;
  double        width;    /* between its jointed edges */
  double        thickness;
  const GArray *zones;    /* of RwStretch */
} RwPackBoard;

typedef struct
{
  const RwBoardTask *task;
  const RwPackBoard *boards;
  int                board_count;
  const gboolean    *open;  /* boards that may be used */
  const int         *order; /* kinds of pieces in the order of laying */
  gboolean           spread; /* takes the narrowest strip that will do, not the fullest */
} RwPackTry;

/* All that was laid, as a plan without off-cuts and bound. */
RwBoardPlan *rw_board_pack (const RwPackTry *attempt);
