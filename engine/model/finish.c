/* The finish: grams of flake for a volume of shellac, ml, of a cut in pounds to the US gallon.  By definition. */
#include "model.h"

/* Grams of flake per litre of spirit for a cut of one pound per US gallon: 453.59237/3.785411784. */
#define GRAMS_PER_LITRE 119.826427

void
rw_model_finish (RwModel *m)
{
  rw_settle (m, RW_FINISH_FLAKE, m->d->shop_shellac_volume / 1000 * m->d->shop_shellac_cut * GRAMS_PER_LITRE);
}
