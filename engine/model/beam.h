/* The neck as a beam: how the strings bend it, and what a rod takes back.
 *
 * Curvature k = M/EI.  M is the sum over the strings present of tension times the height of the string's line
 * over the section's centroid; EI that of the transformed section: board on profile, less the rod channel.
 * The neck is held from the heel's start on; v(x) = int_x^xh (u - x) k(u) du, towards the strings positive.  A
 * rod gives a constant moment over its channel, against the strings.
 *
 * Neglects  the axial load's amplification (about 1 %), shear, creep, the stiffness of rod and frets.
 * Source    transformed section: J. Gere & B. Goodno, Mechanics of Materials; beam integration: any text on
 *           strength of materials.
 */
#pragma once

#include "model.h"
#include "profile.h"

#define RW_BEAM_MAX (RW_FRETS_MAX + 10)

typedef struct
{
  const RwModel *m;
  RwQuadrant     quadrant;
  double         heel_start;        /* xh */
  double         rod_from, rod_to;  /* channel within [0, xh] */
  double         bridge_plane;      /* Hb */
  double         pull, pull_short;  /* of the full-length strings, and what the short one adds from its start, N */

  int    count;                     /* places in order, 0 first and xh last */
  double x[RW_BEAM_MAX];
  /* Integrals from each place to xh of k and of u k: of the strings, and of a rod moment of 1 N mm. */
  double string0[RW_BEAM_MAX], string1[RW_BEAM_MAX];
  double rod0[RW_BEAM_MAX], rod1[RW_BEAM_MAX];

  /* Widths of the board within the piece after each place, and the piece they were worked out for: most
   * pieces are the same each time that the beam is bent. */
  double width[RW_BEAM_MAX][4], width_from[RW_BEAM_MAX], width_to[RW_BEAM_MAX];
} RwBeam;

typedef struct
{
  double ei;       /* N mm2 */
  double centroid; /* mm under the board's surface */
} RwSection;

/* The section at x with or without the channel: what the bending is made of, so that it can be checked by itself. */
RwSection rw_beam_section (const RwBeam *beam, double x, gboolean channel);

/* rw_beam_bend: Given the heel's start, the end of the channel and the bridge's height over the fret plane, sets
 * the beam up.  Before the first time it is all zero; afterwards the plan must stay as it is. */
void rw_beam_bend (RwBeam *beam, const RwModel *m, double heel_start, double channel_end, double bridge_plane);

/* v at x for a rod moment in N mm; 0 from xh on. */
double rw_beam_lift (const RwBeam *beam, double x, double rod);

/* The largest distance of v under its chord from the nut to xh. */
double rw_beam_relief (const RwBeam *beam, double rod);

/* rw_beam_rod: the smallest rod moment that brings the relief down to wanted; reached is FALSE where none does,
 * and the moment is then the one of least relief. */
double rw_beam_rod (const RwBeam *beam, double wanted, gboolean *reached);
