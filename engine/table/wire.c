#include "wire.h"

#include <math.h>
#include <string.h>

/* Steel at 7850 kg/m3 is what plain strings are reckoned with; published unit weights give 7807 (see the tests).
 * Nylon and gut: from memory; their moduli are those of stretched strings and spread by a third. */
const RwWireKind rw_wires[RW_WIRE_COUNT] = {
  [RW_WIRE_STEEL] = { "steel", N_("Steel"), 7850, 200 },
  [RW_WIRE_NYLON] = { "nylon", N_("Nylon"), 1140, 4 },
  [RW_WIRE_GUT] = { "gut", N_("Gut"), 1300, 6 },
};

/* Music wire to ASTM A228: 2211 MPa mm^0.145 / d^0.145.  R. Budynas & J. Nisbett, Shigley's Mechanical
 * Engineering Design, table of constants for the strength of spring wires; from memory.  Printed for 0.1
 * to 6.5 mm. */
#define MUSIC_WIRE_MPA 2211.0
#define MUSIC_WIRE_EXPONENT 0.145
#define THINNEST 0.1
#define THICKEST 6.5
/* From memory: fishing line of 0.5 mm holds some 100 N; gut breaks where a string of 1 m would sound 260 Hz. */
#define NYLON_MPA 500.0
#define GUT_MPA 350.0

int
rw_wire_find (const char *id)
{
  for (int i = 0; i < RW_WIRE_COUNT; i++)
    if (strcmp (rw_wires[i].id, id) == 0)
      return i;
  return -1;
}

double
rw_wire_modulus (RwWire wire, double steel_gpa)
{
  return wire == RW_WIRE_STEEL ? steel_gpa : rw_wires[wire].modulus_gpa;
}

double
rw_wire_strength (RwWire wire, double diameter_mm)
{
  switch (wire)
    {
    case RW_WIRE_NYLON:
      return NYLON_MPA;
    case RW_WIRE_GUT:
      return GUT_MPA;
    default:
      return MUSIC_WIRE_MPA / pow (fmin (fmax (diameter_mm, THINNEST), THICKEST), MUSIC_WIRE_EXPONENT);
    }
}
