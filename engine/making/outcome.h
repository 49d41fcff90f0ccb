/* Outcomes: what a maker wants to come out right, and how far off each may be.
 *
 * An outcome is a number of a solved build with a limit among the parameters of the group "Close enough".  Notes are
 * outcomes too, each string at each of its frets; the row RW_OUTCOME_PITCH stands for all of them.
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
  RW_OUTCOME_COUNT,
} RwOutcomeId;

/* All of them in one row: the outcomes above, then the notes. */
#define RW_OUTCOME_NOTE(string, fret) (RW_OUTCOME_COUNT + (string) * RW_SPAN_FRET + (fret))
#define RW_OUTCOME_ALL (RW_OUTCOME_COUNT + RW_SPAN_STRING_FRET)

typedef struct
{
  const char *id;    /* "action": for files */
  const char *label; /* English, marked for translation */
  const char *unit;
  RwParamId   limit; /* how far off it may be */
} RwOutcome;

/* For a place in the row: notes share the entry of RW_OUTCOME_PITCH. */
const RwOutcome *rw_outcome (int place);

/* rw_outcomes_read: the outcomes of a build that was planned as in plan; NaN for what the build does not have.
 * RW_OUTCOME_BRIDGE_HEIGHT and RW_OUTCOME_PITCH are left NaN: they need more than one build. */
void rw_outcomes_read (const RwResult *result, const RwResult *plan, double *row);
