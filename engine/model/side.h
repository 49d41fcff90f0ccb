/* The side view: neck angle, bridge, action, sag and force, which all depend on each other.
 *
 * Frame of the pot: origin at the rim's centre in the head plane, x along the axis to the tail, z up.  P = (xb,
 * h - sag) is the bridge top, J = (-Ro, s) the fretboard's surface at the rim's face.  With B = xb + Ro and
 * C = h - sag - s:
 *   bridge top over the fret plane   Hb = C cos A - B sin A - crown
 *   nut to the rim's face            L - (B cos A + C sin A)
 *   action at fret n                 (hn + v(0))(1 - t) + Hb t - v(xn), t = xn/L
 *   slopes to the head plane         b1 = A + atan((Hb - hn - v(0))/L), b2 = atan((h - sag - zt)/anchor)
 *   down force                       sum T (sin b1 + sin b2)
 *
 * Neglects  the bridge's set-back from the theoretical line, head bending, tension gained by the dip.
 * Source    worked out from the geometry; membrane in feet.h, bending in beam.h.
 */
#pragma once

#include "model.h"

/* Solves the side view with the head at a tension, N/m, without storing anything.  sag_measured: mm; NaN where the
 * sag follows from the tension. */
RwSide rw_side_solve (const RwModel *m, double head_tension, double sag_measured);

/* Action over fret place n, mm. */
double rw_side_action (const RwModel *m, const RwSide *side, int n);
