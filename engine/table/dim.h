/* Dimensions: what the engine answers, one slot for each number.
 *
 * Rows of dims.def that carry an index own a run of slots.  The enumerators are the first slot of each
 * row, so that RW_HOOKS_ARC + k is the arc of hook k: indices are used as they are, and slot 0 of a run
 * counted from 1 stays empty.
 */
#pragma once

#include "param.h"

#define RW_HOOKS_MAX 48
#define RW_PLIES_MAX 170
#define RW_HOLES_MAX 2

/* How many slots an index takes, 0 included. */
enum
{
  RW_SPAN_ONE = 1,
  RW_SPAN_FRET = RW_FRETS_MAX + 1,
  RW_SPAN_STRING = RW_STRINGS_MAX + 1,
  RW_SPAN_HOOK = RW_HOOKS_MAX + 1,
  RW_SPAN_COURSE = RW_COURSES_MAX + 1,
  RW_SPAN_PLY = RW_PLIES_MAX + 1,
  RW_SPAN_HOLE = RW_HOLES_MAX + 1,
  RW_SPAN_STRING_FRET = RW_SPAN_STRING * RW_SPAN_FRET,
};

/* DIM (RW_HOOKS_ARC, "hooks.arc[k]", HOOK, ...)  becomes
 * RW_HOOKS_ARC, RW_HOOKS_ARC_LAST = RW_HOOKS_ARC + RW_SPAN_HOOK - 1, */
typedef enum
{
#define DIM(name, id, index, ...) name, name##_LAST = name + RW_SPAN_##index - 1,
#include "dims.def"
#undef DIM
  RW_SLOT_COUNT,
} RwSlot;

/* The slot of a row with two indices: string i, fret n. */
#define RW_SLOT2(row, i, n) ((RwSlot) ((row) + (i) * RW_SPAN_FRET + (n)))

/* Steps of the making, in order; titles by rw_step_title(). */
typedef enum
{
  RW_STEP_CHOOSE,
  RW_STEP_STOCK,
  RW_STEP_SEGMENTS,
  RW_STEP_COURSES,
  RW_STEP_STACK,
  RW_STEP_TURN,
  RW_STEP_EDGE,
  RW_STEP_HOOP,
  RW_STEP_NECK_BLANK,
  RW_STEP_HEEL,
  RW_STEP_HEADSTOCK,
  RW_STEP_FRETBOARD,
  RW_STEP_FRETS,
  RW_STEP_FIFTH,
  RW_STEP_CARVE,
  RW_STEP_FIT,
  RW_STEP_SHOES,
  RW_STEP_HOOKS,
  RW_STEP_STRING_UP,
  RW_STEP_FINISH,
  RW_STEP_SET_UP,
  RW_STEP_COUNT,
} RwStep;

const char *rw_step_title (RwStep step);
/* What files and scripts call a step: "turn", "neck-blank" ... */
const char *rw_step_name  (RwStep step);
int         rw_step_find  (const char *name); /* -1: no such step */

typedef struct
{
  const char *id; /* with its index letters: "hooks.arc[k]" */
  const char *part;
  const char *label;
  const char *unit;
  const char *definition;
  double      tolerance; /* 0: none */
  RwStep      step;
  RwSlot      first;
  int         span;
} RwDim;

extern const RwDim rw_dims[];
extern const int   rw_dims_count;

/* The row that owns a slot. */
const RwDim *rw_slot_dim   (RwSlot slot);
/* The id with its indices written out, "setup.cents[3][12]"; label with the index worked in, "Fret 7 from
 * the nut".  New strings. */
char        *rw_slot_id    (RwSlot slot);
char        *rw_slot_label (RwSlot slot);
/* The label in another language: translate is called with the label and with the words put around it. */
char        *rw_slot_label_in (RwSlot slot, const char *(*translate) (const char *english));
/* The slot called id, indices written out; -1 where there is none. */
int          rw_slot_find  (const char *id);
