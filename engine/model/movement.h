/* Movement of wood across its grain: change per size and per % of moisture.
 *
 * Source    size x coefficient x change of moisture: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190, 2010,
 *           eq. 13-2; the plain coefficient is used outside 6 to 14 % too.  Along the grain wood is taken to stay.
 */
#pragma once

#include "model.h"

/* Tangential, for flat-sawn wood, where grain is 1; radial where it is 0.  NaN where it is not known. */
double rw_move_across (int wood, double grain);

/* mm per % of moisture: the rim's height down to a depth under the wood's top edge (staves stand with the grain
 * upright: 0), and its wall, by that of its woods which moves most. */
double rw_move_height (const RwDesign *d, double depth, double grain);
double rw_move_wall   (const RwDesign *d, double grain);
