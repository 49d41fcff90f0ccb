/* Moisture of wood in air.
 *
 * rw_moisture_at: equilibrium moisture content, %, at a temperature in degC and a relative humidity in %.
 * Source  two-hydrate Hailwood-Horrobin equation; USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190,
 *         2010, eq. 4-5; W. T. Simpson, FPL-RN-0268, 1998 (coefficients for degC).
 * Accuracy  mean deviation from the handbook's table under 0.13 % moisture, worst 0.9 %.  Leaves out species,
 *         stress and hysteresis.
 */
#pragma once

double rw_moisture_at (double temperature, double humidity);
