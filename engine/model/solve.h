/* The whole computation: a design and what was measured in, every dimension out.
 *
 * rw_solve() is pure and allocates nothing.  A number that has no meaning for the build, or that can't be
 * worked out, is NaN in its slot and is left out of every list.
 */
#pragma once

#include "project/measured.h"

/* Why the side view could not be solved. */
typedef enum
{
  RW_SIDE_SOLVED,
  RW_SIDE_FOOT_OFF_HEAD, /* a foot of the bridge stands outside the vibrating head */
  RW_SIDE_NO_ANGLE,      /* no neck angle gives the wanted action */
  RW_SIDE_NO_BALANCE,    /* sag, angle and force find no balance */
} RwSideOutcome;

/* The side view in the frame of the pot, for drawing and findings.  Lengths mm, angles radians.  Where it could not be
 * solved, outcome says why and all numbers are NaN. */
typedef struct
{
  RwSideOutcome outcome;
  double        angle;         /* of the neck: as cut, and what a shim adds */
  double        bridge_height; /* off the head */
  double        sag;
  double        bridge_top;     /* over the head plane: height - sag */
  double        fret_plane;     /* Hb: bridge top over the plane of the crowns */
  double        action;         /* at the action fret */
  double        slope_front;    /* b1, full-length strings */
  double        slope_short;    /* b1 of the short string; NaN without one */
  double        slope_tail;     /* b2 */
  double        force;          /* down force, N */
  double        foot_share[3];  /* N: middle or first, then the outer ones */
  double        nut_to_rim;     /* mm along the board */
  double        heel_start;     /* xh: nut to the start of the heel curve */
  double        pull_up;        /* v(0): how far the nut lifts; 0 for a rigid neck */
  double        lift[RW_FRETS_MAX + 1]; /* v at the fret places, 0 the nut */
  double        lift_short;     /* v where the short string starts */
  double        rod_moment;     /* N mm, as applied in the model */
  double        relief;         /* with the rod as set */
  double        relief_free;    /* with the rod slack */
  gboolean      relief_reached; /* the rod brings the relief down to what is wanted */
} RwSide;

/* Lines in plan, in the frame of the axis: x from the nut line towards the body, y to the treble side. */
typedef struct
{
  int      strings, full; /* all strings, full-length strings */
  gboolean has_short;
  double   nut_y[RW_STRINGS_MAX + 1];    /* the short string's is where its line meets x = 0 */
  double   bridge_y[RW_STRINGS_MAX + 1];
  double   short_x, short_y;             /* where the short string starts */
  double   shoulder_from, shoulder_to;   /* the ramp of the bass edge */
  double   edge_margin;
  double   length;                       /* scale length */
  double   nut_middle;                   /* y of the middle of the board at the nut */
  double   centre_slope;                 /* of the neck's centre line against the axis: dy/dx */
  double   fret_x[RW_FRETS_MAX + 1];     /* all places 0..30, measured ones as measured */
  int      last;                         /* number of frets, or 24 for a fretless board */
} RwPlan;

typedef struct
{
  double   value[RW_SLOT_COUNT]; /* measured where measured, else worked out; NaN where left out */
  double   asked[RW_SLOT_COUNT]; /* worked out, measured or not: what all that comes before asks of it now */
  /* As setup.cents, with the bridge at its best straight place: string, fret. */
  double   cents_best[RW_STRINGS_MAX + 1][RW_FRETS_MAX + 1];
  RwDesign used;                 /* the design with measured parameters in place */
  RwPlan   plan;
  RwSide   side;
} RwResult;

/* rw_solve: Given the design as planned and what was measured (NULL: nothing), fills result. */
void rw_solve (const RwDesign *design, const RwMeasured *measured, RwResult *result);

/* Height of a string over the crown of a fret with the strings on, mm; NaN up to where a short one starts. */
double rw_action (const RwResult *result, int string, int fret);

/* Shapes that drawings need too. */
double rw_plan_string_y (const RwPlan *plan, int string, double x);
double rw_plan_treble   (const RwPlan *plan, double x); /* edge of the board */
double rw_plan_bass     (const RwPlan *plan, double x);
double rw_plan_centre   (const RwPlan *plan, double x); /* the neck's centre line */
/* Board included; straight from the first fret to the heel's start, produced outside. */
double rw_neck_thickness (const RwResult *result, double x);
/* Width of the heel at a depth under the fretboard's surface. */
double rw_heel_width (const RwResult *result, double depth);
