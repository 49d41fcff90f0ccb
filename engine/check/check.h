/* Checks: what rw_check() runs, part by part.  Private to finding.c and check_*.c.
 *
 * A check looks at the solved build and adds a finding where it must.  A dimension that is left out is NaN,
 * and every comparison with it is false, so that its checks stay silent by themselves.
 *
 * Limits stand here with their basis.  Those without a named source are common practice, no source.
 */
#pragma once

#include <math.h>

#include "finding.h"

/* Rim. */
#define RW_LEAST_WALL 9.5          /* with hooks pulling on it */
#define RW_LEAST_TURNING 1.6       /* rings slip this far in gluing, even in careful work */
#define RW_MOST_CLOSING_ERROR 0.5  /* deg over the whole ring, as a test ring shows it */
#define RW_MOST_GLUE_GAP 0.1       /* a glue line wants 0.05 to 0.15 mm */
#define RW_LEAST_STAGGER 0.2       /* of a segment, from joint to joint of neighbouring courses */
#define RW_LEAST_FACING 1.0        /* to face a glued stack true on top and back */
#define RW_LEAST_HOLE_WOOD 1.5     /* from a hole's edge to a glue line or joint */
#define RW_LEAST_SCARF 8.0         /* scarf length over ply thickness */
#define RW_MOST_PLY 4.8            /* 6.4 was judged too thick to bend */
#define RW_RIM_SPEED_CALM 8.0      /* m/s; 6000 to 9000 inch x rpm is the turners' usual range: 8 to 12 m/s */
#define RW_RIM_SPEED_MOST 12.0
#define RW_STOCK_ROD 914.4         /* 36 in, as rod and bar are sold over the counter */

/* Head. */
#define RW_LEAST_HEAD_ROOM 0.4 /* head size over the rim, on the diameter */
#define RW_GOOD_HEAD_ROOM 1.6
#define RW_MOST_HEAD_ROOM 3.0
#define RW_HEAD_SIZE_MATCH 1.6
#define RW_LEAST_TENSION 4000.0 /* N/m; where observed sag and tap notes of film heads meet */
#define RW_MOST_TENSION 10000.0
#define RW_FILM_STRESS_MPA 98.0 /* polyester film at 5 % strain: film maker's bulletin */
#define RW_LEAST_SKIN_ROOM 1.0  /* on the diameter, over two layers of skin each side */

/* Tension hoop. */
#define RW_LEAST_OVERLAP 1.5
#define RW_LEAST_TOP_OVER_HEAD 1.5 /* 3 is wanted when tightened */
#define RW_LEAST_NOTCH_METAL 3.0
#define RW_MOST_SPRINGBACK 40.0 /* %; beyond it a small error in the yield moves the former by centimetres */

/* Hooks and shoes. */
#define RW_LEAST_PITCH 25.0
#define RW_GOOD_PITCH 60.0
#define RW_MOST_PITCH 80.0
#define RW_LEAST_HOOK_TO_HEEL 10.0 /* hook's edge to the heel's side */
#define RW_FAR_FROM_HEEL 25.0      /* hook's axis from the heel's side: 12.7 to 19 is usual */
#define RW_LEAST_SHOE_TO_TAIL 3.0
#define RW_LEAST_HOLE_TO_HOLE 6.0
#define RW_MOST_LEAN 1.5           /* mm or deg */
#define RW_LEAST_TIP_OVER_BACK 1.0
#define RW_THREAD_FIT 0.1          /* rod over or under the thread's diameter */
#define RW_THREAD_DEPTH 1.08253    /* basic depth over pitch, on the diameter: ISO 724, ASME B1.1 */
#define RW_LEAST_TURNS 3.0
#define RW_BRASS_ENGAGEMENT 1.5    /* diameters: rule of thumb for brass and bronze; 1 for steel */
#define RW_ROD_YIELD_MPA 207.0     /* soft rod: stainless 304 annealed, Hibbeler, Mechanics of Materials */
#define RW_LEAST_CLAW_HOLD 2.0     /* of the claw on the hoop */
#define RW_MOST_TIP_OVER_HOOP 1.0  /* hook tip past the hoop's bore and its clearance */
#define RW_LEAST_BOLT_WOOD 6.0     /* bolt hole to the rim's top or back */
#define RW_MOST_NOTCH_MISS 1.5     /* notch against shoe, along the rim */

