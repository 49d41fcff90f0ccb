/* The bridge's feet on the head: a membrane of tension T fixed at radius Rh.
 *
 * Influence of a unit load at Q on P: G(P,Q) = ln(|P - Q*| |Q| / (Rh |P - Q|)) / (2 pi T), Q* the image of Q in
 * the circle; a foot's own term takes for |P - Q| its capacity radius (length + width)/4.  The bridge is
 * stiff: all feet sink alike, and the loads share out so that they do.
 *
 * Neglects  bending stiffness of the head, tension gained by the dip.
 * Source    Green's function of the disc by images (any text on potential theory); capacity of an ellipse,
 *           Polya & Szego, Isoperimetric Inequalities in Mathematical Physics, 1951 (from memory).
 */
#pragma once

#include "model.h"

/* rw_feet_influence: mm per N at p for a load at q, both mm from the rim's centre; tension N/m. */
double rw_feet_influence (RwPoint2 p, RwPoint2 q, double radius, double tension);

/* rw_feet_sag: Given offset xb of the bridge, the vibrating radius and the tension.
 * Returned the sag in mm per N of down force; shares (3, may be NULL): of the middle foot and the outer two, or
 * of the two; they add up to 1.  NaN where a foot stands off the head. */
double rw_feet_sag (const RwDesign *d, double radius, double tension, double shares[3]);
