#include "model.h"

const double rw_gauss_node[4]
    = { -0.861136311594052575, -0.339981043584856265, 0.339981043584856265, 0.861136311594052575 };
const double rw_gauss_weight[4]
    = { 0.347854845137453857, 0.652145154862546143, 0.652145154862546143, 0.347854845137453857 };

#define SAMPLES 32
#define CLOSE 1e-7 /* a function is flat where it is least: its value is then right to the last digits */
#define GOLDEN 0.38196601125010515

double
rw_least (double (*f) (double x, const void *data), const void *data, double a, double b, double *at)
{
  double step = (b - a) / SAMPLES;
  double best_x = a, best = f (a, data);

  for (int i = 1; i <= SAMPLES; i++)
    {
      double x = i == SAMPLES ? b : a + i * step;
      double y = f (x, data);

      if (y < best)
        {
          best = y;
          best_x = x;
        }
    }

  double lo = MAX (a, best_x - step), hi = MIN (b, best_x + step);
  double x1 = lo + GOLDEN * (hi - lo), x2 = hi - GOLDEN * (hi - lo);
  double y1 = f (x1, data), y2 = f (x2, data);
  for (int i = 0; i < 60 && hi - lo > CLOSE; i++)
    {
      if (MIN (y1, y2) < best)
        {
          best = MIN (y1, y2);
          best_x = y1 < y2 ? x1 : x2;
        }
      if (y1 < y2)
        {
          hi = x2;
          x2 = x1;
          y2 = y1;
          x1 = lo + GOLDEN * (hi - lo);
          y1 = f (x1, data);
        }
      else
        {
          lo = x1;
          x1 = x2;
          y1 = y2;
          x2 = hi - GOLDEN * (hi - lo);
          y2 = f (x2, data);
        }
    }
  if (at != NULL)
    *at = best_x;
  return best;
}

double
rw_root (double (*f) (double x, void *data), void *data, double a, double b)
{
  double fa = f (a, data), fb = f (b, data);

  if (!isfinite (fa) || !isfinite (fb) || (fa > 0) == (fb > 0))
    return fa == 0 ? a : fb == 0 ? b : NAN;

  for (int i = 0; i < 200; i++)
    {
      double x = b - fb * (b - a) / (fb - fa);

      /* A step that makes no headway near an end is replaced by halving. */
      if (!(x > MIN (a, b) && x < MAX (a, b)) || i % 8 == 7)
        x = 0.5 * (a + b);
      double fx = f (x, data);

      if (!isfinite (fx))
        return NAN;
      if (fx == 0)
        return x;
      double moved = fabs (x - b);
      if ((fx > 0) != (fb > 0))
        {
          a = b;
          fa = fb;
        }
      else
        fa *= 0.5;
      b = x;
      fb = fx;
      if (MIN (moved, fabs (b - a)) < 1e-14 * (1 + fabs (x)))
        return x;
    }
  return b;
}