/* Heel joint. */
#define RW_LEAST_ROD_WOOD 6.0 /* rod hole to the rim's top or back; 12 is wanted */
#define RW_GOOD_ROD_WOOD 12.0
#define RW_LEAST_HEEL_WOOD 4.0
#define RW_LEAST_END_GAP 1.6  /* board to hoop, 1.6 to 4.8 */

/* Neck. */
#define RW_LEAST_UNDER_ROD 4.0
#define RW_STOP_UNDER_ROD 3.0
#define RW_LEAST_BESIDE_ROD 4.0
#define RW_LEAST_FLOOR 1.5
#define RW_STOP_FLOOR 0.3 /* breaks in the hand */
#define RW_LEAST_SLOT_ROOM 0.1 /* slot deeper than the tang by 0.1 to 0.5 */
#define RW_MOST_SLOT_ROOM 0.5
#define RW_LEAST_PAST_FRET 6.0
#define RW_LEAST_THICKNESS 14.0
#define RW_MOST_THICKNESS 26.0
#define RW_LEAST_BOARD 3.0
#define RW_MOST_BOARD 6.4
#define RW_LEAST_NUT_PITCH 7.6 /* 8.5 is usual */
#define RW_LEAST_MARGIN 2.0
#define RW_MOST_FRET_ERROR 0.2 /* about 1 cent at the 12th fret */
#define RW_RELIEF_ROOM 0.05
#define RW_MOST_RELIEF 0.8

/* Short string. */
#define RW_SPACING_ROOM 0.5       /* under the pitch of its neighbours */
#define RW_MOST_START_HEIGHT 0.5
#define RW_LEAST_PEG_GAP 4.0      /* to the string beside it */
#define RW_LEAST_TO_CHANNEL 1.5
#define RW_LEAST_PEG_HOLE 16.0    /* 19 to 22 is usual */
#define RW_GOOD_PEG_HOLE 22.0
#define RW_LEAST_TUBE_BORE 1.5

/* Headstock. */
#define RW_MOST_BEND 12.0
#define RW_BUTTON_ROOM 2.0
#define RW_LEAST_POST_EDGE 12.7
#define RW_WIDE_BLANK 76.2 /* 3 in; 2 to 3 in is what neck blanks are cut from */
#define RW_LEAST_HEAD_ANGLE 5.0

/* Set-up. */
#define RW_ANGLE_OUT 0.5 /* deg off what the action wants */
#define RW_ANGLE_FAR_OUT 1.0
#define RW_MOST_ANGLE 5.0 /* 1 to 3 is usual */
#define RW_LOW_ACTION 1.6
#define RW_HIGH_ACTION 3.2
#define RW_LANDING_LEAST 0.48
#define RW_LANDING_LOW 0.55
#define RW_LANDING_HIGH 0.76
#define RW_LANDING_MOST 0.80
#define RW_LEAST_BREAK 5.0
#define RW_MOST_BREAK 15.0
#define RW_LEAST_TAIL_LENGTH 30.0
#define RW_LEAST_FOOT_TO_EDGE 12.7
#define RW_SAG_SEEN 1.6 /* set-up guides: tighten above 1.6; open backs are seen up to 3.2 */
#define RW_SAG_MOST 3.2
#define RW_LEAST_OVER_HOOP 1.5
#define RW_WIRE_STRENGTH_MPA 2450.0 /* music wire, ASTM A228, one value for all sizes: materials database */
#define RW_WIRE_USE 0.75            /* of it, before breaking at the bend and with age */
#define RW_TAIL_MISS 1.5            /* third string from the tail's centre */
#define RW_TAIL_MISS_FAR 3.0

/* Movement. */
#define RW_FELT_FRET_END 0.1   /* fret ends proud by less are felt by nobody */
#define RW_MOST_FRET_PROUD 0.3
#define RW_FRET_PROUD_SEEN 0.8 /* 1/32 in after a dry winter, as reported */

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
void rw_check_materials (RwCheck *check);
