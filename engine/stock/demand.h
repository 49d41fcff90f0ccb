/* What a build needs, piece by piece, as it must come off the saw. */
#pragma once

#include "model/solve.h"
#include "project/shelf.h"

/* Places of the choices of stock.neck_head and stock.neck_heel. */
enum { RW_NECK_HEAD_SOLID, RW_NECK_HEAD_SCARFED };
enum { RW_NECK_HEEL_SOLID, RW_NECK_HEEL_STACKED };

/* What a piece is for. */
typedef enum
{
  RW_PIECE_SEGMENT,
  RW_PIECE_STAVE,
  RW_PIECE_PLY,
  RW_PIECE_NECK,      /* in one piece, or strips side by side */
  RW_PIECE_HEAD,      /* a scarfed headstock, or strips of it */
  RW_PIECE_HEEL,      /* blocks of a stacked heel, or strips of them */
  RW_PIECE_EAR,
  RW_PIECE_FRETBOARD, /* in one piece or strips */
  RW_PIECE_OVERLAY,
  RW_PIECE_HEEL_CAP,
  RW_PIECE_BINDING,
  RW_PIECE_BRIDGE,
  RW_PIECE_STICK,
  RW_PIECE_HOOK,
  RW_PIECE_SHOE,
  RW_PIECE_HOOP,
  RW_PIECE_TONE_RING,
  RW_PIECE_ROD,       /* across the pot */
  RW_PIECE_TUBE,
  RW_PIECE_FRET,
  RW_PIECE_USE_COUNT,
} RwPieceUse;

/* Pieces that are alike.  Sizes are rough ones, mm; the grain of wood runs along the length. */
typedef struct
{
  RwPieceUse  use;
  int         number;   /* of the course or ply, from 1; 0: there is but one kind */
  int         count;
  const char *material; /* id of a wood or a metal; NULL: any metal */
  RwStockKind kind;     /* a board will do for what a sheet does, and the other way round */
  double      length, width, thickness; /* as in RwStockItem */
  double      finished_length, finished_width, finished_thickness; /* 0: not stated */
  RwStep      step;     /* of the making that needs it */

  /* Wood: may be ripped with its thickness across the board, where the board is thick enough for its width. */
  gboolean    on_edge;
  /* Segments lie nested in their strip: length is then what each takes of it but for the saw's kerf, and run is what a
   * row of them takes besides, at its ends. */
  double      mitre; /* degrees; 0: square ends */
  double      run;
  /* Metal: the section must be just this, or may be more. */
  gboolean    exact;
} RwPiece;

/* rw_demand: the pieces of a solved build, an array of RwPiece.  What can't be worked out is left out. */
GArray *rw_demand (const RwResult *result);

/* ---- words ---- */

const char *rw_piece_label (RwPieceUse use); /* one word or two, untranslated */
/* "Segments, course 2".  New. */
char       *rw_piece_words (const RwPiece *piece);
/* A letter and a number by which drawings name it: "S2".  New. */
char       *rw_piece_mark  (const RwPiece *piece);
