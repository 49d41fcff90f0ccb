/* The head as a membrane of a circular frame, with the air that moves with it.
 *
 * Given     radius_mm   vibrating radius; tension in N/m; frequency in Hz
 *           mode        RW_MODE_01, RW_MODE_11 or RW_MODE_21: nodal diameters and circles
 * Returned  the tap note of a tension, and the tension of a tap note.
 * Neglects  bending stiffness of the film, bridge and strings on the head, the closed back of the pot.
 * Source    membrane modes: P. M. Morse, Vibration and Sound, 1948 (from memory); air: see head.c.
 */
#pragma once

#include "model.h"

double rw_head_frequency (const RwDesign *d, double radius_mm, double tension, int mode);
double rw_head_tension   (const RwDesign *d, double radius_mm, double frequency, int mode);
