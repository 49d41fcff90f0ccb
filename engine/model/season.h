/* What the air of the home does to an instrument that came out of the shop: action, fret ends, fits.
 *
 * Across the grain all its wood swells by size x coefficient x change of moisture (movement.h), flat-sawn; along the
 * grain it stays.  From that, and from nothing else:
 *
 *   set height   the board rises over what holds the heel, by board and neck wood; the head over the same, by the rim's
 *   bridge       rises by its wood
 *   neck angle   a face cut at A to wood that swells by e closes: tan A' = tan A/(1 + e)
 *   rim          its grain runs round, so the middle of the wall stays and half of the wall's swelling goes outwards;
 *                one of staves stands with its grain upright, and all of its diameter swells
 *
 * The model is solved with these in their places and the angle as cut, the rod as set and the head kept at its note;
 * the action is what it is now and what the solved builds differ by.
 *
 * Neglects  finish and time, which damp the swings; the wood's stiffness, which falls by some 2 % for each % of
 *           moisture; warping; a bridge top of another wood.  The head is kept at its note by its nuts, as a player
 *           does: what it would come to if they were left alone hangs on the give of hooks, hoop and edge, of which
 *           no figures are in print; how far the rim would draw it is told instead.  A skin moves more than the wood.
 * Source    movement.h, moisture.h; the rest is geometry.
 *
 * One solve for each air and one more: called when asked for, not while dragging.
 */
#pragma once

#include "solve.h"

/* mm, NaN where a wood's movement is not known or the build has no such thing. */
typedef struct
{
  double moisture;     /* of the wood, % */
  double action;       /* of the full-length strings at the action fret */
  double action_short; /* of the short string there */
  double board_width;  /* at the rim: change from the shop's */
  double rim_height;   /* likewise */
  double rim_wall;     /* likewise */
  double fret_end;     /* past the board's edge; negative: still inside */
  double head_room;    /* between the rim and the head's ring, in the diameter */
  double heel_gap;     /* at the heel's cheeks; negative: in its middle */
  double head_drawn;   /* the head over its edge, if the nuts are left alone */
} RwSeason;

/* rw_seasons: Given a solved build and the relative humidities of count airs, %, fills seasons, one an air. */
void rw_seasons (const RwResult *now, const double *humidities, guint count, RwSeason *seasons);
