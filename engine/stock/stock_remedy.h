/* When the shelf will not do: changes of the build that would make it do, each tried before it is offered. */
#pragma once

#include "cutting.h"
#include "making/remedy.h"

/* Changes that belong together; applied as one step. */
typedef struct
{
  GPtrArray *changes; /* of RwRemedy: each says its own part; their designs are steps on the way */
  RwDesign   design;  /* with all of them */
  int        missing; /* pieces that would still be missing: 0 as a rule */
  double     mass, balance;           /* of the instrument then: g, and mm from the nut; NAN: can't be worked out */
  double     mass_more, balance_more; /* than before */
} RwStockRemedy;

void rw_stock_remedy_free (RwStockRemedy *remedy);

/* rw_stock_remedies: what would help, an array of RwStockRemedy that frees its elements.
 *
 * Offered is what leaves nothing missing, fewest changes first, and then what at least settles one kind of piece.  The
 * changed build is solved with everything that is measured or made, planned from the same shelf, and has no stop and no
 * caution that was not there before.  go_on as for rw_cutting_new().
 */
GPtrArray *rw_stock_remedies (const RwDesign *design, const RwMeasured *measured, const RwShelf *shelf,
                              const RwCutting *cutting, RwCutGoOn go_on, gpointer data);
