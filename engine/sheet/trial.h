/* The places that a text of a sheet may take, tried one by one when a sheet is laid out. */
#pragma once

#include "layout.h"

#define RW_TRIAL_MARKS 8

/* One place: the text, and the lines that go with it there. */
typedef struct
{
  RwPlacedText text;
  RwPlacedMark marks[RW_TRIAL_MARKS];
  int          count; /* of marks */
  double       cost;  /* how much worse than the best place, before anything is in the way */
} RwTrial;

typedef struct
{
  const RwItem *item;
  int           index; /* of the item */
  double        scale; /* paper mm per sheet mm */
  double        unit;  /* size of small letters over 2.5 mm */
} RwTrialJob;

/* How many places there are for the item, the likelier ones first. */
int rw_trial_places (const RwItem *item);

/* FALSE: the item can't be set in that place. */
gboolean rw_trial_make (const RwTrialJob *job, int place, RwTrial *trial);

/* For the makers of trials: angles stand apart in their own file. */
void     rw_trial_set_text (const RwTrialJob *job, RwTrial *trial, RwPoint at, double turn);
void     rw_trial_add_line (const RwTrialJob *job, RwTrial *trial, RwMarkKind kind, RwPoint a, RwPoint b);
/* tip, and the unit vector in which it points. */
void     rw_trial_add_head (const RwTrialJob *job, RwTrial *trial, RwPoint tip, RwPoint way);
/* Size of the item's lettering and its width, paper mm. */
double   rw_trial_letters  (const RwTrialJob *job);
double   rw_trial_width    (const RwTrialJob *job);

#define RW_ANGLE_PLACES 4
gboolean rw_trial_angle (const RwTrialJob *job, int place, RwTrial *trial);

/* Proportions of dimensions, in paper mm at small letters of 2.5 mm. */
#define RW_TRIAL_GAP 1.0       /* object to extension line; line to figure */
#define RW_TRIAL_OVERSHOOT 2.0 /* extension line past dimension line */
#define RW_TRIAL_HEAD 3.0      /* length of an arrow head; a third of that wide */
#define RW_TRIAL_TAIL 6.0      /* line behind an arrow that stands outside */
#define RW_TRIAL_SHORT 7.0     /* no room for two heads inside */
#define RW_TRIAL_ROW 7.0       /* from one row of dimensions to the next */
