/* Grips: places on a drawing that can be dragged to change a parameter.
 *
 * A grip is one row of grips.def: the parameter it shows and a point of the solved design.  Which value
 * belongs to a pointer's place is not written down a second time: it is the value that brings the grip's
 * point there, or nearest to there, found on trial designs with everything else as it is.  So a grip
 * follows the pointer along whatever curve its point can move on.
 *
 * Pure: nothing here knows of a screen.  Points are in millimetres of the sheet that rw_draw() makes.
 */
#pragma once

#include "drawing.h"

typedef struct
{
  const char *id;    /* "bridge.offset"; a second grip of a parameter has a suffix, "rim.wall/section" */
  RwParamId   param; /* what it shows */
  int         item;  /* of a list, counted from 1; 0: not a list */
  guint       views; /* bit 1 << RwView for each view that has it */
  RwFrame     frame;
  RwPoint   (*point) (const RwResult *result, int item); /* in the frame; NaN: the build has no such grip */
} RwGrip;

extern const RwGrip rw_grips[];
extern const int    rw_grips_count;

/* A state to drag from.  result is rw_solve() of the two others.  Good for a whole drag: keep the state it
 * began with, and the value depends on the pointer's place alone. */
typedef struct
{
  const RwDesign   *design;
  const RwMeasured *measured; /* NULL: nothing */
  const RwResult   *result;
  RwView            view;
} RwGripScene;

/* rw_grip_place: where the grip stands on the view's sheet; FALSE where view or build have no such grip. */
gboolean rw_grip_place (const RwGrip *grip, RwView view, const RwResult *result, RwPoint *place);

/* The parameter that the grip drags: its own; or, while that is worked out from others, one it is worked
 * out from: the bridge for the neck angle and for the action, the neck angle for the bridge. */
RwParamId rw_grip_drags (const RwGrip *grip, const RwResult *result);

/* The number that the grip shows, as it now is: worked out where it is worked out. */
double rw_grip_shown (const RwGrip *grip, const RwResult *result);

/* The number that the grip drags, in a design, and the same put there, held to its range. */
double rw_grip_get (const RwGrip *grip, const RwResult *result, const RwDesign *design);
void   rw_grip_put (const RwGrip *grip, const RwResult *result, RwDesign *design, double value);

/* Range of what the grip drags. */
double rw_grip_min (const RwGrip *grip, const RwResult *result);
double rw_grip_max (const RwGrip *grip, const RwResult *result);

/* Whether what it drags has been measured: then it is a fact, and dragging the plan would move nothing. */
gboolean rw_grip_is_fact (const RwGrip *grip, const RwGripScene *scene);

/* rw_grip_value_at: the value, within its range, that brings the grip to a place, or nearest to it.
 *
 * Accuracy  a place that the grip can reach gives its value to a millionth of the range, a place beside its
 *           way the value of a nearest place; the value it has now where it can't move at all.
 * Cost      about ten solutions.
 */
double rw_grip_value_at (const RwGrip *grip, const RwGripScene *scene, RwPoint place);

/* The nearest whole number of steps within the range.  A drag or an arrow key keeps to steps of 0.5 mm, 1/32 in or
 * 0.1 degree; a fifth to a tenth of that when fine.  Lengths that the table steps by a twentieth of a millimetre or
 * less keep to 0.1 mm. */
double rw_grip_snap (const RwGrip *grip, const RwResult *result, RwUnits units, gboolean fine, double value);
/* The next whole number of steps up (by > 0) or down from value, |by| steps on, within the range. */
double rw_grip_nudge (const RwGrip *grip, const RwResult *result, RwUnits units, gboolean fine, double value,
                      int by);
