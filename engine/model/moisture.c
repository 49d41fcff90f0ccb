#include "moisture.h"

double
rw_moisture_at (double t, double humidity)
{
  double h = humidity / 100;
  double w = 349 + 1.29 * t + 0.0135 * t * t;
  double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  double q = k * h;

  return 1800 / w * (q / (1 - q) + (k1 * q + 2 * k1 * k2 * q * q) / (1 + k1 * q + k1 * k2 * q * q));
}
