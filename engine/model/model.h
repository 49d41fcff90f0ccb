/* Private to the solver: what its parts share while a build is worked out.
 *
 * Each part of the model reads the design and earlier results from the context and answers its rows through
 * rw_settle(), the one place that decides whether the planned or the measured value goes on downstream.
 */
#pragma once

#include <math.h>

#include "table/material.h"
#include "solve.h"

#define RW_RAD (G_PI / 180.0)

/* A place on the head, mm from the rim's centre. */
typedef struct
{
  double x, y;
} RwPoint2;

/* What nobody knows well and no parameter says; see band.h. */
typedef struct
{
  double wood;  /* stiffness of the neck's wood and board over that in the table */
  double ends;  /* of the strings: 0 hinged, as the model takes them, to 1 clamped */
  double grain; /* 1 flat-sawn, as the model takes all wood, to 0 quarter-sawn */
  double yield; /* strength of the hoop's metal over that in the table */
} RwGuessed;

#define RW_GUESSED ((RwGuessed){ 1, 0, 1, 1 })

typedef struct
{
  const RwDesign   *d; /* with measured parameters in place */
  const RwMeasured *measured;
  RwResult         *r;
  RwGuessed         guessed;

  /* Strings, from 1. */
  double tension[RW_STRINGS_MAX + 1];   /* N */
  double mass[RW_STRINGS_MAX + 1];      /* kg/m */
  double frequency[RW_STRINGS_MAX + 1]; /* Hz, open */
  double after[RW_STRINGS_MAX + 1];     /* mm: nut or start to the peg */

  double ro, ri, rh;  /* rim outside, inside and vibrating radius, mm */
  double hoop_ro;     /* tension hoop outside radius, mm */
  double bolt_depth;  /* shoe bolt below the head plane, mm */
  double strip_width; /* of segments, thickness of staves; NaN for plies */
  double crown;       /* 0 for a fretless board */
  /* What string i is to sound at place n over its own start, cents. */
  double wanted[RW_STRINGS_MAX + 1][RW_FRETS_MAX + 1];
} RwModel;

/* The measured value of a slot, else the worked-out one; nothing is stored. */
static inline double
rw_measured_or (const RwModel *m, int slot, double worked_out)
{
  if (m->measured != NULL && isfinite (m->measured->slot[slot]))
    return m->measured->slot[slot];
  return worked_out;
}

/* rw_settle: stores a worked-out value for a slot and returns the one that counts: the measured value where
 * there is one, else the worked-out one.  What is not finite becomes NaN: left out. */
static inline double
rw_settle (RwModel *m, int slot, double worked_out)
{
  gboolean held = m->measured != NULL && m->measured->holds_slot[slot];

  m->r->asked[slot] = isfinite (worked_out) ? worked_out : NAN;
  /* A row without meaning in this build has no measured value either, unless it is one of a made part. */
  m->r->value[slot] = isfinite (worked_out) || held ? rw_measured_or (m, slot, worked_out) : NAN;
  return m->r->value[slot];
}

/* The value of a slot that an earlier part has settled. */
static inline double
rw_settled (const RwModel *m, int slot)
{
  return m->r->value[slot];
}

/* rw_solve() with something else for what is guessed. */
void rw_solve_guessed (const RwDesign *design, const RwMeasured *measured, RwGuessed guessed, RwResult *result);

/* The design as it was solved, with neck and bridge taken for what they have come out as: to ask what else changes when
 * the instrument stands.  One that could not be solved stays as it is. */
RwDesign rw_as_it_stands (const RwResult *result);

/* In the order in which they run. */
void rw_model_strings   (RwModel *m);
void rw_model_head      (RwModel *m);
void rw_model_rim       (RwModel *m);
void rw_model_air       (RwModel *m); /* in the pot */
void rw_model_hoop      (RwModel *m);
void rw_model_plan      (RwModel *m);
void rw_model_side      (RwModel *m);
void rw_model_neck      (RwModel *m);
void rw_model_headstock (RwModel *m);
void rw_model_joint     (RwModel *m);
void rw_model_hooks     (RwModel *m);
void rw_model_holes     (RwModel *m); /* rim holes against glue lines and joints */
void rw_model_bridge    (RwModel *m);
void rw_model_blank     (RwModel *m);
void rw_model_pitch     (RwModel *m);
void rw_model_movement  (RwModel *m);
void rw_model_finish    (RwModel *m);
void rw_model_rim_load  (RwModel *m); /* rim under head and strings */
void rw_model_mass      (RwModel *m);

/* Four-point Gauss-Legendre on [-1, 1].  Source: Abramowitz & Stegun, table 25.4. */
extern const double rw_gauss_node[4], rw_gauss_weight[4];

/* The least value of f over [a, b], and where it is (at may be NULL): samples, then a golden-section search round
 * the best of them.  For functions with a few gentle bends. */
double rw_least (double (*f) (double x, const void *data), const void *data, double a, double b, double *at);

/* The root of f in [a, b], where f(a) and f(b) differ in sign (else NaN), to the last few bits.
 * Source: regula falsi with the Illinois correction, Dowell & Jarratt, BIT 11 (1971) 168. */
double rw_root (double (*f) (double x, void *data), void *data, double a, double b);
