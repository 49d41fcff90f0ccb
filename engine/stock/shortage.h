/* What the shelf does not have for a build, and by how much. */
#pragma once

#include "cutting.h"

typedef enum
{
  RW_SHORT_NONE_THERE, /* no stock of that wood, or of that section */
  RW_SHORT_THICKNESS,  /* none is thick enough */
  RW_SHORT_WIDTH,
  RW_SHORT_LENGTH,     /* of what is thick and wide enough, none is long enough between its defects */
  RW_SHORT_AMOUNT,     /* there is such stock, and not enough of it */
} RwShortReason;

typedef struct
{
  int           piece; /* in cutting->pieces */
  int           last;  /* the same, or of several that come off one bar or wire, as frets do, the last */
  int           count; /* that are missing, of all of them */
  RwShortReason reason;
  double        there; /* mm: the most that there is of what is short; AMOUNT: 0 */
  double        needed; /* mm: of it; AMOUNT: length of stock for what is missing, kerfs included */
} RwShortage;

/* rw_shortages: one for each kind of piece that is missing, an array of RwShortage.  Pieces of one use and one
 * section of which there is no stock at all are told together. */
GArray *rw_shortages (const RwCutting *cutting);

/* A sentence for people: "Neck: 1 is missing; it needs stock 63 mm thick, and the thickest is 27 mm".  New. */
char *rw_shortage_words (const RwCutting *cutting, const RwShortage *shortage, RwStyle style);

/* What to buy for it, spare included: one board or bar of this size.  Sizes are rounded up to whole mm. */
RwStockItem *rw_shortage_buy (const RwCutting *cutting, const RwShortage *shortage, const RwDesign *design);
/* The same in words: "Sugar maple, 1 board of 640 × 88 × 63 mm at least".  New. */
char        *rw_shortage_buy_words (const RwCutting *cutting, const RwShortage *shortage, const RwDesign *design,
                                    RwStyle style);
