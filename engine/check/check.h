/* Checks: what rw_check() runs, part by part.  Private to finding.c and check_*.c.
 *
 * A check looks at the solved build and adds a finding where it must.  A dimension that is left out is NaN,
 * and every comparison with it is false, so that its checks stay silent by themselves.
 *
 * Limits that a maker may set are parameters, limits.*; those that stand here are physical, or follow from
 * the build.  Those without a named source are common practice, no source.
 */
#pragma once

#include <math.h>

#include "finding.h"

#define RW_MOST_GLUE_GAP 0.1        /* a glue line wants 0.05 to 0.15 mm */
#define RW_FILM_STRESS_MPA 98.0     /* polyester film at 5 % strain: film maker's bulletin */
#define RW_THREAD_FIT 0.1           /* rod over or under the thread's diameter */
#define RW_THREAD_DEPTH 1.08253     /* basic depth over pitch, on the diameter: ISO 724, ASME B1.1 */
#define RW_BRASS_ENGAGEMENT 1.5     /* diameters: rule of thumb for brass and bronze; 1 for steel */
#define RW_ROD_YIELD_MPA 207.0      /* soft rod: stainless 304 annealed, Hibbeler, Mechanics of Materials */
#define RW_STOP_FLOOR 0.3           /* under a fret slot: breaks in the hand */
#define RW_RELIEF_ROOM 0.05         /* over the relief that is wanted */
#define RW_SPACING_ROOM 0.5         /* of the short string, under the pitch of its neighbours */
#define RW_FRET_PROUD_SEEN 0.8      /* 1/32 in after a dry winter, as reported */

/* Rim under its loads; no source. */
#define RW_MOST_RIM_IN 0.6   /* mm that its edge comes in */
#define RW_MOST_RIM_OVAL 1.0 /* mm along the axis, with neither rod nor stick */
#define RW_LEAST_BUCKLING 3.0

/* Limits are met by numbers that are rounded in the last place. */
#define RW_CHECK_SLACK 1e-9
/* The limit of a severity that a check does not have: nothing is under or over it. */
#define RW_NEVER ((double) NAN)
/* Nothing to report. */
#define RW_FINE (-1)

typedef struct
{
  const RwDesign   *plan;     /* as planned */
  const RwDesign   *used;     /* with measured parameters in place */
  const double     *at;       /* dimensions by slot */
  const RwResult   *result;
  const RwMeasured *measured; /* may be NULL */
  GPtrArray        *found;
} RwCheck;

/* rw_check_add: adds a finding.
 *
 * Given  severity  an RwSeverity, or RW_FINE: nothing is added
 *        ids       with spaces between; "{1}" in them is the first of the numbers, as in the pattern
 *        pattern   see rw_finding_words(); marked by N_()
 *        ...       at least one number.  Where one is not finite nothing is added
 */
#define rw_check_add(check, severity, rule, ids, pattern, ...) \
  rw_check_add_values ((check), (severity), (rule), (ids), (pattern), (const double[]){ __VA_ARGS__ }, \
                       (int) G_N_ELEMENTS (((const double[]){ __VA_ARGS__ })))

void rw_check_add_values (RwCheck      *check,
                          int           severity,
                          const char   *rule,
                          const char   *ids,
                          const char   *pattern,
                          const double *values,
                          int           count);

/* The severity of a value under (over) the limits, worst first; RW_FINE where it is under none, or NaN. */
int rw_check_low  (double value, double stop, double caution, double note);
int rw_check_high (double value, double stop, double caution, double note);

/* The value measured for a dimension, NaN where it was not. */
double rw_check_measured (const RwCheck *check, RwSlot slot);

void rw_check_side      (RwCheck *check); /* does it come together at all */
void rw_check_rim       (RwCheck *check); /* ring, strip, plies, turning */
void rw_check_courses   (RwCheck *check); /* stack of courses, joints, holes */
void rw_check_head      (RwCheck *check);
void rw_check_hoop      (RwCheck *check);
void rw_check_hooks     (RwCheck *check); /* one hook and its thread */
void rw_check_layout    (RwCheck *check); /* hooks round the rim */
void rw_check_neck      (RwCheck *check);
void rw_check_fifth     (RwCheck *check); /* the short string's side of the neck */
void rw_check_headstock (RwCheck *check);
void rw_check_joint     (RwCheck *check); /* heel and rods or stick */
void rw_check_setup     (RwCheck *check);
void rw_check_strength  (RwCheck *check); /* strings against their wire, rim against its loads */
void rw_check_materials (RwCheck *check);
void rw_check_made      (RwCheck *check); /* what is made against what is asked of it */
