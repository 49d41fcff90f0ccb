/* A thin elastic ring: what two opposite loads and a load all round do to it.
 *
 * Lengths mm, forces N, moduli N/mm2; radius is the mean one.
 * Neglects  shear, thickness against radius (a few per cent for a banjo rim), glue joints, holes.
 * Source    two loads: W. Young & R. Budynas, Roark's Formulas for Stress and Strain, circular rings, case 1;
 *           load all round and roll: S. Timoshenko, Strength of Materials, part II; both from memory, and
 *           checked by an energy and a frame solution in the tests.
 */
#pragma once

/* By how much the diameter along two opposite inward loads shortens. */
double rw_ring_along    (double load, double radius, double ei);
/* Under q N/mm inwards all round: how far the ring shrinks on the radius, and the q under which it would
 * buckle. */
double rw_ring_shrink   (double q, double radius, double ea);
double rw_ring_buckling (double radius, double ei);
/* Turn of the section, radians, under a moment per length m, N mm/mm; ei about the axis in the ring's plane. */
double rw_ring_roll (double m, double radius, double ei);
