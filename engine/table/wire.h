/* What plain strings and cores are made of. */
#pragma once

#include "text.h"

typedef enum
{
  RW_WIRE_STEEL,
  RW_WIRE_NYLON,
  RW_WIRE_GUT,
  RW_WIRE_COUNT,
} RwWire;

typedef struct
{
  const char *id; /* the word for it in a set of strings; steel goes without */
  const char *label;
  double      density_kg_m3;
  double      modulus_gpa; /* at playing tension; of steel the parameter strings.modulus */
} RwWireKind;

extern const RwWireKind rw_wires[RW_WIRE_COUNT];

/* The wire called id, or -1. */
int    rw_wire_find     (const char *id);
/* Modulus in GPa, given that of steel. */
double rw_wire_modulus  (RwWire wire, double steel_gpa);
/* Least tensile strength in MPa of a diameter in mm. */
double rw_wire_strength (RwWire wire, double diameter_mm);
