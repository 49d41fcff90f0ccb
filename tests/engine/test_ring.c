/* The rim as a ring: closed forms against an energy and a frame solution.
 *
 * The example: sugar maple of 12.6 GPa (USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190,
 * 2010), 19 mm thick and 63.5 mm high, on a mean radius of 130 mm; worked apart from the program. */
#include "model/ring.h"

#include <math.h>
#include <string.h>

#include "expected.h"

#define R 130.0
#define EI (12600 * 63.5 * 19 * 19 * 19 / 12) /* 457.324 N m2 */
#define W 100.0

/* Roark's Formulas for Stress and Strain, circular rings, case 1; 0.14878 W R^3/EI by hand. */
static void
test_two_loads (void)
{
  expected_near ("EI in N m2", EI * 1e-6, 457.324, 0.001);
  expected_near ("shorter along", rw_ring_along (W, R, EI), 0.071474, 1e-6);
  expected_near ("of 300 N", rw_ring_along (300, R, EI), 0.214, 0.0005);
}

/* Castigliano's theorem over a quarter: M = M0 + W R (1 - cos x)/2 from the unloaded diameter, M0 such that the
 * section there does not turn; the load then moves by the derivative of the energy, 4/EI int M dM/dW R dx. */
static void
test_energy (void)
{
  const int steps = 100000;
  double mean = 0, change = 0, h = G_PI / 2 / steps;

  for (int i = 0; i < steps; i++)
    mean += (1 - cos ((i + 0.5) * h)) / steps;
  for (int i = 0; i < steps; i++)
    {
      double m = W * R / 2 * (1 - cos ((i + 0.5) * h) - mean);

      change += 4 * m * (m / W) * R * h / EI;
    }
  expected_near ("by energy", rw_ring_along (W, R, EI), change, 1e-8);
}

/* A quarter of the ring as a frame of straight beams: displacements along and across, and turn, at each
 * corner. */
#define BEAMS 90
#define SIZE (3 * (BEAMS + 1))

static void
add_beam (double k[SIZE][SIZE], int i, double ea)
{
  double a = i * G_PI / 2 / BEAMS, b = (i + 1) * G_PI / 2 / BEAMS;
  double dx = R * (cos (b) - cos (a)), dy = R * (sin (b) - sin (a)), l = hypot (dx, dy), c = dx / l, s = dy / l;
  /* Stretch, and the turns of both ends against the chord, for each displacement. */
  double stretch[6] = { -c, -s, 0, c, s, 0 };
  double near[6] = { -s / l, c / l, 1, s / l, -c / l, 0 }, far[6] = { -s / l, c / l, 0, s / l, -c / l, 1 };

  for (int p = 0; p < 6; p++)
    for (int q = 0; q < 6; q++)
      k[3 * i + p][3 * i + q] += ea / l * stretch[p] * stretch[q]
                                 + EI / l * (4 * near[p] * near[q] + 4 * far[p] * far[q]
                                             + 2 * near[p] * far[q] + 2 * far[p] * near[q]);
}

static void
hold (double k[SIZE][SIZE], int i)
{
  for (int j = 0; j < SIZE; j++)
    k[i][j] = k[j][i] = 0;
  k[i][i] = 1;
}

/* Gauss's elimination, which a positive matrix lets go in order. */
static void
solve (double k[SIZE][SIZE], double *x)
{
  for (int i = 0; i < SIZE; i++)
    for (int j = i + 1; j < MIN (SIZE, i + 6); j++)
      {
        double f = k[j][i] / k[i][i];

        for (int col = i; col < MIN (SIZE, i + 6); col++)
          k[j][col] -= f * k[i][col];
        x[j] -= f * x[i];
      }
  for (int i = SIZE - 1; i >= 0; i--)
    {
      for (int col = i + 1; col < MIN (SIZE, i + 6); col++)
        x[i] -= k[i][col] * x[col];
      x[i] /= k[i][i];
    }
}

static void
test_frame (void)
{
  static double k[SIZE][SIZE];
  double x[SIZE] = { -W / 2 };

  memset (k, 0, sizeof k);
  for (int i = 0; i < BEAMS; i++)
    add_beam (k, i, 1e4 * EI); /* as good as without stretch: 1 in 1e4 R^2 */
  hold (k, 1); /* under the load: neither across nor turning */
  hold (k, 2);
  hold (k, SIZE - 3); /* at the side: not along, nor turning */
  hold (k, SIZE - 1);
  solve (k, x);
  expected_near ("by 360 beams", rw_ring_along (W, R, EI), -2 * x[0], 2e-4 * 0.0715);
  expected_near ("wider across", 2 * x[SIZE - 2], 0.065628, 2e-4 * 0.0656);
}

/* 7000 N/m inwards at 139.7 mm: 977.9 N over 19 by 63.5 mm of maple. */
static void
test_load_all_round (void)
{
  expected_near ("shrink", rw_ring_shrink (7, 139.7, 12600 * 19 * 63.5), 8.99e-3, 1e-5);
  expected_near ("buckling, kN/m", rw_ring_buckling (139.7, EI), 503, 0.6);
  /* At 31.75 mm over the middle of the section. */
  double turn = rw_ring_roll (7 * 31.75, R, 12600 * 19 * 63.5 * 63.5 * 63.5 / 12);
  expected_near ("roll, mrad", turn * 1000, 0.735, 0.0007);
  expected_near ("edge", turn * 31.75, 23.3e-3, 1e-4);
}

/* The same through a build, whose head ends at the outer face, 139.5 mm. */
#define RIM \
  "rim.outer_diameter=279|rim.wall=19|rim.height=63.5|rim.construction=plies|rim.course_wood=maple_hard|" \
  "rim.crest_inset=0|head.tension=7000"

static const Expected rows[] = {
  { "roll", RIM, "rim.head_roll", 23.3e-3, 1e-4 },
  /* N/A = 7 x 139.5/(19 x 63.5) = 0.809 and 2.26 N/mm2. */
  { "stress", RIM, "rim.load_stress", 0.809 + 2.26, 0.01 },
  { "squeeze", RIM, "rim.head_squeeze", 8.96e-3, 1e-5 },
  /* Staves give way as wood does across the grain: 1/0.0985 as much. */
  { "staves", RIM "|rim.construction=staves", "rim.head_squeeze", 8.96e-3 / 0.0985, 1e-4 },
};

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ring/two-loads", test_two_loads);
  g_test_add_func ("/ring/energy", test_energy);
  g_test_add_func ("/ring/frame", test_frame);
  g_test_add_func ("/ring/load-all-round", test_load_all_round);
  expected_add ("/ring/build", rows, G_N_ELEMENTS (rows));
  return g_test_run ();
}
