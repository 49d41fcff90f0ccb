/* What turning a nut on its hook takes.
 *
 * Torque Q = K P D, P the pull of the hook and D the thread's major diameter.  K by the finish of the thread.
 * Source: R. Budynas & J. Nisbett, Shigley's Mechanical Engineering Design, table 8-15. */
#pragma once

#define RW_NUT_FACTOR_PLAIN 0.20   /* zinc plated */
#define RW_NUT_FACTOR_GREASED 0.12 /* with anti-seize */
#define RW_NUT_FACTOR_BLACK 0.30
