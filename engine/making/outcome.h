/* Outcomes: what a maker wants to come out right, and how far off each may be.
 *
 * An outcome is a number of a solved build with a limit that the maker can set: one of the group "Close enough", or the
 * allowance that it eats up.  Some stand for a family: RW_OUTCOME_PITCH for all notes, each string at each of its
 * frets, RW_OUTCOME_NOTCH_MISS for all hooks.  Each member is an outcome of its own, with the limit of the family.
 */
#pragma once

#include "model/solve.h"

typedef enum
{
  RW_OUTCOME_ACTION,         /* at the action fret, mm */
  RW_OUTCOME_BRIDGE_HEIGHT,  /* that would give the wanted action, mm */
  RW_OUTCOME_BRIDGE_PLACE,   /* beyond the rim's centre, mm */
  RW_OUTCOME_PITCH,          /* of the note it is said for, cents off plan */
  RW_OUTCOME_STRING_LINE,    /* middle string past the tail's centre, mm */
  RW_OUTCOME_TREBLE_MARGIN,  /* outer string to the board's edge at the last fret, mm */
  RW_OUTCOME_BASS_MARGIN,
  RW_OUTCOME_OVER_HOOP,      /* string over the hoop, mm */
  RW_OUTCOME_HOOK_THREAD,    /* thread past the nut at first contact, mm */
  RW_OUTCOME_HOOK_TIP,       /* hook's end above the rim's back edge, mm */
  RW_OUTCOME_HOOK_LEAN,      /* deg */
  RW_OUTCOME_HOOP_CLEARANCE, /* radial, mm */
  RW_OUTCOME_HEAD_ROOM,      /* head size over the rim, on the diameter, mm */
  RW_OUTCOME_RING_GAP,       /* at the last joint: positive gapes outside, mm */
  RW_OUTCOME_TURN_OUTSIDE,   /* wood to turn off a ring, where it is least, mm */
  RW_OUTCOME_TURN_INSIDE,
  RW_OUTCOME_STAVE_END,      /* wood to face off staves, mm */
  RW_OUTCOME_FLATTEN,        /* wood to flatten off a course, mm; by course */
  RW_OUTCOME_BOLT_REACH,     /* shoe bolt in its shoe, mm */
  RW_OUTCOME_NOTCH_MISS,     /* hook beside its notch, along the rim, mm; by hook */
  RW_OUTCOME_HOOK_ROOM,      /* hook in a groove off its place next to heel or tailpiece, mm; by hook */
  RW_OUTCOME_EDGE_MARGIN,    /* outer string to the board's edge, mm; by edge and fret, the last of which is above */
  RW_OUTCOME_END_GAP,        /* board's end to the hoop, mm */
  RW_OUTCOME_TANG_ROOM,      /* slot over tang depth, mm */
  RW_OUTCOME_HEAD_DROP,      /* headstock's end under the board, mm */
  RW_OUTCOME_POST_BEND,      /* bend behind the nut, deg; by string */
  RW_OUTCOME_POST_GAP,       /* string on its run past the posts of others, mm; by string */
  RW_OUTCOME_COUNT,
} RwOutcomeId;

/* All of them in one row: the outcomes above, then the members of families. */
#define RW_SPAN_EDGE (RW_SPAN_FRET + 1) /* frets, and the board's end */
enum
{
  RW_OUTCOME_NOTES = RW_OUTCOME_COUNT,
  RW_OUTCOME_COURSES = RW_OUTCOME_NOTES + RW_SPAN_STRING_FRET,
  RW_OUTCOME_NOTCHES = RW_OUTCOME_COURSES + RW_SPAN_COURSE,
  RW_OUTCOME_ROOMS = RW_OUTCOME_NOTCHES + RW_SPAN_HOOK,
  RW_OUTCOME_TREBLE_EDGE = RW_OUTCOME_ROOMS + RW_SPAN_HOOK,
  RW_OUTCOME_BASS_EDGE = RW_OUTCOME_TREBLE_EDGE + RW_SPAN_EDGE,
  RW_OUTCOME_BENDS = RW_OUTCOME_BASS_EDGE + RW_SPAN_EDGE,
  RW_OUTCOME_GAPS = RW_OUTCOME_BENDS + RW_SPAN_STRING,
  RW_OUTCOME_ALL = RW_OUTCOME_GAPS + RW_SPAN_STRING,
};
#define RW_OUTCOME_NOTE(string, fret) (RW_OUTCOME_NOTES + (string) * RW_SPAN_FRET + (fret))

typedef struct
{
  const char *id;    /* "action": for files */
  const char *label; /* English, marked for translation */
  const char *unit;
  RwParamId   limit; /* how far off it may be */
} RwOutcome;

/* For a place in the row: members share the entry of their family. */
const RwOutcome *rw_outcome (int place);
/* The places of the members of a family, from first up to but not past; an outcome that is none is its own member. */
void             rw_outcome_members (int outcome, int *first, int *past);

/* rw_outcomes_read: the outcomes of a build that was planned as in plan; NaN for what the build does not have.
 * RW_OUTCOME_BRIDGE_HEIGHT is left NaN, as it needs more than one build, and so are those that stand for a family. */
void rw_outcomes_read (const RwResult *result, const RwResult *plan, double *row);
