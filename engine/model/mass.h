/* What each part weighs and where along the instrument its weight sits.
 *
 * Wood is air dry, as in the table of woods; sizes are the finished ones.  Assumed, where no parameter
 * says (common practice, no source, unless a source stands in mass.c): hooks, bolts and rods of steel;
 * nuts and shoes of brass; a band of aluminium as wide as it is high on a film head, of round steel on a
 * skin; fret wire of nickel silver; overlay of the fretboard's wood; tuners and tailpiece as bought.
 *
 * Neglects  the neck's slope against the head, holes, shaping of edges, glue, finish, a cast tone ring.
 */
#pragma once

#include "solve.h"

typedef enum
{
  /* The pot. */
  RW_MASS_RIM,
  RW_MASS_TONE_ROD,
  RW_MASS_HEAD,
  RW_MASS_HOOP,
  RW_MASS_HOOKS, /* with their nuts */
  RW_MASS_SHOES, /* with their bolts */
  RW_MASS_JOINT, /* rods, or the stick */
  RW_MASS_BRIDGE,
  RW_MASS_TAILPIECE,
  /* The neck. */
  RW_MASS_NECK, /* its wood, heel included */
  RW_MASS_BOARD,
  RW_MASS_FRETS,
  RW_MASS_TRUSS_ROD,
  RW_MASS_HEADSTOCK, /* wood and overlay */
  RW_MASS_TUNERS,    /* and the short string's peg */
  /* Neither. */
  RW_MASS_STRINGS,
  RW_MASS_COUNT,
} RwMassPart;

#define RW_MASS_POT_LAST RW_MASS_TAILPIECE
#define RW_MASS_NECK_LAST RW_MASS_TUNERS

/* Density of what is no wood and has no parameter, kg/m3. */
#define RW_STEEL_KG_M3 7850.0
#define RW_BRASS_KG_M3 8490.0 /* free-cutting brass, ASTM B16 */

typedef struct
{
  double grams; /* 0 where the build has none; NaN where it can't be worked out */
  double x;     /* middle of it, mm from the nut line towards the body */
} RwMass;

/* rw_masses: all parts of a solved build. */
void rw_masses (const RwResult *result, RwMass parts[RW_MASS_COUNT]);
