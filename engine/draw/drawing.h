/* The drawings of a build: builders that add the views of a solved design to a sheet.
 *
 * Every builder takes the result of rw_solve() and nothing else, so that screen and papers can't differ.
 * A part whose numbers are missing (NaN) is left out.
 */
#pragma once

#include "model/solve.h"
#include "sheet/sheet.h"

/* The views that can be asked for by name. */
typedef enum
{
  RW_VIEW_WHOLE, /* plan over side elevation on one centre line */
  RW_VIEW_PLAN,
  RW_VIEW_SIDE,
  RW_VIEW_COURSES,   /* rim courses with their joints, and the segment, stave or ply */
  RW_VIEW_POT,       /* section through the pot at a shoe */
  RW_VIEW_HEEL,      /* heel joint from the side and from above */
  RW_VIEW_HEADSTOCK,
  RW_VIEW_SECTIONS,  /* neck sections at four places with facets */
  RW_VIEW_FRETBOARD,
  RW_VIEW_HOOK,      /* hook and tension hoop */
  RW_VIEW_COUNT,
} RwView;

const char *rw_view_id    (RwView view); /* "whole", "pot" ... */
const char *rw_view_title (RwView view);
int         rw_view_find  (const char *id);

/* rw_draw: a new sheet of one view.  measured (may be NULL) tells which figures are underlined; title is
 * the project's name. */
RwSheet *rw_draw (RwView view, const RwResult *result, const RwMeasured *measured, RwStyle style);

/* The same, to be laid over the drawing of another build: plan and side stand as far apart as there. */
RwSheet *rw_draw_like (RwView            view,
                       const RwResult   *result,
                       const RwMeasured *measured,
                       RwStyle           style,
                       const RwResult   *like);

/* The frames that parts are described in, for what must find its place on a sheet (grips, marks). */
typedef enum
{
  RW_FRAME_PLAN,          /* pot frame: x, y */
  RW_FRAME_SIDE,          /* pot frame: x, z */
  RW_FRAME_RADIAL,        /* section through the pot at a shoe: distance from the rim's axis, z */
  RW_FRAME_HEADSTOCK,     /* the face unfolded: distance from the nut's back face along the centre line, y
                             from the centre line */
  RW_FRAME_BOARD,         /* distance from the nut line along the centre line, y from the centre line */
  RW_FRAME_SECTION_FIRST, /* neck section at the first fret: y from the centre line, z over the glue line */
  RW_FRAME_SECTION_TWELVE, /* likewise at the twelfth */
  RW_FRAME_HOOK,          /* the hook alone: from the leg's axis towards the claw's tip, z over the claw's axis */
} RwFrame;

/* rw_view_place: where a point of a frame stands on the sheet that rw_draw() makes of a view, the mirror of a
 * left-handed build included; FALSE where the view does not show the frame. */
gboolean rw_view_place (RwView view, RwFrame frame, const RwResult *result, RwPoint in, RwPoint *out);
