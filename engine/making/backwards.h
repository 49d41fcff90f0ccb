/* Worked backwards: what a measured string height says of the neck, and what sets it right.
 *
 * The height of the strings over a fret or over the hoop is what can be measured best on a banjo that is strung.  With
 * the bridge as it stands it says what angle the neck has really reached; from that follow the bridge that would give
 * the action that is wanted, and the shim in the heel joint that would tilt the neck there instead.
 */
#pragma once

#include "project/project.h"
#include "model/solve.h"

typedef struct
{
  RwSlot slot;          /* what was measured: setup.action[n] or strings.over_hoop */
  double measured;      /* mm */
  double angle;         /* reached, deg */
  double wanted_angle;  /* that gives the wanted action with the bridge as it stands, deg */
  double bridge;        /* as it stands, mm */
  double wanted_bridge; /* that gives the wanted action with the angle reached, mm */
  double shim;          /* mm: positive at the head end of the heel, tilting the neck back; negative at the cap end */
} RwBackwards;

/* FALSE where no string height is measured, or no neck angle from -3 to 10 degrees explains it.  Of several heights the
 * one at the action's fret counts, then that nearest the body.  Shim: heel_depth tan (wanted - reached), a wedge over
 * the whole heel. */
gboolean rw_backwards (const RwProject *project, RwBackwards *backwards);
