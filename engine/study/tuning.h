/* Tunings by name, and what another tuning does to the instrument as it stands. */
#pragma once

#include "model/solve.h"
#include "study.h"

typedef struct
{
  const char *label; /* English, marked for translation */
  const char *notes; /* from the 1st string on, "D4 B3 G3 D3 G4" */
  gboolean    has_short;
} RwTuning;

/* Common practice, no source. */
extern const RwTuning rw_tunings[];
extern const int      rw_tunings_count;

/* Whether a tuning is for as many strings as a set has, and a short one among them or none. */
gboolean rw_tuning_fits (const RwTuning *tuning, const RwStringSet *set);

/* The notes of a set as they are written in a tuning.  New. */
char *rw_tuning_of (const RwStringSet *set);

/* rw_tuning_read: Given text as in a tuning, with blanks, commas or semicolons between the notes.
 * Returned the notes, NULL-ended and new, one for each string of the set; or NULL and an error in RW_PARAM_ERROR where
 * there are too few or too many.  Whether they are notes is told by rw_retune(). */
char **rw_tuning_read (const char *text, const RwStringSet *set, GError **error);

/* A build before and after its strings were tuned to other notes: pull and set-back of each string, and what the table
 * has besides.  capo: the fret it is on then, 0 for none. */
RwStudy *rw_study_tuning (const RwResult *now, const RwResult *then, int capo, RwTranslate translate);
