/* What if: one result against one parameter, all else held, and the value that gives a wanted result.
 *
 * Some results are given rather than worked out, by choice: then what gives them is asked of the part that is held
 * instead.  For the action the neck angle is held as it has come out; for the height of the bridge the neck angle and
 * the action; for the head's pitch it is the tension that is set.  A design that is applied says so too.
 */
#pragma once

#include "model/solve.h"
#include "study.h"

/* Results that may be asked for, the present build's first; returns how many.  slots takes RW_WHAT_IF_RESULTS. */
#define RW_WHAT_IF_RESULTS 24
int rw_what_if_results (const RwResult *now, RwSlot *slots);

typedef struct
{
  RwDesign          base; /* with held parts in their places */
  const RwMeasured *measured;
  RwSlot            slot;
  RwParamId         param;
  double            now;   /* present value of the parameter */
} RwWhatIf;

/* rw_what_if_new: param must be a number.  measured (NULL: nothing) must outlive it. */
RwWhatIf rw_what_if_new (const RwDesign *design, const RwMeasured *measured, const RwResult *now, RwSlot slot,
                         RwParamId param);

/* What is held of a result that is given by choice in the design, in a sentence: English, marked for translation;
 * NULL where nothing is. */
const char *rw_what_if_held (const RwWhatIf *what, const RwDesign *design);

/* Whether the parameter moves the result at all, by a step up or down.  Three solves at most. */
gboolean rw_what_if_moves (const RwWhatIf *what);

#define RW_WHAT_IF_POINTS 64

typedef struct
{
  guint  count;
  double at[RW_WHAT_IF_POINTS];     /* of the parameter, in rising order */
  double values[RW_WHAT_IF_POINTS]; /* results there, NaN where there is none */
} RwWhatIfCurve;

/* The curve over the parameter's range, with the present value among its places (whole numbers only for a count).  One
 * solve a point. */
void rw_what_if_curve (const RwWhatIf *what, RwWhatIfCurve *curve);

typedef enum
{
  RW_WHAT_IF_REACHED,
  RW_WHAT_IF_NEAREST, /* a count: the whole number that comes nearest */
  RW_WHAT_IF_BEYOND,  /* no value in the parameter's range gives it; or nothing is wanted */
  RW_WHAT_IF_NEVER,   /* the result can't be worked out for any */
} RwWhatIfReach;

typedef struct
{
  RwWhatIfReach reach;
  double        value;     /* of the parameter: nearest to the present one if there are several; NaN */
  double        result;    /* there */
  double        low, high; /* of the result over the parameter's range */
} RwWhatIfAnswer;

/* rw_what_if_solve: Given the curve of the same question, its pieces are searched for a change of sign, the one
 * nearest to the present value first, and the root is found in it to the last few bits.  A result that is reached
 * and left again between two points of the curve is not seen. */
RwWhatIfAnswer rw_what_if_solve (const RwWhatIf *what, const RwWhatIfCurve *curve, double wanted);

/* The base with the parameter at a value; FALSE where that is out of its range. */
gboolean rw_what_if_apply (const RwWhatIf *what, double value, RwDesign *design);

/* The curve as a study, with the present point and, where wanted is a number, its level and the point that gives it,
 * which answer tells. */
RwStudy *rw_study_what_if (const RwWhatIf *what, double wanted, RwWhatIfAnswer *answer, RwTranslate translate);
