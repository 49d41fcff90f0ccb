/* Where the bridge stands: its line's angle to the axis, degrees, and its place as a share of the head's diameter.
 * Geometry alone. */
#include "model.h"

void
rw_model_bridge (RwModel *m)
{
  double side = rw_settled (m, RW_NECK_SIDE_ANGLE);

  rw_settle (m, RW_BRIDGE_LINE_ANGLE, m->d->scale_square_to == RW_SQUARE_TO_NECK ? -side : 0);
  rw_settle (m, RW_BRIDGE_LANDING, (m->d->bridge_offset + m->rh) / (2 * m->rh));
}
