/* The back of the neck: below the glue line a superellipse in each half about the neck's centre line,
 * (|y|/w)^e + (z/d)^e = 1, w the half width of the board on that side, d the wood's depth.
 *
 * Source: G. Lame's curve; tangent arithmetic of the facets worked out here. */
#pragma once

#include <glib.h>

/* rw_profile_facet1: where the first facet (normalised slope -1) cuts the side and the back, as a share of d
 * and of w: 2^(1-1/e) - 1. */
double rw_profile_facet1 (double e);

/* rw_profile_facet2: the same for the second facets, whose normal stands at 22.5 degrees from either face in
 * normalised coordinates: (1 - u^(e-1))/v^(e-1) at (v/u)^(e-1) = tan 22.5 on u^e + v^e = 1. */
double rw_profile_facet2 (double e);

/* rw_profile_depth: depth of the curve at y from the centre line, 0 <= y <= w; NaN outside. */
double rw_profile_depth (double e, double w, double d, double y);

/* Moments of one quadrant of |u|^e + |v|^e = 1 about the glue line: area, first and second moment in v.
 * A quadrant w by d has w d area, w d^2 first, w d^3 second. */
typedef struct
{
  double area, first, second;
} RwQuadrant;

RwQuadrant rw_profile_quadrant (double e);
